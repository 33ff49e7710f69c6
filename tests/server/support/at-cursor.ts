/** A text with its cursor `<|>` taken out, and where that was: line and UTF-16 column from 0. */
export function readCursor(marked: string): { text: string; line: number; character: number } {
  const [before, after, ...more] = marked.split('<|>');
  if (before === undefined || after === undefined || more.length > 0) {
    throw new Error(`Expected one cursor in ${JSON.stringify(marked)}`);
  }
  const lines = before.split('\n');
  return { text: before + after, line: lines.length - 1, character: lines.at(-1)!.length };
}
