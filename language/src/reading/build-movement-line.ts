import type { MovementLine } from '../model/entry.ts';
import type { Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { KEYWORD_SPELLINGS } from '../syntax/line-scanner.ts';
import { buildCell } from './build-sets.ts';
import { buildName, readLineUnits } from './build-values.ts';
import { type EntryReading, replaceBy, spanOf, textOf, toNumber } from './line-reading.ts';

/** One movement's line: prefixes, name, cells. A modifier behind the last cell's sets is the whole line's. */
export function buildMovementLine(reading: EntryReading, node: ast.MovementLine): MovementLine | undefined {
  const span = spanOf(node);
  const broken = reading.broken.has(span.line);
  if (!node.name?.$cstNode) {
    if (!broken) reading.report('missing-name', span, 'Expected a movement before the colon');
    return undefined;
  }
  const prefixes = node.prefixes.filter((prefix) => prefix.$cstNode);
  for (const prefix of prefixes) reportSpelling(reading, prefix);
  const purpose = prefixes.some((prefix) => prefix.warmup) ? 'warmup' : prefixes.some((prefix) => prefix.test) ? 'test' : 'work';
  const week = prefixes.find((prefix) => prefix.week !== undefined)?.week;
  const label = prefixes.find((prefix) => prefix.label !== undefined);
  const units = readLineUnits(node);
  const cells = node.cells
    .filter((cell) => cell.$cstNode)
    .map((cell) => buildCell(reading, units, cell, false));
  // `Push-up: | 12 | 10` leaves the first cell empty.
  if (node.cells[0]?.$cstNode && isNextCell(node.cells[0])) cells.unshift({ sets: [], modifiers: [], span: { ...span, start: span.end } });
  if (!broken && cells.every((cell) => cell.sets.length === 0 && cell.modifiers.length === 0) && node.cells.every((cell) => cell.items.length === 0)) {
    reading.report('missing-sets', span, 'Expected sets after the colon, such as 3x5 @ 85 kg');
  }
  const last = node.cells.findLast((cell) => cell.$cstNode);
  const trailing = last ? countTrailingModifiers(last) : 0;
  const lastCell = cells.at(-1);
  const modifiers = trailing > 0 && lastCell ? lastCell.modifiers.slice(-trailing) : [];
  if (trailing > 0 && lastCell) cells[cells.length - 1] = { ...lastCell, modifiers: lastCell.modifiers.slice(0, -trailing) };
  return {
    kind: 'movement',
    name: buildName(node.name),
    purpose,
    ...(week !== undefined && { week: toNumber(week) }),
    ...(label && { label: { text: label.label!.toUpperCase(), span: spanOf(label) } as Written }),
    cells,
    modifiers,
    notes: [],
    broken,
    span,
  };
}

function isNextCell(cell: ast.Cell): boolean {
  return cell.$cstNode!.text.startsWith('|');
}

function countTrailingModifiers(cell: ast.Cell): number {
  const items = cell.items.filter((item) => item.$cstNode && item.$type !== 'UnknownItem');
  return items.length - 1 - items.findLastIndex((item) => item.$type === 'SetGroup');
}

/** `warm-up` is understood; the fix writes `warmup`. */
export function reportSpelling(reading: EntryReading, node: ast.Prefix | ast.BlockKind): void {
  const text = textOf(node).toLowerCase();
  for (const [spelling, word] of KEYWORD_SPELLINGS) {
    if (!text.startsWith(spelling)) continue;
    const span = spanOf(node);
    const place = { ...span, end: span.start + spelling.length };
    reading.report('spelling-of-word', place, `Write ${word} for ${spelling}`, [replaceBy(place, word)]);
  }
}
