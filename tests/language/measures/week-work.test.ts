import { describe, expect, test } from 'vitest';
import type { IsoDate } from '../../../language/src/calendar/iso-date.ts';
import { toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import {
  changeInPercent,
  compareWeeks,
  computeWeekWork,
  findFirst,
  startDayOf,
} from '../../../language/src/measures/week-work.ts';
import { NO_WORK, volumeOf } from '../../../language/src/measures/work.ts';
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

function read(log: string, definitions = DEFINITIONS) {
  const practice = createPractice();
  practice.setFile('a.plim', definitions);
  practice.setFile('b.plim', log);
  return { practice, works: new SessionWorks(practice) };
}

// ISO 8601: Monday to Sunday.
describe('the week', () => {
  const MONDAY = toDayNumber('2026-02-09');

  test.each(['2026-02-09', '2026-02-12', '2026-02-15'] as const)('of %s begins on Monday', (date) => {
    expect(startDayOf(toDayNumber(date))).toBe(MONDAY);
  });

  test('holds its seven days and no other, up to the day that it is asked for', () => {
    const log =
      day('2026-02-08', 1000) +
      day('2026-02-09', 100) +
      day('2026-02-11', 200) +
      day('2026-02-15', 400) +
      day('2026-02-16', 1000);
    const { practice, works } = read(log);
    const dates = (until?: number) =>
      computeWeekWork(practice, works, 'ptolemy grubb', MONDAY, until).sessions.map(
        ({ record }) => record.date,
      );
    expect(dates()).toEqual(['2026-02-09', '2026-02-11', '2026-02-15']);
    expect(dates(MONDAY + 2)).toEqual(['2026-02-09', '2026-02-11']);
    expect(dates(MONDAY + 1)).toEqual(['2026-02-09']);
    // A week ends on Sunday, however far one looks.
    expect(dates(MONDAY + 30)).toEqual(['2026-02-09', '2026-02-11', '2026-02-15']);
    const week = computeWeekWork(practice, works, 'ptolemy grubb', MONDAY);
    expect(volumeOf(week.total)).toBe(700);
    expect(week.week).toEqual({ year: 2026, week: 7 });
    expect(week.marks).toEqual([]);
  });

  test('of a group counts each athlete alone', () => {
    const { practice, works } = read(
      `session 2026-02-09 ${NAME} | Wenna Flit\n  Bar Press: 10 @ 10 kg | 10 @ 20 kg\n`,
    );
    const volume = (athlete: string) => volumeOf(computeWeekWork(practice, works, athlete, MONDAY).total);
    expect([volume('ptolemy grubb'), volume('wenna flit')]).toEqual([100, 200]);
  });

  test('finds the first session on or after a day', () => {
    const { practice } = read(
      day('2026-02-08', 1) + day('2026-02-09', 1) + day('2026-02-09', 1) + day('2026-02-12', 1),
    );
    const records = practice.sessionsOf(NAME);
    const first = (date: IsoDate) => findFirst(records, toDayNumber(date));
    expect(
      ['2026-02-07', '2026-02-09', '2026-02-10', '2026-02-12', '2026-02-13'].map((date) =>
        first(date as IsoDate),
      ),
    ).toEqual([0, 1, 3, 3, 4]);
    expect(findFirst([], 0)).toBe(0);
  });
});

describe('what makes a week no ordinary one', () => {
  const MONDAY = toDayNumber('2026-02-09');
  const marks = (log: string, definitions = DEFINITIONS) => {
    const { practice, works } = read(log, definitions);
    return computeWeekWork(practice, works, 'ptolemy grubb', MONDAY).marks;
  };
  const athlete = (lines: string) => `athlete ${NAME}\n${lines}`;
  const plan = (lines: string, who = NAME) =>
    `plan High Water\n  for ${who}\n  starts 2026-02-02\n  weeks 4\n${lines}`;

  test('a missed session, a test, a deload: each once', () => {
    const missed = `session 2026-02-09 ${NAME}\n  missed flu\n`;
    expect(marks(missed + missed)).toEqual(['missed']);
    expect(marks(day('2026-02-09', 100, 'test ') + day('2026-02-10', 100, 'test '))).toEqual(['test']);
    expect(marks(day('2026-02-09', 100, '', ', Low Tide week 2 day 1'))).toEqual(['deload']);
    expect(marks(day('2026-02-09', 100, '', ', Low Tide week 1 day 1'))).toEqual([]);
    expect(marks(day('2026-02-09', 100, '', ', Unknown Tide week 2 day 1'))).toEqual([]);
  });

  test.each([
    ['the whole week', '  away 2026-02-01 to 2026-02-28\n', ['away']],
    ['its last day', '  away 2026-02-15 to 2026-02-20\n', ['away']],
    ['its first day', '  away 2026-02-01 to 2026-02-09\n', ['away']],
    ['up to the day before', '  away 2026-02-01 to 2026-02-08\n', []],
    ['from the day after', '  away 2026-02-16 to 2026-02-20\n', []],
  ])('days away: %s', (_name, lines, expected) => {
    expect(marks(day('2026-02-10', 100), athlete(lines))).toEqual(expected);
  });

  test.each([
    // The plan starts on 2 February, so that the 9th is in its second week.
    ['in the week of its plan', plan('  deload week 2, sets 50%\n'), ['deload']],
    ['not in another of its weeks', plan('  deload week 3, sets 50%\n'), []],
    ['not of a plan for somebody else', plan('  deload week 2, sets 50%\n', 'Wenna Flit'), []],
    ['not of a plan without a deload', plan(''), []],
    [
      'not of a plan that is over',
      `plan High Water\n  for ${NAME}\n  starts 2026-01-05\n  weeks 2\n  deload week 2, sets 50%\n`,
      [],
    ],
    [
      'not of a plan that has not begun',
      `plan High Water\n  for ${NAME}\n  starts 2026-03-02\n  weeks 4\n  deload week 1, sets 50%\n`,
      [],
    ],
    [
      'not of a plan without dates',
      `plan High Water\n  for ${NAME}\n  weeks 4\n  deload week 2, sets 50%\n`,
      [],
    ],
  ])('a deload by dates: %s', (_name, text, expected) => {
    expect(marks(day('2026-02-10', 100), athlete('') + text)).toEqual(expected);
  });

  test('a planned deload in which nobody trained marks nothing', () => {
    expect(marks('', athlete('') + plan('  deload week 2, sets 50%\n'))).toEqual([]);
  });
});

describe('a comparison', () => {
  const changes = (log: string, on: IsoDate, today: IsoDate) => {
    const { practice, works } = read(log);
    return compareWeeks(practice, works, 'ptolemy grubb', toDayNumber(on), today).changes;
  };
  const unknown = (date: string) => `session ${date} ${NAME}\n  Bar Press: 10, ? @ 100 kg\n`;

  test('is a lower bound where one of the weeks is', () => {
    const [upward] = changes(day('2026-02-02', 500) + unknown('2026-02-09'), '2026-02-09', '2026-03-01');
    expect(upward).toMatchObject({ percent: 100, atLeast: true, soFar: false });
    const [known] = changes(day('2026-02-02', 500) + day('2026-02-09', 500), '2026-02-09', '2026-03-01');
    expect(known).toMatchObject({ percent: 0, atLeast: false, soFar: false });
    const [downward] = changes(unknown('2026-02-02') + day('2026-02-09', 500), '2026-02-09', '2026-03-01');
    expect(downward).toMatchObject({ percent: -50, atLeast: true });
  });

  test('on Sunday the week is over, on Saturday not yet', () => {
    const log = day('2026-02-02', 500) + day('2026-02-08', 500) + day('2026-02-09', 500);
    expect(changes(log, '2026-02-09', '2026-02-15')[0]).toMatchObject({ soFar: false, percent: -50 });
    expect(changes(log, '2026-02-09', '2026-02-14')[0]).toMatchObject({ soFar: true, percent: 0 });
    // Before the week began, nothing of it is "so far".
    expect(changes(log, '2026-02-09', '2026-02-08')[0]!.soFar).toBe(false);
    expect(changes(log, '2026-02-09', '2026-02-09')[0]!.soFar).toBe(true);
  });

  test('of a running week names what marked the whole of the other', () => {
    const log = day('2026-02-02', 500) + day('2026-02-07', 500, 'test ') + day('2026-02-09', 500);
    expect(changes(log, '2026-02-09', '2026-02-10')[0]!.before).toMatchObject({ marks: ['test'] });
    expect(volumeOf(changes(log, '2026-02-09', '2026-02-10')[0]!.before.total)).toBe(500);
  });

  test('passes over a week in which nothing was done', () => {
    const log = `${day('2026-01-26', 500)}session 2026-02-02 ${NAME}\n  missed flu\n${day('2026-02-09', 500)}`;
    expect(changes(log, '2026-02-09', '2026-03-01').map(({ before }) => before.week.week)).toEqual([5]);
  });

  test.each([
    ['holds', 'Plank: 30 s'],
    ['metres', 'Rower: 500 m'],
    ['a missed single', 'Bar Press: 0 of 1 @ 60 kg'],
  ])('a week of %s was trained', (_name, line) => {
    const log = `${day('2026-01-26', 500)}session 2026-02-02 ${NAME}\n  ${line}\n${day('2026-02-09', 500)}`;
    expect(changes(log, '2026-02-09', '2026-03-01').map(({ before }) => before.week.week)).toEqual([6]);
  });

  test('looks back 60 weeks and no further', () => {
    // 2024-12-16 is 60 weeks before 2026-02-09.
    expect(changes(day('2024-12-16', 500) + day('2026-02-09', 500), '2026-02-09', '2026-03-01')).toHaveLength(
      1,
    );
    expect(changes(day('2024-12-15', 500) + day('2026-02-09', 500), '2026-02-09', '2026-03-01')).toHaveLength(
      0,
    );
  });
});
