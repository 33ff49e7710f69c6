/**
 * Estimates of the load that can be lifted once, from reps to failure or reps plus reps in reserve.
 * The formulas and their sources stand in the table of methods under the same ids.
 */
import { HIGHEST_USEFUL_RIR, type Rating, readReserve } from './exertion.ts';
import type { MethodId } from './methods.ts';
import type { Spread } from './result.ts';

interface Formula {
  /** Max over load, at that many reps. */
  readonly factor: (reps: number) => number;
  /** Reps at which the max is that many times the load: the inverse of `factor`. */
  readonly repsAt: (factor: number) => number;
}

/** Each is a factor on the load, so any unit of mass goes in and comes out. */
export const ONE_REP_MAX_FORMULAS = {
  epley: { factor: (reps) => 1 + reps / 30, repsAt: (factor) => 30 * (factor - 1) },
  brzycki: { factor: (reps) => 36 / (37 - reps), repsAt: (factor) => 37 - 36 / factor },
  lombardi: { factor: (reps) => reps ** 0.1, repsAt: (factor) => factor ** 10 },
  mayhew: {
    factor: (reps) => 100 / (52.2 + 41.9 * Math.exp(-0.055 * reps)),
    repsAt: (factor) => Math.log((100 / factor - 52.2) / 41.9) / -0.055,
  },
  oconner: { factor: (reps) => 1 + 0.025 * reps, repsAt: (factor) => (factor - 1) / 0.025 },
  wathan: {
    factor: (reps) => 100 / (48.8 + 53.8 * Math.exp(-0.075 * reps)),
    repsAt: (factor) => Math.log((100 / factor - 48.8) / 53.8) / -0.075,
  },
  lander: {
    factor: (reps) => 100 / (101.3 - 2.67123 * reps),
    repsAt: (factor) => (101.3 - 100 / factor) / 2.67123,
  },
} as const satisfies Readonly<Record<string, Formula>>;

export type OneRepMaxFormula = keyof typeof ONE_REP_MAX_FORMULAS & MethodId;

export const ONE_REP_MAX_FORMULA_IDS = Object.keys(ONE_REP_MAX_FORMULAS) as readonly OneRepMaxFormula[];

export const DEFAULT_FORMULA: OneRepMaxFormula = 'epley';

/** Above this an estimate is shown as rough (Reynolds et al. 2006: no more than 10 reps in linear equations). */
export const HIGHEST_USUAL_REPS = 10;
/** Above this the formulas part by a quarter of the load and there is no estimate. */
export const HIGHEST_REPS = 15;
/** Brzycki's formula has its pole here and Lander's just above: none is asked at or beyond it. */
const POLE = 37;

/** Reps plus reps in reserve; `rated` tells a set taken to a known effort from one taken as performed. */
export interface EffectiveReps {
  readonly reps: number;
  readonly rated: boolean;
}

export interface OneRepMaxEstimate {
  /** In the unit of the load. */
  readonly value: number;
  /** Lowest and highest of the seven formulas; absent for a true single. */
  readonly spread?: Spread;
  readonly quality: 'single' | 'usual' | 'rough';
  readonly method: MethodId;
}

/**
 * `5` at RPE 8 → 7 effective reps. Without a rating the reps stand as performed. Undefined without a rep, or
 * where the rating is too far from failure (more than 4 in reserve, RPE below 6) to estimate from.
 */
export function countEffectiveReps(reps: number, rating: Rating = {}): EffectiveReps | undefined {
  if (!(reps >= 1)) {
    return undefined;
  }
  if (rating.rpe === undefined && rating.rir === undefined) {
    return { reps, rated: false };
  }
  const reserve = readReserve(rating);
  const isUseful = reserve !== undefined && reserve >= 0 && reserve <= HIGHEST_USEFUL_RIR;
  return isUseful ? { reps: reps + reserve, rated: true } : undefined;
}

/** The estimate as it is shown: a true single is its own max, above 10 reps rough, above 15 none. */
export function estimateOneRepMax(
  load: number,
  effectiveReps: number,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): OneRepMaxEstimate | undefined {
  if (!(load > 0) || !(effectiveReps >= 1 && effectiveReps <= HIGHEST_REPS)) {
    return undefined;
  }
  if (effectiveReps === 1) {
    return { value: load, quality: 'single', method: 'true-single' };
  }
  const all = ONE_REP_MAX_FORMULA_IDS.map((id) => load * ONE_REP_MAX_FORMULAS[id].factor(effectiveReps));
  return {
    value: load * ONE_REP_MAX_FORMULAS[formula].factor(effectiveReps),
    spread: { low: Math.min(...all), high: Math.max(...all) },
    quality: effectiveReps > HIGHEST_USUAL_REPS ? 'rough' : 'usual',
    method: formula,
  };
}

/** One formula as published, without the rules above: 100 and 1 rep by Epley → 103.33. Reps from 1, below 37. */
export function applyFormula(formula: OneRepMaxFormula, load: number, reps: number): number | undefined {
  return reps >= 1 && reps < POLE ? load * ONE_REP_MAX_FORMULAS[formula].factor(reps) : undefined;
}

/** The load for that many reps at a max: 5 reps of 150 by Epley → 128.57; one rep is the max itself. */
export function findLoadForReps(
  max: number,
  reps: number,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): number | undefined {
  if (reps === 1) {
    return max;
  }
  return reps > 1 && reps < POLE ? max / ONE_REP_MAX_FORMULAS[formula].factor(reps) : undefined;
}

/** The reps possible at a percentage of the max: 80 % by Epley → 7.5; never under the one that 100 % allows. */
export function findRepsAtPercent(
  percent: number,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): number | undefined {
  if (!(percent > 0 && percent <= 100)) {
    return undefined;
  }
  const reps = ONE_REP_MAX_FORMULAS[formula].repsAt(100 / percent);
  return reps < POLE ? Math.max(1, reps) : undefined;
}
