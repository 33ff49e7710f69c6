import { isDeepStrictEqual } from 'node:util';
import type { Entry } from '@plimsoll/language/model/entry';
import { LineMemo } from '@plimsoll/language/reading/fast/line-memo';
import { createParsingReader, type EntryReader, readFast } from '@plimsoll/language/reading/read-entry';
import { readFile } from '@plimsoll/language/reading/read-file';
import { createSyntaxServices } from '@plimsoll/language/syntax/syntax-services';

/** What came of comparing both readers, entry by entry. */
export interface Comparison {
  /** Session entries that were given to both. */
  sessions: number;
  /** Of these, how many the fast reader answered: all of them as the parser did, or there is a difference. */
  fast: number;
  readonly differences: { readonly text: string; readonly fast: Entry; readonly parsed: Entry }[];
}

/** One for all texts, as in use: what a line says may not depend on where it was read first. */
const memo = new LineMemo();
const parser = createParsingReader(createSyntaxServices());

/** Reads a text by both readers, and adds what came of it. */
export function compareReaders(text: string, comparison: Comparison): void {
  const reader: EntryReader = {
    read(lines, opens, fileUnit) {
      const fast = readFast(lines, opens, fileUnit, memo);
      const isSession = opens && /^session/i.test(lines[0]!);
      if (isSession) comparison.sessions++;
      if (!fast) return parser.read([], false, fileUnit);
      if (isSession) comparison.fast++;
      const parsed = parser.read(lines, opens, fileUnit);
      if (!isDeepStrictEqual(fast, parsed))
        comparison.differences.push({ text: lines.join('\n'), fast, parsed });
      return parsed;
    },
  };
  readFile(reader, 'memory:test.plim', text);
}

export function startComparison(): Comparison {
  return { sessions: 0, fast: 0, differences: [] };
}
