import { AFFINE_STRIDE, type Binding, DUAL_STRIDE, PULLS } from './binding.ts';
import { applyDual } from './dualQuaternion.ts';
import { BLEND, SIZED } from './rigidPart.ts';

/**
 * Writes Σ ±wᵢ·dᵢ of the vertex whose pulls start at `pull` to the scratch: each with the sign of the nearest bone's,
 * because d and −d are one motion and opposite signs would blend the long way round.
 */
function blendMotions({ indices, weights, room }: Binding, pull: number): void {
  const { dual, scratch } = room;
  const pivot = DUAL_STRIDE * indices[pull];
  for (let j = BLEND; j < BLEND + DUAL_STRIDE; j++) scratch[j] = 0;
  for (let k = pull; k < pull + PULLS; k++) {
    const i = DUAL_STRIDE * indices[k];
    const alike =
      dual[i] * dual[pivot] +
      dual[i + 1] * dual[pivot + 1] +
      dual[i + 2] * dual[pivot + 2] +
      dual[i + 3] * dual[pivot + 3];
    const w = alike < 0 ? -weights[k] : weights[k];
    for (let j = 0; j < DUAL_STRIDE; j++) scratch[BLEND + j] += w * dual[i + j];
  }
}

/** Writes Σ wᵢ·Sᵢ·v, the vertex at rest with the bones' sizes blended linearly, to the scratch. */
function blendSizes({ positions, indices, weights, room }: Binding, at: number, pull: number): void {
  const { affine, scratch } = room;
  for (let j = 0; j < 3; j++) {
    let sum = 0;
    for (let k = pull; k < pull + PULLS; k++) {
      const i = AFFINE_STRIDE * indices[k] + j;
      const carried = affine[i] * positions[at] + affine[i + 3] * positions[at + 1] + affine[i + 6] * positions[at + 2];
      sum += weights[k] * (carried + affine[i + 9]);
    }
    scratch[SIZED + j] = sum;
  }
}

/**
 * Dual quaternion skinning by linear blending of the motions in `room.dual` (L. Kavan, S. Collins, J. Žára,
 * C. O'Sullivan, I3D 2007), after the sizes in `room.affine` have been blended at rest, as the same authors do in
 * Geometric Skinning with Approximate Dual Quaternion Blending, ACM TOG 27(4), 2008 (from memory).
 */
export function blendDual(binding: Binding, out: Float64Array): void {
  const { scratch } = binding.room;
  for (let at = 0, pull = 0; at < binding.positions.length; at += 3, pull += PULLS) {
    blendMotions(binding, pull);
    blendSizes(binding, at, pull);
    applyDual(scratch, BLEND, scratch[SIZED], scratch[SIZED + 1], scratch[SIZED + 2], out, at);
  }
}
