import { type IsoDate, toDayNumber } from '../calendar/iso-date.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { Block, Entry, PlacedEntry, PlanDay } from '../model/entry.ts';
import type { Place, SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import type { LineKind } from '../syntax/line-kind.ts';
import { scanLine } from '../syntax/line-scanner.ts';
import { findComment, type ScannedToken } from '../syntax/scanned-token.ts';
import { foldName } from '../text/names.ts';
import { EQUIPMENT } from '../vocabulary/equipment.ts';
import type { LineContext } from '../vocabulary/keywords.ts';
import { PATTERNS } from '../vocabulary/movement-words.ts';
import { MUSCLES } from '../vocabulary/muscles.ts';

export interface CompletionOptions {
  readonly today: IsoDate;
  readonly formula?: OneRepMaxFormula;
}

/** Where the cursor stands: the line around it, and what the facts say of the entry that it is in. */
export interface Spot {
  readonly works: SessionWorks;
  readonly practice: Practice;
  readonly options: CompletionOptions;
  readonly uri: string;
  /** From 0, in its file. */
  readonly lineNumber: number;
  readonly line: string;
  readonly column: number;
  /** The line up to the cursor. */
  readonly before: string;
  /** Kind of the entry that the line stands in; on a header that of the entry above. */
  readonly context: LineContext;
  /** The entry that the line belongs to, its header included. */
  readonly placed?: PlacedEntry;
  /** How `before` is read by itself. */
  readonly kind: LineKind;
  /** Tokens of `before` that are complete, and the one that is being typed. */
  readonly tokens: readonly ScannedToken[];
  readonly typing?: ScannedToken;
  readonly block?: Block;
  readonly day?: PlanDay;
}

/** Tokens that grow while they are typed. */
const GROWING: ReadonlySet<ScannedToken['kind']> = new Set([
  'NAME',
  'TEXT',
  'WORD',
  'NUMBER',
  'TIME',
  'DATE',
  'ODD_DATE',
  'TEMPO',
  'LADDER',
  'LABEL',
  'STRAY',
  'TITLE',
  'LETTER',
  'TIMES',
]);

/** The line at a line and UTF-16 column of a file, both from 0; of a file that is not known it is empty. */
export function findSpot(
  works: SessionWorks,
  uri: string,
  lineNumber: number,
  column: number,
  options: CompletionOptions,
): Spot {
  const { practice } = works;
  const file = practice.file(uri);
  const line = file?.lines[lineNumber] ?? '';
  const at = Math.min(column, line.length);
  const before = line.slice(0, at);
  const entries = file?.model.entries ?? [];
  const index = entries.findLastIndex((candidate) => candidate.line <= lineNumber);
  const placed = entries[index];
  const onHeader = placed?.line === lineNumber && placed.entry.header.end > placed.entry.header.start;
  const around = onHeader ? entries[index - 1] : placed;
  const context = around?.entry.kind ?? 'unknown';
  const { line: kind, tokens } = scanLine(before, context);
  const last = tokens.at(-1);
  const isGrowing = last && (last.end === at ? GROWING.has(last.kind) : isBegunName(practice, before, last));
  const typing = isGrowing ? last : undefined;
  return {
    works,
    practice,
    options,
    uri,
    lineNumber,
    line,
    column: at,
    before,
    context,
    ...(placed && { placed }),
    kind,
    tokens: typing ? tokens.slice(0, -1) : tokens,
    ...(typing && { typing }),
    ...(placed && findPart(placed.entry, lineNumber - placed.line)),
  };
}

/** A name of several words of which the first are written: `Slack ` of Slack Water. */
function isBegunName(practice: Practice, before: string, { kind, start, end }: ScannedToken): boolean {
  if (kind !== 'NAME' || before.slice(end).trim() !== '') return false;
  const written = foldName(before.slice(start, end));
  let isBegun = false;
  for (const name of listNames(practice)) {
    if (name === written) return false;
    isBegun ||= name.startsWith(`${written} `);
  }
  return isBegun;
}

function* listNames(practice: Practice): Iterable<string> {
  for (const list of [practice.allAthletes(), practice.allPlaces(), practice.allPlans()])
    for (const { key } of list) yield key;
  yield* practice.movementSpellings();
  for (const name of PATTERNS) yield name;
  for (const { name } of [...MUSCLES, ...EQUIPMENT]) yield foldName(name);
}

/** The day and block that a line of an entry stands in. */
function findPart(entry: Entry, entryLine: number): { day?: PlanDay; block?: Block } {
  const day = entry.kind === 'plan' ? entry.days.findLast(({ span }) => span.line < entryLine) : undefined;
  const blocks = entry.kind === 'session' || entry.kind === 'unknown' ? entry.blocks : (day?.blocks ?? []);
  const block = blocks.findLast(({ span }) => span.line < entryLine);
  return { ...(day && { day }), ...(block && { block }) };
}

/** Whom the entry is about, in order of its header. */
export interface Trainee {
  /** Folded name; empty where nobody is named. */
  readonly athlete: string;
  /** Days since 1970-01-01: of the session, else today. */
  readonly day: number;
  readonly date: IsoDate;
  /** The session itself: what is before it is history. */
  readonly record?: SessionRecord;
}

export function listTrainees({ practice, uri, placed, options }: Spot): readonly Trainee[] {
  const today = { day: toDayNumber(options.today), date: options.today };
  const entry = placed?.entry;
  if (entry?.kind === 'session') {
    const records = practice.recordsOf(uri, placed!);
    if (records.length > 0)
      return records.map((record) => ({
        athlete: record.athlete,
        day: record.day,
        date: record.date,
        record,
      }));
  }
  const names = entry?.kind === 'session' || entry?.kind === 'plan' ? entry.athletes : [];
  if (names.length > 0) return names.map(({ text }) => ({ athlete: foldName(text), ...today }));
  return [{ athlete: practice.resolveAthlete(''), ...today }];
}

/** The place of the session or plan, if it is defined. */
export function findSpotPlace({ practice, placed }: Spot): Place | undefined {
  const entry = placed?.entry;
  const name = entry?.kind === 'session' || entry?.kind === 'plan' ? entry.place?.text : undefined;
  return name === undefined ? undefined : practice.findPlace(name);
}

/** The tokens of the whole line, in the context of the entry above. */
export function scanWhole({ line, context }: Spot): { kind: LineKind; tokens: readonly ScannedToken[] } {
  const { line: kind, tokens } = scanLine(line, context);
  return { kind, tokens };
}

/** What stands behind a column, without space and comment. */
export function restAfter({ line }: Spot, column: number): string {
  return line.slice(column, Math.max(column, findComment(line, column))).trim();
}

/** Whether something may be added at a column: nothing follows, or what begins anew. */
export function isOpen(spot: Spot, column: number): boolean {
  return /^(?:$|[,|])/.test(restAfter(spot, column));
}

/** Where the word ends that the cursor is in or at. */
export function endOfWord({ line, column }: Pick<Spot, 'line' | 'column'>): number {
  return column + /^[\p{L}\p{M}\p{N}'\u2019-]*/u.exec(line.slice(column))![0].length;
}
