import { execFileSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { GitFolder } from '../support/git-folder.ts';

const athletes =
  'athlete Quill Harrow\n  bodyweight 80 kg on 2026-01-01\n  max Back Squat: 100 kg on 2026-01-01\n';
const movements = 'exercise Turnip Hoist\n  pattern hinge\n  muscles glutes\n  needs sandbag\n';
const plan = `plan Ebb
  for Quill Harrow
  starts 2026-12-07
  weeks 2
  days Mon
  day 1 Squat
    A straight, rest 2:00
      Back Squat: 3x5 @ 70%
      Turnip Hoist: 2x10 @ 30 kg
`;
const files = { 'people.plim': athletes, 'moves.plim': movements, 'plans/ebb.plim': plan };

/**
 * 4x5 for 3x5 at 70 % of 100 kg, beside 2x10 of 30 kg: 15 x 70 + 20 x 30 = 1 650 kg, and 5 x 70 = 350 kg more. At 3 s a
 * rep (common practice) and 2:00 of rest between the sets, 35 x 3 + 4 x 120 = 585 s, and 5 x 3 + 120 = 135 s more.
 */
const heavier = plan.replace('3x5', '4x5');
const changed = `plan Ebb
  day 1 Squat
    Back Squat: 3x5 → 4x5 @ 70%
  since HEAD: +1 set, +350 kg a week, +2 min a day
  hard sets a week: glutes +1, quadriceps +1, adductors +0.5, lower back +0.5, hamstrings +0.3
  week  sets   kg             min a day
  1     5 → 6  1 650 → 2 000  10 → 12
  2     5 → 6  1 650 → 2 000  10 → 12
`;

let folder: GitFolder;
beforeEach(() => {
  folder = new GitFolder();
});
afterEach(() => folder.remove());

describe('in a repository', () => {
  beforeEach(() => {
    folder.init();
    folder.write(files);
    folder.commit();
  });

  test('nothing changed', async () => {
    folder.write({ 'plans/ebb.plim': `# Only a comment.\n${plan.replace('    A', '  A')}` });
    expect(await folder.run(['compare'])).toEqual({
      code: 0,
      out: 'Nothing that counts has changed since HEAD.\n',
      error: '',
    });
  });

  test('a plan, against the last commit', async () => {
    folder.write({ 'plans/ebb.plim': heavier });
    expect(await folder.run(['compare'])).toEqual({ code: 0, out: changed, error: '' });
  });

  test('from a folder below, names are looked up in the whole repository', async () => {
    folder.write({ 'plans/ebb.plim': heavier, 'people.plim': athletes.replace('80 kg', '82 kg') });
    expect((await folder.run(['compare'], 'plans')).out).toBe(changed);
  });

  test.each([[['HEAD', 'plans']], [['HEAD', '--', 'plans/ebb.plim']], [['./plans']]])(
    'only of %j',
    async (args) => {
      folder.write({ 'plans/ebb.plim': heavier, 'people.plim': athletes.replace('80 kg', '82 kg') });
      expect((await folder.run(['compare', ...args])).out).toBe(changed);
    },
  );

  test('one revision with the files as they are, two with each other', async () => {
    folder.git('tag', 'spring');
    folder.write({ 'plans/ebb.plim': heavier });
    folder.commit();
    folder.write({ 'plans/ebb.plim': plan.replace('3x5', '5x5') });
    expect((await folder.run(['compare', 'spring', 'HEAD'])).out).toBe(changed.replace('HEAD', 'spring'));
    expect((await folder.run(['compare', 'HEAD~1'])).out).toContain('since HEAD~1: +2 sets, +700 kg a week');
    expect((await folder.run(['compare', 'HEAD', 'spring'])).out).toContain(
      'since HEAD: -1 set, -350 kg a week',
    );
  });

  test('a renamed file is followed', async () => {
    renameSync(join(folder.path, 'plans/ebb.plim'), join(folder.path, 'flood.plim'));
    folder.write({ 'flood.plim': heavier });
    expect((await folder.run(['compare'])).out).toBe(`plans/ebb.plim is flood.plim now\n\n${changed}`);
  });

  test('a renamed movement is followed, whether or not its old name stays known', async () => {
    const renamed = heavier.replace('Turnip Hoist', 'Turnip Clean');
    folder.write({ 'plans/ebb.plim': renamed, 'moves.plim': movements.replace('Hoist', 'Clean') });
    expect((await folder.run(['compare'])).out).toBe(
      `${changed}\nexercise Turnip Clean, before Turnip Hoist\n`,
    );
    folder.write({
      'plans/ebb.plim': heavier,
      'moves.plim': movements.replace('Hoist', 'Clean').replace('hinge', 'hinge\n  also Turnip Hoist'),
    });
    expect((await folder.run(['compare'])).out).toBe(
      `${changed}\nexercise Turnip Clean, before Turnip Hoist\n  + also Turnip Hoist\n`,
    );
  });

  test('a file that came, and one that went', async () => {
    rmSync(join(folder.path, 'moves.plim'));
    folder.write({ 'log.plim': 'session 2026-11-20 Quill Harrow\n  Back Squat: 5 @ 60 kg\n' });
    expect((await folder.run(['compare'])).out).toBe(
      [
        'log.plim is new\n',
        'moves.plim is gone\n',
        'exercise Turnip Hoist, gone\n',
        'session 2026-11-20 Quill Harrow, new\n',
      ].join('\n'),
    );
    expect((await folder.run(['compare', 'HEAD', 'moves.plim'])).out).toBe(
      'moves.plim is gone\n\nexercise Turnip Hoist, gone\n',
    );
  });

  test('a merge that could not choose', async () => {
    folder.git('checkout', '-q', '-b', 'heavy');
    folder.write({ 'plans/ebb.plim': heavier });
    folder.commit();
    folder.git('checkout', '-q', 'main');
    folder.write({ 'plans/ebb.plim': plan.replace('3x5', '3x6') });
    folder.commit();
    expect(() => folder.git('merge', 'heavy')).toThrow();
    folder.write({ 'moves.plim': movements.replace('hinge', 'squat') });
    expect(await folder.run(['compare'])).toEqual({
      code: 1,
      out: 'plans/ebb.plim holds a merge conflict in lines 8 to 12: nothing inside it was compared\n\nexercise Turnip Hoist\n  pattern hinge → squat\n',
      error: '',
    });
    const { out, code } = await folder.run(['check']);
    expect(
      out.match(/ebb\.plim:\d+:1: error: .* \[merge-conflict\]/g)?.map((line) => line.split(':')[1]),
    ).toEqual(['8', '10', '12']);
    expect(code).toBe(1);
  });

  test('as JSON with what every number rests on', async () => {
    folder.write({ 'plans/ebb.plim': heavier });
    const revision = JSON.parse((await folder.run(['compare', '--format', 'json'])).out);
    expect(revision).toMatchObject({
      since: 'HEAD',
      today: '2026-11-24',
      conflicts: [],
      files: [],
      sessions: [],
    });
    const [{ name, path, lines, effects }] = revision.plans;
    expect([name, path]).toEqual(['Ebb', 'plans/ebb.plim']);
    expect(lines[0].aspects).toEqual([{ what: 'sets', before: '3', after: '4' }]);
    expect(effects[0].volume).toMatchObject({
      value: 350,
      unit: 'kg',
      inputs: [
        { label: 'before', value: 1650 },
        { label: 'after', value: 2000 },
        { label: 'weeks', value: 2 },
      ],
    });
  });

  test('no program that the repository names is run', async () => {
    const trap = join(folder.path, 'trap.sh');
    folder.write({
      'trap.sh': `#!/bin/sh\ntouch "${folder.path}/sprung"\ncat\n`,
      '.gitattributes': '*.plim filter=trap diff=trap\n',
    });
    chmodSync(trap, 0o755);
    folder.commit();
    mkdirSync(join(folder.path, 'hooks'));
    for (const hook of ['post-index-change', 'post-checkout', 'reference-transaction']) {
      folder.write({ [`hooks/${hook}`]: `#!/bin/sh\ntouch "${folder.path}/sprung"\n` });
      chmodSync(join(folder.path, 'hooks', hook), 0o755);
    }
    const settings = {
      'core.fsmonitor': trap,
      'core.hooksPath': join(folder.path, 'hooks'),
      'core.pager': trap,
      'filter.trap.smudge': trap,
      'filter.trap.clean': trap,
      'diff.trap.textconv': trap,
      'diff.external': trap,
    };
    for (const [name, value] of Object.entries(settings)) folder.git('config', name, value);
    // The trap works: git itself springs it.
    folder.git('status', '--short');
    expect(existsSync(join(folder.path, 'sprung'))).toBe(true);
    rmSync(join(folder.path, 'sprung'));
    folder.write({ 'plans/ebb.plim': heavier });
    expect((await folder.run(['compare'])).out).toBe(changed);
    expect(existsSync(join(folder.path, 'sprung'))).toBe(false);
  });

  test('git is asked for objects alone, with its hooks, file watcher and transports set aside', async () => {
    const real = execFileSync('sh', ['-c', 'command -v git'], { encoding: 'utf8' }).trim();
    const asked = join(folder.path, 'asked');
    const own = join(folder.path, 'bin');
    folder.write({
      'bin/git': `#!/bin/sh\necho "$GIT_NO_LAZY_FETCH $GIT_TERMINAL_PROMPT $GIT_OPTIONAL_LOCKS $*" >> "${asked}"\nexec "${real}" "$@"\n`,
    });
    chmodSync(join(own, 'git'), 0o755);
    const { PATH } = process.env;
    process.env.PATH = `${own}:${PATH}`;
    try {
      expect((await folder.run(['compare', 'HEAD', 'plans'])).code).toBe(0);
    } finally {
      process.env.PATH = PATH;
    }
    const lines = readFileSync(asked, 'utf8').trim().split('\n');
    const set =
      '1 0 0 --no-pager -c core.hooksPath=/dev/null -c core.fsmonitor=false -c protocol.allow=never ';
    expect(lines.filter((line) => !line.startsWith(set))).toEqual([]);
    const verbs = lines.map((line) => line.slice(set.length).split(' ')[0]);
    expect([...new Set(verbs)].sort()).toEqual(['cat-file', 'ls-tree', 'rev-parse']);
  });

  test.each([
    [['nowhere'], 'There is no revision, file or folder "nowhere".'],
    [['HEAD', 'nowhere'], 'There is no log at "nowhere", neither before nor after.'],
    [['nowhere', '--', 'plans'], 'There is no revision "nowhere" in this repository.'],
    [['HEAD', '../elsewhere'], '"../elsewhere" is outside the repository.'],
    [
      ['plans', 'moves.plim', 'people.plim'],
      'Two paths are compared with each other; for more, name a revision before them: plimsoll compare HEAD …',
    ],
  ])('misuse: %j', async (args, expected) => {
    expect(await folder.run(['compare', ...args])).toEqual({ code: 2, out: '', error: `${expected}\n` });
  });

  test('a word that is a revision and a path', async () => {
    folder.git('branch', 'plans');
    expect(await folder.run(['compare', 'plans'])).toMatchObject({
      code: 2,
      error: '"plans" is a revision and a path: write ./plans for the path, or -- behind the revision.\n',
    });
    expect((await folder.run(['compare', 'plans', '--'])).out).toContain('Nothing');
  });
});

describe('two paths, in no repository', () => {
  test('files', async () => {
    folder.write({ 'old.plim': athletes + plan, 'new.plim': athletes + heavier });
    const { code, out } = await folder.run(['compare', 'old.plim', 'new.plim']);
    expect(out).toContain('    Back Squat: 3x5 → 4x5 @ 70%\n  since old.plim: +1 set, +350 kg a week');
    expect(code).toBe(0);
  });

  test('folders', async () => {
    folder.write({ 'old/a.plim': plan, 'new/a.plim': heavier, 'new/b.plim': athletes });
    const { out } = await folder.run(['compare', 'old', 'new']);
    expect(out).toMatch(/^b\.plim is new\n\nplan Ebb\n {2}day 1 Squat\n {4}Back Squat: 3x5 → 4x5 @ 70%\n/);
    expect(out).toContain('athlete Quill Harrow, new\n');
  });
});

test.each([[[]], [['a.plim']]])('no repository: %j', async (args) => {
  folder.write({ 'a.plim': plan });
  expect(await folder.run(['compare', ...args])).toEqual({
    code: 2,
    out: '',
    error: 'This folder is in no git repository: name two files or folders to compare.\n',
  });
});

test('a repository without a commit', async () => {
  folder.init();
  expect(await folder.run(['compare'])).toMatchObject({
    code: 2,
    error: 'This repository has no commit yet, so there is nothing to compare with.\n',
  });
});

test('no git', async () => {
  const { PATH } = process.env;
  process.env.PATH = folder.path;
  try {
    expect(await folder.run(['compare'])).toMatchObject({
      code: 2,
      error: 'git was not found: install it, or name two files or folders to compare.\n',
    });
    folder.write({ 'old.plim': plan, 'new.plim': plan });
    expect((await folder.run(['compare', 'old.plim', 'new.plim'])).code).toBe(0);
  } finally {
    process.env.PATH = PATH;
  }
});
