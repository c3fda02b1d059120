/**
 * 3×3 matrices of nine doubles in memory, three columns, by where they start. Written out, because a loop over columns
 * costs as much again. `to` is none of the sources.
 */

const INDEX = 0x3fffffff;

export function multiply(m: Float64Array, left: number, right: number, to: number): void {
  const a = left & INDEX;
  const b = right & INDEX;
  const c = to & INDEX;
  const a0 = m[a];
  const a1 = m[a + 1];
  const a2 = m[a + 2];
  const a3 = m[a + 3];
  const a4 = m[a + 4];
  const a5 = m[a + 5];
  const a6 = m[a + 6];
  const a7 = m[a + 7];
  const a8 = m[a + 8];
  let x = m[b];
  let y = m[b + 1];
  let z = m[b + 2];
  m[c] = a0 * x + a3 * y + a6 * z;
  m[c + 1] = a1 * x + a4 * y + a7 * z;
  m[c + 2] = a2 * x + a5 * y + a8 * z;
  x = m[b + 3];
  y = m[b + 4];
  z = m[b + 5];
  m[c + 3] = a0 * x + a3 * y + a6 * z;
  m[c + 4] = a1 * x + a4 * y + a7 * z;
  m[c + 5] = a2 * x + a5 * y + a8 * z;
  x = m[b + 6];
  y = m[b + 7];
  z = m[b + 8];
  m[c + 6] = a0 * x + a3 * y + a6 * z;
  m[c + 7] = a1 * x + a4 * y + a7 * z;
  m[c + 8] = a2 * x + a5 * y + a8 * z;
}

/** leftᵀ·right: of orientations, the turn from left to right as seen from left. */
export function multiplyTransposed(m: Float64Array, left: number, right: number, to: number): void {
  const a = left & INDEX;
  const b = right & INDEX;
  const c = to & INDEX;
  const a0 = m[a];
  const a1 = m[a + 1];
  const a2 = m[a + 2];
  const a3 = m[a + 3];
  const a4 = m[a + 4];
  const a5 = m[a + 5];
  const a6 = m[a + 6];
  const a7 = m[a + 7];
  const a8 = m[a + 8];
  let x = m[b];
  let y = m[b + 1];
  let z = m[b + 2];
  m[c] = a0 * x + a1 * y + a2 * z;
  m[c + 1] = a3 * x + a4 * y + a5 * z;
  m[c + 2] = a6 * x + a7 * y + a8 * z;
  x = m[b + 3];
  y = m[b + 4];
  z = m[b + 5];
  m[c + 3] = a0 * x + a1 * y + a2 * z;
  m[c + 4] = a3 * x + a4 * y + a5 * z;
  m[c + 5] = a6 * x + a7 * y + a8 * z;
  x = m[b + 6];
  y = m[b + 7];
  z = m[b + 8];
  m[c + 6] = a0 * x + a1 * y + a2 * z;
  m[c + 7] = a3 * x + a4 * y + a5 * z;
  m[c + 8] = a6 * x + a7 * y + a8 * z;
}

export function copyMatrix(m: Float64Array, from: number, to: number): void {
  const a = from & INDEX;
  const c = to & INDEX;
  m[c] = m[a];
  m[c + 1] = m[a + 1];
  m[c + 2] = m[a + 2];
  m[c + 3] = m[a + 3];
  m[c + 4] = m[a + 4];
  m[c + 5] = m[a + 5];
  m[c + 6] = m[a + 6];
  m[c + 7] = m[a + 7];
  m[c + 8] = m[a + 8];
}

export function writeIdentity(m: Float64Array, to: number): void {
  for (let i = 0; i < 9; i++) m[to + i] = i % 4 === 0 ? 1 : 0;
}

/** A·v, with v and the result vectors. */
export function transform(m: Float64Array, matrix: number, vector: number, to: number): void {
  const a = matrix & INDEX;
  const v = vector & INDEX;
  const c = to & INDEX;
  const x = m[v];
  const y = m[v + 1];
  const z = m[v + 2];
  m[c] = m[a] * x + m[a + 3] * y + m[a + 6] * z;
  m[c + 1] = m[a + 1] * x + m[a + 4] * y + m[a + 7] * z;
  m[c + 2] = m[a + 2] * x + m[a + 5] * y + m[a + 8] * z;
}

/** W·v for a world transform (twelve doubles: three columns, base). */
export function transformPoint(m: Float64Array, world: number, vector: number, to: number): void {
  const a = world & INDEX;
  const c = to & INDEX;
  transform(m, a, vector, c);
  m[c] += m[a + 9];
  m[c + 1] += m[a + 10];
  m[c + 2] += m[a + 11];
}

/** left·rightᵀ. */
export function multiplyByTransposed(m: Float64Array, left: number, right: number, to: number): void {
  const a = left & INDEX;
  const b = right & INDEX;
  const c = to & INDEX;
  for (let j = 0; j < 3; j++) {
    const x = m[b + j];
    const y = m[b + j + 3];
    const z = m[b + j + 6];
    m[c + 3 * j] = m[a] * x + m[a + 3] * y + m[a + 6] * z;
    m[c + 3 * j + 1] = m[a + 1] * x + m[a + 4] * y + m[a + 7] * z;
    m[c + 3 * j + 2] = m[a + 2] * x + m[a + 5] * y + m[a + 8] * z;
  }
}
