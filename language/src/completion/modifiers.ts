import { printModifier } from '../printing/print-modifiers.ts';
import { findHelp } from '../vocabulary/help.ts';
import type { Offer, Offers } from './item.ts';
import { countSlots } from './last-line.ts';
import { findUsualStep } from './loads.ts';
import { listMovements } from './movement-names.ts';
import type { MovementSpot } from './movement-spot.ts';
import { isOpen, type Spot } from './spot.ts';

/** First words of what stands between commas and is no set. */
export const MODIFIER_WORDS: ReadonlySet<string> = new Set([
  'tempo',
  'rest',
  'setting',
  'pain',
  'instead',
  'then',
  'after',
  '+',
  '-',
]);

/** Behind a comma: the set before once more, then modifiers that the line does not have. */
export function offerItemStart(spot: Spot, movement: MovementSpot): Offer[] {
  const { whole } = movement;
  const word = (label: string, insert = `${label} `): Offer => ({
    label,
    kind: 'keyword',
    help: findHelp(label.split(' ')[0]!),
    insert,
    continues: true,
  });
  const used = new Set(whole.map(({ keyword }) => keyword));
  const words = ['rest', 'tempo', 'setting', 'pain'].filter((one) => !used.has(one)).map((one) => word(one));
  const instead = used.has('instead') || spot.context === 'plan' ? [] : [word('instead of')];
  return [
    ...repeatSet(spot, movement),
    ...(spot.context === 'plan' ? listSteps(spot, movement) : []),
    ...words,
    ...instead,
  ];
}

/** `3x5 @ 80 kg`: what stands before the comma, where the rounds leave room for it. */
function repeatSet(spot: Spot, { whole, cellStart }: MovementSpot): Offer[] {
  const inCell = spot.tokens.filter(({ start }) => start >= cellStart);
  const commas = inCell.filter(({ keyword }) => keyword === ',');
  const [from, to] = [commas.at(-2)?.end ?? cellStart, commas.at(-1)?.start ?? 0];
  const text = spot.line.slice(from, to).trim();
  const [first] = whole.filter(({ start }) => start >= from);
  const slots = countSlots(spot.block);
  if (text === '' || MODIFIER_WORDS.has(first?.keyword ?? '')) return [];
  if (slots !== undefined && (slots <= commas.length || /x/i.test(text))) return [];
  return [{ label: text, kind: 'sets', detail: 'once more' }];
}

/** Steps of a plan; their numbers are examples of what is usual (common practice). */
function listSteps(spot: Spot, { whole, cellStart, movement }: MovementSpot): Offer[] {
  const cell = whole.filter(({ start }) => start >= cellStart);
  const dash = cell.findIndex(({ keyword }) => keyword === '-');
  const low = cell[dash - 1];
  const isRange = low?.kind === 'NUMBER' && !cell.slice(0, dash).some(({ keyword }) => keyword === '@');
  const from = isRange ? ` from ${spot.line.slice(low.start, low.end)}` : '';
  const unit = cell.some(({ keyword }) => keyword === 'lb') ? 'lb' : 'kg';
  const load = `+${findUsualStep(movement, unit)} ${unit}`;
  const step = (label: string, help: string): Offer => ({ label, kind: 'keyword', help: findHelp(help) });
  return [
    ...(isRange ? [step(`then ${load}${from}`, 'step when full')] : []),
    step(`${load} each week`, 'step'),
    step('+1 rep each week', 'step'),
    step('+1 set each week', 'step'),
    step('+5 s each week', 'step'),
    step('after 3 misses -10%', 'stall'),
  ];
}

/** What stands behind `then`, `after` or `+` in the steps that are offered. */
function listStepValues(spot: Spot, movement: MovementSpot, word: string): Offer[] {
  return listSteps(spot, movement)
    .filter(({ label }) => label.startsWith(word))
    .map((offer) => ({ ...offer, label: offer.label.slice(word.length).trimStart() }));
}

const EACH = ['week', 'session', 'round', 'cycle'];
const STEP_UNITS: ReadonlySet<string> = new Set([
  'kg',
  'lb',
  'rep',
  'reps',
  'set',
  'sets',
  's',
  'min',
  'm',
  'cal',
  '%',
]);

const TEMPOS = ['3-1-X-0', '2-0-2-0', '4-0-1-0', '2-1-X-1'];
const RESTS = ['1:00', '1:30', '2:00', '2:30', '3:00', '0:30', '0:45', '4:00', '5:00'];

/**
 * Values of the modifier that the item is; undefined where it is a set, and `none` where nothing is known of what
 * may follow.
 */
export function offerModifierValues(spot: Spot, movement: MovementSpot): Offers | 'none' | undefined {
  const { item } = movement;
  const [first, second] = item;
  const word = first?.keyword ?? '';
  if (!MODIFIER_WORDS.has(word)) return undefined;
  if (word === 'instead' && second?.keyword !== 'of') {
    return item.length === 1
      ? inPlace(spot, movement, [{ label: 'of', kind: 'keyword', insert: 'of ', continues: true }])
      : 'none';
  }
  if (word === 'then' && item.length > 1) {
    const [, from] = / (from \d+)$/.exec(listSteps(spot, movement)[0]?.label ?? '') ?? [];
    const isDue = from !== undefined && STEP_UNITS.has(item.at(-1)?.keyword ?? '');
    return isDue ? inPlace(spot, movement, [{ label: from, kind: 'keyword' }]) : 'none';
  }
  const isStep = ['+', '-', 'after'].includes(word);
  if (
    isStep &&
    item.length > 1 &&
    STEP_UNITS.has(item.at(-1)?.keyword ?? '') &&
    !item.some(({ keyword }) => keyword === 'from')
  )
    return inPlace(
      spot,
      movement,
      EACH.map((each) => ({ label: `each ${each}`, kind: 'keyword' })),
    );
  if (item.at(-1)?.keyword === 'each') {
    return inPlace(
      spot,
      movement,
      EACH.map((label) => ({ label, kind: 'keyword' })),
    );
  }
  if (item.length > (word === 'instead' ? 2 : 1)) return 'none';
  const offers = ['then', 'after', ...(spot.context === 'plan' ? ['+'] : [])].includes(word)
    ? listStepValues(spot, movement, word)
    : listModifierValues(spot, movement, word);
  return offers.length > 0 ? inPlace(spot, movement, offers) : 'none';
}

function listModifierValues(spot: Spot, { facts }: MovementSpot, word: string): Offer[] {
  const { last } = facts();
  const modifiers = last ? [...last.cell.modifiers, ...last.line.modifiers] : [];
  const value = (label: string, detail?: string): Offer => ({ label, kind: 'value', detail });
  const before = modifiers
    .filter(({ kind }) => kind === word)
    .map((modifier) => value(printModifier(modifier).slice(word.length + 1), 'last time'));
  switch (word) {
    case 'tempo':
      return once([...before, ...TEMPOS.map((tempo) => value(tempo, describeTempo(tempo)))]);
    case 'rest':
      return once([...before, ...RESTS.map((rest) => value(rest))]);
    case 'setting':
      return before;
    case 'pain':
      return Array.from({ length: 11 }, (_, score) =>
        value(String(score), score === 0 ? 'none' : score >= 4 ? 'ask a licensed practitioner' : undefined),
      );
    case 'instead':
      return listMovements(spot).map((offer) => ({ ...offer, insert: offer.label }));
    default:
      return [];
  }
}

function describeTempo(tempo: string): string {
  const [down, bottom, up, top] = tempo.split('-');
  return `${down} s down, ${bottom} s pause, ${up === 'X' ? 'fast' : `${up} s`} up, ${top} s pause`;
}

function once(offers: readonly Offer[]): Offer[] {
  return offers.filter(({ label }, index) => offers.findIndex((other) => other.label === label) === index);
}

/** Instead of all that stands behind the item's words, up to the next comma or bar. */
function inPlace(spot: Spot, { item, whole }: MovementSpot, offers: readonly Offer[]): Offers | 'none' {
  const from = item.at(-1)!.end;
  const behind = whole.filter(({ start }) => start >= from);
  const stop = behind.findIndex(({ keyword }) => keyword === ',' || keyword === '|');
  const written = stop < 0 ? behind : behind.slice(0, stop);
  const start = written[0]?.start ?? spot.column;
  const end = Math.max(spot.column, written.at(-1)?.end ?? 0);
  if (start > spot.column || !isOpen(spot, end)) return 'none';
  const lead = /[\s+]/.test(spot.line[start - 1] ?? '') ? '' : ' ';
  return {
    start,
    end,
    offers: offers.map((offer) => ({ ...offer, insert: lead + (offer.insert ?? offer.label) })),
  };
}
