import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CheckCache } from '@plimsoll/server/commands/check-cache';
import { checkLogs, checkWithCache } from '@plimsoll/server/commands/check-logs';
import type { ReadLog } from '@plimsoll/server/commands/read-paths';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { edit, practice, type Texts } from '../../language/practice/random-edits.ts';
import { PATIENCE, RUNS } from '../../language/support/generators/runs.ts';

vi.setConfig({ testTimeout: PATIENCE });

const TODAY = '2026-03-10';
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'plimsoll-logs-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const toLogs = (texts: Texts): ReadLog[] =>
  [...texts].map(([uri, text]) => ({ uri: `memory:${uri}`, path: uri, text }));

async function checkAgain(texts: Texts, own: string) {
  const cache = await CheckCache.open(own);
  const found = checkWithCache(toLogs(texts), TODAY, cache);
  await cache.close();
  return found;
}

test('whatever was edited since, a check with the cache says what one without it says', async () => {
  await fc.assert(
    fc.asyncProperty(practice, fc.array(edit, { minLength: 1, maxLength: 5 }), async (begin, edits) => {
      const own = mkdtempSync(join(folder, 'case-'));
      let texts = begin;
      await checkAgain(texts, own);
      for (const change of edits) {
        texts = change(texts);
        expect(await checkAgain(texts, own)).toEqual(checkLogs(toLogs(texts), TODAY));
      }
      rmSync(own, { recursive: true });
    }),
    // Each run checks a practice a dozen times.
    { ...RUNS, numRuns: Math.ceil(RUNS.numRuns / 4) },
  );
});

test('another day is another question', async () => {
  const own = mkdtempSync(join(folder, 'case-'));
  const logs: ReadLog[] = [
    { uri: 'memory:a.plim', path: 'a.plim', text: 'session 2026-03-12 Quill Harrow\n  Push-up: 10\n' },
  ];
  const codes = async (today: '2026-03-10' | '2026-03-14') => {
    const cache = await CheckCache.open(own);
    const found = checkWithCache(logs, today, cache);
    await cache.close();
    return found.get('memory:a.plim')!.map(({ problem }) => problem.code);
  };
  expect(await codes('2026-03-10')).toEqual(['future-session']);
  expect(await codes('2026-03-14')).toEqual([]);
  expect(await codes('2026-03-10')).toEqual(['future-session']);
});
