import { execFile } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { runCommandLine } from '@plimsoll/server/command-line';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'plimsoll-command-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

function write(files: Readonly<Record<string, string | Buffer>>): string {
  const own = mkdtempSync(join(folder, 'case-'));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(own, path)), { recursive: true });
    writeFileSync(join(own, path), content);
  }
  return own;
}

/** Runs a command in a folder as if typed there. */
async function run(cwd: string, ...args: string[]) {
  const [out, error]: [string[], string[]] = [[], []];
  const code = await runCommandLine(args, {
    write: (text) => out.push(text),
    writeError: (text) => error.push(text),
    colour: false,
    folder: cwd,
    today: '2026-11-24',
  });
  return { code, out: out.join(''), error: error.join('') };
}

const athlete = 'athlete Quill Harrow\n  bodyweight 80 kg on 2026-01-01\n\n';
const good = `${athlete}session 2026-11-17 Quill Harrow\n  Back Squat: 3x5 @ 100 kg rpe 8\n`;
const warning = `${athlete}session 2026-11-17 Quill Harrow\n\tHarbour Hop: 5\n`;
const error = `${athlete}session 2026-11-17 Quill Harrow\n  Back Squat: 5 @ 22,5 kg\n`;

describe('check', () => {
  test('shows the line and underlines the place', async () => {
    const { code, out } = await run(write({ 'logs/a.plim': error }), 'check');
    expect(out).toMatch(
      /^logs\/a\.plim:5:19: error: .+ \[decimal-comma\]\n {2}Back Squat: 5 @ 22,5 kg\n {18}\^{4}\n1 error, 0 warnings in 1 file\n$/,
    );
    expect(code).toBe(1);
  });

  test('keeps tabs before the caret', async () => {
    const { code, out } = await run(write({ 'a.plim': warning }), 'check', 'a.plim');
    expect(out).toMatch(
      /^a\.plim:5:2: warning: .+\n\tHarbour Hop: 5\n\t\^{11}\n0 errors, 1 warning in 1 file\n$/,
    );
    expect(code).toBe(0);
  });

  test.each([
    ['no problem', good, [], 0],
    ['a warning', warning, [], 0],
    ['a warning that fails', warning, ['--fail-on', 'warning'], 1],
    ['an error', error, [], 1],
    ['an error though only errors fail', error, ['--fail-on=error'], 1],
    [
      'an ignored warning',
      warning.replace(': 5', ': 5 # ignore unknown-movement'),
      ['--fail-on', 'warning'],
      0,
    ],
  ])('%s', async (_name, text, options, expected) => {
    expect((await run(write({ 'a.plim': text }), 'check', ...options)).code).toBe(expected);
  });

  test.each([
    ['one made an error', ['--severity', 'unknown-movement=error'], 1, 'error:', '1 error, 0 warnings'],
    [
      'one turned off',
      ['--severity=unknown-movement=off', '--fail-on=warning'],
      0,
      '',
      '0 errors, 0 warnings',
    ],
    [
      'several, and the option twice',
      ['--severity', 'no-load=error, unknown-movement=info', '--severity', 'load-jump=off'],
      0,
      'info:',
      '0 errors, 0 warnings, 1 note',
    ],
  ])('with severities: %s', async (_name, options, expected, severity, summary) => {
    const { code, out } = await run(write({ 'a.plim': warning }), 'check', ...options);
    expect(code).toBe(expected);
    expect(out).toContain(severity);
    expect(out).toContain(`${summary} in 1 file\n`);
  });

  test.each([
    ['lod-jump=off', '--severity: No check is called lod-jump: did you mean load-jump?\n'],
    ['load-jump=loud', '--severity: load-jump is set to error, warning, info, hint or off, not "loud"\n'],
    ['load-jump', '--severity: load-jump is set to error, warning, info, hint or off, not nothing\n'],
  ])('a severity that is not understood: %s', async (option, told) => {
    const { code, error } = await run(write({ 'a.plim': good }), 'check', '--severity', option);
    expect([code, error]).toEqual([2, told]);
  });

  test('looks names up in all files given', async () => {
    const own = write({ 'a.plim': warning, 'moves/b.plim': 'exercise Harbour Hop\n' });
    expect((await run(own, 'check', 'a.plim', 'moves')).out).toBe('0 errors, 0 warnings in 2 files\n');
  });

  test('as JSON says the same', async () => {
    const { out, code } = await run(write({ 'a.plim': error }), 'check', '--format', 'json');
    expect(JSON.parse(out)).toMatchObject({
      files: 1,
      errors: 1,
      warnings: 0,
      problems: [
        { path: 'a.plim', line: 5, column: 19, endColumn: 23, severity: 'error', code: 'decimal-comma' },
      ],
    });
    expect(code).toBe(1);
  });

  test('reads the other files when one cannot be read', async () => {
    const own = write({ 'a.plim': error, 'b.plim': Buffer.from([0, 1, 2]), 'c.plim': '' });
    const { out } = await run(own, 'check');
    expect(out).toContain(
      'b.plim:1:1: warning: The file holds something else than text and was not read [unreadable-file]\n',
    );
    expect(out).toContain('1 error, 1 warning in 3 files\n');
  });

  test('lets no log steer the terminal', async () => {
    const { out } = await run(write({ 'a.plim': good.replace('Back', 'B\u001b[31mack') }), 'check');
    expect(out).not.toContain('\u001b');
  });

  test('lines are what the problem matcher of the extension reads', async () => {
    const manifest = JSON.parse(readFileSync(join(root, 'extension/package.json'), 'utf8'));
    const { regexp, file, line, column, severity, message, code } =
      manifest.contributes.problemMatchers[0].pattern;
    const { out } = await run(write({ 'a.plim': error }), 'check');
    const found = new RegExp(regexp).exec(out.split('\n')[0]!)!;
    expect([file, line, column, severity, code].map((group) => found[group])).toEqual([
      'a.plim',
      '5',
      '19',
      'error',
      'decimal-comma',
    ]);
    expect(found[message]).toMatch(/^\w.+\w$/);
    expect(
      out
        .split('\n')
        .slice(1)
        .filter((other) => new RegExp(regexp).test(other)),
    ).toEqual([]);
  });
});

describe('report', () => {
  test('prints the last trained week of each athlete', async () => {
    const { code, out, error: told } = await run(write({ 'a.plim': good }), 'report');
    expect(out).toContain('Quill Harrow\n  week 2026-W47');
    expect(out).toContain('3 working sets · 1 500 kg');
    expect([code, told]).toEqual([0, '']);
  });

  test('as JSON explains every number', async () => {
    const { out } = await run(write({ 'a.plim': good }), 'report', '--format', 'json', '--week', '2026-W47');
    const report = JSON.parse(out);
    const [session] = report.athletes[0].weeks[0].sessions;
    expect(report).toMatchObject({ today: '2026-11-24', athletes: [{ athlete: 'Quill Harrow' }] });
    expect(session.numbers).toContainEqual(
      expect.objectContaining({ value: 1500, unit: 'kg', method: 'volume-load', source: expect.any(String) }),
    );
  });

  test('takes the day from --today', async () => {
    const { out } = await run(write({ 'a.plim': good }), 'report', '--today', '2026-11-16');
    expect(out).toContain('no session yet');
  });

  test('tells of errors that leave something out', async () => {
    const { code, error: told } = await run(write({ 'a.plim': error }), 'report');
    expect(told).toBe('1 error in these files may leave something out: see plimsoll check.\n');
    expect(code).toBe(0);
  });
});

describe('misuse ends with 2 and a sentence', () => {
  test.each([
    [['chek'], 'There is no command "chek": it is check, compare, next or report. See plimsoll --help'],
    [['check', 'gone'], 'There is no file or folder "gone".'],
    [['check', 'empty'], 'There is no log (*.plim) in "empty".'],
    [
      ['check', '--colour'],
      'plimsoll check has no option --colour: it takes --fail-on, --format, --today, --severity, --cache and --help.',
    ],
    [
      ['check', '-x'],
      'plimsoll check has no option -x: it takes --fail-on, --format, --today, --severity, --cache and --help.',
    ],
    [['check', '--format'], '--format needs a value: text or json.'],
    [['check', '--format', 'xml'], '--format is text or json, not "xml".'],
    [['check', '--fail-on', 'hint'], '--fail-on is error or warning, not "hint".'],
    [['check', '--today', '2026-02-30'], '--today is a date such as 2026-11-24, not "2026-02-30".'],
    [['report', '--week', '2025-W53'], '--week is an ISO week such as 2026-W47, not "2025-W53".'],
    [['report', '--athlete', 'Nobody'], 'No athlete is called "Nobody": there are Quill Harrow.'],
    [['report', '--athlete'], '--athlete needs a value.'],
  ])('%j', async (args, expected) => {
    const own = write({ 'a.plim': good, 'empty/readme.txt': '' });
    expect(await run(own, ...args)).toEqual({ code: 2, out: '', error: `${expected}\n` });
  });

  test('no command shows the help', async () => {
    expect(await run(folder)).toMatchObject({ code: 2, out: expect.stringContaining('plimsoll check') });
  });
});

test.each([[['--help']], [['check', '--help']], [['report', '-h']], [['--version']]])(
  '%j answers with 0',
  async (args) => {
    const { code, out } = await run(folder, ...args);
    expect([code, out.length > 3]).toEqual([0, true]);
  },
);

describe('the bundle in a process of its own', () => {
  let bundle: string;
  beforeAll(async () => {
    bundle = join(folder, 'plimsoll.cjs');
    const { commandLineBundles } = await import(join(root, 'server/scripts/build.mjs'));
    for (const options of commandLineBundles(bundle)) await build(options);
  });

  async function start(cwd: string, ...args: string[]) {
    const env = { ...process.env, PLIMSOLL_TODAY: '2026-11-24' };
    try {
      const { stdout } = await promisify(execFile)(process.execPath, [bundle, ...args], { cwd, env });
      return { code: 0, out: stdout };
    } catch (failure) {
      const { code, stdout } = failure as { code: number; stdout: string };
      return { code, out: stdout };
    }
  }

  test('finds no error in the samples', async () => {
    const own = join(folder, 'samples');
    cpSync(join(root, 'samples'), own, { recursive: true });
    const { code, out } = await start(own, 'check');
    expect(out.split('\n').filter((line) => / error: /.test(line))).toEqual([]);
    expect(code).toBe(0);
  });

  test('fails on an error', async () => {
    const { code, out } = await start(write({ 'a.plim': error }), 'check');
    expect(out).toContain('[decimal-comma]');
    expect(code).toBe(1);
  });

  test('reports the day that the environment names', async () => {
    const { out } = await start(write({ 'a.plim': good }), 'report', '--format', 'json');
    expect(JSON.parse(out).today).toBe('2026-11-24');
  });
});
