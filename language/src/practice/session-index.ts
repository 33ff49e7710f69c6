import { toDayNumber } from '../calendar/iso-date.ts';
import type { Entry, PlacedEntry, SessionEntry } from '../model/entry.ts';
import { foldName } from '../text/names.ts';
import type { SessionRecord } from './athlete.ts';
import { ChangeLog, type Movements } from './change-log.ts';
import { findChangedNames } from './changed-names.ts';
import type { EntryChanges } from './entry-changes.ts';
import { compareRecords, SessionList } from './session-list.ts';

/** Whose sessions: those under a folded name, and with `adopts` those that name nobody too. */
export interface Whose {
  readonly athlete: string;
  readonly adopts: boolean;
}

/** What written names of movements stand for, and a number that is another once they may stand for something else. */
export interface Naming {
  readonly version: number;
  readonly keyOf: (name: string) => string;
}

interface Merged {
  readonly parts: readonly (readonly SessionRecord[])[];
  readonly records: readonly SessionRecord[];
}

interface Spellings {
  readonly version: number;
  readonly count: number;
  readonly byKey: ReadonlyMap<string, readonly string[]>;
}

const NONE: readonly SessionRecord[] = [];

/** All sessions by athlete and by movement, kept in order edit by edit. */
export class SessionIndex {
  /** By athlete as written (folded, '' for nobody). */
  private readonly lists = new Map<string, SessionList>();
  private readonly logs = new Map<string, ChangeLog>();
  private readonly byEntry = new WeakMap<Entry, readonly SessionRecord[]>();
  private readonly earlier = new WeakMap<SessionEntry, SessionEntry>();
  private readonly adopted = new WeakMap<SessionRecord, SessionRecord>();
  private readonly adoptedLists = new WeakMap<
    readonly SessionRecord[],
    { readonly athlete: string; readonly records: readonly SessionRecord[] }
  >();
  private readonly merged = new Map<string, Merged>();
  private readonly spellings = new WeakMap<SessionList, Spellings>();

  /** Whoever has a session, as written. */
  athletes(): Iterable<string> {
    return this.lists.keys();
  }

  of({ athlete, adopts }: Whose): readonly SessionRecord[] {
    const own = this.lists.get(athlete)?.records ?? NONE;
    const ownerless = adopts ? (this.lists.get('')?.records ?? NONE) : NONE;
    if (ownerless.length === 0) return own;
    return this.merge(athlete, [own, this.adopt(athlete, ownerless)]);
  }

  /** Those with a line of the movement of that key; of a name that nothing defines, folded, those with that name. */
  naming({ athlete, adopts }: Whose, movement: string, naming: Naming): readonly SessionRecord[] {
    const parts = this.listNaming(athlete, movement, naming);
    if (adopts)
      parts.push(...this.listNaming('', movement, naming).map((records) => this.adopt(athlete, records)));
    return parts.length < 2 ? (parts[0] ?? NONE) : this.merge(`${athlete}\n${movement}`, parts);
  }

  /** What the lines of those sessions name, in either form; some may have gone since. */
  keysOf(whose: Whose, naming: Naming): Set<string> {
    return new Set(this.listsOf(whose).flatMap((list) => [...this.spellingsOf(list, naming).keys()]));
  }

  private listsOf({ athlete, adopts }: Whose): readonly SessionList[] {
    return [athlete, ...(adopts ? [''] : [])].flatMap((key) => this.lists.get(key) ?? []);
  }

  urisOf(whose: Whose): ReadonlySet<string> {
    return new Set(this.listsOf(whose).flatMap((list) => [...list.uris()]));
  }

  /** The records of a session entry, one for each athlete, as written. */
  recordsOf(uri: string, placed: PlacedEntry): readonly SessionRecord[] {
    const known = this.byEntry.get(placed.entry);
    return known?.[0]?.uri === uri && known[0].line === placed.line ? known : toRecords(uri, placed);
  }

  /** A session as it was before the last edit of it alone. */
  earlierOf(entry: SessionEntry): SessionEntry | undefined {
    return this.earlier.get(entry);
  }

  /** The same session as one of the athlete to whom those belong that name nobody; always the same object. */
  adoptOne(athlete: string, record: SessionRecord): SessionRecord {
    const known = this.adopted.get(record);
    if (known?.athlete === athlete) return known;
    const adopted = { ...record, athlete };
    this.adopted.set(record, adopted);
    return adopted;
  }

  /**
   * Whether any of those sessions up to and including a day came, went, changed or moved after an edition, in what they
   * say of some movements (by key, as those were named then).
   */
  hasChanged({ athlete, adopts }: Whose, edition: number, lastDay: number, movements: Movements): boolean {
    if (this.logs.get(athlete)?.hasChanged(edition, lastDay, movements)) return true;
    return adopts && this.logs.get('')?.hasChanged(edition, lastDay, movements) === true;
  }

  /**
   * Takes a file's changes in, which make the practice that edition; gives the folded names of the athletes whose
   * sessions they are, as written.
   */
  change(uri: string, changes: EntryChanges, edition: number, { keyOf }: Naming): Set<string> {
    const { removed, added, moved } = changes;
    const edited = findEdited(changes);
    const names = edited && findChangedNames(edited.before, edited.after);
    const movements = names && new Set([...names].map(keyOf));
    if (edited) this.noteEarlier(edited);
    const gone = new Map<string, SessionRecord[]>();
    const come = new Map<string, SessionRecord[]>();
    for (const { entry } of [...removed, ...moved]) {
      for (const record of this.byEntry.get(entry) ?? []) collect(gone, record);
      this.byEntry.delete(entry);
    }
    for (const placed of [...added, ...moved]) {
      const records = toRecords(uri, placed);
      if (records.length > 0) this.byEntry.set(placed.entry, records);
      for (const record of records) collect(come, record);
    }
    const touched = new Set([...gone.keys(), ...come.keys()]);
    for (const athlete of touched) {
      const list = this.lists.get(athlete) ?? new SessionList();
      list.change(gone.get(athlete) ?? NONE, come.get(athlete) ?? NONE);
      if (come.has(athlete) || list.records.length > 0) this.lists.set(athlete, list);
      else this.lists.delete(athlete);
      const log = this.logs.get(athlete) ?? new ChangeLog();
      this.logs.set(athlete, log);
      const day = Math.min(findFirstDay(gone.get(athlete)), findFirstDay(come.get(athlete)));
      log.note(edition, day, movements);
    }
    return touched;
  }

  /** One step back alone, or a session would hold all that it ever was. */
  private noteEarlier({ before, after }: Edited): void {
    this.earlier.delete(before);
    this.earlier.set(after, before);
  }

  private adopt(athlete: string, records: readonly SessionRecord[]): readonly SessionRecord[] {
    const known = this.adoptedLists.get(records);
    if (known?.athlete === athlete) return known.records;
    const adopted = records.map((record) => this.adoptOne(athlete, record));
    this.adoptedLists.set(records, { athlete, records: adopted });
    return adopted;
  }

  private listNaming(athlete: string, movement: string, naming: Naming): (readonly SessionRecord[])[] {
    const list = this.lists.get(athlete);
    if (!list) return [];
    return (this.spellingsOf(list, naming).get(movement) ?? []).map((name) => list.byName.get(name)!);
  }

  /** Names only ever come to a list, so that their number tells whether there are others. */
  private spellingsOf(list: SessionList, { version, keyOf }: Naming): Spellings['byKey'] {
    const names = list.byName;
    const known = this.spellings.get(list);
    if (known?.version === version && known.count === names.size) return known.byKey;
    const byKey = new Map<string, string[]>();
    for (const name of names.keys()) {
      const key = keyOf(name);
      const found = byKey.get(key);
      if (found) found.push(name);
      else byKey.set(key, [name]);
    }
    this.spellings.set(list, { version, count: names.size, byKey });
    return byKey;
  }

  /** The same list as long as those are the same that it is made from. */
  private merge(key: string, lists: readonly (readonly SessionRecord[])[]): readonly SessionRecord[] {
    const parts = lists.filter(({ length }) => length > 0);
    if (parts.length < 2) return parts[0] ?? NONE;
    const known = this.merged.get(key);
    if (known?.parts.length === parts.length && known.parts.every((part, index) => part === parts[index]))
      return known.records;
    // A session that names a movement in two spellings counts once.
    const records = [...new Set(parts.flat())].sort(compareRecords);
    this.merged.set(key, { parts, records });
    return records;
  }
}

function toRecords(uri: string, { entry, line }: PlacedEntry): SessionRecord[] {
  if (entry.kind !== 'session' || !entry.date?.date) return [];
  const { date } = entry.date;
  const names = entry.athletes.length > 0 ? entry.athletes.map((athlete) => foldName(athlete.text)) : [''];
  return names.map((athlete, index) => ({
    entry,
    uri,
    line,
    date,
    day: toDayNumber(date),
    athlete,
    index,
    groupSize: names.length,
  }));
}

interface Edited {
  readonly before: SessionEntry;
  readonly after: SessionEntry;
}

/** The session that an edit says something else of, where that is all that it does. */
function findEdited({ removed, added, moved }: EntryChanges): Edited | undefined {
  const [before, after] = [removed[0]?.entry, added[0]?.entry];
  if (removed.length !== 1 || added.length !== 1 || moved.length > 0) return undefined;
  return before?.kind === 'session' && after?.kind === 'session' ? { before, after } : undefined;
}

function findFirstDay(records: readonly SessionRecord[] = NONE): number {
  return records.reduce((first, { day }) => Math.min(first, day), Number.POSITIVE_INFINITY);
}

function collect(byAthlete: Map<string, SessionRecord[]>, record: SessionRecord): void {
  const found = byAthlete.get(record.athlete);
  if (found) found.push(record);
  else byAthlete.set(record.athlete, [record]);
}
