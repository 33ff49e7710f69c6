import { measureEditDistance } from '../text/edit-distance.ts';
import {
  HEADER_WORDS,
  type HeaderWord,
  LINE_WORDS,
  type LineContext,
  NUMBER_PROPERTIES,
  PROPERTIES,
  TRAINING_CONTEXTS,
} from '../vocabulary/keywords.ts';
import { findComment, findNameColon, skipSpace, trimEnd } from './scanned-token.ts';

/** What a line is, given the kind of entry it stands in. Columns are UTF-16. */
export type LineKind =
  | { readonly kind: 'blank' }
  | { readonly kind: 'header'; readonly word: HeaderWord; readonly rest: number }
  /** A header with an unknown or mistyped word: opens an entry that enters no total. */
  | { readonly kind: 'title' }
  | { readonly kind: 'note'; readonly start: number }
  | { readonly kind: 'property'; readonly word: string; readonly start: number; readonly rest: number }
  | { readonly kind: 'block'; readonly start: number; readonly rest: number }
  | { readonly kind: 'movement'; readonly start: number; readonly colon: number }
  | { readonly kind: 'stray'; readonly start: number };

const WORD = /[\p{L}\p{M}]+/uy;
const BLOCK =
  /^(?:[a-z]\s+)?(?:straight|circuit|superset|giant\s+set|every|amrap|for\s+time|intervals|warm-?up|cool-?down)(?![\p{L}\p{M}-])/iu;
/** A date, in whichever form. `8/8` may be a date too, but only behind a word that is nearly a header's. */
const DATE_LIKE = /^(?:\d{4}-\d|\d{1,2}([./])\d{1,2}\1\d{2})/;
/** `Nov 24`, `Monday 24 Nov`: a day in words, as far as digits stand in it. */
const WORD_DATE_LIKE =
  /^(?:on\s+)?(?:(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[.,]?\s+(?:\d|(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.?\s*\d)|(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.?\s*\d)/i;
const DAY_MONTH_LIKE = /^\d{1,2}[./]\d{1,2}(?![\d./])/;

/**
 * Recognises a line by itself: `A circuit, 4 rounds` is a block in a session and a stray line in a place.
 * Never fails; a line that nothing recognises is a stray one.
 */
export function recogniseLine(line: string, context: LineContext): LineKind {
  const start = skipSpace(line, 0);
  if (start === line.length || findComment(line, start) === start) return { kind: 'blank' };
  if (line[start] === '>') return { kind: 'note', start };
  return recogniseHeader(line, context) ?? recogniseContent(line, start, context) ?? { kind: 'stray', start };
}

/** A header, or a line shaped like one. Headers stand at the very beginning of a line. */
function recogniseHeader(line: string, context: LineContext): LineKind | undefined {
  const begin = line.charCodeAt(0) === 0xfeff ? 1 : 0;
  const word = readWord(line, begin);
  if (word === undefined) return undefined;
  const lower = word.toLowerCase();
  const end = trimEnd(line, begin, findComment(line, begin));
  const afterWord = begin + word.length;
  if (afterWord < end && !/[\s:\u00a0]/.test(line[afterWord]!)) return undefined;
  const rest = skipColon(line, afterWord, end);
  const content = line.slice(rest, end);
  if ((HEADER_WORDS as readonly string[]).includes(lower)) {
    const header = { kind: 'header', word: lower as HeaderWord, rest } as const;
    if (lower === 'session') return mayFollowSession(word, content) ? header : undefined;
    // An athlete's own `units` may stand at the beginning of a line too.
    if (lower === 'units') return context === 'athlete' ? undefined : header;
    // `Exercise Bike: 20:00` is a movement; any other colon is one too many in a name.
    const colon = findNameColon(line, rest, end);
    return colon < 0 || !/^\s*[\d?(]/.test(line.slice(colon + 1, end)) ? header : undefined;
  }
  if (LINE_WORDS.has(lower)) return undefined;
  if (DATE_LIKE.test(content)) return { kind: 'title' };
  if (DAY_MONTH_LIKE.test(content) && isNearHeader(lower)) return { kind: 'title' };
  if (word !== lower || !isName(content)) return undefined;
  return isNearHeader(lower) || (/\s/.test(content) && word.length >= 4) ? { kind: 'title' } : undefined;
}

/** A date, or nothing yet; with the date forgotten, an athlete or a place. `Session Finisher` is a movement. */
function mayFollowSession(word: string, content: string): boolean {
  if (content === '' || /^\d/.test(content) || WORD_DATE_LIKE.test(content)) return true;
  if (word === 'session' && /^(?:on\s+)?(?:today|tonight|yesterday|tomorrow)\b/i.test(content)) return true;
  return word === 'session' && (isName(content) || /^at\s/.test(content));
}

/** Words that each begin with a capital, as people's and places' names do. */
function isName(text: string): boolean {
  return /^[\p{L}\p{M}'\u2019\-\s]+$/u.test(text) && text.split(/\s+/).every((word) => /^\p{Lu}/u.test(word));
}

/** The header word that a mistyped one is nearest to: `sesion` → `session`. */
export function findNearHeader(word: string): HeaderWord | undefined {
  return HEADER_WORDS.find(
    (header) => measureEditDistance(word.toLowerCase(), header, 2) <= (header.length > 5 ? 2 : 1),
  );
}

function isNearHeader(word: string): boolean {
  return findNearHeader(word) !== undefined;
}

function recogniseContent(line: string, start: number, context: LineContext): LineKind | undefined {
  const end = trimEnd(line, start, findComment(line, start));
  const property = recogniseProperty(line, start, end, context);
  if (!TRAINING_CONTEXTS.has(context)) return property;
  const colon = findNameColon(line, start, end);
  const name = line.slice(start, colon < 0 ? end : colon).trim();
  const block = recogniseBlock(line, start, end);
  if (colon >= 0 && !/[,@|]/.test(name)) {
    // `effort: 7` and `A circuit: 4 rounds` are written with a colon now and then; any other colon ends a name.
    if (property && line.slice(start, colon).trim().toLowerCase() === property.word) return property;
    if (block && block.rest > colon) return block;
    if (property?.word === 'day' && /^day\s+\d+$/i.test(name)) return property;
    return { kind: 'movement', start, colon };
  }
  return block ?? property;
}

function recogniseProperty(line: string, start: number, end: number, context: LineContext) {
  const word = readWord(line, start);
  const lower = word?.toLowerCase();
  if (lower === undefined || !Object.hasOwn(PROPERTIES[context], lower)) return undefined;
  const afterWord = start + word!.length;
  if (/[\p{L}\p{M}\-\u2019']/u.test(line[afterWord] ?? '')) return undefined;
  const rest = skipColon(line, afterWord, end);
  if (
    TRAINING_CONTEXTS.has(context) &&
    NUMBER_PROPERTIES.has(lower) &&
    rest < end &&
    /\p{Lu}/u.test(line[rest]!)
  )
    return undefined;
  return { kind: 'property', word: lower, start, rest } as const;
}

function recogniseBlock(line: string, start: number, end: number) {
  const match = BLOCK.exec(line.slice(start, end));
  if (!match) return undefined;
  const after = line.slice(start + match[0].length, end);
  // `Every Day Stretch` is no block: behind the kind stand its settings, or nothing.
  if (!/^\s*(?:$|[,:]|\d|x\s*\d|rest\b|cap\b|alternating\b|for\b)/i.test(after)) return undefined;
  return { kind: 'block', start, rest: skipColon(line, start + match[0].length, end) } as const;
}

function readWord(line: string, at: number): string | undefined {
  WORD.lastIndex = at;
  return WORD.exec(line)?.[0];
}

/** Position behind an optional colon: keywords may be followed by one. */
function skipColon(line: string, from: number, end: number): number {
  const at = skipSpace(line, from, end);
  return line[at] === ':' && at < end ? skipSpace(line, at + 1, end) : at;
}
