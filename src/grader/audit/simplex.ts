import type { BoundInput } from '../probe/boundInput.ts';

const ROUNDS = 60;

/**
 * The largest value of `badness` that a downhill simplex (Nelder & Mead, Comput. J. 7, 1965; coefficients
 * 1, 2, ½, ½ from memory) finds from a pose, within the inputs' ranges.
 */
export function worstBySimplex(
  from: Float64Array,
  free: readonly number[],
  inputs: readonly BoundInput[],
  badness: (values: Float64Array) => number,
): number {
  if (free.length === 0) return badness(from);
  const corner = (values: Float64Array) => ({ values, value: badness(values) });
  const corners = [from.slice(), ...free.map((index) => stepped(from, index, inputs[index]!))].map(corner);
  for (let round = 0; round < ROUNDS; round++) {
    corners.sort((a, b) => b.value - a.value);
    const last = corners.at(-1)!;
    const middle = middleOf(corners.slice(0, -1).map(({ values }) => values));
    const along = (factor: number) => corner(clamped(middle, last.values, factor));
    const reflected = along(-1);
    const better = reflected.value > corners[0]!.value ? best(reflected, along(-2)) : best(reflected, along(0.5));
    if (better.value > last.value) corners[corners.length - 1] = better;
    else shrink(corners);
  }
  return Math.max(...corners.map(({ value }) => value));

  function clamped(middle: Float64Array, end: Float64Array, factor: number): Float64Array {
    const values = from.slice();
    for (const index of free) {
      const { min, max } = inputs[index]!;
      const raw = middle[index]! + factor * (end[index]! - middle[index]!);
      values[index] = Math.min(Math.max(raw, min), max);
    }
    return values;
  }

  function shrink(all: { values: Float64Array; value: number }[]) {
    for (let i = 1; i < all.length; i++) all[i] = corner(clamped(all[0]!.values, all[i]!.values, 0.5));
  }
}

function best<T extends { value: number }>(a: T, b: T): T {
  return b.value > a.value ? b : a;
}

function stepped(from: Float64Array, index: number, { min, max }: BoundInput): Float64Array {
  const values = from.slice();
  const step = (max - min) / 5;
  values[index] = values[index]! + step <= max ? values[index]! + step : values[index]! - step;
  return values;
}

function middleOf(all: readonly Float64Array[]): Float64Array {
  const middle = new Float64Array(all[0]!.length);
  for (const values of all) for (let i = 0; i < middle.length; i++) middle[i] = middle[i]! + values[i]! / all.length;
  return middle;
}
