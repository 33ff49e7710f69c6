import type { MassLoad, MassUnit } from '../model/quantity.ts';
import { workOf } from '../practice/movement.ts';
import { printDay } from '../summaries/words.ts';
import type { ScannedToken } from '../syntax/scanned-token.ts';
import { toGrams } from '../units/mass.ts';
import { findHelp } from '../vocabulary/help.ts';
import { readWritten } from './history.ts';
import { type Offer, type Offers, toSnippet } from './item.ts';
import { countSlots, writeLast } from './last-line.ts';
import { offerDropLoads, offerLoads, offerPlanLoads } from './loads.ts';
import { MODIFIER_WORDS, offerItemStart, offerModifierValues } from './modifiers.ts';
import { listMovements } from './movement-names.ts';
import { isLoadComplete, type MovementSpot, readMovementSpot } from './movement-spot.ts';
import { offerRatingValues, offerRatingWords, RATING_WORDS } from './ratings.ts';
import { endOfWord, isOpen, type Spot } from './spot.ts';

/** Behind the colon of a movement: whole lines first, then what the set at the cursor may go on with. */
export function completeSets(spot: Spot): Offers | undefined {
  const read = readMovementSpot(spot);
  // A number at the cursor is a whole amount: what follows it is asked for.
  const grows = read.typing?.kind === 'NUMBER' || read.typing?.kind === 'TIME';
  const movement =
    grows && isAmount(read.item)
      ? { ...read, item: [...read.item, read.typing!], typing: undefined, isCellStart: false }
      : read;
  const { item, typing } = movement;
  if (item.length === 0 && movement.isCellStart) return offerCell(spot, movement);
  if (item.length === 0) return atWord(spot, typing?.start, offerItemStart(spot, movement));
  const values = offerModifierValues(spot, movement);
  if (values) return values === 'none' ? undefined : values;
  const scale = item.at(-1)?.keyword ?? '';
  if (RATING_WORDS.includes(scale)) return offerRatingValues(spot, movement, scale);
  const at = item.findLastIndex(({ keyword }) => keyword === '@');
  const drop = item.findLastIndex(({ keyword }) => keyword === 'drop');
  if (at > drop) {
    const load = item.slice(at + 1);
    if (load.at(-1)?.keyword === 'of' && load.at(-2)?.keyword === '%')
      return atName(spot, typing?.start, listMaxed(spot, movement));
    return isLoadComplete(load) ? offerBehindLoad(spot, movement) : offerLoad(spot, movement, item[at]!.end);
  }
  return drop === item.length - 1 ? undefined : offerBehindAmount(spot, movement, drop);
}

/** Whether what stands of an item may be the beginning of an amount. */
function isAmount(item: readonly ScannedToken[]): boolean {
  if (item.length === 0) return true;
  const last = item.at(-1)?.keyword ?? '';
  const at = item.findLastIndex(({ keyword }) => keyword === '@');
  const drop = item.findLastIndex(({ keyword }) => keyword === 'drop');
  return !MODIFIER_WORDS.has(item[0]!.keyword ?? '') && !RATING_WORDS.includes(last) && at <= drop;
}

/** Where what is typed from `start` on ends. */
function endOfTyped(spot: Spot, start: number | undefined): number {
  return start === undefined ? spot.column : endOfWord(spot);
}

/** Offers for a word at the cursor, where nothing stands that would have to go on behind it. */
function atWord(
  spot: Spot,
  start: number | undefined,
  offers: readonly Offer[],
  apart = ' ',
): Offers | undefined {
  const from = start ?? spot.column;
  const end = endOfTyped(spot, start);
  if (!isOpen(spot, end)) return undefined;
  const lead = /\s/.test(spot.line[from - 1] ?? ' ') ? '' : apart;
  return {
    start: from,
    end,
    offers: offers.map((offer) =>
      lead === '' || offer.label.startsWith('/')
        ? offer
        : offer.snippet
          ? { ...offer, snippet: lead + offer.snippet }
          : { ...offer, insert: lead + (offer.insert ?? offer.label) },
    ),
  };
}

/** A cell without sets: the planned line, last time's, and the usual forms. */
function offerCell(spot: Spot, movement: MovementSpot): Offers | undefined {
  const end = movement.typing ? endOfWord(spot) : spot.column;
  if (!isOpen(spot, end) || (movement.typing && !/^\p{L}/u.test(spot.line.slice(movement.typing.start))))
    return undefined;
  const { trainee } = movement;
  const { planned, last } = movement.facts();
  const offers: Offer[] = [];
  if (planned) {
    const words = planned.reasons.join('\n');
    offers.push({ label: planned.text, kind: 'sets', detail: `as planned, week ${planned.week}`, words });
  }
  const asLast = last && writeLast(last, spot.block);
  if (asLast) {
    const day = printDay(last.record.date, trainee?.date ?? spot.options.today);
    const words = `${last.record.date}: ${readWritten(spot.practice, last)}`;
    offers.push({ label: asLast, kind: 'sets', detail: `as on ${day}`, words });
  }
  const work = workOf(movement.movement);
  if (offers.length === 0) offers.push(...listForms(spot, work));
  if (spot.context === 'plan') offers.push(...PLAN_FORMS);
  else
    offers.push(
      { label: 'skipped', kind: 'sets', help: findHelp('skipped') },
      { label: '?', kind: 'sets', help: findHelp('?') },
    );
  const seen = new Set<string>();
  const once = offers.filter(({ label }) => !seen.has(label) && seen.add(label));
  return {
    start: movement.cellStart,
    end,
    offers: once.map((offer) => ({ ...offer, insert: ` ${offer.insert ?? offer.label}` })),
  };
}

/** Forms by what the movement counts, for the first time it is done; one number each where there are rounds. */
function listForms(spot: Spot, work: ReturnType<typeof workOf>): Offer[] {
  const forms: Readonly<Record<typeof work, readonly string[]>> = {
    strength: ['8', '5', '10', '12'],
    carry: ['30 m', '20 m/side'],
    hold: ['30 s', '20 s/side'],
    jump: ['5', '3'],
    conditioning: ['5:00', '500 m', '15 cal'],
    mobility: ['8', '8/side', '60 s/side'],
  };
  const counted = work !== 'conditioning' && work !== 'mobility' && countSlots(spot.block) === undefined;
  return forms[work].map((form) => ({
    label: counted ? `3x${form}` : form,
    kind: 'sets',
    detail: 'a usual form',
  }));
}

const PLAN_FORMS: readonly Offer[] = [
  { label: '3x5 @ 75%', kind: 'sets', detail: 'of the max valid that day' },
  { label: '8-12', kind: 'sets', detail: 'a range' },
  { label: '5+ @ 80%', kind: 'sets', detail: 'five or more' },
  { label: '3x5 @ rpe 8', kind: 'sets', detail: 'the load is chosen on the day' },
  { label: 'amrap', kind: 'sets', help: findHelp('amrap') },
];

/** Loads, in place of what stands of one behind the `@`. */
function offerLoad(spot: Spot, movement: MovementSpot, behindAt: number): Offers | undefined {
  const inLoad = movement.whole.filter(({ start }) => start >= behindAt);
  const stop = inLoad.findIndex(({ keyword }, index) => isBehindLoad(keyword, index));
  const tokens = stop < 0 ? inLoad : inLoad.slice(0, stop);
  const start = tokens[0]?.start ?? spot.column;
  if (spot.column < start && tokens.length > 0) return undefined;
  const end = Math.max(spot.column, tokens.at(-1)?.end ?? spot.column);
  const typed = /^\s*(\d+(?:\.\d+)?)\s*$/.exec(spot.line.slice(start, spot.column))?.[1];
  const wishes = { ...movement.facts().wishes, typed: typed === undefined ? undefined : Number(typed) };
  const dropped = spot.context === 'plan' ? undefined : readDroppedLoad(spot, movement, behindAt);
  const offers =
    spot.context === 'plan'
      ? offerPlanLoads(wishes)
      : dropped
        ? offerDropLoads(wishes, dropped)
        : offerLoads(wishes);
  // Right behind the `@` a space is set.
  const lead = spot.line[start - 1] === '@' ? ' ' : '';
  return { start, end, offers: offers.map((offer) => ({ ...offer, insert: lead + offer.label })) };
}

/** The load that the set of a drop began with: `10 @ 2x12 kg drop 8 @ `. */
function readDroppedLoad(spot: Spot, { item }: MovementSpot, behindAt: number): MassLoad | undefined {
  const drop = item.findLast(({ keyword, start }) => keyword === 'drop' && start < behindAt);
  if (!drop) return undefined;
  const before = spot.line.slice(item[0]!.start, drop.start);
  const [, pair, written, unit] =
    /@\s*(?:(2)\s*[x×]\s*)?(\d+(?:\.\d+)?)\s*(kg|lb)\b(?!.*@)/i.exec(before) ?? [];
  if (written === undefined) return undefined;
  const mass = { written: Number(written), unit: unit!.toLowerCase() as MassUnit };
  return {
    kind: 'mass',
    mass: { ...mass, grams: toGrams(mass.written, mass.unit) },
    implements: pair ? 2 : 1,
  };
}

/** Movements whose max a percentage may be of, those with a written max first. */
function listMaxed(spot: Spot, { trainee, movement }: MovementSpot): Offer[] {
  const athlete = trainee && spot.practice.findAthlete(trainee.athlete);
  const maxed = new Set(
    athlete?.entry.maxes.map(({ movement }) => spot.practice.findMovement(movement.text)?.name),
  );
  const own = movement?.name;
  const offers = listMovements(spot)
    .filter(({ label }) => label !== own)
    .map((offer): Offer => ({ ...offer, insert: offer.label }));
  return [
    ...offers.filter(({ label }) => maxed.has(label)),
    ...offers.filter(({ label }) => !maxed.has(label)),
  ];
}

/** In place of the name that the cursor is in. */
function atName(spot: Spot, start: number | undefined, offers: readonly Offer[]): Offers | undefined {
  const from = start ?? spot.column;
  const more = /^[^,|#]*/.exec(spot.line.slice(spot.column))![0].trimEnd();
  const end = start === undefined ? spot.column : spot.column + more.length;
  const lead = /\s/.test(spot.line[from - 1] ?? ' ') ? '' : ' ';
  if (!isOpen(spot, end)) return undefined;
  return { start: from, end, offers: offers.map((offer) => ({ ...offer, insert: lead + offer.label })) };
}

function isBehindLoad(keyword: string | undefined, index: number): boolean {
  if (keyword === ',' || keyword === '|' || keyword === 'drop') return true;
  return index > 0 && RATING_WORDS.includes(keyword ?? '');
}

function offerBehindLoad(spot: Spot, movement: MovementSpot): Offers | undefined {
  const { item, typing } = movement;
  const offers = offerRatingWords(item);
  // A rating ends the load; a drop goes on from either.
  if (spot.context !== 'plan')
    offers.push({
      label: 'drop',
      kind: 'keyword',
      help: findHelp('drop'),
      snippet: toSnippet('drop ‹8› @ ‹?›'),
    });
  return atWord(spot, typing?.start, offers);
}

const SIDE: Offer = { label: '/side', kind: 'keyword', help: findHelp('side') };

/** Units, sides, the load and ratings behind `5`, `30`, `40 m`. */
function offerBehindAmount(spot: Spot, movement: MovementSpot, drop: number): Offers | undefined {
  const { item, typing } = movement;
  if (!isOpen(spot, endOfTyped(spot, typing?.start))) return undefined;
  const part = item.slice(drop + 1);
  const has = (...words: string[]): boolean => part.some(({ keyword }) => words.includes(keyword ?? ''));
  const ending = part.at(-1)!;
  if (ending.keyword === '/') {
    const side: Offer = { label: 'side', kind: 'keyword', help: findHelp('side') };
    return atWord(spot, typing?.start, [side], '');
  }
  const isUnfinished =
    ['-', '+', 'in', 'of', 'left', '('].includes(ending.keyword ?? '') ||
    ending.kind === 'TIMES' ||
    has('(') !== has(')') ||
    has('left') !== has('right');
  if (isUnfinished && !(ending.keyword === '+' && spot.context === 'plan')) return undefined;
  const isRated = has(...RATING_WORDS);
  const isBare = ending.kind === 'NUMBER' && !has('-', '+', 'in', 'of', 'left', ...RATING_WORDS);
  const isSideless = !isRated && !has('/', 'left', 'in', '?', 'skipped') && ending.keyword !== 'each';
  const isTouching = ending.end === spot.column;
  const { wishes } = movement.facts();
  const loads = spot.context === 'plan' ? offerPlanLoads(wishes) : offerLoads(wishes);
  const withAt = loads.map((load): Offer => ({ ...load, label: `@ ${load.label}` }));
  const offers = has('skipped')
    ? []
    : [
        ...(isBare ? listUnits(movement) : []),
        ...(isSideless && wasPerSide(movement) ? [SIDE] : []),
        ...withAt,
        ...(isSideless && !wasPerSide(movement) && isTouching ? [SIDE] : []),
        ...(drop < 0 ? offerRatingWords(item) : []),
        ...(isBare && drop < 0 && isTryable(spot, movement)
          ? [offerAttempt(spot, ending.start, ending.end)]
          : []),
      ];
  return atWord(spot, typing?.start, offers);
}

function wasPerSide({ facts }: MovementSpot): boolean {
  return (
    facts().last?.cell.sets.some(({ amount }) => amount && 'perSide' in amount && amount.perSide) ?? false
  );
}

/** A plan asks for what is to be made, and a hold or a carry is not tried once more. */
function isTryable({ context }: Spot, { movement }: MovementSpot): boolean {
  return context !== 'plan' && workOf(movement) === 'strength';
}

/** `4` → `of 5`: four made, the fifth tried and failed. */
function offerAttempt({ line }: Spot, start: number, end: number): Offer {
  const made = Number(line.slice(start, end));
  return { label: `of ${made + 1}`, kind: 'keyword', detail: `${made} made, one more tried and failed` };
}

/** A number of a hold is seconds, of a carry metres: units by what was written last, then by the kind of work. */
function listUnits({ movement, facts }: MovementSpot): Offer[] {
  const amount = facts().last?.cell.sets[0]?.amount;
  const unit = amount?.kind === 'quantity' ? amount.quantity.unit : undefined;
  const known = unit === undefined || unit === 'rep' || unit === 'clock' ? [] : [unit];
  const units = [...known, ...UNITS_OF_WORK[workOf(movement)]];
  return [...new Set(units)].map((label) => ({ label, kind: 'unit' }));
}

const UNITS_OF_WORK: Readonly<Record<ReturnType<typeof workOf>, readonly string[]>> = {
  strength: [],
  carry: ['m'],
  hold: ['s'],
  jump: [],
  conditioning: ['min', 'm', 'cal', 's', 'km'],
  mobility: ['s'],
};
