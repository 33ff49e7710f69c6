import type { SessionWorks } from '../measures/session-work.ts';
import { type Extent, listReaching } from '../practice/extents.ts';
import { findEntry, listKeysNamed } from '../practice/mentions.ts';
import type { Lens, LensOptions, LensPlace, LineHint } from './lens.ts';
import { describeHints } from './line-lens.ts';
import { describePlanHints } from './plan-lens.ts';
import { recallPlanSpots } from './plan-lens-memory.ts';
import { describeRoundHints } from './round-hints.ts';
import { type Rest, recall, rememberSession } from './session-memory.ts';
import { findTold, lookAtSession, tellSpot } from './session-spots.ts';

const EVERYWHERE: Extent = { first: 0, last: Number.POSITIVE_INFINITY };
const NOWHERE: Extent = { first: 1, last: 0 };

/** Lines of a file: those whose lenses are wanted, and those whose words are too. */
export interface LensLines {
  readonly given?: Extent;
  readonly worded?: Extent;
}

/**
 * Where the lenses of a file stand, from top to bottom: those of the entries that reach into the lines given. What they
 * say is worked out by {@link describeLens} when it is asked for: a file holds hundreds of them and a screen shows twenty.
 * Each place listed has a lens; what it says comes with it where that is known already, and in those worded.
 */
export function listLensPlaces(
  works: SessionWorks,
  uri: string,
  options: LensOptions,
  { given = EVERYWHERE, worded = NOWHERE }: LensLines = {},
): LensPlace[] {
  const places: LensPlace[] = [];
  const isWorded = (line: number): boolean => worded.first <= line && line <= worded.last;
  for (const placed of listReaching(works.practice.file(uri)?.model, given)) {
    const { entry, line } = placed;
    if (entry.kind === 'plan') {
      for (const spot of recallPlanSpots(works, { ...placed, entry }, options)) {
        const { kind, line: at, nth } = spot;
        const text = isWorded(at) ? spot.tell().text : spot.text;
        places.push({ kind, line: at, nth, ...(text !== undefined && { text }) });
      }
    }
    if (entry.kind !== 'session') continue;
    const session = lookAtSession(works, uri, { ...placed, entry }, options);
    for (const spot of session.spots) {
      const at = line + spot.entryLine;
      const lens = isWorded(at) ? tellSpot(works, session, spot, options) : findTold(session, spot);
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
  if (entry.kind === 'plan') {
    const { kind, line, nth } = place;
    const spots = recallPlanSpots(works, { ...placed, entry }, options);
    const spot = spots.find((each) => each.kind === kind && each.line === line && each.nth === nth);
    return spot && { kind, line, ...spot.tell() };
  }
  if (entry.kind !== 'session') return undefined;
  const session = lookAtSession(works, uri, { ...placed, entry }, options);
  const spot = session.spots.find(
    ({ kind, entryLine, nth }) =>
      kind === place.kind && entryLine === place.line - placed.line && nth === place.nth,
  );
  const lens = spot && tellSpot(works, session, spot, options);
  return lens && { ...lens, line: place.line };
}

/** All lenses of one file, from top to bottom. */
export function describeLenses(works: SessionWorks, uri: string, options: LensOptions): Lens[] {
  return listLensPlaces(works, uri, options).flatMap(
    (place) => describeLens(works, uri, place, options) ?? [],
  );
}

/** The quiet facts at the lines' ends of one file, of the entries that reach into some lines of it. */
export function describeFileHints(
  works: SessionWorks,
  uri: string,
  options: LensOptions,
  extent: Extent = EVERYWHERE,
): LineHint[] {
  return listReaching(works.practice.file(uri)?.model, extent).flatMap((placed) => {
    const { entry, line } = placed;
    if (entry.kind === 'plan') return describePlanHints(works, placed, options);
    if (entry.kind !== 'session') return [];
    const records = works.practice.recordsOf(uri, placed);
    const memory = rememberSession(works.practice, entry, records, options);
    const findRest = (): Rest => {
      const movements = listKeysNamed(works.practice, entry);
      return { reach: 'day', movements, defined: movements };
    };
    const hints = recall(memory, 'hints', findRest, () => {
      const changes = records.length === 1 ? describeHints(works, works.of(records[0]!), options) : [];
      return [...describeRoundHints(entry), ...changes];
    });
    return hints.map(({ entryLine, ...hint }) => ({ ...hint, line: line + entryLine }));
  });
}
