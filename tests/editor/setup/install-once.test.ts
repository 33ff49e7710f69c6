import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { installOnce } from './install-once.mjs';

let cache: string;
beforeEach(() => {
  cache = mkdtempSync(join(tmpdir(), 'plimsoll-cache-'));
});
afterEach(() => rmSync(cache, { recursive: true }));

async function installTool(folder: string): Promise<void> {
  writeFileSync(join(folder, 'tool'), 'whole');
}

test('installs a tool once', async () => {
  let installs = 0;
  const install = (folder: string) => {
    installs++;
    return installTool(folder);
  };
  expect(await installOnce('tool-1', install, cache)).toBe(join(cache, 'tool-1'));
  await installOnce('tool-1', install, cache);
  expect(installs).toBe(1);
  expect(readdirSync(cache)).toEqual(['tool-1']);
});

test('a failed install leaves nothing and is told', async () => {
  const install = async (folder: string) => {
    await installTool(folder);
    throw new Error('no connection');
  };
  await expect(installOnce('tool-1', install, cache)).rejects.toThrow('no connection');
  expect(readdirSync(cache)).toEqual([]);
});

test('an install that was cut off is removed and done again', async () => {
  const processThatIsGone = 2 ** 22 + 1; // Above the highest process number of Linux.
  mkdirSync(join(cache, `tool-1.partial-${processThatIsGone}`));
  const folder = await installOnce('tool-1', installTool, cache);
  expect(existsSync(join(folder, 'tool'))).toBe(true);
  expect(readdirSync(cache)).toEqual(['tool-1']);
});

test('what another run is installing is left alone', async () => {
  const partial = `tool-1.partial-${process.ppid}`;
  mkdirSync(join(cache, partial));
  await installOnce('tool-1', installTool, cache);
  expect(readdirSync(cache)).toEqual(['tool-1', partial]);
});

test('two runs at once end with the same whole folder', async () => {
  const install = async (folder: string) => {
    mkdirSync(join(cache, 'tool-1'));
    writeFileSync(join(cache, 'tool-1', 'tool'), 'by the other run');
    await installTool(folder);
  };
  expect(await installOnce('tool-1', install, cache)).toBe(join(cache, 'tool-1'));
  expect(readdirSync(cache)).toEqual(['tool-1']);
});
