/** The entries of one version, by what they are about: kind and name, or whose session it is and when. */
import type { Entry, PlacedEntry } from '../model/entry.ts';
import type { Practice } from '../practice/practice.ts';
import { printEntry } from '../printing/print-entry.ts';
import { foldName } from '../text/names.ts';
import { findConflicts } from './find-conflicts.ts';
import type { ConflictedFile } from './revision.ts';

export interface EntryVersion {
  readonly path: string;
  readonly placed: PlacedEntry;
  readonly entry: Entry;
  /** As it is shown: a name, or `2026-11-17 07:10 Nell`. */
  readonly name: string;
  /** Folded name of a definition. */
  readonly nameKey: string;
  /** Its text as written, for a first look. */
  readonly text: string;
  /** A merge left two versions of it: it is not compared. */
  readonly isConflicted: boolean;
}

/** Named once in a whole practice. */
export const NAMED: ReadonlySet<Entry['kind']> = new Set(['exercise', 'athlete', 'place', 'plan']);

export function listVersions(practice: Practice, paths: readonly string[]): EntryVersion[] {
  return paths.flatMap((path) => {
    const file = practice.file(path);
    if (!file) return [];
    const conflicts = findConflicts(file.lines);
    return file.model.entries.map((placed): EntryVersion => {
      const { entry, line } = placed;
      const name = nameEntry(practice, entry);
      return {
        path,
        placed,
        entry,
        name,
        nameKey: foldName(name),
        text: file.lines
          .slice(line, line + entry.lineCount)
          .join('\n')
          .trimEnd(),
        isConflicted: conflicts.some(({ first, last }) => first < line + entry.lineCount && last >= line),
      };
    });
  });
}

export function listConflicted(
  practice: Practice,
  paths: readonly string[],
  side: ConflictedFile['side'],
): ConflictedFile[] {
  return paths.flatMap((path) => {
    const regions = findConflicts(practice.file(path)?.lines ?? []).map(({ first, last }) => ({
      first: first + 1,
      last: last + 1,
    }));
    return regions.length > 0 ? [{ path, side, regions }] : [];
  });
}

function nameEntry(practice: Practice, entry: Entry): string {
  switch (entry.kind) {
    case 'units':
      return '';
    case 'session': {
      const names = entry.athletes.map(({ text }) => practice.findAthlete(text)?.name ?? text);
      const whose = names.length > 0 ? names.join(' | ') : practice.athleteName(practice.resolveAthlete(''));
      return [entry.date?.date ?? entry.date?.text, entry.clock, whose].filter(Boolean).join(' ');
    }
    case 'unknown':
      return entry.title?.text ?? '';
    default:
      return entry.name?.text ?? '';
  }
}

/** What it says, whatever its layout and comments. */
export function isSameEntry(before: EntryVersion, after: EntryVersion): boolean {
  return before.text === after.text || printEntry(before.entry) === printEntry(after.entry);
}
