import { describe, expect, test } from 'vitest';
import { closingLine, countBrowser, countUnit } from '../../scripts/test-counts.ts';

const file = (status: string, tests: number) => ({ status, assertionResults: Array(tests).fill({}) });

describe('counts', () => {
  test('of the unit tests', () => {
    const report = { numPassedTests: 5, numFailedTests: 1, numPendingTests: 2, numTodoTests: 1, testResults: [] };
    expect(countUnit(report)).toEqual({ passed: 5, failed: 1, skipped: 3 });
  });

  test('a file of tests that does not load has failed', () => {
    const testResults = [file('passed', 5), file('failed', 0), file('failed', 2)];
    const report = { numPassedTests: 6, numFailedTests: 1, numPendingTests: 0, numTodoTests: 0, testResults };
    expect(countUnit(report).failed).toBe(2);
  });

  test('of the browser tests', () => {
    const report = { stats: { expected: 7, unexpected: 1, flaky: 0, skipped: 2 }, errors: [] };
    expect(countBrowser(report)).toEqual({ passed: 7, failed: 1, skipped: 2 });
  });

  test('an error outside the browser tests has failed', () => {
    const report = { stats: { expected: 7, unexpected: 0, flaky: 0, skipped: 0 }, errors: [{}] };
    expect(countBrowser(report).failed).toBe(1);
  });
});

test('the closing line is the one that CI reads', () => {
  expect(closingLine({ passed: 12, failed: 0, skipped: 0 })).toBe('12 passed, 0 failed');
  expect(closingLine({ passed: 12, failed: 3, skipped: 1 })).toBe('12 passed, 3 failed, 1 skipped');
});
