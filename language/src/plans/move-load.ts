/** Loads that are moved by what was done, to what the place can load. */
import type { Load, Mass, MassUnit, SetGroup, Step } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { fromGrams } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import type { LineContext } from './line-context.ts';
import { roundAddedToPlace, roundToPlace } from './round-to-place.ts';
import { toBase } from './step-kinds.ts';

/** Two loads nearer than this are one: pounds are off by up to a gram. */
const SAME_IN_GRAMS = 20;

/** Grams of one implement; of what is added to the body, below zero where it helps. Undefined where no one mass moves. */
export function readMovable(load: Load | undefined): number | undefined {
  if (load?.kind === 'mass') return load.high ? undefined : load.mass.grams;
  if (load?.kind !== 'bodyweight' || load.pin !== undefined || load.band) return undefined;
  return load.mass ? (load.sign === '-' ? -load.mass.grams : load.mass.grams) : 0;
}

/** The unit that a load is written in; of body weight alone that of the step. */
export function unitOfLoad(load: Load, step: Step | undefined): MassUnit {
  const written = load.kind === 'mass' || load.kind === 'bodyweight' ? load.mass?.unit : undefined;
  return written ?? (step?.unit === 'lb' ? 'lb' : 'kg');
}

/**
 * The load with another mass, as the place can load it. `moreThan` (grams) is what it must exceed: a step too small for
 * the plates of the place must not vanish, so it is taken to the next load.
 */
export function withMass(
  { place }: LineContext,
  movement: Movement | undefined,
  load: Load,
  grams: number,
  { unit, moreThan }: { readonly unit: MassUnit; readonly moreThan?: number | undefined },
): Load {
  const written = load.kind === 'mass' ? load.mass : undefined;
  if (written && Math.abs(grams - written.grams) < 1) return load;
  if (load.kind === 'bodyweight') {
    // Help is no weight that hangs from a belt.
    if (grams < 0) return toAdded(negate(roundToPlace(-grams, unit, undefined, undefined).mass));
    const added = roundAddedToPlace(grams, unit, place).mass;
    const isLost = moreThan !== undefined && added.grams <= moreThan + SAME_IN_GRAMS && grams > moreThan;
    return toAdded(isLost ? roundAddedToPlace(moreThan + 2 * SAME_IN_GRAMS, unit, place, 'up').mass : added);
  }
  if (load.kind !== 'mass') return load;
  const rounded = roundToPlace(grams, unit, movement, place, written).mass;
  if (moreThan === undefined || rounded.grams > moreThan + SAME_IN_GRAMS || grams <= moreThan)
    return { ...load, mass: rounded };
  const next = roundToPlace(moreThan + 2 * SAME_IN_GRAMS, unit, movement, place, written, 'up').mass;
  return { ...load, mass: next.grams > moreThan ? next : rounded };
}

function negate(mass: Mass): Mass {
  return { ...mass, grams: -mass.grams };
}

function toAdded(mass: Mass): Load {
  if (mass.grams === 0) return { kind: 'bodyweight' };
  return {
    kind: 'bodyweight',
    sign: mass.grams < 0 ? '-' : '+',
    mass: { ...mass, grams: Math.abs(mass.grams) },
  };
}

/** A set with another load; its drops keep their distance from it. */
export function withLoad(
  context: LineContext,
  movement: Movement | undefined,
  group: SetGroup,
  load: Load,
): SetGroup {
  const [was, is] = [readMovable(group.load), readMovable(load)];
  if (was === undefined || is === undefined || was === is) return { ...group, load };
  const drops = group.drops.map((drop) => {
    const grams = drop.load?.kind === 'mass' ? readMovable(drop.load) : undefined;
    if (grams === undefined || drop.load?.kind !== 'mass') return drop;
    const { unit } = drop.load.mass;
    return { ...drop, load: withMass(context, movement, drop.load, Math.max(0, grams + is - was), { unit }) };
  });
  return { ...group, load, drops };
}

export function takeStep(grams: number, { sign, amount, unit }: Step): number {
  return unit === '%' ? grams * (1 + (sign * amount) / 100) : grams + sign * toBase(amount, unit);
}

export function applyShare(grams: number, share: number | undefined): number {
  return share === undefined || grams < 0 ? grams : (grams * share) / 100;
}

/** `+2.5 kg`. */
export function printStepSize({ sign, amount, unit }: Step): string {
  return `${sign > 0 ? '+' : '-'}${printPlain(amount)}${unit === '%' ? '' : ' '}${unit}`;
}

/** `, rounded from 64 kg`, where a step in weight and what is written would not add up. */
export function describeRounding(load: Load, wanted: number, { unit }: Step): string {
  if ((unit !== 'kg' && unit !== 'lb') || isSameMass(readMovable(load), wanted)) return '';
  const lead = load.kind === 'bodyweight' ? (wanted < 0 ? 'bw-' : 'bw+') : '';
  return `, rounded from ${lead}${printNumber(Math.abs(fromGrams(wanted, unit)), 2)} ${unit}`;
}

export function isSameMass(one: number | undefined, other: number | undefined): boolean {
  return one !== undefined && other !== undefined && Math.abs(one - other) <= SAME_IN_GRAMS;
}
