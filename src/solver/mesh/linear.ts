import { AFFINE_STRIDE, type Binding, PULLS } from './binding.ts';

/**
 * Linear blend skinning: out = (Σ wᵢ·Mᵢ)·v with the matrices in `room.affine`
 * (N. Magnenat-Thalmann, R. Laperrière, D. Thalmann 1988, from memory; glTF 2.0, "Skins").
 * Written out for four bones: a loop over them takes longer.
 */
export function blendLinear({ positions, indices, weights, room }: Binding, out: Float64Array): void {
  const m = room.affine;
  for (let at = 0, pull = 0; at < positions.length; at += 3, pull += PULLS) {
    const x = positions[at];
    const y = positions[at + 1];
    const z = positions[at + 2];
    const u = weights[pull];
    const v = weights[pull + 1];
    const w = weights[pull + 2];
    const t = weights[pull + 3];
    let a = AFFINE_STRIDE * indices[pull];
    let b = AFFINE_STRIDE * indices[pull + 1];
    let c = AFFINE_STRIDE * indices[pull + 2];
    let d = AFFINE_STRIDE * indices[pull + 3];
    for (let i = 0; i < 3; i++, a++, b++, c++, d++) {
      out[at + i] =
        (u * m[a] + v * m[b] + w * m[c] + t * m[d]) * x +
        (u * m[a + 3] + v * m[b + 3] + w * m[c + 3] + t * m[d + 3]) * y +
        (u * m[a + 6] + v * m[b + 6] + w * m[c + 6] + t * m[d + 6]) * z +
        (u * m[a + 9] + v * m[b + 9] + w * m[c + 9] + t * m[d + 9]);
    }
  }
}
