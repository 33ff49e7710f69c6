import type { Block, MovementLine } from '../model/entry.ts';
import type { Amount, Cell, Quantity, SetGroup } from '../model/quantity.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';

/** One set as done: `3x5` gives three, a line of a circuit one for each round and pass. */
export interface ExpandedSet {
  readonly line: MovementLine;
  readonly group: SetGroup;
  /** Which written group of its cell, from 0. */
  readonly groupIndex: number;
  /** The group's amount, or what was done of it in a part round. */
  readonly amount: Amount | undefined;
  /** The round it was done in, from 0; absent where the block has none. */
  readonly round?: number;
  /** Begun but not finished when a block ended: its reps count, the set does not. */
  readonly unfinished: boolean;
}

/** The cell of one athlete of a group; one cell is for all. */
export function findCell(line: MovementLine, athleteIndex: number): Cell | undefined {
  return line.cells.length === 1 ? line.cells[0] : line.cells[athleteIndex];
}

/** A set without a load behind one that has its own: which load it was nobody can tell. */
export function lacksLoad(line: MovementLine, group: SetGroup): boolean {
  if (group.load) return false;
  const cell = line.cells.find(({ sets }) => sets.includes(group));
  return cell?.sets.some(({ ownLoad }) => ownLoad) ?? false;
}

/** How many rounds were done, if that is known: as it ended, as timed, else as its header says. */
export function countRounds(block: Block): number | undefined {
  if (block.done?.rounds !== undefined) return block.done.rounds;
  if (block.kind === 'amrap') return undefined;
  if (block.rounds !== undefined) return block.rounds;
  if (block.every?.total !== undefined) return Math.floor(block.every.total / block.every.interval);
  return undefined;
}

/** All sets of a block as one athlete did them, line by line. */
export function expandBlock(block: Block, athleteIndex = 0): ExpandedSet[] {
  return block.lines.flatMap((_, lineIndex) => expandLine(block, lineIndex, athleteIndex));
}

/** Those of one of its lines. */
export function expandLine(block: Block, lineIndex: number, athleteIndex = 0): ExpandedSet[] {
  const rounds =
    BLOCK_KINDS[block.kind].inRounds || block.rounds !== undefined ? countRounds(block) : undefined;
  const line = block.lines[lineIndex]!;
  const sets = expandWritten(block, line, lineIndex, rounds, athleteIndex);
  const part = expandPartRound(block, line, lineIndex, rounds, athleteIndex);
  if (part) sets.push(part);
  return sets;
}

function expandWritten(
  block: Block,
  line: MovementLine,
  lineIndex: number,
  rounds: number | undefined,
  athleteIndex: number,
): ExpandedSet[] {
  const written = listWritten(line, athleteIndex);
  const takesTurns = block.alternating && (block.kind === 'every' || block.kind === 'intervals');
  if (rounds === undefined) {
    return BLOCK_KINDS[block.kind].inRounds ? placeInRounds(written, (index) => index) : written;
  }
  if (takesTurns) {
    const step = block.lines.length;
    const turns = Math.max(0, Math.ceil((rounds - lineIndex) / step));
    return placeInRounds(repeat(written, turns), (turn) => lineIndex + turn * step);
  }
  const slots = rounds * block.passes;
  // One set for each round is done in each of its passes; one for each pass is written out.
  const sets =
    written.length === rounds && block.passes > 1
      ? written.flatMap((set) => repeat([set], block.passes))
      : repeat(written, slots);
  const perRound = sets.length > rounds ? block.passes : 1;
  return placeInRounds(sets, (index) => Math.floor(index / perRound));
}

/** Those of a line, each as often as it is written: `3x5` three times. */
function listWritten(line: MovementLine, athleteIndex: number): ExpandedSet[] {
  const sets: ExpandedSet[] = [];
  for (const [groupIndex, group] of (findCell(line, athleteIndex)?.sets ?? []).entries()) {
    const set: ExpandedSet = { line, group, groupIndex, amount: group.amount, unfinished: false };
    for (let times = 0; times < group.count; times++) sets.push(set);
  }
  return sets;
}

/** Which set of its cell the first of a group is, from 1: in `3x5, 1` the single is the fourth. */
export function numberOfSet(groups: readonly SetGroup[], groupIndex: number): number {
  let number = 1;
  for (let index = 0; index < groupIndex; index++) number += groups[index]!.count;
  return number;
}

function placeInRounds(sets: readonly ExpandedSet[], roundOf: (index: number) => number): ExpandedSet[] {
  return sets.map(
    ({ line, group, groupIndex, amount, unfinished }, index): ExpandedSet => ({
      line,
      group,
      groupIndex,
      amount,
      unfinished,
      round: roundOf(index),
    }),
  );
}

/** One set stands for all; a skipped line stays one skipped set; any other number is taken as written. */
function repeat(sets: ExpandedSet[], times: number): ExpandedSet[] {
  const only = sets.length === 1 ? sets[0]! : undefined;
  if (!only || only.amount?.kind === 'skipped') return sets;
  return new Array<ExpandedSet>(times).fill(only);
}

/** `done 4 rounds + 12 cal + 5`: in the fifth round the first line's 12 calories, and five reps of the second. */
function expandPartRound(
  block: Block,
  line: MovementLine,
  lineIndex: number,
  rounds: number | undefined,
  athleteIndex: number,
): ExpandedSet | undefined {
  const done = block.done?.plus[lineIndex];
  const groups = findCell(line, athleteIndex)?.sets ?? [];
  const groupIndex = groups.length - 1;
  const group = groups[groupIndex];
  if (!done || !group) return undefined;
  const amount: Amount = { kind: 'quantity', quantity: done, perSide: false };
  return { line, group, groupIndex, amount, round: rounds ?? 0, unfinished: !isFinished(done, group.amount) };
}

function isFinished(done: Quantity, asked: Amount | undefined): boolean {
  if (asked?.kind !== 'quantity') return false;
  const { quantity, perSide } = asked;
  return quantity.measure === done.measure && done.value >= quantity.value * (perSide ? 2 : 1);
}
