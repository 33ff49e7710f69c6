import { findNamed, type NamedThing } from '@plimsoll/language/practice/symbols';
import { SymbolKind, type WorkspaceSymbol } from 'vscode-languageserver';
import { type FeatureContext, toRange } from './context.ts';

const KINDS: Readonly<Record<NamedThing['kind'], SymbolKind>> = {
  movement: SymbolKind.Function,
  athlete: SymbolKind.Class,
  place: SymbolKind.Namespace,
  plan: SymbolKind.Interface,
  session: SymbolKind.Event,
};

/** What bears a name like the one that is looked for, in all files and the library. */
export function provideWorkspaceSymbols(
  { practice, workspace }: Pick<FeatureContext, 'practice' | 'workspace'>,
  query: string,
): WorkspaceSymbol[] {
  return findNamed(practice, query).map(({ kind, name, uri, line, span, builtIn }) => ({
    name,
    kind: KINDS[kind],
    containerName: builtIn ? 'built in' : kind,
    location: { uri: workspace.toClientUri(uri), range: toRange(line, span) },
  }));
}
