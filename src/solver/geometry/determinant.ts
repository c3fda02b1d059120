/** Of the sum of its products, a determinant up to this part, 2^−48, is what rounding left of 0. */
const ROUNDING = 3.552713678800501e-15;

/** The determinant of a 3×3 matrix; exactly 0 where rounding could have made all of it, as below a bone without size along an axis. */
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
