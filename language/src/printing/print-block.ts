import type { Block, Done, Range, RoundTime } from '../model/entry.ts';
import { indent, printList, printNotes, printProperty } from './print-lines.ts';
import { printCounted, printModifier, printStep } from './print-modifiers.ts';
import { printMovementLine } from './print-movement-line.ts';
import { printPlain, printQuantity, printTime } from './print-quantity.ts';

/** `B circuit, 3 rounds x 2 passes, rest 1:15`. */
export function printBlockHeader(block: Block): string {
  const { letter, rounds, passes, roundStep, rest, cap, alternating, intervals } = block;
  const kind = printKind(block);
  // `intervals 6 x 500 m` says its rounds already.
  const roundsSaid = rounds === undefined || (rounds === intervals?.count && passes === 1);
  const options = [
    ...(intervals?.off === undefined ? [] : [`${printTime(intervals.off)} off`]),
    ...(roundsSaid ? [] : [printCounted(rounds, 'round', 'rounds') + printPasses(passes)]),
    ...(roundStep ? [printStep(roundStep)] : []),
    ...(rest ? [`rest ${printTimeRange(rest)}`] : []),
    ...(cap === undefined ? [] : [`cap ${printTime(cap)}`]),
    ...(alternating ? ['alternating'] : []),
  ];
  return [letter === undefined ? kind : `${letter} ${kind}`, ...options].join(', ');
}

/** Blocks one below another. One without a header that would be taken for more of the block before it gets its own. */
export function printBlocks(blocks: readonly Block[]): string[] {
  return blocks.flatMap((block, index) =>
    printBlock(isSeparate(block, blocks[index - 1]) ? block : { ...block, implicit: false }),
  );
}

/** Whether lines without a header begin a block: a label of another letter does, and the end of labels. */
function isSeparate(block: Block, previous: Block | undefined): boolean {
  if (!block.implicit || !previous) return true;
  const isOtherLetter = block.letter !== previous.letter;
  return (
    isOtherLetter && (previous.implicit || (block.letter !== undefined && previous.letter !== undefined))
  );
}

/** A block's lines: its header, and one step further in its movements and what was recorded of it. */
function printBlock(block: Block): string[] {
  const parts = printParts(block);
  const notes = printNotes(block.notes);
  if (!block.implicit)
    return [printBlockHeader(block), ...indent([...notes, ...parts.flatMap(({ lines }) => lines)])];
  // Without a header, notes of the block stand behind its first property: elsewhere they would be a movement's.
  const property = parts.findIndex((part) => part.isProperty);
  return parts.flatMap(({ lines }, index) => (index === property ? [...lines, ...notes] : lines));
}

interface Part {
  readonly lines: readonly string[];
  /** Rather than a movement with its notes. */
  readonly isProperty: boolean;
}

function printParts(block: Block): Part[] {
  const property = (lines: readonly string[]): Part => ({ lines, isProperty: true });
  const restsAfter = (index: number): Part[] =>
    block.restsBetween
      .filter(({ after }) => after === index)
      .map((rest) => property([`rest ${printTimeRange({ low: rest.seconds, ...rest })}`]));
  return [
    ...restsAfter(-1),
    ...block.lines.flatMap((line, index) => [
      { lines: [printMovementLine(line), ...printNotes(line.notes)], isProperty: false },
      ...restsAfter(index),
    ]),
    property(block.restSteps.map(printModifier)),
    property(printList('rest', block.restsTaken.map(printRoundTime))),
    property(
      printProperty('time', block.times.length > 0 ? block.times.map(printTimeCell).join(' | ') : undefined),
    ),
    property(block.done ? [printDone(block.done)] : []),
  ].filter(({ lines }) => lines.length > 0);
}

function printKind({ kind, every, window, intervals }: Block): string {
  switch (kind) {
    case 'every': {
      const total = every?.total === undefined ? '' : ` for ${printTime(every.total)}`;
      return every ? `every ${printTime(every.interval)}${total}` : 'every';
    }
    case 'amrap':
      return window === undefined ? 'amrap' : `amrap ${printTime(window)}`;
    case 'intervals': {
      if (intervals?.on !== undefined) return `intervals ${printTime(intervals.on)} on`;
      if (intervals?.count === undefined) return 'intervals';
      return `intervals ${printPlain(intervals.count)} x${intervals.work ? ` ${printQuantity(intervals.work)}` : ''}`;
    }
    default:
      return kind;
  }
}

/** `1:00-1:30`, or `1:00` alone. */
function printTimeRange({ low, high }: Range): string {
  return high === undefined ? printTime(low) : `${printTime(low)}-${printTime(high)}`;
}

function printPasses(passes: number): string {
  return passes === 1 ? '' : ` x ${printCounted(passes, 'pass', 'passes')}`;
}

function printTimeCell(times: readonly RoundTime[]): string {
  return times.map(printRoundTime).join(', ');
}

function printRoundTime(time: RoundTime): string {
  return time === undefined ? '?' : printTime(time);
}

/** `done in 9:48`, `done 2 of 4 rounds`, `done 4 rounds + 12 cal + 5`. */
export function printDone(done: Done): string {
  if (done.seconds !== undefined) return `done in ${printTime(done.seconds)}`;
  const total = done.of ?? done.rounds ?? 0;
  const of = done.of === undefined ? '' : `${printPlain(done.rounds ?? 0)} of `;
  return `done ${of}${[printCounted(total, 'round', 'rounds'), ...done.plus.map(printQuantity)].join(' + ')}`;
}
