import type { ScannedToken } from '@plimsoll/language/syntax/scanned-token';

/** `NUMBER(3) TIMES(x)`, with what a word counts as where it is written in another way: `WORD(RPE=rpe)`. */
export function printTokens(line: string, tokens: readonly ScannedToken[]): string {
  return tokens
    .map(({ kind, start, end, keyword }) => {
      const text = line.slice(start, end);
      if (kind === 'SYMBOL') return keyword === text ? text : `${text}=${keyword}`;
      return `${kind}(${text}${keyword === undefined || keyword === text ? '' : `=${keyword}`})`;
    })
    .join(' ');
}
