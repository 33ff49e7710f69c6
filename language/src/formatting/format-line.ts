import { KEYWORD_SPELLINGS, type ScannedLine, scanLine } from '../syntax/line-scanner.ts';
import { type ScannedToken, skipSpace, trimEnd } from '../syntax/scanned-token.ts';
import type { LineContext } from '../vocabulary/keywords.ts';
import { isNotationWord } from './notation-words.ts';
import { spaceBefore } from './space-tokens.ts';

const DASHES = /[\u2010-\u2015\u2212]/g;
/** Between the content of a line and the comment behind it. */
const BEFORE_COMMENT = '  ';

/**
 * The canonical text of one line without its indentation: one space between words, none in `3x5` and `8-12`, words of
 * the notation in lower case. Names, free text, comments and numbers stay as they are. A line that nothing recognises
 * or that would be read otherwise afterwards keeps its text.
 */
export function formatContent(line: string, context: LineContext): string {
  const scanned = scanLine(line, context);
  const kept = keepContent(line);
  const { kind } = scanned.line;
  if (kind === 'blank' || kind === 'stray' || kind === 'title') return kept;
  if (kind === 'note') return kept.replace(/^>(?=[^\s>])/u, '> ');
  if (scanned.tokens.some((token) => token.kind === 'ODD')) return kept;
  const written = writeTokens(line, scanned);
  return isSame(line, scanned, written, context) ? written : kept;
}

/** A line without the space around it. */
export function keepContent(line: string): string {
  const start = skipSpace(line, 0);
  return line.slice(start, trimEnd(line, start, line.length));
}

function writeTokens(line: string, { line: kind, tokens }: ScannedLine): string {
  const content = tokens.filter((token) => token.kind !== 'COMMENT');
  const words = content.map((token, at) => spaceBefore(content, at, kind) + writeToken(line, token));
  const comment = tokens.find((token) => token.kind === 'COMMENT');
  return words.join('') + (comment ? BEFORE_COMMENT + line.slice(comment.start, comment.end) : '');
}

/** A token as it is written canonically; what it says stays. */
function writeToken(line: string, token: ScannedToken): string {
  const text = line.slice(token.start, token.end);
  switch (token.kind) {
    case 'SYMBOL':
      return token.keyword!;
    case 'TIMES':
      return 'x';
    case 'LETTER':
    case 'LABEL':
      return text.toUpperCase();
    case 'PREFIX':
      return text.toLowerCase();
    case 'LADDER':
      return text.replace(DASHES, '-');
    case 'TEMPO':
      return /^[\dx\-\u2010-\u2015\u2212]+$/i.test(text) ? text.replace(DASHES, '-').toUpperCase() : text;
    case 'WORD':
      return writeWord(text);
    default:
      return text;
  }
}

/** A band's colour or a day of the week is no word of the notation, and keeps its capitals. */
function writeWord(text: string): string {
  const lower = text.toLowerCase();
  // The symbol of the watt is a capital one.
  if (lower === 'w') return 'W';
  return isNotationWord(lower) || KEYWORD_SPELLINGS.has(lower) ? lower : text;
}

/** Whether a rewritten line is cut into the same tokens, so that it means the same. */
function isSame(line: string, before: ScannedLine, written: string, context: LineContext): boolean {
  const header = before.line.kind === 'header';
  // A line that is no header stays indented, and only at the margin may it become one.
  const text = header ? written : `  ${written}`;
  const after = scanLine(text, context);
  const describe = (from: string, { line, tokens }: ScannedLine): string =>
    JSON.stringify([
      line.kind,
      'word' in line && line.word,
      tokens.map((token) => [token.kind, token.keyword, writeToken(from, token)]),
    ]);
  return describe(line, before) === describe(text, after);
}
