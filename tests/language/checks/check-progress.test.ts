import { expect, test } from 'vitest';
import { check, lines } from './workspace.ts';

const PLAN = [
  'plan Brass Almanac',
  '  weeks 6',
  '  deload week 4, sets 50%',
  '  day 1',
  '    A straight',
  '      Back Squat: 3x5 @ 70 kg',
  '      Bench Press: 3x5 @ 50 kg, +2.5 kg each week',
  '    B superset, 3 rounds',
  '      Goblet Squat: 8-12 @ 16 kg, then +4 kg from 8',
  '      Push-up: 8-10',
];

/** Sessions a week apart, each with lines of its own; the first stands in line 11. */
function hints(...sessions: readonly (readonly string[])[]): string[] {
  const logs = sessions.flatMap((own, week) => [
    `session 2026-11-${String(2 + 7 * week).padStart(2, '0')}, Brass Almanac week ${week + 1} day 1`,
    ...own.map((line) => `  ${line}`),
  ]);
  return check(lines(...PLAN, ...logs), 'not-as-planned', 'joins-rounds').map((line) => line.slice(9));
}

const squat = (sets: string) => [`Back Squat: ${sets}`];
const rounds = (...own: readonly string[]) => ['B superset, 3 rounds', ...own.map((line) => `  ${line}`)];

const SQUAT_TWICE =
  'Back Squat: 7 and 8 reps in the last set for a goal of 5, twice in a row: by the 2-for-2 rule 2 to 10 % more next time, 71.4 to 77 kg [two-for-two]';

// A goal of 5 at 70 kg: two over in the last set, twice; 71.4 and 77 kg are 2 and 10 % more.
test.each([
  ['two over twice', [squat('5, 5, 7 @ 70 kg'), squat('5, 5, 8 @ 70 kg')], [`14:3 ${SQUAT_TWICE}`]],
  ['two over once', [squat('5, 5, 7 @ 70 kg')], []],
  ['one over the second time', [squat('5, 5, 7 @ 70 kg'), squat('5, 5, 6 @ 70 kg')], []],
  ['not in the last set', [squat('5, 5, 7 @ 70 kg'), squat('8, 5, 5 @ 70 kg')], []],
  ['at another load', [squat('5, 5, 7 @ 70 kg'), squat('5, 5, 8 @ 72.5 kg')], []],
  [
    'at the latest time alone',
    [squat('5, 5, 7 @ 70 kg'), squat('5, 5, 8 @ 70 kg'), squat('3x5 @ 72.5 kg')],
    [],
  ],
  ['a line with steps of its own', [['Bench Press: 5, 5, 7 @ 50 kg'], ['Bench Press: 5, 5, 8 @ 50 kg']], []],
])('2-for-2: %s', (_title, sessions, expected) => {
  expect(hints(...sessions)).toEqual(expected);
});

test.each([
  [
    'every set at the top, with what the plan says',
    [rounds('Goblet Squat: 12, 12, 13 @ 16 kg')],
    ['13:5 Goblet Squat: every set is at the top of 8-12, so the plan says then +4 kg from 8 [top-of-range]'],
  ],
  [
    'one number for all rounds, where the plan says nothing',
    [rounds('Push-up: 10')],
    [
      '13:5 Push-up: every set is at the top of 8-10, so more load, or a harder movement, next time [top-of-range]',
    ],
  ],
  ['one set under it', [rounds('Goblet Squat: 12, 12, 11 @ 16 kg')], []],
  ['a set not recorded', [rounds('Goblet Squat: 12, 12, ? @ 16 kg')], []],
  ['fewer sets than planned', [['Push-up: 10, 10']], []],
  ['a deload', [[], [], [], rounds('Push-up: 10')], []],
])('top of a range: %s', (_title, sessions, expected) => {
  expect(hints(...sessions)).toEqual(expected);
});

test('a session without a plan has no goal to be over', () => {
  expect(check(lines(...PLAN, 'session 2026-11-02', '  Push-up: 3x20'))).toEqual([]);
});
