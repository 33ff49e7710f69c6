import { expect, test } from 'vitest';
import type { IsoDate } from '../../../language/src/calendar/iso-date.ts';
import { toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { changeInPercent, compareWeeks } from '../../../language/src/measures/week-work.ts';
import { NO_WORK } from '../../../language/src/measures/work.ts';
import { printNumber } from '../../../language/src/units/number.ts';

const NAME = 'Ptolemy Grubb';
const DEFINITIONS = `
athlete ${NAME}
  away 2026-03-09 to 2026-03-15
exercise Bar Press
  needs barbell
plan Low Tide
  deload week 2, sets 50%
`;

/** A session of so many kilograms. */
const day = (date: string, kilograms: number, more = '', header = ''): string =>
  `session ${date} ${NAME}${header}\n  ${more}Bar Press: 10 @ ${kilograms / 10} kg\n`;

function compare(log: string, on: IsoDate, today: IsoDate): string[] {
  const practice = createPractice();
  practice.setFile('a.plim', DEFINITIONS);
  practice.setFile('b.plim', log);
  const { week, changes } = compareWeeks(
    practice,
    new SessionWorks(practice),
    'ptolemy grubb',
    toDayNumber(on),
    today,
  );
  return changes.map(({ before, percent, soFar }) =>
    [
      `week ${week.week.week}${soFar ? ' so far' : ''}`,
      percent === undefined ? 'not compared' : `${printNumber(percent, 1)} %`,
      `week ${before.week.week}${before.marks.length > 0 ? ` (${before.marks.join(', ')})` : ''}`,
    ].join(', '),
  );
}

test.each([
  [
    'with the week before',
    day('2026-02-02', 1000) + day('2026-02-09', 1100),
    '2026-02-09',
    '2026-03-01',
    ['week 7, 10 %, week 6'],
  ],
  [
    'with the last trained week, by name',
    day('2026-01-12', 1000) + day('2026-02-09', 900),
    '2026-02-09',
    '2026-03-01',
    ['week 7, -10 %, week 3'],
  ],
  ['not at all without one', day('2026-02-09', 900), '2026-02-09', '2026-03-01', []],
  [
    'a running week against the same weekdays',
    day('2026-02-02', 1000) + day('2026-02-06', 5000) + day('2026-02-09', 1200),
    '2026-02-09',
    '2026-02-11',
    ['week 7 so far, 20 %, week 6'],
  ],
  [
    'two sessions in a day add up',
    day('2026-02-02', 1000) + day('2026-02-09', 600) + day('2026-02-09', 600),
    '2026-02-09',
    '2026-03-01',
    ['week 7, 20 %, week 6'],
  ],
  [
    'beside a week with a test the last ordinary one',
    day('2026-01-26', 800) + day('2026-02-02', 500, 'test ') + day('2026-02-09', 1000),
    '2026-02-09',
    '2026-03-01',
    ['week 7, 100 %, week 6 (test)', 'week 7, 25 %, week 5'],
  ],
  [
    'beside a deload',
    day('2026-01-26', 800) + day('2026-02-02', 500, '', ', Low Tide week 2 day 1') + day('2026-02-09', 1000),
    '2026-02-09',
    '2026-03-01',
    ['week 7, 100 %, week 6 (deload)', 'week 7, 25 %, week 5'],
  ],
  [
    'beside a deload of a plan that the sessions do not name',
    `plan High Water\n  for ${NAME}\n  starts 2026-01-26\n  weeks 4\n  deload week 2, sets 50%\n` +
      day('2026-01-26', 800) +
      day('2026-02-02', 500) +
      day('2026-02-09', 1000),
    '2026-02-09',
    '2026-03-01',
    ['week 7, 100 %, week 6 (deload)', 'week 7, 25 %, week 5'],
  ],
  [
    'beside days away',
    day('2026-03-02', 800) + day('2026-03-09', 400) + day('2026-03-16', 1000),
    '2026-03-16',
    '2026-04-01',
    ['week 12, 150 %, week 11 (away)', 'week 12, 25 %, week 10'],
  ],
  [
    'two lower bounds have no direction',
    `session 2026-02-02 ${NAME}\n  Bar Press: 10, ? @ 100 kg\nsession 2026-02-09 ${NAME}\n  Bar Press: 12, ? @ 100 kg\n`,
    '2026-02-09',
    '2026-03-01',
    ['week 7, not compared, week 6'],
  ],
  [
    'over the turn of a year',
    day('2025-12-22', 1000) + day('2025-12-29', 1100),
    '2026-01-01',
    '2026-03-01',
    ['week 1, 10 %, week 52'],
  ],
] as const)('compares %s', (_name, log, on, today, expected) => {
  expect(compare(log, on, today)).toEqual(expected);
});

// Worked: 12 600 / 11 800 - 1 = 6.779661 %; from nothing there is no change.
test('the change of volume', () => {
  const work = (kilograms: number, atLeast = false) => ({ ...NO_WORK, external: kilograms * 1000, atLeast });
  expect(changeInPercent(work(11_800), work(12_600))).toBeCloseTo(6.779661, 6);
  expect(changeInPercent(work(0), work(12_600))).toBeUndefined();
  expect(changeInPercent(work(12_600), work(0))).toBeUndefined();
  // At least 1 200 against 1 000 is more for certain; at least 900 may be.
  expect(changeInPercent(work(1000), work(1200, true))).toBeCloseTo(20, 9);
  expect(changeInPercent(work(1000), work(900, true))).toBeUndefined();
  expect(changeInPercent(work(1000, true), work(900))).toBeCloseTo(-10, 9);
  expect(changeInPercent(work(1000, true), work(1200))).toBeUndefined();
});
