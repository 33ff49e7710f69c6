import { type IsoDate, parseIsoDate } from '../calendar/iso-date.ts';
import type { ReadFile } from '../reading/read-file.ts';
import { type ScannedLine, scanLine } from '../syntax/line-scanner.ts';
import type { ScannedToken } from '../syntax/scanned-token.ts';
import { type MassUnit, toGrams } from '../units/mass.ts';
import { HELP } from '../vocabulary/help.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import { isBlockKind } from './classify-tokens.ts';
import type { Located } from './locate.ts';
import { findEntry } from './mentions.ts';

/** Words whose meaning hangs on the kind of line they stand in: what the table of help calls them there. */
const MEANINGS: Readonly<Record<ScannedLine['line']['kind'], Readonly<Record<string, string>>>> = {
  blank: {},
  note: {},
  title: {},
  stray: {},
  header: { at: 'session at', week: 'session week', day: 'session week', '|': 'athletes' },
  block: {
    round: 'rounds',
    pass: 'rounds',
    passes: 'rounds',
    rest: 'block rest',
    for: 'block for',
    on: 'interval on',
    off: 'interval off',
  },
  property: {
    rep: 'each',
    moves: 'each',
    one: 'each',
    both: 'each',
    contacts: 'counts',
    female: 'sex',
    male: 'sex',
    rest: 'rest line',
    on: 'from day',
    by: 'by',
    until: 'until',
    to: 'until',
    alternate: 'alternate',
    a: 'alternate',
    week: 'property week',
    sets: 'deload',
    load: 'deload',
    round: 'done',
    rounds: 'done',
    in: 'done',
    of: 'done',
    '+': 'done',
    '|': 'athletes',
    '-': 'range',
  },
  movement: {
    '@': '@',
    in: 'in',
    miss: 'stall',
    misses: 'stall',
    each: 'step',
    '-': 'range',
  },
};

const BEHIND: Readonly<Record<string, string>> = { training: 'training', deload: 'deload', stacks: 'stacks' };

/**
 * The word, number or date at a line and UTF-16 column, told by the scanner alone: finer than what the facts know a place
 * of, and there on broken lines too. Undefined where nothing more is to be said of it than that it stands there.
 */
export function locateToken({ model, lines }: ReadFile, line: number, column: number): Located | undefined {
  const placed = findEntry(model, line);
  if (!placed) return undefined;
  const { kind } = placed.entry;
  const scanned = scanLine(lines[line]!, kind === 'units' ? 'unknown' : kind);
  const index = scanned.tokens.findLastIndex(({ start, end }) => start <= column && column <= end);
  const token = scanned.tokens[index];
  if (!token) return undefined;
  const span = { line: line - placed.line, start: token.start, end: token.end };
  const text = lines[line]!.slice(token.start, token.end);
  if (token.kind === 'DATE' && parseIsoDate(text))
    return { kind: 'date', date: text as IsoDate, placed, span };
  if (token.kind === 'COMMENT') return findCheck(text, token, column, placed, span.line);
  const grams = readMass(scanned, lines[line]!, index);
  if (grams && scanned.line.kind === 'property') return { kind: 'load', load: grams, placed, span };
  const word = findWord(scanned, index, kind);
  return word === undefined || !Object.hasOwn(HELP, word) ? undefined : { kind: 'word', word, placed, span };
}

function findWord({ line, tokens }: ScannedLine, index: number, context: string): string | undefined {
  const token = tokens[index]!;
  const before = tokens[index - 1];
  const next = tokens[index + 1];
  const { keyword } = token;
  switch (token.kind) {
    case 'STRAY':
      return 'stray';
    case 'LETTER':
      return 'letter';
    case 'TIMES':
      return line.kind === 'movement' ? 'count' : line.kind === 'block' ? 'rounds' : 'plates';
    case 'TIME':
      return line.kind === 'header' ? 'clock' : before?.keyword === 'in' ? 'in' : ownWord(line, context);
    case 'NUMBER':
      if (next?.kind === 'TIMES' && line.kind === 'movement') return 'count';
      if (line.kind === 'header') return 'session week';
      return line.kind === 'property' ? (shareOf(tokens, index) ?? ownWord(line, context)) : undefined;
    default:
  }
  if (keyword === undefined || (line.kind === 'block' && isBlockKind(tokens, index))) return undefined;
  if (keyword === '|' && line.kind === 'movement') return context === 'plan' ? 'weeks of a line' : 'athletes';
  if (line.kind === 'header' && index === 0) return undefined;
  if (line.kind === 'property' && (index === 0 || BEHIND[line.word] === keyword))
    return ownWord(line, context);
  if (UNIT_WORDS.has(keyword)) return line.kind === 'property' ? ownWord(line, context) : undefined;
  if (keyword === '/' && line.kind === 'property') return shareOf(tokens, index) ?? ownWord(line, context);
  if (line.kind === 'property' && !Object.hasOwn(MEANINGS.property, keyword)) return ownWord(line, context);
  const meaning = MEANINGS[line.kind][keyword] ?? keyword;
  return line.kind === 'property' && ['pairs', 'singles', 'by', '-'].includes(keyword) && context === 'place'
    ? ownWord(line, context)
    : meaning;
}

/** A muscle's `1/2`. */
function shareOf(tokens: readonly ScannedToken[], index: number): string | undefined {
  const isShare = [index - 1, index, index + 1].some((at) => tokens[at]?.keyword === '/');
  return isShare && tokens[0]?.keyword === 'muscles' ? 'muscles' : undefined;
}

/** The word that opens a property's line, as the table of help names it there. */
function ownWord(line: ScannedLine['line'], context: string): string | undefined {
  if (line.kind !== 'property') return undefined;
  const { word } = line;
  const ofContext = `${context} ${word}`;
  if (Object.hasOwn(HELP, ofContext)) return ofContext;
  return word === 'rest' ? 'rest line' : word;
}

/** A number with the unit of mass behind it, which may stand farther on: `bars 20, 15 kg`. */
function readMass({ tokens }: ScannedLine, text: string, index: number) {
  const token = tokens[index]!;
  const unitAt = tokens.findIndex(
    ({ keyword }, at) => at >= index && UNIT_WORDS.get(keyword ?? '')?.token === 'MASS_UNIT',
  );
  const numberAt = token.kind === 'NUMBER' ? index : unitAt === index ? index - 1 : -1;
  const number = tokens[numberAt];
  const unit = UNIT_WORDS.get(tokens[unitAt]?.keyword ?? '')?.unit as MassUnit | undefined;
  if (number?.kind !== 'NUMBER' || !unit || tokens[numberAt + 1]?.kind === 'TIMES') return undefined;
  const written = Number(text.slice(number.start, number.end).replace(',', '.'));
  return { kind: 'mass', mass: { grams: toGrams(written, unit), written, unit }, implements: 1 } as const;
}

/** `# ignore load-jump`: the code under the cursor. */
function findCheck(
  text: string,
  { start }: ScannedToken,
  column: number,
  placed: Located['placed'],
  line: number,
): Located | undefined {
  if (!/^#\s*ignore\s/i.test(text)) return undefined;
  for (const { 0: code, index } of text.matchAll(/[a-z]+(?:-[a-z]+)*/g)) {
    const span = { line, start: start + index, end: start + index + code.length };
    if (code !== 'ignore' && span.start <= column && column <= span.end)
      return { kind: 'check', code, placed, span };
  }
  return undefined;
}
