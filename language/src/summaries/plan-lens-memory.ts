import type { SessionWorks } from '../measures/session-work.ts';
import type { PlacedEntry, PlanEntry } from '../model/entry.ts';
import type { Practice } from '../practice/practice.ts';
import type { LensOptions } from './lens.ts';
import { listPlanSpots, type PlanSpot } from './plan-lens.ts';
import { viewPlan } from './plan-view.ts';

interface Known {
  readonly basis: string;
  readonly athlete: string;
  /** Of the practice, when the spots were last known to be right. */
  edition: number;
  readonly spots: readonly PlanSpot[];
}

const knownPlans = new WeakMap<PlanEntry, Known>();

/** A plan's lenses stay until its athlete did something else: any pace may be what its times rest on. */
export function recallPlanSpots(
  works: SessionWorks,
  placed: PlacedEntry & { readonly entry: PlanEntry },
  options: LensOptions,
): readonly PlanSpot[] {
  const { practice } = works;
  const { entry, line } = placed;
  const { today, formula, unit, complete } = options;
  const basis = [practice.definitionsVersion, line, today, formula, unit, complete].join(' ');
  const known = knownPlans.get(entry);
  if (known?.basis === basis && isAsBefore(practice, known)) return known.spots;
  const spots = listPlanSpots(works, placed, options);
  knownPlans.set(entry, {
    basis,
    athlete: viewPlan(works, entry, options).options.athlete,
    edition: practice.edition,
    spots,
  });
  return spots;
}

function isAsBefore(practice: Practice, known: Known): boolean {
  if (practice.hasChangedSince(known.edition, known.athlete, Number.POSITIVE_INFINITY)) return false;
  known.edition = practice.edition;
  return true;
}
