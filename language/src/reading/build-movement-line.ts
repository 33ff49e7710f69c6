import type { MovementLine } from '../model/entry.ts';
import type { Cell, Modifier } from '../model/quantity.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { KEYWORD_SPELLINGS } from '../syntax/line-scanner.ts';
import { readLineUnits } from './build-mass.ts';
import { buildCell } from './build-sets.ts';
import { buildName } from './build-values.ts';
import {
  type EntryReading,
  type Holed,
  present,
  replaceBy,
  spanOf,
  textOf,
  toNumber,
} from './line-reading.ts';

/** One movement's line: prefixes, name, cells. A modifier behind the last cell's sets is the whole line's. */
export function buildMovementLine(
  reading: EntryReading,
  node: Holed<ast.MovementLine>,
): MovementLine | undefined {
  const span = spanOf(node);
  const written = present(node.name);
  if (!written) return reading.expect('missing-name', span, 'Expected a movement before the colon');
  const name = buildName(written);
  const week = /^week\s+\d*[.,]\d+/i.exec(name.text)?.[0];
  if (week) reading.report('out-of-range', name.span, `${week}: only whole numbers count here`);
  // A sled may take more than a bar; a check that knows what the movement needs is stricter.
  const units = readLineUnits(node, 'sledGrams');
  const cells = node.cells.filter(present).map((cell) => buildCell(reading, units, cell));
  if (node.cells.every((cell) => cell.items.length === 0)) {
    reading.expect('missing-sets', span, 'Expected sets after the colon, such as 3x5 @ 85 kg');
  }
  const modifiers = cells.length > 0 ? takeTrailingModifiers(cells) : [];
  // `Push-up: | 12 | 10` leaves the first cell empty.
  if (present(node.cells[0])?.$cstNode?.text.startsWith('|')) {
    cells.unshift({ sets: [], modifiers: [], span: { ...cells[0]!.span, end: cells[0]!.span.start } });
  }
  return {
    kind: 'movement',
    name,
    ...buildPrefixes(reading, node.prefixes),
    cells,
    modifiers,
    notes: [],
    broken: reading.broken.has(span.line),
    span,
  };
}

function buildPrefixes(
  reading: EntryReading,
  nodes: readonly ast.Prefix[],
): Pick<MovementLine, 'purpose' | 'week' | 'label'> {
  const prefixes = nodes.filter(present);
  for (const prefix of prefixes) reportSpelling(reading, prefix);
  const week = prefixes.find((prefix) => prefix.week !== undefined);
  const label = prefixes.find((prefix) => prefix.label !== undefined);
  const words = prefixes.map((prefix) => prefix.purpose?.toLowerCase() ?? '');
  const purpose = words.some((word) => word.startsWith('warm'))
    ? 'warmup'
    : words.includes('test')
      ? 'test'
      : 'work';
  return {
    purpose,
    ...(week && { week: toNumber(week.week!) }),
    ...(label && { label: { text: label.label!.toUpperCase(), span: spanOf(label) } }),
  };
}

/** Takes the modifiers behind the last set out of the last cell: they are the line's. */
export function takeTrailingModifiers(cells: Cell[]): readonly Modifier[] {
  const last = cells.at(-1)!;
  const lastSet = last.sets.at(-1)?.span.end ?? -1;
  const trailing = last.modifiers.filter((modifier) => modifier.span.start > lastSet);
  if (trailing.length > 0) {
    const modifiers = last.modifiers.filter((modifier) => modifier.span.start <= lastSet);
    cells[cells.length - 1] = { ...last, modifiers };
  }
  return trailing;
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
