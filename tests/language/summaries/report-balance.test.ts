import { describe, expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { makeReport, printReport, type ReportWeek } from '../../../language/src/summaries/report.ts';

const DEFINITIONS = `
athlete Ivo Fennimore
  bodyweight 80 kg on 2026-01-01
  max Keel Squat: 100 kg on 2026-01-01

exercise Keel Squat
  pattern squat
  muscles quadriceps, glutes, hamstrings 1/2
  needs barbell

exercise Keel Hinge
  pattern hinge
  muscles hamstrings, glutes 1/2
  needs barbell

exercise Barge Row
  pattern horizontal pull
  muscles lats
  each rep moves one
  needs dumbbell
`;

const WEEK_BEFORE = `
session 2026-02-02 Ivo Fennimore
  Keel Squat: 3x5 @ 70 kg
  Keel Hinge: 3x5 @ 60 kg rpe 8
`;

const WEEK = `
session 2026-02-09 Ivo Fennimore
  Keel Squat: 2x5 @ 75 kg, 2 @ 95 kg, tempo 3-0-1-0
  Barge Row: 8 left 6 right @ 20 kg
session 2026-02-11 Ivo Fennimore
  Keel Squat: 3x5 @ 72.5 kg
  Sack Heave: 2x10 @ 30 kg
`;

function reportOf(...texts: string[]) {
  const practice = createPractice();
  practice.setFile('definitions.plim', DEFINITIONS);
  practice.setFile('log.plim', texts.join(''));
  const options = { today: '2026-02-28', formula: 'epley', unit: 'kg', complete: true } as const;
  const report = makeReport(new SessionWorks(practice), options);
  return { report, week: report.athletes[0]!.weeks[0]! };
}

const printBalance = ({ balance }: ReportWeek): string[] => balance.map(({ of, text }) => `${of}: ${text}`);

/*
 * By hand: squats 3 + 3 sets, one row, two heaves. Hamstrings 6 x 1/2 = 3. Tempo 3-0-1-0: 12 reps x 4 s = 48 s.
 * Volume 750 + 190 + 14 x 20 + 15 x 72.5 + 600 = 2 907.5 kg in 61 reps: 47.7 kg a rep.
 * Shares of 100 kg: (10 x 75 + 2 x 95 + 15 x 72.5) / 27 = 75.09 %.
 */
test('what a week was made of, in few lines', () => {
  const { week } = reportOf(WEEK_BEFORE, WEEK);
  expect(printBalance(week)).toEqual([
    'hard sets: glutes 6, quadriceps 6, hamstrings 3, lats 1 · without Sack Heave (not defined)',
    'patterns: squat 6, horizontal pull 1 · without Sack Heave (not defined)',
    'ratios: push : pull none (0 : 1), squat : hinge none (6 : 0) · Barge Row left : right 1.33',
    'intensity: 75 % of max, 48 kg a rep · reps: 25 at 70-79 %, 2 at 90 % and over · 0.8 min under tension · without Barge Row, Sack Heave (max a lower bound only)',
    'by movement: since week 6: Keel Squat +978 kg, Keel Hinge -900 kg (only week 6), Sack Heave +600 kg (new), Barge Row +280 kg (new)',
    'records: Keel Squat 5 @ 72.5 kg',
  ]);
});

test('the lines stand between a week and its sessions', () => {
  const { report } = reportOf(WEEK_BEFORE);
  expect(printReport(report).split('\n').slice(0, 6)).toEqual([
    'Ivo Fennimore',
    '  week 2026-W06  1 session · 6 working sets · 1 950 kg',
    '    hard sets  glutes 4.5, hamstrings 4.5, quadriceps 3',
    '    patterns   hinge 3, squat 3',
    '    ratios     squat : hinge 1 (3 : 3)',
    // 70 of 100 and 60 of 60 x 37/30 = 74: (70 + 81.08) / 2.
    '    intensity  76 % of max, 65 kg a rep · reps: 15 at 70-79 %, 15 at 80-89 %',
  ]);
});

describe('as data', () => {
  const { week } = reportOf(WEEK_BEFORE, WEEK);
  const numbersOf = (of: string) => week.balance.find((fact) => fact.of === of)!.numbers;

  test('each number says what it is of, and explains itself', () => {
    expect(numbersOf('hard sets').map(({ of, value }) => `${of} ${value}`)).toEqual([
      'glutes 6',
      'quadriceps 6',
      'hamstrings 3',
      'lats 1',
    ]);
    const [glutes] = numbersOf('hard sets');
    expect(glutes).toMatchObject({
      title: 'Hard sets for a muscle',
      source: 'Pelland JC et al. (2024) preprint, SportRxiv',
      omitted: [{ what: 'Sack Heave', why: 'no definition, so its muscles are unknown' }],
    });
  });

  test('a ratio without one side has no value', () => {
    const hinge = numbersOf('ratios').find(({ of }) => of === 'squat : hinge');
    expect(hinge).toMatchObject({ value: undefined, remark: 'no hinge' });
    expect(JSON.stringify(week)).not.toMatch(/NaN|Infinity|null/);
  });

  test('every zone, and the changes that add up', () => {
    expect(numbersOf('intensity').filter(({ method }) => method === 'intensity-zones')).toHaveLength(5);
    // 2 907.5 now, 1 950 before.
    expect(numbersOf('by movement').reduce((sum, { value }) => sum + value!, 0)).toBeCloseTo(957.5, 9);
  });
});

test('the change of a lower bound says so, and a hold changes by its seconds', () => {
  const { week } = reportOf(
    'session 2026-02-02 Ivo Fennimore\n  Keel Squat: 5 @ 70 kg\n  Mast Hug: 40 s\n',
    'session 2026-02-09 Ivo Fennimore\n  Keel Squat: 6, ? @ 70 kg\n  Mast Hug: 55 s\n',
  );
  expect(printBalance(week)).toContain(
    'by movement: since week 6: Keel Squat at least +70 kg, Mast Hug +15 s',
  );
});

test('a week without sessions has no lines', () => {
  const { report } = reportOf('');
  expect(report.athletes[0]!.weeks).toEqual([]);
});

test('long lists are counted', () => {
  const lines = Array.from({ length: 8 }, (_, at) => `  Heave ${'abcdefgh'[at]}: 5 @ 2${at} kg\n`).join('');
  const { week } = reportOf(`session 2026-02-02 Ivo Fennimore\n  Keel Squat: 5 @ 70 kg\n${lines}`);
  expect(printBalance(week)[0]).toBe(
    'hard sets: glutes 1, quadriceps 1, hamstrings 0.5 · without Heave a, Heave b, Heave c, 5 more (not defined)',
  );
});

// What a test gave in reps or time stands beside the records, held against the best before.
test('results of tests, with what explains them', () => {
  const { week } = reportOf(
    'session 2026-02-02 Ivo Fennimore\n  test Plank: 75 s\n',
    'session 2026-02-09 Ivo Fennimore\n  test Plank: 60 s, 90 s\n  test Push-up: 41\n',
  );
  expect(printBalance(week)).toContain(
    'tests: Plank 1:30 (before 1:15 on 2026-02-02), best so far, Push-up 41 reps',
  );
  const { numbers } = week.balance.find(({ of }) => of === 'tests')!;
  expect(numbers.map(({ of, value, unit, title }) => [of, value, unit, title])).toEqual([
    ['Plank', 90, 's', 'Best result of a test'],
    ['Push-up', 41, 'reps', 'Best result of a test'],
  ]);
});
