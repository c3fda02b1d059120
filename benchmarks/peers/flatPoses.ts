/** Twelve doubles a world; three a rest base, four a rest turn, under the parent, whose world's place is in `parents`. */
export interface FlatRests {
  readonly parents: Int32Array;
  readonly bases: Float64Array;
  readonly turns: Float64Array;
}

/** What one would write by hand for the own poses of some bones of any tree. */
export function flatPoses(m: Float64Array, rests: FlatRests, bones: Int32Array, pose: Float64Array): void {
  const { parents, bases, turns } = rests;
  for (let n = 0; n < bones.length; n++) {
    const i = bones[n];
    const at = 10 * i;
    const qx = turns[4 * i];
    const qy = turns[4 * i + 1];
    const qz = turns[4 * i + 2];
    const qw = turns[4 * i + 3];
    const mx = pose[at];
    const my = pose[at + 1];
    const mz = pose[at + 2];
    const cx = 2 * (qy * mz - qz * my);
    const cy = 2 * (qz * mx - qx * mz);
    const cz = 2 * (qx * my - qy * mx);
    const b0 = bases[3 * i] + mx + qw * cx + qy * cz - qz * cy;
    const b1 = bases[3 * i + 1] + my + qw * cy + qz * cx - qx * cz;
    const b2 = bases[3 * i + 2] + mz + qw * cz + qx * cy - qy * cx;
    const tx = pose[at + 3];
    const ty = pose[at + 4];
    const tz = pose[at + 5];
    const tw = pose[at + 6];
    const x = qw * tx + qx * tw + qy * tz - qz * ty;
    const y = qw * ty - qx * tz + qy * tw + qz * tx;
    const z = qw * tz + qx * ty - qy * tx + qz * tw;
    const w = qw * tw - qx * tx - qy * ty - qz * tz;
    const sx = pose[at + 7];
    const sy = pose[at + 8];
    const sz = pose[at + 9];
    const l0 = (1 - 2 * (y * y + z * z)) * sx;
    const l1 = 2 * (x * y + w * z) * sx;
    const l2 = 2 * (x * z - w * y) * sx;
    const l3 = 2 * (x * y - w * z) * sy;
    const l4 = (1 - 2 * (x * x + z * z)) * sy;
    const l5 = 2 * (y * z + w * x) * sy;
    const l6 = 2 * (x * z + w * y) * sz;
    const l7 = 2 * (y * z - w * x) * sz;
    const l8 = (1 - 2 * (x * x + y * y)) * sz;
    const to = 12 * i;
    const a = parents[i];
    const a0 = m[a];
    const a1 = m[a + 1];
    const a2 = m[a + 2];
    const a3 = m[a + 3];
    const a4 = m[a + 4];
    const a5 = m[a + 5];
    const a6 = m[a + 6];
    const a7 = m[a + 7];
    const a8 = m[a + 8];
    m[to] = a0 * l0 + a3 * l1 + a6 * l2;
    m[to + 1] = a1 * l0 + a4 * l1 + a7 * l2;
    m[to + 2] = a2 * l0 + a5 * l1 + a8 * l2;
    m[to + 3] = a0 * l3 + a3 * l4 + a6 * l5;
    m[to + 4] = a1 * l3 + a4 * l4 + a7 * l5;
    m[to + 5] = a2 * l3 + a5 * l4 + a8 * l5;
    m[to + 6] = a0 * l6 + a3 * l7 + a6 * l8;
    m[to + 7] = a1 * l6 + a4 * l7 + a7 * l8;
    m[to + 8] = a2 * l6 + a5 * l7 + a8 * l8;
    m[to + 9] = a0 * b0 + a3 * b1 + a6 * b2 + m[a + 9];
    m[to + 10] = a1 * b0 + a4 * b1 + a7 * b2 + m[a + 10];
    m[to + 11] = a2 * b0 + a5 * b1 + a8 * b2 + m[a + 11];
  }
}
