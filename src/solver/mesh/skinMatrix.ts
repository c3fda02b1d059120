import { WORLD_STRIDE } from '../program.ts';
import { AFFINE_STRIDE, type Binding } from './binding.ts';

/**
 * Writes world·rest⁻¹ of one bone, the transform that takes the mesh from rest to where the bone has gone
 * (glTF 2.0, "Skins": joint matrix = global transform · inverse bind matrix), to its place in `room.affine`.
 */
export function writeSkinMatrix({ restTurnInverse: q, restBase, room }: Binding, world: Float64Array, bone: number) {
  const { affine } = room;
  const w = WORLD_STRIDE * bone;
  const to = AFFINE_STRIDE * bone;
  for (let j = 0; j < 3; j++) {
    const from = 9 * bone + 3 * j;
    for (let i = 0; i < 3; i++) {
      affine[to + 3 * j + i] = world[w + i] * q[from] + world[w + 3 + i] * q[from + 1] + world[w + 6 + i] * q[from + 2];
    }
  }
  writeOffset(affine, to, world, w + 9, restBase, 3 * bone);
}

/** Writes the last column of the affine transform at `to`, so that it takes `base` to `goal`. */
export function writeOffset(
  affine: Float64Array,
  to: number,
  goals: Float64Array,
  goal: number,
  bases: Float64Array,
  base: number,
): void {
  for (let i = 0; i < 3; i++) {
    const carried =
      affine[to + i] * bases[base] + affine[to + 3 + i] * bases[base + 1] + affine[to + 6 + i] * bases[base + 2];
    affine[to + 9 + i] = goals[goal + i] - carried;
  }
}
