/** For whom, when, where and in which week of a plan a line of a session is written. */
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { PlaceEntry } from '../model/entry.ts';
import type { MassUnit } from '../model/quantity.ts';
import type { Plan } from '../practice/athlete.ts';
import { findGap, type Gap } from './next-turn.ts';
import type { PlanCourse, PlanTurn } from './plan-calendar.ts';
import { projectTurn } from './project-plan.ts';
import type { ProjectedDay } from './projected.ts';

/** A day of a plan in one of its weeks. */
export interface PlannedTurn {
  readonly plan: Plan;
  readonly course: PlanCourse;
  readonly turn: PlanTurn;
}

export interface LineContext {
  readonly works: SessionWorks;
  /** Folded name. */
  readonly athlete: string;
  /** Days since 1970-01-01. */
  readonly day: number;
  readonly place: PlaceEntry | undefined;
  readonly formula: OneRepMaxFormula;
  readonly of: PlannedTurn;
  /** What came between the last session and this one. */
  readonly gap: Gap | undefined;
}

/** A plan's day worked out for a date, and what its lines need to become a session's. */
export function openPlannedTurn(
  works: SessionWorks,
  of: PlannedTurn,
  session: Pick<LineContext, 'athlete' | 'day'> & {
    readonly unit: MassUnit;
    readonly formula: OneRepMaxFormula;
  },
): { readonly context: LineContext; readonly projected: ProjectedDay } {
  const { practice } = works;
  const { athlete, day, unit, formula } = session;
  const { entry } = of.plan;
  const projected = projectTurn(works, entry, of.turn, { athlete, today: day, unit, formula, on: day });
  const place = entry.place && practice.findPlace(entry.place.text)?.entry;
  const gap = findGap(practice, athlete, day, of.course.start);
  return { context: { works, athlete, day, place, formula, of, gap }, projected };
}
