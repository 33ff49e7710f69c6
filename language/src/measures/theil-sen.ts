/**
 * A trend that one odd point cannot bend: the median of the slopes between all pairs of points, with the
 * rank-based interval of Sen PK (1968) J Am Stat Assoc 63(324):1379-1389 (from memory).
 */
import type { Point } from './least-squares.ts';
import { computeMedian, medianOfSorted, sum } from './statistics.ts';

export interface Trend {
  /** Change of y per unit of x. */
  readonly slope: number;
  /** Median of y - slope × x. */
  readonly intercept: number;
  /** 95 % interval of the slope; absent below six points or where too few pairs differ in x. */
  readonly interval?: { readonly low: number; readonly high: number };
}

/** Fewer points give a slope without an interval, and so no verdict. */
export const FEWEST_FOR_INTERVAL = 6;

/** The 97.5 % point of the normal distribution. */
const NORMAL_QUANTILE = 1.959963984540054;

/** Pairs of equal x are skipped; undefined where no two x differ. */
export function fitTrend(points: readonly Point[]): Trend | undefined {
  const slopes = collectSlopes(points);
  if (slopes.length === 0) {
    return undefined;
  }
  const slope = medianOfSorted(slopes);
  const intercept = computeMedian(points.map(({ x, y }) => y - slope * x))!;
  const interval = findInterval(slopes, points);
  return interval ? { slope, intercept, interval } : { slope, intercept };
}

/** Whether a trend is told from none: its interval is known and does not hold zero. */
export function isClearTrend({ interval }: Trend): boolean {
  return interval !== undefined && (interval.low > 0 || interval.high < 0);
}

function collectSlopes(points: readonly Point[]): Float64Array {
  const slopes = points.flatMap((first, index) =>
    points
      .slice(index + 1)
      .filter((second) => second.x !== first.x)
      // Adding 0 turns -0 into 0, so that the order of the points cannot show.
      .map((second) => (second.y - first.y) / (second.x - first.x) + 0),
  );
  return Float64Array.from(slopes).sort();
}

/** The slopes at the ranks (N - C) / 2 and (N + C) / 2 + 1, where C is 1.96 deviations of Kendall's S. */
function findInterval(slopes: Float64Array, points: readonly Point[]): Trend['interval'] {
  const reach = NORMAL_QUANTILE * Math.sqrt(computeKendallVariance(points));
  const low = slopes[Math.round((slopes.length - reach) / 2) - 1];
  const high = slopes[Math.round((slopes.length + reach) / 2)];
  const isKnown = points.length >= FEWEST_FOR_INTERVAL && low !== undefined && high !== undefined;
  return isKnown ? { low, high } : undefined;
}

/** Variance of Kendall's S with no trend; ties of x or y make it smaller. */
function computeKendallVariance(points: readonly Point[]): number {
  const ties = [...countEqual(points.map(({ x }) => x)), ...countEqual(points.map(({ y }) => y))];
  return (varianceTerm(points.length) - sum(ties.map(varianceTerm))) / 18;
}

function varianceTerm(count: number): number {
  return count * (count - 1) * (2 * count + 5);
}

function countEqual(values: readonly number[]): number[] {
  const counts = new Map<number, number>();
  for (const value of values) {
    counts.set(value, (counts.get(value) ?? 0) + 1);
  }
  return [...counts.values()];
}
