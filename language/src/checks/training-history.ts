import { findCell } from '../measures/expand-sets.ts';
import type { SessionEntry } from '../model/entry.ts';
import type { Amount, Cell, MassLoad, SetGroup } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { implementOf } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { compareRecords, countUpTo } from '../practice/session-list.ts';
import { settle } from '../reading/settle.ts';
import { isPreparation } from './check-context.ts';

/** Working sets with a mass, as they are written; `reps` are those of one side. */
export interface LoadedSet {
  readonly reps: number;
  readonly load: MassLoad;
  readonly group: SetGroup;
}

/** What one session, or a line of it, did of one movement with a mass. */
interface LoadedMovement {
  readonly key: string;
  readonly sets: readonly LoadedSet[];
  /** Kilograms of a machine are as marked, and mean something else on another machine. */
  readonly onStack: boolean;
}

/** One movement in one session of an athlete. */
export interface MovementDay {
  readonly record: SessionRecord;
  readonly sets: readonly LoadedSet[];
}

/** What an athlete's sessions with a movement did of it: filled in where it was asked for. */
interface MovementLog {
  readonly records: readonly SessionRecord[];
  /** By the same index. */
  readonly sets: (readonly LoadedSet[] | undefined)[];
}

interface Known {
  readonly version: number;
  /** By the list of the sessions, which is another one after any of them changed. */
  readonly logs: WeakMap<readonly SessionRecord[], MovementLog>;
  /** By the same list, the last session in which the movement was worked on. */
  readonly lastDone: WeakMap<readonly SessionRecord[], SessionRecord | undefined>;
  /** By cell, which is the same object wherever the same line stands. */
  readonly cells: WeakMap<Cell, LoadedMovement>;
}

const knownByPractice = new WeakMap<Practice, Known>();

function findKnown(practice: Practice): Known {
  const known = knownByPractice.get(practice);
  if (known?.version === practice.definitionsVersion) return known;
  const version = practice.definitionsVersion;
  const fresh = { version, logs: new WeakMap(), lastDone: new WeakMap(), cells: new WeakMap() };
  knownByPractice.set(practice, fresh);
  return fresh;
}

/** Lets go of what was looked up, which takes room for years and is looked up again where it is asked for. */
export function forgetHistory(practice: Practice): void {
  knownByPractice.delete(practice);
}

/** The last session of the athlete before one, of those wanted. */
export function findSessionBefore(
  practice: Practice,
  record: SessionRecord,
  isWanted: (entry: SessionEntry) => boolean = () => true,
): SessionRecord | undefined {
  const records = practice.sessionsOf(record.athlete);
  for (let at = countUpTo(records, record, itself) - 1; at >= 0; at--) {
    const before = records[at]!;
    if (before.entry !== record.entry && isWanted(before.entry)) return before;
  }
  return undefined;
}

function itself(record: SessionRecord): SessionRecord {
  return record;
}

function findLog(practice: Practice, known: Known, athlete: string, key: string): MovementLog {
  const records = practice.sessionsWith(athlete, key);
  const before = known.logs.get(records);
  if (before) return before;
  const log = { records, sets: new Array<readonly LoadedSet[] | undefined>(records.length) };
  known.logs.set(records, log);
  return log;
}

function readLog(
  practice: Practice,
  known: Known,
  { records, sets }: MovementLog,
  at: number,
  key: string,
): readonly LoadedSet[] {
  sets[at] ??= collectSets(practice, known, records[at]!, key);
  return sets[at];
}

function collectSets(
  practice: Practice,
  known: Known,
  record: SessionRecord,
  key: string,
): readonly LoadedSet[] {
  const cells = listCells(practice, known, record).filter((cell) => cell.key === key);
  return cells.length === 1 ? cells[0]!.sets : settle(cells.flatMap(({ sets }) => sets));
}

/** The sessions before one in which its athlete did a movement with a mass, from the last one back. */
export function* listLoadedBefore(
  practice: Practice,
  record: SessionRecord,
  key: string,
): Iterable<MovementDay> {
  const known = findKnown(practice);
  const log = findLog(practice, known, record.athlete, key);
  for (let at = countUpTo(log.records, record, itself) - 1; at >= 0; at--) {
    const before = log.records[at]!;
    // In a group that names somebody twice, two records are of one session.
    if (before.entry === record.entry) continue;
    const sets = readLog(practice, known, log, at, key);
    if (sets.length > 0) yield { record: before, sets };
  }
}

/**
 * Whether each set of a movement has one like it in a session before, back to a day: mostly the last session has, so
 * that hardly any is looked at.
 */
export function haveAllLike(
  practice: Practice,
  {
    record,
    key,
    sinceDay,
  }: { readonly record: SessionRecord; readonly key: string; readonly sinceDay: number },
  sets: readonly LoadedSet[],
  isLike: (set: LoadedSet, before: LoadedSet, session: SessionEntry) => boolean,
): boolean {
  const known = findKnown(practice);
  const log = findLog(practice, known, record.athlete, key);
  const count = countUpTo(log.records, record, itself);
  // Those of the session itself, for the next one to find.
  if (log.records[count - 1] === record) log.sets[count - 1] = sets;
  return sets.every((set) => {
    for (let at = count - 1; at >= 0 && log.records[at]!.day >= sinceDay; at--) {
      const { entry } = log.records[at]!;
      if (entry === record.entry) continue;
      if (readLog(practice, known, log, at, key).some((before) => isLike(set, before, entry))) return true;
    }
    return false;
  });
}

/** Whether the athlete worked on a movement in a session after one, with a load or without. */
export function isDoneAfter(practice: Practice, record: SessionRecord, key: string): boolean {
  const records = practice.sessionsWith(record.athlete, key);
  const { lastDone } = findKnown(practice);
  if (!lastDone.has(records))
    lastDone.set(
      records,
      records.findLast(({ entry }) => isDone(practice, entry, key)),
    );
  const last = lastDone.get(records);
  return last !== undefined && compareRecords(last, record) > 0;
}

function isDone(practice: Practice, { blocks }: SessionEntry, key: string): boolean {
  return blocks.some(({ lines }) =>
    lines.some(({ purpose, name }) => purpose === 'work' && practice.keyOf(name.text) === key),
  );
}

/** The movements of one athlete's part in a session that have a mass, each once. */
export function listLoaded(practice: Practice, record: SessionRecord): readonly LoadedMovement[] {
  const loaded: LoadedMovement[] = [];
  for (const cell of listCells(practice, findKnown(practice), record)) {
    const at = loaded.findIndex(({ key }) => key === cell.key);
    if (at < 0) loaded.push(cell);
    else loaded[at] = { ...loaded[at]!, sets: [...loaded[at]!.sets, ...cell.sets] };
  }
  return loaded;
}

/** The cells of one athlete's part in a session that have a mass, but for preparations. */
function listCells(practice: Practice, known: Known, { entry, index }: SessionRecord): LoadedMovement[] {
  const cells: LoadedMovement[] = [];
  for (const block of entry.blocks) {
    for (const line of block.lines) {
      const cell = findCell(line, index);
      if (!cell || isPreparation({ block, line })) continue;
      const loaded = known.cells.get(cell) ?? readLoaded(practice, known, line.name.text, cell);
      if (loaded.sets.length > 0) cells.push(loaded);
    }
  }
  return cells;
}

function readLoaded(practice: Practice, known: Known, name: string, cell: Cell): LoadedMovement {
  const movement = practice.findMovement(name);
  const loaded = {
    key: movement?.key ?? '',
    onStack: implementOf(movement) === 'stack',
    sets: movement ? settle(cell.sets.flatMap(readLoadedSet)) : [],
  };
  known.cells.set(cell, loaded);
  return loaded;
}

function readLoadedSet(group: SetGroup): LoadedSet[] {
  const reps = group.amount && countReps(group.amount);
  return reps && group.load?.kind === 'mass' ? [{ reps, load: group.load, group }] : [];
}

/** Reps made in one go, of one side; of uneven sides the fewer. Undefined for what is not counted in reps. */
export function countReps(amount: Amount): number | undefined {
  switch (amount.kind) {
    case 'quantity':
      return amount.quantity.measure === 'reps' ? amount.quantity.value : undefined;
    case 'sides':
      return amount.left.measure === 'reps' ? Math.min(amount.left.value, amount.right.value) : undefined;
    case 'attempt':
      return amount.made;
    default:
      return undefined;
  }
}
