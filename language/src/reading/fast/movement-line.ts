import type { MovementLine } from '../../model/entry.ts';
import type { Cell, Modifier, SetGroup } from '../../model/quantity.ts';
import type { Written } from '../../model/source.ts';
import { LINE_WORDS } from '../../vocabulary/keywords.ts';
import { takeTrailingModifiers } from '../build-movement-line.ts';
import type { EntryReading } from '../line-reading.ts';
import { mayBeLineSlip, UNIT_BEHIND } from '../line-slips/movement-words.ts';
import { settle } from '../settle.ts';
import { shareLoads } from '../share-loads.ts';
import { giveUp, LineCursor } from './line-cursor.ts';
import { LineMasses } from './loads.ts';
import { MODIFIERS } from './modifiers.ts';
import { takeSet } from './sets.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const PURPOSE = /(warmup|test) +(?=\S)/y;
const LABEL = /([A-Z]\d{1,2}) +(?=\S)/y;
/** What stands in names without a second meaning: words of any script, numbers, brackets, strokes, points. */
const NAME = /^[\p{L}\p{M}\d()/.&'\u2019 -]*[\p{L}\p{M}\d()/.&'\u2019-]$/u;
const PLAIN_NAME = /^[A-Za-z\d()/.&' -]*[A-Za-z\d()/.&'-]$/;
/** A name's first word that the scanner may take for a prefix or for the letter of a block. */
const DOUBTFUL_START = /^(?:warm-?up|cool-?down|(?:test|week|[a-z]\d{0,2}[.)]?)$)/i;
const ASCII = /^[\x20-\x7e]*$/;

/** A movement's line, given the place of the colon that ends its name. */
export function readMovementLine(
  reading: EntryReading,
  text: string,
  index: number,
  start: number,
  colon: number,
): MovementLine {
  let at = start;
  let purpose: MovementLine['purpose'] | undefined;
  let label: Written | undefined;
  for (;;) {
    const word: string | undefined = matchAt(PURPOSE, text, at) ?? matchAt(LABEL, text, at);
    if (word === undefined) break;
    const isPurpose = word === 'warmup' || word === 'test';
    if (isPurpose ? purpose : label) giveUp();
    if (isPurpose) purpose = word as 'warmup' | 'test';
    else label = { text: word, span: { line: index, start: at, end: at + word.length } };
    at += word.length;
    while (text.charCodeAt(at) === 32) at++;
  }
  const name = readName(text.slice(at, colon));
  const cursor = new LineCursor(text, index, colon + 1);
  if (!ASCII.test(text.slice(colon)) || UNIT_BEHIND.test(text.slice(colon))) giveUp();
  // A sled may take more than a bar; a check that knows what the movement needs is stricter.
  const masses = new LineMasses(reading.fileUnit, 'sledGrams');
  const cells = takeCells(cursor, masses);
  masses.finish();
  for (const cell of cells) cell.sets = shareLoads(reading, cell.sets);
  const modifiers = takeTrailingModifiers(cells);
  const line: Mutable<MovementLine> = {
    kind: 'movement',
    name: { text: name, span: { line: index, start: at, end: at + name.length } },
    purpose: purpose ?? 'work',
    cells: settle(cells),
    modifiers: settle(modifiers),
    notes: settle<Written>([]),
    broken: false,
    span: { line: index, start, end: cursor.end },
  };
  if (label) line.label = label;
  return line;
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[1];
}

/** A name without doubt: no comma or bar, no space at its ends, and no word of the notation before others. */
function readName(text: string): string {
  const isPlain = PLAIN_NAME.test(text);
  if (!(isPlain ? /[A-Za-z]/.test(text) : NAME.test(text) && /\p{L}/u.test(text))) giveUp();
  const space = text.indexOf(' ');
  const first = space < 0 ? text : text.slice(0, space);
  const letters = /^[a-z]+/i.exec(first)?.[0].toLowerCase();
  if (mayBeLineSlip(`${text}:`)) giveUp();
  if (DOUBTFUL_START.test(first) || (letters && LINE_WORDS.has(letters))) giveUp();
  // A name that is composed differently keeps its place, but not its length: rare enough.
  return isPlain || text === text.normalize('NFC') ? text : giveUp();
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
