import { isPreparation } from '../checks/check-context.ts';
import { findCell } from '../measures/expand-sets.ts';
import type { Block, MovementLine, SessionEntry } from '../model/entry.ts';
import type { Cell, Load } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { compareRecords, countUpTo } from '../practice/session-list.ts';
import { printLoad } from '../printing/print-load.ts';
import type { Trainee } from './spot.ts';

/** A movement's line as one athlete did it. */
export interface DoneLine {
  readonly record: SessionRecord;
  readonly block: Block;
  readonly line: MovementLine;
  readonly cell: Cell;
  readonly isPreparation: boolean;
}

/** What an athlete did before a session, or ever. */
export interface History {
  /** The sessions, the latest first. */
  readonly recent: readonly SessionRecord[];
  /** The last time of a movement, by key, looked for when it is asked for: of preparation, or of working sets. */
  readonly findLast: (key: string, preparing: boolean) => DoneLine | undefined;
}

const RECENT_SESSIONS = 12;

const linesByEntry = new WeakMap<SessionEntry, Map<number, readonly Omit<DoneLine, 'record'>[]>>();

/** The lines of one athlete's part in a session that hold a set; remembered as long as the session's text is. */
function listLinesOf({ entry, index }: SessionRecord): readonly Omit<DoneLine, 'record'>[] {
  const byIndex = linesByEntry.get(entry) ?? new Map();
  linesByEntry.set(entry, byIndex);
  const known = byIndex.get(index);
  if (known) return known;
  const lines = entry.blocks.flatMap((block) =>
    block.lines.flatMap((line) => {
      const cell = findCell(line, index);
      const isDone = cell?.sets.some(({ amount }) => amount && amount.kind !== 'skipped');
      return cell && isDone ? [{ block, line, cell, isPreparation: isPreparation({ block, line }) }] : [];
    }),
  );
  byIndex.set(index, lines);
  return lines;
}

interface KnownHistory {
  readonly version: number;
  readonly before: readonly SessionRecord[];
  readonly history: History;
}

const histories = new WeakMap<Practice, Map<string, KnownHistory>>();

/** What came before a session. It stays as it was while the session itself is written, however often that changes. */
export function findHistory(practice: Practice, { athlete, record, day }: Trainee): History {
  const byAthlete = histories.get(practice) ?? new Map<string, KnownHistory>();
  histories.set(practice, byAthlete);
  const records = practice.sessionsOf(athlete);
  const until = record ? practice.indexOf(record) : records.findLastIndex((other) => other.day <= day) + 1;
  const known = byAthlete.get(athlete);
  const version = practice.definitionsVersion;
  if (known?.version === version && isSame(known.before, records, until)) return known.history;
  const before = records.slice(0, until);
  const history = openHistory(practice, athlete, before);
  byAthlete.set(athlete, { version, before, history });
  return history;
}

/** Whether those are the first sessions of a list still, at the same places of their files. */
function isSame(before: readonly SessionRecord[], records: readonly SessionRecord[], until: number): boolean {
  return (
    before.length === until &&
    before.every(({ entry, index, line, uri }, at) => {
      const other = records[at]!;
      return entry === other.entry && line === other.line && index === other.index && uri === other.uri;
    })
  );
}

/** Of lists of sessions that name a movement: up to which of them none has such a line. */
interface Without {
  readonly version: number;
  readonly key: string;
  working: number;
  preparing: number;
}

const withoutByRecords = new WeakMap<readonly SessionRecord[], Without>();

/** The last session with a line of a movement, up to one; from that one back, for most often it is the first. */
function findDone(
  practice: Practice,
  { athlete, key, upTo }: { readonly athlete: string; readonly key: string; readonly upTo: SessionRecord },
  preparing: boolean,
): DoneLine | undefined {
  const records = practice.sessionsWith(athlete, key);
  const without = findWithout(practice, records, key);
  const kind = preparing ? 'preparing' : 'working';
  const count = countUpTo(records, upTo, (record) => record);
  for (let at = count - 1; at >= without[kind]; at--) {
    const record = records[at]!;
    const done = listLinesOf(record).find(
      ({ isPreparation: isPrepared, line }) =>
        isPrepared === preparing && practice.keyOf(line.name.text) === key,
    );
    if (done) return { ...done, record };
  }
  without[kind] = Math.max(without[kind], count);
  return undefined;
}

function findWithout(practice: Practice, records: readonly SessionRecord[], key: string): Without {
  const version = practice.movementsVersion;
  const known = withoutByRecords.get(records);
  if (known?.version === version && known.key === key) return known;
  const without = { version, key, working: 0, preparing: 0 };
  withoutByRecords.set(records, without);
  return without;
}

function openHistory(practice: Practice, athlete: string, before: readonly SessionRecord[]): History {
  const last = before.at(-1);
  const found = new Map<string, DoneLine | undefined>();
  const find = (key: string, preparing: boolean): DoneLine | undefined =>
    last && findDone(practice, { athlete, key, upTo: last }, preparing);
  return {
    recent: before.slice(-RECENT_SESSIONS).reverse(),
    findLast(key, preparing) {
      const id = `${preparing} ${key}`;
      if (!found.has(id)) found.set(id, find(key, preparing));
      return found.get(id);
    },
  };
}

/** The last time of every movement that nothing defines, the latest first, work before preparation. */
export function listUndefined(
  practice: Practice,
  athlete: string,
  history: History,
): (readonly [string, DoneLine])[] {
  const keys = [...practice.keysDone(athlete)].filter((key) => !practice.findMovement(key));
  const list = (preparing: boolean) =>
    keys
      .flatMap((key) => {
        const done = history.findLast(key, preparing);
        return done ? [[key, done] as const] : [];
      })
      .sort(([, a], [, b]) => compareRecords(b.record, a.record) || a.line.span.line - b.line.span.line);
  return [...list(false), ...list(true)];
}

/** How often and how lately a movement was done in the last sessions, twice as much in blocks of one kind, and hardly as preparation of what is work. */
export function scoreRecent(
  practice: Practice,
  { recent }: History,
  kind: Block['kind'] | undefined,
  preparing: boolean,
): ReadonlyMap<string, number> {
  const scores = new Map<string, number>();
  for (const [age, record] of recent.entries()) {
    for (const { line, block, isPreparation: isPrepared } of listLinesOf(record)) {
      const key = practice.keyOf(line.name.text);
      const weight = (block.kind === kind ? 2 : 1) * (isPrepared === preparing ? 1 : 0.1);
      scores.set(key, (scores.get(key) ?? 0) + weight / (1 + age));
    }
  }
  return scores;
}

/** The last time of a movement: of working sets, or of preparation where that is asked and there is one. */
export function findLast(history: History, key: string, preparing: boolean): DoneLine | undefined {
  return history.findLast(key, preparing) ?? history.findLast(key, !preparing);
}

/** A line's sets as they are written in their file. */
export function readWritten(practice: Practice, { record, cell }: DoneLine): string {
  const [first, last] = [cell.sets[0], cell.sets.at(-1)];
  if (!first || !last) return '';
  const line = practice.file(record.uri)?.lines[record.line + first.span.line] ?? '';
  return line.slice(first.span.start, last.span.end);
}

/** The loads of a cell's sets that were made, each once, as they stand; of a plan's all. */
export function listLoads({ sets }: Pick<Cell, 'sets'>): Load[] {
  const loads = sets.flatMap(({ amount, load }) => {
    const isMissed = amount?.kind === 'attempt' && amount.made === 0;
    return load && load.kind !== 'unrecorded' && !isMissed ? [load] : [];
  });
  const texts = loads.map(printLoad);
  return loads.filter((_load, index) => texts.indexOf(texts[index]!) === index);
}
