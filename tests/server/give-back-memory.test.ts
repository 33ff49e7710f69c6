import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';

const source = join(import.meta.dirname, '../../server/src/give-back-memory.ts');

/** A process of its own fills its heap, lets go of it and rests: megabytes resident before and after. */
async function rest(call: string): Promise<{ before: number; after: number }> {
  const script = `
    import { cachedDataVersionTag } from 'node:v8';
    import { giveBackMemoryOnceIdle } from ${JSON.stringify(source)};
    const tag = cachedDataVersionTag();
    let dropped = Array.from({ length: 5e5 }, (_, index) => ({ index, text: 'rep ' + index }));
    let kept = Array.from({ length: 2e6 }, (_, index) => ({ index, text: 'set ' + index }));
    kept = kept.filter(({ index }) => index % 100 === 0);
    ${call};
    const before = process.memoryUsage.rss();
    setTimeout(() => {
      const isCodeGood = cachedDataVersionTag() === tag;
      console.log(JSON.stringify({ before, after: process.memoryUsage.rss(), kept: kept.length, isCodeGood }));
    }, 7000);
  `;
  const args = ['--experimental-strip-types', '--input-type=module', '--eval', script];
  const { stdout } = await promisify(execFile)(process.execPath, args);
  const { before, after, kept, isCodeGood } = JSON.parse(stdout);
  expect(kept).toBe(20_000);
  // What V8 compiled before and after goes together.
  expect(isCodeGood).toBe(true);
  return { before: before / 1e6, after: after / 1e6 };
}

test('a process that rests gives back what it needs no more; without, it keeps most of it', async () => {
  const [given, kept] = await Promise.all([
    rest('giveBackMemoryOnceIdle(() => { dropped = []; })'),
    rest('dropped.length'),
  ]);
  expect(given.after).toBeLessThan(given.before / 2);
  expect(given.after).toBeLessThan(kept.after);
});
