/** Where a series goes, what a test can tell apart, and whether a change is more than that. */
import { fromDayNumber } from '../calendar/iso-date.ts';
import type { Practice } from '../practice/practice.ts';
import { fitLine } from './least-squares.ts';
import { DEFAULT_FORMULA, type OneRepMaxFormula } from './one-rep-max.ts';
import {
  computeDetectableChange,
  computeTypicalError,
  computeTypicalErrorPercent,
  computeWorthwhileChange,
} from './reliability.ts';
import { type Input, type Omission, type Result, toResult, type Unit } from './result.ts';
import type { SeriesPoint, TimeSeries } from './series.ts';
import type { SessionWorks } from './session-work.ts';
import { computeMean, sum } from './statistics.ts';
import { FEWEST_FOR_INTERVAL, fitTrend, isClearTrend, type Trend } from './theil-sen.ts';

/** How far back a trend looks: what was before half a year says little about training now (chosen here). */
export const TREND_WEEKS = 26;

/**
 * Slope per week up to a day, with Sen's interval as its spread; undefined without two days. Estimates and lower bounds
 * are never mixed: estimates count where there are enough of them, else whichever are more.
 */
export function computeTrend(series: TimeSeries, untilDay: number, weeks = TREND_WEEKS): Result | undefined {
  const { points, bound, omitted } = choosePoints(takeRecent(series, untilDay, weeks));
  const trend = fitTrend(toWeeks(points));
  if (!trend) return undefined;
  const span = `points from ${fromDayNumber(points[0]!.day)} to ${fromDayNumber(points.at(-1)!.day)}`;
  const verdict = judgeTrend(trend, points.length);
  return toResult({
    value: trend.slope,
    unit: toRate(series.unit),
    method: 'theil-sen',
    ...(trend.interval && { spread: trend.interval }),
    inputs: [{ label: span, value: points.length, unit: '' }, ...describeEnds(points, series.unit)],
    omitted,
    remark: bound === 'at least' ? `${verdict}, from lower bounds` : verdict,
  });
}

/**
 * The straight line through the same points by least squares, with its 95 % interval: a second opinion, which one odd
 * point can bend. Undefined below three points or where no two days differ.
 */
export function computeLineTrend(
  series: TimeSeries,
  untilDay: number,
  weeks = TREND_WEEKS,
): Result | undefined {
  const { points, omitted } = choosePoints(takeRecent(series, untilDay, weeks));
  const line = fitLine(toWeeks(points));
  if (!line?.errors) return undefined;
  return toResult({
    value: line.slope,
    unit: toRate(series.unit),
    method: 'least-squares',
    spread: { low: line.errors.low, high: line.errors.high },
    inputs: [
      { label: 'points', value: points.length, unit: '' },
      ...describeEnds(points, series.unit),
      { label: 'standard error', value: line.errors.slopeError, unit: toRate(series.unit) },
    ],
    omitted,
  });
}

/** The first and the last point: enough to see which series it is. */
function describeEnds(points: readonly SeriesPoint[], unit: Unit): Input[] {
  return [points[0]!, points.at(-1)!].map(({ day, value }) => ({ label: fromDayNumber(day), value, unit }));
}

function takeRecent({ points }: TimeSeries, untilDay: number, weeks: number): SeriesPoint[] {
  return points.filter(({ day }) => day <= untilDay && day > untilDay - 7 * weeks);
}

/** Weeks since the first point, and the values. */
function toWeeks(points: readonly SeriesPoint[]): { x: number; y: number }[] {
  return points.map(({ day, value }) => ({ x: (day - points[0]!.day) / 7, y: value }));
}

/** `kg` → `kg/week`, `kg/min` → `kg/min/week`. */
function toRate(unit: Unit): Unit {
  return `${unit}/week` as Unit;
}

function choosePoints(points: readonly SeriesPoint[]): {
  points: readonly SeriesPoint[];
  bound: SeriesPoint['bound'];
  omitted: Omission[];
} {
  const exact = points.filter(({ bound }) => bound === 'exact');
  const lower = points.filter(({ bound }) => bound !== 'exact');
  const takesExact = exact.length >= FEWEST_FOR_INTERVAL || exact.length >= lower.length;
  const left = takesExact ? lower.length : exact.length;
  const why = takesExact ? 'lower bounds only' : 'estimates, too few beside the lower bounds';
  return {
    points: takesExact ? exact : lower,
    bound: takesExact ? 'exact' : 'at least',
    omitted: left > 0 ? [{ what: `${left} ${left === 1 ? 'point' : 'points'}`, why }] : [],
  };
}

function judgeTrend(trend: Trend, count: number): string {
  if (count < FEWEST_FOR_INTERVAL) return `no verdict from ${count} of ${FEWEST_FOR_INTERVAL} points`;
  if (!trend.interval) return 'no verdict, too few different days';
  if (!isClearTrend(trend)) return 'no clear change';
  return trend.slope > 0 ? 'rising' : 'falling';
}

/**
 * Typical error of one athlete's test, kg: the standard deviation of loads repeated under the same conditions, pooled
 * over the athlete's `retest` lines of the movement. Undefined without a line of two loads; without a value where all
 * repeats were equal, since a bar that moves in steps hides a small error.
 */
export function computeRetestError(
  practice: Practice,
  athlete: string,
  movement: string,
): Result | undefined {
  const retests = listRetests(practice, athlete, movement);
  if (retests.length === 0) return undefined;
  const squares = retests.map((loads) => sum(loads.map((load) => (load - computeMean(loads)!) ** 2)));
  const freedom = sum(retests.map((loads) => loads.length - 1));
  const error = Math.sqrt(sum(squares) / freedom);
  return toResult({
    value: error > 0 ? error : undefined,
    unit: 'kg',
    method: 'retest-error',
    inputs: retests.flat().map((load): Input => ({ label: 'repeat', value: load, unit: 'kg' })),
    ...(error === 0 && { remark: 'the repeats were equal' }),
  });
}

/** The loads of each `retest` line of a movement that has two or more, kg. */
function listRetests(practice: Practice, athlete: string, movement: string): number[][] {
  const toKey = (name: string): string => practice.findMovement(name)?.key ?? name.toLowerCase();
  return (practice.findAthlete(athlete)?.entry.retests ?? [])
    .filter((retest) => toKey(retest.movement.text) === toKey(movement))
    .map(({ masses }) => masses.map(({ grams }) => grams / 1000))
    .filter((loads) => loads.length > 1);
}

/** The change beyond which chance alone hardly ever goes, kg; undefined without a typical error. */
export function computeDetectable(typicalError: Result | undefined): Result | undefined {
  const error = typicalError?.value;
  if (error === undefined) return undefined;
  return toResult({
    value: computeDetectableChange(error),
    unit: typicalError!.unit,
    method: 'minimal-detectable-change',
    inputs: [{ label: 'typical error', value: error, unit: typicalError!.unit }],
  });
}

/** Typical error of a test over the practice, kg: the first two loads of each retest line, from so many lines up. */
export function computeGroupError(practice: Practice, movement: string): Result | undefined {
  const pairs = practice
    .athleteKeys()
    .flatMap((athlete) =>
      listRetests(practice, athlete, movement).map(([first, second]) => ({ first: first!, second: second! })),
    );
  if (pairs.length < FEWEST_ATHLETES) return undefined;
  const error = computeTypicalError(pairs);
  const percent = computeTypicalErrorPercent(pairs);
  if (!error || percent === undefined) return undefined;
  return toResult({
    value: error,
    unit: 'kg',
    method: 'typical-error',
    inputs: [
      { label: 'retests', value: pairs.length, unit: '' },
      ...pairs.map(
        ({ first, second }): Input => ({ label: 'difference', value: second - first, unit: 'kg' }),
      ),
      { label: 'of the mean', value: percent, unit: '%' },
    ],
  });
}

/**
 * A change between two tests, in their unit. It is called real only beyond what 95 of 100 chance differences stay within;
 * one that is merely beyond the typical error happens by chance in about half of all retests of an unchanged athlete.
 */
export function judgeChange(
  before: SeriesPoint,
  after: SeriesPoint,
  unit: Unit,
  typicalError: Result | undefined,
): Result {
  const change = after.value - before.value;
  const error = typicalError?.value;
  const inputs: Input[] = [
    { label: fromDayNumber(after.day), value: after.value, unit },
    { label: fromDayNumber(before.day), value: before.value, unit },
  ];
  if (error !== undefined) {
    inputs.push(
      { label: 'typical error', value: error, unit },
      { label: 'within which 95 % of chance differences stay', value: computeDetectableChange(error), unit },
    );
  }
  const isBound = before.bound !== 'exact' || after.bound !== 'exact';
  return toResult({
    value: change,
    unit,
    method: 'real-change',
    inputs,
    remark: isBound
      ? 'not called real: a lower bound'
      : error === undefined
        ? 'not called real: no retest'
        : judgeSize(Math.abs(change), error),
  });
}

function judgeSize(size: number, typicalError: number): string {
  if (size > computeDetectableChange(typicalError)) return 'real: beyond chance';
  return size > typicalError ? 'not called real: chance can do as much' : 'within the typical error';
}

/** A standard deviation between fewer athletes than this says nothing about athletes (chosen here). */
export const FEWEST_ATHLETES = 5;

/** 0.2 of the standard deviation between the practice's athletes in their last estimate of a series, kg. */
export function computeWorthwhile(
  works: SessionWorks,
  seriesKey: string,
  untilDay: number,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): Result | undefined {
  const values = works.practice
    .athleteKeys()
    .map((athlete) => findLastEstimate(works, athlete, seriesKey, untilDay, formula))
    .filter((value) => value !== undefined);
  if (values.length < FEWEST_ATHLETES) return undefined;
  return toResult({
    value: computeWorthwhileChange(values),
    unit: 'kg',
    method: 'smallest-worthwhile-change',
    // Whose maxes they are is nobody else's business.
    inputs: [
      { label: 'athletes', value: values.length, unit: '' },
      { label: 'lowest', value: Math.min(...values), unit: 'kg' },
      { label: 'highest', value: Math.max(...values), unit: 'kg' },
    ],
  });
}

function findLastEstimate(
  works: SessionWorks,
  athlete: string,
  seriesKey: string,
  untilDay: number,
  formula: OneRepMaxFormula,
): number | undefined {
  const records = works.practice.sessionsOf(athlete);
  for (let index = records.length - 1; index >= 0; index--) {
    const record = records[index]!;
    if (record.day > untilDay) continue;
    const max = works
      .maxesOf(works.of(record), formula)
      .find(({ series, result }) => series.key === seriesKey && result.bound === 'exact');
    if (max?.result.value !== undefined) return max.result.value;
  }
  return undefined;
}
