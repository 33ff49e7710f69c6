import { toDayNumber } from '../calendar/iso-date.ts';
import { computeMean } from '../measures/statistics.ts';
import { computeWeekWork, findFirst, startDayOf, type WeekWork } from '../measures/week-work.ts';
import { volumeOf } from '../measures/work.ts';
import type { SessionEntry } from '../model/entry.ts';
import type { Problem, Span } from '../model/source.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { printNumber } from '../units/number.ts';
import { CHECKS } from './catalogue.ts';
import { type CheckContext, NO_PROBLEMS, problem } from './check-context.ts';

/** Trained weeks are looked for so far back; a question about a week is worth asking while it can be acted on. */
const {
  percent: INCREASE_PERCENT,
  weeks: WEEKS_COMPARED,
  within: WEEKS_BACK,
  recent: RECENT_DAYS,
} = CHECKS['week-jump'].numbers;

/** A week with much more volume than the four trained ones before it: a question, at the week's last session. */
export function checkWeekJump(entry: SessionEntry, context: CheckContext): Iterable<Problem> {
  if (!entry.date?.date) return NO_PROBLEMS;
  const age = toDayNumber(context.today) - toDayNumber(entry.date.date);
  return age < 0 || age > RECENT_DAYS ? NO_PROBLEMS : findJumps(entry.date.span, context);
}

function* findJumps(span: Span, context: CheckContext): Iterable<Problem> {
  const { practice, records } = context;
  for (const record of records) {
    if (!isLastOfWeek(record, context)) continue;
    const found = compareWithBefore(record, context);
    if (found === undefined) continue;
    const name = practice.athleteName(record.athlete);
    const who = name === '' ? '' : `${name}: `;
    yield problem(
      'week-jump',
      span,
      `${who}${found}: is that meant? No threshold has been shown to predict injury`,
    );
  }
}

function isLastOfWeek({ athlete, day, entry }: SessionRecord, { practice }: CheckContext): boolean {
  const records = practice.sessionsOf(athlete);
  const next = findFirst(records, startDayOf(day) + 7);
  return records[next - 1]?.entry === entry;
}

/** `week 47 has 9 240 kg, 34 % over …`; undefined where it is no jump, or the weeks before are not known well enough. */
function compareWithBefore({ athlete, day }: SessionRecord, context: CheckContext): string | undefined {
  const { practice, works, today } = context;
  const start = startDayOf(day);
  const week = computeWeekWork(practice, works, athlete, start);
  const volume = volumeOf(week.total);
  const before: WeekWork[] = [];
  for (let back = 1; back <= WEEKS_BACK && before.length < WEEKS_COMPARED; back++) {
    const earlier = computeWeekWork(practice, works, athlete, start - 7 * back);
    if (volumeOf(earlier.total) > 0) before.push(earlier);
  }
  // A week that may have been heavier than is known makes no baseline.
  if (before.length < WEEKS_COMPARED || before.some(({ total }) => total.atLeast)) return undefined;
  const usual = computeMean(before.map(({ total }) => volumeOf(total)))!;
  if (volume * 100 <= usual * (100 + INCREASE_PERCENT)) return undefined;
  const soFar = toDayNumber(today) < start + 6 ? ' so far' : '';
  const body = week.total.body > 0 ? ' incl. body' : '';
  const percent = printNumber((volume / usual - 1) * 100);
  return `week ${week.week.week}${soFar} has ${printNumber(volume)} kg${body}, ${percent} % over the mean of the last four trained weeks (${printNumber(usual)} kg)`;
}
