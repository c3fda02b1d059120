/** Polynomial for ∛m on 1 ≤ m ≤ 8, interpolated at the Chebyshev points; relative error up to 2^−7.9. */
const P0 = 0.6538962985569791;
const P1 = 0.4121814779629245;
const P2 = -0.06797280035500547;
const P3 = 0.0069891694835587225;
const P4 = -0.0002882199346276574;

/** 2^±96 and their cube roots, for long strides. */
const CUBE_UP = 7.922816251426434e28;
const CUBE_DOWN = 1.262177448353619e-29;
const SIDE_UP = 4294967296;
const SIDE_DOWN = 2.3283064365386963e-10;

/**
 * Cube root, within 1 ulp, of the sign of its argument; ±0, ±∞ and NaN are their own.
 * Two steps of E. Halley's rule (1694, from memory): each triples the number of right bits.
 */
export function cbrt(value: number): number {
  let m = Math.abs(value);
  if (!(m > 0 && m < Infinity)) return value;
  let scale = value < 0 ? -1 : 1;
  for (; m >= CUBE_UP; scale *= SIDE_UP) m *= CUBE_DOWN;
  for (; m < CUBE_DOWN; scale *= SIDE_DOWN) m *= CUBE_UP;
  for (; m >= 8; scale *= 2) m *= 0.125;
  for (; m < 1; scale *= 0.5) m *= 8;
  return scale * cubeRootNearOne(m);
}

/** ∛m for 1 ≤ m < 8. The last step starts from 24 bits, whose square is exact. */
function cubeRootNearOne(m: number): number {
  const guess = P0 + m * (P1 + m * (P2 + m * (P3 + m * P4)));
  const cube = guess * guess * guess;
  const near = Math.fround(guess + (guess * (m - cube)) / (cube + cube + m));
  const quotient = m / (near * near);
  return near + (near * (quotient - near)) / (near + near + quotient);
}
