import type { Block, ExerciseEntry, MovementLine, SessionEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { type BlockWork, computeBlockWork, type WorkContext } from './block-work.ts';
import { type DayMax, estimateDayMaxes } from './day-max.ts';
import { findLatest } from './latest.ts';
import { DEFAULT_FORMULA, type OneRepMaxFormula } from './one-rep-max.ts';
import { findSeriesKey } from './series-sets.ts';
import { type BodyMass, WeighIns } from './weigh-ins.ts';
import { addWork, NO_WORK, type Work } from './work.ts';

/** One athlete's part of a session, summed. */
export interface SessionWork {
  readonly record: SessionRecord;
  readonly blocks: readonly BlockWork[];
  readonly total: Work;
  /** Seconds the session lasted. */
  readonly lasted: number | undefined;
  readonly effort: number | undefined;
  /** The last weigh-in on or before the day. */
  readonly bodyMass: BodyMass | undefined;
  readonly context: WorkContext;
}

/** What was summed, and the lines and the definitions that their names stood for when that was last looked at. */
interface Cached {
  movementsVersion: number;
  readonly lines: readonly MovementLine[];
  readonly movements: readonly (ExerciseEntry | undefined)[];
  work: SessionWork;
}

/** What sums of an athlete rest on beside the sessions' text and definitions. */
interface Basis {
  readonly weighIns: readonly BodyMass[];
  readonly sex: WorkContext['sex'];
}

/**
 * Sums of sessions, remembered as long as nothing that they rest on changes: the session's text, the definitions of the
 * movements in it, and the athlete's sex and body mass on that day.
 */
export class SessionWorks {
  readonly practice: Practice;
  /** By the athlete's place in the session; of a movement's lines alone, by that and its key. */
  private readonly cache = new WeakMap<SessionEntry, Map<number | string, Cached>>();
  private readonly weighIns: WeighIns;
  private readonly bases = new Map<string, Basis & { readonly edition: number }>();
  private readonly movementBases = new Map<
    string,
    Basis & { readonly movement: ExerciseEntry | undefined }
  >();
  /** By the blocks of a session's work, which stay the same objects as long as its sums are the same. */
  private readonly maxes = new WeakMap<readonly BlockWork[], Map<OneRepMaxFormula, readonly DayMax[]>>();

  constructor(practice: Practice) {
    this.practice = practice;
    this.weighIns = new WeighIns(practice);
  }

  of(record: SessionRecord): SessionWork {
    return this.remember(record, record.index, () => record.entry.blocks);
  }

  /**
   * The lines of one movement alone, by its key (of one that nothing defines, its name in lower case): what others are
   * defined as takes nothing from them.
   */
  ofMovement(record: SessionRecord, key: string): SessionWork {
    const { practice } = this;
    const isOfIt = ({ name }: MovementLine): boolean => findSeriesKey(practice, name.text) === key;
    return this.remember(record, `${record.index} ${key}`, () =>
      record.entry.blocks.flatMap((block) => {
        const lines = block.lines.filter(isOfIt);
        if (lines.length === 0) return [];
        return [lines.length === block.lines.length ? block : { ...block, lines }];
      }),
    );
  }

  /** The same object as long as {@link ofMovement} gives the same for a session whose text and lines are the same. */
  basisOfMovement(athlete: string, key: string): object {
    const { weighIns, sex } = this.basisOf(athlete);
    const movement = this.practice.findMovement(key)?.entry;
    const id = `${athlete}\n${key}`;
    const known = this.movementBases.get(id);
    if (known?.movement === movement && known?.weighIns === weighIns && known.sex === sex) return known;
    const basis = { movement, weighIns, sex };
    this.movementBases.set(id, basis);
    return basis;
  }

  maxesOf(work: SessionWork, formula: OneRepMaxFormula = DEFAULT_FORMULA): readonly DayMax[] {
    const byFormula = this.maxes.get(work.blocks) ?? new Map<OneRepMaxFormula, readonly DayMax[]>();
    this.maxes.set(work.blocks, byFormula);
    const known = byFormula.get(formula);
    if (known) return known;
    const { entry, index } = work.record;
    const blocks = work.blocks.map(({ block }) => block);
    const maxes = estimateDayMaxes(blocks, index, work.context, entry.place?.text, formula);
    byFormula.set(formula, maxes);
    return maxes;
  }

  /** The athlete's last weigh-in on or before a day, from the definition and from the sessions. */
  bodyMassOn(athlete: string, day: number): BodyMass | undefined {
    return findLatest(this.weighInsOf(athlete), day);
  }

  /** In order of days. The list and what is in it stay the same objects as long as they say the same. */
  weighInsOf(athlete: string): readonly BodyMass[] {
    return this.weighIns.of(athlete);
  }

  private remember(record: SessionRecord, id: number | string, select: () => readonly Block[]): SessionWork {
    const { practice } = this;
    const { entry } = record;
    const { weighIns, sex } = this.basisOf(record.athlete);
    const bodyMass = findLatest(weighIns, record.day);
    const byId = this.cache.get(entry) ?? new Map<number | string, Cached>();
    this.cache.set(entry, byId);
    const known = onlyOfBody(byId.get(id), bodyMass, sex);
    const { movementsVersion } = practice;
    if (known?.movementsVersion === movementsVersion) return moveWork(known, record, bodyMass);
    const blocks = select();
    const lines = blocks.flatMap((block) => block.lines);
    const movements = lines.map(({ name }) => practice.findMovement(name.text)?.entry);
    // A definition that no line names takes nothing from the sums.
    if (known && isSameList(known.lines, lines) && isSameList(known.movements, movements)) {
      known.movementsVersion = movementsVersion;
      return moveWork(known, record, bodyMass);
    }
    const before = known ?? this.findEarlier(entry, id, bodyMass, sex);
    const unchanged = before ? listUnchanged(before, blocks, movements) : [];
    const work = computeSessionWork(practice, record, blocks, bodyMass, sex, unchanged);
    byId.set(id, { movementsVersion, lines, movements, work });
    return work;
  }

  /** What was summed of a session before the edit that made it this one. */
  private findEarlier(
    entry: SessionEntry,
    id: number | string,
    bodyMass: BodyMass | undefined,
    sex: WorkContext['sex'],
  ): Cached | undefined {
    const earlier = this.practice.earlierOf(entry);
    return onlyOfBody(earlier && this.cache.get(earlier)?.get(id), bodyMass, sex);
  }

  private basisOf(athlete: string): Basis {
    const { edition } = this.practice;
    const known = this.bases.get(athlete);
    if (known?.edition === edition) return known;
    const sex = this.practice.findAthlete(athlete)?.entry.sex;
    const basis = { edition, weighIns: this.weighInsOf(athlete), sex };
    this.bases.set(athlete, basis);
    return basis;
  }
}

/** The sums are the same; the session may stand elsewhere, or the same mass was weighed again. */
function moveWork(
  known: { work: SessionWork },
  record: SessionRecord,
  bodyMass: BodyMass | undefined,
): SessionWork {
  const { work } = known;
  if (work.record !== record || work.bodyMass !== bodyMass) known.work = { ...work, record, bodyMass };
  return known.work;
}

function onlyOfBody(
  cached: Cached | undefined,
  bodyMass: BodyMass | undefined,
  sex: WorkContext['sex'],
): Cached | undefined {
  const context = cached?.work.context;
  return context?.bodyMass === bodyMass?.grams && context?.sex === sex ? cached : undefined;
}

/** By their place, the sums of those blocks that were summed before and whose movements are all defined as they were. */
function listUnchanged(
  before: Cached,
  blocks: readonly Block[],
  movements: readonly (ExerciseEntry | undefined)[],
): (BlockWork | undefined)[] {
  const summed = new Map<Block, { readonly sums: BlockWork; readonly movements: Cached['movements'] }>();
  let from = 0;
  for (const sums of before.work.blocks) {
    const to = from + sums.block.lines.length;
    summed.set(sums.block, { sums, movements: before.movements.slice(from, to) });
    from = to;
  }
  from = 0;
  return blocks.map((block) => {
    const to = from + block.lines.length;
    const known = summed.get(block);
    const isSame = known && isSameList(known.movements, movements.slice(from, to));
    from = to;
    return isSame ? known.sums : undefined;
  });
}

function isSameList<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((item, index) => item === b[index]);
}

function computeSessionWork(
  practice: Practice,
  record: SessionRecord,
  written: readonly Block[],
  bodyMass: BodyMass | undefined,
  sex: WorkContext['sex'],
  known: readonly (BlockWork | undefined)[],
): SessionWork {
  const { entry, index } = record;
  const context: WorkContext = {
    findMovement: (name) => practice.findMovement(name),
    bodyMass: bodyMass?.grams,
    ...(sex && { sex }),
  };
  const blocks = written.map((block, at) => known[at] ?? computeBlockWork(block, record, context));
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
