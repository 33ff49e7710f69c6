/** Kinds of token that the scanner tells apart by itself; `WORD` may turn out to be a keyword of the grammar. */
export type ScannedKind =
  | 'NAME'
  | 'TEXT'
  | 'NOTE'
  | 'STRAY'
  | 'TITLE'
  | 'LETTER'
  | 'PREFIX'
  | 'LABEL'
  | 'DATE'
  | 'ODD_DATE'
  | 'TIME'
  | 'TEMPO'
  | 'LADDER'
  | 'NUMBER'
  | 'TIMES'
  | 'WORD'
  | 'SYMBOL'
  | 'ODD'
  | 'COMMENT';

/** A piece of one line, in UTF-16 columns. `keyword` is what a word or symbol counts as, whatever its spelling. */
export interface ScannedToken {
  readonly kind: ScannedKind;
  readonly start: number;
  readonly end: number;
  readonly keyword?: string;
}

/** Space of any kind that may stand within a line: tabs, no-break and thin spaces, a byte-order mark. */
export const SPACE = /[\s\u00a0\u2000-\u200b\u202f\u205f\u3000\ufeff]/;

export function skipSpace(line: string, from: number, end = line.length): number {
  let at = from;
  while (at < end && SPACE.test(line[at]!)) at++;
  return at;
}

/** End of `line` between `from` and `end` without the space before it. */
export function trimEnd(line: string, from: number, end: number): number {
  let at = end;
  while (at > from && SPACE.test(line[at - 1]!)) at--;
  return at;
}

/** Where a comment begins (`#` at the beginning or after a space, unless a digit follows: "Hall #2"), or the line's end. */
export function findComment(line: string, from = 0): number {
  for (let at = line.indexOf('#', from); at >= 0; at = line.indexOf('#', at + 1)) {
    const opens = at === 0 || SPACE.test(line[at - 1]!);
    if (opens && !/\d/.test(line[at + 1] ?? '')) return at;
  }
  return line.length;
}

/** Where the colon is that ends a name: the first that does not stand between two digits, or -1. */
export function findNameColon(line: string, from: number, end: number): number {
  for (let at = line.indexOf(':', from); at >= 0 && at < end; at = line.indexOf(':', at + 1)) {
    if (!(/\d/.test(line[at - 1] ?? '') && /\d/.test(line[at + 1] ?? ''))) return at;
  }
  return -1;
}
