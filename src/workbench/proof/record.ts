import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Graded } from '../../grader/result.ts';
import { answeredBy } from '../answer/kinds.ts';
import type { Session } from '../state/session.ts';

/** One proof, as the proof sheet shows it again after a reload. */
export interface ProofRecord {
  /** Milliseconds since 1970. */
  readonly when: number;
  readonly result: Graded;
  /** Requirement id to what is said of it. */
  readonly messages: Readonly<Record<string, string>>;
  /** Which state of the work was proved. */
  readonly stamp: string;
  /** For a repair: the wrong turn that was named beforehand. */
  readonly guess: string | null;
}

/** Tells the states of the work apart, also after undo and a new change in its place. */
export function stampOf({ history, pose }: Session, exercise: Pick<Exercise, 'kind'>): string {
  const step = `${history.at}.${history.steps[history.at - 1]?.when ?? 0}`;
  return answeredBy(exercise) === 'pose' ? `${step} ${JSON.stringify(pose)}` : step;
}
