import type { FileModel } from '../model/entry.ts';
import { foldName } from '../text/names.ts';

/** What of a file decides which files its problems rest on. */
export interface FileOutline {
  /** Folded names of those whose sessions or plans it holds; empty for sessions and plans that name nobody. */
  readonly athletes: readonly string[];
  /** Whether it defines anything, and an athlete among it. */
  readonly defines: boolean;
  readonly definesAthlete: boolean;
}

export function outlineFile({ entries }: FileModel): FileOutline {
  const athletes = new Set<string>();
  const kinds = new Set(entries.map(({ entry }) => entry.kind));
  for (const { entry } of entries) {
    if (entry.kind !== 'session' && entry.kind !== 'plan') continue;
    if (entry.athletes.length === 0) athletes.add('');
    for (const { text } of entry.athletes) athletes.add(foldName(text));
  }
  return {
    athletes: [...athletes].sort(),
    defines: (['exercise', 'athlete', 'place', 'plan'] as const).some((kind) => kinds.has(kind)),
    definesAthlete: kinds.has('athlete'),
  };
}

/**
 * For each file the files that its problems rest on, itself among them: those that define something and those that
 * hold sessions of its athletes. A file with a session or a plan that names nobody rests on all; so does every file
 * where no athlete is defined, for then a name is judged by how often others stand.
 */
export function listRests(
  outlines: ReadonlyMap<string, FileOutline>,
): ReadonlyMap<string, readonly string[]> {
  const all = [...outlines.keys()].sort();
  const named = [...outlines.values()].some(({ definesAthlete }) => definesAthlete);
  const byAthletes = new Map<string, readonly string[]>();
  return new Map(
    [...outlines].map(([file, { athletes }]) => {
      if (!named || athletes.includes('')) return [file, all];
      const key = athletes.join('\n');
      const rests = byAthletes.get(key) ?? all.filter((other) => counts(outlines.get(other)!, athletes));
      byAthletes.set(key, rests);
      return [file, rests.includes(file) ? rests : [...rests, file].sort()];
    }),
  );
}

function counts({ athletes, defines }: FileOutline, whose: readonly string[]): boolean {
  return defines || athletes.some((athlete) => athlete === '' || whose.includes(athlete));
}
