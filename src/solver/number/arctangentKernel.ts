/**
 * Polynomial for (atan √z / √z − 1) / z on 0 ≤ z ≤ 0.0626, interpolated at the Chebyshev points
 * (test/solver/number/fit.test.ts makes the numbers anew). Worst error of z·P(z): 2^−58.7.
 */
const P0 = -0.3333333333333333;
const P1 = 0.19999999999998921;
const P2 = -0.14285714285253562;
const P3 = 0.11111111035291911;
const P4 = -0.09090902827435111;
const P5 = 0.07692016123431836;
const P6 = -0.06658651772903566;
const P7 = 0.05752619086241913;
const P8 = -0.04101828156464053;

/** atan(t) − t for |t| ≤ 0.25. */
export function arctangentKernel(t: number): number {
  const z = t * t;
  const w = z * z;
  const rest = P1 + z * P2 + w * (P3 + z * P4 + w * (P5 + z * P6 + w * (P7 + z * P8)));
  return z * t * (P0 + z * rest);
}
