import type { LineKind } from '../syntax/line-kind.ts';
import type { ScannedToken } from '../syntax/scanned-token.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';

/** Symbols that touch what stands before them. */
const TIGHT_BEFORE = new Set([',', ')', ':', '%', '/', '&', '°']);
/** Symbols that touch what stands behind them. */
const TIGHT_AFTER = new Set(['(', '/', '&', '-']);
/** Behind these a sign opens a step: `, +1 rep`, `then +2 kg`, `after 3 misses -10%`. */
const BEFORE_STEP = new Set([',', '|', ':', 'then', 'rest', 'misses', 'miss']);
/** What ends a load. */
const AFTER_LOAD = new Set([',', '|', 'drop']);

/** The space that canonical text has before the token `at` of a line; the first has none. */
export function spaceBefore(tokens: readonly ScannedToken[], at: number, line: LineKind): '' | ' ' {
  const [previous, token] = [tokens[at - 1], tokens[at]!];
  if (!previous) return '';
  if (previous.kind === 'TIMES' && token.keyword !== ',') return spacesTimes(tokens, at - 1, line) ? ' ' : '';
  if (token.kind === 'TIMES') return spacesTimes(tokens, at, line) ? ' ' : '';
  const [before, word] = [previous.keyword ?? '', token.keyword ?? ''];
  if (word === '+') return touchesPlus(tokens, at, line) ? '' : ' ';
  if (before === '+') return touchesBehindPlus(tokens, at - 1, line) ? '' : ' ';
  if (TIGHT_BEFORE.has(word) || TIGHT_AFTER.has(before)) return '';
  if (word === '-') return isValue(previous) ? '' : ' ';
  return ' ';
}

/** `3x5` and `2x18 kg`, but `intervals 6 x 500 m`, `3 rounds x 2 passes` and `100 kg x 5`. */
function spacesTimes(tokens: readonly ScannedToken[], at: number, line: LineKind): boolean {
  return line.kind === 'block' || tokens[at - 1]?.kind === 'WORD';
}

/** `5+`, `bw+5 kg`, `(2+2)`; but `80 kg + 20 kg chain`, `4 rounds + 5` and `, +1 rep`. */
function touchesPlus(tokens: readonly ScannedToken[], at: number, line: LineKind): boolean {
  const previous = tokens[at - 1];
  if (isInParentheses(tokens, at) || previous?.keyword === 'bw') return true;
  return !opensStep(previous) && !addsUp(tokens, at, line);
}

function touchesBehindPlus(tokens: readonly ScannedToken[], at: number, line: LineKind): boolean {
  const previous = tokens[at - 1];
  if (isInParentheses(tokens, at) || previous?.keyword === 'bw' || opensStep(previous)) return true;
  // Behind `5+` stands `/side`, which touches it anyway, or something new.
  return tokens[at + 1]?.keyword === '/' || (tokens[at + 1]?.keyword === ',' && !addsUp(tokens, at, line));
}

function opensStep(previous: ScannedToken | undefined): boolean {
  return previous === undefined || BEFORE_STEP.has(previous.keyword ?? '');
}

/** Whether a plus adds one thing to another: within a load, or in what was done. */
function addsUp(tokens: readonly ScannedToken[], at: number, line: LineKind): boolean {
  if (line.kind === 'property') return line.word === 'done' || line.word === 'max' || isInLoad(tokens, at);
  return isInLoad(tokens, at);
}

function isInLoad(tokens: readonly ScannedToken[], at: number): boolean {
  return findBefore(tokens, at, (keyword) => keyword === '@' || AFTER_LOAD.has(keyword)) === '@';
}

function isInParentheses(tokens: readonly ScannedToken[], at: number): boolean {
  return findBefore(tokens, at, (keyword) => keyword === '(' || keyword === ')') === '(';
}

/** So far back something may belong to what stands at a token: no line that is meant is as long. */
const FARTHEST = 200;

/** The last keyword of a kind before a token. */
function findBefore(
  tokens: readonly ScannedToken[],
  at: number,
  isMeant: (keyword: string) => boolean,
): string | undefined {
  for (let index = at - 1; index >= Math.max(0, at - FARTHEST); index--) {
    const { keyword = '' } = tokens[index]!;
    if (isMeant(keyword)) return keyword;
  }
  return undefined;
}

/** What a range begins with, so that a dash behind it is no sign. */
function isValue({ kind, keyword = '' }: ScannedToken): boolean {
  if (kind === 'NUMBER' || kind === 'TIME') return true;
  return (
    keyword === '%' || keyword === ')' || keyword === 'bw' || (kind === 'WORD' && UNIT_WORDS.has(keyword))
  );
}
