import { randomOf } from '../random.ts';
import type { BoundInput } from './boundInput.ts';

const PRIMES = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89];

/**
 * A low-discrepancy fill of the input box: Halton's sequence (Numer. Math. 2, 1960; from memory), each
 * coordinate shifted around by a seeded amount (Cranley & Patterson 1976; from memory).
 */
export function fillProbes(inputs: readonly BoundInput[], count: number, seed: number): Float64Array[] {
  const random = randomOf(seed);
  const probes = Array.from({ length: count }, () => new Float64Array(inputs.length));
  inputs.forEach(({ min, max }, k) => {
    const shift = random();
    const inverses = radicalInverses(count, PRIMES[k % PRIMES.length]!);
    probes.forEach((probe, n) => {
      const place = inverses[n]! + shift;
      probe[k] = min + (max - min) * (place - Math.floor(place));
    });
  });
  return probes;
}

/** The first `count` terms to a base; the longest list asked for so far is kept, since every proof asks for the same. */
function radicalInverses(count: number, base: number): Float64Array {
  const known = KNOWN.get(base);
  if (known && known.length >= count) return known;
  const list = Float64Array.from({ length: count }, (_, n) => radicalInverse(n + 1, base));
  KNOWN.set(base, list);
  return list;
}
const KNOWN = new Map<number, Float64Array>();

function radicalInverse(index: number, base: number): number {
  let digit = 1 / base;
  let value = 0;
  for (let rest = index; rest > 0; rest = Math.floor(rest / base)) {
    value += (rest % base) * digit;
    digit /= base;
  }
  return value;
}
