import type { PlacedEntry } from '../model/entry.ts';

/** Lines of a file: `from` up to but not including `to`. */
export interface Chunk {
  readonly from: number;
  readonly to: number;
}

/**
 * The lines of an entry with the comments at the margin right above its header, without those above the next header
 * and without the blank lines at its end.
 */
export function findChunk(texts: readonly string[], { line, entry }: PlacedEntry): Chunk {
  const from = findTop(texts, line);
  const end = line + entry.lineCount;
  let to = end < texts.length ? findTop(texts, end) : end;
  while (to > line + 1 && texts[to - 1]!.trim() === '') to--;
  return { from, to };
}

function findTop(texts: readonly string[], header: number): number {
  let top = header;
  while (top > 0 && texts[top - 1]!.startsWith('#')) top--;
  return top;
}
