import type { PlacedEntry } from '../model/entry.ts';
import type { ReadFile } from '../reading/read-file.ts';
import { type ScannedLine, scanLine } from '../syntax/line-scanner.ts';
import type { ScannedKind, ScannedToken } from '../syntax/scanned-token.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import { listMentions, type Mention } from './mentions.ts';
import type { Practice } from './practice.ts';

/** Standard types of editors, and what each stands for here. */
export const TOKEN_TYPES = [
  /** Words within a line: `rest`, `of`, `rpe`; `declaration` opens an entry, `definition` a block or a day. */
  'keyword',
  /** Words that open a property's line: `effort`, `time`, `muscles`. */
  'property',
  /** `warmup`, `test` and `week` before a movement. */
  'modifier',
  /** A known movement: `defaultLibrary` where it is built in, `declaration` where it is defined. */
  'function',
  /** A movement that nothing defines. */
  'variable',
  'class',
  'namespace',
  'interface',
  /** The words that name muscles, patterns and equipment; with `readonly` those that stand for an amount: `bw`, `?`. */
  'enumMember',
  /** Letters of blocks and supersets. */
  'label',
  'number',
  /** Units. */
  'type',
  'operator',
  'string',
  'comment',
] as const;
export type TokenType = (typeof TOKEN_TYPES)[number];

export const TOKEN_MODIFIERS = ['declaration', 'definition', 'readonly', 'defaultLibrary'] as const;
export type TokenModifier = (typeof TOKEN_MODIFIERS)[number];

export interface ClassifiedToken {
  /** Counts from the file's first. */
  readonly line: number;
  readonly start: number;
  readonly end: number;
  readonly type: TokenType;
  readonly modifiers: readonly TokenModifier[];
}

type Classified = Pick<ClassifiedToken, 'type' | 'modifiers'>;

/**
 * What the words of a file are, from line to line (both included): the scanner says what each is by its place, and the
 * practice which movements are known. Punctuation, and lines that nothing recognises, are left out.
 */
export function* classifyTokens(
  practice: Practice,
  { model, lines }: ReadFile,
  from = 0,
  to = lines.length - 1,
): Iterable<ClassifiedToken> {
  let at = from;
  for (const placed of model.entries) {
    const end = placed.line + placed.entry.lineCount;
    if (end <= at) continue;
    if (placed.line > to) break;
    // Comments may stand before the first entry.
    for (; at < placed.line; at++) yield* classifyLine(practice, lines[at]!, at, undefined);
    for (; at < end && at <= to; at++) yield* classifyLine(practice, lines[at]!, at, placed);
  }
  for (; at <= to && at < lines.length; at++) yield* classifyLine(practice, lines[at]!, at, undefined);
}

function* classifyLine(
  practice: Practice,
  text: string,
  line: number,
  placed: PlacedEntry | undefined,
): Iterable<ClassifiedToken> {
  const scanned = scanLine(text, placed?.entry.kind ?? 'unknown');
  const mentions = placed
    ? listMentions(placed.entry).filter(({ written }) => placed.line + written.span.line === line)
    : [];
  for (const [index, token] of scanned.tokens.entries()) {
    const mention = mentions.find(({ written }) => written.span.start === token.start);
    const classified =
      token.kind === 'NAME' ? classifyName(practice, scanned, mention) : classifyToken(scanned, index);
    if (classified) yield { line, start: token.start, end: token.end, ...classified };
  }
}

const NAMES = { athlete: 'class', place: 'namespace', plan: 'interface' } as const;

function classifyName(
  practice: Practice,
  { line }: ScannedLine,
  mention: Mention | undefined,
): Classified | undefined {
  if (!mention) {
    // The name of a plan's day is its own; other names without a mention are words of the trade.
    const isDay = line.kind === 'property' && line.word === 'day';
    return line.kind === 'property' && !isDay ? plain('enumMember') : undefined;
  }
  if (mention.role === 'definition') {
    return {
      type: mention.kind === 'movement' ? 'function' : NAMES[mention.kind],
      modifiers: ['declaration'],
    };
  }
  if (mention.kind !== 'movement') return plain(NAMES[mention.kind]);
  const movement = practice.findMovement(mention.key);
  // A pattern may be avoided as well as a movement.
  if (!movement) return mention.role === 'avoided' ? undefined : plain('variable');
  return { type: 'function', modifiers: movement.builtIn ? ['defaultLibrary'] : [] };
}

const BY_KIND: Partial<Readonly<Record<ScannedKind, TokenType>>> = {
  COMMENT: 'comment',
  NOTE: 'string',
  TEXT: 'string',
  LETTER: 'label',
  LABEL: 'label',
  PREFIX: 'modifier',
  DATE: 'number',
  TIME: 'number',
  TEMPO: 'number',
  NUMBER: 'number',
  TIMES: 'operator',
};

const OPERATORS: ReadonlySet<string> = new Set(['@', '|', '/', '+', '-', '&']);
/** Words that stand for an amount or a load. */
const AMOUNTS: ReadonlySet<string> = new Set(['bw', 'amrap', 'skipped', 'alternate', '?']);
/** Behind these no unit stands, but a value: `sex female`, `each rep moves one`. */
const VALUES: ReadonlySet<string> = new Set(['female', 'male', 'one', 'both', 'contacts']);
const MORE_UNITS: ReadonlySet<string> = new Set(
  '% ° band cm w rep reps set sets round rounds pass passes'.split(' '),
);
const WEEKDAY = /^(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?$/;

/** What opens a block or a day. */
const BLOCK_WORD: Classified = { type: 'keyword', modifiers: ['definition'] };

function classifyToken({ line, tokens }: ScannedLine, index: number): Classified | undefined {
  const token = tokens[index]!;
  const known = BY_KIND[token.kind];
  if (known) return plain(known);
  const { keyword } = token;
  if (keyword === undefined) return undefined;
  const opens = token.start === tokens[0]!.start;
  if (line.kind === 'header' && opens) return { type: 'keyword', modifiers: ['declaration'] };
  if (line.kind === 'property' && (opens || isOfTheOpening(line.word, keyword)))
    return line.word === 'day' ? BLOCK_WORD : plain('property');
  if (line.kind === 'block' && isBlockKind(tokens, index)) return BLOCK_WORD;
  if (line.kind === 'movement' && keyword === 'week' && token.start < line.colon) return plain('modifier');
  if (AMOUNTS.has(keyword)) return { type: 'enumMember', modifiers: ['readonly'] };
  if (isUnit(token) || (keyword === '/' && isUnit(tokens[index - 1]) && isUnit(tokens[index + 1])))
    return plain('type');
  if (OPERATORS.has(keyword)) return plain('operator');
  if (VALUES.has(keyword) || isColour(tokens, index) || WEEKDAY.test(keyword)) return plain('enumMember');
  return token.kind === 'WORD' ? plain('keyword') : undefined;
}

/** `each rep moves`, `training max`: the words that open such a line together. */
function isOfTheOpening(word: string, keyword: string): boolean {
  return word === 'each' && (keyword === 'rep' || keyword === 'moves');
}

/** `giant set`, `for time`, and the one word of the other kinds, behind a letter or not. */
export function isBlockKind(tokens: readonly ScannedToken[], index: number): boolean {
  const first = tokens[0]!.kind === 'LETTER' ? 1 : 0;
  if (index === first) return true;
  return (
    index === first + 1 &&
    ['giant set', 'for time'].includes(`${tokens[first]!.keyword} ${tokens[index]!.keyword}`)
  );
}

/** `red band`. */
function isColour(tokens: readonly ScannedToken[], index: number): boolean {
  return tokens[index]!.kind === 'WORD' && tokens[index + 1]?.keyword === 'band';
}

function isUnit(token: ScannedToken | undefined): boolean {
  const keyword = token?.keyword ?? '';
  return UNIT_WORDS.has(keyword) || MORE_UNITS.has(keyword);
}

function plain(type: TokenType): Classified {
  return { type, modifiers: [] };
}
