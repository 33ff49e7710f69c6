/**
 * What a test can tell apart: Hopkins WG (2000) Sports Med 30(1):1-15 (from memory); the 0.2 of the smallest
 * worthwhile change: Hopkins WG (2004) Sportscience 8 (as quoted in later sources).
 */
import { computeMean, computeSampleDeviation } from './statistics.ts';

/** One thing measured twice under the same conditions: one athlete of a group, or one retest. */
export interface TestPair {
  readonly first: number;
  readonly second: number;
}

/** Standard deviation of the differences over √2, in the unit of the test; from two pairs up. */
export function computeTypicalError(pairs: readonly TestPair[]): number | undefined {
  const deviation = computeSampleDeviation(pairs.map(({ first, second }) => second - first));
  return deviation === undefined ? undefined : deviation / Math.SQRT2;
}

/** Typical error in percent of the mean of all tests. */
export function computeTypicalErrorPercent(pairs: readonly TestPair[]): number | undefined {
  const error = computeTypicalError(pairs);
  const mean = computeMean(pairs.flatMap(({ first, second }) => [first, second]));
  return error === undefined || !mean || mean < 0 ? undefined : (error / mean) * 100;
}

/** The change between two tests that 95 % of chance differences stay within: 1.96 × √2 × typical error. */
export function computeDetectableChange(typicalError: number): number {
  return 1.96 * Math.SQRT2 * typicalError;
}

/** 0.2 of the standard deviation between athletes; from two athletes up. */
export function computeWorthwhileChange(values: readonly number[]): number | undefined {
  const deviation = computeSampleDeviation(values);
  return deviation === undefined ? undefined : 0.2 * deviation;
}
