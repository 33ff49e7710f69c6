import { existsSync, readFileSync } from 'node:fs';

export const noCounts = { passed: 0, failed: 0, skipped: 0 };

export function addCounts(a, b) {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped };
}

/** The counts in vitest's JSON report; none if it wrote none. */
export function readCounts(file) {
  if (!existsSync(file)) {
    return noCounts;
  }
  const report = JSON.parse(readFileSync(file, 'utf8'));
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}
