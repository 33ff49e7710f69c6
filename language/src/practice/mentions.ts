import type { Block, Entry, FileModel, MovementLine, PlacedEntry } from '../model/entry.ts';
import type { Load, Modifier, SetGroup } from '../model/quantity.ts';
import type { Written } from '../model/source.ts';
import { countBefore } from '../text/count-before.ts';
import { foldName } from '../text/names.ts';
import type { Practice } from './practice.ts';

/** What has a name that can be followed and changed. */
export type NamedKind = 'movement' | 'athlete' | 'place' | 'plan';

/** A place where something is named. */
export interface Mention {
  readonly kind: NamedKind;
  readonly written: Written;
  /** The folded name: what it is compared by. */
  readonly key: string;
  /** `spelling` stands behind `also` in a definition, `avoided` where a pattern may stand as well. */
  readonly role: 'definition' | 'spelling' | 'use' | 'avoided';
}

const remembered = new WeakMap<Entry, readonly Mention[]>();

/** Every name in an entry, in no particular order. Remembered as long as the entry's text does not change. */
export function listMentions(entry: Entry): readonly Mention[] {
  const known = remembered.get(entry);
  if (known) return known;
  const found = [...collect(entry)];
  remembered.set(entry, found);
  return found;
}

/** Keys by entry, and the version of what names stand for: a number that no other practice has. */
const namedKeys = new WeakMap<Entry, { readonly version: number; readonly keys: ReadonlySet<string> }>();

/** Keys of the movements that an entry names; of what nothing defines, its name. */
export function listKeysNamed(practice: Practice, entry: Entry): ReadonlySet<string> {
  const version = practice.movementsVersion;
  const known = namedKeys.get(entry);
  if (known?.version === version) return known.keys;
  const keys = listKeysIn(practice, entry, () => true);
  namedKeys.set(entry, { version, keys });
  return keys;
}

/** The same of those of its lines that are chosen, by their number in the entry. */
export function listKeysIn(
  practice: Practice,
  entry: Entry,
  isChosen: (line: number) => boolean,
): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const { kind, written, key } of listMentions(entry))
    if (kind === 'movement' && isChosen(written.span.line)) keys.add(practice.keyOfFolded(key));
  return keys;
}

/** The entry that a line of a file belongs to. */
export function findEntry({ entries }: FileModel, line: number): PlacedEntry | undefined {
  const placed = entries[countBefore(entries, (before) => before.line + before.entry.lineCount <= line)];
  return placed && line >= placed.line ? placed : undefined;
}

/** The name at a line and UTF-16 column of a file, both from 0; right behind a name still counts as at it. */
export function findMention(
  file: FileModel,
  line: number,
  column: number,
): { readonly placed: PlacedEntry; readonly mention: Mention } | undefined {
  const placed = findEntry(file, line);
  const mention =
    placed &&
    listMentions(placed.entry).find(({ written: { span } }) => {
      return placed.line + span.line === line && span.start <= column && column <= span.end;
    });
  return mention && { placed: placed!, mention };
}

/** A session's or a plan's blocks, of whatever day. */
export function listBlocks(entry: Entry): readonly Block[] {
  if (entry.kind === 'plan') return entry.days.flatMap(({ blocks }) => blocks);
  return entry.kind === 'session' || entry.kind === 'unknown' ? entry.blocks : [];
}

function* collect(entry: Entry): Iterable<Mention> {
  switch (entry.kind) {
    case 'units':
      return;
    case 'exercise':
      yield* mention('movement', entry.name, 'definition');
      for (const name of entry.also) yield* mention('movement', name, 'spelling');
      for (const name of [...entry.easier, ...entry.harder]) yield* mention('movement', name);
      return;
    case 'place':
      yield* mention('place', entry.name, 'definition');
      return;
    case 'athlete':
      yield* mention('athlete', entry.name, 'definition');
      for (const { movement } of [...entry.maxes, ...entry.goals, ...entry.retests])
        yield* mention('movement', movement);
      for (const { load } of entry.maxes) yield* ofLoad(load);
      for (const { set } of entry.goals) if (set) yield* ofSet(set);
      for (const { what } of entry.avoid) yield* mention('movement', what, 'avoided');
      return;
    case 'plan':
      yield* mention('plan', entry.name, 'definition');
      for (const name of entry.athletes) yield* mention('athlete', name);
      yield* mention('place', entry.place);
      yield* mention('plan', entry.follows);
      break;
    case 'session':
      for (const name of entry.athletes) yield* mention('athlete', name);
      yield* mention('place', entry.place);
      yield* mention('plan', entry.plan?.name);
  }
  for (const { lines } of listBlocks(entry)) for (const line of lines) yield* ofLine(line);
}

/** The movement of a line, those it stands in for, and those whose max its percentages are of. */
function* ofLine(line: MovementLine): Iterable<Mention> {
  yield* mention('movement', line.name);
  yield* ofModifiers(line.modifiers);
  for (const cell of line.cells) {
    for (const set of cell.sets) yield* ofSet(set);
    yield* ofModifiers(cell.modifiers);
  }
}

function* ofModifiers(modifiers: readonly Modifier[]): Iterable<Mention> {
  for (const modifier of modifiers) if (modifier.kind === 'instead') yield* mention('movement', modifier.of);
}

/** A load that several sets share is written at one of them. */
function* ofSet(set: SetGroup): Iterable<Mention> {
  if (set.ownLoad) yield* ofLoad(set.load);
  for (const { load } of set.drops) yield* ofLoad(load);
}

function* ofLoad(load: Load | undefined): Iterable<Mention> {
  if (load?.kind === 'percent') yield* mention('movement', load.of);
}

function* mention(
  kind: NamedKind,
  written: Written | undefined,
  role: Mention['role'] = 'use',
): Iterable<Mention> {
  if (written) yield { kind, written, key: foldName(written.text), role };
}
