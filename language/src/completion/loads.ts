import { findNearestMass, hasInventory } from '../checks/inventory.ts';
import { POUND_ROUNDING_GRAMS } from '../measures/loadable.ts';
import type { Load, Mass, MassLoad, MassUnit } from '../model/quantity.ts';
import type { Place } from '../practice/athlete.ts';
import { implementOf, type Movement } from '../practice/movement.ts';
import { printLoad } from '../printing/print-load.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { fromGrams, toGrams } from '../units/mass.ts';
import { roundTo } from '../units/number.ts';
import type { Offer } from './item.ts';

export interface LoadWishes {
  readonly movement: Movement | undefined;
  readonly place: Place | undefined;
  /** The loads of the last time and of the plan for today, the likeliest for this set first. */
  readonly last: readonly Load[];
  /** `12 Nov`. */
  readonly lastDay: string | undefined;
  readonly planned: readonly Load[];
  /** The unit that the line has already, else that of its file; then no other is offered. */
  readonly unit: MassUnit | undefined;
  /** A number that is typed, of which the unit is missing. */
  readonly typed: number | undefined;
}

const STEPS_UP = 4;
const STEPS_DOWN = 2;
/** So many weights from the lightest on, where nothing is known of the athlete. */
const STEPS_FROM_LIGHTEST = 12;

/** Steps of what is not listed: plates in pairs, dumbbells, kettlebells, stacks (common practice). */
const USUAL_STEPS: Readonly<Record<ReturnType<typeof implementOf>, Readonly<Record<MassUnit, number>>>> = {
  bar: { kg: 2.5, lb: 5 },
  dumbbell: { kg: 2, lb: 5 },
  kettlebell: { kg: 4, lb: 10 },
  stack: { kg: 2.5, lb: 5 },
  none: { kg: 2.5, lb: 5 },
};

/** What may stand behind `@` in a session: last time's load, the planned one, and loadable steps around. */
export function offerLoads(wishes: LoadWishes): Offer[] {
  const { last, lastDay, planned, typed, movement } = wishes;
  const offers: Offer[] = [];
  for (const load of planned) offers.push(toOffer(load, 'planned'));
  for (const load of last) offers.push(toOffer(load, lastDay ? `as on ${lastDay}` : 'last time'));
  offers.push(...offerAround(wishes));
  if (typed !== undefined) {
    for (const unit of wishes.unit ? [wishes.unit] : (['kg', 'lb'] as const)) {
      const mass = { written: typed, unit, grams: toGrams(typed, unit) };
      if (mass.grams > 0 && isLoadable(wishes, mass))
        offers.push({ label: `${printPlain(typed)} ${unit}`, kind: 'load' });
    }
  }
  // Where nothing is ever loaded, no load was forgotten.
  const isLoaded = last.length > 0 || !movement || implementOf(movement) !== 'none';
  if (isLoaded) offers.push({ label: '?', kind: 'load', detail: 'there was a load, and nobody noted it' });
  const seen = new Set<string>();
  const units = wishes.unit ? new RegExp(`\\b${wishes.unit === 'kg' ? 'lb' : 'kg'}\\b`) : undefined;
  return offers.filter(({ label }) => {
    if (units?.test(label) || seen.has(label)) return false;
    seen.add(label);
    return true;
  });
}

function toOffer(load: Load, detail: string): Offer {
  return { label: printLoad(load), kind: 'load', detail };
}

function offerAround(wishes: LoadWishes): Offer[] {
  const { last, movement } = wishes;
  const around = wishes.planned[0] ?? last[0];
  switch (around?.kind) {
    case 'mass':
      if (around.other)
        return [
          {
            label: printLoad({ ...around, mass: around.other, other: around.mass }),
            kind: 'load',
            detail: 'hands changed',
          },
        ];
      return aroundMass(wishes, around.mass).map((mass) =>
        toOffer(withMass(around, mass), describeStep(mass, around.mass)),
      );
    case 'bodyweight':
      return aroundBody(wishes, around);
    case 'pin':
      return [around.pin + 1, around.pin - 1]
        .filter((pin) => pin >= 1 && pin <= 100)
        .map((pin) => toOffer({ kind: 'pin', pin }, pin > around.pin ? 'one pin more' : 'one pin less'));
    case 'setting':
      return aroundSetting(around);
    case undefined:
      return offerFirst(wishes, movement);
    default:
      return [];
  }
}

function withMass(load: MassLoad, mass: Mass): MassLoad {
  return { kind: 'mass', mass, implements: load.implements };
}

function describeStep(mass: Mass, from: Mass): string {
  const change = fromGrams(mass.grams - from.grams, from.unit);
  return `${change > 0 ? '+' : '-'}${printPlain(roundTo(Math.abs(change), 2))} ${from.unit}`;
}

/** The next loads up and down: nearest first, up before down. */
function aroundMass(wishes: LoadWishes, from: Mass): Mass[] {
  const ups: Mass[] = [];
  const downs: Mass[] = [];
  for (let mass: Mass | undefined = from; ups.length < STEPS_UP; ) {
    mass = findNext(wishes, mass, 1);
    if (!mass) break;
    ups.push(mass);
  }
  for (let mass: Mass | undefined = from; downs.length < STEPS_DOWN; ) {
    mass = findNext(wishes, mass, -1);
    if (!mass) break;
    downs.push(mass);
  }
  const [firstUp, ...up] = ups;
  return [...(firstUp ? [firstUp] : []), ...downs.slice(0, 1), ...up, ...downs.slice(1)];
}

/** What loads of a movement usually go by, in that unit. */
export function findUsualStep(movement: Movement | undefined, unit: MassUnit): number {
  return USUAL_STEPS[implementOf(movement)][unit];
}

/** The next load that can be made, in that direction; by usual steps where the place lists nothing for it. */
function findNext({ movement, place }: LoadWishes, from: Mass, direction: 1 | -1): Mass | undefined {
  if (movement && place && hasInventory(place.entry)) {
    // Past what counts as the same load in the other unit.
    const probe = { ...from, grams: from.grams + direction * (POUND_ROUNDING_GRAMS + 1) };
    const nearest = findNearestMass(place.entry, movement, probe);
    if (nearest) {
      const next = direction > 0 ? nearest.above : nearest.below;
      const isBeyond = next && (next.grams - from.grams) * direction > 0;
      return isBeyond
        ? { grams: next.grams, unit: next.unit, written: roundTo(fromGrams(next.grams, next.unit), 2) }
        : undefined;
    }
  }
  const written = roundTo(from.written + direction * findUsualStep(movement, from.unit), 2);
  return written > 0 ? { written, unit: from.unit, grams: toGrams(written, from.unit) } : undefined;
}

function isLoadable({ movement, place }: LoadWishes, mass: Mass): boolean {
  if (!movement || !place || !hasInventory(place.entry)) return true;
  return findNearestMass(place.entry, movement, mass)?.fits ?? true;
}

function aroundBody(wishes: LoadWishes, load: Extract<Load, { kind: 'bodyweight' }>): Offer[] {
  if (load.pin !== undefined || load.band) return [toOffer({ kind: 'bodyweight' }, 'body weight alone')];
  const unit = load.mass?.unit ?? wishes.unit ?? 'kg';
  const step = USUAL_STEPS.none[unit];
  const from = (load.sign === '-' ? -1 : 1) * (load.mass?.written ?? 0);
  return [from + step, from - step, from + 2 * step, 0]
    .map((written) => roundTo(written, 2))
    .filter((written, index, all) => written !== from && all.indexOf(written) === index)
    .map((written) => {
      const size = Math.abs(written);
      const mass = { written: size, unit, grams: toGrams(size, unit) };
      const sign = written < 0 ? '-' : '+';
      return written === 0
        ? toOffer({ kind: 'bodyweight' }, 'body weight alone')
        : toOffer({ kind: 'bodyweight', sign, mass }, written < 0 ? 'with help' : 'added');
    });
}

/** How much the settings of boxes and machines go by (common practice). */
const SETTING_STEPS = { height: 5, power: 10, speed: 0.5, pace: 1 } as const;

function aroundSetting(load: Extract<Load, { kind: 'setting' }>): Offer[] {
  const step = SETTING_STEPS[load.setting];
  return [load.value + step, load.value - step]
    .filter((value) => value > 0)
    .map((value) => ({ label: printLoad({ ...load, value: roundTo(value, 2) }), kind: 'load' }));
}

/** Where the movement is new to the athlete: the lightest weights, or body weight. */
function offerFirst(wishes: LoadWishes, movement: Movement | undefined): Offer[] {
  const offers: Offer[] = [];
  const implement = implementOf(movement);
  const both =
    movement?.entry.repMoves === 'both' && (implement === 'dumbbell' || implement === 'kettlebell');
  if (implement === 'none' && movement) {
    if (movement.entry.bodyShare) offers.push({ label: 'bw', kind: 'load', detail: 'body weight alone' });
    return offers;
  }
  if (!movement || !wishes.place || !hasInventory(wishes.place.entry)) return offers;
  const unit = wishes.unit ?? 'kg';
  let mass: Mass | undefined = { grams: 0, written: 0, unit };
  while (offers.length < STEPS_FROM_LIGHTEST) {
    if (!findNearestMass(wishes.place.entry, movement, mass)) break;
    mass = findNext(wishes, mass, 1);
    if (!mass) break;
    offers.push(toOffer({ kind: 'mass', mass, implements: both ? 2 : 1 }, wishes.place.name));
  }
  return offers;
}

/** Shares of a set's load at which it usually goes on (common practice). */
const DROP_SHARES = [0.8, 0.7, 0.6, 0.5];

/** Smaller loads at which a set may go on, as the place can make them. */
export function offerDropLoads(wishes: LoadWishes, from: MassLoad): Offer[] {
  const { unit } = from.mass;
  const step = findUsualStep(wishes.movement, unit);
  const masses = DROP_SHARES.map((share): Mass => {
    const written = Math.floor((from.mass.written * share) / step) * step;
    const usual = { written, unit, grams: toGrams(written, unit) };
    return isLoadable(wishes, usual) ? usual : (findNext(wishes, usual, -1) ?? usual);
  });
  const offers = masses
    .filter(({ written, grams }) => written > 0 && grams < from.mass.grams)
    .map((mass) => toOffer(withMass(from, mass), describeShare(mass, from.mass)));
  const labels = offers.map(({ label }) => label);
  return [
    ...offers.filter(({ label }, at) => labels.indexOf(label) === at),
    { label: '?', kind: 'load', detail: 'there was a load, and nobody noted it' },
  ];
}

function describeShare(mass: Mass, from: Mass): string {
  return `${Math.round((mass.grams / from.grams) * 100)} % of ${printPlain(from.written)} ${from.unit}`;
}

/** What a plan may ask behind `@`. */
export function offerPlanLoads(wishes: LoadWishes): Offer[] {
  const percents = [70, 75, 80, 85, 90, 65, 60, 95, 100].map(
    (percent): Offer => ({ label: `${percent}%`, kind: 'load', detail: 'of the max valid that day' }),
  );
  const targets: Offer[] = [
    { label: 'rpe 7', kind: 'load', detail: 'a target: the load is chosen on the day' },
    { label: 'rpe 8', kind: 'load', detail: 'a target: the load is chosen on the day' },
    { label: 'rir 2', kind: 'load', detail: 'a target: the load is chosen on the day' },
  ];
  return [
    ...percents,
    ...targets,
    ...offerLoads({ ...wishes, planned: [] }).filter(({ label }) => label !== '?'),
  ];
}
