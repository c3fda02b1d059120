import type { BoundInput } from './boundInput.ts';
import { restValues } from './boundInput.ts';

/**
 * The canonical probes, the same for every seed and every answer, simplest first: rest; each input at its
 * ends, half way and a quarter of the way; every pair of ends; and pairs again with each switch at its
 * other end.
 */
export function ladder(inputs: readonly BoundInput[]): Float64Array[] {
  const rest = restValues(inputs);
  const probes = [rest];
  const withValues = (...set: [index: number, value: number][]) => {
    const probe = rest.slice();
    for (const [index, value] of set) probe[index] = value;
    probes.push(probe);
  };
  inputs.forEach((input, index) => {
    for (const value of levels(input)) withValues([index, value]);
  });
  for (const [a, b] of pairs(inputs.length)) {
    for (const x of ends(inputs[a]!)) for (const y of ends(inputs[b]!)) withValues([a, x], [b, y]);
  }
  inputs.forEach((input, index) => {
    if (input.channel !== 'switch') return;
    for (const end of ends(input)) addPairsUnder(index, end);
  });
  return probes;

  function addPairsUnder(index: number, end: number) {
    for (const [a, b] of pairs(inputs.length)) {
      if (a === index || b === index) continue;
      for (const x of ends(inputs[a]!)) for (const y of ends(inputs[b]!)) withValues([index, end], [a, x], [b, y]);
    }
  }
}

/** The ends that are off rest, the upper first. */
export function ends(input: BoundInput): number[] {
  return [input.max, input.min].filter((value) => value !== input.rest);
}

function levels(input: BoundInput): number[] {
  return [1, 0.5, 0.25].flatMap((part) => ends(input).map((end) => input.rest + (end - input.rest) * part));
}

function* pairs(count: number): Generator<[number, number]> {
  for (let a = 0; a < count; a++) for (let b = a + 1; b < count; b++) yield [a, b];
}
