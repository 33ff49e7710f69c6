/** A place in a file: line and UTF-16 column, both from 0. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

export interface FileRange {
  readonly start: Position;
  readonly end: Position;
}

/** Text that takes the place of a range of a file. */
export interface FileEdit {
  readonly range: FileRange;
  readonly newText: string;
}

export function rangeBetween(line: number, character: number, endLine: number, end: number): FileRange {
  return { start: { line, character }, end: { line: endLine, character: end } };
}

/** A piece of one line replaced. */
export function editLine(line: number, start: number, end: number, newText: string): FileEdit {
  return { range: rangeBetween(line, start, line, end), newText };
}

/** Replaces a line's text by another, touching no more of it than differs; nothing where it stays. */
export function replaceLine(line: number, before: string, after: string): FileEdit[] {
  if (before === after) return [];
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start++;
  let kept = 0;
  while (kept < shorter - start && before.at(-1 - kept) === after.at(-1 - kept)) kept++;
  return [editLine(line, start, before.length - kept, after.slice(start, after.length - kept))];
}
