/** One line of a text, without its line end. */
export interface TextLine {
  readonly text: string;
  readonly offset: number;
  /** Length of the line end: 0 (last line), 1 or 2. */
  readonly endLength: number;
}

/** Cuts at CRLF, LF and lone CR, as the editor protocol does. A text always has at least one (maybe empty) line. */
export function splitLines(text: string): TextLine[] {
  const lines: TextLine[] = [];
  let start = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code !== 10 && code !== 13) continue;
    const endLength = code === 13 && text.charCodeAt(at + 1) === 10 ? 2 : 1;
    lines.push({ text: text.slice(start, at), offset: start, endLength });
    at += endLength - 1;
    start = at + 1;
  }
  lines.push({ text: text.slice(start), offset: start, endLength: 0 });
  return lines;
}

/** The texts of {@link splitLines} alone, for those who have no use for offsets. */
export function splitTexts(text: string): string[] {
  return text.includes('\r') ? text.split(/\r\n?|\n/) : text.split('\n');
}
