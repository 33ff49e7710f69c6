import type { FileEdit } from '@plimsoll/language/formatting/file-edit';
import { splitLines } from '@plimsoll/language/text/lines';

/** A text after edits that do not overlap, as an editor applies them. */
export function applyFileEdits(text: string, edits: readonly FileEdit[]): string {
  const lines = splitLines(text);
  const offsets = edits.map(({ range, newText }) => ({
    from: lines[range.start.line]!.offset + range.start.character,
    to: lines[range.end.line]!.offset + range.end.character,
    newText,
  }));
  let after = text;
  let last = Number.POSITIVE_INFINITY;
  for (const { from, to, newText } of offsets.reverse()) {
    if (to > last || from > to)
      throw new Error(`edits overlap or are out of order: ${JSON.stringify(edits)}`);
    last = from;
    after = after.slice(0, from) + newText + after.slice(to);
  }
  return after;
}
