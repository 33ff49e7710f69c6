import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FileProblem } from '@plimsoll/language/checks/check-file';
import { CheckCache } from '@plimsoll/server/commands/check-cache';
import { afterAll, beforeAll, expect, test } from 'vitest';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'plimsoll-cache-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const newFolder = (): string => mkdtempSync(join(folder, 'case-'));
const OUTLINE = { athletes: ['quill harrow'], defines: false, definesAthlete: false };
const PROBLEM: FileProblem = {
  entryLine: 3,
  problem: {
    code: 'no-load',
    severity: 'warning',
    message: 'Nobody wrote the load',
    span: { line: 1, start: 2, end: 6 },
  },
};
const OTHER: FileProblem = { ...PROBLEM, entryLine: 9 };

async function fill(own: string): Promise<string> {
  const cache = await CheckCache.open(own);
  cache.outline('text', () => OUTLINE);
  cache.problems('key', () => [PROBLEM]);
  await cache.close();
  return join(own, readdirSync(own)[0]!);
}

async function ask(
  own: string,
): Promise<{ readonly problems: readonly FileProblem[]; readonly knew: boolean }> {
  const cache = await CheckCache.open(own);
  let knew = true;
  const problems = cache.problems('key', () => {
    knew = false;
    return [OTHER];
  });
  return { problems, knew };
}

test('what was found is there the next time', async () => {
  const own = newFolder();
  await fill(own);
  expect(await ask(own)).toEqual({ problems: [PROBLEM], knew: true });
});

test('an outline is known by its content', async () => {
  const own = newFolder();
  await fill(own);
  const cache = await CheckCache.open(own);
  expect(cache.outline('text', () => ({ ...OUTLINE, defines: true }))).toEqual(OUTLINE);
  expect(cache.outline('another', () => ({ ...OUTLINE, defines: true })).defines).toBe(true);
});

test('what is not asked for any more is forgotten', async () => {
  const own = newFolder();
  const file = await fill(own);
  const cache = await CheckCache.open(own);
  cache.problems('another', () => []);
  await cache.close();
  expect(readFileSync(file, 'utf8')).toContain('"another"');
  expect((await ask(own)).knew).toBe(false);
});

test('a folder that cannot be made is no failure', async () => {
  const own = newFolder();
  writeFileSync(join(own, 'file'), '');
  const cache = await CheckCache.open(join(own, 'file', 'inside'));
  expect(cache.problems('key', () => [PROBLEM])).toEqual([PROBLEM]);
  await expect(cache.close()).resolves.toBeUndefined();
});

test('nothing is left of a half-written file', async () => {
  const own = newFolder();
  await fill(own);
  expect(readdirSync(own)).toEqual(['plimsoll-check.json']);
});

test('a cache with any byte changed, cut off anywhere, or empty is as good as none', async () => {
  const own = newFolder();
  const file = await fill(own);
  const whole = readFileSync(file);
  for (let at = 0; at < whole.length; at++) {
    const changed = Buffer.from(whole);
    changed[at] = changed[at]! ^ 1;
    writeFileSync(file, changed);
    expect(await ask(own), `byte ${at}`).toEqual({ problems: [OTHER], knew: false });
    writeFileSync(file, whole.subarray(0, at));
    expect(await ask(own), `cut at ${at}`).toEqual({ problems: [OTHER], knew: false });
  }
  writeFileSync(file, whole);
  expect((await ask(own)).knew).toBe(true);
});
