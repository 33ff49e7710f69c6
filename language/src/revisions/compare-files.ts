import type { EntryPair } from './match-entries.ts';
import type { FileChange } from './revision.ts';

/** Files that came, went or have another name; a file with half of the entries of one that is gone is that file. */
export function compareFiles(
  before: readonly string[],
  after: readonly string[],
  pairs: readonly EntryPair[],
): FileChange[] {
  const [earlier, later] = [new Set(before), new Set(after)];
  const gone = new Set(before.filter((path) => !later.has(path)));
  const counts = countEntries(pairs);
  const changes: FileChange[] = [];
  for (const path of after) {
    if (earlier.has(path)) continue;
    const was = [...gone].find((former) => holdsMost(counts, former, path));
    if (was !== undefined) gone.delete(was);
    changes.push(was === undefined ? { change: 'added', path } : { change: 'renamed', path, was });
  }
  return [...changes, ...[...gone].map((path): FileChange => ({ change: 'removed', path }))];
}

/** How many entries a file has before, after, and how many went from one to another. */
function countEntries(pairs: readonly EntryPair[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const add = (key: string): void => void counts.set(key, (counts.get(key) ?? 0) + 1);
  for (const { before, after } of pairs) {
    if (before) add(`before ${before.path}`);
    if (after) add(`after ${after.path}`);
    if (before && after) add(`${before.path}\n${after.path}`);
  }
  return counts;
}

function holdsMost(counts: ReadonlyMap<string, number>, was: string, path: string): boolean {
  const shared = counts.get(`${was}\n${path}`) ?? 0;
  const most = Math.max(counts.get(`before ${was}`) ?? 0, counts.get(`after ${path}`) ?? 0);
  return shared > 0 && shared * 2 >= most;
}
