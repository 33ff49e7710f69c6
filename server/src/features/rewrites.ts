import { listRewrites } from '@plimsoll/language/rewrites/list-rewrites';
import type { Rewrite } from '@plimsoll/language/rewrites/rewrite';
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  type TextDocumentEdit,
} from 'vscode-languageserver';
import type { FeatureContext } from './context.ts';

/** Kinds of action that rewrites have. */
export const REWRITE_KINDS = [CodeActionKind.QuickFix, CodeActionKind.Refactor, CodeActionKind.Source];

/** What else can be made of a selection, beside what mends its problems. */
export function provideRewrites(
  context: FeatureContext,
  uri: string,
  { range, context: { only } }: Pick<CodeActionParams, 'range' | 'context'>,
): CodeAction[] {
  const { practice, workspace } = context;
  if (!practice.file(uri)) return [];
  return listRewrites({ practice, uri, range }, { complete: workspace.complete })
    .filter(({ kind }) => !only || only.some((wanted) => isOfKind(kind, wanted)))
    .map((rewrite) => toAction(context, rewrite));
}

/** `refactor.rewrite` is a `refactor`. */
function isOfKind(kind: string, wanted: string): boolean {
  return wanted === '' || kind === wanted || kind.startsWith(`${wanted}.`);
}

function toAction(context: FeatureContext, { title, kind, edits }: Rewrite): CodeAction {
  const uris = [...new Set(edits.map(({ uri }) => uri))];
  return { title, kind, edit: { documentChanges: uris.map((uri) => toChange(context, uri, edits)) } };
}

/** All edits of one file, with the line ends that the file has. */
function toChange({ workspace }: FeatureContext, uri: string, edits: Rewrite['edits']): TextDocumentEdit {
  const lineEnd = /\r\n?|\n/.exec(workspace.textOf(uri) ?? '')?.[0] ?? '\n';
  return {
    textDocument: { uri: workspace.toClientUri(uri), version: workspace.versionOf(uri) ?? null },
    edits: edits
      .filter((edit) => edit.uri === uri)
      .map(({ range, newText }) => ({ range, newText: newText.replaceAll('\n', lineEnd) })),
  };
}
