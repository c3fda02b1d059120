import { WORLD_STRIDE } from '../program.ts';

/**
 * Where the scratch of one operation lies in memory: three doubles a vector, four a quaternion, nine a 3×3 matrix
 * (three columns), twelve a transform (three columns, base).
 */
export const ORIENTATION = 0;
export const SIZE = 9;
/** The orientation a link asks for at weight 1. */
export const FULL = 12;
export const GOAL = 21;
export const GOAL_ORIENTATION = 33;
export const GOAL_SIZE = 42;
/** F·Q: a bone's rest frame under its parent, rig space. */
export const FRAME = 45;
export const FRAME_ORIENTATION = 54;
export const TURN = 63;
export const PRODUCT = 72;
export const UPPER_TURN = 81;
export const LOWER_TURN = 90;
export const QUATERNION = 99;
/** Unit vector from a bone's base to its target. */
export const DIRECTION = 103;
export const AXIS = 106;
export const VECTOR = 109;
export const SIDE = 112;
export const HINGE = 115;
export const UPPER = 118;
export const LOWER = 121;
export const REST_BASE = 124;
const SCRATCH_LENGTH = 128;

/** The world of nothing: the parent of every root. */
export const IDENTITY = SCRATCH_LENGTH;
const WORLDS = IDENTITY + WORLD_STRIDE;

/** Where the parts of memory start that depend on the rig. */
export interface Layout {
  readonly worlds: number;
  readonly weights: number;
  readonly switches: number;
  /** Driven channels, constants and whatever else follows. */
  readonly rest: number;
}

export const worldAt = (bone: number): number => WORLDS + WORLD_STRIDE * bone;

export function layOut(bones: number, links: number, switches: number): Layout {
  const weights = worldAt(bones);
  return { worlds: WORLDS, weights, switches: weights + links, rest: weights + links + switches };
}
