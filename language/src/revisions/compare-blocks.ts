/** Which blocks came and went, and which have other settings or another order. */
import type { Block } from '../model/entry.ts';
import { printBlockHeader, printDone } from '../printing/print-block.ts';
import { printModifier, printStep } from '../printing/print-modifiers.ts';
import { printTime } from '../printing/print-quantity.ts';
import { diffTexts } from './diff-texts.ts';
import type { Day, LineMatch, LinePair } from './match-lines.ts';
import type { BlockChange, TextChange } from './revision.ts';

/** `B circuit`; lines without a header are straight sets. */
export function nameBlock({ letter, kind }: Block): string {
  return letter === undefined ? kind : `${letter} ${kind}`;
}

/** Blocks of the later version with those of the earlier: most lines in common, else letter or position in the day. */
export function matchBlocks(
  before: readonly Day[],
  after: readonly Day[],
  { pairs }: LineMatch,
): Map<Block, Block> {
  const matched = new Map<Block, Block>();
  const taken = new Set<Block>();
  const take = (is: Block, was: Block | undefined): void => {
    if (!was || taken.has(was) || matched.has(is)) return;
    matched.set(is, was);
    taken.add(was);
  };
  const shared = new Map<Block, Map<Block, number>>();
  for (const pair of pairs) {
    if (pair.before.day.number !== pair.after.day.number) continue;
    const counts = shared.get(pair.after.block) ?? new Map<Block, number>();
    shared.set(pair.after.block, counts.set(pair.before.block, (counts.get(pair.before.block) ?? 0) + 1));
  }
  const candidates = [...shared].flatMap(([is, counts]) =>
    [...counts].map(([was, count]) => ({ is, was, count })),
  );
  for (const { is, was } of candidates.sort((a, b) => b.count - a.count)) take(is, was);
  for (const day of after) {
    const others = before.find(({ number }) => number === day.number)?.blocks ?? [];
    for (const [index, block] of day.blocks.entries()) {
      const byLetter = others.find(
        ({ letter, kind }) => letter !== undefined && letter === block.letter && kind === block.kind,
      );
      take(block, byLetter);
      if (others[index]?.kind === block.kind) take(block, others[index]);
    }
  }
  return matched;
}

export function compareBlocks(
  before: readonly Day[],
  after: readonly Day[],
  blocks: ReadonlyMap<Block, Block>,
  { pairs }: LineMatch,
): BlockChange[] {
  const kept = new Set(blocks.values());
  const changes = after.flatMap((day) =>
    day.blocks.flatMap((block): BlockChange[] => {
      const base = { day: day.label, block: nameBlock(block) };
      const former = blocks.get(block);
      if (!former) return block.implicit ? [] : [{ ...base, kind: 'added', texts: listAll(block, 'after') }];
      const [settings, order] = [compareSettings(former, block), compareOrder(former, block, pairs)];
      return [
        ...(settings.length > 0 ? [{ ...base, kind: 'changed', texts: settings } as const] : []),
        ...(order ? [{ ...base, kind: 'reordered', texts: [order] } as const] : []),
      ];
    }),
  );
  const removed = before.flatMap((day) =>
    day.blocks
      .filter((block) => !kept.has(block) && !block.implicit)
      .map((block): BlockChange => {
        return { day: day.label, block: nameBlock(block), kind: 'removed', texts: listAll(block, 'before') };
      }),
  );
  return [...changes, ...removed];
}

/** Its kind is told with its letter, unless it is another now. */
function compareSettings(was: Block, is: Block): TextChange[] {
  const [[kindBefore, ...before], [kindAfter, ...after]] = [listSettings(was), listSettings(is)];
  const kind = kindBefore === kindAfter ? [] : [{ before: kindBefore!, after: kindAfter! }];
  return [...kind, ...diffTexts(before, after)];
}

function listAll(block: Block, side: 'before' | 'after'): TextChange[] {
  return listSettings(block)
    .slice(1)
    .map((text) => ({ [side]: text }));
}

/** The lines that both have, where they stand in another order. */
function compareOrder(was: Block, is: Block, pairs: readonly LinePair[]): TextChange | undefined {
  const shared = pairs.filter((pair) => pair.before.block === was && pair.after.block === is);
  const ordered = (side: 'before' | 'after'): LinePair[] =>
    shared.toSorted((a, b) => a[side].line.span.line - b[side].line.span.line);
  const [before, after] = [ordered('before'), ordered('after')];
  if (before.every((pair, index) => pair === after[index])) return undefined;
  const print = (list: readonly LinePair[]): string =>
    list.map((pair) => pair.after.line.name.text).join(', ');
  return { before: print(before), after: print(after) };
}

/** A block's kind, its settings and what was recorded of it, without its letter. */
function listSettings(block: Block): string[] {
  const { letter: _letter, roundStep, ...rest } = block;
  const time = (seconds: number | undefined): string => (seconds === undefined ? '?' : printTime(seconds));
  return [
    ...printBlockHeader(rest).split(', '),
    ...block.restsBetween.map(
      ({ seconds, high }) => `rest ${time(seconds)}${high === undefined ? '' : `-${time(high)}`} between`,
    ),
    ...(roundStep ? [`progression ${printStep(roundStep)}`] : []),
    ...block.restSteps.map(printModifier),
    ...(block.times.length > 0
      ? [`time ${block.times.map((times) => times.map(time).join(', ')).join(' | ')}`]
      : []),
    ...(block.restsTaken.length > 0 ? [`rests taken ${block.restsTaken.map(time).join(', ')}`] : []),
    ...(block.done ? [printDone(block.done)] : []),
    ...block.notes.map(({ text }) => `> ${text}`),
  ];
}
