import { fromDayNumber, type IsoDate, toDayNumber } from '../calendar/iso-date.ts';
import { type IsoWeek, startOfWeek, toIsoWeek } from '../calendar/iso-week.ts';
import { findCourse, findDeload, findWeekOn } from '../plans/plan-calendar.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { countBefore } from '../text/count-before.ts';
import { foldName } from '../text/names.ts';
import type { SessionWork, SessionWorks } from './session-work.ts';
import { addWork, hasMetres, NO_WORK, volumeOf, type Work } from './work.ts';

/** One athlete's ISO week. */
export interface WeekWork {
  readonly week: IsoWeek;
  readonly sessions: readonly SessionWork[];
  readonly total: Work;
  /** What makes the week no ordinary one: deload, test, away, missed days. */
  readonly marks: readonly WeekMark[];
}

export type WeekMark = 'deload' | 'test' | 'away' | 'missed';

/** Volume of one week against an earlier one; `percent` is absent where it could be wrong or is undefined. */
export interface WeekChange {
  readonly before: WeekWork;
  readonly percent: number | undefined;
  /** One of the two is a lower bound: the change is that at least. */
  readonly atLeast: boolean;
  /** Both weeks up to the same weekday, since this one is not over. */
  readonly soFar: boolean;
}

/** First day of a week, in days since 1970-01-01. */
export function startDayOf(day: number): number {
  return toDayNumber(startOfWeek(toIsoWeek(fromDayNumber(day))));
}

/** A week up to and including a day (all of it by default). Sessions of one day add up; a group counts each athlete alone. */
export function computeWeekWork(
  practice: Practice,
  works: SessionWorks,
  athlete: string,
  startDay: number,
  untilDay = startDay + 6,
): WeekWork {
  const records = practice.sessionsOf(athlete);
  const sessions = sliceDays(records, startDay, Math.min(untilDay, startDay + 6)).map((record) =>
    works.of(record),
  );
  return {
    week: toIsoWeek(fromDayNumber(startDay)),
    sessions,
    total: addWork([NO_WORK, ...sessions.map(({ total }) => total)]),
    marks: findMarks(practice, athlete, sessions, startDay),
  };
}

/** Sessions with work in them, from one day to another; the list is in order of days. */
function sliceDays(records: readonly SessionRecord[], from: number, to: number): SessionRecord[] {
  const first = findFirst(records, from);
  const found: SessionRecord[] = [];
  for (let at = first; at < records.length && records[at]!.day <= to; at++) found.push(records[at]!);
  return found;
}

/** Index of the first record on or after a day. */
export function findFirst(records: readonly SessionRecord[], day: number): number {
  return countBefore(records, (record) => record.day < day);
}

function findMarks(
  practice: Practice,
  athlete: string,
  sessions: readonly SessionWork[],
  startDay: number,
): WeekMark[] {
  const marks = new Set<WeekMark>();
  for (const { record } of sessions) {
    const { entry } = record;
    if (entry.missed) marks.add('missed');
    if (entry.blocks.some((block) => block.lines.some((line) => line.purpose === 'test'))) marks.add('test');
    const plan = entry.plan && practice.findPlan(entry.plan.name.text);
    if (plan?.entry.deloads.some(({ week }) => week === entry.plan!.week)) marks.add('deload');
  }
  if (sessions.length > 0 && isPlannedDeload(practice, athlete, startDay)) marks.add('deload');
  const [from, to] = [fromDayNumber(startDay), fromDayNumber(startDay + 6)];
  const away = practice.findAthlete(athlete)?.entry.away ?? [];
  if (away.some((span) => span.from && span.to && span.from <= to && span.to >= from)) marks.add('away');
  return [...marks];
}

/** Whether a plan of the athlete deloads in that week, by its dates: sessions need not name their plan. */
function isPlannedDeload(practice: Practice, athlete: string, startDay: number): boolean {
  return practice.allPlans().some(({ entry }) => {
    if (entry.deloads.length === 0 || !entry.athletes.some(({ text }) => foldName(text) === athlete))
      return false;
    const course = findCourse(practice, entry);
    // A plan may start on any weekday; as in ISO 8601, Thursday decides which of its weeks this is.
    const thursday = startDay + 3;
    const runs = course.start !== undefined && thursday >= course.start && thursday <= course.end!;
    return runs && findDeload(entry, findWeekOn(course, thursday)) !== undefined;
  });
}

/** How far back a last trained week is looked for. */
const WEEKS_BACK = 60;

/**
 * The week of `day` against the athlete's last trained week before it. With `today` inside the week both weeks count
 * up to today's weekday. Where a week is no ordinary one, the last ordinary week stands beside it.
 */
export function compareWeeks(
  practice: Practice,
  works: SessionWorks,
  athlete: string,
  day: number,
  today: IsoDate,
): { week: WeekWork; changes: readonly WeekChange[] } {
  const start = startDayOf(day);
  const todayDay = toDayNumber(today);
  const soFar = todayDay >= start && todayDay < start + 6;
  const length = soFar ? todayDay - start : 6;
  const week = computeWeekWork(practice, works, athlete, start, start + length);
  const changes: WeekChange[] = [];
  for (let back = 1; back <= WEEKS_BACK; back++) {
    const whole = computeWeekWork(practice, works, athlete, start - 7 * back);
    if (!isTrained(whole)) continue;
    if (changes.length > 0 && whole.marks.length > 0) continue;
    const before = soFar
      ? computeWeekWork(practice, works, athlete, start - 7 * back, start - 7 * back + length)
      : whole;
    changes.push({
      before: { ...before, marks: whole.marks },
      percent: changeInPercent(before.total, week.total),
      atLeast: before.total.atLeast || week.total.atLeast,
      soFar,
    });
    // An ordinary week needs no other beside it.
    if (whole.marks.length === 0) break;
  }
  return { week, changes };
}

function isTrained({ total }: WeekWork): boolean {
  return total.sets > 0 || total.reps > 0 || total.seconds > 0 || hasMetres(total);
}

/** Change of volume in percent; undefined from nothing, and where a lower bound leaves the direction open. */
export function changeInPercent(before: Work, after: Work): number | undefined {
  const [from, to] = [volumeOf(before), volumeOf(after)];
  if (!(from > 0) || !(to > 0)) return undefined;
  const percent = (to / from - 1) * 100;
  // "At least" before could be more than is known, and so could "at least" after: only bounds that agree decide.
  if (before.atLeast && after.atLeast) return undefined;
  if (after.atLeast && percent < 0) return undefined;
  if (before.atLeast && percent > 0) return undefined;
  return percent;
}
