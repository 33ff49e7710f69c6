/**
 * Masses are kept in whole grams and converted once, when they are read; they are rounded again only for
 * display. One pound is exactly 453.59237 g (international yard and pound agreement of 1959).
 */
import { printNumber } from './number.ts';

export type MassUnit = 'kg' | 'lb';

/** Grams in one unit, both exact. */
export const GRAMS_PER: Readonly<Record<MassUnit, number>> = { kg: 1000, lb: 453.59237 };

/** A written mass as whole grams: 22.5 kg → 22 500, 225 lb → 102 058. */
export function toGrams(amount: number, unit: MassUnit): number {
  return Math.round(amount * GRAMS_PER[unit]);
}

/** Grams in a unit, not rounded: 102 058 in lb → 224.999… */
export function fromGrams(grams: number, unit: MassUnit): number {
  return grams / GRAMS_PER[unit];
}

/** A mass from one unit in another, not rounded: 45 lb → 20.41165665 kg. */
export function convertMass(amount: number, from: MassUnit, to: MassUnit): number {
  return from === to ? amount : (amount * GRAMS_PER[from]) / GRAMS_PER[to];
}

/** `82 500` grams → `82.5 kg`; two decimals show every plate that is made. */
export function printMass(grams: number, unit: MassUnit, maximumDecimals = 2): string {
  return `${printNumber(fromGrams(grams, unit), maximumDecimals)} ${unit}`;
}
