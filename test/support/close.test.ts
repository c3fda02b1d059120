import { describe, expect, test } from 'vitest';
import { expectClose, expectSameTurn, turnDistance, ulpsBetween } from './close.ts';

describe('expectClose passes', () => {
  test('what is within the tolerance, its edge included', () => {
    expectClose(1.5, 1, 0.5);
    expectClose([1, 2, 3], [1, 2, 3], 0);
    expectClose(new Float64Array([1, 2]), [1.25, 2], 0.25);
    expectClose(-0, 0, 0);
    expectClose([], [], 0);
  });
});

describe('expectClose fails', () => {
  const cases: [string, Parameters<typeof expectClose>, RegExp][] = [
    ['a wrong number', [1, 1.1, 0.09], /off by/],
    ['a difference below any usual default, where none is allowed', [1, 1 + Number.EPSILON, 0], /off by/],
    ['a wrong last element', [[1, 2, 3], [1, 2, 4], 0.5], /\[2\] is 3/],
    ['NaN on the left', [Number.NaN, 0, 1], /actual\[0\] is NaN/],
    ['NaN on the right', [0, Number.NaN, 1], /expected\[0\] is NaN/],
    ['NaN on both sides', [Number.NaN, Number.NaN, 1], /NaN/],
    ['infinity on both sides', [Infinity, Infinity, 1], /Infinity/],
    ['an infinite tolerance', [0, 1e9, Infinity], /no tolerance/],
    ['a tolerance that is NaN', [0, 0, Number.NaN], /no tolerance/],
    ['a negative tolerance', [0, 0, -1], /no tolerance/],
    ['a longer list', [[1, 2, 3], [1, 2], 1], /3 numbers, expected 2/],
    ['a shorter list', [[1], [1, 2], 1], /1 numbers, expected 2/],
    ['a number for a list', [1, [1], 1], /the other a list/],
    ['a hole', [[undefined as unknown as number], [0], 1], /undefined/],
    ['a number in quotes', [['1' as unknown as number], [1], 1], /not a finite number/],
  ];
  test.each(cases)('%s', (_, args, message) => {
    expect(() => expectClose(...args)).toThrow(message);
  });

  test('with the label it was given', () => {
    expect(() => expectClose(1, 2, 0.1, 'tip of the boom')).toThrow(/^tip of the boom:/);
  });
});

describe('expectSameTurn', () => {
  const half = Math.SQRT1_2;
  test('passes q and −q', () => {
    expectSameTurn([0, 0, half, half], [0, 0, -half, -half], 1e-15);
  });
  test('fails for another turn, a wrong length, a quaternion that is not unit, NaN, no tolerance', () => {
    const q = [0, 0, 0, 1];
    expect(() => expectSameTurn([0, 0, half, half], q, 0.29)).toThrow(/1 − \|dot\|/);
    expect(() => expectSameTurn([0, 0, 1], q, 1)).toThrow(/3 numbers/);
    expect(() => expectSameTurn([0, 0, 0, 2], q, 1)).toThrow(/length 2/);
    expect(() => expectSameTurn([0, 0, 0, 0], q, 1)).toThrow(/length 0/);
    expect(() => expectSameTurn([0, 0, Number.NaN, 1], q, 1)).toThrow(/NaN/);
    expect(() => expectSameTurn(q, q, Number.NaN)).toThrow(/no tolerance/);
  });
  test('measures small turns that 1 − |dot| cannot see', () => {
    const angleRad = 1e-9;
    const distance = turnDistance([Math.sin(angleRad / 2), 0, 0, Math.cos(angleRad / 2)], [0, 0, 0, 1]);
    expectClose(distance / (angleRad * angleRad), 1 / 8, 1e-6);
  });
});

describe('ulpsBetween', () => {
  test('counts the steps between doubles', () => {
    expect(ulpsBetween(1, 1)).toBe(0);
    expect(ulpsBetween(1, 1 + Number.EPSILON)).toBe(1);
    expect(ulpsBetween(1, 1 - Number.EPSILON / 2)).toBe(1);
    expect(ulpsBetween(0, -0)).toBe(0);
    expect(ulpsBetween(-Number.MIN_VALUE, Number.MIN_VALUE)).toBe(2);
    expect(ulpsBetween(-2, -2 - 2 * Number.EPSILON)).toBe(1);
  });
  test('refuses what is not finite', () => {
    expect(() => ulpsBetween(Number.NaN, 0)).toThrow(/NaN/);
    expect(() => ulpsBetween(0, Infinity)).toThrow(/Infinity/);
  });
});
