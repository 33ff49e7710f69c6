import type { Block, FileModel, PlacedEntry, PlanDay } from '../model/entry.ts';
import { findComment, skipSpace } from '../syntax/scanned-token.ts';
import { countBefore } from '../text/count-before.ts';

/** Lines of a file, both included, counted from its first. */
export interface Extent {
  readonly first: number;
  readonly last: number;
}

/** The entries of a file that reach into some lines of it, in order. */
export function listReaching(model: FileModel | undefined, { first, last }: Extent): readonly PlacedEntry[] {
  const entries = model?.entries ?? [];
  const from = countBefore(entries, ({ line, entry }) => line + entry.lineCount <= first);
  return entries.slice(
    from,
    countBefore(entries, ({ line }) => line <= last),
  );
}

/** An entry's lines without those that trail it: blank ones, and comments at the margin, which belong to the next entry. */
export function findEntryExtent(lines: readonly string[], { line, entry }: PlacedEntry): Extent {
  return trimExtent(lines, { first: line, last: line + entry.lineCount - 1 });
}

/** A block's lines with the notes and comments that follow its last. */
export function findBlockExtent(
  lines: readonly string[],
  { line, entry }: PlacedEntry,
  block: Block,
): Extent {
  const notes = [...block.notes, ...block.lines.flatMap((movement) => movement.notes)];
  const last = Math.max(block.lastLine, ...notes.map(({ span }) => span.line));
  const end = findEntryExtent(lines, { line, entry }).last;
  return { first: line + block.span.line, last: passComments(lines, line + last, end) };
}

/** A plan's day up to the next one. */
export function findDayExtent(
  lines: readonly string[],
  placed: PlacedEntry,
  day: PlanDay,
  next: PlanDay | undefined,
): Extent {
  const first = placed.line + day.span.line;
  const last = next ? placed.line + next.span.line - 1 : findEntryExtent(lines, placed).last;
  return trimExtent(lines, { first, last });
}

function trimExtent(lines: readonly string[], { first, last }: Extent): Extent {
  let end = last;
  while (end > first && (isBlank(lines[end]!) || findComment(lines[end]!) === 0)) end--;
  return { first, last: end };
}

/** Comments right below a line belong to it. */
function passComments(lines: readonly string[], from: number, end: number): number {
  let last = from;
  while (last < end && !isBlank(lines[last + 1]!) && isComment(lines[last + 1]!)) last++;
  return last;
}

export function isBlank(line: string): boolean {
  return skipSpace(line, 0) === line.length;
}

export function isComment(line: string): boolean {
  return !isBlank(line) && findComment(line) === skipSpace(line, 0);
}
