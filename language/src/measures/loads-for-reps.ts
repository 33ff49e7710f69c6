/** What a max says of other rep counts, and two lifts' sets of five of the max: for planning the next load. */
import type { ValidMax } from './max-history.ts';
import { findChartLoad, findChartPercent, NSCA_CHART } from './percent-of-max.ts';
import type { BestSet } from './records.ts';
import { type Result, toResult } from './result.ts';
import {
  estimateFromFiveRepMax,
  estimatePercentByDecay,
  REYNOLDS_EQUATIONS,
  type ReynoldsLift,
} from './reynolds.ts';

export interface RepLoad {
  readonly reps: number;
  /** Kilograms; of one hand where the max is. */
  readonly result: Result;
}

/**
 * The load for each rep count of the NSCA chart but the single; none of a max that comes on top of the body, since the
 * chart's shares are of all that is lifted.
 */
export function listLoadsForReps({ result: max, added }: ValidMax): RepLoad[] {
  const { value, bound } = max;
  if (value === undefined || added) return [];
  return [...NSCA_CHART.keys()]
    .filter((reps) => reps > 1)
    .map((reps) => ({
      reps,
      result: toResult({
        value: findChartLoad(value, reps),
        unit: 'kg',
        method: 'nsca-chart',
        bound,
        inputs: [
          { label: 'max', value, unit: 'kg' },
          { label: 'reps', value: reps, unit: 'reps' },
          { label: 'share', value: findChartPercent(reps)!, unit: '%' },
        ],
      }),
    }));
}

/** The machines that were tested, by the key of the movement. */
const REYNOLDS_LIFTS: Readonly<Record<string, ReynoldsLift>> = {
  'machine chest press': 'chest press',
  'leg press': 'leg press',
};

/** The tested lift that a movement is, if it is one. */
export function findReynoldsLift(movementKey: string): ReynoldsLift | undefined {
  return REYNOLDS_LIFTS[movementKey];
}

/**
 * The max by Reynolds' equation from the best set of five, kg, plus or minus one standard error of estimate. The
 * equation is of a five-rep max, which a best set may fall short of, so it is a lower bound.
 */
export function estimateByReynolds(lift: ReynoldsLift, best: BestSet | undefined): Result | undefined {
  const load = best?.result.value;
  if (best?.reps !== 5 || load === undefined) return undefined;
  const value = estimateFromFiveRepMax(lift, load);
  const { standardError } = REYNOLDS_EQUATIONS[lift];
  return toResult({
    value,
    unit: 'kg',
    method: lift === 'leg press' ? 'reynolds-leg-press' : 'reynolds-chest-press',
    bound: 'at least',
    spread: { low: value - standardError, high: value + standardError },
    inputs: [{ label: '5 reps', value: load, unit: 'kg' }],
  });
}

/** Percent of the max that goes with so many reps of a tested lift. */
export function computeReynoldsShare(lift: ReynoldsLift, reps: number): Result {
  return toResult({
    value: estimatePercentByDecay(lift, reps),
    unit: '%',
    method: 'reynolds-percent',
    inputs: [{ label: 'reps', value: reps, unit: 'reps' }],
  });
}
