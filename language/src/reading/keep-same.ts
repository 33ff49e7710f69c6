import { isAlike } from '../model/alike.ts';
import type { Block, Entry } from '../model/entry.ts';
import { countSameEnds } from '../text/same-ends.ts';

/**
 * An entry as it was read anew, in which the blocks and lines of a session that an edit left as they were are the very
 * objects of before: what is remembered by them need not be worked out again.
 */
export function keepSame(before: Entry | undefined, after: Entry): Entry {
  if (before === after || before?.kind !== 'session' || after.kind !== 'session') return after;
  return { ...after, blocks: keepItems(before.blocks, after.blocks, keepLines) };
}

function keepLines(before: Block, after: Block): Block {
  return { ...after, lines: keepItems(before.lines, after.lines) };
}

/** Of two lists those from the first on and from the last on back that are alike; what is between by pairs, if it has any. */
function keepItems<T>(
  before: readonly T[],
  after: readonly T[],
  keepParts: (before: T, after: T) => T = (_, item) => item,
): readonly T[] {
  const { front, back } = countSameEnds(before, after, isAlike);
  const hasPairs = before.length === after.length;
  const between = after
    .slice(front, after.length - back)
    .map((item, index) => (hasPairs ? keepParts(before[front + index]!, item) : item));
  return [...before.slice(0, front), ...between, ...before.slice(before.length - back)];
}
