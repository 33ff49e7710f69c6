import { toDayNumber as toDay } from '../calendar/iso-date.ts';
import type { AthleteEntry, ExerciseEntry, SessionEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { type BlockWork, computeBlockWork, type WorkContext } from './block-work.ts';
import { type DayMax, estimateDayMaxes } from './day-max.ts';
import { findLatest } from './latest.ts';
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
  /** The definitions that the lines' names stood for, line by line, and when that was last seen to be so. */
  movementsVersion: number;
  readonly movements: readonly (ExerciseEntry | undefined)[];
  work: SessionWork;
}

interface Basis {
  readonly movementsVersion: number;
  readonly weighIns: readonly BodyMass[];
  readonly sex: WorkContext['sex'];
}

interface WeighIns {
  readonly records: readonly SessionRecord[];
  readonly athlete: AthleteEntry | undefined;
  readonly list: readonly BodyMass[];
}

/**
 * Sums of sessions, remembered as long as nothing that they rest on changes: the session's text, the definitions of the
 * movements in it, and the athlete's sex and body mass on that day.
 */
export class SessionWorks {
  readonly practice: Practice;
  /** By the athlete's place in the session. */
  private readonly cache = new WeakMap<SessionEntry, (Cached | undefined)[]>();
  private readonly weighIns = new Map<string, WeighIns>();
  private readonly bases = new Map<string, { readonly edition: number; readonly basis: Basis }>();
  /** By the blocks of a session's work, which stay the same objects as long as its sums are the same. */
  private readonly maxes = new WeakMap<readonly BlockWork[], Map<OneRepMaxFormula, readonly DayMax[]>>();

  constructor(practice: Practice) {
    this.practice = practice;
  }

  of(record: SessionRecord): SessionWork {
    const { entry, index } = record;
    const { weighIns, sex } = this.basisOf(record.athlete);
    const bodyMass = findLatest(weighIns, record.day);
    const byIndex = this.cache.get(entry) ?? [];
    this.cache.set(entry, byIndex);
    const known = byIndex[index];
    if (known && this.isValid(known, bodyMass, sex)) {
      const { work } = known;
      // The sums are the same; the session may stand elsewhere, or the same mass was weighed again.
      if (work.record !== record || work.bodyMass !== bodyMass) known.work = { ...work, record, bodyMass };
      return known.work;
    }
    const work = computeSessionWork(this.practice, record, bodyMass, sex);
    const { movementsVersion } = this.practice;
    byIndex[index] = { movementsVersion, movements: this.resolveLines(entry), work };
    return work;
  }

  /**
   * What an athlete's sums rest on beside the sessions' text: the same object as long as the sums of a session whose
   * text did not change are the same for sure.
   */
  basisOf(athlete: string): Basis {
    const { edition } = this.practice;
    const known = this.bases.get(athlete);
    if (known?.edition === edition) return known.basis;
    const basis = {
      movementsVersion: this.practice.movementsVersion,
      weighIns: this.weighInsOf(athlete),
      sex: this.practice.findAthlete(athlete)?.entry.sex,
    };
    const isSame =
      known?.basis.movementsVersion === basis.movementsVersion &&
      known.basis.weighIns === basis.weighIns &&
      known.basis.sex === basis.sex;
    const current = isSame ? known.basis : basis;
    this.bases.set(athlete, { edition, basis: current });
    return current;
  }

  /** A definition that no line of the session names takes nothing from it. */
  private isValid(
    known: Cached,
    bodyMass: BodyMass | undefined,
    sex: WorkContext['sex'] | undefined,
  ): boolean {
    const { record, context } = known.work;
    if (context.bodyMass !== bodyMass?.grams || context.sex !== sex) return false;
    const { movementsVersion } = this.practice;
    if (known.movementsVersion === movementsVersion) return true;
    const movements = this.resolveLines(record.entry);
    if (!movements.every((movement, line) => movement === known.movements[line])) return false;
    known.movementsVersion = movementsVersion;
    return true;
  }

  private resolveLines({ blocks }: SessionEntry): (ExerciseEntry | undefined)[] {
    return blocks.flatMap(({ lines }) =>
      lines.map(({ name }) => this.practice.findMovement(name.text)?.entry),
    );
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
    return findLatest(this.weighInsOf(athlete), day);
  }

  /** In order of days. The list and what is in it stay the same objects as long as they say the same. */
  weighInsOf(athlete: string): readonly BodyMass[] {
    const records = this.practice.sessionsOf(athlete);
    const entry = this.practice.findAthlete(athlete)?.entry;
    const known = this.weighIns.get(athlete);
    if (known?.records === records && known.athlete === entry) return known.list;
    const fresh = collectWeighIns(entry, records);
    const list = known && isSameList(known.list, fresh) ? known.list : fresh;
    this.weighIns.set(athlete, { records, athlete: entry, list });
    return list;
  }
}

function isSameList(a: readonly BodyMass[], b: readonly BodyMass[]): boolean {
  return (
    a.length === b.length &&
    a.every(({ grams, day }, index) => grams === b[index]!.grams && day === b[index]!.day)
  );
}

function collectWeighIns(athlete: AthleteEntry | undefined, records: readonly SessionRecord[]): BodyMass[] {
  const weighIns = (athlete?.weighIns ?? []).map(({ mass, date }) => ({
    grams: mass.grams,
    day: toDay(date),
  }));
  for (const { entry, day, groupSize } of records)
    if (entry.bodyweight && groupSize === 1) weighIns.push({ grams: entry.bodyweight.mass.grams, day });
  // A weigh-in of the session itself comes after one of the definition on the same day.
  return weighIns.sort((a, b) => a.day - b.day);
}

function computeSessionWork(
  practice: Practice,
  record: SessionRecord,
  bodyMass: BodyMass | undefined,
  sex: WorkContext['sex'],
): SessionWork {
  const { entry, index } = record;
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
