import { findCell } from '../measures/expand-sets.ts';
import type { SessionEntry } from '../model/entry.ts';
import type { Amount, Cell, MassLoad, SetGroup } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { implementOf } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { countUpTo } from '../practice/session-list.ts';
import { isPreparation } from './check-context.ts';

/** Working sets with a mass, as they are written; `reps` are those of one side. */
export interface LoadedSet {
  readonly reps: number;
  readonly load: MassLoad;
  readonly group: SetGroup;
}

/** What one session did of one movement with a mass. */
interface LoadedMovement {
  readonly sets: readonly LoadedSet[];
  /** Kilograms of a machine are as marked, and mean something else on another machine. */
  readonly onStack: boolean;
}

/** One movement in one session of an athlete. */
export interface MovementDay extends LoadedMovement {
  readonly record: SessionRecord;
}

/** What one line says of its movement. */
interface LoadedCell extends LoadedMovement {
  readonly key: string;
}

/** By a movement's key. */
type LoadedByMovement = ReadonlyMap<string, LoadedMovement>;

interface Known {
  version: number;
  sessions: WeakMap<SessionEntry, Map<number, LoadedByMovement>>;
  /** By cell, which is the same object wherever the same line stands. */
  cells: WeakMap<Cell, LoadedCell>;
}

const knownByPractice = new WeakMap<Practice, Known>();

function findKnown(practice: Practice): Known {
  const known = knownByPractice.get(practice);
  if (known?.version === practice.definitionsVersion) return known;
  const fresh = { version: practice.definitionsVersion, sessions: new WeakMap(), cells: new WeakMap() };
  knownByPractice.set(practice, fresh);
  return fresh;
}

/** The sessions before one, from the last one back. */
export function listSessionsBefore(practice: Practice, record: SessionRecord): Iterable<SessionRecord> {
  return listBefore(practice.sessionsOf(record.athlete), record);
}

function* listBefore(records: readonly SessionRecord[], record: SessionRecord): Iterable<SessionRecord> {
  for (let at = countUpTo(records, record, itself) - 1; at >= 0; at--) {
    // In a group that names somebody twice, two records are of one session.
    if (records[at]!.entry !== record.entry) yield records[at]!;
  }
}

function itself(record: SessionRecord): SessionRecord {
  return record;
}

/** The sessions before one in which its athlete did a movement with a mass, from the last one back. */
export function* listLoadedBefore(
  practice: Practice,
  record: SessionRecord,
  key: string,
): Iterable<MovementDay> {
  const known = findKnown(practice);
  for (const before of listBefore(practice.sessionsWith(record.athlete, key), record)) {
    const loaded = findLoaded(practice, known, before).get(key);
    if (loaded) yield { record: before, ...loaded };
  }
}

/** Whether the athlete worked on a movement in a session after one, with a load or without. */
export function isDoneAfter(practice: Practice, record: SessionRecord, key: string): boolean {
  const records = practice.sessionsWith(record.athlete, key);
  const count = countUpTo(records, record, itself);
  for (let at = records.length - 1; at >= count; at--) {
    const isDone = records[at]!.entry.blocks.some(({ lines }) =>
      lines.some(({ purpose, name }) => purpose === 'work' && practice.keyOf(name.text) === key),
    );
    if (isDone) return true;
  }
  return false;
}

/** The loaded movements of one athlete's part in a session. */
export function listLoaded(practice: Practice, record: SessionRecord): LoadedByMovement {
  return findLoaded(practice, findKnown(practice), record);
}

function findLoaded(
  practice: Practice,
  known: Known,
  { entry, index }: Pick<SessionRecord, 'entry' | 'index'>,
): LoadedByMovement {
  const byIndex = known.sessions.get(entry) ?? new Map<number, LoadedByMovement>();
  known.sessions.set(entry, byIndex);
  const found = byIndex.get(index) ?? collectLoaded(practice, known, entry, index);
  byIndex.set(index, found);
  return found;
}

function collectLoaded(
  practice: Practice,
  known: Known,
  entry: SessionEntry,
  index: number,
): LoadedByMovement {
  const loaded = new Map<string, LoadedMovement>();
  for (const block of entry.blocks) {
    for (const line of block.lines) {
      if (isPreparation({ block, line })) continue;
      const cell = findCell(line, index);
      const ofLine = cell && (known.cells.get(cell) ?? readLoaded(practice, line.name.text, cell));
      if (!ofLine) continue;
      known.cells.set(cell, ofLine);
      if (ofLine.sets.length === 0) continue;
      const { key } = ofLine;
      const before = loaded.get(key);
      loaded.set(key, before ? { ...before, sets: [...before.sets, ...ofLine.sets] } : ofLine);
    }
  }
  return loaded;
}

function readLoaded(practice: Practice, name: string, { sets }: Cell): LoadedCell {
  const movement = practice.findMovement(name);
  return {
    key: movement?.key ?? '',
    onStack: implementOf(movement) === 'stack',
    sets: movement ? sets.flatMap(readLoadedSet) : [],
  };
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
