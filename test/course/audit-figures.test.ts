import { expect, test } from 'vitest';
import { boundPercent } from '../../src/course/audit-figures.ts';
import { expectClose } from '../support/close.ts';

test('the bound is the rate at which n trials would show nothing once in twenty times', () => {
  expect(boundPercent(3000)).toBe('0.1');
  for (const trials of [300, 3000, 45_678]) {
    const exact = 100 * (1 - 0.05 ** (1 / trials));
    expectClose(Number(boundPercent(trials)) / exact, 1, 0.02);
  }
});
