import { type LineEdit, replaceLines } from '@plimsoll/language/text/line-edit';
import { splitLines, splitTexts } from '@plimsoll/language/text/lines';
import type { Position, Range, TextDocumentContentChangeEvent } from 'vscode-languageserver';

/**
 * A document as it stands in the editor. It is kept line by line, so that a key typed into a text of a megabyte makes no
 * other text of a megabyte: the whole is put together when somebody asks for it.
 */
export class OpenDocument {
  readonly uri: string;
  version: number;
  /** Each with its line end. */
  #lines: string[];
  #text: string | undefined;

  constructor(uri: string, version: number, text: string) {
    this.uri = uri;
    this.version = version;
    this.#text = text;
    this.#lines = cutLines(text);
  }

  /** Line ends included. */
  get text(): string {
    this.#text ??= this.#lines.join('');
    return this.#text;
  }

  /** Takes changes in, in order. Says which lines they made others, where that is one change and not of the whole text. */
  update(changes: readonly TextDocumentContentChangeEvent[], version: number): LineEdit | undefined {
    this.version = version;
    let edit: LineEdit | undefined;
    for (const change of changes) {
      if ('range' in change) {
        edit = this.#replace(change.range, change.text);
        this.#text = undefined;
      } else {
        edit = undefined;
        this.#text = change.text;
        this.#lines = cutLines(change.text);
      }
    }
    return changes.length === 1 ? edit : undefined;
  }

  #replace(range: Range, text: string): LineEdit {
    const lines = this.#lines;
    const [start, end] = inOrder(range).map((position) => this.#clamp(position));
    let first = start!.line;
    let piece = lines[first]!.slice(0, start!.character) + text + lines[end!.line]!.slice(end!.character);
    // Where halves of a line end meet, they are one.
    if (piece.startsWith('\n') && lines[first - 1]?.endsWith('\r')) piece = lines[--first]! + piece;
    const removed = end!.line - first + 1;
    const isLast = end!.line === lines.length - 1;
    const cut = cutLines(piece);
    const added = splitTexts(piece);
    // What stands behind the last line end is the next line.
    if (!isLast) for (const list of [cut, added]) list.pop();
    // Most keys leave as many lines as there were.
    if (cut.length === removed) for (const [index, line] of cut.entries()) lines[first + index] = line;
    else this.#lines = replaceLines(lines, { first, removed, added: cut });
    return { first, removed, added };
  }

  /** A place in the text: what is named behind a line, or behind all lines, means its end. */
  #clamp({ line, character }: Position): Position {
    const lines = this.#lines;
    if (line < 0) return { line: 0, character: 0 };
    if (line >= lines.length) return { line: lines.length - 1, character: lines.at(-1)!.length };
    const { length } = splitTexts(lines[line]!)[0]!;
    return { line, character: Math.min(Math.max(0, character), length) };
  }
}

function inOrder({ start, end }: Range): [Position, Position] {
  const isTurned = start.line > end.line || (start.line === end.line && start.character > end.character);
  return isTurned ? [end, start] : [start, end];
}

/** Each line with its end; what stands behind the last one is a line too. */
function cutLines(text: string): string[] {
  return splitLines(text).map((line) =>
    text.slice(line.offset, line.offset + line.text.length + line.endLength),
  );
}
