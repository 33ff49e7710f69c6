import { describe, expect, test } from 'vitest';
import { fromDayNumber, toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import {
  countWeekSteps,
  findCircle,
  findCourse,
  findTurn,
  findWeekOn,
} from '../../../language/src/plans/plan-calendar.ts';
import { practiceOf } from '../measures/practice-of.ts';

const DAYS = '  day 1\n    Push-up: 8\n  day 2\n    Dip: 8\n';

/** `1.1 2026-11-02` for week 1 day 1, of the first plan. */
function course(properties: string, days = DAYS, more = ''): string[] {
  const { practice } = practiceOf(`plan Copper Autumn\n${properties}${days}${more}`);
  return findCourse(practice, practice.findPlan('Copper Autumn')!.entry).turns.map(
    ({ week, day, date, deload }) =>
      [`${week}.${day.number}`, date === undefined ? undefined : fromDayNumber(date), deload && 'deload']
        .filter((part) => part !== undefined)
        .join(' '),
  );
}

describe('the days of a plan', () => {
  // 2026-11-02 is a Monday.
  test('fall on its weekdays', () => {
    expect(course('  starts 2026-11-02\n  weeks 2\n  days Tue, Fri\n')).toEqual([
      '1.1 2026-11-03',
      '1.2 2026-11-06',
      '2.1 2026-11-10',
      '2.2 2026-11-13',
    ]);
  });

  test('are taken in the order of the plan’s week, which begins on the day that it starts', () => {
    expect(course('  starts 2026-11-05\n  weeks 1\n  days Mon, Thu\n')).toEqual([
      '1.1 2026-11-05',
      '1.2 2026-11-09',
    ]);
  });

  test('are spread evenly where no weekday is written', () => {
    expect(course('  starts 2026-11-02\n  weeks 1\n')).toEqual(['1.1 2026-11-02', '1.2 2026-11-05']);
  });

  test('take turns', () => {
    expect(course('  starts 2026-11-02\n  weeks 2\n  days alternate, 3 a week\n')).toEqual([
      '1.1 2026-11-02',
      '1.2 2026-11-04',
      '1.1 2026-11-06',
      '2.2 2026-11-09',
      '2.1 2026-11-11',
      '2.2 2026-11-13',
    ]);
  });

  test('know their deload', () => {
    expect(
      course('  starts 2026-11-02\n  weeks 2\n  days Mon, Thu\n  deload week 2, sets 50%\n').slice(2),
    ).toEqual(['2.1 2026-11-09 deload', '2.2 2026-11-12 deload']);
  });

  test('have no date without a start', () => {
    expect(course('  weeks 1\n  days Mon, Thu\n')).toEqual(['1.1', '1.2']);
  });

  test('are as many weeks as the plan speaks of, where it does not say', () => {
    expect(course('', '  day 1\n    Push-up: 8 | 9 | 10\n    week 5 Push-up: 12\n')).toEqual([
      '1.1',
      '2.1',
      '3.1',
      '4.1',
      '5.1',
    ]);
  });

  test('of a plan without a day are none', () => {
    expect(course('  weeks 3\n', '')).toEqual([]);
  });
});

describe('plans that follow one another', () => {
  const first = 'plan Tin Autumn\n  starts 2026-09-07\n  weeks 8\n';

  test('begin when the one before has ended', () => {
    // Eight weeks from 7 September end on 1 November.
    expect(course('  follows Tin Autumn\n  weeks 1\n  days Mon, Thu\n', DAYS, first)).toEqual([
      '1.1 2026-11-02',
      '1.2 2026-11-05',
    ]);
  });

  test('in a circle have no date, and the circle is named', () => {
    const circle = 'plan Tin Autumn\n  follows Copper Autumn\n  weeks 8\n';
    expect(course('  follows Tin Autumn\n  weeks 1\n', DAYS, circle)).toEqual(['1.1', '1.2']);
    const { practice } = practiceOf(`plan Copper Autumn\n  follows Tin Autumn\n${circle}`);
    expect(findCircle(practice, practice.findPlan('Copper Autumn')!)).toEqual([
      'Copper Autumn',
      'Tin Autumn',
      'Copper Autumn',
    ]);
  });

  test('after a plan that nobody defined have no date', () => {
    expect(course('  follows Lost Autumn\n  weeks 1\n')).toEqual(['1.1', '1.2']);
  });
});

test('steps by week: none for the first, none for a deload', () => {
  const { practice } = practiceOf(
    'plan Copper Autumn\n  weeks 6\n  deload week 3, sets 50%\n  deload week 6, sets 50%\n',
  );
  const plan = practice.findPlan('Copper Autumn')!.entry;
  expect([1, 2, 3, 4, 5, 6].map((week) => countWeekSteps(plan, week))).toEqual([0, 1, 1, 2, 3, 3]);
});

test('how often a day was done before, deloads left out, also in a week that the plan does not have', () => {
  const { practice } = practiceOf(
    `plan Copper Autumn\n  weeks 3\n  days alternate, 3 a week\n  deload week 2, sets 50%\n${DAYS}`,
  );
  const { entry } = practice.findPlan('Copper Autumn')!;
  const [first, second] = entry.days;
  const count = ({ doneBefore }: ReturnType<typeof findTurn>): string =>
    `${doneBefore.get(first!) ?? 0} ${doneBefore.get(second!) ?? 0}`;
  // Week 1: days 1, 2, 1. Week 2: 2, 1, 2, a deload. Week 3: 1, 2, 1.
  expect(findCourse(practice, entry).turns.map(count)).toEqual([
    '0 0',
    '1 0',
    '1 1',
    '2 1',
    '2 1',
    '2 1',
    '2 1',
    '3 1',
    '3 2',
  ]);
  // Of weeks 1 to 8 seven are no deload.
  expect([first!, second!].map((day) => count(findTurn(entry, 9, day)))).toEqual(['7 7', '8 7']);
});

test('the week at hand, before and after the plan too', () => {
  const { practice } = practiceOf(`plan Copper Autumn\n  starts 2026-11-02\n  weeks 3\n${DAYS}`);
  const found = findCourse(practice, practice.findPlan('Copper Autumn')!.entry);
  const weekOn = (date: `${number}-${number}-${number}`) => findWeekOn(found, toDayNumber(date));
  expect([weekOn('2026-10-20'), weekOn('2026-11-08'), weekOn('2026-11-09'), weekOn('2026-12-24')]).toEqual([
    1, 1, 2, 3,
  ]);
});
