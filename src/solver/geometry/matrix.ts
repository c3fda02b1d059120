/** 3×3 matrices of nine doubles in memory, three columns, by where they start. `to` is none of the sources. */

export function multiply(m: Float64Array, a: number, b: number, to: number): void {
  for (let j = 0; j < 9; j += 3) {
    const x = m[b + j];
    const y = m[b + j + 1];
    const z = m[b + j + 2];
    m[to + j] = m[a] * x + m[a + 3] * y + m[a + 6] * z;
    m[to + j + 1] = m[a + 1] * x + m[a + 4] * y + m[a + 7] * z;
    m[to + j + 2] = m[a + 2] * x + m[a + 5] * y + m[a + 8] * z;
  }
}

/** aᵀ·b, the turn that takes orientation a to b, seen from a. */
export function multiplyTransposed(m: Float64Array, a: number, b: number, to: number): void {
  for (let j = 0; j < 9; j += 3) {
    const x = m[b + j];
    const y = m[b + j + 1];
    const z = m[b + j + 2];
    m[to + j] = m[a] * x + m[a + 1] * y + m[a + 2] * z;
    m[to + j + 1] = m[a + 3] * x + m[a + 4] * y + m[a + 5] * z;
    m[to + j + 2] = m[a + 6] * x + m[a + 7] * y + m[a + 8] * z;
  }
}

export function copyMatrix(m: Float64Array, from: number, to: number): void {
  for (let i = 0; i < 9; i++) m[to + i] = m[from + i];
}

/** A·v, with v and the result vectors. */
export function transform(m: Float64Array, a: number, v: number, to: number): void {
  const x = m[v];
  const y = m[v + 1];
  const z = m[v + 2];
  m[to] = m[a] * x + m[a + 3] * y + m[a + 6] * z;
  m[to + 1] = m[a + 1] * x + m[a + 4] * y + m[a + 7] * z;
  m[to + 2] = m[a + 2] * x + m[a + 5] * y + m[a + 8] * z;
}

/** W·v for a world transform (twelve doubles: three columns, base). */
export function transformPoint(m: Float64Array, world: number, v: number, to: number): void {
  transform(m, world, v, to);
  m[to] += m[world + 9];
  m[to + 1] += m[world + 10];
  m[to + 2] += m[world + 11];
}

/** Of the sum of its products, a determinant up to this part is what rounding left of 0. */
const ROUNDING = 3.552713678800501e-15;

/** The determinant; exactly 0 where rounding could have made all of it, as under a bone without size along an axis. */
export function determinant(m: Float64Array, a: number): number {
  const xyz = m[a] * m[a + 4] * m[a + 8];
  const yzx = m[a + 1] * m[a + 5] * m[a + 6];
  const zxy = m[a + 2] * m[a + 3] * m[a + 7];
  const xzy = m[a] * m[a + 5] * m[a + 7];
  const yxz = m[a + 1] * m[a + 3] * m[a + 8];
  const zyx = m[a + 2] * m[a + 4] * m[a + 6];
  const volume = xyz - xzy + (yzx - yxz) + (zxy - zyx);
  const sum = Math.abs(xyz) + Math.abs(yzx) + Math.abs(zxy) + Math.abs(xzy) + Math.abs(yxz) + Math.abs(zyx);
  return Math.abs(volume) <= ROUNDING * sum ? 0 : volume;
}

/** a·bᵀ. */
export function multiplyByTransposed(m: Float64Array, a: number, b: number, to: number): void {
  for (let j = 0; j < 3; j++) {
    const x = m[b + j];
    const y = m[b + j + 3];
    const z = m[b + j + 6];
    m[to + 3 * j] = m[a] * x + m[a + 3] * y + m[a + 6] * z;
    m[to + 3 * j + 1] = m[a + 1] * x + m[a + 4] * y + m[a + 7] * z;
    m[to + 3 * j + 2] = m[a + 2] * x + m[a + 5] * y + m[a + 8] * z;
  }
}

export function writeIdentity(m: Float64Array, to: number): void {
  for (let i = 0; i < 9; i++) m[to + i] = i % 4 === 0 ? 1 : 0;
}
