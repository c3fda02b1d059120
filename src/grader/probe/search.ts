import type { BoundInput } from './boundInput.ts';

/**
 * Worsens a measurement from a probe by moving one input at a time by a shrinking share of its range.
 * Bounded by count; the probe handed in stays as it is. `worse(a, b)` says whether a is worse than b.
 */
export function hunt(
  from: Float64Array,
  free: readonly number[],
  inputs: readonly BoundInput[],
  measure: (values: Float64Array) => number,
  worse: (a: number, b: number) => boolean,
): { values: Float64Array; measured: number } {
  const values = from.slice();
  let measured = measure(values);
  for (let share = 0.25; share > 0.003; share /= 2) {
    for (const index of free) {
      for (const step of [share, -share]) tryStep(index, step);
    }
  }
  return { values, measured };

  function tryStep(index: number, step: number) {
    const { min, max } = inputs[index]!;
    const before = values[index]!;
    values[index] = Math.min(Math.max(before + step * (max - min), min), max);
    const found = measure(values);
    if (worse(found, measured)) measured = found;
    else values[index] = before;
  }
}
