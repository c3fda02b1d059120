/** Six significant digits, as every measurement is before it is compared (toPrecision is exact by ECMA-262). */
export function sixDigits(value: number): number {
  return Number.isFinite(value) ? Number(value.toPrecision(6)) : value;
}
