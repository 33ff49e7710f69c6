import { findMention } from '@plimsoll/language/practice/mentions';
import { findDefinitions } from '@plimsoll/language/practice/references';
import type { LocationLink, Position, Range } from 'vscode-languageserver';
import { type FeatureContext, toRange } from './context.ts';

/** Where the name under the cursor is defined: in the workspace, or else in the built-in library. */
export function provideDefinitions(context: FeatureContext, uri: string, position: Position): LocationLink[] {
  const { practice, workspace } = context;
  const file = practice.file(uri);
  const found = file && findMention(file.model, position.line, position.character);
  if (!found) return [];
  const { kind, key, written } = found.mention;
  return findDefinitions(practice, kind, key).map((definition) => {
    const { entry, line } = definition;
    const last = line + entry.lineCount - 1;
    const targetRange: Range = { start: { line, character: 0 }, end: { line: last, character: 0 } };
    return {
      originSelectionRange: toRange(found.placed.line, written.span),
      targetUri: workspace.toClientUri(definition.uri),
      targetRange: last > line ? targetRange : toRange(line, entry.header),
      targetSelectionRange: toRange(line, entry.name!.span),
    };
  });
}
