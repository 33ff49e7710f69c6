import { type Refusal, rename, startRename } from '@plimsoll/language/practice/rename';
import type { Position, Range, TextDocumentEdit, WorkspaceEdit } from 'vscode-languageserver';
import { type FeatureContext, toFileRange } from './context.ts';

const NO_NAME: Refusal = { refused: 'Only movements, athletes, places and plans can be renamed' };
/** Before every file is read, a place that bears the name may still be unknown. */
const LOADING: Refusal = { refused: 'The logs are still being read: try again in a moment' };

/** What would be renamed under the cursor, or why nothing can be. */
export function prepareRename(
  { practice, workspace }: FeatureContext,
  uri: string,
  { line, character }: Position,
): { range: Range; placeholder: string } | Refusal {
  if (!workspace.complete) return LOADING;
  const start = startRename(practice, uri, line, character) ?? NO_NAME;
  if ('refused' in start) return start;
  const { span, text } = start.mention.written;
  return { range: toFileRange(start.line, span), placeholder: text };
}

/** The new name in all files, or why it cannot be that one. */
export function provideRename(
  { practice, workspace }: FeatureContext,
  uri: string,
  { line, character }: Position,
  newName: string,
): WorkspaceEdit | Refusal {
  if (!workspace.complete) return LOADING;
  const renaming = rename(practice, uri, line, character, newName) ?? NO_NAME;
  if ('refused' in renaming) return renaming;
  const byFile = new Map<string, TextDocumentEdit>();
  for (const place of renaming.places) {
    const version = workspace.versionOf(place.uri) ?? null;
    const textDocument = { uri: workspace.toClientUri(place.uri), version };
    const edit = byFile.get(place.uri) ?? { textDocument, edits: [] };
    byFile.set(place.uri, edit);
    edit.edits.push({ range: toFileRange(place.line, place.span), newText: renaming.newName });
  }
  return { documentChanges: [...byFile.values()] };
}
