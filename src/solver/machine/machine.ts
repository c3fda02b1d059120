/**
 * What an operation works on. All numbers of one evaluation, constants included, lie in one Float64Array,
 * so that the hot loops hold one base address; the code says where.
 */
export interface Machine {
  /** Runs of operations: op, count, then `count` records whose length the op knows. */
  readonly code: Int32Array;
  /** Scratch, the identity, worlds, weights, switches, driven channels, constants: see layout.ts. */
  readonly memory: Float64Array;
  /** Bits of flagBits.ts, one number per link, then one per bone. */
  readonly flags: Int32Array;
  /** The packed pose being evaluated, and where in the array it starts. */
  pose: Float64Array;
  poseAt: number;
  /** Counts evaluations. */
  evaluation: number;
}

/** Runs `count` records that start at `at`; returns where they end. */
export type Run = (machine: Machine, at: number, count: number) => number;
