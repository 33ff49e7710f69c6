/** How fast an athlete works: seconds a rep and seconds to change over, from timed rounds or by common practice. */
import { computeMedian } from './statistics.ts';
import { fitTrend } from './theil-sen.ts';
import type { Demand, TimedRound } from './timed-rounds.ts';

export interface Pace {
  readonly secondsPerRep: number;
  readonly secondsPerChange: number;
  /** Rounds that it was fitted over; 0 where it is common practice. */
  readonly rounds: number;
  /** How far the fitted rounds lay from it, as shares of the predicted time: 0.9 and 1.2. */
  readonly low: number;
  readonly high: number;
}

/** What is taken where nothing of the athlete's own is known. All of it is common practice. */
export const COMMON_PACE = {
  secondsPerRep: 3,
  secondsPerChange: 15,
  /** A loaded walk; a machine at 2:05 for 500 m. */
  secondsPerMetre: 1,
  secondsPerMachineMetre: 0.25,
  secondsPerCalorie: 4,
  restBetweenSets: 120,
  restBetweenRounds: 60,
  /** A prediction from these may be off by a quarter either way. */
  spread: 0.25,
} as const;

export const COMMON_PACE_ONLY: Pace = {
  secondsPerRep: COMMON_PACE.secondsPerRep,
  secondsPerChange: COMMON_PACE.secondsPerChange,
  rounds: 0,
  low: 1 - COMMON_PACE.spread,
  high: 1 + COMMON_PACE.spread,
};

/** Fewer rounds than this give no pace of the athlete's own. */
export const FEWEST_FIT_ROUNDS = 6;
/** An athlete's pace moves: only so many of the last rounds count. */
const MOST_FIT_ROUNDS = 60;
/** Seconds a rep outside of this are a fit gone wrong and not a pace (common practice). */
const PLAUSIBLE_REP = { low: 0.5, high: 12 };

/**
 * Seconds a rep and a change-over by Theil-Sen: of each round, (time - written seconds) / changes against reps / changes,
 * whose slope is the one and whose intercept is the other. Where all rounds are too much alike for that, the change-over
 * is common practice and seconds a rep are the median of what is left. Undefined below six rounds of reps alone.
 */
export function fitPace(rounds: readonly TimedRound[]): Pace | undefined {
  const usable = rounds.filter(({ demand }) => isOfReps(demand)).slice(-MOST_FIT_ROUNDS);
  if (usable.length < FEWEST_FIT_ROUNDS) return undefined;
  const pace = fitBoth(usable) ?? fitRepsAlone(usable);
  if (!pace) return undefined;
  const shares = usable.map(({ demand, seconds }) => seconds / predictSeconds(demand, pace));
  return { ...pace, rounds: usable.length, low: Math.min(...shares), high: Math.max(...shares) };
}

/** Distances and calories take their own time, which would blur that of the reps. */
function isOfReps({ reps, metres, machineMetres, calories, sets, isOpen }: Demand): boolean {
  return reps > 0 && sets > 1 && metres + machineMetres + calories === 0 && !isOpen;
}

/** Reps a change must differ by this factor, or reps and change-overs cannot be told apart (chosen here). */
const FEWEST_DIFFERENCE = 1.3;

type TwoPaces = Pick<Pace, 'secondsPerRep' | 'secondsPerChange'>;

function fitBoth(rounds: readonly TimedRound[]): TwoPaces | undefined {
  const points = rounds.map(({ demand, seconds }) => ({
    x: demand.reps / (demand.sets - 1),
    y: (seconds - demand.seconds) / (demand.sets - 1),
  }));
  const loads = points.map(({ x }) => x);
  if (Math.max(...loads) < FEWEST_DIFFERENCE * Math.min(...loads)) return undefined;
  const trend = fitTrend(points);
  const isPlausible = trend && isPlausibleRep(trend.slope) && trend.intercept >= 0;
  return isPlausible ? { secondsPerRep: trend.slope, secondsPerChange: trend.intercept } : undefined;
}

function fitRepsAlone(rounds: readonly TimedRound[]): TwoPaces | undefined {
  const { secondsPerChange } = COMMON_PACE;
  const perRep = rounds.map(
    ({ demand, seconds }) => (seconds - demand.seconds - secondsPerChange * (demand.sets - 1)) / demand.reps,
  );
  const secondsPerRep = computeMedian(perRep)!;
  return isPlausibleRep(secondsPerRep) ? { secondsPerRep, secondsPerChange } : undefined;
}

function isPlausibleRep(seconds: number): boolean {
  return seconds >= PLAUSIBLE_REP.low && seconds <= PLAUSIBLE_REP.high;
}

/** Seconds that a stretch of work takes at a pace, with a change-over between each two sets. */
export function predictSeconds(
  { reps, seconds, metres, machineMetres, calories, sets }: Demand,
  { secondsPerRep, secondsPerChange }: TwoPaces,
): number {
  return (
    reps * secondsPerRep +
    seconds +
    metres * COMMON_PACE.secondsPerMetre +
    machineMetres * COMMON_PACE.secondsPerMachineMetre +
    calories * COMMON_PACE.secondsPerCalorie +
    Math.max(0, sets - 1) * secondsPerChange
  );
}
