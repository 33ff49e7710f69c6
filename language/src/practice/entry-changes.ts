import type { PlacedEntry } from '../model/entry.ts';
import { countSameEnds } from '../text/same-ends.ts';

/** An entry that stays as it is while its file changes around it. */
export interface MovedEntry extends PlacedEntry {
  readonly lineBefore: number;
}

/** What becomes of a file's entries with an edit; those that stay where they are are not among them. */
export interface EntryChanges {
  readonly removed: readonly PlacedEntry[];
  readonly added: readonly PlacedEntry[];
  readonly moved: readonly MovedEntry[];
}

/** Entries keep their model when their text did not change, so identity tells: no text is compared. */
export function compareEntries(before: readonly PlacedEntry[], after: readonly PlacedEntry[]): EntryChanges {
  const { front: first, back: behind } = countSameEnds(
    before,
    after,
    isSameAt,
    (a, b) => a.entry === b.entry,
  );
  const moved: MovedEntry[] = [];
  const added: PlacedEntry[] = [];
  const left = new Map(before.slice(first, before.length - behind).map((placed) => [placed.entry, placed]));
  for (const placed of after.slice(first, after.length - behind)) {
    const stood = left.get(placed.entry);
    if (!stood) added.push(placed);
    else if (stood.line !== placed.line) moved.push({ ...placed, lineBefore: stood.line });
    left.delete(placed.entry);
  }
  for (let index = behind; index > 0; index--) {
    const placed = after[after.length - index]!;
    const stood = before[before.length - index]!;
    if (stood !== placed && stood.line !== placed.line) moved.push({ ...placed, lineBefore: stood.line });
  }
  return { removed: [...left.values()], added, moved };
}

/** Entries that stay, where their order does not: of two definitions of one name the first counts. */
export function listReordered(before: readonly PlacedEntry[], after: readonly PlacedEntry[]): PlacedEntry[] {
  const [had, have] = [before, after].map((entries) => new Set(entries.map(({ entry }) => entry)));
  const kept = before.filter(({ entry }) => have!.has(entry));
  const stays = after.filter(({ entry }) => had!.has(entry));
  return stays.filter(({ entry }, index) => entry !== kept[index]?.entry);
}

function isSameAt(a: PlacedEntry, b: PlacedEntry): boolean {
  return a.entry === b.entry && a.line === b.line;
}
