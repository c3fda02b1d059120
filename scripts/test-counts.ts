import { existsSync, readFileSync } from 'node:fs';

export interface TestCounts {
  passed: number;
  failed: number;
  skipped: number;
}

const UNIT_REPORT = 'test-results/unit.json';
const BROWSER_REPORT = 'test-results/browser.json';

/** Where the test runners leave what they counted. */
export const REPORTS = [UNIT_REPORT, BROWSER_REPORT];

/** What the runners counted, summed; a runner that left no report counts nothing. */
export function countTests(): TestCounts {
  const unit = readReport(UNIT_REPORT, countUnit);
  const browser = readReport(BROWSER_REPORT, countBrowser);
  return {
    passed: unit.passed + browser.passed,
    failed: unit.failed + browser.failed,
    skipped: unit.skipped + browser.skipped,
  };
}

/** "12 passed, 0 failed", with ", 1 skipped" where any was. */
export function closingLine({ passed, failed, skipped }: TestCounts): string {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

function readReport<Report>(path: string, count: (report: Report) => TestCounts): TestCounts {
  if (!existsSync(path)) return { passed: 0, failed: 0, skipped: 0 };
  return count(JSON.parse(readFileSync(path, 'utf8')));
}

/** A test file that does not even load holds no tests, but counts as one that failed. */
export function countUnit(report: {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
  numTodoTests: number;
  testResults: { status: string; assertionResults: unknown[] }[];
}): TestCounts {
  const unloaded = report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** Errors outside any test count as failed ones. */
export function countBrowser(report: {
  stats: { expected: number; unexpected: number; flaky: number; skipped: number };
  errors: unknown[];
}): TestCounts {
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected + flaky, failed: unexpected + report.errors.length, skipped };
}
