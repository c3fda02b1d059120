import { describe, expect, test } from 'vitest';
import { acos } from '../../../src/solver/number/index.ts';
import { Exact } from '../../support/decimal.ts';
import { pick, type Random, seeded, whole } from '../../support/random.ts';
import { expectWithinOneUlp, fine, scaled } from './worst.ts';

const RANGES: [string, (random: Random) => [number]][] = [
  ['−1 to 1', (random) => [fine(random, -1, 1)]],
  ['next to 1', (random) => [1 - 2 ** fine(random, -52, -1)]],
  ['next to −1', (random) => [-1 + 2 ** fine(random, -52, -1)]],
  [
    'the last doubles before ±1',
    (random) => [pick(random, [-1, 1]) * (1 - (whole(random, 1, 200) * Number.EPSILON) / 2)],
  ],
  ['about ±½', (random) => [pick(random, [-0.5, 0.5]) * (1 + whole(random, -50, 50) * Number.EPSILON)]],
  ['about 0, down to 1e-300', (random) => [scaled(random, -996, -1)]],
];

describe('acos within 1 ulp', () => {
  test.each(RANGES)('%s', (range, draw) => {
    expectWithinOneUlp({ name: `acos, ${range}`, ours: acos, exact: (x) => Exact.acos(x), draw });
  });
});

test('special values', () => {
  expect(acos(1)).toBe(0);
  expect(acos(-1)).toBe(Math.PI);
  expect(acos(0)).toBe(Math.PI / 2);
  expect(acos(-0)).toBe(Math.PI / 2);
  expect(acos(Number.MIN_VALUE)).toBe(Math.PI / 2);
});

test.each([1 + Number.EPSILON, -1 - Number.EPSILON, 2, Infinity, -Infinity, Number.NaN])('%d gives NaN', (x) => {
  expect(acos(x)).toBeNaN();
});

test('falls as the cosine grows, through the seams at ±½', () => {
  const random = seeded(11);
  for (let i = 0; i < 5000; i++) {
    const x = pick(random, [-0.5, 0.5, fine(random, -1, 1)]) * (1 - whole(random, -4, 4) * Number.EPSILON);
    const next = x + Number.EPSILON;
    if (next <= 1) expect(acos(next)).toBeLessThanOrEqual(acos(x));
  }
});
