import { findNearestMass } from '../checks/inventory.ts';
import type { PlaceEntry } from '../model/entry.ts';
import type { Mass, MassUnit } from '../model/quantity.ts';
import { implementOf, type Movement } from '../practice/movement.ts';
import { fromGrams, toGrams } from '../units/mass.ts';
import { roundTo } from '../units/number.ts';

export interface Rounded {
  readonly mass: Mass;
  /** What it was rounded to: what the place can load, or where that is not known the usual step. */
  readonly by: 'place' | 'usual step';
  /** The place can load just that. */
  readonly fits: boolean;
  /** The wanted load is past what the place can make. */
  readonly limit?: 'lightest' | 'heaviest';
}

/** Where no inventory says what can be loaded: two plates of 1.25 kg or 2.5 lb on a bar, else the half (common practice). */
const USUAL_STEPS: Readonly<Record<'bar' | 'other', Readonly<Record<MassUnit, number>>>> = {
  bar: { kg: 2.5, lb: 5 },
  other: { kg: 0.5, lb: 1 },
};

/**
 * 84 kg → 85 kg where plates come in pairs of 1.25 kg: the nearest that the place can load, ties up, never under the
 * empty bar or the lightest dumbbell. `unit` is that of the answer where the place does not say.
 */
export function roundToPlace(
  grams: number,
  unit: MassUnit,
  movement: Movement | undefined,
  place: PlaceEntry | undefined,
): Rounded {
  const wanted = toMass(grams, unit);
  const nearest = place && movement && findNearestMass(place, movement, wanted);
  const { below, above } = nearest ?? {};
  if (!below && !above) return { mass: roundBySteps(grams, unit, movement), by: 'usual step', fits: false };
  const found = !below || (above && above.grams - grams <= grams - below.grams) ? above! : below;
  const limit = !below ? 'lightest' : !above ? 'heaviest' : undefined;
  const mass = {
    grams: found.grams,
    written: roundTo(fromGrams(found.grams, found.unit), 2),
    unit: found.unit,
  };
  return { mass, by: 'place', fits: nearest!.fits, ...(limit && { limit }) };
}

function toMass(grams: number, unit: MassUnit): Mass {
  return { grams: Math.round(grams), written: fromGrams(grams, unit), unit };
}

function roundBySteps(grams: number, unit: MassUnit, movement: Movement | undefined): Mass {
  const step = USUAL_STEPS[implementOf(movement) === 'bar' ? 'bar' : 'other'][unit];
  // A hair more than half a step is a tie that a pound's grams spoiled.
  const written = roundTo(Math.floor(fromGrams(grams, unit) / step + 0.5 + 1e-6) * step, 2);
  return { grams: toGrams(written, unit), written, unit };
}
