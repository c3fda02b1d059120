/**
 * Polynomial for (asin √z / √z − 1) / z on 0 ≤ z ≤ 0.25, interpolated at the Chebyshev points
 * (test/solver/number/fit.test.ts makes the numbers anew). Worst error of z·P(z): 2^−57.
 */
const P0 = 0.16666666666666669;
const P1 = 0.07499999999998433;
const P2 = 0.04464285714635543;
const P3 = 0.030381944138531247;
const P4 = 0.02237217294214989;
const P5 = 0.017352392720869973;
const P6 = 0.013971212973552933;
const P7 = 0.011479177415184906;
const P8 = 0.01032281435018578;
const P9 = 0.005457506718640358;
const P10 = 0.01740087944269402;
const P11 = -0.014851887071247204;
const P12 = 0.028757851367421566;

/** asin(√z) / √z − 1 for 0 ≤ z ≤ 0.25. */
export function arcsineKernel(z: number): number {
  const w = z * z;
  const last = P9 + z * P10 + w * (P11 + z * P12);
  const rest = P1 + z * P2 + w * (P3 + z * P4 + w * (P5 + z * P6 + w * (P7 + z * P8 + w * last)));
  return z * (P0 + z * rest);
}
