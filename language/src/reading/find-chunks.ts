import { recogniseLine } from '../syntax/line-kind.ts';
import type { LineContext } from '../vocabulary/keywords.ts';

/** A stretch of lines that is one entry. */
export interface Chunk {
  readonly from: number;
  readonly to: number;
  /** Whether it begins with a header; only a file's first chunk may not. */
  readonly opens: boolean;
  /** Of the lines behind its first: the word of its header, else `unknown`. */
  readonly context: LineContext;
}

/**
 * Cuts lines at their headers, one chunk after another. What stands before the first header is a chunk of its own, if it
 * says anything. `from` may be any line at which a chunk begins or nothing has been said yet.
 */
export function* findChunks(lines: readonly string[], from = 0): Iterable<Chunk> {
  let open: Omit<Chunk, 'to'> | undefined;
  for (let index = from; index < lines.length; index++) {
    const text = lines[index]!;
    if (open && !mayOpen(text.charCodeAt(0))) continue;
    const line = recogniseLine(text, open?.context ?? 'unknown');
    if (line.kind === 'header' || line.kind === 'title') {
      if (open) yield { ...open, to: index };
      open = { from: index, opens: true, context: line.kind === 'header' ? line.word : 'unknown' };
    } else if (!open && line.kind !== 'blank') {
      open = { from: index, opens: false, context: 'unknown' };
    }
  }
  if (open) yield { ...open, to: lines.length };
}

/** Whether a line that begins so may be a header: a letter of any script does, or a byte-order mark before it. */
function mayOpen(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code > 127;
}
