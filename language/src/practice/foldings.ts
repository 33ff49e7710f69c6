import type { ReadFile } from '../reading/read-file.ts';
import { SPACE } from '../syntax/scanned-token.ts';
import { type Extent, findBlockExtent, findDayExtent, findEntryExtent, isComment } from './extents.ts';
import { listBlocks } from './mentions.ts';

/** Lines that can be folded under their first. */
export interface Folding extends Extent {
  readonly kind: 'lines' | 'comments';
}

/** What can be folded in a file: entries, a plan's days, blocks, and runs of notes and of comments. */
export function listFoldings({ model, lines }: ReadFile): readonly Folding[] {
  const extents = model.entries.flatMap((placed): Extent[] => {
    const days = placed.entry.kind === 'plan' ? placed.entry.days : [];
    return [
      findEntryExtent(lines, placed),
      ...days.map((day, index) => findDayExtent(lines, placed, day, days[index + 1])),
      ...listBlocks(placed.entry)
        .filter(({ implicit }) => !implicit)
        .map((block) => findBlockExtent(lines, placed, block)),
    ];
  });
  const foldings: Folding[] = [
    ...[...extents, ...findRuns(lines, isNote)].map((extent) => ({ ...extent, kind: 'lines' as const })),
    ...findRuns(lines, isComment).map((extent) => ({ ...extent, kind: 'comments' as const })),
  ];
  return foldings
    .filter(({ first, last }) => last > first)
    .sort((a, b) => a.first - b.first || b.last - a.last);
}

function isNote(line: string): boolean {
  let at = 0;
  while (at < line.length && SPACE.test(line[at]!)) at++;
  return line[at] === '>';
}

function findRuns(lines: readonly string[], belongs: (line: string) => boolean): Extent[] {
  const runs: { first: number; last: number }[] = [];
  for (const [index, line] of lines.entries()) {
    if (!belongs(line)) continue;
    const run = runs.at(-1);
    if (run?.last === index - 1) run.last = index;
    else runs.push({ first: index, last: index });
  }
  return runs;
}
