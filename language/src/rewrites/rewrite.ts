import { type FileEdit, type FileRange, rangeBetween } from '../formatting/file-edit.ts';
import type { PlacedEntry } from '../model/entry.ts';
import type { Span } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';

/** Kinds of code action, as the editor protocol names them. */
export type RewriteKind = 'quickfix' | 'refactor.rewrite' | 'refactor.move' | 'source.sortSessions';

/** What a rewrite is asked about: a selection, or a cursor, in one file. */
export interface RewriteRequest {
  readonly practice: Practice;
  readonly uri: string;
  readonly range: FileRange;
}

export interface RewriteEdit extends FileEdit {
  readonly uri: string;
}

/** A change that the coach may ask for. Edits of one file are in order and do not overlap; lines end with LF. */
export interface Rewrite {
  readonly title: string;
  readonly kind: RewriteKind;
  readonly edits: readonly RewriteEdit[];
}

/** Gives nothing where the rewrite has no sense. */
export type Rewriter = (request: RewriteRequest) => Rewrite | undefined;

/** A rewrite that changes something in the file asked about. */
export function rewriteFile(
  { uri }: RewriteRequest,
  title: string,
  edits: readonly FileEdit[],
  kind: RewriteKind = 'refactor.rewrite',
): Rewrite | undefined {
  if (edits.length === 0) return undefined;
  const sorted = edits.toSorted(
    ({ range: { start: a } }, { range: { start: b } }) => a.line - b.line || a.character - b.character,
  );
  return { title, kind, edits: sorted.map((edit) => ({ ...edit, uri })) };
}

/** Replaces a place of an entry. */
export function editSpan({ line }: PlacedEntry, span: Span, newText: string): FileEdit {
  const row = line + span.line;
  return { range: rangeBetween(row, span.start, row, span.end), newText };
}
