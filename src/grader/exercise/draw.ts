import { randomOf } from '../random.ts';
import type { Draw } from './definition.ts';

/** The numbers that a seed draws, by name: whole multiples of each step, written without rounding noise. */
export function drawNumbers(draws: readonly Draw[], seed: number): Record<string, number> {
  const random = randomOf(seed);
  return Object.fromEntries(
    draws.map(({ name, from, to, step }) => {
      const count = Math.floor((to - from) / step + 1e-9) + 1;
      const value = from + step * Math.floor(random() * count);
      return [name, Number(value.toPrecision(12))];
    }),
  );
}
