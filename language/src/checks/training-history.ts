import { findCell } from '../measures/expand-sets.ts';
import type { SessionEntry } from '../model/entry.ts';
import type { Amount, Cell, MassLoad, SetGroup } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { implementOf } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { foldName } from '../text/names.ts';
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

/** One movement in one session of an athlete's history. */
export interface MovementDay extends LoadedMovement {
  /** Which of the athlete's sessions, from 0. */
  readonly position: number;
  readonly day: number;
  /** Lower case, as written. */
  readonly place: string | undefined;
}

/** An athlete's sessions, looked up by session and by movement instead of scanned. */
export interface TrainingHistory {
  readonly records: readonly SessionRecord[];
  readonly positions: ReadonlyMap<SessionEntry, number>;
  /** By a movement's key, in order of date. */
  readonly movements: ReadonlyMap<string, readonly MovementDay[]>;
  /** By a movement's key, the position of the last session that worked on it, with a load or without. */
  readonly latest: ReadonlyMap<string, number>;
}

/** What one line says of its movement. */
interface LoadedCell extends LoadedMovement {
  readonly key: string;
}

/** By a movement's key. */
type LoadedByMovement = ReadonlyMap<string, LoadedMovement>;

interface Known {
  version: number;
  histories: WeakMap<readonly SessionRecord[], TrainingHistory>;
  sessions: WeakMap<SessionEntry, Map<number, LoadedByMovement>>;
  /** By cell, which is the same object wherever the same line stands. */
  cells: WeakMap<Cell, LoadedCell>;
}

const knownByPractice = new WeakMap<Practice, Known>();

/** The history of an athlete, built once until a session of theirs or a definition changes. */
export function findHistory(practice: Practice, athlete: string): TrainingHistory {
  const records = practice.sessionsOf(athlete);
  const known = findKnown(practice);
  const found = known.histories.get(records);
  if (found) return found;
  const history = collectHistory(practice, known, records);
  known.histories.set(records, history);
  return history;
}

function findKnown(practice: Practice): Known {
  const known = knownByPractice.get(practice);
  if (known?.version === practice.definitionsVersion) return known;
  const fresh = {
    version: practice.definitionsVersion,
    histories: new WeakMap(),
    sessions: new WeakMap(),
    cells: new WeakMap(),
  };
  knownByPractice.set(practice, fresh);
  return fresh;
}

function collectHistory(
  practice: Practice,
  known: Known,
  records: readonly SessionRecord[],
): TrainingHistory {
  const positions = new Map<SessionEntry, number>();
  const movements = new Map<string, MovementDay[]>();
  const latest = new Map<string, number>();
  for (const [position, record] of records.entries()) {
    positions.set(record.entry, position);
    const { day, entry } = record;
    for (const { lines } of entry.blocks) {
      for (const { purpose, name } of lines)
        if (purpose === 'work') latest.set(toMovementKey(practice, name.text), position);
    }
    const place = entry.place?.text.toLowerCase();
    for (const [key, loaded] of findLoaded(practice, known, record)) {
      const days = movements.get(key) ?? [];
      movements.set(key, days);
      days.push({ ...loaded, position, day, place });
    }
  }
  return { records, positions, movements, latest };
}

/** One key for all spellings of a movement; an unknown one is known by its own. */
export function toMovementKey(practice: Practice, name: string): string {
  return practice.findMovement(name)?.key ?? foldName(name);
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
