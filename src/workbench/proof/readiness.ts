import type { Exercise } from '../../grader/exercise/exercise.ts';
import { answeredBy, isAnswered } from '../answer/kinds.ts';
import { valuesAsked } from '../answer/values.ts';
import type { Session } from '../state/session.ts';
import { type ProofRecord, stampOf } from './record.ts';

/** What can be proved just now, and what the last proof is worth. */
export interface Readiness {
  /** The last proof of this drawing of the exercise. */
  readonly proof: ProofRecord | undefined;
  /** The work has changed since that proof. */
  readonly stale: boolean;
  /** Why nothing can be proved yet; null where it can. */
  readonly waits: string | null;
  /** This drawing has had its answer: another must be drawn. */
  readonly answered: boolean;
}

export function readiness(session: Session, exercise: Exercise): Readiness {
  const last = session.proofs.at(-1);
  const proof = last?.result.seed === session.seed ? last : undefined;
  return {
    proof,
    stale: proof !== undefined && proof.stamp !== stampOf(session, exercise),
    waits: waitsFor(session, exercise),
    answered: isAnswered(session, exercise),
  };
}

/** The line beside the button. */
export function readinessWords({ proof, stale, waits, answered }: Readiness, exercise: Exercise): string {
  if (answered) return 'The sheet below is of this drawing. The next one asks for other numbers.';
  if (waits !== null) return waits;
  if (proof) return stale ? 'The sheet below is of an earlier state.' : 'The sheet below is of your work as it stands.';
  if (answeredBy(exercise) === 'form') return 'It works out what the rig gives, and compares.';
  if (answeredBy(exercise) === 'pose') return 'It measures the rig in the pose as you have set it.';
  return 'It moves what an animator may move, in every way asked, and measures.';
}

function waitsFor(session: Session, exercise: Exercise): string | null {
  if (exercise.kind === 'repair' && session.guess === null) return 'Say first what the fault is.';
  if (exercise.kind !== 'predict') return null;
  const values = session.history.document.response?.values ?? {};
  const open = valuesAsked(exercise).some(({ id }) => values[id] === undefined);
  return open ? 'Answer every question first.' : null;
}
