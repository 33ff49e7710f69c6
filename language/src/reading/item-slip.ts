import type { CheckCode } from '../checks/catalogue.ts';

/** What a pattern found: its groups from 1 on; one that took no part is empty. */
export type ItemGroups = readonly string[];

/** Groups put into a text, as in `$2 @ $1`, or made into one; undefined where the item is no such slip after all. */
export type ItemWriting = string | ((groups: ItemGroups) => string | undefined);

/**
 * A way in which a hurried hand writes a set, and what is meant by it. Texts hold the pattern's groups, as in `$2 @ $1`;
 * `$,` stands for the numbers of the first between commas.
 */
export interface ItemSlip {
  /** Of a whole item, between commas or bars; with `cell`, or of all that stands between bars. */
  readonly pattern: RegExp;
  readonly cell?: true;
  /** Only in a plan, or only elsewhere. */
  readonly within?: 'plan' | 'log';
  readonly code: CheckCode;
  /** `$a` and `$b` stand for what the first and the second fix write. */
  readonly message: string;
  /** What a fix writes in its place; several where it may be meant in several ways. A line break begins a note below. */
  readonly writes: readonly ItemWriting[];
}

export const N = String.raw`\d+(?:\.\d+)?`;
export const MASS = String.raw`${N}\s*(?:kgs?|lbs?)`;
export const SETS = String.raw`(?:\d+\s*[x×]\s*)?\d+(?:\s*-\s*\d+)?(?:\s*/\s*side)?`;
export const SIDED = String.raw`${SETS}(?:\s*(?:s|sec|min|m))?`;
export const COUNT = String.raw`(?:\d+\s*[x×]\s*)?`;
/** A set of any kind, without its load. */
export const AMOUNT = String.raw`${COUNT}(?:\d+:[0-5]\d|${N}(?:\s*-\s*\d+)?)(?:\s*(?:s|secs?|min|m|km|yd|mi|cal))?(?:\s*/\s*side)?`;
/** The load with what may stand behind it. */
export const AT = String.raw`\s*@.*`;
export const STEP_UNIT = '(?:kg|lb|%|reps?|sets?|s|min|m|cal|rpe|rir)';
export const STEP = String.raw`[+-]\s*${N}\s*${STEP_UNIT}`;
export const RATING = String.raw`(?:\s+(?:rpe|rir)\s*${N})?`;

export const of = (source: string): RegExp => new RegExp(`^${source}$`, 'iu');
