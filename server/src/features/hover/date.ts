import { daysBetween, type IsoDate, toWeekday } from '@plimsoll/language/calendar/iso-date';
import { printIsoWeek, toIsoWeek } from '@plimsoll/language/calendar/iso-week';
import { count } from '@plimsoll/language/summaries/words';
import { escapeMarkdown, joinLines } from '../../markdown.ts';
import type { FeatureContext } from '../context.ts';
import type { LocatedAs } from '../hover.ts';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/** A date's weekday and ISO week, how far it is from today, and since when each athlete had not trained. */
export function hoverDate(context: FeatureContext, uri: string, { date, placed }: LocatedAs<'date'>): string {
  const weekday = WEEKDAYS[toWeekday(date) - 1];
  return joinLines([
    `**${weekday}, week ${printIsoWeek(toIsoWeek(date))}** · ${describeToday(date, context.today)}`,
    ...context.practice.recordsOf(uri, placed).map((record) => {
      const name = escapeMarkdown(context.practice.athleteName(record.athlete)) || 'Session';
      if (!context.workspace.complete) return `${name}: history loading…`;
      const records = context.practice.sessionsOf(record.athlete);
      const at = records.findIndex((other) => other.uri === record.uri && other.line === record.line);
      const last = records.slice(0, Math.max(0, at)).findLast(({ entry }) => !entry.missed);
      if (!last) return `${name}: the first session`;
      const days = daysBetween(last.date, date);
      return `${name}: ${days === 0 ? 'a second session that day' : `${count(days, 'day')} after the session of ${last.date}`}`;
    }),
  ]);
}

function describeToday(date: IsoDate, today: IsoDate): string {
  const days = daysBetween(date, today);
  if (days === 0) return 'today';
  return days > 0 ? `${count(days, 'day')} ago` : `in ${count(-days, 'day')}`;
}
