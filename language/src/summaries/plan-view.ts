import { toDayNumber } from '../calendar/iso-date.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { PlanEntry } from '../model/entry.ts';
import { findCourse, findWeekOn, type PlanCourse } from '../plans/plan-calendar.ts';
import { type ProjectionOptions, projectTurn } from '../plans/project-plan.ts';
import type { ProjectedDay } from '../plans/projected.ts';
import { foldName } from '../text/names.ts';
import type { MassUnit } from '../units/mass.ts';
import type { LensOptions } from './lens.ts';
import { unitFor } from './session-lens.ts';

/** A plan as one athlete does it, and the week at hand. */
export interface PlanView {
  readonly plan: PlanEntry;
  readonly course: PlanCourse;
  readonly week: number;
  readonly options: ProjectionOptions;
  readonly unit: MassUnit;
}

/** For the first athlete of a plan, or the one given; before the plan its first week, after it the last. */
export function viewPlan(
  works: SessionWorks,
  plan: PlanEntry,
  options: LensOptions,
  athlete = works.practice.resolveAthlete(foldName(plan.athletes[0]?.text ?? '')),
): PlanView {
  const course = findCourse(works.practice, plan);
  const today = toDayNumber(options.today);
  return {
    plan,
    course,
    week: findWeekOn(course, today),
    options: { athlete, today, unit: options.unit, formula: options.formula },
    unit: unitFor(works, athlete, options),
  };
}

/** The days of one week, worked out. */
export function projectWeek(works: SessionWorks, view: PlanView, week: number): ProjectedDay[] {
  const { course, plan, options } = view;
  return course.turns
    .filter((turn) => turn.week === week)
    .map((turn) => projectTurn(works, plan, turn, options));
}
