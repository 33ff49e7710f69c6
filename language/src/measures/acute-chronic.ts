/**
 * Recent load over usual load by exponentially weighted moving averages: Williams S, West S, Cross MJ,
 * Stokes KA (2017) Br J Sports Med 51(3):209-210. No evidence supports steering injury risk by it
 * (Impellizzeri FM et al. 2020, J Athl Train 55(9):885-892 and 893-901): it is shown with that caution only.
 */
import type { DayLoad } from './session-load.ts';
import { computeMean } from './statistics.ts';

export const ACUTE_DAYS = 7;
/** Days of the longer average, and the history that must be there before a ratio is shown. */
export const CHRONIC_DAYS = 28;

export interface AcuteChronic {
  readonly acute: number;
  readonly chronic: number;
  /** Absent before 28 known days, and where nothing was trained. */
  readonly ratio?: number;
}

/**
 * Daily loads up to the day asked about, oldest first, rest days 0. A day trained but not known breaks the
 * history: it counts from the day after. Undefined without a known last day.
 */
export function computeAcuteChronic(dailyLoads: readonly DayLoad[]): AcuteChronic | undefined {
  const history = takeKnownDays(dailyLoads);
  const acute = smoothLoads(history, ACUTE_DAYS).at(-1);
  const chronic = smoothLoads(history, CHRONIC_DAYS).at(-1);
  if (acute === undefined || chronic === undefined) {
    return undefined;
  }
  const hasRatio = history.length >= CHRONIC_DAYS && chronic > 0;
  return { acute, chronic, ...(hasRatio && { ratio: acute / chronic }) };
}

/** The average after each day, with weight 2 / (days + 1) for the new one; starts at the first day's load. */
export function smoothLoads(dailyLoads: readonly number[], days: number): number[] {
  const weight = 2 / (days + 1);
  const averages: number[] = [];
  for (const load of dailyLoads) {
    const last = averages.at(-1) ?? load;
    // Moving by the difference keeps a constant load exactly constant.
    averages.push(last + weight * (load - last));
  }
  return averages;
}

/** For comparison: mean of the last 7 days over the mean of the last 28, or over that of the 21 before them. */
export function computeRollingRatio(
  dailyLoads: readonly number[],
  kind: 'coupled' | 'uncoupled',
): number | undefined {
  const month = dailyLoads.slice(-CHRONIC_DAYS);
  const base = computeMean(kind === 'coupled' ? month : month.slice(0, -ACUTE_DAYS));
  const recent = computeMean(month.slice(-ACUTE_DAYS));
  return month.length < CHRONIC_DAYS || !base || recent === undefined ? undefined : recent / base;
}

function takeKnownDays(dailyLoads: readonly DayLoad[]): number[] {
  const start = dailyLoads.lastIndexOf(undefined) + 1;
  return dailyLoads.slice(start).filter((load) => load !== undefined);
}
