import { createPractice } from '@plimsoll/language/create-practice';
import type { Position } from '@plimsoll/language/formatting/file-edit';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import type { Work } from '@plimsoll/language/measures/work';
import type { Practice } from '@plimsoll/language/practice/practice';
import type { Rewrite, Rewriter } from '@plimsoll/language/rewrites/rewrite';
import { applyFileEdits } from './apply-file-edits.ts';

/** Files by name; `log.plim` holds the cursor `<|>`, or a selection between two of them. */
export type MarkedFiles = Readonly<Record<string, string>> & { readonly 'log.plim': string };

export interface Rewritten {
  readonly title: string;
  readonly kind: string;
  readonly files: Readonly<Record<string, string>>;
}

/** Asks for a rewrite at the cursor and makes it; one text alone is `log.plim`. */
export function applyRewrite(rewriter: Rewriter, marked: string | MarkedFiles): Rewritten | undefined {
  const named = typeof marked === 'string' ? { 'log.plim': marked } : marked;
  const { text, start, end } = readSelection(named['log.plim']);
  const files: Record<string, string> = { ...named, 'log.plim': text };
  const practice = openFiles(files);
  const rewrite = rewriter({ practice, uri: 'log.plim', range: { start, end } });
  return rewrite && { title: rewrite.title, kind: rewrite.kind, files: applyAll(files, rewrite) };
}

/** `log.plim` as it is afterwards, or undefined where the rewrite is not offered. */
export function rewriteLog(rewriter: Rewriter, marked: string | MarkedFiles): string | undefined {
  return applyRewrite(rewriter, marked)?.files['log.plim'];
}

export function openFiles(files: Readonly<Record<string, string>>): Practice {
  const practice = createPractice();
  for (const [name, text] of Object.entries(files)) practice.setFile(name, text);
  return practice;
}

/** The working sums of each session of a log, by date and athlete, in order. */
export function sumSessions(files: Readonly<Record<string, string>>): [string, Work][] {
  const works = new SessionWorks(openFiles(files));
  const { practice } = works;
  return practice
    .athleteKeys()
    .flatMap((key) =>
      practice
        .sessionsOf(key)
        .map((record): [string, Work] => [`${record.date} ${record.athlete}`, works.of(record).total]),
    );
}

/** All problems of severity error that reading finds in a text. */
export function listErrors(text: string): string[] {
  const { entries } = openFiles({ 'log.plim': text }).file('log.plim')!.model;
  return entries.flatMap(({ entry }) =>
    entry.problems.filter(({ severity }) => severity === 'error').map(({ message }) => message),
  );
}

function applyAll(files: Readonly<Record<string, string>>, { edits }: Rewrite): Record<string, string> {
  const after = { ...files };
  for (const uri of new Set(edits.map((edit) => edit.uri))) {
    after[uri] = applyFileEdits(
      after[uri]!,
      edits.filter((edit) => edit.uri === uri),
    );
  }
  return after;
}

function readSelection(marked: string): { text: string; start: Position; end: Position } {
  const parts = marked.split('<|>');
  if (parts.length < 2 || parts.length > 3) throw new Error(`Expected a cursor in ${JSON.stringify(marked)}`);
  const text = parts.join('');
  const start = positionBehind(parts[0]!);
  return { text, start, end: parts.length === 2 ? start : positionBehind(parts[0]! + parts[1]!) };
}

function positionBehind(text: string): Position {
  const lines = text.split('\n');
  return { line: lines.length - 1, character: lines.at(-1)!.length };
}
