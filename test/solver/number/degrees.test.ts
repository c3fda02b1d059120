import { expect, test } from 'vitest';
import { degToRad, radToDeg } from '../../../src/solver/number/index.ts';
import { Exact, errorInUlps, exactDecimal } from '../../support/decimal.ts';
import { type Random, seeded } from '../../support/random.ts';
import { expectWithinOneUlp, scaled } from './worst.ts';

const degPerRad = new Exact(180).div(Exact.acos(-1));
const draw = (random: Random): [number] => [scaled(random, -30, 30)];

test('the factors are the doubles nearest to π/180 and 180/π', () => {
  expect(errorInUlps(degToRad(1), new Exact(1).div(degPerRad))).toBeLessThan(0.5);
  expect(errorInUlps(radToDeg(1), degPerRad)).toBeLessThan(0.5);
});

test('within 1 ulp', () => {
  expectWithinOneUlp({ name: 'degToRad', ours: degToRad, exact: (x) => x.div(degPerRad), draw });
  expectWithinOneUlp({ name: 'radToDeg', ours: radToDeg, exact: (x) => x.times(degPerRad), draw });
});

test('right angles', () => {
  expect(degToRad(90)).toBe(Math.PI / 2);
  expect(degToRad(-180)).toBe(-Math.PI);
  expect(radToDeg(Math.PI)).toBe(180);
  expect(radToDeg(-0)).toBe(-0);
});

test('there and back differs by rounding only', () => {
  const random = seeded(13);
  for (let i = 0; i < 2000; i++) {
    const [x] = draw(random);
    expect(errorInUlps(radToDeg(degToRad(x)), exactDecimal(x))).toBeLessThanOrEqual(2);
  }
});
