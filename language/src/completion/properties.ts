import { recogniseLine } from '../syntax/line-kind.ts';
import { findHelp } from '../vocabulary/help.ts';
import { type LineContext, PROPERTIES } from '../vocabulary/keywords.ts';
import { DEFINITION_VALUES } from './definitions.ts';
import type { Offer, Offers } from './item.ts';
import { listSessionValues } from './session-values.ts';
import { endOfWord, isOpen, restAfter, type Spot, scanWhole } from './spot.ts';

/** Properties that an entry may say more than once. */
const REPEATED: ReadonlySet<string> = new Set([
  'pain',
  'trunk',
  'also',
  'easier',
  'harder',
  'setup',
  'cue',
  'caution',
  'stacks',
  'max',
  'goal',
  'retest',
  'avoid',
  'away',
  'screened',
  'deload',
  'day',
  'athlete bodyweight',
]);

/** Words of a session that are said before its training; the others come after it. */
const BEFORE_TRAINING = ['bodyweight', 'sleep', 'readiness'];

/** Properties that the line may be, with a space to go on behind. */
export function listProperties(spot: Spot): Offer[] {
  const { context } = spot;
  const said = listSaid(spot);
  return listWords(spot)
    .filter((word) => !said.has(word) || REPEATED.has(word) || REPEATED.has(`${context} ${word}`))
    .map((word): Offer => {
      const help = findHelp(`${context} ${word}`) ?? findHelp(word === 'rest' ? 'rest line' : word);
      const label = word === 'training' ? 'training max' : word === 'each' ? 'each rep moves' : word;
      return { label, kind: 'property', help, insert: `${label} `, continues: true };
    });
}

function listWords(spot: Spot): readonly string[] {
  const { context, day, block, placed } = spot;
  switch (context) {
    case 'session':
    case 'unknown': {
      if (context === 'unknown' && !placed) return [];
      const entry =
        placed?.entry.kind === 'session' || placed?.entry.kind === 'unknown' ? placed.entry : undefined;
      const hasTraining = (entry?.blocks.length ?? 0) > 0;
      const ofBlock = block && block.lines.length > 0 ? listBlockWords(spot) : [];
      const after = ['effort', 'lasted', 'pain'];
      return hasTraining
        ? [...ofBlock, ...after, ...BEFORE_TRAINING]
        : [...BEFORE_TRAINING, 'missed', ...after];
    }
    case 'plan':
      // Behind its first day a plan goes on with days.
      return day
        ? [...(block && block.lines.length > 0 ? ['rest'] : []), 'day']
        : Object.keys(PROPERTIES.plan).filter((word) => !['time', 'done', 'rest'].includes(word));
    default:
      return Object.keys(PROPERTIES[context]);
  }
}

/** What may be recorded of the block that the line stands in. */
function listBlockWords({ block }: Spot): string[] {
  if (!block || block.kind === 'warmup' || block.kind === 'cooldown') return [];
  const isTimed = block.times.length > 0 || block.kind === 'straight' || block.kind === 'amrap';
  const isScored = block.kind === 'amrap' || block.kind === 'for time' || block.rounds !== undefined;
  return [
    ...(isTimed || block.kind === 'for time' || block.kind === 'every' ? [] : ['time']),
    ...(isScored && !block.done ? ['done'] : []),
    'rest',
  ];
}

/** Words of the properties that the entry has on other lines; `rest` and what else belongs to a block may come again. */
function listSaid({ practice, uri, placed, lineNumber, context }: Spot): ReadonlySet<string> {
  const said = new Set<string>();
  if (!placed) return said;
  const lines = practice.file(uri)?.lines ?? [];
  for (let at = placed.line + 1; at < placed.line + placed.entry.lineCount; at++) {
    if (at === lineNumber) continue;
    const kind = recogniseLine(lines[at] ?? '', context);
    if (kind.kind === 'property' && !['time', 'done', 'rest'].includes(kind.word)) said.add(kind.word);
  }
  return said;
}

/** Behind a property's word: its values, in place of the one at the cursor. */
export function completeProperty(spot: Spot, word: string): Offers | undefined {
  const { typing, tokens, column, context } = spot;
  const words = tokens
    .slice(1)
    .map(({ keyword, kind }) => (kind === 'WORD' || kind === 'SYMBOL' ? keyword! : kind));
  const offers = listValues(spot, context, word, words);
  if (offers.length === 0) return undefined;
  const start = typing && typing.start > tokens[0]!.start ? typing.start : column;
  const end = start < column || typing ? findEnd(spot, start) : column;
  const isInside = start < column || restAfter(spot, column) === '';
  const isFree =
    isInside &&
    (isOpen(spot, end) || (context === 'athlete' && /^(?:on|by|until|to)\b/.test(restAfter(spot, end))));
  if (!isFree || (start === column && !isOpen(spot, end))) return undefined;
  const lead = /\s/.test(spot.line[start - 1] ?? '') ? '' : ' ';
  return {
    start,
    end,
    offers: offers.map((offer) => ({ ...offer, insert: lead + (offer.insert ?? offer.label) })),
  };
}

function listValues(
  spot: Spot,
  context: LineContext,
  word: string,
  words: readonly string[],
): readonly Offer[] {
  if (context === 'session' || context === 'unknown') return listSessionValues(spot, word, words);
  if (context === 'plan' && ['time', 'done', 'rest'].includes(word)) {
    return word === 'rest' && words.length === 0
      ? ['-10 s each week', '1:00'].map((label): Offer => ({ label, kind: 'value' }))
      : [];
  }
  return DEFINITION_VALUES[context]?.[word]?.(spot, words) ?? [];
}

/** The end of the token that the cursor is in, as the whole line has it. */
function findEnd(spot: Spot, start: number): number {
  const token = scanWhole(spot).tokens.find((one) => one.start === start);
  return Math.max(spot.column, token ? token.end : endOfWord(spot));
}
