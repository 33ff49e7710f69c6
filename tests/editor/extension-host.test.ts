import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, inject, test } from 'vitest';
import { copySamples, openWindow } from './harness.ts';
import type { CaseResult } from './host-suite.ts';

const longest = 180_000;

/** Opens a workspace that asks the driver extension for the suite, and waits for its report. */
async function runHostSuite(): Promise<readonly CaseResult[]> {
  const folder = copySamples();
  const report = join(folder, '..', 'report.json');
  writeFileSync(
    join(folder, 'host-suite.json'),
    JSON.stringify({ suite: inject('editor').hostSuite, report }),
  );
  const { browser, window } = await openWindow(folder);
  try {
    const deadline = Date.now() + longest;
    while (!existsSync(report)) {
      if (Date.now() > deadline) {
        await window.takeScreenshot(join(inject('editor').failuresFolder, 'extension-host.png'));
        throw new Error(`The suite in the extension host wrote no report within ${longest / 1000} s.`);
      }
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  } finally {
    await browser.close();
  }
  const { results, problem } = JSON.parse(readFileSync(report, 'utf8'));
  if (problem !== undefined) {
    throw new Error(`The suite could not run in the extension host: ${problem}`);
  }
  return results;
}

const results = await runHostSuite();

describe('inside the extension host', () => {
  for (const { name, problem } of results) {
    test(name, () => {
      if (problem !== undefined) {
        throw new Error(problem);
      }
    });
  }
});
