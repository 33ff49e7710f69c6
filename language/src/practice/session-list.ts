import type { SessionEntry } from '../model/entry.ts';
import { countBefore } from '../text/count-before.ts';
import { foldName } from '../text/names.ts';
import type { SessionRecord } from './athlete.ts';

/** By date and time of day, then by place in the files. */
export function compareRecords(a: SessionRecord, b: SessionRecord): number {
  if (a.day !== b.day) return a.day - b.day;
  if (a.entry.clock !== b.entry.clock) {
    const [clockA, clockB] = [toOrder(a.entry), toOrder(b.entry)];
    if (clockA !== clockB) return clockA < clockB ? -1 : 1;
  }
  if (a.uri !== b.uri) return a.uri < b.uri ? -1 : 1;
  return a.line - b.line;
}

function toOrder({ clock }: SessionEntry): string {
  return (clock ?? '').padStart(8, '0');
}

/** How many of a list in the order of its sessions come up to one, which need not be in it and is counted if it is. */
export function countUpTo<T>(
  list: readonly T[],
  last: SessionRecord,
  recordOf: (item: T) => SessionRecord,
): number {
  return countBefore(list, (item) => compareRecords(recordOf(item), last) <= 0);
}

const itself = (record: SessionRecord): SessionRecord => record;

/** Where a session stands in a list that is in order; the list's length where it does not. */
export function findPosition(records: readonly SessionRecord[], record: SessionRecord): number {
  const position = countUpTo(records, record, itself) - 1;
  const found = records[position];
  const isThere = found?.entry === record.entry && found.uri === record.uri && found.line === record.line;
  return isThere ? position : records.length;
}

/** Whether two records are of the same part of the same session, wherever in its file that stands by now. */
export function isSamePart(a: SessionRecord, b: SessionRecord | undefined): boolean {
  return a === b || (a.entry === b?.entry && a.index === b.index && a.uri === b.uri);
}

/**
 * The sessions of one athlete as written, in order, and those that name a movement. A list that was given out never
 * changes: after an edit there is another, and only the lists that the edit touches are made anew.
 */
export class SessionList {
  private sorted: readonly SessionRecord[] = [];
  private added: SessionRecord[] = [];
  private readonly removed = new Set<SessionRecord>();
  /** How many of them stand in each file. */
  private readonly counts = new Map<string, number>();
  /** Made when first asked for: of most athletes nobody asks. */
  private named: Map<string, readonly SessionRecord[]> | undefined;

  /** Takes effect when the list is next asked for: files are read by the hundred. */
  change(removed: readonly SessionRecord[], added: readonly SessionRecord[]): void {
    if (removed.length > 0) this.settle();
    for (const record of removed) {
      this.removed.add(record);
      this.count(record, -1);
    }
    for (const record of added) {
      this.added.push(record);
      this.count(record, 1);
    }
  }

  /** Those of the files in which they stand. */
  uris(): Iterable<string> {
    return this.counts.keys();
  }

  get records(): readonly SessionRecord[] {
    this.settle();
    return this.sorted;
  }

  /** The sessions that name a movement, by its folded name; of a name that has gone none. */
  get byName(): ReadonlyMap<string, readonly SessionRecord[]> {
    this.settle();
    this.named ??= collectByName(this.sorted);
    return this.named;
  }

  private count({ uri }: SessionRecord, step: 1 | -1): void {
    const count = (this.counts.get(uri) ?? 0) + step;
    if (count === 0) this.counts.delete(uri);
    else this.counts.set(uri, count);
  }

  private settle(): void {
    const { added, removed } = this;
    if (added.length === 0 && removed.size === 0) return;
    this.sorted = replace(this.sorted, removed, added);
    if (this.named) {
      const addedByName = collectByName(added);
      for (const name of new Set([...collectByName([...removed]).keys(), ...addedByName.keys()]))
        this.named.set(name, replace(this.named.get(name) ?? [], removed, addedByName.get(name) ?? []));
    }
    this.added = [];
    removed.clear();
  }
}

/** So many changes are made one by one; many more, as when files are first read, by sorting. */
const FEW = 8;

function replace(
  records: readonly SessionRecord[],
  removed: ReadonlySet<SessionRecord>,
  added: readonly SessionRecord[],
): readonly SessionRecord[] {
  if (removed.size + added.length > FEW) {
    const kept = removed.size === 0 ? records : records.filter((record) => !removed.has(record));
    return [...kept, ...added].sort(compareRecords);
  }
  const changed = records.slice();
  for (const record of removed) {
    // Where a group names somebody twice, two records stand at one place.
    const at = changed.lastIndexOf(record, countUpTo(changed, record, itself) - 1);
    if (at >= 0) changed.splice(at, 1);
  }
  for (const record of added) changed.splice(countUpTo(changed, record, itself), 0, record);
  return changed;
}

function collectByName(records: readonly SessionRecord[]): Map<string, SessionRecord[]> {
  const byName = new Map<string, SessionRecord[]>();
  for (const record of records) {
    for (const { lines } of record.entry.blocks) {
      for (const { name } of lines) {
        const key = foldName(name.text);
        const found = byName.get(key);
        if (!found) byName.set(key, [record]);
        else if (found.at(-1) !== record) found.push(record);
      }
    }
  }
  return byName;
}
