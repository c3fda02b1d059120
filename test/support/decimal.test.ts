import { expect, test } from 'vitest';
import { Exact, errorInUlps, exactDecimal, ulpAt } from './decimal.ts';

test('exactDecimal keeps every bit', () => {
  expect(exactDecimal(0.1).toFixed(55)).toBe('0.1000000000000000055511151231257827021181583404541015625');
  expect(exactDecimal(-3).toNumber()).toBe(-3);
  expect(exactDecimal(Number.MIN_VALUE).toNumber()).toBe(Number.MIN_VALUE);
  expect(exactDecimal(Number.MAX_VALUE).toNumber()).toBe(Number.MAX_VALUE);
});

test('ulpAt is the step to the next double', () => {
  expect(ulpAt(1)).toBe(Number.EPSILON);
  expect(ulpAt(-1.99)).toBe(Number.EPSILON);
  expect(ulpAt(0.999)).toBe(Number.EPSILON / 2);
  expect(ulpAt(0)).toBe(Number.MIN_VALUE);
});

test('errorInUlps sees one bit', () => {
  expect(errorInUlps(1 + Number.EPSILON, new Exact(1))).toBe(1);
  expect(errorInUlps(1, new Exact(1).plus(exactDecimal(Number.EPSILON / 4)))).toBe(0.25);
  expect(() => errorInUlps(Number.NaN, new Exact(1))).toThrow(/NaN/);
});
