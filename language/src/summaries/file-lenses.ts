import type { BlockWork } from '../measures/block-work.ts';
import type { DayMax } from '../measures/day-max.ts';
import type { SessionWork, SessionWorks } from '../measures/session-work.ts';
import type { Block, Entry, PlacedEntry, SessionEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Extent } from '../practice/extents.ts';
import { findEntry } from '../practice/mentions.ts';
import { describeBlock, hasHeadline } from './block-lens.ts';
import type { Lens, LensOptions, LensPlace, LineHint } from './lens.ts';
import { describeHints, describeMax, listShownMaxes } from './line-lens.ts';
import { describePlan, describePlanHints } from './plan-lens.ts';
import { describeRoundHints } from './round-hints.ts';
import { describeSession, saysOfItself } from './session-lens.ts';
import { type Reach, recall, rememberSession } from './session-memory.ts';

const NOWHERE: Extent = { first: 1, last: 0 };

/**
 * Where the lenses of a file stand, from top to bottom. What they say is worked out by {@link describeLens} when it is
 * asked for: a file holds hundreds of them and a screen shows twenty. Each place listed has a lens; what it says comes
 * with it where that is known already, and in the lines in sight.
 */
export function listLensPlaces(
  works: SessionWorks,
  uri: string,
  options: LensOptions,
  { first, last }: Extent = NOWHERE,
): LensPlace[] {
  const places: LensPlace[] = [];
  for (const placed of works.practice.file(uri)?.model.entries ?? []) {
    const { entry, line } = placed;
    if (entry.kind === 'plan') places.push(...listPlanPlaces(works, placed, options));
    if (entry.kind !== 'session') continue;
    const session = lookAtSession(works, uri, { ...placed, entry }, options);
    for (const spot of session.spots) {
      const at = line + spot.entryLine;
      const isInSight = first <= at && at <= last;
      const lens = isInSight ? tellSpot(works, session, spot, options) : findTold(session, spot);
      places.push({ kind: spot.kind, line: at, nth: spot.nth, ...(lens && { text: lens.text }) });
    }
  }
  return places.sort((a, b) => a.line - b.line);
}

/** What stands at one of the places; undefined once the text has no lens there. */
export function describeLens(
  works: SessionWorks,
  uri: string,
  place: LensPlace,
  options: LensOptions,
): Lens | undefined {
  const file = works.practice.file(uri);
  const placed = file && findEntry(file.model, place.line);
  if (!placed) return undefined;
  const { entry } = placed;
  if (entry.kind === 'plan')
    return listPlanLenses(works, placed, options).filter((lens) => isAt(place, lens))[place.nth];
  if (entry.kind !== 'session') return undefined;
  const session = lookAtSession(works, uri, { ...placed, entry }, options);
  const spot = session.spots.find(
    ({ kind, entryLine, nth }) =>
      kind === place.kind && entryLine === place.line - placed.line && nth === place.nth,
  );
  const lens = spot && tellSpot(works, session, spot, options);
  return lens && { ...lens, line: place.line };
}

/** How far it rests on other sessions what a lens says: the week's change stands in the lens of a session. */
const REACHES: Readonly<Record<Spot['kind'], Reach>> = { session: 'week', block: 'day', line: 'day' };

interface SeenSession {
  readonly records: readonly SessionRecord[];
  readonly spots: readonly Spot[];
  /** What is known already of what its lenses say, by {@link nameOf}. */
  readonly answers: Readonly<Record<Reach, Map<string, unknown>>>;
}

function lookAtSession(
  works: SessionWorks,
  uri: string,
  placed: PlacedEntry & { readonly entry: SessionEntry },
  options: LensOptions,
): SeenSession {
  const { practice } = works;
  const records = practice.recordsOf(uri, placed);
  const answers = {
    day: rememberSession(practice, placed.entry, records, options, 'day'),
    week: rememberSession(practice, placed.entry, records, options, 'week'),
  };
  const spots = recall(answers.week, 'spots', () => listSpots(works, placed.entry, records, options));
  return { records, spots, answers };
}

/** What its lens says, worked out once for as long as it is the same. */
function tellSpot(works: SessionWorks, session: SeenSession, spot: Spot, options: LensOptions): SpotLens {
  return recall(session.answers[REACHES[spot.kind]], nameOf(spot), () =>
    describeSpot(works, session.records, spot, options),
  );
}

function findTold({ answers }: SeenSession, spot: Spot): SpotLens {
  return answers[REACHES[spot.kind]].get(nameOf(spot)) as SpotLens;
}

function nameOf({ kind, entryLine, nth }: Spot): string {
  return `${kind} ${entryLine} ${nth}`;
}

/** All lenses of one file, from top to bottom. */
export function describeLenses(works: SessionWorks, uri: string, options: LensOptions): Lens[] {
  return listLensPlaces(works, uri, options).flatMap(
    (place) => describeLens(works, uri, place, options) ?? [],
  );
}

const knownPlans = new WeakMap<Entry, { readonly basis: string; readonly lenses: readonly Lens[] }>();

/** A plan is worked out as a whole, once until any file changes. */
function listPlanLenses(works: SessionWorks, placed: PlacedEntry, options: LensOptions): readonly Lens[] {
  const { today, formula, unit, complete } = options;
  const basis = [works.practice.edition, today, formula, unit, complete].join(' ');
  const known = knownPlans.get(placed.entry);
  if (known?.basis === basis) return known.lenses;
  const lenses = describePlan(works, placed, options);
  knownPlans.set(placed.entry, { basis, lenses });
  return lenses;
}

function listPlanPlaces(works: SessionWorks, placed: PlacedEntry, options: LensOptions): LensPlace[] {
  const places: LensPlace[] = [];
  for (const { kind, line, text } of listPlanLenses(works, placed, options))
    places.push({ kind, line, nth: places.filter((other) => isAt(other, { kind, line })).length, text });
  return places;
}

function isAt(place: Omit<LensPlace, 'nth'>, { kind, line }: Omit<LensPlace, 'nth'>): boolean {
  return place.kind === kind && place.line === line;
}

/** A place of a session's lens, and what it is about. */
type Spot = { readonly entryLine: number; readonly nth: number } & (
  | { readonly kind: 'session' }
  | { readonly kind: 'block'; readonly block: Block }
  | { readonly kind: 'line'; readonly max: DayMax }
);

type SpotLens = Omit<Lens, 'line'> | undefined;

interface KnownSpots {
  readonly sums: readonly (readonly BlockWork[])[];
  readonly formula: string;
  readonly spots: readonly Spot[];
}

const knownSpots = new WeakMap<SessionEntry, KnownSpots>();

/** Whether there is a lens rests on the session's own sums alone, whatever was done before it. */
function listSpots(
  works: SessionWorks,
  entry: SessionEntry,
  records: readonly SessionRecord[],
  options: LensOptions,
): readonly Spot[] {
  if (records.length === 0) return [];
  const first: Spot = { kind: 'session', entryLine: 0, nth: 0 };
  if (entry.missed) return [first];
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
  const isFirst = parts.some(saysOfItself) || describeSession(works, records, options).text !== '';
  return isFirst ? [first, ...known.spots] : known.spots;
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
    results: parts.flatMap(({ lens }) => lens.results),
  };
}

/** The quiet facts at the lines' ends of one file, of the entries that reach into some lines of it. */
export function describeFileHints(
  works: SessionWorks,
  uri: string,
  options: LensOptions,
  { first, last }: Extent = { first: 0, last: Number.POSITIVE_INFINITY },
): LineHint[] {
  return (works.practice.file(uri)?.model.entries ?? []).flatMap((placed) => {
    const { entry, line } = placed;
    if (line > last || line + entry.lineCount <= first) return [];
    if (entry.kind === 'plan') return describePlanHints(works, placed, options);
    if (entry.kind !== 'session') return [];
    const records = works.practice.recordsOf(uri, placed);
    const answers = rememberSession(works.practice, entry, records, options, 'day');
    const hints = recall(answers, 'hints', () => {
      const changes = records.length === 1 ? describeHints(works, works.of(records[0]!), options) : [];
      return [...describeRoundHints(entry), ...changes];
    });
    return hints.map(({ entryLine, ...hint }) => ({ ...hint, line: line + entryLine }));
  });
}
