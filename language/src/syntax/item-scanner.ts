import { type ScannedToken, skipSpace, trimEnd } from './scanned-token.ts';

const DATE = /\d{4}-\d{1,2}-\d{1,2}(?![\d-])/y;
const ODD_DATE = /(?:\d{1,2}([./])\d{1,2}\1\d{2,4}|\d{4}([./])\d{1,2}\2\d{1,2})(?!\d)/y;
/** A day and a month, or more, in another order: only where a date stands. */
const DAY_MONTH = /(?:\d{1,4}\/\d{1,2}(?:\/\d{1,4})?|\d{1,4}\.\d{1,2}\.(?:\d{1,4})?)(?![\d./])/y;
/** Whatever stands behind `tempo`: a check says which phases it may have. */
const TEMPO = /[^\s,|]+/y;
const LADDER = /\d+(?:[-\u2010-\u2015\u2212]\d+){2,}/y;
const TIME = /\d+:\d{1,2}(?::\d{1,2})?(?!\d)/y;
/** `22,5 kg`; without a unit, only what cannot begin the next set: `22,5, 5 @ 60` but not `60,5 @ 80`. */
const DECIMAL_COMMA = /\d+,\d{1,2}(?=\s*(?:$|[,|%]|kgs?\b|lbs?\b|rpe\b|rir\b|hr\b|v\b|drop\b))/iy;
const KILO_COMMA = /\d+,\d{1,2}(?=\s*(?:kgs?|lbs?)\b)/iy;
const HALF_COMMA = /\d,5(?=\s*(?:$|[,|]))/y;
const ANY_DECIMAL_COMMA = /\d+,\d{1,2}(?!\d)/y;
const NUMBER = /\d+(?:\.\d+)?/y;
const COUNTED = /\d|\(|\?|,|amrap|skipped/iy;
const WORD = /[\p{L}\p{M}]+(?:['\u2019][\p{L}\p{M}]+)*/uy;

const DASHES = /[-\u2010-\u2015\u2212]/;
const SYMBOLS = '@,|()/+&%?:';

/** Words behind which a date stands. */
const DATE_WORDS = new Set(['on', 'by', 'until', 'to', 'starts', 'away', 'screened']);

/** Words after which a name or text stands, and what ends that. Longer phrases come first. */
const BEFORE_TEXT: readonly {
  readonly words: readonly string[];
  readonly kind: 'NAME' | 'TEXT';
  readonly number?: true;
}[] = [
  { words: ['instead', 'of'], kind: 'NAME' },
  { words: ['%', 'of'], kind: 'NAME' },
  { words: ['setting'], kind: 'TEXT' },
  { words: ['pain'], kind: 'TEXT', number: true },
];

/** What ends a name within items, beside a comma and a bar: a rating, a drop or a day behind `75% of Back Squat`. */
const AFTER_NAME = /\s(?:(?:rpe|rir|hr|v)\s*\d|drop\s*(?:[\d(?@]|amrap|skipped)|(?:on|by)\s*\d{4}-)/i;

export interface ItemContext {
  /** The word before the first item. */
  readonly before?: ScannedToken | undefined;
  /** No comma separates here, so that one between digits is a decimal comma. */
  readonly decimalCommas?: boolean;
}

/**
 * Cuts the items of a line between `from` and `end` into tokens: numbers, times, units, words, symbols, and names or
 * texts behind the few words that announce one. Never fails: an odd character is a token of its own.
 */
export function scanItems(
  line: string,
  from: number,
  end: number,
  context: ItemContext = {},
): ScannedToken[] {
  // Nothing behind `end` is seen: a comment, or what another shape reads.
  const text = end < line.length ? line.slice(0, end) : line;
  const tokens: ScannedToken[] = [];
  let at = skipSpace(text, from);
  while (at < text.length) {
    const token = findText(tokens, text, at) ?? scanItem(tokens, text, at, context);
    tokens.push(token);
    at = skipSpace(text, token.end);
  }
  return tokens;
}

function scanItem(
  tokens: readonly ScannedToken[],
  text: string,
  at: number,
  context: ItemContext,
): ScannedToken {
  const previous = tokens.at(-1) ?? context.before;
  const char = text[at]!;
  const token = (kind: ScannedToken['kind'], length: number, keyword?: string): ScannedToken => ({
    kind,
    start: at,
    end: at + length,
    ...(keyword !== undefined && { keyword }),
  });
  if (previous?.keyword === 'tempo') {
    const length = matchAt(TEMPO, text, at);
    if (length) return token('TEMPO', length);
  }
  if (char >= '0' && char <= '9') {
    const comma = matchDecimalComma(tokens, previous, text, at, context);
    if (comma) return token('NUMBER', comma);
    const isDate = DATE_WORDS.has(previous?.keyword ?? '');
    for (const [kind, pattern] of isDate ? DATES : NUMBERS) {
      const length = matchAt(pattern, text, at);
      if (length) return token(kind, length);
    }
    return token('NUMBER', matchAt(NUMBER, text, at));
  }
  if (char === '\u00d7') return token('TIMES', 1);
  if (DASHES.test(char)) return token('SYMBOL', 1, '-');
  if (SYMBOLS.includes(char)) return token('SYMBOL', 1, char);
  if (char === '\u00b0') return token('WORD', 1, '°');
  const length = matchAt(WORD, text, at);
  if (length === 0) return token('ODD', (text.codePointAt(at) ?? 0) > 0xffff ? 2 : 1);
  const word = text.slice(at, at + length).toLowerCase();
  if (
    word.startsWith('x') &&
    isCountBefore(previous) &&
    (length === 1 ? isCountAfter(text, at + 1) : ['xamrap', 'xskipped'].includes(word))
  ) {
    return token('TIMES', 1);
  }
  return token('WORD', length, word);
}

/** Length of what a sticky pattern finds at a place, or 0. */
function matchAt(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0].length ?? 0;
}

/** A comma within a number is a slip only where a weight or a rating stands: elsewhere `5,5,4` are three sets. */
function matchDecimalComma(
  tokens: readonly ScannedToken[],
  previous: ScannedToken | undefined,
  text: string,
  at: number,
  context: ItemContext,
): number {
  if (context.decimalCommas) return matchAt(ANY_DECIMAL_COMMA, text, at);
  const behind = previous?.kind === 'TIMES' ? tokens.at(-3)?.keyword : previous?.keyword;
  const pattern = behind === undefined ? undefined : DECIMAL_COMMAS.get(behind);
  return pattern ? matchAt(pattern, text, at) : 0;
}

const DECIMAL_COMMAS: ReadonlyMap<string, RegExp> = new Map([
  ['@', DECIMAL_COMMA],
  ['+', KILO_COMMA],
  ['-', KILO_COMMA],
  ['&', KILO_COMMA],
  ['rpe', HALF_COMMA],
  ['rir', HALF_COMMA],
]);

const NUMBERS = [
  ['DATE', DATE],
  ['ODD_DATE', ODD_DATE],
  ['LADDER', LADDER],
  ['TIME', TIME],
] as const;

const DATES = [
  ['DATE', DATE],
  ['ODD_DATE', DAY_MONTH],
  ['TIME', TIME],
] as const;

/** `3 x 5`, `3 rounds x 2 passes`, `100 kg x 5`: an x stands between numbers, or behind a counted word. */
function isCountBefore(previous: ScannedToken | undefined): boolean {
  return (
    previous?.kind === 'NUMBER' ||
    ['rounds', 'round', 'kg', 'lb', 'kgs', 'lbs'].includes(previous?.keyword ?? '')
  );
}

function isCountAfter(text: string, from: number): boolean {
  const next = skipSpace(text, from);
  return next === text.length || matchAt(COUNTED, text, next) > 0;
}

/** The name or text that the tokens before `at` announce, up to a comma, a bar or the end. */
function findText(tokens: readonly ScannedToken[], text: string, at: number): ScannedToken | undefined {
  for (const { words, kind, number } of BEFORE_TEXT) {
    if (number && tokens.at(-1)?.kind !== 'NUMBER') continue;
    const count = tokens.length - (number ? 1 : 0);
    if (!words.every((word, index) => tokens[count - words.length + index]?.keyword === word)) continue;
    const stop = text.slice(at).search(/[,|]/);
    let end = stop < 0 ? text.length : at + stop;
    if (kind === 'NAME') {
      const after = text.slice(at, end).search(AFTER_NAME);
      if (after >= 0) end = at + after;
    }
    end = trimEnd(text, at, end);
    if (end === at || text.slice(at, end).toLowerCase() === 'bw') return undefined;
    return { kind, start: at, end };
  }
  return undefined;
}
