import type { Graded } from '../../grader/result.ts';
import type { History } from '../state/history.ts';

/** One proof, as the proof sheet shows it again after a reload. */
export interface ProofRecord {
  /** Milliseconds since 1970. */
  readonly when: number;
  readonly result: Graded;
  /** Requirement id to what is said of it. */
  readonly messages: Readonly<Record<string, string>>;
  /** Which state of the draft was proved. */
  readonly stamp: string;
  /** For a repair: the wrong turn that was named beforehand. */
  readonly guess: string | null;
}

/** Tells the states of a draft apart, also after undo and a new change in its place. */
export function stampOf(history: History<unknown>): string {
  return `${history.at}.${history.steps[history.at - 1]?.when ?? 0}`;
}
