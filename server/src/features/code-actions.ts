import type { Edit } from '@plimsoll/language/model/source';
import { findEntry } from '@plimsoll/language/practice/mentions';
import { findLineSlip } from '@plimsoll/language/reading/line-slips/find-line-slip';
import { findComment } from '@plimsoll/language/syntax/scanned-token';
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  type Range,
  type TextEdit,
} from 'vscode-languageserver';
import { type FileProblem, listProblems } from '../problems.ts';
import { type FeatureContext, toRange } from './context.ts';
import { toDiagnostic } from './diagnostics.ts';

/** What can be done about the problems in a range: their own fixes, and to ignore them where they stand. */
export function provideCodeActions(
  context: FeatureContext,
  uri: string,
  { range, context: { only } }: Pick<CodeActionParams, 'range' | 'context'>,
): CodeAction[] {
  if (only && !only.some((kind) => kind === '' || kind === CodeActionKind.QuickFix)) return [];
  const { works, workspace, today, settings } = context;
  const { severities } = settings;
  return listProblems(works, uri, { today, complete: workspace.complete, severities })
    .filter(({ entryLine, problem }) => touches(toRange(entryLine, problem.span), range))
    .flatMap((found) => [...listFixes(context, uri, found), ...offerIgnoring(context, uri, found)]);
}

function listFixes(context: FeatureContext, uri: string, found: FileProblem): CodeAction[] {
  const { entryLine, problem } = found;
  const text = context.practice.file(uri)?.lines[entryLine + problem.span.line] ?? '';
  const fixes = isWithinSlip(context, uri, found, text) ? [] : (problem.fixes ?? []);
  return fixes.map(({ title, edits }) => ({
    ...toAction(context, uri, found, title, toTextEdits(entryLine, edits)),
    ...(fixes.length === 1 && { isPreferred: true }),
  }));
}

/** Whether another problem stands on a line that is read as it is meant: that line is corrected first. */
function isWithinSlip(
  { practice }: FeatureContext,
  uri: string,
  { entryLine, problem }: FileProblem,
  text: string,
): boolean {
  const placed = findEntry(practice.file(uri)!.model, entryLine);
  const slip = placed && findLineSlip(text, placed.entry.kind, problem.span.line);
  if (slip?.meant === undefined) return false;
  return (
    !placed!.entry.problems.includes(problem) &&
    placed!.entry.problems.some(({ message }) => message === slip.message)
  );
}

/** An error leaves something out of the numbers, so it is not one to be silenced. */
function offerIgnoring(context: FeatureContext, uri: string, found: FileProblem): CodeAction[] {
  const { entryLine, problem } = found;
  const line = entryLine + problem.span.line;
  const text = context.practice.file(uri)?.lines[line];
  if (problem.severity === 'error' || text === undefined) return [];
  const { column, newText } = writeIgnoring(text, problem.code);
  const position = { line, character: column };
  const edit = { range: { start: position, end: position }, newText };
  return [toAction(context, uri, found, `Ignore ${problem.code} on this line`, [edit])];
}

/** `# ignore code` at the line's end, before its comment, or with the codes that it ignores already. */
function writeIgnoring(text: string, code: string): { column: number; newText: string } {
  const comment = findComment(text);
  const words = /^#\s*ignore\s+/i.exec(text.slice(comment));
  if (words) return { column: comment + words[0].length, newText: `${code}, ` };
  if (comment < text.length) return { column: comment, newText: `# ignore ${code} ` };
  return { column: text.trimEnd().length, newText: `  # ignore ${code}` };
}

function toAction(
  { workspace }: FeatureContext,
  uri: string,
  problem: FileProblem,
  title: string,
  edits: TextEdit[],
): CodeAction {
  const version = workspace.versionOf(uri) ?? null;
  const textDocument = { uri: workspace.toClientUri(uri), version };
  return {
    title,
    kind: CodeActionKind.QuickFix,
    diagnostics: [toDiagnostic(problem)],
    edit: { documentChanges: [{ textDocument, edits }] },
  };
}

function toTextEdits(entryLine: number, edits: readonly Edit[]): TextEdit[] {
  return edits.map(({ span, newText }) => ({ range: toRange(entryLine, span), newText }));
}

function touches(a: Range, b: Range): boolean {
  return !isBefore(a.end, b.start) && !isBefore(b.end, a.start);
}

function isBefore(a: Range['start'], b: Range['start']): boolean {
  return a.line < b.line || (a.line === b.line && a.character < b.character);
}
