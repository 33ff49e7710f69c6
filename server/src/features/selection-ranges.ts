import { listSelections, type Stretch } from '@plimsoll/language/practice/selections';
import type { Position, Range, SelectionRange } from 'vscode-languageserver';
import type { FeatureContext } from './context.ts';

/** For each place, what a growing selection takes in, from the word to the file. */
export function provideSelectionRanges(
  { practice }: FeatureContext,
  uri: string,
  positions: readonly Position[],
): SelectionRange[] {
  const file = practice.file(uri);
  if (!file) return [];
  return positions.map(({ line, character }) => {
    const outwards = listSelections(file, line, character).map(toRange);
    return outwards.reduceRight<SelectionRange | undefined>(
      (parent, range) => ({ range, ...(parent && { parent }) }),
      undefined,
    )!;
  });
}

function toRange({ start, end }: Stretch): Range {
  return {
    start: { line: start.line, character: start.column },
    end: { line: end.line, character: end.column },
  };
}
