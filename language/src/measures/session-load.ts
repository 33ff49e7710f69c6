/**
 * Load by effort and time: Foster C et al. (2001) J Strength Cond Res 15(1):109-115; monotony and strain:
 * Foster C (1998) Med Sci Sports Exerc 30(7):1164-1168. Arbitrary units (AU).
 *
 * The papers do not say which standard deviation monotony takes, nor whether of sessions or days. The one
 * worked example fits the population deviation of single sessions. Here it is the sample deviation (n - 1) of
 * seven daily loads with rest days as 0, which later practice mostly takes.
 */
import { computeMean, computeSampleDeviation, sum } from './statistics.ts';

/** Session load of one day, both sessions of a double day added up; undefined: trained, but not rated or timed. */
export type DayLoad = number | undefined;

export interface WeekLoad {
  /** Sum of the known days; `at least` where one is unknown. */
  readonly total: number;
  readonly bound: 'exact' | 'at least';
  /** Mean over sample deviation; absent with an unknown day or seven equal ones. */
  readonly monotony?: number;
  /** Total × monotony, which is not rounded in between. */
  readonly strain?: number;
}

/** Effort 7 for 58 minutes → 406 AU. */
export function computeSessionLoad(effort: number, minutes: number): number {
  return effort * minutes;
}

/** A whole week, Monday to Sunday: rest days are 0. */
export function summariseWeekLoad(days: readonly DayLoad[]): WeekLoad {
  const known = days.filter((load) => load !== undefined);
  const total = sum(known);
  if (known.length < days.length) {
    return { total, bound: 'at least' };
  }
  const monotony = days.length === 7 ? computeMonotony(known) : undefined;
  return { total, bound: 'exact', ...(monotony !== undefined && { monotony, strain: total * monotony }) };
}

/** Mean over sample deviation; undefined where all days are equal, at rest or at work. */
export function computeMonotony(dailyLoads: readonly number[]): number | undefined {
  const mean = computeMean(dailyLoads);
  const deviation = computeSampleDeviation(dailyLoads);
  // Equal days are compared as such: their computed deviation may be a rounding error instead of 0.
  const areEqual = dailyLoads.every((load) => load === dailyLoads[0]);
  return mean === undefined || !deviation || areEqual ? undefined : mean / deviation;
}
