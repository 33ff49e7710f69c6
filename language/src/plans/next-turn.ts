/** Which day of which plan comes next for an athlete, and whether something came between. */

import { toDayNumber } from '../calendar/iso-date.ts';
import { CHECKS } from '../checks/catalogue.ts';
import type { AthleteEntry } from '../model/entry.ts';
import type { Plan, SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { foldName } from '../text/names.ts';
import { findCourse, type PlanCourse, type PlanTurn } from './plan-calendar.ts';

export interface NextTurn {
  readonly plan: Plan;
  readonly course: PlanCourse;
  readonly turn: PlanTurn;
}

/** A plan that ended longer ago than this is not taken up again. */
const DAYS_AFTER_THE_END = 14;

/**
 * The first day of a plan behind the last one that was logged for it (a missed one too). Of several plans it is `preferred`
 * (a folded name) if that has a day left; else that which began last, and before any began, the one that begins first. Of
 * plans that began together, it is the one whose next day comes first.
 */
export function findNextTurn(
  practice: Practice,
  athlete: string,
  today: number,
  preferred?: string,
): NextTurn | undefined {
  const open = listPlans(practice, athlete).flatMap((plan): NextTurn[] => {
    const course = findCourse(practice, plan.entry);
    const turn = course.turns[findLastDone(practice, athlete, plan, course) + 1];
    const isOver = course.end !== undefined && course.end + DAYS_AFTER_THE_END < today;
    return turn && !isOver ? [{ plan, course, turn }] : [];
  });
  const wanted = open.find(({ plan }) => plan.key === preferred);
  if (wanted) return wanted;
  const startOf = ({ course }: NextTurn): number => course.start ?? 0;
  const begun = open.filter(({ course }) => course.start === undefined || course.start <= today);
  const start = begun.length > 0 ? Math.max(...begun.map(startOf)) : Math.min(...open.map(startOf));
  return (begun.length > 0 ? begun : open)
    .filter((each) => startOf(each) === start)
    .toSorted((a, b) => (a.turn.date ?? start) - (b.turn.date ?? start))[0];
}

export function listPlans(practice: Practice, athlete: string): Plan[] {
  return practice.allPlans().filter(({ entry }) => {
    if (entry.athletes.length === 0) return practice.resolveAthlete('') === athlete;
    return entry.athletes.some(({ text }) => foldName(text) === athlete);
  });
}

/** How an athlete is spelt: as defined or logged, else as a plan is for; empty where nobody is named. */
export function nameAthlete(practice: Practice, athlete: string): string {
  const planned = listPlans(practice, athlete).flatMap(({ entry }) => entry.athletes);
  const written = planned.find(({ text }) => foldName(text) === athlete);
  return practice.athleteName(athlete) || (written?.text ?? '');
}

/** Where the last logged day stands in the course; -1 where none is logged. Days in turn come more than once a week. */
function findLastDone(practice: Practice, athlete: string, plan: Plan, course: PlanCourse): number {
  const done = new Map<string, number>();
  let last = -1;
  for (const { entry } of practice.sessionsOf(athlete)) {
    if (!entry.plan || foldName(entry.plan.name.text) !== plan.key) continue;
    const { week, day = plan.entry.days.length === 1 ? plan.entry.days[0]!.number : undefined } = entry.plan;
    const key = `${week} ${day}`;
    const nth = done.get(key) ?? 0;
    done.set(key, nth + 1);
    const places = course.turns.flatMap((turn, index) =>
      turn.week === week && turn.day.number === day ? [index] : [],
    );
    last = Math.max(last, places[Math.min(nth, places.length - 1)] ?? -1);
  }
  return last;
}

/** What stands between the last session and the next. */
export type Gap =
  | { readonly kind: 'layoff'; readonly days: number }
  | { readonly kind: 'missed week'; readonly days: number };

/** More days without a session than this are a layoff, as the check has it. */
const LAYOFF_DAYS = CHECKS['caution-layoff'].numbers.days;

/** After a layoff loads begin at so many percent of the plan's (common practice). */
export const LAYOFF_SHARE = 90;

/** The last session that took place before a day. */
export function findLastSession(
  practice: Practice,
  athlete: string,
  before: number,
): SessionRecord | undefined {
  return practice.sessionsOf(athlete).findLast(({ day, entry }) => day < before && !entry.missed);
}

/** A layoff of over two weeks, or a week of the plan in which nothing was done. */
export function findGap(
  practice: Practice,
  athlete: string,
  day: number,
  start: number | undefined,
): Gap | undefined {
  const last = findLastSession(practice, athlete, day);
  if (!last) return undefined;
  const days = day - last.day;
  if (days > LAYOFF_DAYS) return { kind: 'layoff', days };
  const weekOf = (date: number): number => Math.floor((date - (start ?? 4)) / 7);
  // Before the plan's first week there is none to be missed.
  const isMissed = weekOf(day) - weekOf(last.day) >= 2 && (start === undefined || day >= start + 7);
  return isMissed ? { kind: 'missed week', days } : undefined;
}

/** When an athlete is away on a day: until when, and why. */
export function findAway(
  entry: AthleteEntry | undefined,
  day: number,
): AthleteEntry['away'][number] | undefined {
  return entry?.away.find(
    ({ from, to }) =>
      from !== undefined && toDayNumber(from) <= day && to !== undefined && day <= toDayNumber(to),
  );
}
