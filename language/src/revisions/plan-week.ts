/** What one week of a plan asks for: what comparing two versions of a plan rests on. */
import { computeBlockWork } from '../measures/block-work.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { addWork, NO_WORK } from '../measures/work.ts';
import type { PlanEntry } from '../model/entry.ts';
import { findCourse } from '../plans/plan-calendar.ts';
import { type PlanTotals, sumDays, takeEnds } from '../plans/plan-totals.ts';
import { type ProjectionOptions, projectTurn } from '../plans/project-plan.ts';
import { listLoads, type ProjectedDay } from '../plans/projected.ts';
import type { PlanWeek } from './revision.ts';

export function computePlanWeek(
  works: SessionWorks,
  plan: PlanEntry,
  week: number,
  options: ProjectionOptions,
): PlanWeek {
  const days = findCourse(works.practice, plan)
    .turns.filter((turn) => turn.week === week)
    .map((turn) => projectTurn(works, plan, turn, options));
  const totals = sumDays(works, days, options);
  const kilograms = findKilograms(works, days, totals);
  const times = days.flatMap((day) => sumDays(works, [day], options).time?.value ?? []);
  return {
    ...totals,
    week,
    ...(kilograms !== undefined && { kilograms }),
    ...(times.length > 0 && { secondsADay: times.reduce((sum, time) => sum + time, 0) / times.length }),
  };
}

/** Nothing to weigh is zero kilograms; something whose load is not known is not. */
function findKilograms(
  { practice }: SessionWorks,
  days: readonly ProjectedDay[],
  { volume }: PlanTotals,
): number | undefined {
  if (volume?.value !== undefined) return volume.value;
  const context = { findMovement: (name: string) => practice.findMovement(name), bodyMass: undefined };
  const blocks = days.flatMap((day) => day.blocks.map(({ block }) => takeEnds(block, 'low')));
  const work = addWork([
    NO_WORK,
    ...blocks.map((block) => computeBlockWork(block, { index: 0 }, context).total),
  ]);
  const hasUnknown = days.some((day) =>
    day.blocks.some(({ lines }) =>
      lines.some(({ sets }) => sets.some((set) => listLoads(set).some(({ unknown }) => unknown))),
    ),
  );
  return work.atLeast || hasUnknown ? undefined : 0;
}
