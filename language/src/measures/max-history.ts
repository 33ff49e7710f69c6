import { toDayNumber } from '../calendar/iso-date.ts';
import type { AthleteEntry, MovementLine, SessionEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Movement } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import type { BlockWork } from './block-work.ts';
import { type DayMax, estimateDayMaxes, readReps, toMovementKey } from './day-max.ts';
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
  /** Stated, tested and retested. */
  readonly proven: Timeline;
  readonly estimated: Timeline;
}

/** The series of a movement without settings, as a `max` line of an athlete means it. */
export function toPlainKey(movementKey: string, perHand: boolean): string {
  return perHand ? `${movementKey} | two implements` : movementKey;
}

/** All maxes of an athlete, built once until a session of theirs or a definition changes. */
export const findMaxHistory = (works: SessionWorks, athlete: string, formula: OneRepMaxFormula): MaxHistory =>
  readHistory(works, athlete, formula);

const readHistory = rememberByWorks(
  (works, athlete, formula): MaxHistory =>
    collectHistory(works, athlete, works.practice.sessionsOf(athlete), formula as OneRepMaxFormula),
);

interface Known {
  readonly records: readonly SessionRecord[];
  readonly basis: object;
  readonly stated: readonly KeyedMax[];
  readonly history: MaxHistory;
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
  if (known?.records === records && known.basis === basis && known.stated === stated) return known.history;
  const history = collectHistory(works, athlete, records, formula, key);
  byKey.set(id, { records, basis, stated, history });
  return history;
}

/** Each of the two is worked out when it is first asked for; of one movement from its lines alone. */
function collectHistory(
  works: SessionWorks,
  athlete: string,
  records: readonly SessionRecord[],
  formula: OneRepMaxFormula,
  key?: string,
): MaxHistory {
  const workOf = (record: SessionRecord): SessionWork =>
    key === undefined ? works.of(record) : works.ofMovement(record, key);
  let proven: Timeline | undefined;
  let estimated: Timeline | undefined;
  return {
    get proven() {
      proven ??= toTimeline([
        ...findStated(works.practice, athlete).filter(
          (max) => key === undefined || toMovementKey(max.key) === key,
        ),
        ...records
          .filter((record) => holdsTest(record.entry))
          .flatMap((record) => listTested(workOf(record), formula)),
      ]);
      return proven;
    },
    get estimated() {
      estimated ??= toTimeline(records.flatMap((record) => listEstimated(works, workOf(record), formula)));
      return estimated;
    },
  };
}

const knownEstimates = new WeakMap<readonly DayMax[], readonly KeyedMax[]>();

/** Of a session whose maxes are the same the same list, since after each edit all sessions are asked. */
function listEstimated(
  works: SessionWorks,
  work: SessionWork,
  formula: OneRepMaxFormula,
): readonly KeyedMax[] {
  const maxes = works.maxesOf(work, formula);
  const known = knownEstimates.get(maxes);
  if (known) return known;
  const estimates = maxes.map((max) => fromDayMax(max, work.record.day, 'estimated'));
  knownEstimates.set(maxes, estimates);
  return estimates;
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

type KeyedMax = Omit<ValidMax, 'boundOnly'> & { readonly key: string };

interface Stated {
  readonly movementsVersion: number;
  readonly movements: readonly (Movement | undefined)[];
  readonly maxes: readonly KeyedMax[];
}

const NONE: readonly KeyedMax[] = [];
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
  for (const { key, ...max } of maxes.toSorted((a, b) => a.day - b.day)) {
    const list = timeline.get(key) ?? [];
    timeline.set(key, list);
    const before = list.at(-1);
    const boundOnly = max.result.bound === 'at least' && (before?.boundOnly ?? true);
    if (!before || replaces(max, before)) list.push({ ...max, boundOnly });
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
