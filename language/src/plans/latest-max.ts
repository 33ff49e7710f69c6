/** Which max a plan's number is made from: for percentages the valid one, for targets the latest that is known. */
import { fromDayNumber } from '../calendar/iso-date.ts';
import { findMaxOn, findStatedOn, type ValidMax } from '../measures/maxes.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { Bound } from '../measures/result.ts';
import { findSeriesKey } from '../measures/series-sets.ts';
import type { SessionWorks } from '../measures/session-work.ts';

/** Days after which an estimate says little about today: then a stated or tested max goes before it (common practice). */
const DAYS_OF_AN_ESTIMATE = 90;

export interface KnownMax {
  /** Kilograms; of the added load where body weight is the rest, of one hand where two are held. */
  readonly kilograms: number;
  /** `tested`, `estimated`, … */
  readonly kind: ValidMax['kind'];
  readonly day: number;
  readonly bound: Bound;
  readonly added: boolean;
  readonly perHand: boolean;
}

/** What loads of a day are made from, by the name of a movement. */
export interface Maxes {
  /** {@link findPercentMax} */
  readonly percent: (movement: string) => KnownMax | undefined;
  /** {@link findTargetMax} */
  readonly target: (movement: string) => KnownMax | undefined;
}

export function openMaxes(
  works: SessionWorks,
  athlete: string,
  day: number,
  formula: OneRepMaxFormula,
): Maxes {
  return {
    percent: (movement) => findPercentMax(works, athlete, movement, day, formula),
    target: (movement) => findTargetMax(works, athlete, movement, day, formula),
  };
}

/** The max valid on a day, for percentages. What is stated holds on its own day; that day's own session is yet to come. */
export function findPercentMax(
  works: SessionWorks,
  athlete: string,
  movement: string,
  day: number,
  formula: OneRepMaxFormula,
): KnownMax | undefined {
  const valid =
    findStatedOn(works, athlete, movement, day, { formula }) ??
    findMaxOn(works, athlete, movement, day - 1, { formula });
  return valid && toKnown(valid);
}

/**
 * The latest day's estimate before a day, for targets: what was lifted lately says more about today than an old test. A
 * lower bound counts only where nothing better is known; a test since then goes before it.
 */
export function findTargetMax(
  works: SessionWorks,
  athlete: string,
  movement: string,
  day: number,
  formula: OneRepMaxFormula,
): KnownMax | undefined {
  const valid = findPercentMax(works, athlete, movement, day, formula);
  const estimate = findEstimate(works, athlete, movement, day, formula);
  if (!estimate) return valid;
  return valid && valid.day >= estimate.day ? valid : estimate;
}

function findEstimate(
  works: SessionWorks,
  athlete: string,
  name: string,
  day: number,
  formula: OneRepMaxFormula,
): KnownMax | undefined {
  const key = findSeriesKey(works.practice, name);
  const plain = new Set([key, `${key} | two implements`]);
  const records = works.practice.sessionsOf(athlete);
  for (let index = records.length - 1; index >= 0; index--) {
    const record = records[index]!;
    if (record.day >= day) continue;
    if (record.day < day - DAYS_OF_AN_ESTIMATE) return undefined;
    const max = works
      .maxesOf(works.of(record), formula)
      .find(({ series, result }) => plain.has(series.key) && result.bound === 'exact');
    if (max?.result.value === undefined) continue;
    return {
      kilograms: max.result.value,
      kind: 'estimated',
      day: record.day,
      bound: 'exact',
      added: max.added,
      perHand: max.series.perHand,
    };
  }
  return undefined;
}

function toKnown({ result, kind, day, added, perHand }: ValidMax): KnownMax | undefined {
  const { value, bound } = result;
  return value === undefined ? undefined : { kilograms: value, kind, day, bound, added, perHand };
}

/** `max of Back Squat, tested 2026-09-02`. */
export function describeMax(movement: string, { kind, day, bound }: KnownMax): string {
  const lower = bound === 'at least' ? ', at least' : '';
  return `max of ${movement}, ${kind} ${fromDayNumber(day)}${lower}`;
}
