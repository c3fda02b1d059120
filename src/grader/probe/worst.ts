/** Of measurements the places of the `count` worst, worst first; among equals the earlier ones. */
export function worstOf(measured: ArrayLike<number>, count: number, sign: number): number[] {
  const worst: number[] = [];
  for (let i = 0; i < measured.length; i++) {
    if (worst.length === count && !(sign * measured[i]! > sign * measured[worst[count - 1]!]!)) continue;
    const behind = worst.findIndex((at) => sign * measured[i]! > sign * measured[at]!);
    worst.splice(behind < 0 ? worst.length : behind, 0, i);
    if (worst.length > count) worst.pop();
  }
  return worst;
}
