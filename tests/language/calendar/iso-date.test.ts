import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  compareDates,
  daysBetween,
  fromDayNumber,
  type IsoDate,
  parseIsoDate,
  toDayNumber,
  toWeekday,
} from '../../../language/src/calendar/iso-date.ts';

const anyDayNumber = fc.integer({ min: -719_162, max: 2_932_896 });

describe('parseIsoDate', () => {
  test.each(['2026-11-17', '2024-02-29', '2000-02-29', '0001-01-01', '9999-12-31', '2026-06-30'])(
    '%s is a date',
    (text) => {
      expect(parseIsoDate(text)).toBe(text);
    },
  );

  test.each([
    '2026-06-31',
    '2026-02-29',
    '1900-02-29',
    '2026-00-10',
    '2026-13-10',
    '2026-01-00',
    '2026-01-32',
    '0000-01-01',
    '2026-1-1',
    '26-01-01',
    '2026-01-011',
    ' 2026-01-01',
    '2026-01-01 ',
    '17.11.2026',
    '11/17',
    '2026-W47',
    '٢٠٢٦-٠١-٠١',
    '',
  ])('"%s" is none', (text) => {
    expect(parseIsoDate(text)).toBeUndefined();
  });

  test('agrees with luxon on which days exist', () => {
    const parts = fc.tuple(fc.integer({ min: 1, max: 9999 }), fc.nat({ max: 14 }), fc.nat({ max: 33 }));
    fc.assert(
      fc.property(parts, ([year, month, day]) => {
        const text = `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`;
        expect(parseIsoDate(text) !== undefined).toBe(DateTime.fromISO(text, { zone: 'utc' }).isValid);
      }),
    );
  });
});

describe('day numbers', () => {
  test.each<[IsoDate, number]>([
    ['1970-01-01', 0],
    ['1969-12-31', -1],
    ['1970-12-31', 364],
    ['2000-03-01', 11_017],
    ['0001-01-01', -719_162],
    ['9999-12-31', 2_932_896],
  ])('%s is day %i', (date, dayNumber) => {
    expect(toDayNumber(date)).toBe(dayNumber);
    expect(fromDayNumber(dayNumber)).toBe(date);
  });

  test('agree with luxon, there and back', () => {
    fc.assert(
      fc.property(anyDayNumber, (dayNumber) => {
        const date = fromDayNumber(dayNumber);
        expect(date).toBe(DateTime.fromMillis(dayNumber * 86_400_000, { zone: 'utc' }).toISODate());
        expect(toDayNumber(date)).toBe(dayNumber);
      }),
      { numRuns: 1000 },
    );
  });

  test('turn at every year end and leap day from 1890 to 2110', () => {
    for (let year = 1890; year <= 2110; year++) {
      for (const [month, day] of [
        [1, 1],
        [2, 28],
        [3, 1],
        [12, 31],
      ] as const) {
        const date = `${year}-${pad(month, 2)}-${pad(day, 2)}` as IsoDate;
        expect(toDayNumber(date)).toBe(Date.UTC(year, month - 1, day) / 86_400_000);
        expect(fromDayNumber(toDayNumber(date))).toBe(date);
      }
    }
  });
});

describe('counting days', () => {
  test.each<[IsoDate, number, IsoDate]>([
    ['2026-12-31', 1, '2027-01-01'],
    ['2024-02-28', 1, '2024-02-29'],
    ['2026-03-01', -1, '2026-02-28'],
    ['2026-11-17', 0, '2026-11-17'],
    ['2026-11-17', 365, '2027-11-17'],
  ])('%s and %i days is %s', (date, days, expected) => {
    expect(addDays(date, days)).toBe(expected);
    expect(daysBetween(date, expected)).toBe(days);
  });

  test('the earlier date sorts first', () => {
    const dates: IsoDate[] = ['2026-11-17', '2025-12-31', '2026-01-01'];
    expect(dates.sort(compareDates)).toEqual(['2025-12-31', '2026-01-01', '2026-11-17']);
    expect(compareDates('2026-11-17', '2026-11-17')).toBe(0);
  });
});

test('weekdays agree with luxon, Monday as 1', () => {
  expect(toWeekday('2026-11-16')).toBe(1);
  expect(toWeekday('2026-11-22')).toBe(7);
  fc.assert(
    fc.property(anyDayNumber, (dayNumber) => {
      const date = fromDayNumber(dayNumber);
      expect(toWeekday(date)).toBe(DateTime.fromISO(date, { zone: 'utc' }).weekday);
    }),
  );
});

function pad(value: number, digits: number): string {
  return String(value).padStart(digits, '0');
}
