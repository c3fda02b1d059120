import type { Answer, Exercise } from '../../grader/exercise/definition.ts';
import type { Session } from '../state/session.ts';

/** The answer document of a session: what is proved, saved and handed in. */
export function answerOf(session: Session, exercise: Pick<Exercise, 'id' | 'edition' | 'seed'>, made?: Date): Answer {
  const { rig, parts } = session.history.document;
  return {
    format: 'counterpose/answer',
    version: 1,
    exercise: exercise.id,
    edition: exercise.edition,
    seed: exercise.seed,
    rig,
    parts,
    ...(made ? { made: made.toISOString() } : {}),
    ...(session.hints.length > 0 ? { hints: session.hints } : {}),
    ...(session.guess === null ? {} : { guess: session.guess }),
  };
}
