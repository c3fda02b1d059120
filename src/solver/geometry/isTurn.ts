const INDEX = 0x3fffffff;
/** How far products of a few dozen turns are from one by rounding. */
const ROUNDING = 4e-15;

/**
 * Whether a 3×3 part is a turn alone, without size or shear but for rounding. Most bones have none: theirs is its own
 * orientation, so it need not be taken apart and put together.
 */
export function isTurn(m: Float64Array, matrix: number): boolean {
  const a = matrix & INDEX;
  const yx = m[a + 3];
  const yy = m[a + 4];
  const yz = m[a + 5];
  const zx = m[a + 6];
  const zy = m[a + 7];
  const zz = m[a + 8];
  return (
    Math.abs(yx * yx + yy * yy + yz * yz - 1) < ROUNDING &&
    Math.abs(zx * zx + zy * zy + zz * zz - 1) < ROUNDING &&
    Math.abs(yx * zx + yy * zy + yz * zz) < ROUNDING &&
    Math.abs(yy * zz - yz * zy - m[a]) < ROUNDING &&
    Math.abs(yz * zx - yx * zz - m[a + 1]) < ROUNDING &&
    Math.abs(yx * zy - yy * zx - m[a + 2]) < ROUNDING
  );
}
