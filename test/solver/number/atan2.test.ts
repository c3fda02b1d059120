import { describe, expect, test } from 'vitest';
import { atan2 } from '../../../src/solver/number/index.ts';
import { Exact } from '../../support/decimal.ts';
import { pick, type Random, seeded, whole } from '../../support/random.ts';
import { expectWithinOneUlp, fine, scaled } from './worst.ts';

const ofRatio = (random: Random, ratio: number): [number, number] => {
  const x = scaled(random, -3, 3);
  return pick(random, [
    [ratio * x, x],
    [x, ratio * x],
  ]);
};

const RANGES: [string, (random: Random) => [number, number]][] = [
  ['all directions', (random) => [fine(random, -1, 1), fine(random, -1, 1)]],
  ['ratios 0 to 1', (random) => ofRatio(random, fine(random, 0, 1))],
  [
    'ratios about ¼, ½, 23/32 and 1',
    (random) => ofRatio(random, pick(random, [0.25, 0.5, 0.71875, 1]) * nearOne(random)),
  ],
  ['whole coordinates', (random) => [whole(random, -40, 40) || 1, whole(random, -40, 40) || 1]],
  ['far apart in size', (random) => [scaled(random, -1070, 1023), scaled(random, -1070, 1023)]],
  ['both tiny or both huge', bothScaled],
  ['next to the −x axis', (random) => [scaled(random, -60, -1), -fine(random, 1, 2)]],
  ['subnormal', (random) => [whole(random, 1, 5000) * Number.MIN_VALUE, whole(random, -5000, -1) * Number.MIN_VALUE]],
];

function nearOne(random: Random): number {
  return 1 + whole(random, -8, 8) * Number.EPSILON;
}

function bothScaled(random: Random): [number, number] {
  const size = 2 ** fine(random, -1000, 1020);
  return [fine(random, -1, 1) * size, fine(random, -1, 1) * size];
}

describe('atan2 within 1 ulp', () => {
  test.each(RANGES)('%s', (range, draw) => {
    expectWithinOneUlp({ name: `atan2, ${range}`, ours: atan2, exact: (y, x) => Exact.atan2(y, x), draw });
  });
});

/** ECMA-262, Math.atan2 (from memory). */
describe('special values', () => {
  const PI = Math.PI;
  const CASES: [number, number, number][] = [
    [0, 0, 0],
    [-0, 0, -0],
    [0, -0, PI],
    [-0, -0, -PI],
    [0, 1, 0],
    [-0, 1, -0],
    [0, -1, PI],
    [-0, -1, -PI],
    [1, 0, PI / 2],
    [1, -0, PI / 2],
    [-1, 0, -PI / 2],
    [-1, -0, -PI / 2],
    [1, Infinity, 0],
    [-1, Infinity, -0],
    [1, -Infinity, PI],
    [-1, -Infinity, -PI],
    [Infinity, 1, PI / 2],
    [-Infinity, -1, -PI / 2],
    [Infinity, Infinity, PI / 4],
    [Infinity, -Infinity, (3 * PI) / 4],
    [-Infinity, Infinity, -PI / 4],
    [-Infinity, -Infinity, (-3 * PI) / 4],
    [1, 1, PI / 4],
    [1, -1, (3 * PI) / 4],
    [Number.MIN_VALUE, Number.MAX_VALUE, 0],
    [Number.NaN, 1, Number.NaN],
    [1, Number.NaN, Number.NaN],
    [0, Number.NaN, Number.NaN],
    [Number.NaN, 0, Number.NaN],
    [Infinity, Number.NaN, Number.NaN],
    [Number.NaN, Infinity, Number.NaN],
  ];
  test.each(CASES)('atan2(%d, %d) is %d', (y, x, expected) => {
    expect(atan2(y, x)).toBe(expected);
  });
});

test('mirrored points have mirrored angles, to the bit across the x axis', () => {
  const random = seeded(9);
  for (let i = 0; i < 5000; i++) {
    const [y, x] = [scaled(random, -30, 30), scaled(random, -30, 30)];
    expect(atan2(-y, x)).toBe(-atan2(y, x));
  }
});
