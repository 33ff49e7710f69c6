import { describe, expect, test } from 'vitest';
import { printRevised, revise } from './revise.ts';

const hoist = 'exercise Turnip Hoist\n  pattern hinge\n  muscles glutes\n  needs sandbag\n';

describe('definitions', () => {
  test.each<[title: string, before: string, after: string, expected: string[]]>([
    [
      'layout and comments',
      hoist,
      `# a comment\n${hoist.replaceAll('  ', '\t')}`,
      ['Nothing that counts has changed since HEAD.'],
    ],
    [
      'a property',
      hoist,
      hoist.replace('hinge', 'squat'),
      ['exercise Turnip Hoist', '  pattern hinge → squat'],
    ],
    [
      'a list',
      hoist,
      hoist.replace('glutes', 'glutes, hamstrings'),
      ['exercise Turnip Hoist', '  muscles glutes → glutes, hamstrings'],
    ],
    [
      'another name for the same text',
      hoist,
      hoist.replace('Hoist', 'Clean'),
      ['exercise Turnip Clean, before Turnip Hoist'],
    ],
    [
      'another name that keeps the old one, and more',
      hoist,
      hoist.replace('Hoist', 'Clean').replace('pattern hinge', 'pattern squat\n  also Turnip Hoist'),
      ['exercise Turnip Clean, before Turnip Hoist', '  pattern hinge → squat', '  + also Turnip Hoist'],
    ],
    [
      'two that say the same cannot be told apart',
      hoist,
      hoist.replace('Hoist', 'Clean') + hoist.replace('Hoist', 'Shelf'),
      ['exercise Turnip Clean, new', 'exercise Turnip Shelf, new', 'exercise Turnip Hoist, gone'],
    ],
    [
      'two that say nothing are not the same',
      'exercise Turnip Hoist\n',
      'exercise Turnip Clean\n',
      ['exercise Turnip Clean, new', 'exercise Turnip Hoist, gone'],
    ],
    [
      'a max',
      'athlete Ann Vell\n  max Dip: bw+10 kg on 2026-01-01\n',
      'athlete Ann Vell\n  max Dip: bw+15 kg on 2026-06-01\n',
      ['athlete Ann Vell', '  max Dip: bw+10 kg on 2026-01-01 → bw+15 kg on 2026-06-01'],
    ],
    ['the unit of a file', 'units kg\n', 'units lb\n', ['units of a.plim', '  units kg → lb']],
  ])('%s', (_title, before, after, expected) => {
    expect(printRevised(before, after)).toEqual(expected);
  });
});

describe('sessions', () => {
  const nell = 'athlete Nell\n  bodyweight 60 kg on 2026-11-01\n';
  const session =
    'session 2026-11-17 Ann Vell\n  A straight, rest 2:00\n    Back Squat: 3x5 @ 60 kg\n  effort 6\n';

  test.each<[title: string, before: string, after: string, expected: string[]]>([
    [
      'sets and facts',
      session,
      session.replace('@ 60', '@ 62.5').replace('effort 6', 'effort 7\n  lasted 50 min'),
      [
        'session 2026-11-17 Ann Vell',
        '  effort 6 → 7',
        '  + lasted 50 min',
        '  Back Squat: 3x5 @ 60 kg → 62.5 kg',
        // 15 x 2.5 kg
        '  since HEAD: +38 kg',
      ],
    ],
    [
      'what that comes to, body mass of the day and all',
      `athlete Ann Vell\n  bodyweight 60 kg on 2026-11-01\n${session}`,
      `athlete Ann Vell\n  bodyweight 60 kg on 2026-11-01\n${session.replace('  effort', '    Push-up: 10\n    Farmer Carry: 30 m @ 2x20 kg\n  effort')}`,
      [
        'session 2026-11-17 Ann Vell',
        '  + Push-up: 10',
        '  + Farmer Carry: 30 m @ 2x20 kg',
        // 69 % of 60 kg, ten times
        '  since HEAD: +2 sets, +414 kg',
      ],
    ],
    [
      'a group, each of its athletes',
      'session 2026-11-17 Ann Vell | Bev Stromm\n  Back Squat: 5 @ 60 kg | 5 @ 40 kg\n',
      'session 2026-11-17 Ann Vell | Bev Stromm\n  Back Squat: 5 @ 60 kg | 2x5 @ 40 kg\n',
      [
        'session 2026-11-17 Ann Vell | Bev Stromm',
        '  Back Squat: Bev Stromm 5 → 2x5 @ 40 kg',
        '  since HEAD, Bev Stromm: +1 set, +200 kg',
      ],
    ],
    [
      'what is not known is said',
      session,
      session.replace('3x5 @ 60 kg', '4x5 @ 60 kg, 5 @ ?'),
      [
        'session 2026-11-17 Ann Vell',
        '  Back Squat: 3x5 @ 60 kg → 4x5 @ 60 kg, 5 @ ?',
        '  since HEAD: +2 sets, +300 kg where loads are known',
      ],
    ],
    [
      'a renamed movement weighs what it weighed',
      `${hoist}  bodyweight 50%, kitchen scales\n${nell}session 2026-11-17 Nell\n  Turnip Hoist: 8\n`,
      `${hoist.replace('Hoist', 'Clean')}  bodyweight 50%, kitchen scales\n${nell}session 2026-11-17 Nell\n  Turnip Clean: 9\n`,
      [
        'exercise Turnip Clean, before Turnip Hoist',
        'session 2026-11-17 Nell',
        '  Turnip Clean: 8 → 9',
        // Half of 60 kg, once.
        '  since HEAD: +30 kg',
      ],
    ],
    [
      'by date and athlete, whatever the file says in between',
      session,
      `${session.replace('17', '16')}${session}`,
      ['session 2026-11-16 Ann Vell, new'],
    ],
    [
      'another athlete is another session',
      session,
      session.replace('Ann Vell', 'Bev Stromm'),
      ['session 2026-11-17 Bev Stromm, new', 'session 2026-11-17 Ann Vell, gone'],
    ],
    [
      'an athlete who is called otherwise now',
      `athlete Ann Vell\n  born 1990\n${session}`,
      `athlete Ann Vell-Harrow\n  born 1990\n${session.replace('Ann Vell', 'Ann Vell-Harrow')}`,
      ['athlete Ann Vell-Harrow, before Ann Vell'],
    ],
    [
      'the only athlete, named or not',
      `athlete Ann Vell\n${session}`,
      `athlete Ann Vell\n${session.replace(' Ann Vell', '')}`,
      ['Nothing that counts has changed since HEAD.'],
    ],
    [
      'a movement that is called otherwise now',
      `${hoist}session 2026-11-17\n  Turnip Hoist: 8\n`,
      `${hoist.replace('Hoist', 'Clean')}session 2026-11-17\n  Turnip Clean: 8\n`,
      ['exercise Turnip Clean, before Turnip Hoist'],
    ],
  ])('%s', (_title, before, after, expected) => {
    expect(printRevised(before, after)).toEqual(expected);
  });
});

describe('plans', () => {
  const plan = 'plan Ebb\n  weeks 4\n  days Mon\n  day 1 Dip\n    Dip: 3x8\n    Plank: 30 s\n';

  test('with another name and a change', () => {
    const after = plan.replace('Ebb', 'Flood').replace('3x8', '4x8');
    expect(printRevised(plan, after).slice(0, 3)).toEqual([
      'plan Flood, before Ebb',
      '  day 1 Dip',
      '    Dip: 3x8 → 4x8',
    ]);
  });

  test('another plan altogether', () => {
    const titles = revise(plan, 'plan Flood\n  weeks 2\n  day 1\n    Row: 8\n').plans;
    expect(titles.map(({ name, change }) => `${name} ${change}`)).toEqual(['Flood added', 'Ebb removed']);
  });

  test('settings', () => {
    const after = plan.replace('weeks 4', 'weeks 6\n  deload week 5, sets 50%');
    expect(printRevised(plan, after).slice(0, 3)).toEqual([
      'plan Ebb',
      '  weeks 4 → 6',
      '  + deload week 5, sets 50%',
    ]);
  });
});

describe('files', () => {
  const session = 'session 2026-11-17 Ann Vell\n  Dip: 8\n';

  test('one that half of its entries went along with is renamed', () => {
    expect(
      printRevised({ 'a.plim': session + hoist }, { 'b.plim': session + hoist.replace('hinge', 'squat') }),
    ).toEqual(['a.plim is b.plim now', 'exercise Turnip Hoist', '  pattern hinge → squat']);
  });

  test('an entry that stands in another file is the same', () => {
    expect(
      printRevised({ 'a.plim': session + hoist, 'b.plim': '' }, { 'a.plim': session, 'b.plim': hoist }),
    ).toEqual(['Nothing that counts has changed since HEAD.']);
  });
});

describe('a conflict', () => {
  const conflict = '<<<<<<< HEAD\n  weeks 2\n=======\n  weeks 3\n>>>>>>> heavy\n';

  test('is told, and the entry around it is not compared', () => {
    const before = { 'a.plim': `plan Ebb\n  weeks 1\n  day 1\n    Dip: 8\n`, 'b.plim': hoist };
    const after = {
      'a.plim': `plan Ebb\n${conflict}  day 1\n    Dip: 9\n`,
      'b.plim': hoist.replace('hinge', 'squat'),
    };
    expect(printRevised(before, after)).toEqual([
      'a.plim holds a merge conflict in lines 2 to 6: nothing inside it was compared',
      'exercise Turnip Hoist',
      '  pattern hinge → squat',
    ]);
  });

  test('around a header: nothing came or went', () => {
    const before = `plan Ebb\n  weeks 1\n  day 1\n    Dip: 8\n`;
    const after = `<<<<<<< HEAD\nplan Flood\n=======\nplan Neap\n>>>>>>> heavy\n  weeks 1\n  day 1\n    Dip: 8\n`;
    expect(printRevised(before, after)).toEqual([
      'a.plim holds a merge conflict in lines 1 to 5: nothing inside it was compared',
    ]);
  });

  test('that was committed', () => {
    expect(printRevised(`plan Ebb\n${conflict}`, 'plan Ebb\n  weeks 2\n')).toEqual([
      'a.plim holds a merge conflict before in lines 2 to 6: nothing inside it was compared',
    ]);
  });
});

describe('a plan for several', () => {
  const plan = (...lines: readonly string[]): string =>
    ['plan Ebb', '  weeks 3', ...lines.map((line) => `  ${line}`), ''].join('\n');
  const block = ['day 1', 'B circuit, 2 rounds, +1 round each week to 4', 'Push-up: 10'];

  test('each table says whose it is, and a step of rounds is a progression', () => {
    const whom = 'for Ann Vell, Bo Ash';
    // Rounds 2, 3, 4 and 2, 3, 3; of push-ups without a weigh-in there are no kilograms.
    const changed = [block[0]!, block[1]!.replace('to 4', 'to 3'), block[2]!];
    expect(printRevised(plan(whom, ...block), plan(whom, ...changed))).toEqual([
      'plan Ebb',
      '  day 1',
      '    B circuit: progression +1 round each week to 4 → 3',
      '  since HEAD, Ann Vell: -0.3 sets a week on average, -1 min a day',
      '  hard sets a week: chest -0.3, front deltoids -0.2, serratus -0.2, triceps -0.2',
      '  since HEAD, Bo Ash: -0.3 sets a week on average, -1 min a day',
      '  hard sets a week: chest -0.3, front deltoids -0.2, serratus -0.2, triceps -0.2',
      '  week, Ann Vell  sets   kg  min a day',
      '  3               4 → 3  0   5 → 4',
      '  week, Bo Ash  sets   kg  min a day',
      '  3             4 → 3  0   5 → 4',
    ]);
  });

  test('one less: the whole name is said', () => {
    const [, whom] = printRevised(plan('for Ann Vell, Bo Ash', ...block), plan('for Ann Vell', ...block));
    expect(whom).toBe('  for Ann Vell, Bo Ash → Ann Vell');
  });
});
