import { Decimal } from 'decimal.js';

/** Decimal numbers of 60 digits: enough for a double's error wherever the tests look. */
export const Exact = Decimal.clone({ precision: 60, minE: -5000, maxE: 5000 });

/** The very value of a double, where `new Decimal(number)` would take the shortest digits that read back as it. */
export function exactDecimal(value: number): Decimal {
  let whole = value;
  let halvings = 0;
  for (; !Number.isInteger(whole); halvings++) whole *= 2;
  return new Exact(BigInt(whole).toString()).div(new Exact(2).pow(halvings));
}

/** The step between doubles at the size of `value`: 2^(e−52) for 2^e ≤ |value| < 2^(e+1). */
export function ulpAt(value: number): number {
  const bits = new BigUint64Array(new Float64Array([value]).buffer)[0];
  const exponent = Number((bits >> 52n) & 0x7ffn);
  return 2 ** (Math.max(exponent, 1) - 1075);
}

/** |actual − expected| in units of the last place of `expected`. */
export function errorInUlps(actual: number, expected: Decimal): number {
  if (!Number.isFinite(actual)) throw new Error(`errorInUlps: actual is ${actual}`);
  return exactDecimal(actual)
    .minus(expected)
    .abs()
    .div(exactDecimal(ulpAt(expected.toNumber())))
    .toNumber();
}
