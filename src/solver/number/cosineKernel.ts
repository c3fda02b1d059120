/**
 * Polynomial for (cos √z − 1 + z/2) / z² on 0 ≤ z ≤ 0.786², interpolated at the Chebyshev points
 * (test/solver/number/fit.test.ts makes the numbers anew). Worst error of z²·P(z): 2^−59.7.
 */
const P0 = 0.041666666666666664;
const P1 = -0.0013888888888887387;
const P2 = 0.00002480158729874837;
const P3 = -2.7557317262753467e-7;
const P4 = 2.0876144399012594e-9;
const P5 = -1.1382497845488828e-11;

/**
 * Cosine of high + low radians, |high| ≤ 0.786, |low| at most half an ulp of high.
 * What 1 − z/2 loses in rounding is put back, so that only the last addition counts.
 */
export function cosineKernel(high: number, low: number): number {
  const z = high * high;
  const w = z * z;
  const half = 0.5 * z;
  const start = 1 - half;
  const rest = P0 + z * P1 + w * (P2 + z * P3 + w * (P4 + z * P5));
  return start + (1 - start - half + (w * rest - high * low));
}
