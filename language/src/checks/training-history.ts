import { findCell } from '../measures/expand-sets.ts';
import type { Amount, Cell, MassLoad, SetGroup } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { implementOf } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { countUpTo } from '../practice/session-list.ts';
import { settle } from '../reading/settle.ts';
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
  readonly version: number;
  /** Lists, for a map of each session would take more room than the session. */
  readonly sessions: WeakMap<SessionRecord, readonly LoadedCell[]>;
  /** By cell, which is the same object wherever the same line stands. */
  readonly cells: WeakMap<Cell, LoadedCell>;
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
    const loaded = joinLoaded(listCells(practice, known, before), key);
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

/** The movements of one athlete's part in a session that have a mass. */
export function listLoaded(practice: Practice, record: SessionRecord): LoadedByMovement {
  const loaded = new Map<string, LoadedMovement>();
  for (const cell of listCells(practice, findKnown(practice), record)) {
    const before = loaded.get(cell.key);
    loaded.set(cell.key, before ? join(before, cell) : cell);
  }
  return loaded;
}

function listCells(practice: Practice, known: Known, record: SessionRecord): readonly LoadedCell[] {
  const found = known.sessions.get(record) ?? settle(collectCells(practice, known, record));
  known.sessions.set(record, found);
  return found;
}

function collectCells(practice: Practice, known: Known, { entry, index }: SessionRecord): LoadedCell[] {
  const cells: LoadedCell[] = [];
  for (const block of entry.blocks) {
    for (const line of block.lines) {
      const cell = findCell(line, index);
      if (!cell || isPreparation({ block, line })) continue;
      const loaded = known.cells.get(cell) ?? readLoaded(practice, line.name.text, cell);
      known.cells.set(cell, loaded);
      if (loaded.sets.length > 0) cells.push(loaded);
    }
  }
  return cells;
}

function joinLoaded(cells: readonly LoadedCell[], key: string): LoadedMovement | undefined {
  let all: LoadedMovement | undefined;
  for (const cell of cells) if (cell.key === key) all = all ? join(all, cell) : cell;
  return all;
}

function join(before: LoadedMovement, more: LoadedMovement): LoadedMovement {
  return { ...before, sets: [...before.sets, ...more.sets] };
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
