import { AFFINE_STRIDE, type Binding, PULLS } from './binding.ts';

/**
 * Linear blend skinning: out = Σ wᵢ·Mᵢ·v with the matrices in `room.affine`
 * (N. Magnenat-Thalmann, R. Laperrière, D. Thalmann 1988; glTF 2.0, "Skins").
 */
export function blendLinear({ positions, indices, weights, room }: Binding, out: Float64Array): void {
  const m = room.affine;
  for (let at = 0, pull = 0; at < positions.length; at += 3, pull += PULLS) {
    const vx = positions[at];
    const vy = positions[at + 1];
    const vz = positions[at + 2];
    let x = 0;
    let y = 0;
    let z = 0;
    for (let k = pull; k < pull + PULLS; k++) {
      const w = weights[k];
      const i = AFFINE_STRIDE * indices[k];
      x += w * (m[i] * vx + m[i + 3] * vy + m[i + 6] * vz + m[i + 9]);
      y += w * (m[i + 1] * vx + m[i + 4] * vy + m[i + 7] * vz + m[i + 10]);
      z += w * (m[i + 2] * vx + m[i + 5] * vy + m[i + 8] * vz + m[i + 11]);
    }
    out[at] = x;
    out[at + 1] = y;
    out[at + 2] = z;
  }
}
