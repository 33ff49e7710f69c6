/** The record that every number becomes before it is shown, so that one function can explain any of them. */
import type { MethodId } from './methods.ts';

type AmountUnit =
  | 'kg'
  | 'lb'
  | 'kg·m'
  | '%'
  | 's'
  | 'min'
  | 'm'
  | 'm/s'
  | 'cal'
  | 'J'
  | 'W'
  | 'reps'
  | 'contacts'
  | 'sets'
  | 'rounds'
  | 'sessions'
  | 'days'
  | 'years'
  | 'RPE'
  | 'RIR'
  | 'AU';
type Period = 's' | 'min' | 'h' | 'day' | 'week';

type Rate = `${AmountUnit}/${Period}`;

/** What a value counts; the empty unit is a bare ratio. A rate such as `kg/min` may itself change from week to week. */
export type Unit = '' | AmountUnit | Rate | `${Rate}/week`;

/** How the value stands to the truth: as computed, never lower than shown, a forecast; `none` where there is no value. */
export type Bound = 'exact' | 'at least' | 'prediction' | 'none';

/** One number that went in; `label` may hold a coach's own words. */
export interface Input {
  readonly label: string;
  readonly value: number;
  readonly unit: Unit;
  /** How this number was made itself, where that is not plain: the explanation names it. */
  readonly by?: MethodId;
}

/** One thing that was left out: `{ what: 'round 4', why: 'not timed' }`. */
export interface Omission {
  readonly what: string;
  readonly why: string;
}

/** Low and high end of what the value may be, in the value's unit. */
export interface Spread {
  readonly low: number;
  readonly high: number;
}

export interface Result {
  /** Absent, never NaN, infinite or a false zero, where the facts do not give the number. */
  readonly value: number | undefined;
  readonly unit: Unit;
  readonly bound: Bound;
  readonly spread?: Spread;
  readonly method: MethodId;
  readonly inputs: readonly Input[];
  readonly omitted: readonly Omission[];
  /** A few words shown beside the value: `rough, over 10 reps`. */
  readonly remark?: string;
}

type ResultParts = Pick<Result, 'value' | 'unit' | 'method'> & Partial<Result>;

/** Fills in what is usual, an exact value with nothing left out, and drops a value that is no number. */
export function toResult(parts: ResultParts): Result {
  const isNumber = parts.value !== undefined && Number.isFinite(parts.value);
  const all = { bound: 'exact', inputs: [], omitted: [], ...parts } as const;
  return isNumber ? all : { ...all, value: undefined, bound: 'none' };
}

/** What was left out of any of several numbers, each thing once. */
export function mergeOmissions(...lists: readonly (readonly Omission[])[]): Omission[] {
  return [
    ...new Map(lists.flat().map((omission) => [`${omission.what}\n${omission.why}`, omission])).values(),
  ];
}

/** The weaker of several bounds: a sum with one forecast in it is a forecast. */
export function weakestBound(bounds: readonly Bound[]): Bound {
  const order: readonly Bound[] = ['prediction', 'at least'];
  return order.find((bound) => bounds.includes(bound)) ?? 'exact';
}
