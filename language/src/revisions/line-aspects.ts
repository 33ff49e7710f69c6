/** What one movement's line asks for otherwise than another: sets, reps, load, rest, progression and the rest of it. */
import type { MovementLine } from '../model/entry.ts';
import type { Cell, Modifier, SetGroup } from '../model/quantity.ts';
import { listModifiers } from '../plans/line-steps.ts';
import { printLoad } from '../printing/print-load.ts';
import { printModifier } from '../printing/print-modifiers.ts';
import { printAmount, printPlain } from '../printing/print-quantity.ts';
import { printRating, printSetGroup } from '../printing/print-sets.ts';
import type { Aspect, AspectName } from './revision.ts';

const BY_MODIFIER: Readonly<Record<Modifier['kind'], AspectName>> = {
  tempo: 'tempo',
  rest: 'rest',
  setting: 'setting',
  pain: 'other',
  instead: 'other',
  stall: 'progression',
  step: 'progression',
};

const OF_SETS: Readonly<Partial<Record<AspectName, (group: SetGroup) => string | undefined>>> = {
  reps: ({ amount, within, drops }) =>
    [
      amount ? printAmount(amount) : '?',
      within && `in ${printAmount(plain(within))}`,
      ...drops.map((drop) => `drop ${printAmount(drop.amount)}`),
    ]
      .filter(Boolean)
      .join(' '),
  load: ({ load, drops }) =>
    [load && printLoad(load), ...drops.map((drop) => drop.load && `drop ${printLoad(drop.load)}`)]
      .filter(Boolean)
      .join(' '),
  rating: ({ ratings }) => ratings.map(printRating).join(' '),
};

/** What the cells of a line stand for: a plan's weeks (`week 2: `), or the athletes of a session. */
export type CellNames = 'weeks' | readonly string[];

/** What differs, in the order that a coach would name it; none where both ask for the same. */
export function compareAspects(before: MovementLine, after: MovementLine, names: CellNames): Aspect[] {
  const aspects: Aspect[] = [];
  const add = (what: AspectName, of: (line: MovementLine) => string): void => {
    const [was, is] = [of(before), of(after)];
    if (was !== is) aspects.push({ what, before: was, after: is });
  };
  if (names === 'weeks') add('weeks', ({ cells }) => (cells.length > 1 ? `${cells.length} weeks` : ''));
  add('sets', (line) => printCells(line, countSets));
  for (const [what, print] of Object.entries(OF_SETS)) {
    add(what as AspectName, (line) => printCells(line, (cell) => printEach(cell, print)));
  }
  for (const what of new Set(Object.values(BY_MODIFIER))) {
    add(what, (line) =>
      listModifiers(line)
        .filter(({ kind }) => BY_MODIFIER[kind] === what)
        .map((modifier) => printPlainly(what, modifier))
        .join(', '),
    );
  }
  add('note', ({ notes }) => notes.map(({ text }) => text).join(' / '));
  return aspects;
}

function plain(quantity: NonNullable<SetGroup['within']>) {
  return { kind: 'quantity', quantity, perSide: false } as const;
}

/** `rest 2:00` is `2:00` beside the word rest. */
function printPlainly(what: AspectName, modifier: Modifier): string {
  const text = printModifier(modifier);
  return what === modifier.kind && text.startsWith(`${what} `) ? text.slice(what.length + 1) : text;
}

function countSets({ sets }: Cell): string {
  return printPlain(sets.reduce((sum, { count }) => sum + count, 0));
}

/** What its sets have, in order; neighbours that have the same are named once. */
function printEach({ sets }: Cell, print: (group: SetGroup) => string | undefined): string {
  const texts = sets.map((group) => print(group) ?? '');
  return texts.filter((text, index) => index === 0 || text !== texts[index - 1]).join(', ');
}

function printCells({ cells }: MovementLine, print: (cell: Cell) => string): string {
  const texts = cells.map(print);
  return texts.every((text) => text === texts[0]) ? (texts[0] ?? '') : texts.join(' | ');
}

/** All that a line asks for, `3x5 @ 70% | 4x4 @ 75%, rest 2:00`. */
export function printAsked(line: MovementLine): string {
  const cells = line.cells.map((cell) =>
    [...cell.sets.map(printSetGroup), ...cell.modifiers.map(printModifier)].join(', '),
  );
  return [cells.join(' | '), ...line.modifiers.map(printModifier)].filter((text) => text !== '').join(', ');
}

/** The change in few words: `3x5 → 4x5 @ 70%`, `week 2: 4x5 @ 75% → 77.5%`, `rest 2:00 → 3:00`. */
export function summariseAspects(
  before: MovementLine,
  after: MovementLine,
  aspects: readonly Aspect[],
  names: CellNames,
): string {
  const isOfSets = ({ what }: Aspect): boolean => what === 'weeks' || what === 'sets' || what in OF_SETS;
  const sets = aspects.some(isOfSets) ? summariseCells(before.cells, after.cells, names) : [];
  const others = aspects
    .filter((aspect) => !isOfSets(aspect))
    .map(
      ({ what, before: was, after: is }) =>
        `${what === 'other' ? '' : `${what} `}${was || 'none'} → ${is || 'none'}`,
    );
  return [...sets, ...others].join(', ');
}

function summariseCells(before: readonly Cell[], after: readonly Cell[], names: CellNames): string[] {
  const printCell = (cell: Cell): string => cell.sets.map(printSetGroup).join(', ');
  if (before.length !== after.length) {
    const [was, is] = [before, after].map((cells) => cells.map(printCell).join(' | '));
    return [`${was || 'no sets'} → ${is || 'no sets'}`];
  }
  return before.flatMap((cell, index) => {
    const now = after[index]!;
    if (printCell(cell) === printCell(now)) return [];
    const name = names === 'weeks' ? `week ${index + 1}` : names[index];
    const lead = before.length > 1 && name ? `${name}${names === 'weeks' ? ':' : ''} ` : '';
    return [`${lead}${shortenChange(cell, now)}`];
  });
}

/** What both have in common is said once. */
function shortenChange(before: Cell, after: Cell): string {
  const [[was, ...moreBefore], [is, ...moreAfter]] = [before.sets, after.sets];
  const print = ({ sets }: Cell): string => sets.map(printSetGroup).join(', ') || 'no sets';
  if (was && is && moreBefore.length === 0 && moreAfter.length === 0) {
    const [amountBefore, amountAfter] = [was, is].map((group) =>
      printSetGroup({ ...group, ownLoad: false, ratings: [], drops: [] }),
    );
    const [behindBefore, behindAfter] = [was, is].map((group) =>
      printSetGroup(group).split(' @ ').slice(1).join(' @ '),
    );
    if (behindBefore && behindAfter) {
      if (behindBefore === behindAfter) return `${amountBefore} → ${amountAfter} @ ${behindAfter}`;
      if (amountBefore === amountAfter) return `${amountAfter} @ ${behindBefore} → ${behindAfter}`;
    }
  }
  return `${print(before)} → ${print(after)}`;
}
