import type { Block, Entry, MovementLine } from '@plimsoll/language/model/entry';
import { readText } from '../support/read-text.ts';

/** Facts that do not say where they stand, so that nobody can tell whether the line left out said them. */
const PLACELESS = ['born', 'sex', 'units', 'trainingMax', 'alternate', 'repMoves', 'countsContacts'];
const PLACELESS_MASSES = ['bars', 'plates', 'collars', 'dumbbells', 'kettlebells'];

/**
 * What all lines of a text but one say, as plain data that does not depend on that one: every fact that has a place,
 * by that place, and none that stands on the line `without`. With `placed` the entry of that line shows only facts
 * that have a place; otherwise that line is known to add no others.
 */
export function describeRest(
  lines: readonly string[],
  without: number,
  facts: 'all' | 'placed' = 'all',
): unknown[] {
  return readText(...lines).entries.map(({ line, entry }) => {
    const here = without - line;
    const holds = here >= 0 && here < entry.lineCount;
    const hidden = facts === 'placed' && holds ? [...PLACELESS, ...PLACELESS_MASSES] : [];
    return { line, ...describeEntry(entry, here, hidden) };
  });
}

function describeEntry(entry: Entry, here: number, hidden: readonly string[]): object {
  const facts = Object.entries(entry)
    .filter(([key]) => !['problems', 'blocks', 'days', 'ignores', ...hidden].includes(key))
    .map(([key, value]) => [key, keepElsewhere(value, here)]);
  const days = entry.kind === 'plan' ? entry.days : [];
  const blocks =
    entry.kind === 'session' || entry.kind === 'unknown' ? entry.blocks : days.flatMap((day) => day.blocks);
  return {
    ...Object.fromEntries(facts),
    // Lines before the first day are a day that nothing wrote.
    days: days
      .filter(({ span, blocks }) => span.line !== here && blocks[0]?.span.line !== span.line)
      .map(({ number, name, span }) => ({ number, name, span })),
    headers: blocks
      .filter(({ implicit, span }) => !implicit && span.line !== here)
      .map((block) => describeBlock(block)),
    lines: blocks
      .flatMap(({ lines }) => lines)
      .filter(({ span }) => span.line !== here)
      .map(describeLine),
    recorded: blocks.flatMap(listRecorded).filter(({ span }) => span.line !== here),
    notes: listNotes(entry, blocks).filter(({ span }) => span.line !== here),
  };
}

/** A broken line may be a block's header: what the lines say is compared, not which block they are in. */
function describeBlock({ kind, letter, rounds, passes, rest, cap, span }: Block): object {
  return { kind, letter, rounds, passes, rest, cap, span };
}

function listRecorded({ times, timesSpan, done, restsBetween, restSteps }: Block) {
  const rests = restsBetween.map(({ after: _, ...rest }) => rest);
  return [
    ...(timesSpan ? [{ times, span: timesSpan }] : []),
    ...(done ? [done] : []),
    ...rests,
    ...restSteps,
  ];
}

function describeLine({ notes: _, ...line }: MovementLine): object {
  return line;
}

function listNotes(entry: Entry, blocks: readonly Block[]) {
  const inBlocks = blocks.flatMap(({ notes, lines }) => [...notes, ...lines.flatMap((line) => line.notes)]);
  const inDays = entry.kind === 'plan' ? entry.days.flatMap(({ notes }) => notes) : [];
  return [...entry.notes, ...inDays, ...inBlocks].sort((a, b) => a.span.line - b.span.line);
}

/** Leaves out what stands on the line `here`; a fact that a later line would have replaced has no place there. */
function keepElsewhere(value: unknown, here: number): unknown {
  if (Array.isArray(value)) return value.filter((item) => lineOf(item) !== here);
  return lineOf(value) === here ? undefined : value;
}

function lineOf(value: unknown): number | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const facts = value as Record<string, unknown>;
  if (isSpan(facts.span)) return facts.span.line;
  for (const inner of [facts.name, facts.direction]) {
    if (typeof inner === 'object' && inner !== null && isSpan((inner as Record<string, unknown>).span))
      return lineOf(inner);
  }
  return undefined;
}

function isSpan(value: unknown): value is { line: number } {
  return typeof value === 'object' && value !== null && 'line' in value;
}
