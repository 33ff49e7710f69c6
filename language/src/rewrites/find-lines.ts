import { listBlocks } from '../checks/check-context.ts';
import { type FileEdit, rangeBetween } from '../formatting/file-edit.ts';
import type { Block, Entry, MovementLine, PlacedEntry } from '../model/entry.ts';
import type { RewriteRequest } from './rewrite.ts';

/** A movement's line, where it stands, and its text. */
export interface LineAt {
  readonly placed: PlacedEntry;
  readonly block: Block;
  readonly line: MovementLine;
  /** Its line in the file. */
  readonly row: number;
  readonly text: string;
}

export interface BlockAt {
  readonly placed: PlacedEntry;
  readonly block: Block;
  /** Line of the file with its header, or with its first line where it has none. */
  readonly row: number;
  /** Last line of the file that belongs to it, notes included. */
  readonly lastRow: number;
}

/** The texts of the file's lines. */
export function linesOf({ practice, uri }: RewriteRequest): readonly string[] {
  return practice.file(uri)?.lines ?? [];
}

/** First and last selected line. A selection that ends at a line's beginning does not hold that line. */
export function selectRows({ range: { start, end } }: RewriteRequest): { first: number; last: number } {
  const isOpen = end.line > start.line && end.character === 0;
  return { first: start.line, last: isOpen ? end.line - 1 : end.line };
}

/** The entry at the cursor. */
export function findEntry({ practice, uri, range }: RewriteRequest): PlacedEntry | undefined {
  const row = range.start.line;
  return practice
    .file(uri)
    ?.model.entries.find(({ line, entry }) => line <= row && row < line + entry.lineCount);
}

/** The entry whose header the cursor is on. */
export function findHeader<K extends Entry['kind']>(
  request: RewriteRequest,
  ...kinds: readonly K[]
): (PlacedEntry & { readonly entry: Extract<Entry, { kind: K }> }) | undefined {
  const placed = findEntry(request);
  const fits =
    placed?.line === request.range.start.line && (kinds as readonly string[]).includes(placed.entry.kind);
  return fits ? (placed as never) : undefined;
}

/** Selected movement lines that could be wholly read. */
export function findMovementLines(request: RewriteRequest): LineAt[] {
  const { first, last } = selectRows(request);
  const texts = linesOf(request);
  return (request.practice.file(request.uri)?.model.entries ?? []).flatMap((placed) =>
    placed.line > last || placed.line + placed.entry.lineCount <= first
      ? []
      : listBlocks(placed.entry).flatMap((block) =>
          block.lines
            .map((line) => ({ placed, block, line, row: placed.line + line.span.line }))
            .filter(({ line, row }) => row >= first && row <= last && !line.broken)
            .map((at) => ({ ...at, text: texts[at.row]! })),
        ),
  );
}

/** The block that the cursor is in. */
export function findBlock(request: RewriteRequest): BlockAt | undefined {
  const placed = findEntry(request);
  if (!placed) return undefined;
  const row = request.range.start.line;
  const texts = linesOf(request);
  const end = placed.line + placed.entry.lineCount;
  return listBlocks(placed.entry)
    .map((block) => ({
      placed,
      block,
      row: placed.line + block.span.line,
      lastRow: passNotes(texts, placed.line + block.lastLine, end),
    }))
    .find((at) => at.row <= row && row <= at.lastRow);
}

/** The last of the notes right below a line, or the line itself. */
export function passNotes(texts: readonly string[], row: number, end = texts.length): number {
  let last = row;
  while (last + 1 < end && /^\s*>/.test(texts[last + 1]!)) last++;
  return last;
}

export function indentationOf(text: string): string {
  return /^\s*/.exec(text)![0];
}

/** Puts lines below a line of a file. */
export function insertBelow(texts: readonly string[], row: number, lines: readonly string[]): FileEdit {
  if (row + 1 < texts.length)
    return {
      range: rangeBetween(row + 1, 0, row + 1, 0),
      newText: lines.map((line) => `${line}\n`).join(''),
    };
  const end = texts[row]!.length;
  return { range: rangeBetween(row, end, row, end), newText: lines.map((line) => `\n${line}`).join('') };
}

/** Adds an entry behind the last one of a file, with a blank line between. */
export function appendEntry(texts: readonly string[], entry: readonly string[]): FileEdit {
  const last = texts.length - 1;
  const end = texts[last]?.length ?? 0;
  const content = texts.findLastIndex((text) => text.trim() !== '');
  const missing = content < 0 ? 0 : Math.max(0, 2 - (last - content));
  const row = Math.max(0, last);
  return { range: rangeBetween(row, end, row, end), newText: `${'\n'.repeat(missing)}${entry.join('\n')}\n` };
}
