/** What a revision of a plan costs: its weeks before and after, under the same definitions, maxes and places. */
import { type Omission, type Result, toResult, type Unit } from '../measures/result.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { PlanEntry } from '../model/entry.ts';
import { findCourse } from '../plans/plan-calendar.ts';
import type { ProjectionOptions } from '../plans/project-plan.ts';
import { computePlanWeek } from './plan-week.ts';
import type { PlanEffect, PlanWeek, WeekEffect } from './revision.ts';

/** Smaller differences come from halves and thirds that do not add up to the last digit. */
const LEAST = 1e-6;

/** Both sides are projected for one athlete; a side that is missing counts as nothing. */
export function computePlanEffect(
  works: SessionWorks,
  before: PlanEntry | undefined,
  after: PlanEntry | undefined,
  options: ProjectionOptions,
): Omit<PlanEffect, 'athlete' | 'unit'> {
  const count = (plan: PlanEntry | undefined): number => (plan ? findCourse(works.practice, plan).weeks : 0);
  const weeks = Array.from({ length: Math.max(count(before), count(after)) }, (_, index): WeekEffect => {
    const week = index + 1;
    return {
      week,
      ...(before && week <= count(before) && { before: computePlanWeek(works, before, week, options) }),
      ...(after && week <= count(after) && { after: computePlanWeek(works, after, week, options) }),
    };
  });
  const compared = before && after ? weeks.filter((each) => each.before && each.after) : weeks;
  const differ = (unit: Unit, read: (week: PlanWeek) => number | undefined) =>
    toDifference(compared, unit, read);
  const [volume, time, intensity] = [
    differ('kg', ({ kilograms }) => kilograms),
    differ('s', ({ secondsADay }) => secondsADay),
    before && after ? differ('%', (week) => week.intensity?.value) : undefined,
  ];
  return {
    weeks,
    sets: differ('sets', ({ sets }) => sets)!,
    ...(volume && { volume }),
    ...(time && { time }),
    ...(intensity && { intensity }),
    muscles: compareMuscles(compared),
  };
}

/** A muscle that a week does not name gets no hard set in it. */
function compareMuscles(weeks: readonly WeekEffect[]): { name: string; result: Result }[] {
  const names = new Set(
    weeks
      .flatMap(({ before, after }) => [before, after].flatMap((week) => week?.muscles ?? []))
      .map(({ name }) => name),
  );
  return [...names]
    .flatMap((name) => {
      const result = toDifference(
        weeks,
        'sets',
        ({ muscles }) => muscles.find((each) => each.name === name)?.result.value ?? 0,
      );
      return result?.value !== undefined && result.value !== 0 ? [{ name, result }] : [];
    })
    .sort((a, b) => Math.abs(b.result.value!) - Math.abs(a.result.value!) || (a.name < b.name ? -1 : 1));
}

/** The mean difference over the weeks in which both sides are known; those of another week are left out, and said. */
function toDifference(
  weeks: readonly WeekEffect[],
  unit: Unit,
  read: (week: PlanWeek) => number | undefined,
): Result | undefined {
  const known: { readonly before: number; readonly after: number }[] = [];
  const omitted: Omission[] = [];
  for (const { week, before, after } of weeks) {
    const [was, is] = [before ? read(before) : 0, after ? read(after) : 0];
    if (was !== undefined && is !== undefined) known.push({ before: was, after: is });
    else
      omitted.push({ what: `week ${week}`, why: was === undefined ? 'not known before' : 'not known after' });
  }
  if (known.length === 0) return undefined;
  const mean = (of: (week: (typeof known)[number]) => number): number =>
    known.reduce((sum, week) => sum + of(week), 0) / known.length;
  const differences = known.map(({ before, after }) => clean(after - before));
  const [low, high] = [Math.min(...differences), Math.max(...differences)];
  return toResult({
    value: clean(mean(({ before, after }) => after - before)),
    unit,
    method: 'revision',
    bound: 'prediction',
    ...(high - low > LEAST && { spread: { low, high } }),
    inputs: [
      { label: 'before', value: mean(({ before }) => before), unit },
      { label: 'after', value: mean(({ after }) => after), unit },
      { label: 'weeks', value: known.length, unit: '' },
    ],
    omitted: [...omitted, ...listUnweighed(weeks, unit)],
  });
}

function clean(difference: number): number {
  return Math.abs(difference) < LEAST ? 0 : difference;
}

/** What has no kilograms in either version is in no difference of them. */
function listUnweighed(weeks: readonly WeekEffect[], unit: Unit): Omission[] {
  if (unit !== 'kg') return [];
  const all = weeks.flatMap(({ before, after }) =>
    [before, after].flatMap((week) => week?.volume?.omitted ?? []),
  );
  return [...new Map(all.map((each) => [`${each.what}\n${each.why}`, each])).values()];
}
