import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkInThreads, countThreads, shareOut } from '@plimsoll/server/commands/check-in-threads';
import { checkLogs } from '@plimsoll/server/commands/check-logs';
import type { ReadLog } from '@plimsoll/server/commands/read-paths';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writePractice } from '../../bench/generate-practice.ts';
import { PATIENCE } from '../../language/support/generators/runs.ts';
import { SAMPLES } from '../../language/support/samples.ts';

const TODAY = '2026-11-24';
let folder: string;
let program: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plimsoll-threads-'));
  program = join(folder, 'plimsoll.cjs');
  const entry = new URL('../../../server/src/cli.ts', import.meta.url).pathname;
  await build({
    entryPoints: [entry],
    outfile: program,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    logLevel: 'error',
  });
}, PATIENCE);
afterAll(() => rmSync(folder, { recursive: true }));

const toLog = (path: string, text: string): ReadLog => ({ uri: `memory:/${path}`, path, text });
const samples = SAMPLES.filter(({ name }) => name.startsWith('samples/')).map(({ name, text }) =>
  toLog(name, text),
);
const practice = [...writePractice(150_000)].map(([path, text]) => toLog(path, text));
// Something to find: a slip in every third file.
const slips = practice.map((log, index) =>
  index % 3 === 0 ? { ...log, text: log.text.replace(/^ {4}Back Squat:/m, '    Bak Squat:') } : log,
);

test.each([
  ['the samples', 2, samples],
  ['a practice with slips', 2, slips],
  ['a practice with slips', 3, slips],
  ['two files', 4, samples.slice(0, 2)],
])(
  '%s in %i threads: what one thread finds',
  async (_what, threads, logs) => {
    const alone = checkLogs(logs, TODAY);
    expect(await checkInThreads(logs, TODAY, program, threads)).toEqual(alone);
    expect([...alone.values()].flat().length).toBeGreaterThan(0);
  },
  PATIENCE,
);

test(
  'a thread that cannot begin is an error, and no silence',
  async () => {
    await expect(checkInThreads(samples, TODAY, join(folder, 'nothing.cjs'), 2)).rejects.toThrow(
      /nothing\.cjs/,
    );
  },
  PATIENCE,
);

test('logs are shared out whole, in order, in about equal parts', () => {
  const logs = [900, 100, 500, 500, 1000].map((length, index) => toLog(`${index}.plim`, 'x'.repeat(length)));
  expect(shareOut(logs, 3).map((share) => share.map(({ text }) => text.length))).toEqual([
    [900, 100],
    [500, 500],
    [1000],
  ]);
  expect(shareOut([], 2)).toEqual([[], []]);
});

test('threads are for large practices, and no more than there are cores', () => {
  const large = Array.from({ length: 6 }, (_, index) => toLog(`${index}.plim`, 'x'.repeat(400_000)));
  expect(countThreads(samples, 8)).toBe(1);
  expect(countThreads(large, 8)).toBe(4);
  expect(countThreads(large, 2)).toBe(2);
  expect(countThreads(large, 1)).toBe(1);
});
