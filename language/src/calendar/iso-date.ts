/**
 * Calendar dates as ISO 8601 text (`2026-11-17`), counted in whole days with integer arithmetic only:
 * no clock and no time zone can shift them.
 */

/** A date as `YYYY-MM-DD`. Take one from {@link parseIsoDate} wherever the text comes from a user. */
export type IsoDate = `${number}-${number}-${number}`;

/** Monday is 1 and Sunday is 7, as in ISO 8601. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

const DAYS_BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const DAYS_IN_400_YEARS = 146_097;
/** Days from 0001-01-01 to 1970-01-01 in the Gregorian calendar, carried back. */
const EPOCH = 719_162;

/** `2026-06-31` → undefined: the text must be a day that exists, years 0001 to 9999. */
export function parseIsoDate(text: string): IsoDate | undefined {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) {
    return undefined;
  }
  const [year, month, day] = splitDate(text as IsoDate);
  const exists = year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
  return exists ? (text as IsoDate) : undefined;
}

/** Days since 1970-01-01: `1970-01-02` → 1, `1969-12-31` → -1. */
export function toDayNumber(date: IsoDate): number {
  const [year, month, day] = splitDate(date);
  const leapDay = month > 2 && isLeapYear(year) ? 1 : 0;
  return daysBeforeYear(year) + DAYS_BEFORE_MONTH[month - 1]! + leapDay + day - 1 - EPOCH;
}

/** The date that many whole days after 1970-01-01: 1 → `1970-01-02`. */
export function fromDayNumber(dayNumber: number): IsoDate {
  const days = dayNumber + EPOCH;
  // By the mean length of a year the count may lag by one year, but never leads.
  let year = Math.floor((days * 400) / DAYS_IN_400_YEARS) + 1;
  if (daysBeforeYear(year + 1) <= days) {
    year += 1;
  }
  let month = 1;
  let rest = days - daysBeforeYear(year);
  while (rest >= daysInMonth(year, month)) {
    rest -= daysInMonth(year, month);
    month += 1;
  }
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(rest + 1, 2)}` as IsoDate;
}

/** `2026-12-31` and 1 → `2027-01-01`; a negative number of days goes back. */
export function addDays(date: IsoDate, days: number): IsoDate {
  return fromDayNumber(toDayNumber(date) + days);
}

/** Whole days from one date to another, negative when the second is earlier. */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return toDayNumber(to) - toDayNumber(from);
}

/** For sorting: negative when `first` is the earlier one, 0 on the same day. */
export function compareDates(first: IsoDate, second: IsoDate): number {
  return toDayNumber(first) - toDayNumber(second);
}

/** `2026-11-17` is a Tuesday → 2. */
export function toWeekday(date: IsoDate): Weekday {
  // Day 0, 1970-01-01, was a Thursday.
  return (modulo(toDayNumber(date) + 3, 7) + 1) as Weekday;
}

/** Digit by digit: dates are asked for more often than anything else. */
function splitDate(date: IsoDate): [number, number, number] {
  return [
    readDigits(date, 0, 2) * 100 + readDigits(date, 2, 4),
    readDigits(date, 5, 7),
    readDigits(date, 8, 10),
  ];
}

const ZERO = 48;

function readDigits(text: string, from: number, to: number): number {
  let value = 0;
  for (let at = from; at < to; at++) value = value * 10 + text.charCodeAt(at) - ZERO;
  return value;
}

function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

function daysInMonth(year: number, month: number): number {
  return month === 2 && isLeapYear(year) ? 29 : DAYS_IN_MONTH[month - 1]!;
}

/** Days from 0001-01-01 to the first of January of `year`. */
function daysBeforeYear(year: number): number {
  const past = year - 1;
  return past * 365 + Math.floor(past / 4) - Math.floor(past / 100) + Math.floor(past / 400);
}

function modulo(value: number, divisor: number): number {
  return ((value % divisor) + divisor) % divisor;
}

function pad(value: number, digits: number): string {
  return String(value).padStart(digits, '0');
}
