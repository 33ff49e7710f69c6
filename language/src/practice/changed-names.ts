import { isAlike } from '../model/alike.ts';
import type { Block, MovementLine, SessionEntry } from '../model/entry.ts';
import { countSameEnds } from '../text/same-ends.ts';

/**
 * The movements, as written, of which alone two versions of a session say different things: those of lines whose sets are
 * others, and all those of a block in which anything else is. Undefined where more than blocks differs.
 */
export function findChangedNames(before: SessionEntry, after: SessionEntry): ReadonlySet<string> | undefined {
  if (!isAlike(frameOf(before), frameOf(after))) return undefined;
  const [gone, come] = cutSameEnds(before.blocks, after.blocks);
  const names =
    gone.length === come.length
      ? gone.flatMap((block, index) => listChanged(block, come[index]!))
      : [...gone, ...come].flatMap(({ lines }) => lines.map(nameOf));
  return new Set(names);
}

/** What other sessions may rest on beside the blocks. */
function frameOf({ blocks, lineCount, problems, ignores, ...others }: SessionEntry): unknown {
  return others;
}

function cutSameEnds<T>(before: readonly T[], after: readonly T[]): [gone: readonly T[], come: readonly T[]] {
  const { front, back } = countSameEnds(before, after, isAlike);
  return [before.slice(front, before.length - back), after.slice(front, after.length - back)];
}

/** Which movements a block holds together says which block it is the same as: only of sets does the rest not care. */
function listChanged(before: Block, after: Block): string[] {
  const [gone, come] = cutSameEnds(before.lines, after.lines);
  const hasOnlyOtherSets =
    isAlike({ ...before, lines: [] }, { ...after, lines: [] }) &&
    gone.length === come.length &&
    gone.every((line, index) => isAlike(withoutSets(line), withoutSets(come[index]!)));
  return hasOnlyOtherSets ? gone.map(nameOf) : [...before.lines, ...after.lines].map(nameOf);
}

function withoutSets({ cells, span, ...others }: MovementLine): unknown {
  return { ...others, cells: cells.map(({ modifiers }) => modifiers) };
}

function nameOf({ name }: MovementLine): string {
  return name.text;
}
