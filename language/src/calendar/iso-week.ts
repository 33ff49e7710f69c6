/** ISO 8601 weeks: Monday to Sunday, week 1 holds the year's first Thursday (and so 4 January). */
import { addDays, daysBetween, type IsoDate, toWeekday } from './iso-date.ts';

/** A week of the ISO week-year, which near New Year is not the calendar year: 2021-01-03 is in 2020-W53. */
export interface IsoWeek {
  readonly year: number;
  /** 1 to 53. */
  readonly week: number;
}

/** `2026-11-17` → week 47 of 2026. */
export function toIsoWeek(date: IsoDate): IsoWeek {
  // A week belongs to the year that its Thursday is in.
  const thursday = addDays(date, 4 - toWeekday(date));
  const year = Number(thursday.slice(0, 4));
  const dayOfYear = daysBetween(firstOfJanuary(year), thursday);
  return { year, week: Math.floor(dayOfYear / 7) + 1 };
}

/** `{ year: 2026, week: 7 }` → `2026-W07`. */
export function printIsoWeek({ year, week }: IsoWeek): string {
  return `${String(year).padStart(4, '0')}-W${String(week).padStart(2, '0')}`;
}

/** `2026-W53` → week 53 of 2026; a week that its year does not have (`2025-W53`) → undefined. */
export function parseIsoWeek(text: string): IsoWeek | undefined {
  const match = /^(\d{4})-W(\d{2})$/.exec(text);
  if (!match) {
    return undefined;
  }
  const week = { year: Number(match[1]), week: Number(match[2]) };
  return week.year >= 1 && week.week >= 1 && week.week <= countWeeks(week.year) ? week : undefined;
}

/** The Monday of a week: 2026-W47 → `2026-11-16`. */
export function startOfWeek({ year, week }: IsoWeek): IsoDate {
  const fourth = addDays(firstOfJanuary(year), 3);
  return addDays(fourth, 1 - toWeekday(fourth) + (week - 1) * 7);
}

/** The week that many weeks later, or earlier when negative: 2026-W53 and 1 → 2027-W01. */
export function addWeeks(week: IsoWeek, weeks: number): IsoWeek {
  return toIsoWeek(addDays(startOfWeek(week), weeks * 7));
}

/** For sorting: negative when `first` is the earlier one, 0 for the same week. */
export function compareWeeks(first: IsoWeek, second: IsoWeek): number {
  return first.year - second.year || first.week - second.week;
}

/** How many ISO weeks a year has: 52 or 53. */
export function countWeeks(year: number): number {
  // 28 December is always in the last week.
  return toIsoWeek(addDays(firstOfJanuary(year + 1), -4)).week;
}

function firstOfJanuary(year: number): IsoDate {
  return `${String(year).padStart(4, '0')}-01-01` as IsoDate;
}
