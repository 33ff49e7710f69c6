/** What an athlete really did of a plan's line, session by session. */
import { isWorking } from '../measures/block-work.ts';
import { expandBlock } from '../measures/expand-sets.ts';
import { nameMovement, readExternal } from '../measures/series-sets.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { PlanDay } from '../model/entry.ts';
import type { Amount, Load, Measure } from '../model/quantity.ts';
import type { Plan, SessionRecord } from '../practice/athlete.ts';
import { foldName } from '../text/names.ts';
import { findDeload, type PlanCourse } from './plan-calendar.ts';

export interface PerformedSet {
  readonly measure: Measure;
  /** Of one side; the fewer where the sides differ. Reps made, of a set that failed. */
  readonly amount: number;
  /** Of one implement; undefined where no one mass is written. */
  readonly grams: number | undefined;
  readonly load: Load | undefined;
}

export interface Performance {
  readonly record: SessionRecord;
  readonly sets: readonly PerformedSet[];
}

export interface PlanOfLine {
  readonly plan: Plan;
  readonly course: PlanCourse;
  readonly day: PlanDay;
}

/**
 * The working sets of a movement in the sessions of a plan's day before a date, oldest first: those that name the day,
 * and those since the plan began that name none. Deloads and tests say nothing about progress.
 */
export function listPerformances(
  works: SessionWorks,
  athlete: string,
  name: string,
  before: number,
  of: PlanOfLine | undefined,
): Performance[] {
  const toKey = (written: string): string => nameMovement(works.practice.findMovement(written), written).key;
  const key = toKey(name);
  return works.practice.sessionsOf(athlete).flatMap((record): Performance[] => {
    if (record.day >= before || record.entry.missed || !belongs(record, of)) return [];
    const sets = record.entry.blocks.flatMap((block) =>
      expandBlock(block, record.index)
        .filter(
          (set) => isWorking(set, block) && set.line.purpose === 'work' && toKey(set.line.name.text) === key,
        )
        .flatMap(({ amount, group, line }): PerformedSet[] => {
          const done = amount && readAmount(amount);
          const grams = readExternal(group.load, works.practice.findMovement(line.name.text));
          return done ? [{ ...done, grams, load: group.load }] : [];
        }),
    );
    return sets.length > 0 ? [{ record, sets }] : [];
  });
}

function belongs({ entry, day }: SessionRecord, of: PlanOfLine | undefined): boolean {
  if (!of) return true;
  const { plan, course } = of;
  if (!entry.plan) return course.start === undefined || day >= course.start;
  if (foldName(entry.plan.name.text) !== plan.key) return false;
  const isOtherDay = entry.plan.day !== undefined && entry.plan.day !== of.day.number;
  return !isOtherDay && (entry.plan.week === undefined || !findDeload(plan.entry, entry.plan.week));
}

/** `8 left 7 right` → 7; a set that was not recorded says nothing. */
function readAmount(amount: Amount): Pick<PerformedSet, 'measure' | 'amount'> | undefined {
  switch (amount.kind) {
    case 'quantity':
      return { measure: amount.quantity.measure, amount: amount.quantity.value };
    case 'sides':
      return { measure: amount.left.measure, amount: Math.min(amount.left.value, amount.right.value) };
    case 'attempt':
      return { measure: 'reps', amount: amount.made };
    default:
      return undefined;
  }
}

/** The heaviest load that all of a session's sets have in common: the lightest of them. */
export function loadOf({ sets }: Performance): number | undefined {
  const known = sets.flatMap(({ grams }) => grams ?? []);
  return known.length === sets.length ? Math.min(...known) : undefined;
}

export function hasMade({ sets }: Performance, goal: number, count: number): boolean {
  return sets.length >= count && sets.every(({ amount }) => amount >= goal);
}

/** How many of the latest sessions in a row missed the goal, at no less than the load of the last. */
export function countMisses(performances: readonly Performance[], goal: number, count: number): number {
  const last = performances.at(-1);
  const load = last && loadOf(last);
  if (load === undefined) return 0;
  let misses = 0;
  for (const performance of performances.toReversed()) {
    if (hasMade(performance, goal, count) || (loadOf(performance) ?? 0) < load) break;
    misses++;
  }
  return misses;
}
