import { toDayNumber } from '../calendar/iso-date.ts';
import type { Entry, FileModel, PlacedEntry } from '../model/entry.ts';
import type { EntryReader } from '../reading/read-entry.ts';
import { type ReadFile, readFile } from '../reading/read-file.ts';
import { foldName } from '../text/names.ts';
import type { Athlete, Place, Plan, SessionRecord } from './athlete.ts';
import type { Movement } from './movement.ts';
import { NameIndex } from './name-index.ts';

/** Begins the URIs of the built-in library's files. */
export const LIBRARY_SCHEME = 'plimsoll-library:/';

/** The built-in movements by every spelling. Nothing changes it, so that practices may share one. */
export type Library = Pick<NameIndex<Movement>, 'find' | 'spellings' | 'values'>;

/** Indexes the entries of the library's files, `[name, entries]`, once for all practices. */
export function indexLibrary(
  files: readonly (readonly [name: string, entries: readonly PlacedEntry[]])[],
): Library {
  const library = new NameIndex<Movement>();
  for (const [name, entries] of files) {
    const uri = `${LIBRARY_SCHEME}${name}.plim`;
    for (const placed of entries) {
      const movement = toMovement(uri, placed, true);
      if (movement) library.add(uri, movement, spellingsOf(movement));
    }
  }
  return library;
}

/** What changed with an edit: what was computed from it may be stale. */
export interface PracticeChange {
  /** A definition was added, changed or removed somewhere. */
  readonly definitions: boolean;
  /** Folded names of athletes whose sessions changed. */
  readonly athletes: ReadonlySet<string>;
}

/**
 * Everything a workspace says, kept as facts: files are read entry by entry, and an edit re-reads the entry it touches.
 * Names are resolved here. The server, the command line and tests share it; it opens no file and asks no clock.
 */
export class Practice {
  /** Counts changes of definitions: whatever rests on them is compared by it. */
  definitionsVersion = 0;

  private readonly reader: EntryReader;
  private readonly files = new Map<string, ReadFile>();
  private readonly movements = new NameIndex<Movement>();
  private readonly library: Library;
  private readonly athletes = new NameIndex<Athlete>();
  private readonly places = new NameIndex<Place>();
  private readonly plans = new NameIndex<Plan>();
  /** Sessions by athlete as written (folded, '' for nobody), then by file. */
  private readonly sessions = new Map<string, Map<string, SessionRecord[]>>();
  private readonly sorted = new Map<string, readonly SessionRecord[]>();

  constructor(reader: EntryReader, library: Library) {
    this.reader = reader;
    this.library = library;
  }

  /** Reads a file anew; entries whose text did not change keep their model. */
  setFile(uri: string, text: string): PracticeChange {
    const before = this.files.get(uri);
    const after = readFile(this.reader, uri, text, before);
    this.files.set(uri, after);
    return this.replace(uri, before?.model, after.model);
  }

  removeFile(uri: string): PracticeChange {
    const before = this.files.get(uri);
    this.files.delete(uri);
    return this.replace(uri, before?.model, undefined);
  }

  file(uri: string): ReadFile | undefined {
    return this.files.get(uri);
  }

  *fileUris(): Iterable<string> {
    yield* this.files.keys();
  }

  /** The movement of that name or other spelling: the workspace's own before the built-in one. */
  findMovement(name: string): Movement | undefined {
    const key = foldName(name);
    return this.movements.find(key) ?? this.library.find(key);
  }

  findAthlete(name: string): Athlete | undefined {
    return this.athletes.find(foldName(name));
  }

  findPlace(name: string): Place | undefined {
    return this.places.find(foldName(name));
  }

  findPlan(name: string): Plan | undefined {
    return this.plans.find(foldName(name));
  }

  /** All definitions that answer to a name, first the one that counts. */
  findAllDefined(
    kind: 'exercise' | 'athlete' | 'place' | 'plan',
    name: string,
  ): readonly (Movement | Athlete | Place | Plan)[] {
    const index = { exercise: this.movements, athlete: this.athletes, place: this.places, plan: this.plans }[
      kind
    ];
    return index.findAll(foldName(name));
  }

  /** Every spelling a movement answers to, workspace and library. */
  *movementSpellings(): Iterable<string> {
    yield* this.movements.spellings();
    yield* this.library.spellings();
  }

  *allMovements(): Iterable<Movement> {
    yield* this.movements.values();
    for (const movement of this.library.values()) {
      if (!this.movements.find(movement.key)) yield movement;
    }
  }

  allAthletes(): readonly Athlete[] {
    return [...this.athletes.values()];
  }

  allPlaces(): readonly Place[] {
    return [...this.places.values()];
  }

  allPlans(): readonly Plan[] {
    return [...this.plans.values()];
  }

  /** Folded names of everybody who has a session or a definition. */
  athleteKeys(): string[] {
    const keys = new Set(this.allAthletes().map((athlete) => athlete.key));
    for (const key of this.sessions.keys()) keys.add(this.resolveAthlete(key));
    return [...keys].filter((key) => this.sessionsOf(key).length > 0 || this.findAthlete(key)).sort();
  }

  /** How an athlete is spelt: as defined, else as first written. */
  athleteName(key: string): string {
    const defined = this.findAthlete(key);
    if (defined) return defined.name;
    const record = this.sessionsOf(key)[0];
    return record?.entry.athletes[record.index]?.text ?? '';
  }

  /** Whose sessions those are that name nobody: the only athlete defined, or nobody. */
  resolveAthlete(written: string): string {
    if (written !== '') return written;
    const defined = this.allAthletes();
    return defined.length === 1 ? defined[0]!.key : '';
  }

  /** An athlete's sessions in order of date and time of day, then of place in the files. */
  sessionsOf(athlete: string): readonly SessionRecord[] {
    const key = foldName(athlete);
    const known = this.sorted.get(key);
    if (known) return known;
    const records = listRecords(this.sessions.get(key));
    // Sessions that name nobody are those of the only athlete.
    if (key !== '' && this.resolveAthlete('') === key) {
      for (const record of listRecords(this.sessions.get(''))) records.push({ ...record, athlete: key });
    }
    records.sort(compareRecords);
    this.sorted.set(key, records);
    return records;
  }

  /** Where a session stands among its athlete's: what is before it is its history. */
  indexOf(record: SessionRecord): number {
    const records = this.sessionsOf(record.athlete);
    const at = records.findLastIndex(
      (other) => other.entry === record.entry && other.uri === record.uri && other.line === record.line,
    );
    return at < 0 ? records.length : at;
  }

  /** The records of one session entry of a file: one per athlete. */
  recordsOf(uri: string, placed: PlacedEntry): SessionRecord[] {
    return toRecords(uri, placed).map((record) => ({
      ...record,
      athlete: this.resolveAthlete(record.athlete),
    }));
  }

  private replace(uri: string, before: FileModel | undefined, after: FileModel | undefined): PracticeChange {
    const athletes = new Set<string>();
    const definitions = !sameDefinitions(before, after);
    if (definitions) {
      this.definitionsVersion++;
      for (const index of [this.movements, this.athletes, this.places, this.plans]) index.removeFile(uri);
      for (const placed of after?.entries ?? []) this.define(uri, placed);
      // A definition may have decided whose the sessions without an athlete are.
      this.sorted.clear();
    }
    if (!sameSessions(before, after)) {
      for (const placed of before?.entries ?? [])
        for (const { athlete } of toRecords(uri, placed)) this.forget(athlete, uri, athletes);
      for (const placed of after?.entries ?? []) {
        for (const record of toRecords(uri, placed)) {
          const byFile = this.sessions.get(record.athlete) ?? new Map<string, SessionRecord[]>();
          this.sessions.set(record.athlete, byFile);
          byFile.set(uri, [...(byFile.get(uri) ?? []), record]);
          athletes.add(record.athlete);
        }
      }
      for (const athlete of athletes) this.sorted.delete(this.resolveAthlete(athlete));
    }
    return { definitions, athletes };
  }

  private forget(athlete: string, uri: string, touched: Set<string>): void {
    const byFile = this.sessions.get(athlete);
    byFile?.delete(uri);
    if (byFile?.size === 0) this.sessions.delete(athlete);
    touched.add(athlete);
  }

  private define(uri: string, placed: PlacedEntry): void {
    const { entry, line } = placed;
    if (entry.kind === 'exercise') {
      const movement = toMovement(uri, placed, false);
      if (movement) this.movements.add(uri, movement, spellingsOf(movement));
    } else if ((entry.kind === 'athlete' || entry.kind === 'place' || entry.kind === 'plan') && entry.name) {
      const name = entry.name.text;
      const key = foldName(name);
      const base = { name, key, uri, line };
      if (entry.kind === 'athlete') this.athletes.add(uri, { ...base, entry }, [key]);
      else if (entry.kind === 'place') this.places.add(uri, { ...base, entry }, [key]);
      else this.plans.add(uri, { ...base, entry }, [key]);
    }
  }
}

function toMovement(uri: string, { entry, line }: PlacedEntry, builtIn: boolean): Movement | undefined {
  if (entry.kind !== 'exercise' || !entry.name) return undefined;
  return { name: entry.name.text, key: foldName(entry.name.text), entry, uri, line, builtIn };
}

function spellingsOf({ key, entry }: Movement): string[] {
  return [key, ...entry.also.map((spelling) => foldName(spelling.text))];
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

function listRecords(byFile: ReadonlyMap<string, readonly SessionRecord[]> | undefined): SessionRecord[] {
  return [...(byFile?.values() ?? [])].flat();
}

function compareRecords(a: SessionRecord, b: SessionRecord): number {
  return (
    a.day - b.day ||
    (a.entry.clock ?? '').padStart(8, '0').localeCompare((b.entry.clock ?? '').padStart(8, '0')) ||
    (a.uri < b.uri ? -1 : a.uri > b.uri ? 1 : a.line - b.line)
  );
}

const isDefinition = ({ kind }: Entry): boolean =>
  kind === 'exercise' || kind === 'athlete' || kind === 'place' || kind === 'plan';

/** Entries keep their model when their text did not change, so identity tells. Lines may have moved. */
function sameDefinitions(before: FileModel | undefined, after: FileModel | undefined): boolean {
  return sameEntries(before, after, isDefinition);
}

function sameSessions(before: FileModel | undefined, after: FileModel | undefined): boolean {
  return sameEntries(before, after, (entry) => entry.kind === 'session');
}

function sameEntries(
  before: FileModel | undefined,
  after: FileModel | undefined,
  which: (entry: Entry) => boolean,
): boolean {
  const [a, b] = [before, after].map((model) => (model?.entries ?? []).filter(({ entry }) => which(entry)));
  return (
    a!.length === b!.length &&
    a!.every((placed, index) => placed.entry === b![index]!.entry && placed.line === b![index]!.line)
  );
}
