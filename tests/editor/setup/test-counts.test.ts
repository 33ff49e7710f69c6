import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { addCounts, noCounts, readCounts } from './test-counts.mjs';

test('counts what a report of vitest says', () => {
  const folder = mkdtempSync(join(tmpdir(), 'plimsoll-counts-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = join(folder, 'report.json');
  const report = { numPassedTests: 7, numFailedTests: 1, numPendingTests: 2, numTodoTests: 3 };
  writeFileSync(file, JSON.stringify(report));
  expect(readCounts(file)).toEqual({ passed: 7, failed: 1, skipped: 5 });
});

test('a runner that wrote no report counts nothing', () => {
  expect(readCounts('no-such-report.json')).toEqual(noCounts);
});

test('counts add up', () => {
  const counts = { passed: 1, failed: 2, skipped: 3 };
  expect(addCounts(counts, counts)).toEqual({ passed: 2, failed: 4, skipped: 6 });
});
