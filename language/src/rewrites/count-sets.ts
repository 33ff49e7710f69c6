import type { FileEdit } from '../formatting/file-edit.ts';
import type { SetGroup } from '../model/quantity.ts';
import { LIMITS } from '../vocabulary/limits.ts';
import { findMovementLines, type LineAt } from './find-lines.ts';
import { editSpan, type Rewriter, rewriteFile } from './rewrite.ts';

/** `5, 5, 5 @ 85 kg` → `3x5 @ 85 kg`: neighbours that say the same are counted. */
export const countSets: Rewriter = (request) =>
  rewriteFile(request, 'Count equal sets, as in 3x5', findMovementLines(request).flatMap(countLine));

function countLine({ placed, line, text }: LineAt): FileEdit[] {
  return line.cells.flatMap(({ sets }) =>
    findRuns(sets, text).flatMap((run) => {
      const [first, last] = [run[0]!, run.at(-1)!];
      const count = run.reduce((sum, set) => sum + set.count, 0);
      if (run.length < 2 || count > LIMITS.sets.high) return [];
      const amount = text.slice(first.amountSpan.start, first.amountSpan.end);
      const rest = text.slice(last.amountSpan.end, last.span.end);
      return [editSpan(placed, { ...first.span, end: last.span.end }, `${count}x${amount}${rest}`)];
    }),
  );
}

function findRuns(sets: readonly SetGroup[], text: string): SetGroup[][] {
  const runs: SetGroup[][] = [];
  for (const set of sets) {
    const run = runs.at(-1);
    if (run && saysSame(run.at(-1)!, set, text)) run.push(set);
    else runs.push([set]);
  }
  return runs;
}

/** Whether nothing but a comma stands between two sets, and both say the same. */
function saysSame(one: SetGroup, next: SetGroup, text: string): boolean {
  if (!one.amount || !next.amount || !/^\s*,\s*$/.test(text.slice(one.span.end, next.span.start)))
    return false;
  // An `@` still waits for its load.
  if ([one, next].some(({ loadSpan, load }) => loadSpan && !load)) return false;
  return describe(one) === describe(next);
}

function describe({ amount, within, load, ratings, drops }: SetGroup): string {
  return JSON.stringify([amount, within, load, ratings, drops], (key, value) =>
    key === 'span' ? undefined : value,
  );
}
