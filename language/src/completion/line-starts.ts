import { findHelp } from '../vocabulary/help.ts';
import { HEADER_WORDS, TRAINING_CONTEXTS } from '../vocabulary/keywords.ts';
import { listBlocks } from './block-headers.ts';
import { type Offer, type Offers, toSnippet } from './item.ts';
import { listMovements } from './movement-names.ts';
import { listProperties } from './properties.ts';
import { listSessionHeaders } from './session-headers.ts';
import { endOfWord, restAfter, type Spot, scanWhole } from './spot.ts';

/** Words and labels before a movement's name. */
const PREFIX = /^(?:(?:warm-?up|test|week\s+\d+|[a-z]\d{1,2}[.)]?)\s+)+/i;
const LETTER = /^([A-Z])\s+/;

/** At the beginning of a line: headers at the margin, and what the entry around may hold. */
export function completeLineStart(spot: Spot): Offers | undefined {
  const { before, context } = spot;
  const text = before.replace(/^\ufeff/, '').trimStart();
  const start = before.length - text.length;
  const prefix = PREFIX.exec(text)?.[0] ?? '';
  if (TRAINING_CONTEXTS.has(context) && prefix !== '')
    return completeName(spot, start + prefix.length, prefix);
  if (/^week\s*\d*$/i.test(text) && context === 'plan' && text !== 'week') return completeWeek(spot, start);
  const rest = restAfter(spot, spot.column);
  const { kind } = scanWhole(spot).kind;
  // In a word of a line that is whole, only a movement's name can be another one.
  const isWhole = kind === 'movement' || rest.replace(/^[\p{L}\p{M}\p{N}'\u2019-]*\s*/u, '') !== '';
  if (isWhole) {
    const mayBeName = TRAINING_CONTEXTS.has(context) && (kind === 'movement' || kind === 'stray');
    return mayBeName ? completeName(spot, start, '') : undefined;
  }
  const end = endOfWord(spot);
  // Before a word that stands further in, nothing begins.
  if (rest !== '' && end === spot.column) return undefined;
  const letter = LETTER.exec(text)?.[1];
  if (letter && TRAINING_CONTEXTS.has(context)) return { start, end, offers: listBlocks(spot, letter) };
  const contents = listContents(spot, before.slice(start));
  const isAtMargin = /^\ufeff?$/.test(before.slice(0, start));
  return { start, end, offers: isAtMargin ? mergeHeaders(spot, contents) : contents };
}

/** A file that says nothing yet begins with a template; else the margin is for headers, then for what is not indented. */
function mergeHeaders(spot: Spot, contents: readonly Offer[]): Offer[] {
  const { practice, uri, placed } = spot;
  const entries = practice.file(uri)?.model.entries ?? [];
  const isEmpty = entries.every(({ entry }) => entry === placed?.entry && entry.kind === 'unknown');
  const template = isEmpty ? [offerFirstDay(spot)] : [];
  const isKnown = practice.allAthletes().length > 0;
  const sessions = listSessionHeaders(spot);
  const words = HEADER_WORDS.filter(
    (word) => word !== 'units' || !entries.some(({ entry }) => entry.kind === 'units'),
  )
    .toReversed()
    .map(
      (word): Offer => ({
        label: word,
        kind: 'header',
        help: findHelp(word),
        insert: `${word} `,
        continues: true,
      }),
    );
  // `athlete` in an athlete's own lines is `units`, which stands further in.
  const headers = isKnown ? [...sessions, ...template, ...words] : [...template, ...sessions, ...words];
  const seen = new Set<string>();
  return [...headers, ...contents].filter(({ label }) => !seen.has(label) && seen.add(label));
}

/** An athlete and a session of today, with the coach's own names to be written over those that stand there. */
function offerFirstDay({ options: { today } }: Spot): Offer {
  return {
    label: 'first day',
    kind: 'template',
    detail: 'an athlete, and a session of today',
    snippet: toSnippet(
      [
        'athlete ‹Hildegard Quince›',
        `  bodyweight ‹70› kg on ${today}`,
        '',
        `session ${today} ‹Hildegard Quince›`,
        '  A straight, rest ‹2:00›',
        '    ‹Goblet Squat›: ‹3x8 @ 16 kg rpe 7›',
        '  B circuit, 3 rounds, rest ‹1:15›',
        '    ‹One-Arm Row›: ‹10/side @ 14 kg›',
        '    ‹Push-up›: ‹8, 8, 7›',
        '    time ‹?, ?, ?›',
        '  effort ‹6›',
        '  lasted ‹45› min',
        '',
      ].join('\n'),
    ),
  };
}

function listContents(spot: Spot, typed: string): Offer[] {
  const { context, placed, day, block } = spot;
  const properties = listProperties(spot);
  if (!TRAINING_CONTEXTS.has(context)) return properties;
  // Lines before any header belong nowhere.
  if (placed?.entry.kind === 'unknown' && !placed.entry.title) return [];
  if (!placed || (context === 'plan' && !day)) return properties;
  const isPreparation = block?.kind === 'warmup' || block?.kind === 'cooldown';
  const movements = listMovements(spot, typed, isPreparation).map((offer) => ({
    ...offer,
    insert: `${offer.isTested ? 'test ' : ''}${offer.label}: `,
    continues: true,
  }));
  const familiar = movements.filter(({ isFamiliar }) => isFamiliar);
  const others = movements.filter(({ isFamiliar }) => !isFamiliar);
  const blocks = listBlocks(spot);
  const prefixes = listPrefixes(spot);
  // A block that was opened wants its movements; before the first one, a block is opened.
  const isOpened = block !== undefined && block.lines.length === 0;
  return block === undefined
    ? [...blocks, ...properties, ...familiar, ...prefixes, ...others]
    : isOpened
      ? [...familiar, ...prefixes, ...others, ...blocks, ...properties]
      : [...familiar, ...blocks, ...properties, ...prefixes, ...others];
}

function listPrefixes({ context }: Spot): Offer[] {
  const words = context === 'plan' ? ['week', 'test', 'warmup'] : ['warmup', 'test'];
  return words.map(
    (label): Offer => ({
      label,
      kind: 'keyword',
      help: findHelp(label),
      insert: `${label} `,
      continues: true,
    }),
  );
}

/** A movement's name, in place of the one that stands there, with the colon that it needs. */
function completeName(spot: Spot, start: number, prefix: string): Offers | undefined {
  const whole = scanWhole(spot);
  const written =
    whole.kind.kind === 'movement' ? whole.tokens.find(({ kind }) => kind === 'NAME') : undefined;
  const isPreparation =
    /\bwarm-?up\b/i.test(prefix) || spot.block?.kind === 'warmup' || spot.block?.kind === 'cooldown';
  if (written && (spot.column < written.start || spot.column > written.end)) return undefined;
  if (!written && whole.kind.kind === 'movement') return undefined;
  // Behind a name without its colon stand sets, or nothing.
  const endOfTyped = endOfWord(spot);
  if (!written && !/^(?:$|[\d?(])/.test(restAfter(spot, endOfTyped))) return undefined;
  const end = written ? written.end : endOfTyped;
  const tail = written ? '' : /^\s/.test(spot.line.slice(end)) ? ':' : ': ';
  const offers = listMovements(spot, spot.before.slice(start), isPreparation).map(
    (offer): Offer => ({
      ...offer,
      insert: offer.label + tail,
      continues: tail === ': ',
    }),
  );
  return { start, end, offers };
}

/** `week 5` before a movement of a plan: one of its weeks. */
function completeWeek(spot: Spot, start: number): Offers {
  const count = spot.placed?.entry.kind === 'plan' ? (spot.placed.entry.weeks?.count ?? 0) : 0;
  const weeks = Array.from({ length: count }, (_, index) => `week ${index + 1}`);
  return {
    start,
    end: spot.column,
    offers: weeks.map((label) => ({ label, kind: 'keyword', insert: `${label} `, continues: true })),
  };
}
