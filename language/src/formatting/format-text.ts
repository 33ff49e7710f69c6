import type { FileModel } from '../model/entry.ts';
import { listBlocks } from '../practice/mentions.ts';
import { findLineSlip } from '../reading/line-slips/find-line-slip.ts';
import { recogniseLine } from '../syntax/line-kind.ts';
import { splitLines, type TextLine } from '../text/lines.ts';
import { editLine, type FileEdit, type Position, rangeBetween, replaceLine } from './file-edit.ts';
import { formatContent, keepContent } from './format-line.ts';
import { opens, type PlacedLine, placeLines } from './place-lines.ts';

const STEP = '  ';
const BYTE_ORDER_MARK = '\ufeff';

export interface FormatOptions {
  /** Lines that could not be wholly read: they keep their text, and get their indentation. */
  readonly brokenLines?: ReadonlySet<number>;
  /** First and last line to format, both included; the whole text without it. */
  readonly range?: LineRange;
}

export interface LineRange {
  readonly from: number;
  readonly to: number;
}

/**
 * Edits that bring a text into its canonical form, line by line: spacing, indentation, at most one blank line in a row
 * and one before each entry, a line end at the end. What a line says stays, and no line is joined or split.
 */
export function formatText(text: string, options: FormatOptions = {}): FileEdit[] {
  const lines = splitLines(text);
  const placed = placeLines(lines.map((line) => line.text));
  const { from, to } = options.range ?? { from: 0, to: lines.length - 1 };
  const edits = placed.flatMap((line, at) =>
    at >= from && at <= to && !isEmpty(line) ? formatPlaced(line, at, options.brokenLines) : [],
  );
  const lineEnd = findLineEnd(text, lines);
  // Where two begin at one place, a line that is put in stands before what is written there.
  return [...formatGaps(placed, lineEnd), ...edits, ...formatEnd(placed, lineEnd)]
    .filter(({ range }) => range.start.line >= from && endsBy(range.end, to))
    .sort(compareEdits);
}

/** Edits for one line alone: what was typed stays where the other lines are. */
export function formatLineAt(
  text: string,
  at: number,
  { brokenLines }: Omit<FormatOptions, 'range'> = {},
): FileEdit[] {
  const lines = splitLines(text).map((line) => line.text);
  if (at < 0 || at >= lines.length) return [];
  const from = findEntryStart(lines, at);
  // A comment stands like the line that follows it.
  const next = lines.findIndex((line, index) => index > at && !/^\s*(?:#|$)/.test(line));
  const placed = placeLines(lines.slice(from, next < 0 ? undefined : next + 1));
  return formatPlaced(placed[at - from]!, at, brokenLines);
}

/** The line from which on a line's place can be told: that of its header, which looks the same in any entry. */
function findEntryStart(lines: readonly string[], at: number): number {
  return Math.max(
    0,
    lines.findLastIndex((text, index) => {
      if (index > at || /^\s/.test(text)) return false;
      const line = recogniseLine(text, 'unknown');
      // `units` may also be an athlete's.
      return line.kind === 'title' || (line.kind === 'header' && line.word !== 'units');
    }),
  );
}

/** Lines of a file that the reading could not take in wholly. */
export function findBrokenLines({ entries }: FileModel): ReadonlySet<number> {
  return new Set(
    entries.flatMap(({ line, entry }) => {
      const movements = listBlocks(entry).flatMap((block) => block.lines.filter(({ broken }) => broken));
      const others = entry.problems.filter(({ code }) => code === 'syntax');
      return [...movements, ...others].map(({ span }) => line + span.line);
    }),
  );
}

function formatPlaced(
  line: PlacedLine,
  at: number,
  brokenLines: ReadonlySet<number> | undefined,
): FileEdit[] {
  const { text, context, depth } = line;
  if (isEmpty(line)) return replaceLine(at, text, '');
  const mark = at === 0 && text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : '';
  // What is read as it is meant is known by how it is spaced, too.
  const isKept = brokenLines?.has(at) || findLineSlip(text, context, at) !== undefined;
  const content = isKept ? keepContent(text) : formatContent(text, context);
  return replaceLine(at, text, mark + STEP.repeat(depth) + content);
}

/** Blank lines: none at the beginning or the end, one before an entry, elsewhere no more than one in a row. */
function* formatGaps(placed: readonly PlacedLine[], lineEnd: string): Iterable<FileEdit> {
  let previous = -1;
  for (const [at, line] of placed.entries()) {
    if (isEmpty(line)) continue;
    const gap = at - previous - 1;
    if (previous < 0 && gap > 0) yield { range: rangeBetween(0, 0, at, 0), newText: '' };
    if (previous >= 0 && gap > 1) yield { range: rangeBetween(previous + 2, 0, at, 0), newText: '' };
    if (previous >= 0 && gap > 0) yield* replaceLine(previous + 1, placed[previous + 1]!.text, '');
    if (previous >= 0 && gap === 0 && beginsEntry(placed, at)) yield editLine(at, 0, 0, lineEnd);
    previous = at;
  }
}

/** The last line ends like the others, and nothing stands behind it. */
function formatEnd(placed: readonly PlacedLine[], lineEnd: string): FileEdit[] {
  const last = placed.findLastIndex((line) => !isEmpty(line));
  const end = placed.length - 1;
  const endLength = placed[end]!.text.length;
  if (last === end) return [editLine(end, endLength, endLength, lineEnd)];
  const isEnd = end === last + 1 && endLength === 0;
  return isEnd ? [] : [{ range: rangeBetween(last + 1, 0, end, endLength), newText: '' }];
}

/** Whether an entry begins here: at its header, or at the comments that stand right above it at the margin. */
function beginsEntry(placed: readonly PlacedLine[], at: number): boolean {
  const isAbove = ({ isComment, depth }: PlacedLine): boolean => isComment && depth === 0;
  if (at > 0 && isAbove(placed[at - 1]!)) return false;
  let next = at;
  while (placed[next] && isAbove(placed[next]!)) next++;
  return placed[next] !== undefined && opens(placed[next]!);
}

function isEmpty({ kind, isComment }: PlacedLine): boolean {
  return kind === 'blank' && !isComment;
}

/** A whole line ends where the next begins. */
function endsBy(end: Position, to: number): boolean {
  return end.line <= to || (end.line === to + 1 && end.character === 0);
}

function findLineEnd(text: string, lines: readonly TextLine[]): string {
  const first = lines[0]!;
  const { length } = first.text;
  return text.slice(length, length + first.endLength) || '\n';
}

function compareEdits(a: FileEdit, b: FileEdit): number {
  return a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character;
}
