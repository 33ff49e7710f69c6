import type { BlockWork } from '../measures/block-work.ts';
import type { DayMax } from '../measures/day-max.ts';
import type { SessionWork, SessionWorks } from '../measures/session-work.ts';
import type { Block, PlacedEntry, SessionEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { describeBlock, hasHeadline, namesNoOther } from './block-lens.ts';
import type { Lens, LensOptions } from './lens.ts';
import { describeMax, listShownMaxes } from './line-lens.ts';
import { describeSession, findRestOfSession, saysOfItself } from './session-lens.ts';
import {
  findRemembered,
  findRestOnItself,
  ON_WEEK,
  type Rest,
  recall,
  rememberSession,
  type SessionMemory,
} from './session-memory.ts';

/** A place of a session's lens, and what it is about. */
export type Spot = { readonly entryLine: number; readonly nth: number } & (
  | { readonly kind: 'session' }
  | { readonly kind: 'block'; readonly block: Block }
  | { readonly kind: 'line'; readonly max: DayMax }
);

export type SpotLens = Omit<Lens, 'line'> | undefined;

/** A session and where its lenses stand. */
export interface SeenSession {
  readonly records: readonly SessionRecord[];
  readonly spots: readonly Spot[];
  /** What is known already of what its lenses say. */
  readonly memory: SessionMemory;
}

export function lookAtSession(
  works: SessionWorks,
  uri: string,
  placed: PlacedEntry & { readonly entry: SessionEntry },
  options: LensOptions,
): SeenSession {
  const { practice } = works;
  const records = practice.recordsOf(uri, placed);
  const memory = rememberSession(practice, placed.entry, records, options);
  return { records, spots: listSpots(works, placed.entry, records, memory, options), memory };
}

/** What its lens says, worked out once for as long as it is the same. */
export function tellSpot(
  works: SessionWorks,
  session: SeenSession,
  spot: Spot,
  options: LensOptions,
): SpotLens {
  const { records, memory } = session;
  const findRestOf = () => findRest(works, records, spot, options);
  return recall(memory, nameOf(spot), findRestOf, () => describeSpot(works, records, spot, options));
}

/** The same where it is known already. */
export function findTold({ memory }: SeenSession, spot: Spot): SpotLens {
  return findRemembered(memory, nameOf(spot)) as SpotLens;
}

/** A max rests on the days of its movement, a block on those of its movements, and a session on its plan and its week. */
function findRest(
  { practice }: SessionWorks,
  records: readonly SessionRecord[],
  spot: Spot,
  options: LensOptions,
): Rest {
  switch (spot.kind) {
    case 'session':
      return findRestOfSession(practice, records);
    case 'block': {
      const keys = spot.block.lines.map(({ name }) => practice.keyOf(name.text));
      const movements = keys.length > 0 ? new Set(keys) : undefined;
      const isAlone = records.every((record) => namesNoOther(practice, record, spot.block, options));
      return { reach: 'day', movements, defined: isAlone ? movements : undefined };
    }
    case 'line': {
      const movements = new Set([practice.keyOf(spot.max.line.name.text)]);
      return { reach: 'day', movements, defined: movements };
    }
  }
}

function nameOf({ kind, entryLine, nth }: Spot): string {
  return `${kind} ${entryLine} ${nth}`;
}

interface KnownSpots {
  readonly sums: readonly (readonly BlockWork[])[];
  readonly formula: string;
  readonly spots: readonly Spot[];
}

const knownSpots = new WeakMap<SessionEntry, KnownSpots>();

function listSpots(
  works: SessionWorks,
  entry: SessionEntry,
  records: readonly SessionRecord[],
  memory: SessionMemory,
  options: LensOptions,
): readonly Spot[] {
  if (records.length === 0) return [];
  const first: Spot = { kind: 'session', entryLine: 0, nth: 0 };
  if (entry.missed) return [first];
  const { spots, isSaying } = recall(
    memory,
    'spots',
    () => findRestOnItself(works.practice, entry),
    () => listOwnSpots(works, entry, records, options),
  );
  const saysMore = () => describeSession(works, records, options).text !== '';
  const isFirst = isSaying || recall(memory, 'says', ON_WEEK, saysMore);
  return isFirst ? [first, ...spots] : spots;
}

/**
 * Those below the session's header, and whether there is one over it whatever plan and week are: that rests on the
 * session's own sums alone.
 */
function listOwnSpots(
  works: SessionWorks,
  entry: SessionEntry,
  records: readonly SessionRecord[],
  options: LensOptions,
): { readonly spots: readonly Spot[]; readonly isSaying: boolean } {
  const parts = records.map((record) => works.of(record));
  const { formula } = options;
  let known = knownSpots.get(entry);
  const isValid =
    known?.formula === formula &&
    known.sums.length === parts.length &&
    parts.every(({ blocks }, index) => blocks === known!.sums[index]);
  if (!known || !isValid) {
    const sums = parts.map(({ blocks }) => blocks);
    known = { sums, formula, spots: findSpots(works, entry, parts, options) };
    knownSpots.set(entry, known);
  }
  return { spots: known.spots, isSaying: parts.some(saysOfItself) };
}

function findSpots(
  works: SessionWorks,
  entry: SessionEntry,
  parts: readonly SessionWork[],
  options: LensOptions,
): Spot[] {
  const now = { ...options, complete: false };
  const spots: Spot[] = entry.blocks
    .map((block) => ({ kind: 'block', entryLine: block.span.line, nth: 0, block }) as const)
    .filter(({ block }) => parts.some((part) => hasHeadline(works, part, block, now)));
  if (parts.length > 1) return spots;
  const byLine = new Map<number, number>();
  for (const max of listShownMaxes(works, parts[0]!, options)) {
    const entryLine = max.line.span.line;
    const nth = byLine.get(entryLine) ?? 0;
    byLine.set(entryLine, nth + 1);
    spots.push({ kind: 'line', entryLine, nth, max });
  }
  return spots;
}

function describeSpot(
  works: SessionWorks,
  records: readonly SessionRecord[],
  spot: Spot,
  options: LensOptions,
): SpotLens {
  const alone = records.length === 1 ? works.of(records[0]!) : undefined;
  switch (spot.kind) {
    case 'session':
      return describeSession(works, records, options);
    case 'block':
      return alone
        ? describeBlock(works, alone, spot.block, options)
        : describeGroupBlock(works, records, spot.block, options);
    case 'line':
      return describeMax(works, works.of(records[0]!), spot.max, options);
  }
}

/** In a group each athlete has a headline; the lens shows the last fact of each: density, score or sum. */
function describeGroupBlock(
  works: SessionWorks,
  records: readonly SessionRecord[],
  block: Block,
  options: LensOptions,
): Omit<Lens, 'line'> | undefined {
  const parts = records.flatMap((record) => {
    const lens = describeBlock(works, works.of(record), block, options);
    const name = record.entry.athletes[record.index]!.text;
    return lens ? [{ lens, text: `${name} ${lens.text.split(' · ').at(-1)}` }] : [];
  });
  if (parts.length === 0) return undefined;
  return {
    kind: 'block',
    text: parts.map(({ text }) => text).join(' · '),
    explain: () => parts.flatMap(({ lens }) => lens.explain()),
  };
}
