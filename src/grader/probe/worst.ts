/** Of measurements the places of the `count` worst, worst first; among equals the earlier ones. With the sign 1 more is worse. */
export function worstOf(measured: Float64Array, count: number, sign: 1 | -1): number[] {
  const worst: number[] = [];
  let bound = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < measured.length; i++) {
    const value = sign * measured[i]!;
    if (worst.length === count && !(value > bound)) continue;
    const behind = worst.findIndex((at) => value > sign * measured[at]!);
    worst.splice(behind < 0 ? worst.length : behind, 0, i);
    if (worst.length > count) worst.pop();
    bound = sign * measured[worst.at(-1)!]!;
  }
  return worst;
}
