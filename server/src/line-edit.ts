import type { LineEdit } from '@plimsoll/language/text/line-edit';
import { splitTexts } from '@plimsoll/language/text/lines';
import type { TextDocumentContentChangeEvent } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';

/**
 * Which lines a change of the editor made others, of a document that has taken it in. Undefined where there is more than
 * one change, or the whole text is given anew.
 */
export function findLineEdit(
  lineCountBefore: number,
  document: TextDocument,
  changes: readonly TextDocumentContentChangeEvent[],
): LineEdit | undefined {
  const [change] = changes;
  if (changes.length !== 1 || !change || !('range' in change)) return undefined;
  const touched = [change.range.start.line, change.range.end.line];
  // An editor may name a line behind the last one, and mean the end.
  const [first, last] = [Math.min(...touched), Math.max(...touched)].map((line) =>
    Math.min(Math.max(0, line), lineCountBefore - 1),
  );
  const removed = last! - first! + 1;
  // Where halves of a line end meet, there may be fewer lines than were typed: the document has counted them.
  const behind = first! + removed + document.lineCount - lineCountBefore;
  const start = { line: first!, character: 0 };
  const added = splitTexts(document.getText({ start, end: { line: behind, character: 0 } }));
  // What stands behind the last line end is the next line.
  if (behind < document.lineCount) added.pop();
  return { first: first!, removed, added };
}
