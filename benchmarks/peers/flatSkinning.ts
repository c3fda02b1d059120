/** What one would write by hand for linear skinning with four weights: the practical limit of this machine. */
import { Matrix4 } from 'three';
import type { Rig } from '../../src/solver/index.ts';
import { matrixAt, type Skinned } from './threeSkinning.ts';

/** Matrices are made from the worlds each time, as ours does. */
export function flatSkinning(
  rig: Rig,
  { indices, weights }: Skinned,
  worlds: Float64Array,
  rests: Float64Array,
): { run: () => void; out: Float64Array } {
  const out = new Float64Array(rig.mesh!.positions.length);
  const positions = Float64Array.from(rig.mesh!.positions);
  const inverses = rig.bones.map((_, i) => matrixAt(rests, i).invert());
  const matrices = new Float64Array(12 * rig.bones.length);
  const own = new Matrix4();
  const run = () => {
    for (let i = 0; i < inverses.length; i++) {
      const { elements: e } = own.multiplyMatrices(matrixAt(worlds, i), inverses[i]);
      for (let k = 0; k < 12; k++) matrices[12 * i + k] = e[4 * Math.floor(k / 3) + (k % 3)];
    }
    skin(matrices, positions, indices, weights, out);
  };
  run();
  return { run, out };
}

/** Each bone's world times its rest turned back comes ready, twelve doubles a bone. */
function skin(
  matrices: Float64Array,
  positions: Float64Array,
  indices: Int32Array,
  weights: Float64Array,
  out: Float64Array,
): void {
  for (let i = 0; i < positions.length / 3; i++) {
    const px = positions[3 * i];
    const py = positions[3 * i + 1];
    const pz = positions[3 * i + 2];
    let x = 0;
    let y = 0;
    let z = 0;
    for (let k = 4 * i; k < 4 * i + 4; k++) {
      const weight = weights[k];
      if (weight === 0) continue;
      const m = 12 * indices[k];
      x += weight * (matrices[m] * px + matrices[m + 3] * py + matrices[m + 6] * pz + matrices[m + 9]);
      y += weight * (matrices[m + 1] * px + matrices[m + 4] * py + matrices[m + 7] * pz + matrices[m + 10]);
      z += weight * (matrices[m + 2] * px + matrices[m + 5] * py + matrices[m + 8] * pz + matrices[m + 11]);
    }
    out[3 * i] = x;
    out[3 * i + 1] = y;
    out[3 * i + 2] = z;
  }
}
