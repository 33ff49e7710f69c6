import { type ScannedToken, skipSpace, trimEnd } from './scanned-token.ts';

const DATE = /\d{4}-\d{1,2}-\d{1,2}(?![\d-])/y;
const ODD_DATE = /(?:\d{1,2}([./])\d{1,2}\1\d{2,4}|\d{4}([./])\d{1,2}\2\d{1,2})(?!\d)/y;
const TEMPO = /[0-9xX](?:[-\u2010-\u2015\u2212][0-9xX]){2,3}(?![\p{L}\d])/uy;
const LADDER = /\d+(?:[-\u2010-\u2015\u2212]\d+){2,}/y;
const TIME = /\d+:\d{1,2}(?::\d{1,2})?(?!\d)/y;
const DECIMAL_COMMA = /\d+,\d{1,2}(?=\s*(?:kgs?|lbs?)\b)/iy;
const NUMBER = /\d+(?:\.\d+)?/y;
const WORD = /[\p{L}\p{M}]+(?:['\u2019][\p{L}\p{M}]+)*/uy;

const DASHES = /[-\u2010-\u2015\u2212]/;
const SYMBOLS = '@,|()/+&%?:';

/** Words after which a name or text stands, and what ends that. Longer phrases come first. */
const BEFORE_TEXT: readonly { readonly words: readonly string[]; readonly kind: 'NAME' | 'TEXT'; readonly number?: true }[] = [
  { words: ['instead', 'of'], kind: 'NAME' },
  { words: ['%', 'of'], kind: 'NAME' },
  { words: ['setting'], kind: 'TEXT' },
  { words: ['pain'], kind: 'TEXT', number: true },
];

/** What ends a name within items, beside a comma and a bar: a rating or a drop behind `75% of Back Squat`. */
const AFTER_NAME = /\s(?:(?:rpe|rir|hr|v)\s*\d|drop\s*\d)/i;

/**
 * Cuts the items of a line between `from` and `end` into tokens: numbers, times, units, words, symbols, and names or
 * texts behind the few words that announce one. Never fails: an odd character is a token of its own.
 */
export function scanItems(line: string, from: number, end: number): ScannedToken[] {
  const tokens: ScannedToken[] = [];
  const matchAt = (pattern: RegExp, at: number): number => {
    pattern.lastIndex = at;
    const length = pattern.exec(line)?.[0].length ?? 0;
    return at + length <= end ? length : 0;
  };
  let at = skipSpace(line, from, end);
  while (at < end) {
    const text = findTextEnd(tokens, line, at, end);
    const token = text ?? scanItem(tokens.at(-1), tokens.at(-3), line, at, end, matchAt);
    tokens.push(token);
    at = skipSpace(line, token.end, end);
  }
  return tokens;
}

function scanItem(
  previous: ScannedToken | undefined,
  third: ScannedToken | undefined,
  line: string,
  at: number,
  end: number,
  matchAt: (pattern: RegExp, at: number) => number,
): ScannedToken {
  const char = line[at]!;
  const token = (kind: ScannedToken['kind'], length: number, keyword?: string): ScannedToken => ({
    kind,
    start: at,
    end: at + length,
    ...(keyword !== undefined && { keyword }),
  });
  if (previous?.keyword === 'tempo') {
    const length = matchAt(TEMPO, at);
    if (length) return token('TEMPO', length);
  }
  if (char >= '0' && char <= '9') {
    for (const [kind, pattern] of NUMBERS) {
      const length = matchAt(pattern, at);
      if (length) return token(kind, length);
    }
    // A comma within a number is a slip only right behind `@`: elsewhere `5,5,4` are three sets.
    const behindAt = previous?.keyword === '@' || (previous?.kind === 'TIMES' && third?.keyword === '@');
    const comma = behindAt ? matchAt(DECIMAL_COMMA, at) : 0;
    return token('NUMBER', comma || matchAt(NUMBER, at));
  }
  if (char === '\u00d7') return token('TIMES', 1);
  if (DASHES.test(char)) return token('SYMBOL', 1, '-');
  if (SYMBOLS.includes(char)) return token('SYMBOL', 1, char);
  if (char === '\u00b0') return token('WORD', 1, '°');
  const length = matchAt(WORD, at);
  if (length === 0) return token('ODD', (line.codePointAt(at) ?? 0) > 0xffff ? 2 : 1);
  const word = line.slice(at, at + length).toLowerCase();
  if (word.startsWith('x') && isCountBefore(previous) && (length === 1 ? isCountAfter(line, at + 1, end) : word === 'xamrap')) {
    return token('TIMES', 1);
  }
  return token('WORD', length, word);
}

const NUMBERS = [
  ['DATE', DATE],
  ['ODD_DATE', ODD_DATE],
  ['LADDER', LADDER],
  ['TIME', TIME],
] as const;

/** `3 x 5`, `3 rounds x 2 passes`, `100 kg x 5`: an x stands between numbers, or behind a counted word. */
function isCountBefore(previous: ScannedToken | undefined): boolean {
  return previous?.kind === 'NUMBER' || ['rounds', 'round', 'kg', 'lb', 'kgs', 'lbs'].includes(previous?.keyword ?? '');
}

function isCountAfter(line: string, from: number, end: number): boolean {
  const next = line.slice(skipSpace(line, from, end), end);
  return next === '' || /^(?:\d|\(|\?|amrap)/i.test(next);
}

/** The name or text that the tokens before `at` announce, up to a comma, a bar or the end. */
function findTextEnd(tokens: readonly ScannedToken[], line: string, at: number, end: number): ScannedToken | undefined {
  for (const { words, kind, number } of BEFORE_TEXT) {
    const before = number ? tokens.slice(0, -1) : tokens;
    if (number && tokens.at(-1)?.kind !== 'NUMBER') continue;
    if (!words.every((word, index) => before.at(index - words.length)?.keyword === word)) continue;
    const stop = line.slice(at, end).search(/[,|]/);
    let textEnd = stop < 0 ? end : at + stop;
    if (kind === 'NAME') {
      const after = line.slice(at, textEnd).search(AFTER_NAME);
      if (after >= 0) textEnd = at + after;
    }
    textEnd = trimEnd(line, at, textEnd);
    if (textEnd === at || line.slice(at, textEnd).toLowerCase() === 'bw') return undefined;
    return { kind, start: at, end: textEnd };
  }
  return undefined;
}
