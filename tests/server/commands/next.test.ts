import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { runCommandLine } from '@plimsoll/server/command-line';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'plimsoll-next-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const PLAN = `athlete Quill Harrow
plan Ebb
  for Quill Harrow
  starts 2026-11-02
  weeks 6
  day 1
    Push-up: 10, +1 rep each week
`;
const LOG = 'session 2026-11-16 Quill Harrow, Ebb week 3 day 1\n  Push-up: 12\n';
const NEXT = 'session 2026-11-24 Quill Harrow, Ebb week 4 day 1\n  Push-up: 13\n';
const OTHER = 'session 2026-11-20 Bev Stromm\n  Dip: 5\n';

function write(files: Readonly<Record<string, string | Buffer>>): string {
  const own = mkdtempSync(join(folder, 'case-'));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(own, path)), { recursive: true });
    writeFileSync(join(own, path), content);
  }
  return own;
}

async function run(cwd: string, ...args: string[]) {
  const [out, error]: [string[], string[]] = [[], []];
  const code = await runCommandLine(['next', ...args], {
    write: (text) => out.push(text),
    writeError: (text) => error.push(text),
    colour: false,
    folder: cwd,
    today: '2026-11-24',
  });
  return { code, out: out.join(''), error: error.join('') };
}

describe('next', () => {
  test('prints the session and says where it would go', async () => {
    const own = write({ 'plans.plim': PLAN, 'logs/all.plim': LOG });
    expect(await run(own)).toEqual({
      code: 0,
      out: NEXT,
      error: `For ${join('logs', 'all.plim')}: --write puts it there.\n`,
    });
    expect(readFileSync(join(own, 'logs/all.plim'), 'utf8')).toBe(LOG);
  });

  test('of a day', async () => {
    const own = write({ 'plans.plim': PLAN, 'all.plim': LOG });
    expect((await run(own, '--today', '2026-11-23')).out).toMatch(
      /^session 2026-11-23 Quill Harrow, Ebb week 4 day 1\n/,
    );
  });

  test('of one of several', async () => {
    const own = write({ 'plans.plim': PLAN, 'all.plim': LOG + OTHER });
    expect((await run(own, '--athlete', 'quill harrow')).out).toBe(NEXT);
    expect(await run(own)).toEqual({
      code: 2,
      out: '',
      error: 'Whose? --athlete NAME, one of Bev Stromm, Quill Harrow.\n',
    });
    expect((await run(own, '--athlete', 'Odo Plim')).error).toBe(
      'No athlete is called "Odo Plim": there are Bev Stromm, Quill Harrow.\n',
    );
  });

  test.each<[string, string | Buffer, string | Buffer]>([
    ['with an empty line between', LOG, `${LOG}\n${NEXT}`],
    ['also where the last line has no end', LOG.trimEnd(), `${LOG}\n${NEXT}`],
    [
      'with the line ends of the file',
      LOG.replaceAll('\n', '\r\n'),
      `${LOG}\n${NEXT}`.replaceAll('\n', '\r\n'),
    ],
    ['behind a byte-order mark', `\ufeff${LOG}`, `\ufeff${LOG}\n${NEXT}`],
    ['before what comes after it', `${LOG}\n# Others\n${OTHER}`, `${LOG}\n${NEXT}\n# Others\n${OTHER}`],
  ])('--write puts it in its place, %s', async (_name, before, after) => {
    const own = write({ 'plans.plim': PLAN, 'all.plim': before });
    expect(await run(own, '--athlete', 'Quill Harrow', '--write')).toEqual({
      code: 0,
      out: NEXT,
      error: 'Written to all.plim\n',
    });
    expect(readFileSync(join(own, 'all.plim'), 'utf8')).toBe(after);
  });

  test('--write makes the file of a new month', async () => {
    const own = write({
      'plans.plim': PLAN,
      'quill/2026-10.plim': 'session 2026-10-30 Quill Harrow\n  Dip: 5\n',
    });
    expect((await run(own, '--write')).error).toBe(`Written to ${join('quill', '2026-11.plim')}\n`);
    expect(readdirSync(join(own, 'quill'))).toEqual(['2026-10.plim', '2026-11.plim']);
    expect(readFileSync(join(own, 'quill/2026-11.plim'), 'utf8')).toMatch(
      /^session 2026-11-24 .* week 1 day 1\n/,
    );
  });

  test('--write leaves a file in another encoding alone', async () => {
    const bytes = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(LOG, 'utf16le')]);
    const own = write({ 'plans.plim': PLAN, 'all.plim': bytes });
    expect(await run(own, '--write')).toMatchObject({
      code: 2,
      error: expect.stringContaining('nothing was written'),
    });
    expect(readFileSync(join(own, 'all.plim'))).toEqual(bytes);
  });

  test('ends with 1 where there is nothing to go on from', async () => {
    const own = write({ 'all.plim': 'athlete Quill Harrow\n' });
    expect(await run(own)).toEqual({
      code: 1,
      out: '',
      error: 'Quill Harrow has neither a plan nor a session to go on from.\n',
    });
  });

  test('explains itself', async () => {
    expect((await run(folder, '--help')).out).toMatch(/^plimsoll next \[paths\]/);
  });
});
