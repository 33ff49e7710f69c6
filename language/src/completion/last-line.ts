import { countRounds } from '../measures/expand-sets.ts';
import type { Block } from '../model/entry.ts';
import type { Amount, Modifier, SetGroup } from '../model/quantity.ts';
import { printAmount } from '../printing/print-quantity.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import type { DoneLine } from './history.ts';
import { isSameLoad, printCell } from './print-cell.ts';

/** How many numbers a line of the block holds; undefined where the sets of a line stand by themselves. */
export function countSlots(block: Block | undefined): number | undefined {
  return block && BLOCK_KINDS[block.kind].inRounds
    ? block.kind === 'amrap'
      ? 1
      : countRounds(block)
    : undefined;
}

/**
 * Last time's sets as a line of this block would write them: three rounds of twelve are `3x12` among straight sets, and
 * `3x12` is `12` in a circuit. What failed or was left out is written as it was meant to be.
 */
export function writeLast({ block: from, line, cell }: DoneLine, to: Block | undefined): string | undefined {
  const meant = cell.sets.flatMap((set) => {
    const amount = set.amount && toMeant(set.amount);
    return amount ? [{ ...set, amount }] : [];
  });
  const written = meant.flatMap((set) => Array.from({ length: set.count }, () => set));
  const rounds = countSlots(from);
  const [only] = written;
  if (!only) return undefined;
  const sets =
    written.length === 1 && rounds && from.kind !== 'amrap' ? Array<typeof only>(rounds).fill(only) : written;
  const slots = countSlots(to);
  const modifiers = [...cell.modifiers, ...line.modifiers].filter(isKept);
  const fitted = slots === undefined ? sets : fitTo(sets, slots);
  return printCell(slots === undefined ? groupEqual(fitted) : fitted.map(toSingle), modifiers);
}

/** One set stands for all rounds; else there is one for each. */
function fitTo<T extends SetGroup>(sets: readonly T[], slots: number): T[] {
  const [first] = sets;
  if (sets.every((set) => isEqual(set, first!))) return [first!];
  return Array.from({ length: slots }, (_, index) => sets[Math.min(index, sets.length - 1)]!);
}

function toSingle<T extends SetGroup>(set: T): T {
  return { ...set, count: 1, counted: false };
}

function groupEqual(sets: readonly SetGroup[]): SetGroup[] {
  const groups: SetGroup[] = [];
  for (const set of sets) {
    const last = groups.at(-1);
    if (last && isEqual(last, set))
      groups[groups.length - 1] = { ...last, count: last.count + 1, counted: true };
    else groups.push(toSingle(set));
  }
  return groups;
}

function isEqual(one: SetGroup, other: SetGroup): boolean {
  return isSameLoad(one, other) && printOf(one) === printOf(other);
}

const printOf = ({ amount }: SetGroup): string => (amount ? printAmount(amount) : '');

/** Four of five are meant as five; what was skipped or missed altogether is left out. */
function toMeant(amount: Amount): Amount | undefined {
  if (amount.kind === 'skipped') return undefined;
  if (amount.kind !== 'attempt') return amount;
  if (amount.made === 0) return undefined;
  const { tried, perSide } = amount;
  return {
    kind: 'quantity',
    quantity: { measure: 'reps', value: tried, written: tried, unit: 'rep' },
    perSide,
  };
}

function isKept({ kind }: Modifier): boolean {
  return kind === 'tempo' || kind === 'setting' || kind === 'rest';
}
