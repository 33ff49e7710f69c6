import type { MovementLine, PlacedEntry } from '../model/entry.ts';
import type { ReadFile } from '../reading/read-file.ts';
import { scanLine } from '../syntax/line-scanner.ts';
import { skipSpace } from '../syntax/scanned-token.ts';
import { type Extent, findBlockExtent, findDayExtent, findEntryExtent } from './extents.ts';
import { findEntry, listBlocks } from './mentions.ts';

/** A stretch of a file, in lines and UTF-16 columns from 0. */
export interface Stretch {
  readonly start: { readonly line: number; readonly column: number };
  readonly end: { readonly line: number; readonly column: number };
}

const WORD = /[\p{L}\p{M}\p{N}'\u2019]+/gu;

/**
 * What a growing selection takes in at a place, the innermost first: word, token, set, cell, line, block, day, entry,
 * file. Each holds the one before.
 */
export function listSelections(file: ReadFile, line: number, column: number): readonly Stretch[] {
  const { lines, model } = file;
  const text = lines[line] ?? '';
  const placed = findEntry(model, line);
  const within: readonly (readonly [number, number])[] = [
    ...[...text.matchAll(WORD)].map((match) => [match.index, match.index + match[0].length] as const),
    ...scanLine(text, placed?.entry.kind ?? 'unknown').tokens.map(({ start, end }) => [start, end] as const),
    ...(placed ? listParts(placed, line) : []),
    [skipSpace(text, 0), text.trimEnd().length],
  ];
  const inLine = within
    .filter(([start, end]) => start <= column && column <= end)
    .map(([start, end]): Stretch => ({ start: { line, column: start }, end: { line, column: end } }));
  const aroundLine = [
    ...(placed ? listExtents(lines, placed) : []),
    { first: 0, last: Math.max(0, lines.length - 1) },
  ]
    .filter(({ first, last }) => first <= line && line <= last)
    .map(
      ({ first, last }): Stretch => ({
        start: { line: first, column: 0 },
        end: { line: last, column: lines[last]!.length },
      }),
    );
  return nest([...inLine, ...aroundLine]);
}

/** Sets and cells of the movement on that line. */
function listParts({ line: entryLine, entry }: PlacedEntry, line: number): (readonly [number, number])[] {
  const movement = listBlocks(entry)
    .flatMap((block): readonly MovementLine[] => block.lines)
    .find(({ span }) => entryLine + span.line === line);
  if (!movement) return [];
  const { cells, modifiers } = movement;
  const parts = [...cells.flatMap((cell) => [cell, ...cell.sets, ...cell.modifiers]), ...modifiers];
  return parts.map(({ span }) => [span.start, span.end] as const);
}

function listExtents(lines: readonly string[], placed: PlacedEntry): Extent[] {
  const days = placed.entry.kind === 'plan' ? placed.entry.days : [];
  return [
    ...listBlocks(placed.entry).map((block) => findBlockExtent(lines, placed, block)),
    ...days.map((day, index) => findDayExtent(lines, placed, day, days[index + 1])),
    findEntryExtent(lines, placed),
  ];
}

/** From the smallest to the largest, leaving out what is the same as, or reaches out of, the next. */
function nest(stretches: readonly Stretch[]): readonly Stretch[] {
  const chain: Stretch[] = [];
  for (const stretch of stretches.toSorted(compareSizes)) {
    const inner = chain.at(-1);
    if (!inner || (holds(stretch, inner) && !holds(inner, stretch))) chain.push(stretch);
  }
  return chain;
}

function compareSizes(a: Stretch, b: Stretch): number {
  const linesOf = ({ start, end }: Stretch) => end.line - start.line;
  const columnsOf = ({ start, end }: Stretch) => end.column - start.column;
  return linesOf(a) - linesOf(b) || columnsOf(a) - columnsOf(b);
}

function holds(outer: Stretch, inner: Stretch): boolean {
  return !isBefore(inner.start, outer.start) && !isBefore(outer.end, inner.end);
}

function isBefore(a: Stretch['start'], b: Stretch['start']): boolean {
  return a.line < b.line || (a.line === b.line && a.column < b.column);
}
