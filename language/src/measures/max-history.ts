import { toDayNumber } from '../calendar/iso-date.ts';
import type { AthleteEntry, MovementLine, SessionEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Movement } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import type { BlockWork } from './block-work.ts';
import { type DayMax, estimateDayMaxes } from './day-max.ts';
import { type Mapped, mapAgain } from './map-again.ts';
import { readReps, toMovementKey } from './max-candidates.ts';
import type { OneRepMaxFormula } from './one-rep-max.ts';
import { rememberByWorks } from './remember.ts';
import { type Result, toResult } from './result.ts';
import { isAdded, listSeriesSets, nameMovement, readExternal } from './series-sets.ts';
import type { SessionWork, SessionWorks } from './session-work.ts';

/** Where a max comes from; a test of more reps than one gives an estimate. */
export type MaxKind = 'stated' | 'retested' | 'tested' | 'estimated from test' | 'estimated';

/** The max of a movement that is valid on a day. */
export interface ValidMax {
  /** Kilograms; of the added load where body weight is the rest (`added`); of one hand where two are held (`perHand`). */
  readonly result: Result;
  readonly kind: MaxKind;
  /** The day it holds from, in days since 1970-01-01. */
  readonly day: number;
  readonly added: boolean;
  readonly perHand: boolean;
  /** Up to this day only lower bounds of it were known: the max may be far above. */
  readonly boundOnly: boolean;
}

/** Maxes of each series in order of days, each valid until the next. */
export type Timeline = ReadonlyMap<string, readonly ValidMax[]>;

export interface MaxHistory {
  /** Stated and retested, as the athlete's entry says. */
  readonly stated: Timeline;
  /** Stated, tested and retested. */
  readonly proven: Timeline;
  readonly estimated: Timeline;
}

type KeyedMax = Omit<ValidMax, 'boundOnly'> & { readonly key: string };

const NONE: readonly KeyedMax[] = [];

/** The series of a movement without settings, as a `max` line of an athlete means it. */
export function toPlainKey(movementKey: string, perHand: boolean): string {
  return perHand ? `${movementKey} | two implements` : movementKey;
}

/** All maxes of an athlete, built once until a session of theirs or a definition changes. */
export const findMaxHistory = (works: SessionWorks, athlete: string, formula: OneRepMaxFormula): MaxHistory =>
  readHistory(works, athlete, formula);

const readHistory = rememberByWorks(
  (works, athlete, formula): MaxHistory =>
    new History({
      works,
      formula: formula as OneRepMaxFormula,
      records: works.practice.sessionsOf(athlete),
      stated: findStated(works.practice, athlete),
      workOf: (record) => works.of(record),
    }),
);

interface Known {
  readonly records: readonly SessionRecord[];
  readonly basis: object;
  readonly movementsVersion: number;
  readonly stated: readonly KeyedMax[];
  readonly history: History;
}

const histories = new WeakMap<SessionWorks, Map<string, Known>>();

/** Those of the series of one movement, by its key: an edit of sessions without the movement changes nothing of them. */
export function findMaxesOf(
  works: SessionWorks,
  athlete: string,
  key: string,
  formula: OneRepMaxFormula,
): MaxHistory {
  const records = works.practice.sessionsWith(athlete, key);
  const basis = works.basisOfMovement(athlete, key);
  const stated = findStated(works.practice, athlete);
  const byKey = histories.get(works) ?? new Map<string, Known>();
  histories.set(works, byKey);
  const id = `${athlete}\n${key}\n${formula}`;
  const known = byKey.get(id);
  const isSame = known?.basis === basis && known.stated === stated;
  if (isSame && known.records === records) return known.history;
  const { movementsVersion } = works.practice;
  const history = new History(
    {
      works,
      formula,
      records,
      stated: stated.filter((max) => toMovementKey(max.key) === key),
      workOf: (record) => works.ofMovement(record, key),
    },
    // Which lines are of the movement is the same for sure while no name may mean another.
    isSame && known.movementsVersion === movementsVersion ? known.history : undefined,
  );
  byKey.set(id, { records, basis, movementsVersion, stated, history });
  return history;
}

interface Ask {
  readonly works: SessionWorks;
  readonly formula: OneRepMaxFormula;
  readonly records: readonly SessionRecord[];
  readonly stated: readonly KeyedMax[];
  readonly workOf: (record: SessionRecord) => SessionWork;
}

type BySession = Mapped<SessionRecord, readonly KeyedMax[]>;

/** Each of the two is worked out when it is first asked for, session by session: after an edit for what is new alone. */
class History implements MaxHistory {
  private readonly ask: Ask;
  private tests: BySession | undefined;
  private estimates: BySession | undefined;
  private knownStated: Timeline | undefined;
  private knownProven: Timeline | undefined;
  private knownEstimated: Timeline | undefined;

  constructor(ask: Ask, before?: History) {
    this.ask = ask;
    this.tests = before?.tests;
    this.estimates = before?.estimates;
  }

  get stated(): Timeline {
    this.knownStated ??= toTimeline(this.ask.stated);
    return this.knownStated;
  }

  get proven(): Timeline {
    if (this.knownProven) return this.knownProven;
    const { records, formula, stated, workOf } = this.ask;
    const listTests = (record: SessionRecord): readonly KeyedMax[] =>
      holdsTest(record.entry) ? listTested(workOf(record), formula) : NONE;
    this.tests = mapAgain(records, listTests, this.tests);
    this.knownProven = toTimeline([...stated, ...this.tests.values.flat()]);
    return this.knownProven;
  }

  get estimated(): Timeline {
    if (this.knownEstimated) return this.knownEstimated;
    const { works, records, formula, workOf } = this.ask;
    const listEstimates = (record: SessionRecord): readonly KeyedMax[] =>
      works.maxesOf(workOf(record), formula).map((max) => fromDayMax(max, record.day, 'estimated'));
    this.estimates = mapAgain(records, listEstimates, this.estimates);
    this.knownEstimated = toTimeline(this.estimates.values.flat());
    return this.knownEstimated;
  }
}

const testing = new WeakMap<SessionEntry, boolean>();

/** Most sessions test nothing, and each edit asks all of them. */
function holdsTest(entry: SessionEntry): boolean {
  const known = testing.get(entry);
  if (known !== undefined) return known;
  const holds = entry.blocks.some(({ lines }) => lines.some(isTest));
  testing.set(entry, holds);
  return holds;
}

interface Stated {
  readonly movementsVersion: number;
  readonly movements: readonly (Movement | undefined)[];
  readonly maxes: readonly KeyedMax[];
}

const knownStated = new WeakMap<AthleteEntry, Stated>();

/** What an athlete's definition states: the same list as long as it says the same and means the same movements. */
function findStated(practice: Practice, athlete: string): readonly KeyedMax[] {
  const entry = practice.findAthlete(athlete)?.entry;
  if (!entry) return NONE;
  const known = knownStated.get(entry);
  const { movementsVersion } = practice;
  if (known?.movementsVersion === movementsVersion) return known.maxes;
  const movements = [...entry.maxes, ...entry.retests].map(({ movement }) =>
    practice.findMovement(movement.text),
  );
  const isSame = known?.movements.every((movement, index) => movement?.entry === movements[index]?.entry);
  const maxes = known && isSame ? known.maxes : listStated(practice, entry);
  knownStated.set(entry, { movementsVersion, movements, maxes });
  return maxes;
}

function listStated(practice: Practice, { maxes, retests }: AthleteEntry): KeyedMax[] {
  const stated = maxes.flatMap(({ movement: { text }, load, date }): KeyedMax[] => {
    const movement = practice.findMovement(text);
    const grams = load && readExternal(load, movement);
    if (grams === undefined || !date) return [];
    const perHand = load?.kind === 'mass' && load.implements === 2;
    const result = toResult({
      value: grams / 1000,
      unit: 'kg',
      method: 'stated-max',
      inputs: [{ label: `stated on ${date}`, value: grams / 1000, unit: 'kg' }],
    });
    const key = toPlainKey(nameMovement(movement, text).key, perHand);
    return [{ key, result, kind: 'stated', day: toDayNumber(date), added: isAdded(load, movement), perHand }];
  });
  const retested = retests.flatMap(({ movement: { text }, masses, date }): KeyedMax[] => {
    if (masses.length === 0 || !date) return [];
    const movement = practice.findMovement(text);
    const result = toResult({
      value: Math.max(...masses.map(({ grams }) => grams)) / 1000,
      unit: 'kg',
      method: 'retested-max',
      inputs: masses.map(({ grams }, index) => ({
        label: `test ${index + 1}`,
        value: grams / 1000,
        unit: 'kg',
      })),
    });
    const { key } = nameMovement(movement, text);
    return [
      {
        key,
        result,
        kind: 'retested',
        day: toDayNumber(date),
        added: isAdded(undefined, movement),
        perHand: false,
      },
    ];
  });
  return [...stated, ...retested];
}

const isTest = ({ purpose }: MovementLine): boolean => purpose === 'test';

const knownTests = new WeakMap<readonly BlockWork[], Map<OneRepMaxFormula, readonly KeyedMax[]>>();

function listTested(work: SessionWork, formula: OneRepMaxFormula): readonly KeyedMax[] {
  const byFormula = knownTests.get(work.blocks) ?? new Map<OneRepMaxFormula, readonly KeyedMax[]>();
  knownTests.set(work.blocks, byFormula);
  const tested = byFormula.get(formula) ?? findTested(work, formula);
  byFormula.set(formula, tested);
  return tested;
}

/** The best made single of each series that a session tested, else the estimate of its test sets. */
function findTested(work: SessionWork, formula: OneRepMaxFormula): KeyedMax[] {
  const { entry, index, day } = work.record;
  const blocks = work.blocks.map(({ block }) => block);
  const singles = new Map<string, KeyedMax>();
  for (const { set, series, movement, setNumber } of listSeriesSets(work)) {
    const grams = readExternal(set.group.load, movement);
    if (!isTest(set.line) || readReps(set.amount)?.reps !== 1 || grams === undefined) continue;
    const best = singles.get(series.key);
    if (best && best.result.value! >= grams / 1000) continue;
    const value = grams / 1000;
    const inputs = [{ label: `set ${setNumber}: load`, value, unit: 'kg' as const }];
    const result = toResult({ value, unit: 'kg', method: 'tested-max', inputs });
    const { key, perHand } = series;
    singles.set(key, { key, result, kind: 'tested', day, added: isAdded(set.group.load, movement), perHand });
  }
  const estimates = estimateDayMaxes(blocks, index, work.context, entry.place?.text, formula, isTest)
    .filter(({ series }) => !singles.has(series.key))
    .map((max) => fromDayMax(max, day, 'estimated from test'));
  return [...singles.values(), ...estimates];
}

function fromDayMax({ series, result, added }: DayMax, day: number, kind: MaxKind): KeyedMax {
  return { key: series.key, result, kind, day, added, perHand: series.perHand };
}

function toTimeline(maxes: readonly KeyedMax[]): Timeline {
  const timeline = new Map<string, ValidMax[]>();
  for (const max of maxes.toSorted((a, b) => a.day - b.day)) {
    const { key, result, kind, day, added, perHand } = max;
    const list = timeline.get(key) ?? [];
    timeline.set(key, list);
    const before = list.at(-1);
    const boundOnly = result.bound === 'at least' && (before?.boundOnly ?? true);
    // Written out, since each edit makes hundreds of them anew.
    if (!before || replaces(max, before)) list.push({ result, kind, day, added, perHand, boundOnly });
  }
  return timeline;
}

/** For so many days a lower bound does not push out a higher max: it says nothing against it (common practice). */
const DAYS_BEFORE_LOWER_BOUND = 90;

function replaces(max: Omit<ValidMax, 'boundOnly'>, before: ValidMax): boolean {
  const higher = max.result.value! > before.result.value!;
  if (max.day === before.day) {
    const [estimate, wasEstimate] = [max, before].map(({ kind }) => kind.startsWith('estimated'));
    return estimate === wasEstimate ? higher : !estimate;
  }
  if (max.result.bound !== 'at least' || max.kind !== 'estimated') return true;
  return higher || max.day - before.day > DAYS_BEFORE_LOWER_BOUND;
}
