import type { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { cos, sin } from '../../../src/solver/number/index.ts';
import { expectClose } from '../../support/close.ts';
import { Exact, exactDecimal } from '../../support/decimal.ts';
import { pick, type Random, seeded, whole } from '../../support/random.ts';
import { expectWithinOneUlp, fine, scaled } from './worst.ts';

/** Doubles next to a multiple of a quarter turn, where nearly all leading bits cancel. */
const nearQuarter = (random: Random): [number] => {
  const quarters = pick(random, [whole(random, 1, 8), whole(random, 1, 1_048_000)]);
  return [pick(random, [-1, 1]) * quarters * (Math.PI / 2) * (1 + whole(random, -3, 3) * Number.EPSILON)];
};

const RANGES: [string, (random: Random) => [number]][] = [
  ['an eighth turn', (random) => [fine(random, -Math.PI / 4, Math.PI / 4)]],
  ['ten radians', (random) => [fine(random, -10, 10)]],
  ['1.647e6 radians', (random) => [fine(random, -1_647_000, 1_647_000)]],
  ['next to multiples of π/2', nearQuarter],
  ['next to odd multiples of π/4', (random) => [(whole(random, 0, 500_000) + 0.5) * (Math.PI / 2)]],
  ['1e-300 to 1', (random) => [scaled(random, -996, 0)]],
];

describe.each(RANGES)('within 1 ulp, %s', (range, draw) => {
  test('sin', () => expectWithinOneUlp({ name: `sin, ${range}`, ours: sin, exact: (x) => Exact.sin(x), draw }));
  test('cos', () => expectWithinOneUlp({ name: `cos, ${range}`, ours: cos, exact: (x) => Exact.cos(x), draw }));
});

test('sin of a subnormal number is that number', () => {
  for (const x of [Number.MIN_VALUE, -Number.MIN_VALUE, 1.5e-310, 2 ** -1022]) expect(sin(x)).toBe(x);
});

/**
 * Doubles q·2^e up to 1.647e6 next to which a multiple of π/2 lies closest: q is the denominator of a convergent of
 * 2^e / (π/2) (W. Kahan's method, as J.-M. Muller, Elementary Functions, tells it; from memory).
 */
function hardestDoubles(): number[] {
  const found: number[] = [];
  for (let e = -60; e <= 20; e++) {
    let rest = new Exact(2).pow(e).div(Exact.acos(-1).div(2));
    let [before, q] = [0, 1];
    while (q < 2 ** 53) {
      if (q * 2 ** e <= 1_647_000) found.push(q * 2 ** e);
      const fraction = rest.minus(rest.floor());
      rest = new Exact(1).div(fraction);
      [before, q] = [q, rest.floor().toNumber() * q + before];
    }
  }
  return found;
}

describe('within 1 ulp at the doubles closest to multiples of π/2', () => {
  const hardest = hardestDoubles();
  const draw = (random: Random): [number] => [pick(random, hardest)];
  test('among them are ones whose cosine or sine is below 2^−60', () => {
    const least = Math.min(...hardest.filter((x) => x > 1).map((x) => Math.min(Math.abs(sin(x)), Math.abs(cos(x)))));
    expect(least).toBeLessThan(2 ** -60);
  });
  test('sin', () => expectWithinOneUlp({ name: 'sin, hardest', ours: sin, exact: (x) => Exact.sin(x), draw }));
  test('cos', () => expectWithinOneUlp({ name: 'cos, hardest', ours: cos, exact: (x) => Exact.cos(x), draw }));
});

describe('special values', () => {
  test('zeros keep their sign under sin', () => {
    expect(sin(0)).toBe(0);
    expect(sin(-0)).toBe(-0);
    expect(cos(0)).toBe(1);
    expect(cos(-0)).toBe(1);
  });

  test.each([Infinity, -Infinity, Number.NaN])('%d gives NaN', (x) => {
    expect(sin(x)).toBeNaN();
    expect(cos(x)).toBeNaN();
  });

  test('sin is odd and cos even to the bit', () => {
    const random = seeded(5);
    for (let i = 0; i < 5000; i++) {
      const x = scaled(random, -40, 40);
      expect(sin(-x)).toBe(-sin(x));
      expect(cos(-x)).toBe(cos(x));
    }
  });
});

describe('beyond 1.647e6', () => {
  test('the sine of a number less than half an ulp away', () => {
    const double = exactDecimal(2 * Math.PI);
    const lostPerTurn = Exact.acos(-1).times(2).minus(double);
    const meant = (x: Decimal) => x.plus(x.div(double).trunc().times(lostPerTurn));
    const draw = (random: Random): [number] => [scaled(random, 20.7, 90)];
    expectWithinOneUlp({ name: 'sin, far', ours: sin, exact: (x) => Exact.sin(meant(x)), draw, count: 400 });
    expect(lostPerTurn.div(double).toNumber()).toBeLessThan(Number.EPSILON / 4);
  });

  test('still a sine and a cosine, up to the largest double', () => {
    const random = seeded(6);
    for (const x of [Number.MAX_VALUE, ...Array.from({ length: 400 }, () => scaled(random, 20.7, 1023))]) {
      expectClose(sin(x) ** 2 + cos(x) ** 2, 1, 4 * Number.EPSILON);
    }
  });
});
