import { findMention } from '@plimsoll/language/practice/mentions';
import {
  findReferences,
  findWithin,
  listSpellings,
  type Reference,
} from '@plimsoll/language/practice/references';
import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type Location,
  type Position,
} from 'vscode-languageserver';
import { type FeatureContext, toFileRange } from './context.ts';

/** Every place of all files where the thing under the cursor is named, under any of its spellings. */
export function provideReferences(
  { practice, workspace }: FeatureContext,
  uri: string,
  position: Position,
  includeDeclaration: boolean,
): Location[] {
  const file = practice.file(uri);
  const found = file && findMention(file.model, position.line, position.character);
  if (!found) return [];
  return findReferences(practice, found.mention.kind, found.mention.key)
    .filter((reference) => includeDeclaration || !isDefining(reference))
    .map(({ uri: target, line, span }) => ({
      uri: workspace.toClientUri(target),
      range: toFileRange(line, span),
    }));
}

/** The same within one file, for the moment that the cursor rests on a name. */
export function provideHighlights(
  { practice }: FeatureContext,
  uri: string,
  position: Position,
): DocumentHighlight[] {
  const file = practice.file(uri);
  const found = file && findMention(file.model, position.line, position.character);
  if (!found) return [];
  const { kind, key } = found.mention;
  return findWithin(file.model, kind, listSpellings(practice, kind, key)).map((reference) => ({
    range: toFileRange(reference.line, reference.span),
    kind: isDefining(reference) ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
  }));
}

function isDefining({ mention }: Reference): boolean {
  return mention.role === 'definition' || mention.role === 'spelling';
}
