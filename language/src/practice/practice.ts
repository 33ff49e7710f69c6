import type { FileModel, PlacedEntry, SessionEntry } from '../model/entry.ts';
import type { EntryReader } from '../reading/read-entry.ts';
import { type ReadFile, readEdited, readFile } from '../reading/read-file.ts';
import type { LineEdit } from '../text/line-edit.ts';
import { Memo } from '../text/memo.ts';
import { foldName } from '../text/names.ts';
import type { Athlete, Place, Plan, SessionRecord } from './athlete.ts';
import { ChangeLog, type Movements } from './change-log.ts';
import { compareEntries, listReordered } from './entry-changes.ts';
import type { Movement } from './movement.ts';
import { NameIndex } from './name-index.ts';
import { type Naming, SessionIndex, type Whose } from './session-index.ts';
import { findPosition } from './session-list.ts';

/** Begins the URIs of the built-in library's files. */
export const LIBRARY_SCHEME = 'plimsoll-library:/';

/** The built-in movements by every spelling. Nothing changes it, so that practices may share one. */
export type Library = Pick<NameIndex<Movement>, 'find' | 'spellings' | 'values'>;

/** Definitions hold whatever the day. */
const ANY_DAY = 0;

/** Counts for all practices together, so that what is kept by a fact that two of them share is never taken for the other's. */
let versions = 0;

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
  /** Definitions stand on other lines than before and say the same. */
  readonly moved: boolean;
  /** Folded names of athletes whose sessions changed. */
  readonly athletes: ReadonlySet<string>;
}

/**
 * Everything a workspace says, kept as facts: files are read entry by entry, and an edit re-reads the entry it touches.
 * Names are resolved here. The server, the command line and tests share it; it opens no file and asks no clock.
 */
export class Practice {
  /** Another number whenever any file is read or goes: for what is asked again and again between two edits. */
  edition = ++versions;
  /** Another number whenever a definition says something else: whatever rests on any of them is compared by it. */
  definitionsVersion = ++versions;
  /** The same for what `exercise` defines alone: what names stand for. */
  movementsVersion = ++versions;
  /** The same for all other definitions: whom sessions are of, where they are and what was planned. */
  settingsVersion = ++versions;
  /** Another number also when a definition only stands on another line. */
  linesVersion = ++versions;

  private readonly reader: EntryReader;
  private readonly files = new Map<string, ReadFile>();
  private readonly movements = new NameIndex<Movement>();
  private readonly library: Library;
  private readonly athletes = new NameIndex<Athlete>();
  private readonly places = new NameIndex<Place>();
  private readonly plans = new NameIndex<Plan>();
  private readonly sessions = new SessionIndex();
  private readonly redefinitions = new ChangeLog();
  /** By names as they are written, and keys by folded ones: asked for each line of a history. */
  private readonly named = new Memo((name) => this.searchMovement(foldName(name)));
  private readonly keys = new Memo((name) => this.searchMovement(name)?.key ?? name);

  constructor(reader: EntryReader, library: Library) {
    this.reader = reader;
    this.library = library;
  }

  /** Reads a file anew; entries whose text did not change keep their model. */
  setFile(uri: string, text: string): PracticeChange {
    const before = this.files.get(uri);
    return this.take(uri, before, readFile(this.reader, uri, text, before));
  }

  /** The same for whoever knows which lines of a file are others by now: the rest of its text is not looked at. */
  editFile(uri: string, edit: LineEdit): PracticeChange {
    const before = this.files.get(uri);
    if (!before) throw new Error(`There is no ${uri} to edit`);
    return this.take(uri, before, readEdited(this.reader, before, edit));
  }

  private take(uri: string, before: ReadFile | undefined, after: ReadFile): PracticeChange {
    this.files.set(uri, after);
    return this.replace(uri, before?.model, after.model);
  }

  removeFile(uri: string): PracticeChange {
    const before = this.files.get(uri);
    this.files.delete(uri);
    return this.replace(uri, before?.model, undefined);
  }

  /** Lets go of what only makes the next reading faster: once all is read, it takes room for nothing. */
  forgetReading(): void {
    this.reader.forget?.();
  }

  file(uri: string): ReadFile | undefined {
    return this.files.get(uri);
  }

  *fileUris(): Iterable<string> {
    yield* this.files.keys();
  }

  /** The files that define something. */
  definingUris(): Iterable<string> {
    const indexes = [this.movements, this.athletes, this.places, this.plans];
    return new Set(indexes.flatMap((index) => [...index.uris()]));
  }

  /** The movement of that name or other spelling: the workspace's own before the built-in one. */
  findMovement(name: string): Movement | undefined {
    return this.named.of(name);
  }

  private searchMovement(key: string): Movement | undefined {
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
    return this.athletes.values();
  }

  allPlaces(): readonly Place[] {
    return this.places.values();
  }

  allPlans(): readonly Plan[] {
    return this.plans.values();
  }

  /** Folded names of everybody who has a session or a definition. */
  athleteKeys(): string[] {
    const keys = new Set(this.allAthletes().map((athlete) => athlete.key));
    for (const key of this.sessions.athletes()) keys.add(this.resolveAthlete(key));
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

  /**
   * An athlete's sessions in order of date and time of day, then of place in the files. A list that was given out never
   * changes: it is another one after any of them changed or moved, and the same as long as none did.
   */
  sessionsOf(athlete: string): readonly SessionRecord[] {
    return this.sessions.of(this.whose(athlete));
  }

  /**
   * Those in which a line names that movement, under any spelling; in the same order, and the same list as long as it
   * holds the same. `key` is that of the movement, or a name that nothing defines.
   */
  sessionsWith(athlete: string, key: string): readonly SessionRecord[] {
    return this.sessions.naming(this.whose(athlete), foldName(key), this.naming());
  }

  /**
   * Whether any session of an athlete up to and including a day came, went, changed or moved after an edition: what rests
   * on those alone, and on definitions, is still what it was then if none did. With `movements` (keys, under the present
   * definitions) what sessions say of others does not count, but all that they say of the day and the athlete does.
   */
  hasChangedSince(edition: number, athlete: string, lastDay: number, movements?: Movements): boolean {
    return this.sessions.hasChanged(this.whose(athlete), edition, lastDay, movements);
  }

  /**
   * Whether any of some movements (keys) was defined otherwise after an edition, or another name came to stand for it or
   * ceased to.
   */
  hasRedefined(edition: number, movements?: Movements): boolean {
    return this.redefinitions.hasChanged(edition, ANY_DAY, movements);
  }

  /** The files in which an athlete's sessions stand. */
  urisOf(athlete: string): ReadonlySet<string> {
    return this.sessions.urisOf(this.whose(athlete));
  }

  /** What the lines of an athlete's sessions name: keys of movements, and folded names that nothing defines. */
  keysDone(athlete: string): ReadonlySet<string> {
    return this.sessions.keysOf(this.whose(athlete), this.naming());
  }

  private naming(): Naming {
    return { version: this.movementsVersion, keyOf: (name) => this.keyOf(name) };
  }

  /** The key of the movement of that name, else the folded name. */
  keyOf(name: string): string {
    return this.keyOfFolded(foldName(name));
  }

  /** The same of a name that is folded already. */
  keyOfFolded(name: string): string {
    return this.keys.of(name);
  }

  /** Where a session stands among its athlete's: what is before it is its history. */
  indexOf(record: SessionRecord): number {
    return findPosition(this.sessionsOf(record.athlete), record);
  }

  /** The records of one session entry of a file: one per athlete. */
  recordsOf(uri: string, placed: PlacedEntry): readonly SessionRecord[] {
    const records = this.sessions.recordsOf(uri, placed);
    // Most sessions say whose they are.
    if (!records.some(isOfNobody)) return records;
    return records.map((record) => {
      const athlete = this.resolveAthlete(record.athlete);
      return athlete === record.athlete ? record : this.sessions.adoptOne(athlete, record);
    });
  }

  /** A session as it was before it was edited last, where nothing else was: what both say need not be worked out again. */
  earlierOf(entry: SessionEntry): SessionEntry | undefined {
    return this.sessions.earlierOf(entry);
  }

  private whose(athlete: string): Whose {
    const key = foldName(athlete);
    return { athlete: key, adopts: key !== '' && this.resolveAthlete('') === key };
  }

  private replace(uri: string, before: FileModel | undefined, after: FileModel | undefined): PracticeChange {
    this.edition = ++versions;
    const changes = compareEntries(before?.entries ?? [], after?.entries ?? []);
    const moved = changes.moved.some(isDefinition);
    const redone = [
      ...[...changes.removed, ...changes.added].filter(isDefinition),
      ...(moved
        ? listReordered(before!.entries.filter(isDefinition), after!.entries.filter(isDefinition))
        : []),
    ];
    const definitions = redone.length > 0;
    const spellings = redone.flatMap(spellingsIn);
    const redefined = new Set(spellings.flatMap((name) => [name, this.keyOfFolded(name)]));
    if (definitions || moved) {
      for (const index of [this.movements, this.athletes, this.places, this.plans]) index.removeFile(uri);
      for (const placed of after?.entries ?? []) this.define(uri, placed);
      this.named.forget();
      this.keys.forget();
      this.linesVersion = ++versions;
    }
    if (definitions) this.definitionsVersion = ++versions;
    if (redone.some(({ entry }) => entry.kind !== 'exercise')) this.settingsVersion = ++versions;
    if (redone.some(({ entry }) => entry.kind === 'exercise')) {
      this.movementsVersion = ++versions;
      // Where two definitions share a name, the other may count from now on.
      for (const name of spellings) redefined.add(this.keyOfFolded(name));
      this.redefinitions.note(this.edition, ANY_DAY, redefined);
    }
    return { definitions, moved, athletes: this.sessions.change(uri, changes, this.edition, this.naming()) };
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

/** Folded, of a movement defined there. */
function spellingsIn(placed: PlacedEntry): string[] {
  const movement = toMovement('', placed, false);
  return movement ? spellingsOf(movement) : [];
}

function isOfNobody({ athlete }: SessionRecord): boolean {
  return athlete === '';
}

function isDefinition({ entry: { kind } }: PlacedEntry): boolean {
  return kind === 'exercise' || kind === 'athlete' || kind === 'place' || kind === 'plan';
}
