import { listFoldings } from '@plimsoll/language/practice/foldings';
import { type FoldingRange, FoldingRangeKind } from 'vscode-languageserver';
import type { FeatureContext } from './context.ts';

/** Entries, days, blocks, notes and comments, each to be folded under its first line. */
export function provideFoldingRanges({ practice }: FeatureContext, uri: string): FoldingRange[] {
  const file = practice.file(uri);
  return (file ? listFoldings(file) : []).map(({ first, last, kind }) => ({
    startLine: first,
    endLine: last,
    ...(kind === 'comments' && { kind: FoldingRangeKind.Comment }),
  }));
}
