import { describe, expect, test } from 'vitest';
import { cbrt } from '../../../src/solver/number/index.ts';
import { Exact } from '../../support/decimal.ts';
import { type Random, seeded, whole } from '../../support/random.ts';
import { expectWithinOneUlp, fine, scaled } from './worst.ts';

const RANGES: [string, (random: Random) => [number]][] = [
  ['1 to 8', (random) => [fine(random, 1, 8)]],
  ['about 1', (random) => [1 + whole(random, -200, 200) * Number.EPSILON]],
  ['all normal sizes', (random) => [scaled(random, -1022, 1023.99)]],
  ['subnormal', (random) => [scaled(random, -1074, -1022)]],
  ['next to powers of 8', (random) => [8 ** whole(random, -300, 300) * (1 + whole(random, -3, 3) * Number.EPSILON)]],
];

describe('cbrt within 1 ulp', () => {
  test.each(RANGES)('%s', (range, draw) => {
    expectWithinOneUlp({ name: `cbrt, ${range}`, ours: cbrt, exact: (x) => Exact.cbrt(x), draw });
  });
});

test('cubes of whole numbers come back exactly', () => {
  for (let n = 1; n <= 2000; n++) expect(cbrt(n * n * n)).toBe(n);
  for (let e = -350; e <= 340; e++) expect(cbrt(8 ** e)).toBe(2 ** e);
});

test.each([0, -0, Infinity, -Infinity, Number.NaN])('%d is its own cube root', (x) => {
  expect(cbrt(x)).toBe(x);
});

test('is odd to the bit', () => {
  const random = seeded(12);
  for (let i = 0; i < 2000; i++) {
    const x = scaled(random, -1074, 1023);
    expect(cbrt(-x)).toBe(-cbrt(x));
  }
});
