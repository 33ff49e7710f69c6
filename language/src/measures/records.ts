import type { MovementLine } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { BlockWork } from './block-work.ts';
import { type DayMax, readReps, type Series } from './day-max.ts';
import { findHighestProven } from './maxes.ts';
import { DEFAULT_FORMULA, type OneRepMaxFormula } from './one-rep-max.ts';
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
  /** The written set, from 1. */
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
  { record }: SessionWork,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): SessionRecords {
  const { bySession } = findHistory(works, record.athlete, formula);
  return bySession.get(toSessionKey(record)) ?? { sets: [], maxes: [] };
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
    ? walk(
        works,
        records.filter(({ day }) => day <= untilDay),
        formula,
      ).bests
    : findHistory(works, athlete, formula).bests;
}

interface RecordHistory {
  readonly bySession: ReadonlyMap<string, SessionRecords>;
  readonly bests: readonly SeriesBests[];
}

const histories = new WeakMap<readonly SessionRecord[], Map<OneRepMaxFormula, RecordHistory>>();

/** Walked once until a session of the athlete or a definition changes: then the list of sessions is another. */
function findHistory(works: SessionWorks, athlete: string, formula: OneRepMaxFormula): RecordHistory {
  const records = works.practice.sessionsOf(athlete);
  const byFormula = histories.get(records) ?? new Map<OneRepMaxFormula, RecordHistory>();
  histories.set(records, byFormula);
  const history = byFormula.get(formula) ?? walk(works, records, formula);
  byFormula.set(formula, history);
  return history;
}

const toSessionKey = ({ uri, line, index }: SessionRecord): string => `${uri}\n${line}\n${index}`;

/** What a walk through the history knows of one series so far. */
interface Book {
  readonly series: Series;
  readonly byReps: (BestSet | undefined)[];
  /** The highest estimates: of all, and of those that are no lower bounds. */
  max?: { max: DayMax; day: number };
  exact?: number;
}

function walk(
  works: SessionWorks,
  records: readonly SessionRecord[],
  formula: OneRepMaxFormula,
): RecordHistory {
  const books = new Map<string, Book>();
  const bySession = new Map<string, SessionRecords>();
  const openBook = (series: Series): Book => {
    const book = books.get(series.key) ?? { series, byReps: [] };
    books.set(series.key, book);
    return book;
  };
  for (const record of records) {
    const work = works.of(record);
    const sets = listBestSets(work);
    const maxes = works.maxesOf(work, formula);
    const beatsProven = (series: Series, value: number): boolean =>
      value >
      (findHighestProven(works, record.athlete, series, record.day - 1, formula) ?? Number.NEGATIVE_INFINITY);
    const better = sets.flatMap((set) => toRecord(books.get(set.series.key), set) ?? []);
    // Of a heavier body the same work is estimated higher: without a better set it is no record.
    const isOwnWork = ({ added, series }: DayMax): boolean =>
      !added || better.some((set) => set.series.key === series.key);
    const found = {
      sets: better.filter(({ series, reps, result }) => reps > 1 || beatsProven(series, result.value!)),
      maxes: maxes.filter(
        (max) =>
          isMaxRecord(books.get(max.series.key), max) &&
          isOwnWork(max) &&
          beatsProven(max.series, max.result.value!),
      ),
    };
    if (found.sets.length > 0 || found.maxes.length > 0) bySession.set(toSessionKey(record), found);
    for (const set of sets) enterSet(openBook(set.series), set);
    for (const max of maxes) enterMax(openBook(max.series), max, record.day);
  }
  return {
    bySession,
    bests: [...books.values()].map(({ series, byReps, max }) => ({ series, byReps, max })),
  };
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
      if (reps < 1 || grams === undefined || set.unfinished) return [];
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
  const label = `best before, ${rival.reps} reps`;
  const inputs = [...set.result.inputs, { label, value: rival.result.value!, unit: 'kg' as const }];
  return { ...set, result: { ...set.result, inputs } };
}

function enterSet({ byReps }: Book, set: BestSet): void {
  for (let reps = Math.min(set.reps, MOST_RECORD_REPS); reps >= 1; reps--) {
    const before = byReps[reps];
    // A heavier set of more reps also stands at all fewer ones.
    if (before && before.result.value! >= set.result.value!) return;
    byReps[reps] = set;
  }
}

/** Above every estimate before; and since a lower bound says nothing of what is above it, above an exact one too. */
function isMaxRecord(book: Book | undefined, { result }: DayMax): boolean {
  if (!book?.max || result.value! <= book.max.max.result.value! + 1e-9) return false;
  return result.bound === 'at least' || book.exact !== undefined;
}

function enterMax(book: Book, max: DayMax, day: number): void {
  const value = max.result.value!;
  if (!book.max || value > book.max.max.result.value!) book.max = { max, day };
  if (max.result.bound !== 'at least') book.exact = Math.max(value, book.exact ?? value);
}
