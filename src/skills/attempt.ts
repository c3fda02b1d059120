/** One proof of one item, as mastery and review count it. */
export interface Attempt {
  /** Ids of the skills the exercise asked for, in order of the alphabet; empty where it was not known then. */
  readonly skills: readonly string[];
  readonly exercise: string;
  readonly seed: number;
  /** Milliseconds since 1970. */
  readonly when: number;
  readonly passed: boolean;
  /** A hint had been opened, or the answer was begun from a given one. */
  readonly aided: boolean;
  /** In a repair: whether the fault had been named. */
  readonly named?: boolean;
}

/** What tells attempts apart: no two proofs of one variant are made in the same millisecond. */
export type AttemptKey = [exercise: string, seed: number, when: number];

export function keyOf({ exercise, seed, when }: Attempt): AttemptKey {
  return [exercise, seed, when];
}
