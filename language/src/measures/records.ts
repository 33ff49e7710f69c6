import type { MovementLine } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { findPosition, isSamePart } from '../practice/session-list.ts';
import type { BlockWork } from './block-work.ts';
import type { DayMax } from './day-max.ts';
import { lacksLoad } from './expand-sets.ts';
import { readReps, type Series, toMovementKey } from './max-candidates.ts';
import { findHighestProven } from './maxes.ts';
import { DEFAULT_FORMULA, type OneRepMaxFormula } from './one-rep-max.ts';
import { rememberByWorks } from './remember.ts';
import { type Result, toResult } from './result.ts';
import { isAdded, listSeriesSets, readExternal } from './series-sets.ts';
import type { SessionWork, SessionWorks } from './session-work.ts';

/** Records are kept for so many reps; more count as at least that many. */
export const MOST_RECORD_REPS = 15;

/** A set that is the best of its series for its reps. */
export interface BestSet {
  readonly series: Series;
  /** Of one side. */
  readonly reps: number;
  /** Kilograms; of the added load where body weight is the rest (`added`); of one hand where two are held. */
  readonly result: Result;
  readonly added: boolean;
  readonly line: MovementLine;
  /** Which set of its line, from 1; of several alike the first. */
  readonly setNumber: number;
  readonly day: number;
}

/** The best of one series. */
export interface SeriesBests {
  readonly series: Series;
  /** At index 1 to 15 the heaviest set of that many reps or more; a hole where none was done. */
  readonly byReps: readonly (BestSet | undefined)[];
  /** The highest estimate, and the day it was made. */
  readonly max?: { readonly max: DayMax; readonly day: number };
}

/** What of a session is better than everything of its series before. */
export interface SessionRecords {
  readonly sets: readonly BestSet[];
  readonly maxes: readonly DayMax[];
}

/**
 * The records of a session against all earlier ones; a series done for the first time has none. A single and an
 * estimate must beat the maxes stated and tested before that day too.
 */
export function findRecordsOf(
  works: SessionWorks,
  work: SessionWork,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): SessionRecords {
  const all = [...listBestSets(work), ...works.maxesOf(work, formula)];
  const keys = new Set(all.map(({ series }) => toMovementKey(series.key)));
  const found = [...keys].map((key) => findRecordsIn(works, work, key, formula));
  return { sets: found.flatMap(({ sets }) => sets), maxes: found.flatMap(({ maxes }) => maxes) };
}

/** Those of one movement, by its key. */
export function findRecordsIn(
  works: SessionWorks,
  work: SessionWork,
  key: string,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): SessionRecords {
  const { record } = work;
  const isOfIt = ({ series }: BestSet | DayMax): boolean => toMovementKey(series.key) === key;
  const sets = listBestSets(work).filter(isOfIt);
  const maxes = works.maxesOf(work, formula).filter(isOfIt);
  const books = findBooksBefore(works, record, key, formula);
  const beatsProven = (series: Series, value: number): boolean =>
    value >
    (findHighestProven(works, record.athlete, series, record.day - 1, formula) ?? Number.NEGATIVE_INFINITY);
  const better = sets.flatMap((set) => toRecord(books.get(set.series.key), set) ?? []);
  // Of a heavier body the same work is estimated higher: without a better set it is no record.
  const isOwnWork = ({ added, series }: DayMax): boolean =>
    !added || better.some((set) => set.series.key === series.key);
  return {
    sets: better.filter(({ series, reps, result }) => reps > 1 || beatsProven(series, result.value!)),
    maxes: maxes.filter(
      (max) =>
        // Under a load that failed is no number to beat one with.
        max.result.method !== 'failed-load' &&
        isMaxRecord(books.get(max.series.key), max) &&
        isOwnWork(max) &&
        beatsProven(max.series, max.result.value!),
    ),
  };
}

/** The best of each series of an athlete, ever or up to and including a day. */
export function findBests(
  works: SessionWorks,
  athlete: string,
  untilDay = Number.POSITIVE_INFINITY,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): readonly SeriesBests[] {
  const records = works.practice.sessionsOf(athlete);
  const last = records.at(-1);
  return last && last.day > untilDay
    ? collectBests(
        works,
        records.filter(({ day }) => day <= untilDay),
        formula,
      )
    : readBests(works, athlete, formula);
}

const readBests = rememberByWorks((works, athlete, formula) =>
  collectBests(works, works.practice.sessionsOf(athlete), formula as OneRepMaxFormula),
);

function collectBests(
  works: SessionWorks,
  records: readonly SessionRecord[],
  formula: OneRepMaxFormula,
): readonly SeriesBests[] {
  const books: Books = new Map();
  for (const record of records) enterSession(works, books, works.of(record), formula);
  return [...books.values()].map(({ series, byReps, max }) => ({ series, byReps, max }));
}

/** What is known of one series so far. */
interface Book {
  readonly series: Series;
  readonly byReps: readonly (BestSet | undefined)[];
  /** The highest estimates: of all, and of those that are no lower bounds. */
  readonly max?: { readonly max: DayMax; readonly day: number };
  readonly exact?: number;
}

/** By the key of the series. */
type Books = Map<string, Book>;

/** The books of one movement before each of its sessions, as far as anybody asked. */
interface Shelf {
  records: readonly SessionRecord[];
  /** What the sums of all sessions rest on beside their text: as long as it is the same, sums of the same text are. */
  basis: object;
  /** Sums that the books were written from, session by session; each of the books holds those before that one. */
  readonly sums: (readonly BlockWork[])[];
  readonly books: ReadonlyMap<string, Book>[];
}

const shelves = new WeakMap<SessionWorks, Map<string, Shelf>>();

/** Only sessions with the movement are looked at, and only those behind the first that changed since. */
function findBooksBefore(
  works: SessionWorks,
  record: SessionRecord,
  key: string,
  formula: OneRepMaxFormula,
): ReadonlyMap<string, Book> {
  const records = works.practice.sessionsWith(record.athlete, key);
  const position = findPosition(records, record);
  if (position === records.length) return new Map();
  const byKey = shelves.get(works) ?? new Map<string, Shelf>();
  shelves.set(works, byKey);
  const id = `${record.athlete}\n${key}\n${formula}`;
  const basis = works.basisOfMovement(record.athlete, key);
  const shelf: Shelf = byKey.get(id) ?? { records, basis, sums: [], books: [new Map()] };
  byKey.set(id, shelf);
  if (shelf.records !== records || shelf.basis !== basis) {
    const kept = countKept(works, shelf, records, basis, key);
    shelf.sums.length = kept;
    shelf.books.length = kept + 1;
    shelf.records = records;
    shelf.basis = basis;
  }
  for (let at = shelf.sums.length; at < position; at++) {
    const work = works.ofMovement(records[at]!, key);
    shelf.sums.push(work.blocks);
    const before = shelf.books[at]!;
    const after = new Map(before);
    // Hardly any session is a best: where none is, the same books go on.
    shelf.books.push(enterSession(works, after, work, formula) ? after : before);
  }
  return shelf.books[position]!;
}

/** How many sessions from the first are as they were when their sums were entered. */
function countKept(
  works: SessionWorks,
  shelf: Shelf,
  records: readonly SessionRecord[],
  basis: object,
  key: string,
): number {
  let kept = 0;
  while (
    kept < shelf.sums.length &&
    isSamePart(shelf.records[kept]!, records[kept]) &&
    (shelf.basis === basis || works.ofMovement(records[kept]!, key).blocks === shelf.sums[kept])
  )
    kept++;
  return kept;
}

/** Enters what a session did; says whether anything in the books is another. */
function enterSession(
  works: SessionWorks,
  books: Books,
  work: SessionWork,
  formula: OneRepMaxFormula,
): boolean {
  let changed = false;
  const enter = (series: Series, change: (book: Book) => Book): void => {
    const before = books.get(series.key);
    const after = change(before ?? { series, byReps: [] });
    if (after === before) return;
    books.set(series.key, after);
    changed = true;
  };
  for (const set of listBestSets(work)) enter(set.series, (book) => enterSet(book, set));
  for (const max of works.maxesOf(work, formula))
    enter(max.series, (book) => enterMax(book, max, work.record.day));
  return changed;
}

const bestSets = new WeakMap<readonly BlockWork[], readonly BestSet[]>();

/** Of each series of a session the sets that no other of it equals in both reps and load. */
function listBestSets(work: SessionWork): readonly BestSet[] {
  const found = bestSets.get(work.blocks);
  if (found) return found;
  const sets = listSeriesSets(work)
    .flatMap(({ set, series, movement, setNumber }): BestSet[] => {
      const reps = readReps(set.amount)?.reps ?? 0;
      const grams = readExternal(set.group.load, movement);
      // With what load a set was done that forgot its own, nobody can tell.
      if (reps < 1 || grams === undefined || set.unfinished || lacksLoad(set.line, set.group)) return [];
      return [
        {
          series,
          reps,
          result: toResult({
            value: grams / 1000,
            unit: 'kg',
            method: 'rep-record',
            inputs: [{ label: `set ${setNumber}: reps a side`, value: reps, unit: 'reps' }],
          }),
          added: isAdded(set.group.load, movement),
          line: set.line,
          setNumber,
          day: work.record.day,
        },
      ];
    })
    .sort((a, b) => b.reps - a.reps || b.result.value! - a.result.value!);
  const heaviest = new Map<string, number>();
  const best = sets.filter(({ series, result }) => {
    if (result.value! <= (heaviest.get(series.key) ?? Number.NEGATIVE_INFINITY)) return false;
    heaviest.set(series.key, result.value!);
    return true;
  });
  bestSets.set(work.blocks, best);
  return best;
}

/**
 * A record is heavier than any earlier set of as many reps or more. Where none had as many, it is one only at no less
 * than the load of the most reps so far: other reps at a lighter load are other work.
 */
function toRecord(book: Book | undefined, set: BestSet): BestSet | undefined {
  if (!book || set.reps > MOST_RECORD_REPS) return undefined;
  const before = book.byReps[set.reps];
  const most = book.byReps.at(-1);
  const isBetter = before
    ? set.result.value! > before.result.value!
    : most !== undefined && set.result.value! >= most.result.value!;
  const rival = before ?? most;
  if (!isBetter || !rival) return undefined;
  const label = `best before, ${rival.reps} rep${rival.reps === 1 ? '' : 's'}`;
  const inputs = [...set.result.inputs, { label, value: rival.result.value!, unit: 'kg' as const }];
  return { ...set, result: { ...set.result, inputs } };
}

function enterSet(book: Book, set: BestSet): Book {
  let byReps: (BestSet | undefined)[] | undefined;
  for (let reps = Math.min(set.reps, MOST_RECORD_REPS); reps >= 1; reps--) {
    const before = book.byReps[reps];
    // A heavier set of more reps also stands at all fewer ones.
    if (before && before.result.value! >= set.result.value!) break;
    byReps ??= [...book.byReps];
    byReps[reps] = set;
  }
  return byReps ? { ...book, byReps } : book;
}

/** Above every estimate before; and since a lower bound says nothing of what is above it, above an exact one too. */
function isMaxRecord(book: Book | undefined, { result }: DayMax): boolean {
  if (!book?.max || result.value! <= book.max.max.result.value! + 1e-9) return false;
  return result.bound === 'at least' || book.exact !== undefined;
}

function enterMax(book: Book, max: DayMax, day: number): Book {
  const value = max.result.value!;
  const isHighest = !book.max || value > book.max.max.result.value!;
  const isExact = max.result.bound !== 'at least' && value > (book.exact ?? Number.NEGATIVE_INFINITY);
  if (!isHighest && !isExact) return book;
  return { ...book, ...(isHighest && { max: { max, day } }), ...(isExact && { exact: value }) };
}
