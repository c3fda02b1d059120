import type { Answer } from '../../grader/exercise/answer.ts';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Session } from '../state/session.ts';
import { answeredBy } from './kinds.ts';
import { orderAsked } from './order.ts';
import { inputsOf } from './poseInputs.ts';

/** The answer document of a session: what is proved, saved and handed in. */
export function answerOf(session: Session, exercise: Exercise, made?: Date): Answer {
  return {
    format: 'counterpose/answer',
    version: 1,
    exercise: exercise.id,
    edition: exercise.edition,
    seed: exercise.seed,
    ...answered(session, exercise),
    ...(made ? { made: made.toISOString() } : {}),
    ...(session.hints.length > 0 ? { hints: session.hints } : {}),
    ...(session.guess === null ? {} : { guess: session.guess }),
  };
}

/** The rig with its parts, or the response that the kind of exercise asks for. */
function answered(session: Session, exercise: Exercise): Pick<Answer, 'rig' | 'parts' | 'response'> {
  const { document } = session.history;
  const { rig, parts, response } = document;
  switch (answeredBy(exercise)) {
    case 'rig':
      return { rig, parts };
    case 'map':
      return { response: { map: rig.drivers?.find(({ name }) => name === exercise.shape)?.map } };
    case 'pose':
      return { response: { inputs: inputsOf(session.pose, document, exercise) } };
    case 'form':
      if (exercise.kind === 'order') return { response: { order: response?.order ?? orderAsked(exercise) } };
      return { response: { values: response?.values ?? {} } };
  }
}
