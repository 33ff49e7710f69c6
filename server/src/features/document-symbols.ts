import { type OutlineKind, type OutlineNode, outlineFile } from '@plimsoll/language/practice/outline';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver';
import { type FeatureContext, toFileRange } from './context.ts';

const KINDS: Readonly<Record<OutlineKind, SymbolKind>> = {
  exercise: SymbolKind.Function,
  athlete: SymbolKind.Class,
  place: SymbolKind.Namespace,
  plan: SymbolKind.Interface,
  units: SymbolKind.Constant,
  unknown: SymbolKind.Null,
  log: SymbolKind.Class,
  week: SymbolKind.Package,
  session: SymbolKind.Event,
  day: SymbolKind.Event,
  block: SymbolKind.Array,
};

/** The file's outline, which is also where breadcrumbs say that the cursor is. */
export function provideDocumentSymbols({ practice }: FeatureContext, uri: string): DocumentSymbol[] {
  const lines = practice.file(uri)?.lines ?? [];
  const toSymbol = ({
    kind,
    name,
    detail,
    first,
    last,
    selection,
    children,
  }: OutlineNode): DocumentSymbol => ({
    name,
    ...(detail !== '' && { detail }),
    kind: KINDS[kind],
    range: { start: { line: first, character: 0 }, end: { line: last, character: lines[last]?.length ?? 0 } },
    selectionRange: toFileRange(selection.line, selection),
    children: children.map(toSymbol),
  });
  return outlineFile(practice, uri).map(toSymbol);
}
