/** When the days of a plan are done: week by week, on its weekdays, in turn, or after another plan. */
import { fromDayNumber, toDayNumber, toWeekday } from '../calendar/iso-date.ts';
import type { PlanDay, PlanEntry } from '../model/entry.ts';
import type { Plan } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { WEEKDAYS } from '../reading/build-plan-facts.ts';

export type Deload = PlanEntry['deloads'][number];

/** One training day of a plan's course. */
export interface PlanTurn {
  /** From 1. */
  readonly week: number;
  readonly day: PlanDay;
  /** How often each day was done before, deloads left out: what a step each session counts. */
  readonly doneBefore: ReadonlyMap<PlanDay, number>;
  /** Days since 1970-01-01; absent where the plan says neither when it starts nor what it follows. */
  readonly date?: number;
  readonly deload?: Deload;
}

export interface PlanCourse {
  readonly weeks: number;
  /** The first and the last day of its weeks, since 1970-01-01. */
  readonly start?: number;
  readonly end?: number;
  readonly turns: readonly PlanTurn[];
}

/** How far a chain of plans is followed back. */
const LONGEST_CHAIN = 50;

/** All training days of a plan in order, with the dates that its start gives. */
export function findCourse(practice: Practice, plan: PlanEntry): PlanCourse {
  const weeks = countWeeks(plan);
  const start = findStart(practice, plan);
  const turns = listTurns(plan, start);
  return { weeks, turns, ...(start !== undefined && { start, end: start + weeks * 7 - 1 }) };
}

export function listTurns(plan: PlanEntry, start?: number): PlanTurn[] {
  const before = new Map<PlanDay, number>();
  const turns: PlanTurn[] = [];
  const offsets = listOffsets(plan, start);
  let inTurn = 0;
  for (let week = 1; week <= countWeeks(plan); week++) {
    const deload = findDeload(plan, week);
    for (const [index, offset] of offsets.entries()) {
      const day = plan.days[plan.alternate ? inTurn++ % plan.days.length : index];
      if (!day) break;
      turns.push({
        week,
        day,
        doneBefore: new Map(before),
        ...(start !== undefined && { date: start + (week - 1) * 7 + offset }),
        ...(deload && { deload }),
      });
      if (!deload) before.set(day, (before.get(day) ?? 0) + 1);
    }
  }
  return turns;
}

/**
 * A day of a week, also of one that the plan does not have (a session may name it). Where days take turns, one may come
 * more than once a week: `nth` counts from 0, and past the last it is that.
 */
export function findTurn(plan: PlanEntry, week: number, day: PlanDay, start?: number, nth = 0): PlanTurn {
  const deload = findDeload(plan, week);
  const known = listTurns(plan, start).filter((turn) => turn.week === week && turn.day === day);
  if (known.length > 0) return known[Math.min(nth, known.length - 1)]!;
  const weeksBefore = countWeekSteps(plan, week) + (deload ? 1 : 0);
  const earlier = deload ? [] : plan.days.slice(0, plan.days.indexOf(day));
  const doneBefore = new Map(
    plan.days.map((each) => [each, weeksBefore + (earlier.includes(each) ? 1 : 0)] as const),
  );
  return { week, day, doneBefore, ...(deload && { deload }) };
}

/** The weeks that a plan writes, else those that its cells, deloads and `week 5 …` lines speak of. */
export function countWeeks(plan: PlanEntry): number {
  if (plan.weeks) return plan.weeks.count;
  const lines = plan.days.flatMap(({ blocks }) => blocks.flatMap((block) => block.lines));
  return Math.max(
    1,
    ...plan.deloads.map(({ week }) => week),
    ...lines.map(({ cells, week }) => week ?? cells.length),
  );
}

export function findDeload(plan: PlanEntry, week: number): Deload | undefined {
  return plan.deloads.find((deload) => deload.week === week);
}

/** Steps taken by a week: one on entering each week that is no deload. */
export function countWeekSteps(plan: PlanEntry, week: number): number {
  const ordinary = Array.from({ length: week }, (_, index) => index + 1).filter(
    (candidate) => !findDeload(plan, candidate),
  );
  return Math.max(0, ordinary.length - 1);
}

/** The first day of the first week; undefined where nothing says it, or where plans follow one another in a circle. */
export function findStart(practice: Practice, plan: PlanEntry): number | undefined {
  let weeks = 0;
  let current: PlanEntry | undefined = plan;
  for (let steps = 0; current && steps < LONGEST_CHAIN; steps++) {
    if (current.starts) {
      const date: PlanEntry['starts'] = current.starts;
      return date.date && toDayNumber(date.date) + weeks * 7;
    }
    const next: Plan | undefined = current.follows && practice.findPlan(current.follows.text);
    current = next?.entry;
    if (current) weeks += countWeeks(current);
  }
  return undefined;
}

/** Names of the plans from one plan back to itself, where `follows` runs in a circle: `[A, B, A]`. */
export function findCircle(practice: Practice, { key, entry }: Plan): readonly string[] | undefined {
  const names: string[] = [];
  let current: Plan | undefined = practice.findPlan(key);
  let last = entry;
  for (let steps = 0; current && steps < LONGEST_CHAIN; steps++) {
    names.push(current.name);
    last = current.entry;
    current = last.starts || !last.follows ? undefined : practice.findPlan(last.follows.text);
    if (current?.key === key) return [...names, current.name];
  }
  return undefined;
}

/** Days of a week, counted from its first: those of the weekdays written, else spread evenly (common practice). */
export function listOffsets(plan: PlanEntry, start: number | undefined): number[] {
  const weekdays = plan.weekdays.map(({ text }) => WEEKDAYS.indexOf(text as (typeof WEEKDAYS)[number]) + 1);
  const known = [...new Set(weekdays.filter((weekday) => weekday > 0))];
  if (known.length > 0 && !plan.alternate) {
    const first = start === undefined ? 1 : toWeekday(fromDayNumber(start));
    return known.map((weekday) => (weekday - first + 7) % 7).sort((a, b) => a - b);
  }
  const count = plan.alternate?.perWeek ?? Math.min(7, plan.days.length);
  return Array.from({ length: count }, (_, index) => Math.floor((index * 7) / count));
}

/** The week of a plan that a day is in: before it the first, after it the last. Without a start, the first. */
export function findWeekOn({ start, weeks }: PlanCourse, day: number): number {
  if (start === undefined) return 1;
  return Math.min(weeks, Math.max(1, Math.floor((day - start) / 7) + 1));
}
