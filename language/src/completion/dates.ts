import { addDays, daysBetween, type IsoDate, toWeekday } from '../calendar/iso-date.ts';
import type { Offer } from './item.ts';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/** `2026-11-24`, with its weekday and how far it is from today. */
export function offerDate(date: IsoDate, today: IsoDate): Offer {
  const days = daysBetween(today, date);
  const away =
    days === 0
      ? 'today'
      : days === 1
        ? 'tomorrow'
        : days === -1
          ? 'yesterday'
          : days > 0
            ? `in ${days} days`
            : `${-days} days ago`;
  return { label: date, kind: 'date', detail: `${WEEKDAYS[toWeekday(date) - 1]}, ${away}` };
}

/** Days of what happened: today and the days before. */
export function listPastDates(today: IsoDate): Offer[] {
  return [0, -1, -2, -3].map((days) => offerDate(addDays(today, days), today));
}

/** Days of what is to come: a week, a fortnight, four, eight and twelve weeks from today. */
export function listComingDates(today: IsoDate): Offer[] {
  return [7, 14, 28, 56, 84].map((days) => offerDate(addDays(today, days), today));
}

/** The next Mondays, on which a plan may start. */
export function listMondays(today: IsoDate): Offer[] {
  const next = addDays(today, (8 - toWeekday(today)) % 7);
  return [0, 7, 14].map((days) => offerDate(addDays(next, days), today));
}
