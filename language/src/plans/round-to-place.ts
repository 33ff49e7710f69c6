import { findNearestAdded, findNearestMass, type NearestMass } from '../checks/inventory.ts';
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

/** To the nearest, to the lightest that is no less (past the heaviest that), or to the heaviest that is no more. */
export type Way = 'nearest' | 'up' | 'down';

/** Where no inventory says what can be loaded: two plates of 1.25 kg or 2.5 lb on a bar, else the half (common practice). */
const USUAL_STEPS: Readonly<Record<'bar' | 'other', Readonly<Record<MassUnit, number>>>> = {
  bar: { kg: 2.5, lb: 5 },
  other: { kg: 0.5, lb: 1 },
};

/**
 * 84 kg → 85 kg where plates come in pairs of 1.25 kg: the nearest that the place can load, ties up, never under the
 * empty bar or the lightest dumbbell. `unit` is that of the answer where the place does not say; `written` is what the
 * plan writes, whose kind of weight and unit the answer keeps to.
 */
export function roundToPlace(
  grams: number,
  unit: MassUnit,
  movement: Movement | undefined,
  place: PlaceEntry | undefined,
  written?: Mass,
  way: Way = 'nearest',
): Rounded {
  const nearest =
    place && movement && findNearestMass(place, movement, toMass(grams, unit), { like: written });
  return choose(nearest, grams, unit, movement, way);
}

/** What is added to the body: plates on a belt, or a dumbbell or kettlebell of the place; down to nothing. */
export function roundAddedToPlace(
  grams: number,
  unit: MassUnit,
  place: PlaceEntry | undefined,
  way: Way = 'nearest',
): Rounded {
  const nearest = place && findNearestAdded(place, toMass(grams, unit));
  return choose(nearest, grams, unit, undefined, way);
}

function choose(
  nearest: NearestMass | undefined,
  grams: number,
  unit: MassUnit,
  movement: Movement | undefined,
  way: Way,
): Rounded {
  const { below, above } = nearest ?? {};
  if (!below && !above)
    return { mass: roundBySteps(grams, unit, movement, way), by: 'usual step', fits: false };
  const isUp = !below || (above && isRoundedUp(way, grams - below.grams, above.grams - grams));
  const found = isUp ? above! : below;
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

/** Whether the load above is taken, so many grams from the ones below and above; one that fits is both. */
function isRoundedUp(way: Way, down: number, up: number): boolean {
  return way === 'nearest' ? up <= down : way === 'up' ? true : up === 0;
}

/** A hair over or under a step is that step: a pound's grams are not whole. */
const HAIR = 1e-4;

function roundBySteps(grams: number, unit: MassUnit, movement: Movement | undefined, way: Way): Mass {
  const step = USUAL_STEPS[implementOf(movement) === 'bar' ? 'bar' : 'other'][unit];
  const steps = fromGrams(grams, unit) / step;
  const whole =
    way === 'up'
      ? Math.ceil(steps - HAIR)
      : way === 'down'
        ? Math.floor(steps + HAIR)
        : Math.floor(steps + 0.5 + 1e-6);
  const written = roundTo(whole * step, 2);
  return { grams: toGrams(written, unit), written, unit };
}
