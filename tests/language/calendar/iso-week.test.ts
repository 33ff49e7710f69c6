import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import { fromDayNumber, type IsoDate, toWeekday } from '../../../language/src/calendar/iso-date.ts';
import {
  addWeeks,
  compareWeeks,
  countWeeks,
  parseIsoWeek,
  printIsoWeek,
  startOfWeek,
  toIsoWeek,
} from '../../../language/src/calendar/iso-week.ts';

describe('the rule of ISO 8601: week 1 holds the first Thursday, Monday is 1', () => {
  test.each<[IsoDate, string]>([
    ['2005-01-01', '2004-W53-6'],
    ['2005-01-02', '2004-W53-7'],
    ['2006-01-01', '2005-W52-7'],
    ['2007-12-31', '2008-W01-1'],
    ['2008-12-29', '2009-W01-1'],
    ['2010-01-03', '2009-W53-7'],
    ['2020-12-31', '2020-W53-4'],
    ['2021-01-03', '2020-W53-7'],
    ['2021-01-04', '2021-W01-1'],
    ['2024-12-30', '2025-W01-1'],
    ['2025-12-29', '2026-W01-1'],
    ['2026-01-01', '2026-W01-4'],
    ['2026-12-31', '2026-W53-4'],
    ['2026-11-17', '2026-W47-2'],
  ])('%s is %s', (date, expected) => {
    expect(`${printIsoWeek(toIsoWeek(date))}-${toWeekday(date)}`).toBe(expected);
  });

  test('the years with 53 weeks from 2000 to 2049', () => {
    const years = Array.from({ length: 50 }, (_, index) => 2000 + index);
    const expected = [2004, 2009, 2015, 2020, 2026, 2032, 2037, 2043, 2048];
    expect(years.filter((year) => countWeeks(year) === 53)).toEqual(expected);
    expect(years.filter((year) => countWeeks(year) === 52)).toHaveLength(50 - expected.length);
  });

  test('agrees with luxon on any day of 1600 to 2400', () => {
    fc.assert(
      fc.property(fc.integer({ min: -135_140, max: 157_053 }), (dayNumber) => {
        const date = fromDayNumber(dayNumber);
        const expected = DateTime.fromISO(date, { zone: 'utc' });
        const week = toIsoWeek(date);
        expect(week).toEqual({ year: expected.weekYear, week: expected.weekNumber });
        expect(startOfWeek(week)).toBe(expected.startOf('week').toISODate());
      }),
      { numRuns: 1000 },
    );
  });
});

describe('week text', () => {
  test.each(['2026-W47', '2026-W53', '2027-W01', '2025-W52', '0950-W07', '0001-W01'])(
    '%s reads and prints the same',
    (text) => {
      expect(printIsoWeek(parseIsoWeek(text)!)).toBe(text);
    },
  );

  test.each([
    '2025-W53',
    '2026-W00',
    '2026-W54',
    '2026-W7',
    '2026W47',
    '2026-W470',
    'x2026-W47',
    '0000-W01',
    '',
  ])('"%s" is no week', (text) => {
    expect(parseIsoWeek(text)).toBeUndefined();
  });
});

test.each([
  ['2026-W47', '2026-11-16'],
  ['2026-W01', '2025-12-29'],
  ['2026-W53', '2026-12-28'],
])('%s starts on %s', (text, monday) => {
  expect(startOfWeek(parseIsoWeek(text)!)).toBe(monday);
});

test.each([
  ['2026-W53', 1, '2027-W01'],
  ['2026-W01', -1, '2025-W52'],
  ['2026-W47', 0, '2026-W47'],
])('%s and %i weeks is %s', (text, weeks, expected) => {
  expect(printIsoWeek(addWeeks(parseIsoWeek(text)!, weeks))).toBe(expected);
});

test('the earlier week sorts first, whatever its number', () => {
  const weeks = ['2027-W01', '2026-W47', '2026-W05'].map((text) => parseIsoWeek(text)!);
  expect(weeks.sort(compareWeeks).map(printIsoWeek)).toEqual(['2026-W05', '2026-W47', '2027-W01']);
  expect(compareWeeks({ year: 2026, week: 5 }, { year: 2026, week: 5 })).toBe(0);
});
