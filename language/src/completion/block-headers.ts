import type { Block, BlockKind } from '../model/entry.ts';
import { printBlockHeader } from '../printing/print-block.ts';
import { printDay } from '../summaries/words.ts';
import type { ScannedToken } from '../syntax/scanned-token.ts';
import { findHelp } from '../vocabulary/help.ts';
import { findHistory } from './history.ts';
import { type Offer, type Offers, toSnippet } from './item.ts';
import { findPlannedDay } from './planned-line.ts';
import { endOfWord, isOpen, listTrainees, restAfter, type Spot, scanWhole } from './spot.ts';

/** Kinds of block in the order of the reference, with settings to change. */
const FORMS: readonly (readonly [kind: BlockKind, settings: string])[] = [
  ['straight', 'straight, rest ‹2:00›'],
  ['circuit', 'circuit, ‹3› rounds, rest ‹1:15›'],
  ['superset', 'superset, ‹3› rounds, rest ‹1:30›'],
  ['giant set', 'giant set, ‹3› rounds, rest ‹2:00›'],
  ['every', 'every ‹1:00› for ‹10:00›'],
  ['amrap', 'amrap ‹12:00›'],
  ['for time', 'for time, ‹3› rounds'],
  ['intervals', 'intervals ‹0:40› on, ‹0:20› off, ‹8› rounds'],
];

/** Headers of the next block: as planned, as this athlete last did it, then each kind with usual settings. */
export function listBlocks(spot: Spot, typedLetter?: string): Offer[] {
  const letter = typedLetter ?? findNextLetter(spot);
  const offers: Offer[] = [];
  const planned = findNextPlanned(spot);
  if (planned) offers.push(toOffer({ ...planned, letter }, 'as planned'));
  const last = findLastBlocks(spot);
  for (const [kind, settings] of FORMS) {
    const done = last.get(kind);
    if (done) offers.push(toOffer({ ...done.block, letter }, `as on ${done.day}`));
    else {
      const label = `${letter} ${kind}`;
      const help = findHelp(kind);
      offers.push({ label, kind: 'block', help, snippet: toSnippet(`${letter} ${settings}`), also: [kind] });
    }
  }
  if (typedLetter === undefined) {
    const isFirst = listBlocksOf(spot).length === 0;
    const words = ['warmup', 'cooldown'].map(
      (word): Offer => ({ label: word, kind: 'block', help: findHelp(word) }),
    );
    if (isFirst) offers.unshift(words[0]!);
    else offers.push(...words);
  }
  const seen = new Set<string>();
  return offers.filter(({ label }) => !seen.has(label) && seen.add(label));
}

/** A block's header as another may begin: what a session records, a plan's range of rests, and who took turns is left. */
function toOffer(block: Omit<Block, 'letter'> & { readonly letter: string }, detail: string): Offer {
  const { rest, ...others } = block;
  const label = printBlockHeader({ ...others, ...(rest && { rest: { low: rest.low } }) });
  return { label, kind: 'block', detail, help: findHelp(block.kind), also: [block.kind] };
}

function listBlocksOf({ placed, day, lineNumber }: Spot): readonly Block[] {
  const entry = placed?.entry;
  const blocks = day
    ? day.blocks
    : entry?.kind === 'session' || entry?.kind === 'unknown'
      ? entry.blocks
      : [];
  return blocks.filter(({ span }) => placed!.line + span.line !== lineNumber);
}

/** The letter behind the last one above the line. */
function findNextLetter(spot: Spot): string {
  const above = listBlocksOf(spot).filter(({ span }) => spot.placed!.line + span.line < spot.lineNumber);
  const last = above.findLast(({ letter }) => letter !== undefined)?.letter;
  return last === undefined || last >= 'Z' ? 'A' : String.fromCharCode(last.toUpperCase().charCodeAt(0) + 1);
}

const isQuiet = ({ kind }: Block): boolean => kind === 'warmup' || kind === 'cooldown';

/** The plan's block behind as many as the session has above the line. */
function findNextPlanned(spot: Spot): Block | undefined {
  const planned = findPlannedDay(spot)?.blocks.filter((block) => !block.implicit && !isQuiet(block));
  const above = listBlocksOf(spot).filter(({ span }) => spot.placed!.line + span.line < spot.lineNumber);
  return planned?.[above.filter((block) => !isQuiet(block)).length];
}

/** The last block of each kind that the athlete did in the last sessions. */
function findLastBlocks(spot: Spot): ReadonlyMap<BlockKind, { block: Block; day: string }> {
  const found = new Map<BlockKind, { block: Block; day: string }>();
  const [trainee] = listTrainees(spot);
  if (!trainee || spot.context === 'plan') return found;
  for (const { entry, date } of findHistory(spot.practice, trainee).recent) {
    for (const block of entry.blocks) {
      if (!block.implicit && !found.has(block.kind))
        found.set(block.kind, { block, day: printDay(date, trainee.date) });
    }
  }
  return found;
}

const RESTS = ['1:00', '1:15', '1:30', '2:00', '2:30', '3:00', '0:30'];

/** Behind the kind of a block: settings that it does not have yet. */
export function completeBlock(spot: Spot): Offers | undefined {
  const { tokens, typing } = spot;
  const last = tokens.at(-1);
  const whole = scanWhole(spot).tokens;
  const words = new Set(whole.map(({ keyword }) => keyword));
  const kind = tokens.find(({ kind }) => kind === 'WORD')?.keyword ?? '';
  const timed = /\b(rest|cap|amrap|every|for)\s+[\d:]*$/i.exec(spot.before)?.[1]?.toLowerCase();
  if (timed) return offerTimes(spot, timed === 'rest' ? RESTS : timed === 'every' ? STARTS : CAPS);
  const start = typing?.kind === 'WORD' ? typing.start : spot.column;
  const end = typing?.kind === 'WORD' ? endOfWord(spot) : spot.column;
  if (typing?.kind === 'NUMBER' && last?.keyword === ',') return offerRounds(spot, kind, typing, words);
  if (typing && typing.kind !== 'WORD') return undefined;
  const isWord = typing !== undefined && tokens.every(({ kind }) => kind === 'LETTER');
  if (isWord || !isOpen(spot, end)) return undefined;
  const isApart = /[\s,]/.test(spot.line[start - 1] ?? '');
  if (!isApart && last?.kind !== 'WORD') return undefined;
  const isCount = last?.kind === 'NUMBER' && [',', kind].includes(tokens.at(-2)?.keyword ?? '');
  if (isCount && kind !== 'intervals' && !words.has('rounds'))
    return { start, end, offers: [{ label: 'rounds', kind: 'keyword', help: findHelp('rounds') }] };
  if (kind === 'every' && last?.kind === 'TIME' && !words.has('for'))
    return { start, end, offers: [{ label: 'for', kind: 'keyword', insert: 'for ', continues: true }] };
  if (last?.kind === 'NUMBER' || last?.kind === 'TIMES' || last?.keyword === ':') return undefined;
  const isBehindComma = last?.keyword === ',';
  const space = /\s/.test(spot.line[start - 1] ?? '') ? '' : ' ';
  // A comma is set right behind the word, in place of the space before the cursor.
  const from = isBehindComma ? start : spot.line.slice(0, start).trimEnd().length;
  return {
    start: from,
    end,
    offers: listOptions(kind, words).map((offer) => {
      const insert = offer.insert ?? offer.label;
      return { ...offer, insert: isBehindComma ? space + insert : `, ${insert}` };
    }),
  };
}

/** `B circuit, 3` → `3 rounds`. */
function offerRounds(
  { line }: Spot,
  kind: string,
  { start, end }: ScannedToken,
  words: ReadonlySet<string | undefined>,
): Offers | undefined {
  if (!OPTIONS[kind]?.includes('rounds') || words.has('rounds') || words.has('round')) return undefined;
  const label = `${line.slice(start, end)} rounds`;
  return { start, end, offers: [{ label, kind: 'keyword', help: findHelp('rounds') }] };
}

const STARTS = ['1:00', '1:30', '2:00', '0:30'];
const CAPS = ['10:00', '12:00', '15:00', '20:00', '8:00'];

/** What each kind may be set to, by the first word of its header. */
const OPTIONS: Readonly<Record<string, readonly ('rounds' | 'rest' | 'cap' | 'alternating')[]>> = {
  straight: ['rest'],
  circuit: ['rounds', 'rest'],
  superset: ['rounds', 'rest'],
  giant: ['rounds', 'rest'],
  every: ['alternating'],
  for: ['rounds', 'cap'],
  intervals: ['rounds', 'rest', 'alternating'],
};

const VALUES: Readonly<Record<'rounds' | 'rest' | 'cap' | 'alternating', readonly string[]>> = {
  rounds: ['3 rounds', '4 rounds', '5 rounds', '2 rounds'],
  rest: RESTS.slice(0, 5).map((rest) => `rest ${rest}`),
  cap: ['cap 15:00', 'cap 10:00', 'cap 20:00'],
  alternating: ['alternating'],
};

function listOptions(kind: string, words: ReadonlySet<string | undefined>): Offer[] {
  const used = new Set([...words, ...(words.has('round') ? ['rounds'] : [])]);
  return (OPTIONS[kind] ?? [])
    .filter((option) => !used.has(option))
    .flatMap((option) =>
      VALUES[option].map(
        (label): Offer => ({
          label,
          kind: 'keyword',
          help: findHelp(option === 'rest' ? 'block rest' : option),
        }),
      ),
    );
}

function offerTimes(spot: Spot, times: readonly string[]): Offers | undefined {
  const start = spot.before.length - /[\d:]*$/.exec(spot.before)![0].length;
  const end = spot.column + /^[\d:]*/.exec(spot.line.slice(spot.column))![0].length;
  if (!/^(?:$|,|for\b)/.test(restAfter(spot, end))) return undefined;
  return { start, end, offers: times.map((label) => ({ label, kind: 'value' })) };
}
