import type { FileEdit } from '../formatting/file-edit.ts';
import type { SetGroup } from '../model/quantity.ts';
import { findMovementLines, type LineAt } from './find-lines.ts';
import { editSpan, type Rewriter, rewriteFile } from './rewrite.ts';

/** `3x5 @ 85 kg` → `5, 5, 5 @ 85 kg`, `3x5 @ 85 kg rpe 8` → `5 @ 85 kg rpe 8` three times: so that one may be changed. */
export const spellOutSets: Rewriter = (request) =>
  rewriteFile(request, 'Write each set out', findMovementLines(request).flatMap(spellOutLine));

function spellOutLine({ placed, line, text }: LineAt): FileEdit[] {
  return line.cells.flatMap(({ sets }) =>
    sets.flatMap((set, index) => {
      if (!set.counted || set.count < 2 || !set.amount) return [];
      const isFirstLoad = sets.slice(0, index).every(({ loadSpan }) => !loadSpan);
      return [editSpan(placed, set.span, spellOut(set, text, isFirstLoad))];
    }),
  );
}

/** Sets before the first load of a cell share it; any other set says its own load and rating. */
function spellOut(set: SetGroup, text: string, isFirstLoad: boolean): string {
  const { count, span, amountSpan, ratings, drops, within } = set;
  const amount = text.slice(amountSpan.start, amountSpan.end);
  const whole = text.slice(amountSpan.start, span.end);
  const sharesLoad = isFirstLoad && ratings.length === 0 && drops.length === 0 && !within;
  return [...Array<string>(count - 1).fill(sharesLoad ? amount : whole), whole].join(', ');
}
