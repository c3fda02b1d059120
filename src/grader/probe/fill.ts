import { randomOf } from '../random.ts';
import type { BoundInput } from './boundInput.ts';

const PRIMES = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89];

/**
 * A low-discrepancy fill of the input box: Halton's sequence (Numer. Math. 2, 1960; from memory), each
 * coordinate shifted around by a seeded amount (Cranley & Patterson 1976; from memory).
 */
export function fillProbes(inputs: readonly BoundInput[], count: number, seed: number): Float64Array[] {
  const random = randomOf(seed);
  const shifts = inputs.map(() => random());
  return Array.from({ length: count }, (_, n) =>
    Float64Array.from(inputs, (input, k) => {
      const place = radicalInverse(n + 1, PRIMES[k % PRIMES.length]!) + shifts[k]!;
      return input.min + (input.max - input.min) * (place - Math.floor(place));
    }),
  );
}

function radicalInverse(index: number, base: number): number {
  let digit = 1 / base;
  let value = 0;
  for (let rest = index; rest > 0; rest = Math.floor(rest / base)) {
    value += (rest % base) * digit;
    digit /= base;
  }
  return value;
}
