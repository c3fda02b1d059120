import { WORLD_STRIDE } from '../program.ts';

/** Memory starts with doubles that any operation may use while it runs; each lays them out for itself. */
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
