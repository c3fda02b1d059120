import type { BoundInput } from './boundInput.ts';

/**
 * Worsens a measurement from a probe by moving one input at a time by a shrinking share of its range.
 * Bounded by count; the probe handed in stays as it is. With the sign 1 more is worse, with −1 less.
 */
export function hunt(
  from: Float64Array,
  free: readonly number[],
  inputs: readonly BoundInput[],
  measure: (values: Float64Array) => number,
  sign: 1 | -1,
): { values: Float64Array; measured: number } {
  const values = from.slice();
  let measured = measure(values);
  for (let share = 0.25; share > 0.003; share /= 2) {
    for (const index of free) {
      tryStep(index, share);
      tryStep(index, -share);
    }
  }
  return { values, measured };

  function tryStep(index: number, step: number) {
    const { min, max } = inputs[index]!;
    const before = values[index]!;
    const after = Math.min(Math.max(before + step * (max - min), min), max);
    if (after === before) return;
    values[index] = after;
    const found = measure(values);
    if (sign * found > sign * measured) measured = found;
    else values[index] = before;
  }
}
