import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { crc32 } from 'node:zlib';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';

const root = mkdtempSync(join(tmpdir(), 'plimsoll-starter-'));
const caches = join(root, 'caches');
const starter = join(root, 'own.cjs');
const program = join(root, 'own-program.cjs');

beforeAll(() =>
  build({
    entryPoints: [join(import.meta.dirname, '../../server/src/starter.ts')],
    bundle: true,
    platform: 'node',
    outfile: starter,
    define: { PROGRAM: '"own-program.cjs"' },
  }),
);
afterAll(() => rmSync(root, { recursive: true }));

function start(text: string, environment: Record<string, string> = {}): string {
  if (!existsSync(program) || readFileSync(program, 'utf8') !== text) writeFileSync(program, text);
  const env = { ...process.env, NODE_COMPILE_CACHE: caches, ...environment };
  return execFileSync(process.execPath, [starter], { env, encoding: 'utf8' });
}

/** Programs of the same length that differ in what a function does which is compiled when it is called. */
const say = (word: 'one' | 'two') => `const say = () => '${word}'; process.stdout.write(say());`;

function keptFile(): string | undefined {
  const names = existsSync(caches) ? readdirSync(caches, { recursive: true, encoding: 'utf8' }) : [];
  const kept = names.find((name) => name.endsWith('own-program.cjs.code'));
  return kept && join(caches, kept);
}

/** The line that says of what the code is, and the code. */
function split(bytes: Buffer): [key: Buffer, code: Buffer] {
  const end = bytes.indexOf('\n') + 1;
  return [bytes.subarray(0, end), bytes.subarray(end)];
}

/** Puts code of the first program where the second one's is looked for, as anybody could who may write there. */
function putCodeOfOne(): string {
  start(say('one'));
  const [, one] = split(readFileSync(keptFile()!));
  start(say('two'));
  const file = keptFile()!;
  const [key] = split(readFileSync(file));
  writeFileSync(file, Buffer.concat([Buffer.from(key.toString().replace(/\d+\n$/, `${crc32(one)}\n`)), one]));
  return file;
}

test('a start runs what an earlier one compiled, and nothing that another program left', () => {
  expect(start(say('one'))).toBe('one');
  const [, one] = split(readFileSync(keptFile()!));
  expect(start(say('two'))).toBe('two');
  const [, two] = split(readFileSync(keptFile()!));
  expect(two.equals(one)).toBe(false);
  // V8 takes one program of a length for another: only by the code can it say what its text does not.
  putCodeOfOne();
  expect(start(say('two'))).toBe('one');
});

test.skipIf(process.platform === 'win32').each([
  ['the file', (file: string) => file],
  ['its folder', dirname],
])('code that others may write is not run: %s', (_what, find) => {
  const file = putCodeOfOne();
  const open = find(file);
  const { mode } = statSync(open);
  chmodSync(open, mode | 0o002);
  expect(start(say('two'))).toBe('two');
  chmodSync(dirname(file), statSync(dirname(file)).mode & ~0o002);
});

test.each([
  ['that belongs to nothing', (bytes: Buffer) => Buffer.concat([Buffer.from('x'), bytes])],
  ['that is cut off', (bytes: Buffer) => bytes.subarray(0, -20)],
  ['with another byte', (bytes: Buffer) => bytes.with(-40, bytes.at(-40)! ^ 1)],
  ['that is empty', () => Buffer.alloc(0)],
])('a file %s is written anew', (_what, damage) => {
  start(say('one'));
  writeFileSync(keptFile()!, damage(readFileSync(keptFile()!)));
  expect(start(say('one'))).toBe('one');
  const [head, code] = split(readFileSync(keptFile()!));
  expect(head.toString()).toBe(
    `${program} ${say('one').length} ${statSync(program).ctimeMs} ${crc32(code)}\n`,
  );
  expect(code.length).toBeGreaterThan(0);
});

test('a program that is killed some time later has its code kept by then', () => {
  rmSync(caches, { recursive: true, force: true });
  // That time is over at once, and then so is the program.
  const later = `globalThis.setTimeout = (call) => { call(); process.kill(process.pid, 'SIGKILL'); };`;
  expect(() => start(later)).toThrow(expect.objectContaining({ signal: 'SIGKILL' }));
  expect(keptFile()).toBeDefined();
});

test('where Node keeps nothing, nothing is kept', () => {
  rmSync(caches, { recursive: true, force: true });
  expect(start(say('one'), { NODE_DISABLE_COMPILE_CACHE: '1' })).toBe('one');
  expect(keptFile()).toBeUndefined();
});
