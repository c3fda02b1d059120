/**
 * What the solver promises to its callers. A rig is compiled once into a Program; a State holds the
 * numbers of one evaluation and is reused, so that evaluating allocates nothing.
 */

/** Doubles per bone in a packed pose: move x y z, turn x y z w, size x y z. */
export const POSE_STRIDE = 10;
/** Doubles per bone in a packed world transform: three columns of the 3×3 part, then the base. */
export const WORLD_STRIDE = 12;

export const FLAGS = [
  'flat',
  'shear',
  'aim-undefined',
  'up-undefined',
  'twist-undefined',
  'pole-undefined',
  'reach-undefined',
  'weight-clamped',
  'switch-clamped',
] as const;
export type FlagName = (typeof FLAGS)[number];

/** `link` is null only for `switch-clamped`, where `bone` is the owner of the switch. */
export interface Flag {
  flag: FlagName;
  bone: string;
  link: string | null;
}

export interface State {
  /** WORLD_STRIDE per bone, in document order. */
  readonly world: Float64Array;
  /** One per link, in document order; driven weights as they came out. */
  readonly weights: Float64Array;
  /** One per switch, in document order; driven ones as they came out. */
  readonly switches: Float64Array;
}

export interface SolveResult {
  bones: Record<string, { matrix: number[] }>;
  weights: Record<string, number>;
  flags: Flag[];
}
