import { toDayNumber as toDay } from '../calendar/iso-date.ts';
import type { SessionEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { type BlockWork, computeBlockWork, type WorkContext } from './block-work.ts';
import { type DayMax, estimateDayMaxes } from './day-max.ts';
import { DEFAULT_FORMULA, type OneRepMaxFormula } from './one-rep-max.ts';
import { addWork, NO_WORK, type Work } from './work.ts';

/** One athlete's part of a session, summed. */
export interface SessionWork {
  readonly record: SessionRecord;
  readonly blocks: readonly BlockWork[];
  readonly total: Work;
  /** Seconds the session lasted. */
  readonly lasted: number | undefined;
  readonly effort: number | undefined;
  readonly bodyMass: BodyMass | undefined;
  readonly context: WorkContext;
}

/** The last weigh-in on or before a day. */
export interface BodyMass {
  readonly grams: number;
  /** Days since 1970-01-01. */
  readonly day: number;
}

interface Cached {
  readonly version: number;
  readonly grams: number | undefined;
  readonly work: SessionWork;
}

/**
 * Sums of sessions, remembered as long as nothing that they rest on changes: the session's text, the definitions, and
 * the body mass of that day.
 */
export class SessionWorks {
  readonly practice: Practice;
  private readonly cache = new WeakMap<SessionEntry, Map<number, Cached>>();
  private readonly weighIns = new WeakMap<
    readonly SessionRecord[],
    { version: number; list: readonly BodyMass[] }
  >();
  /** By the blocks of a session's work, which stay the same objects when the session only moves in its file. */
  private readonly maxes = new WeakMap<readonly BlockWork[], Map<OneRepMaxFormula, readonly DayMax[]>>();

  constructor(practice: Practice) {
    this.practice = practice;
  }

  of(record: SessionRecord): SessionWork {
    const bodyMass = this.bodyMassOn(record.athlete, record.day);
    const byIndex = this.cache.get(record.entry) ?? new Map<number, Cached>();
    this.cache.set(record.entry, byIndex);
    const known = byIndex.get(record.index);
    const version = this.practice.definitionsVersion;
    if (
      known &&
      known.version === version &&
      known.grams === bodyMass?.grams &&
      known.work.record.athlete === record.athlete
    ) {
      // The entry is the same; only its place in the file may have moved.
      return known.work.record.line === record.line ? known.work : { ...known.work, record };
    }
    const work = computeSessionWork(this.practice, record, bodyMass);
    byIndex.set(record.index, { version, grams: bodyMass?.grams, work });
    return work;
  }

  maxesOf(work: SessionWork, formula: OneRepMaxFormula = DEFAULT_FORMULA): readonly DayMax[] {
    const byFormula = this.maxes.get(work.blocks) ?? new Map<OneRepMaxFormula, readonly DayMax[]>();
    this.maxes.set(work.blocks, byFormula);
    const known = byFormula.get(formula);
    if (known) return known;
    const { entry, index } = work.record;
    const maxes = estimateDayMaxes(entry.blocks, index, work.context, entry.place?.text, formula);
    byFormula.set(formula, maxes);
    return maxes;
  }

  /** The athlete's last weigh-in on or before a day, from the definition and from the sessions. */
  bodyMassOn(athlete: string, day: number): BodyMass | undefined {
    return this.weighInsOf(athlete).findLast((weighIn) => weighIn.day <= day);
  }

  weighInsOf(athlete: string): readonly BodyMass[] {
    const records = this.practice.sessionsOf(athlete);
    const version = this.practice.definitionsVersion;
    const known = this.weighIns.get(records);
    if (known?.version === version) return known.list;
    const list = collectWeighIns(this.practice, athlete, records);
    this.weighIns.set(records, { version, list });
    return list;
  }
}

function collectWeighIns(practice: Practice, athlete: string, records: readonly SessionRecord[]): BodyMass[] {
  const defined = (practice.findAthlete(athlete)?.entry.weighIns ?? []).map(({ mass, date }) => ({
    grams: mass.grams,
    day: toDay(date),
  }));
  const logged = records
    .filter(({ entry, groupSize }) => entry.bodyweight && groupSize === 1)
    .map(({ entry, day }) => ({ grams: entry.bodyweight!.mass.grams, day }));
  // A weigh-in of the session itself comes after one of the definition on the same day.
  return [...defined, ...logged].sort((a, b) => a.day - b.day);
}

function computeSessionWork(
  practice: Practice,
  record: SessionRecord,
  bodyMass: BodyMass | undefined,
): SessionWork {
  const { entry, index } = record;
  const sex = practice.findAthlete(record.athlete)?.entry.sex;
  const context: WorkContext = {
    findMovement: (name) => practice.findMovement(name),
    bodyMass: bodyMass?.grams,
    ...(sex && { sex }),
  };
  const blocks = entry.blocks.map((block) => computeBlockWork(block, record, context));
  const pick = <T>(list: { readonly values: readonly T[] } | undefined): T | undefined =>
    list && (list.values.length === 1 ? list.values[0] : list.values[index]);
  return {
    record,
    blocks,
    total: addWork([NO_WORK, ...blocks.map(({ total }) => total)]),
    lasted: pick(entry.lasted),
    effort: pick(entry.efforts),
    bodyMass,
    context,
  };
}
