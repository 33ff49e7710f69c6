import { LIBRARY_SCHEME } from '@plimsoll/language/practice/practice';
import type { Refusal } from '@plimsoll/language/practice/rename';
import {
  type Connection,
  type DefinitionLink,
  type InitializeParams,
  LSPErrorCodes,
  ResponseError,
  type ServerCapabilities,
} from 'vscode-languageserver';
import { provideAthleteWeek } from './features/athlete-week.ts';
import type { FeatureContext } from './features/context.ts';
import { provideDefinitions } from './features/definition.ts';
import { provideDocumentLinks } from './features/document-links.ts';
import { provideDocumentSymbols } from './features/document-symbols.ts';
import { provideFoldingRanges } from './features/folding-ranges.ts';
import { provideLibraryText } from './features/library-text.ts';
import { provideHighlights, provideReferences } from './features/references.ts';
import { prepareRename, provideRename } from './features/rename.ts';
import { provideSelectionRanges } from './features/selection-ranges.ts';
import { SEMANTIC_TOKENS_LEGEND, SemanticTokensProvider } from './features/semantic-tokens.ts';
import { provideWorkspaceSymbols } from './features/workspace-symbols.ts';
import type { AthleteWeekParams } from './messages.ts';

/** What is offered for finding one's way, and for renaming what was found. */
export const NAVIGATION_CAPABILITIES: ServerCapabilities = {
  definitionProvider: true,
  referencesProvider: true,
  documentHighlightProvider: true,
  renameProvider: { prepareProvider: true },
  documentSymbolProvider: true,
  workspaceSymbolProvider: true,
  foldingRangeProvider: true,
  selectionRangeProvider: true,
  documentLinkProvider: {},
  semanticTokensProvider: { legend: SEMANTIC_TOKENS_LEGEND, full: { delta: true }, range: true },
};

/** The built-in library's files are read-only documents, which editors ask for by their scheme. */
export const NAVIGATION_WORKSPACE: ServerCapabilities['workspace'] = {
  textDocumentContent: { schemes: [LIBRARY_SCHEME.slice(0, LIBRARY_SCHEME.indexOf(':'))] },
};

/** How a request about a file is answered, and one about no file. */
export interface Answering {
  answer<T>(
    what: string,
    uri: string,
    provide: (context: FeatureContext, uri: string) => T,
  ): Promise<T | null>;
  answerForAll<T>(what: string, provide: (context: FeatureContext) => T): T | null;
  client(): InitializeParams['capabilities'];
}

/** Registers the requests of {@link NAVIGATION_CAPABILITIES}; answers what forgets a file that was closed. */
export function registerNavigation(
  connection: Connection,
  { answer, answerForAll, client }: Answering,
): (uri: string) => void {
  connection.onDefinition(({ textDocument, position }) =>
    answer('definition', textDocument.uri, (context, uri) => {
      const links = provideDefinitions(context, uri, position);
      return client().textDocument?.definition?.linkSupport ? links : links.map(toLocation);
    }),
  );
  connection.onReferences(({ textDocument, position, context: { includeDeclaration } }) =>
    answer('references', textDocument.uri, (context, uri) =>
      provideReferences(context, uri, position, includeDeclaration),
    ),
  );
  connection.onDocumentHighlight(({ textDocument, position }) =>
    answer('highlights', textDocument.uri, (context, uri) => provideHighlights(context, uri, position)),
  );
  connection.onPrepareRename(async ({ textDocument, position }) =>
    orThrow(
      await answer('rename', textDocument.uri, (context, uri) => prepareRename(context, uri, position)),
    ),
  );
  connection.onRenameRequest(async ({ textDocument, position, newName }) =>
    orThrow(
      await answer('rename', textDocument.uri, (context, uri) =>
        provideRename(context, uri, position, newName),
      ),
    ),
  );
  connection.onDocumentSymbol(({ textDocument }) =>
    answer('outline', textDocument.uri, provideDocumentSymbols),
  );
  connection.onWorkspaceSymbol(({ query }) =>
    answerForAll('symbols', (context) => provideWorkspaceSymbols(context, query)),
  );
  connection.onFoldingRanges(({ textDocument }) =>
    answer('foldings', textDocument.uri, provideFoldingRanges),
  );
  connection.onSelectionRanges(({ textDocument, positions }) =>
    answer('selections', textDocument.uri, (context, uri) => provideSelectionRanges(context, uri, positions)),
  );
  connection.onDocumentLinks(({ textDocument }) => answer('links', textDocument.uri, provideDocumentLinks));
  connection.workspace.textDocumentContent.on(({ uri }) => {
    const text = provideLibraryText(uri);
    return text === undefined ? null : { text };
  });
  connection.onRequest('plimsoll/athleteWeek', ({ uri: asked, position }: AthleteWeekParams) =>
    answer('week', asked, (context, uri) => provideAthleteWeek(context, uri, position)),
  );
  return registerSemanticTokens(connection, answer);
}

function registerSemanticTokens(
  { languages }: Connection,
  answer: Answering['answer'],
): (uri: string) => void {
  const tokens = new SemanticTokensProvider();
  const none = { data: [] };
  languages.semanticTokens.on(
    async ({ textDocument }) =>
      (await answer('colours', textDocument.uri, (context, uri) => tokens.provideAll(context, uri))) ?? none,
  );
  languages.semanticTokens.onDelta(
    async ({ textDocument, previousResultId }) =>
      (await answer('colours', textDocument.uri, (context, uri) =>
        tokens.provideChange(context, uri, previousResultId),
      )) ?? none,
  );
  languages.semanticTokens.onRange(
    async ({ textDocument, range }) =>
      (await answer('colours', textDocument.uri, (context, uri) =>
        tokens.provideRange(context, uri, range),
      )) ?? none,
  );
  return (uri) => tokens.forget(uri);
}

function toLocation({ targetUri, targetSelectionRange }: DefinitionLink) {
  return { uri: targetUri, range: targetSelectionRange };
}

/** A refusal reaches the coach as the error of the request: the editor shows it where she wanted to rename. */
function orThrow<T extends object>(answered: T | Refusal | null): T | null {
  if (answered && 'refused' in answered)
    throw new ResponseError(LSPErrorCodes.RequestFailed, answered.refused);
  return answered as T | null;
}
