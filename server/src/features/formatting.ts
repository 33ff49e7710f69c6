import { findBrokenLines, formatLineAt, formatText } from '@plimsoll/language/formatting/format-text';
import type { Position, Range, TextEdit } from 'vscode-languageserver';
import type { FeatureContext } from './context.ts';

/** Behind this character, the line that was just left is formatted. */
export const FORMATTED_ON = '\n';

/** The edits that bring a whole document, or the lines of a range, into canonical form. */
export function provideFormatting(context: FeatureContext, uri: string, range?: Range): TextEdit[] {
  const text = context.workspace.textOf(uri);
  if (text === undefined) return [];
  const lines = range && { from: range.start.line, to: lastLineOf(range) };
  return toTextEdits(
    formatText(text, { brokenLines: brokenLinesOf(context, uri), ...(lines && { range: lines }) }),
  );
}

/** Formats the line above the cursor: Enter has just ended it. */
export function provideOnTypeFormatting(
  context: FeatureContext,
  uri: string,
  position: Position,
): TextEdit[] {
  const text = context.workspace.textOf(uri);
  if (text === undefined) return [];
  return toTextEdits(formatLineAt(text, position.line - 1, { brokenLines: brokenLinesOf(context, uri) }));
}

function brokenLinesOf({ practice }: FeatureContext, uri: string): ReadonlySet<number> {
  const file = practice.file(uri);
  return file ? findBrokenLines(file.model) : new Set();
}

/** A range that ends at the beginning of a line does not hold that line. */
function lastLineOf({ start, end }: Range): number {
  return end.character === 0 && end.line > start.line ? end.line - 1 : end.line;
}

function toTextEdits(edits: ReturnType<typeof formatText>): TextEdit[] {
  return edits.map(({ range, newText }) => ({ range, newText }));
}
