import type { Entry } from '../../model/entry.ts';
import type { Problem } from '../../model/source.ts';
import { findNameColon, trimEnd } from '../../syntax/scanned-token.ts';
import type { MassUnit } from '../../units/mass.ts';
import type { OpenBlock } from '../build-block.ts';
import type { EntryFrame } from '../build-entry.ts';
import { EntryReading } from '../line-reading.ts';
import { makeSession } from '../session-entry.ts';
import { settle } from '../settle.ts';
import { TrainingFold, type TrainingPiece } from '../training-fold.ts';
import { readBlockLine } from './block-line.ts';
import { giveUp, IRREGULAR } from './line-cursor.ts';
import { LineMemo } from './line-memo.ts';
import type { HeadMemo } from './movement-head.ts';
import { readMovementLine } from './movement-line.ts';
import { readPropertyLine } from './property-line.ts';
import { readSessionHeader } from './session-header.ts';

/** No line that a coach writes is as long; a longer one may have more tokens than the parser takes. */
const LONGEST = 500;
/** A comma within a number may be a slip, and `#` may begin a comment. */
const DOUBTFUL = /\d,\d|#/;
/** `#1` may be no comment, and `## session 2026-11-17` a header. */
const DOUBTFUL_COMMENT = /^\s*#+(?:\d|\s*session\b)/i;
const ASCII = /^[\x20-\x7e]*$/;
const NOBODY: ReadonlySet<number> = new Set();

/**
 * Reads a session whose lines are all regular straight from its text, without tokens or a tree: most of what ten years
 * of logs hold. The grammar stays the definition of the notation. Whatever is not regular in the strictest sense, or
 * would give a problem, gives `undefined`, and the generated parser reads the entry; tests compare the two.
 */
export function readRegularSession(
  lines: readonly string[],
  frame: EntryFrame,
  fileUnit: MassUnit | undefined,
  memo = new LineMemo(),
): Entry | undefined {
  try {
    return readSession(lines, frame, fileUnit, memo);
  } catch (error) {
    if (error === IRREGULAR) return undefined;
    throw error;
  }
}

function readSession(
  lines: readonly string[],
  frame: EntryFrame,
  fileUnit: MassUnit | undefined,
  memo: LineMemo,
): Entry | undefined {
  const first = lines[0]!;
  if (first.length > LONGEST || DOUBTFUL.test(first)) return undefined;
  const header = readSessionHeader(first, memo.tails);
  const known = memo.of(fileUnit);
  const reading = new EntryReading(fileUnit, NOBODY);
  const fold = new TrainingFold(reading);
  for (let index = 1; index < lines.length; index++) {
    const text = lines[index]!;
    if (text === '') continue;
    const piece = known.find(index, text) ?? readNew(reading, memo, text, index);
    if (piece) fold.take(piece);
  }
  // A problem may depend on more than this reader sees.
  if (reading.problems.length > 0) return undefined;
  const training = fold.finish();
  return makeSession(frame, header, training, training.blocks, settle<Problem>([]));
}

function readNew(
  reading: EntryReading,
  memo: LineMemo,
  text: string,
  index: number,
): TrainingPiece | undefined {
  const piece = readLine(reading, memo.heads, text, index);
  if (piece && reading.problems.length === 0) memo.of(reading.fileUnit).keep(index, text, piece);
  return piece;
}

/** What a line says; undefined for a blank line or a comment. */
function readLine(
  reading: EntryReading,
  heads: HeadMemo,
  text: string,
  index: number,
): TrainingPiece | undefined {
  let start = 0;
  while (text.charCodeAt(start) === 32 || text.charCodeAt(start) === 9) start++;
  if (start === text.length) return undefined;
  const char = text[start]!;
  if (char === '#') return DOUBTFUL_COMMENT.test(text) ? giveUp() : undefined;
  if (char === '>') return readNote(text, index, start);
  // At the beginning of a line a word may open an entry: that is for others to decide.
  if (start === 0 || text.length > LONGEST || DOUBTFUL.test(text)) giveUp();
  const colon = findNameColon(text, start, text.length);
  if (colon >= 0)
    return { kind: 'movement', line: readMovementLine(reading, heads, text, index, start, colon) };
  if (!ASCII.test(text.slice(start))) giveUp();
  const block = readBlockLine(text, index, start);
  if (block) return { kind: 'block', open: () => copyBlock(block) };
  return readPropertyLine(text, index, start, reading.fileUnit) ?? giveUp();
}

/** A header stands over other lines each time. */
function copyBlock(block: OpenBlock): OpenBlock {
  return { ...block, lines: [], notes: [] };
}

function readNote(text: string, index: number, start: number): TrainingPiece {
  const end = trimEnd(text, start, text.length);
  const note = text.slice(start, end).replace(/^>\s*/, '');
  return { kind: 'note', text: note, span: { line: index, start, end } };
}
