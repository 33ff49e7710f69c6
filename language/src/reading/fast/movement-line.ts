import type { MovementLine } from '../../model/entry.ts';
import type { Cell, Modifier, SetGroup } from '../../model/quantity.ts';
import type { Written } from '../../model/source.ts';
import { takeTrailingModifiers } from '../build-movement-line.ts';
import type { EntryReading } from '../line-reading.ts';
import { UNIT_BEHIND } from '../line-slips/movement-words.ts';
import { settle } from '../settle.ts';
import { shareLoads } from '../share-loads.ts';
import { giveUp, LineCursor } from './line-cursor.ts';
import { LineMasses } from './loads.ts';
import { MODIFIERS } from './modifiers.ts';
import type { HeadMemo } from './movement-head.ts';
import { takeSet } from './sets.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const ASCII = /^[\x20-\x7e]*$/;

/** A movement's line, given the place of the colon that ends its name. */
export function readMovementLine(
  reading: EntryReading,
  heads: HeadMemo,
  text: string,
  index: number,
  start: number,
  colon: number,
): MovementLine {
  const { purpose, label, name, nameStart } = heads.of(text.slice(start, colon));
  const cursor = new LineCursor(text, index, colon + 1);
  if (!ASCII.test(text.slice(colon)) || UNIT_BEHIND.test(text.slice(colon))) giveUp();
  // A sled may take more than a bar; a check that knows what the movement needs is stricter.
  const masses = new LineMasses(reading.fileUnit, 'sledGrams');
  const cells = takeCells(cursor, masses);
  masses.finish();
  for (const cell of cells) cell.sets = shareLoads(reading, cell.sets);
  const modifiers = takeTrailingModifiers(cells);
  const place = (from: number, written: string): Written => ({
    text: written,
    span: { line: index, start: start + from, end: start + from + written.length },
  });
  return {
    kind: 'movement',
    name: place(nameStart, name),
    purpose,
    cells: settle(cells),
    modifiers: settle(modifiers),
    notes: settle<Written>([]),
    broken: false,
    span: { line: index, start, end: cursor.end },
    ...(label && { label: place(label.start, label.text) }),
  };
}

function takeCells(cursor: LineCursor, masses: LineMasses): Mutable<Cell>[] {
  const cells: Mutable<Cell>[] = [];
  let start = cursor.at;
  do {
    const sets: SetGroup[] = [];
    const modifiers: Modifier[] = [];
    do takeItem(cursor, masses, sets, modifiers);
    while (cursor.takes(','));
    cells.push({ sets, modifiers: settle(modifiers), span: cursor.spanFrom(start) });
    start = cursor.at;
  } while (cursor.takes('|'));
  if (!cursor.isDone) giveUp();
  return cells;
}

function takeItem(cursor: LineCursor, masses: LineMasses, sets: SetGroup[], modifiers: Modifier[]): void {
  const start = cursor.at;
  const read = cursor.takeFrom(MODIFIERS);
  if (read) modifiers.push(read(cursor, start));
  else sets.push(takeSet(cursor, masses));
}
