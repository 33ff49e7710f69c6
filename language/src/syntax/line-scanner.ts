import { type HeaderWord, type LineContext, PROPERTIES, type PropertyShape } from '../vocabulary/keywords.ts';
import { scanItems } from './item-scanner.ts';
import { type LineKind, recogniseLine } from './line-kind.ts';
import { findComment, findNameColon, type ScannedToken, skipSpace, trimEnd } from './scanned-token.ts';

/** Spellings of a keyword that are understood as it. */
export const KEYWORD_SPELLINGS: ReadonlyMap<string, string> = new Map([
  ['warm-up', 'warmup'],
  ['cool-down', 'cooldown'],
]);

const PREFIX = /(?:(warm-?up|test)|(week)\s+(\d+)|([a-z]\d{1,2})[.)]?)\s+(?=\S)/iy;
/** Anything made of digits before a name stands for a date; the T of ISO 8601 may join it to the time of day. */
const SESSION_TIME = /^(\d[\d./-]*)(?:(?:\s+|T)\d{1,2}:\d{1,2}(?!\d))?/i;
const DATE = /^\d{4}-\d{1,2}-\d{1,2}$/;
const BLOCK_LETTER = /^([a-z])\s+(?=\p{L})/iu;

export interface ScannedLine {
  readonly line: LineKind;
  readonly tokens: readonly ScannedToken[];
}

/**
 * Cuts one line into tokens, given the kind of entry it stands in: names and free text are one token each, what is
 * left is numbers, words and symbols. A pure function of its two arguments, so that a broken line harms no other.
 */
export function scanLine(line: string, context: LineContext): ScannedLine {
  const recognised = recogniseLine(line, context);
  return { line: recognised, tokens: scanTokens(line, recognised, context) };
}

function scanTokens(line: string, kind: LineKind, context: LineContext): ScannedToken[] {
  switch (kind.kind) {
    case 'blank': {
      const comment = findComment(line);
      return comment < line.length
        ? [{ kind: 'COMMENT', start: comment, end: trimEnd(line, comment, line.length) }]
        : [];
    }
    case 'note':
      return [{ kind: 'NOTE', start: kind.start, end: trimEnd(line, kind.start, line.length) }];
    case 'stray':
      return withComment(line, kind.start, (end) => [{ kind: 'STRAY', start: kind.start, end }]);
    case 'title':
      return withComment(line, skipSpace(line, 0), (end) => [
        { kind: 'TITLE', start: skipSpace(line, 0), end },
      ]);
    case 'header':
      return withComment(line, skipSpace(line, 0), (end) => [
        wordAt(skipSpace(line, 0), kind.word),
        ...scanHeader(line, kind.word, kind.rest, end),
      ]);
    case 'property': {
      const word = wordAt(kind.start, kind.word);
      const shape = PROPERTIES[context][kind.word]!;
      if (shape === 'text') return [word, ...textToken('TEXT', line, kind.rest, line.length)];
      return withComment(line, kind.start, (end) => [word, ...scanShape(line, kind.rest, end, shape, word)]);
    }
    case 'block':
      return withComment(line, kind.start, (end) => scanBlock(line, kind.start, end));
    case 'movement':
      return withComment(line, kind.start, (end) => [
        ...scanPrefixedName(line, kind.start, kind.colon),
        { kind: 'SYMBOL', start: kind.colon, end: kind.colon + 1, keyword: ':' },
        ...scanItems(line, kind.colon + 1, end),
      ]);
  }
}

function wordAt(start: number, keyword: string): ScannedToken {
  return { kind: 'WORD', start, end: start + keyword.length, keyword };
}

function scanHeader(line: string, word: HeaderWord, from: number, end: number): ScannedToken[] {
  if (word === 'session') return scanSessionHeader(line, from, end);
  if (word === 'units') return scanItems(line, from, end);
  // Whatever the name holds: a check says what it may not.
  return textToken('NAME', line, from, end);
}

/** Scans the part before a comment, and adds the comment. */
function withComment(line: string, from: number, scan: (end: number) => ScannedToken[]): ScannedToken[] {
  const comment = findComment(line, from);
  const tokens = scan(trimEnd(line, from, comment));
  if (comment < line.length)
    tokens.push({ kind: 'COMMENT', start: comment, end: trimEnd(line, comment, line.length) });
  return tokens;
}

function textToken(kind: 'NAME' | 'TEXT', line: string, from: number, to: number): ScannedToken[] {
  const start = skipSpace(line, from, to);
  const end = trimEnd(line, start, to);
  return end > start ? [{ kind, start, end }] : [];
}

/** Names between commas; behind a muscle a trailing share such as `1/2` is left to the items. */
function scanNames(line: string, from: number, end: number, mayShare = false): ScannedToken[] {
  const tokens: ScannedToken[] = [];
  let at = from;
  while (at <= end) {
    const comma = line.indexOf(',', at);
    const stop = comma < 0 || comma > end ? end : comma;
    const share = mayShare && /\s\d+\s*\/\s*\d+\s*$/.exec(line.slice(at, stop));
    const nameEnd = share ? at + share.index : stop;
    tokens.push(...textToken('NAME', line, at, nameEnd), ...scanItems(line, nameEnd, stop));
    if (stop < end) tokens.push({ kind: 'SYMBOL', start: stop, end: stop + 1, keyword: ',' });
    at = stop + 1;
  }
  return tokens;
}

/** Items up to a name's or text's beginning, then the name or text. */
function scanShape(
  line: string,
  from: number,
  end: number,
  shape: PropertyShape,
  word: ScannedToken,
): ScannedToken[] {
  switch (shape) {
    case 'items':
    case 'text':
      return scanItems(line, from, end, { before: word });
    case 'item':
      return scanItems(line, from, end, { before: word, decimalCommas: true });
    case 'name':
    case 'names':
      return scanNames(line, from, end);
    case 'shared names':
      return scanNames(line, from, end, true);
    case 'items, text':
      return scanItemsThenText(line, from, end, word);
    case 'number text': {
      const number = /^\d+(?:\.\d+)?\s*/.exec(line.slice(from, end))?.[0].length ?? 0;
      const comma = line.indexOf(',', from);
      const stop = comma < 0 || comma > end ? end : comma;
      return [
        ...scanItems(line, from, from + number),
        ...textToken('TEXT', line, from + number, stop),
        ...scanItems(line, stop, end),
      ];
    }
    case 'number name': {
      const number = /^\d+\s*:?\s*/.exec(line.slice(from, end))?.[0] ?? '';
      return [
        ...scanItems(line, from, from + number.replace(/\s*:\s*$/, '').length),
        ...textToken('NAME', line, from + number.length, end),
      ];
    }
    case 'word name': {
      const word = /^\p{L}+/u.exec(line.slice(from, end))?.[0].length ?? 0;
      return [...scanItems(line, from, from + word), ...scanNames(line, from + word, end)];
    }
    case 'name number': {
      const digit = line.slice(from, end).search(/\s\d/);
      const stop = digit < 0 ? end : from + digit;
      return [...textToken('NAME', line, from, stop), ...scanItems(line, stop, end)];
    }
    case 'name: items':
    case 'name: item': {
      const colon = findNameColon(line, from, end);
      const stop = colon < 0 ? end : colon;
      const decimalCommas = shape === 'name: item';
      return [...textToken('NAME', line, from, stop), ...scanItems(line, stop, end, { decimalCommas })];
    }
    case 'name until': {
      const until = line.slice(from, end).search(/(?<=^|\s)until(?=\s|$)|,/i);
      const stop = until < 0 ? end : from + until;
      return [...textToken('NAME', line, from, stop), ...scanItemsThenText(line, stop, end)];
    }
  }
}

function scanItemsThenText(line: string, from: number, end: number, before?: ScannedToken): ScannedToken[] {
  const comma = line.indexOf(',', from);
  if (comma < 0 || comma >= end) return scanItems(line, from, end, { before });
  return [...scanItems(line, from, comma + 1, { before }), ...textToken('TEXT', line, comma + 1, end)];
}

/** `2026-11-17 07:10 Ivo | Tibor at Herne Loft, Wicker Base week 2 day 1`. */
function scanSessionHeader(line: string, from: number, end: number): ScannedToken[] {
  const [when = '', date = ''] = SESSION_TIME.exec(line.slice(from, end)) ?? [];
  const tokens: ScannedToken[] = [];
  if (date)
    tokens.push({ kind: DATE.test(date) ? 'DATE' : 'ODD_DATE', start: from, end: from + date.length });
  if (when.length > date.length) tokens.push(...scanItems(line, from + date.length + 1, from + when.length));
  let at = from + when.length;
  while (at < end) {
    const stop = line.slice(at, end).search(/[,|]|(?:^|\s)at(?=\s|$)|\s(?:week|day)\s+\d/i);
    const nameEnd = stop < 0 ? end : at + stop;
    tokens.push(...textToken('NAME', line, at, nameEnd));
    at = skipSpace(line, nameEnd, end);
    if (at >= end) break;
    const word = /^(?:at(?=\s|$)|(?:week|day)\s+\d+|[,|])/i.exec(line.slice(at, end))?.[0] ?? line[at]!;
    tokens.push(...scanItems(line, at, at + word.length));
    at += word.length;
  }
  return tokens;
}

function scanBlock(line: string, start: number, end: number): ScannedToken[] {
  const letter = BLOCK_LETTER.exec(line.slice(start, end));
  const tokens: ScannedToken[] = letter ? [{ kind: 'LETTER', start, end: start + 1 }] : [];
  const from = start + (letter?.[0].length ?? 0);
  const spelled = /^(?:warm-up|cool-down)/i.exec(line.slice(from, end))?.[0];
  if (spelled) {
    tokens.push({
      kind: 'WORD',
      start: from,
      end: from + spelled.length,
      keyword: KEYWORD_SPELLINGS.get(spelled.toLowerCase())!,
    });
  }
  const items = scanItems(line, from + (spelled?.length ?? 0), end);
  return [...tokens, ...items.filter((item) => item.keyword !== ':')];
}

/** `warmup`, `test`, `week 5` and `A1` before a movement's name. */
function scanPrefixedName(line: string, start: number, colon: number): ScannedToken[] {
  const tokens: ScannedToken[] = [];
  let at = start;
  for (;;) {
    PREFIX.lastIndex = at;
    const match = PREFIX.exec(line);
    if (!match || at + match[0].length > colon || !/\p{L}/u.test(line.slice(at + match[0].length, colon)))
      break;
    const [all, word, week, , label] = match;
    if (word) tokens.push({ kind: 'PREFIX', start: at, end: at + word.length });
    else if (week) tokens.push(...scanItems(line, at, at + all.length));
    else tokens.push({ kind: 'LABEL', start: at, end: at + label!.length });
    at += all.length;
  }
  return [...tokens, ...textToken('NAME', line, at, colon)];
}
