/**
 * Polynomial for (sin √z / √z − 1) / z on 0 ≤ z ≤ 0.786², interpolated at the Chebyshev points
 * (test/solver/number/fit.test.ts makes the numbers anew). Worst error of z·P(z): 2^−57.8.
 */
const P0 = -0.16666666666666666;
const P1 = 0.008333333333333331;
const P2 = -0.00019841269841265027;
const P3 = 0.0000027557319219310648;
const P4 = -2.5052106222548625e-8;
const P5 = 1.60585300511693e-10;
const P6 = -7.586604768695636e-13;

/**
 * Sine of high + low radians, |high| ≤ 0.786, |low| at most half an ulp of high.
 * Terms are paired so that the processor can work on two at a time.
 */
export function sineKernel(high: number, low: number): number {
  const z = high * high;
  const w = z * z;
  const rest = P1 + z * P2 + w * (P3 + z * P4 + w * (P5 + z * P6));
  return high + (z * high * (P0 + z * rest) + low * (1 - 0.5 * z));
}
