/** What one would write by hand for world matrices alone, if any tree may come: the practical limit of this machine. */
export interface FlatTree {
  /** −1 for a root; parents come first. */
  readonly parents: Int32Array;
  /** Three per bone, under its parent. */
  readonly bases: Float64Array;
  /** Twelve per bone. */
  readonly worlds: Float64Array;
}

export function flatWorlds({ parents, bases, worlds: m }: FlatTree, pose: Float64Array): void {
  for (let i = 0; i < parents.length; i++) {
    const p = 10 * i;
    const x = pose[p + 3];
    const y = pose[p + 4];
    const z = pose[p + 5];
    const w = pose[p + 6];
    const sx = pose[p + 7];
    const sy = pose[p + 8];
    const sz = pose[p + 9];
    const b0 = bases[3 * i] + pose[p];
    const b1 = bases[3 * i + 1] + pose[p + 1];
    const b2 = bases[3 * i + 2] + pose[p + 2];
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
    if (parents[i] < 0) {
      m[to] = l0;
      m[to + 1] = l1;
      m[to + 2] = l2;
      m[to + 3] = l3;
      m[to + 4] = l4;
      m[to + 5] = l5;
      m[to + 6] = l6;
      m[to + 7] = l7;
      m[to + 8] = l8;
      m[to + 9] = b0;
      m[to + 10] = b1;
      m[to + 11] = b2;
      continue;
    }
    const a = 12 * parents[i];
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
