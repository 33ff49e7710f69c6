import { findLatest } from './latest.ts';
import { type Series, toMovementKey } from './max-candidates.ts';
import { findMaxesOf, toPlainKey, type ValidMax } from './max-history.ts';
import { DEFAULT_FORMULA, type OneRepMaxFormula } from './one-rep-max.ts';
import { findSeriesKey } from './series-sets.ts';
import type { SessionWorks } from './session-work.ts';

export type { MaxKind, ValidMax } from './max-history.ts';

export interface MaxOptions {
  /** Of which series; without one, of the movement without settings, one implement or two, whichever is later. */
  readonly series?: Series;
  readonly formula?: OneRepMaxFormula;
}

/**
 * The max valid on a day: the latest that was stated, tested or retested up to it, else the latest day's estimate. A
 * later test never changes what was valid before. A series with a setting or tempo of its own has its own tests first,
 * then those of the plain movement, since that is what a coach states; then estimates in the same order.
 */
export function findMaxOn(
  works: SessionWorks,
  athlete: string,
  movementName: string,
  day: number,
  { series, formula = DEFAULT_FORMULA }: MaxOptions = {},
): ValidMax | undefined {
  const key = findSeriesKey(works.practice, movementName);
  const history = findMaxesOf(works, athlete, key, formula);
  const levels = series
    ? [[series.key], [toPlainKey(key, series.perHand)]]
    : [[toPlainKey(key, false), toPlainKey(key, true)]];
  for (const timeline of [history.proven, history.estimated]) {
    for (const keys of levels) {
      const found = keys.flatMap((each) => findLatest(timeline.get(each) ?? [], day) ?? []);
      if (found.length > 0)
        return withAge(
          found.reduce((a, b) => (b.day > a.day ? b : a)),
          day,
        );
    }
  }
  return undefined;
}

/** What the athlete's entry states or retests for that very day, of the movement without settings. */
export function findStatedOn(
  works: SessionWorks,
  athlete: string,
  movementName: string,
  day: number,
  { formula = DEFAULT_FORMULA }: Pick<MaxOptions, 'formula'> = {},
): ValidMax | undefined {
  const key = findSeriesKey(works.practice, movementName);
  const { stated } = findMaxesOf(works, athlete, key, formula);
  const maxes = [toPlainKey(key, false), toPlainKey(key, true)].map((each) =>
    findLatest(stated.get(each) ?? [], day),
  );
  return maxes.find((max) => max?.day === day);
}

/** The highest max of just this series that was stated, tested or retested up to a day, in kilograms as there. */
export function findHighestProven(
  works: SessionWorks,
  athlete: string,
  series: Series,
  day: number,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): number | undefined {
  const proven = findMaxesOf(works, athlete, toMovementKey(series.key), formula).proven.get(series.key) ?? [];
  const values = proven.filter((max) => max.day <= day).map(({ result }) => result.value!);
  return values.length > 0 ? Math.max(...values) : undefined;
}

function withAge(max: ValidMax, day: number): ValidMax {
  const age = { label: 'days before', value: day - max.day, unit: 'days' as const };
  return { ...max, result: { ...max.result, inputs: [...max.result.inputs, age] } };
}
