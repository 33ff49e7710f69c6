/** What changed in the days of a plan, or in a session taken as one day. */
import { compareBlocks, matchBlocks, nameBlock } from './compare-blocks.ts';
import { compareAspects, printAsked, summariseAspects } from './line-aspects.ts';
import { type Day, type LinePair, matchLines, type PlacedLine, placeLines } from './match-lines.ts';
import type { LineChange, TrainingChanges } from './revision.ts';

/** Turns a name as the earlier or the later version writes it into one key, so that a renamed movement is one. */
export interface NameKeys {
  readonly before: (name: string) => string;
  readonly after: (name: string) => string;
}

export function compareTraining(
  before: readonly Day[],
  after: readonly Day[],
  keys: NameKeys,
): TrainingChanges {
  const match = matchLines(placeLines(before, keys.before), placeLines(after, keys.after));
  const blocks = matchBlocks(before, after, match);
  const isSameBlock = (pair: LinePair): boolean => blocks.get(pair.after.block) === pair.before.block;
  const changed = match.pairs.flatMap((pair): { change: LineChange; at: PlacedLine }[] => {
    const change = describePair(pair, isSameBlock(pair));
    return change ? [{ change, at: pair.after }] : [];
  });
  const added = match.added.map((at) => ({ change: describeOne('added', at), at }));
  const removed = match.removed.map((at) => describeOne('removed', at));
  const inOrder = [...changed, ...added].sort((a, b) => compareSpans(a.at, b.at)).map(({ change }) => change);
  return { blocks: compareBlocks(before, after, blocks, match), lines: [...inOrder, ...removed] };
}

function compareSpans(a: PlacedLine, b: PlacedLine): number {
  return a.line.span.line - b.line.span.line;
}

function describePair({ before, after, isSwap }: LinePair, isSameBlock: boolean): LineChange | undefined {
  const { cellNames } = after.day;
  const aspects = compareAspects(before.line, after.line, cellNames);
  const isMoved = before.day.number !== after.day.number || !isSameBlock;
  if (aspects.length === 0 && !isMoved && !isSwap) return undefined;
  const isOtherDay = before.day.number !== after.day.number;
  return {
    kind: isSwap ? 'swapped' : isMoved ? 'moved' : 'changed',
    day: after.day.label,
    block: nameBlock(after.block),
    ...(isMoved && !isSwap && { from: isOtherDay ? before.day.label : nameBlock(before.block) }),
    movement: after.line.name.text,
    ...(isSwap && { was: before.line.name.text }),
    prefix: printPrefix(after),
    before: printAsked(before.line),
    after: printAsked(after.line),
    aspects,
    text: summariseAspects(before.line, after.line, aspects, cellNames),
  };
}

function describeOne(kind: 'added' | 'removed', placed: PlacedLine): LineChange {
  const asked = printAsked(placed.line);
  return {
    kind,
    day: placed.day.label,
    block: nameBlock(placed.block),
    movement: placed.line.name.text,
    prefix: printPrefix(placed),
    ...(kind === 'added' ? { after: asked } : { before: asked }),
    aspects: [],
    text: asked,
  };
}

function printPrefix({ line: { week, purpose } }: PlacedLine): string {
  return [week !== undefined && `week ${week}`, purpose !== 'work' && purpose].filter(Boolean).join(' ');
}
