import type { CheckCode } from '../../checks/catalogue.ts';
import type { LineContext } from '../../vocabulary/keywords.ts';

/** What a pattern found: its groups from 1 on; one that took no part is empty. */
export type Groups = readonly string[];

/** Groups put into a text such as `effort $1`, or made into one; undefined where the line is no such slip after all. */
export type Writing = string | ((groups: Groups) => string | undefined);

/**
 * A way in which a hurried hand writes a line, and what is meant by it. A line that can be meant in one way is read as
 * that way, and its fix writes it. Behind a line break in what is written begins a note below.
 */
export interface LineSlip {
  /** Kinds of entry in which it is one. */
  readonly within: readonly LineContext[];
  /** Of the whole line, without the space around it and without its comment. */
  readonly pattern: RegExp;
  /** The line as it should be; several where it may be meant in several ways; none where only the coach knows. */
  readonly writes: readonly Writing[];
  /** Why, behind "Write effort 8: "; without a writing, all that is said. */
  readonly why: string;
  /** It reads as something else without a problem; the others are asked only about a line that has one. */
  readonly unnoticed?: true;
  /** That its first word has a colon makes it another line: elsewhere a colon may stand there. */
  readonly exact?: true;
  /** What it writes is a header, which stands at the margin. */
  readonly opens?: true;
  /** It is only told, and counts nowhere until it is corrected. */
  readonly told?: CheckCode;
}

export const NUMBER = String.raw`\d+(?:[.,]\d+)?`;
export const MASS = String.raw`${NUMBER}\s*(?:kgs?|kilos?|lbs?|pounds?)`;
export const DATE = String.raw`\d{4}-\d{1,2}-\d{1,2}`;
/** Behind a property's word. */
export const GAP = String.raw`\s*[\s:=]\s*`;
/** Between the things of a list that should stand between commas. */
export const JOIN = String.raw`(?:\s*[;/&+]\s*|\s*,?\s+and\s+)`;

/** The pattern of a whole line. */
export const of = (source: string): RegExp => new RegExp(`^${source}$`, 'iu');

/** `Mon / Wed and Fri` → `Mon, Wed, Fri`. */
export function joinByCommas(text: string, separator: RegExp): string {
  return text
    .split(separator)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(', ');
}
