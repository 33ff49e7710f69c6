/** Which entry of one version is which of another, renamed or not, in whichever file it stands. */

import type { Practice } from '../practice/practice.ts';
import { printEntry } from '../printing/print-entry.ts';
import { foldName } from '../text/names.ts';
import { type EntryVersion, NAMED } from './entry-versions.ts';

export interface EntryPair {
  readonly before?: EntryVersion;
  readonly after?: EntryVersion;
}

export interface EntryMatch {
  readonly pairs: readonly EntryPair[];
  readonly renames: Renames;
}

/** The later names of movements, athletes, places and plans by kind and folded earlier name. */
export class Renames {
  readonly #names = new Map<string, string>();

  add(kind: string, before: string, after: string): void {
    this.#names.set(`${kind}\n${foldName(before)}`, after);
  }

  /** The name that it has now; as it is where it was not renamed. */
  find(kind: 'exercise' | 'athlete' | 'place' | 'plan', name: string): string {
    return this.#names.get(`${kind}\n${foldName(name)}`) ?? name;
  }
}

/** Of two plans that share this part of their lines, one is the other renamed. */
const LEAST_SHARED = 0.5;

/** `after` resolves spellings: a movement whose former name is now in `also` was renamed. */
export function matchEntries(
  before: readonly EntryVersion[],
  after: readonly EntryVersion[],
  later: Practice,
): EntryMatch {
  const renames = new Renames();
  const named = (list: readonly EntryVersion[]) => list.filter(({ entry }) => NAMED.has(entry.kind));
  const others = (list: readonly EntryVersion[]) => list.filter(({ entry }) => !NAMED.has(entry.kind));
  const definitions = pairBy(
    named(before),
    named(after),
    ({ entry, nameKey }) => `${entry.kind}\n${nameKey}`,
  );
  const followed = followRenames(definitions, renames, later);
  const training = pairBy(others(before), others(after), keyOfOther, (version) =>
    renameSession(version, renames),
  );
  return { pairs: [...followed, ...training], renames };
}

/** Pairs of the same key, the first with the first; what is left over stands alone. */
function pairBy(
  before: readonly EntryVersion[],
  after: readonly EntryVersion[],
  toKey: (version: EntryVersion) => string,
  toEarlierKey = toKey,
): EntryPair[] {
  const waiting = new Map<string, EntryVersion[]>();
  for (const version of before) {
    const key = toEarlierKey(version);
    waiting.set(key, [...(waiting.get(key) ?? []), version]);
  }
  const pairs = after.map((version): EntryPair => {
    const same = waiting.get(toKey(version)) ?? [];
    const former = same.find(({ path }) => path === version.path) ?? same[0];
    if (former) same.splice(same.indexOf(former), 1);
    return former ? { before: former, after: version } : { after: version };
  });
  return [...pairs, ...[...waiting.values()].flat().map((version) => ({ before: version }))];
}

/** Whose and when; of what has neither, the file and its title. */
function keyOfOther({ entry, path, nameKey }: EntryVersion): string {
  return entry.kind === 'session' ? `session\n${nameKey}` : `${entry.kind}\n${path}\n${nameKey}`;
}

function renameSession(version: EntryVersion, renames: Renames): string {
  const { entry } = version;
  if (entry.kind !== 'session' || entry.athletes.length === 0) return keyOfOther(version);
  const names = entry.athletes.map(({ text }) => renames.find('athlete', text)).join(' | ');
  const key = [entry.date?.date ?? entry.date?.text, entry.clock, names].filter(Boolean).join(' ');
  return `session\n${foldName(key)}`;
}

function followRenames(pairs: readonly EntryPair[], renames: Renames, later: Practice): EntryPair[] {
  const removed = pairs.flatMap(({ before, after }) => (before && !after ? [before] : []));
  const added = new Set(pairs.flatMap(({ before, after }) => (after && !before ? [after] : [])));
  const kept = pairs.filter(({ before, after }) => before && after);
  const found: EntryPair[] = [];
  for (const before of removed) {
    const after =
      [...added].find((version) => answersTo(before, version)) ?? findSameBody(before, removed, [...added]);
    if (after) {
      added.delete(after);
      renames.add(before.entry.kind, before.name, after.name);
      found.push({ before, after });
    } else {
      const merged = before.entry.kind === 'exercise' ? later.findMovement(before.name) : undefined;
      // Its name is another spelling of a movement that was there already.
      if (merged && merged.key !== before.nameKey) renames.add('exercise', before.name, merged.name);
      found.push({ before });
    }
  }
  return [...kept, ...found, ...[...added].map((after) => ({ after }))];
}

function answersTo({ entry, nameKey }: EntryVersion, { entry: candidate }: EntryVersion): boolean {
  if (entry.kind !== 'exercise' || candidate.kind !== 'exercise') return false;
  return candidate.also.some(({ text }) => foldName(text) === nameKey);
}

/** The one new definition that says the same under another name; a plan may have changed besides. */
function findSameBody(
  before: EntryVersion,
  removed: readonly EntryVersion[],
  added: readonly EntryVersion[],
): EntryVersion | undefined {
  const body = listBody(before);
  if (body.length === 0) return undefined;
  const isSame = (one: EntryVersion, other: EntryVersion): boolean =>
    one.entry.kind === other.entry.kind && listBody(one).join('\n') === listBody(other).join('\n');
  const same = added.filter((version) => isSame(version, before));
  if (same.length === 1 && removed.filter((version) => isSame(version, before)).length === 1) return same[0];
  if (before.entry.kind !== 'plan') return undefined;
  return added
    .filter(({ entry }) => entry.kind === 'plan')
    .map((version) => ({ version, share: measureShare(body, listBody(version)) }))
    .filter(({ share }) => share >= LEAST_SHARED)
    .sort((a, b) => b.share - a.share)[0]?.version;
}

/** What an entry says beside its name. */
function listBody({ entry }: EntryVersion): string[] {
  return printEntry(entry)
    .split('\n')
    .slice(1)
    .filter((line) => !/^\s*also\s/.test(line));
}

function measureShare(before: readonly string[], after: readonly string[]): number {
  const left = [...after];
  const shared = before.filter((line) => {
    const at = left.indexOf(line);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
  return shared.length / Math.max(before.length, after.length);
}
