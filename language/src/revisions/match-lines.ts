/** Which line of one version is which of another: by movement, in the same day first, then anywhere, then by position. */
import type { Block, MovementLine } from '../model/entry.ts';
import type { CellNames } from './line-aspects.ts';

export interface Day {
  readonly number: number;
  /** `day 1 Squat`; empty in a session. */
  readonly label: string;
  readonly blocks: readonly Block[];
  readonly cellNames: CellNames;
}

export interface PlacedLine {
  readonly line: MovementLine;
  /** Movement, purpose and week: what makes it the same line, whatever it asks for. */
  readonly identity: string;
  readonly day: Day;
  readonly block: Block;
  readonly blockIndex: number;
}

export interface LinePair {
  readonly before: PlacedLine;
  readonly after: PlacedLine;
  /** Another movement at the same position. */
  readonly isSwap: boolean;
}

export interface LineMatch {
  readonly pairs: readonly LinePair[];
  readonly removed: readonly PlacedLine[];
  readonly added: readonly PlacedLine[];
}

export function placeLines(days: readonly Day[], toKey: (name: string) => string): PlacedLine[] {
  return days.flatMap((day) =>
    day.blocks.flatMap((block, blockIndex) =>
      block.lines.map((line) => ({
        line,
        identity: [toKey(line.name.text), line.purpose, line.week ?? ''].join('\n'),
        day,
        block,
        blockIndex,
      })),
    ),
  );
}

export function matchLines(before: readonly PlacedLine[], after: readonly PlacedLine[]): LineMatch {
  const pairs: LinePair[] = [];
  const [left, found] = [new Set(before), new Set(after)];
  const pair = (was: PlacedLine, is: PlacedLine, isSwap = false): void => {
    pairs.push({ before: was, after: is, isSwap });
    left.delete(was);
    found.delete(is);
  };
  const pairBy = (isMatch: (was: PlacedLine, is: PlacedLine) => boolean): void => {
    for (const was of left) {
      const is = [...found].find((candidate) => isMatch(was, candidate));
      if (is) pair(was, is);
    }
  };
  const isSame = (was: PlacedLine, is: PlacedLine): boolean => was.identity === is.identity;
  const inSameDay = (was: PlacedLine, is: PlacedLine): boolean => was.day.number === is.day.number;
  // In the same block before another of the same day, so that a movement done twice a day is not crossed over.
  pairBy((was, is) => isSame(was, is) && inSameDay(was, is) && was.blockIndex === is.blockIndex);
  pairBy((was, is) => isSame(was, is) && inSameDay(was, is));
  pairBy(isSame);
  for (const was of [...left]) {
    const is = [...found].find((candidate) => isSamePosition(was, candidate, before, after, pairs));
    if (is) pair(was, is, true);
  }
  return { pairs, removed: [...left], added: [...found] };
}

/** Behind the same line, or both first, in the same block of the same day, and for the same purpose and week. */
function isSamePosition(
  was: PlacedLine,
  is: PlacedLine,
  before: readonly PlacedLine[],
  after: readonly PlacedLine[],
  pairs: readonly LinePair[],
): boolean {
  if (
    was.day.number !== is.day.number ||
    was.line.purpose !== is.line.purpose ||
    was.line.week !== is.line.week
  )
    return false;
  const [previousBefore, previousAfter] = [findPrevious(was, before), findPrevious(is, after)];
  if (previousBefore && previousAfter) {
    return pairs.some((each) => each.before === previousBefore && each.after === previousAfter);
  }
  // First in their blocks: the blocks must be the same one.
  return (
    !previousBefore && !previousAfter && (was.blockIndex === is.blockIndex || sharesLine(was, is, pairs))
  );
}

function findPrevious(placed: PlacedLine, all: readonly PlacedLine[]): PlacedLine | undefined {
  const previous = all[all.indexOf(placed) - 1];
  return previous && previous.day === placed.day && previous.block === placed.block ? previous : undefined;
}

function sharesLine(was: PlacedLine, is: PlacedLine, pairs: readonly LinePair[]): boolean {
  return pairs.some(({ before, after }) => before.block === was.block && after.block === is.block);
}
