import type { Mesh } from '../document/rig.ts';

/** How many bones pull at one vertex at most. */
export const PULLS = 4;
/** Doubles per bone of an affine transform: three columns of the 3×3 part, then where the origin goes. */
export const AFFINE_STRIDE = 12;
/** Doubles per bone of a dual quaternion: real x y z w, dual x y z w. */
export const DUAL_STRIDE = 8;

/** A mesh bound to the rest pose of a rig. Bones are told by where they stand in the document. */
export interface Binding {
  readonly skinning: NonNullable<Mesh['skinning']>;
  /** Three per vertex, rig space, metres, at rest. */
  readonly positions: Float64Array;
  /** Four bones per vertex; where fewer pull, the others are 0 with weight 0. */
  readonly indices: Int32Array;
  /** Four per vertex, summing to 1; all 0 where the rig has no skin bone. */
  readonly weights: Float64Array;
  /** The bones of role `skin`, in the document's order. */
  readonly skinBones: Int32Array;
  /** The same weights, without those that are 0, listed by bone. */
  readonly pulls: Pulls;
  /** Nine per bone, three columns: the inverse of its turn at rest. */
  readonly restTurnInverse: Float64Array;
  /** Three per bone: its base at rest, rig space, metres. */
  readonly restBase: Float64Array;
  /** What skinning works out per bone, kept so that it allocates nothing: one binding skins one pose at a time. */
  readonly room: SkinningRoom;
}

/** For each skin bone the vertices it pulls at, as places in `positions`, and how strongly. */
export interface Pulls {
  readonly vertices: readonly Int32Array[];
  readonly weights: readonly Float64Array[];
}

export interface SkinningRoom {
  /** AFFINE_STRIDE per bone, rest to pose: all of it for linear blending, only sizes for dual quaternions. */
  readonly affine: Float64Array;
  /** DUAL_STRIDE per bone, rest to pose: turning and moving. */
  readonly dual: Float64Array;
  readonly scratch: Float64Array;
}
