import type { Span, Written } from './source.ts';

/** What an amount counts. Seconds, metres and calories are never added to reps or to one another. */
export type Measure = 'reps' | 'seconds' | 'metres' | 'calories';

/**
 * `8`, `30 s`, `4:05`, `40 m`, `20 yd`, `15 cal`.
 * `value` is in the measure's own unit (yards are turned into metres once); `unit` is as it was written.
 */
export interface Quantity {
  readonly measure: Measure;
  readonly value: number;
  readonly written: number;
  readonly unit: QuantityUnit;
}

/** `clock` is the form 4:05. */
export type QuantityUnit = 'rep' | 's' | 'min' | 'h' | 'clock' | 'm' | 'km' | 'yd' | 'mi' | 'cal';

export type MassUnit = 'kg' | 'lb';

/** One mass as written, with its grams (integer, converted once). */
export interface Mass {
  readonly grams: number;
  readonly written: number;
  readonly unit: MassUnit;
}

/** A count, a range or an open end: what a plan may ask and a session records. */
export type Amount =
  | { readonly kind: 'quantity'; readonly quantity: Quantity; readonly perSide: boolean }
  | { readonly kind: 'sides'; readonly left: Quantity; readonly right: Quantity }
  | { readonly kind: 'range'; readonly low: Quantity; readonly high: Quantity; readonly perSide: boolean }
  | { readonly kind: 'at-least'; readonly quantity: Quantity; readonly perSide: boolean }
  | { readonly kind: 'amrap'; readonly perSide: boolean }
  | { readonly kind: 'attempt'; readonly made: number; readonly tried: number; readonly perSide: boolean }
  | {
      readonly kind: 'cluster';
      readonly parts: readonly Quantity[];
      readonly perSide: boolean;
      readonly rest?: Quantity;
    }
  | { readonly kind: 'unrecorded' }
  | { readonly kind: 'skipped' };

/** What is held or hung on: two implements of one weight, two unequal ones, or one. */
export interface MassLoad {
  readonly kind: 'mass';
  /** Mass of one implement. */
  readonly mass: Mass;
  /** Upper end of a plan's range, of one implement. */
  readonly high?: Mass;
  /** `2x18 kg` is 2. */
  readonly implements: 1 | 2;
  /** The other hand of `24&16 kg`. */
  readonly other?: Mass;
  /** `80 kg + 20 kg chain`, `90 kg + blue band`: known to be there, not counted in kilograms. */
  readonly chain?: Mass;
  readonly band?: string;
}

export type Load =
  | MassLoad
  | { readonly kind: 'sides'; readonly left: Mass; readonly right: Mass }
  | {
      readonly kind: 'bodyweight';
      readonly sign?: '+' | '-';
      readonly mass?: Mass;
      readonly pin?: number;
      readonly band?: string;
    }
  | { readonly kind: 'bodyweight-share'; readonly percent: number }
  | { readonly kind: 'pin'; readonly pin: number; readonly plus?: Mass }
  | { readonly kind: 'band'; readonly band: string }
  | {
      readonly kind: 'setting';
      readonly setting: 'height' | 'pace' | 'power' | 'speed';
      /** cm, seconds per `metres`, W, km/h. */
      readonly value: number;
      readonly metres?: number;
    }
  | { readonly kind: 'percent'; readonly low: number; readonly high?: number; readonly of?: Written }
  | { readonly kind: 'offset'; readonly percent?: number; readonly mass?: Mass }
  | { readonly kind: 'target'; readonly scale: 'rpe' | 'rir'; readonly low: number; readonly high?: number }
  | { readonly kind: 'unrecorded' };

export type LoadKind = Load['kind'];

export interface Rating {
  readonly scale: 'rpe' | 'rir' | 'hr' | 'v';
  readonly value: number;
  readonly high?: number;
  readonly span: Span;
}

/** `drop 8 @ 2x14 kg`: the same set goes on at a smaller load. */
export interface Drop {
  readonly amount: Amount;
  readonly load?: Load;
  readonly span: Span;
}

/** `3x5 @ 85 kg rpe 8`: one written group of equal sets. */
export interface SetGroup {
  readonly count: number;
  /** Whether the count was written (`1x5` is printed as such). */
  readonly counted: boolean;
  readonly amount?: Amount;
  /** `400 m in 1:32`. */
  readonly within?: Quantity;
  /** The load that counts: its own, or the cell's first where it stands before that. */
  readonly load?: Load;
  /** Whether the load is written at this group itself. */
  readonly ownLoad: boolean;
  /** Its own load as written, for fixes that repeat it. */
  readonly loadText?: string;
  /** Where this group's own load stands, or the `@` that waits for one. */
  readonly loadSpan?: Span;
  readonly ratings: readonly Rating[];
  readonly drops: readonly Drop[];
  readonly span: Span;
  readonly amountSpan: Span;
}

/** A step of a plan: `+1 rep each week to 16`, `+2.5 kg`, `rest -10 s each round`, in a block's header `+1 round each week`. */
export interface Step {
  readonly kind: 'step';
  readonly sign: 1 | -1;
  readonly amount: number;
  readonly unit: StepUnit;
  /** A step on `rest` rather than on the line's sets. */
  readonly onRest: boolean;
  readonly each?: 'round' | 'session' | 'week' | 'cycle';
  readonly bound?: number;
  readonly boundUnit?: StepUnit;
  /** `then +2 kg from 8`: taken when the range above is full; `from` is where the reps start again. */
  readonly whenFull: boolean;
  readonly from?: number;
  readonly span: Span;
}

export type StepUnit =
  | 'rep'
  | 'set'
  | 'round'
  | 'kg'
  | 'lb'
  | '%'
  | 'rpe'
  | 'rir'
  | 's'
  | 'min'
  | 'h'
  | 'm'
  | 'km'
  | 'yd'
  | 'mi'
  | 'cal';

export type Modifier =
  | { readonly kind: 'tempo'; readonly phases: readonly (number | 'X')[]; readonly span: Span }
  | { readonly kind: 'rest'; readonly low: Quantity; readonly high?: Quantity; readonly span: Span }
  | { readonly kind: 'setting'; readonly text: string; readonly span: Span }
  | { readonly kind: 'pain'; readonly score: number; readonly where?: string; readonly span: Span }
  | { readonly kind: 'instead'; readonly of: Written; readonly span: Span }
  | { readonly kind: 'stall'; readonly misses: number; readonly step: Step; readonly span: Span }
  | Step;

/** What stands between two `|`: the sets of one week of a plan, or of one athlete of a group. */
export interface Cell {
  readonly sets: readonly SetGroup[];
  readonly modifiers: readonly Modifier[];
  readonly span: Span;
}
