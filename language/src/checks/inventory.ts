import {
  findHangable,
  findLoadable,
  findNearestWeight,
  type Loading,
  listSteps,
  POUND_ROUNDING_GRAMS,
} from '../measures/loadable.ts';
import type { MassRange, PlaceEntry } from '../model/entry.ts';
import type { Mass, MassUnit } from '../model/quantity.ts';
import { implementOf, type Movement } from '../practice/movement.ts';
import { foldName } from '../text/names.ts';
import { toGrams } from '../units/mass.ts';
import { findEquipment } from '../vocabulary/equipment.ts';

/** Whether a place lists anything that can be loaded or used: without that it never complains. */
export function hasInventory({ bars, plates, dumbbells, kettlebells, stacks, has }: PlaceEntry): boolean {
  return [bars, plates, dumbbells, kettlebells, stacks, has].some((list) => list.length > 0);
}

const lackingByPlace = new WeakMap<PlaceEntry, WeakMap<Movement, readonly string[]>>();

/** What a movement needs and a place with an inventory has not. Remembered, since the same movements come again. */
export function listLacking(place: PlaceEntry, movement: Movement): readonly string[] {
  const byMovement = lackingByPlace.get(place) ?? new WeakMap<Movement, readonly string[]>();
  lackingByPlace.set(place, byMovement);
  const known = byMovement.get(movement);
  if (known) return known;
  const lacking = hasInventory(place)
    ? movement.entry.needs.map(({ text }) => text).filter((need) => !hasEquipment(place, need, movement))
    : [];
  byMovement.set(movement, lacking);
  return lacking;
}

/** Whether a place has what a movement needs; what its list leaves open counts as there. */
export function hasEquipment(place: PlaceEntry, need: string, movement: Movement): boolean {
  const equipment = findEquipment(need);
  const name = foldName(equipment?.name ?? need);
  if (equipment?.alwaysThere) return true;
  if (place.has.some((thing) => foldName(findEquipment(thing.text)?.name ?? thing.text) === name))
    return true;
  switch (equipment?.implement) {
    case 'bar':
      // `bars` says what they weigh, not that one is a trap bar.
      return name === 'barbell' ? place.bars.length > 0 : place.has.length === 0;
    case 'dumbbell':
      return place.dumbbells.length > 0 || (place.kettlebells.length > 0 && mayBeEither(movement));
    case 'kettlebell':
      return place.kettlebells.length > 0 || (place.dumbbells.length > 0 && mayBeEither(movement));
    case 'stack':
      return findStacks(place, name).length > 0 || (place.stacks.length === 0 && place.has.length === 0);
    default:
      if (name === 'weight plate') return place.plates.length > 0;
      // Where bars are listed, there is something to rest them on.
      if (name === 'rack' && place.bars.length > 0) return true;
      return place.has.length === 0;
  }
}

export interface NearestMass {
  readonly fits: boolean;
  /** The next lighter and the next heavier load, in the unit of the place. */
  readonly below?: Weight;
  readonly above?: Weight;
}

/** What a weight is to take the place of: one of the same kind and unit as `like`, or else the movement's own kind. */
export interface StandIn {
  readonly like: Mass | undefined;
}

/** By movement, then by grams and what it stands in for. */
type NearestByMass = Map<string | number, NearestMass | undefined>;

const nearestByPlace = new WeakMap<PlaceEntry, WeakMap<Movement, NearestByMass>>();

/**
 * What a place can load nearest to a mass; undefined where its list does not say. Without `standIn` a dumbbell is as good
 * as a kettlebell, in whatever unit. Kept, for the same loads come again.
 */
export function findNearestMass(
  place: PlaceEntry,
  movement: Movement,
  mass: Mass,
  standIn?: StandIn,
): NearestMass | undefined {
  const byMovement = nearestByPlace.get(place) ?? new WeakMap<Movement, NearestByMass>();
  nearestByPlace.set(place, byMovement);
  const known: NearestByMass = byMovement.get(movement) ?? new Map();
  byMovement.set(movement, known);
  const key = standIn ? `${mass.grams} for ${standIn.like?.grams} ${standIn.like?.unit}` : mass.grams;
  if (!known.has(key)) known.set(key, computeNearestMass(place, movement, mass, standIn));
  return known.get(key);
}

function computeNearestMass(
  place: PlaceEntry,
  movement: Movement,
  mass: Mass,
  standIn: StandIn | undefined,
): NearestMass | undefined {
  const needs = movement.entry.needs.map((need) => findEquipment(need.text)?.name);
  switch (implementOf(movement)) {
    case 'bar':
      return needs.includes('barbell') ? findBarLoad(place, mass) : undefined;
    case 'dumbbell':
    case 'kettlebell':
      return findWeight(mass, listHandWeights(place, movement, standIn));
    case 'stack':
      return findWeight(mass, listRanges(needs.flatMap((need) => (need ? findStacks(place, need) : []))));
    default:
      return undefined;
  }
}

function findBarLoad({ bars, plates, collars }: PlaceEntry, mass: Mass): NearestMass | undefined {
  if (bars.length === 0 || plates.length === 0) return undefined;
  const rack = {
    bars: bars.map(({ grams }) => grams),
    collars: collars?.grams ?? 0,
    plates: plates.map((plate) => ({ weight: plate.mass.grams, count: plate.count })),
  };
  const units = [mass, ...bars, ...plates.map((plate) => plate.mass)].map(({ unit }) => unit);
  const found = findLoadable(mass.grams, rack, toleranceFor(units));
  const unit = plates[0]!.mass.unit;
  const toWeight = (loading: Loading | undefined): Weight | undefined =>
    loading && { grams: loading.total, unit };
  return found && { fits: found.fit === 'exact', below: toWeight(found.below), above: toWeight(found.above) };
}

/**
 * What a place can add to the body nearest to a mass: plates on a belt, each by itself, or one dumbbell or kettlebell;
 * undefined where it lists none of them.
 */
export function findNearestAdded(place: PlaceEntry, mass: Mass): NearestMass | undefined {
  const held = [...listRanges(place.dumbbells), ...place.kettlebells];
  const [plate] = place.plates;
  const units = [mass, ...place.plates.map((each) => each.mass)].map(({ unit }) => unit);
  const plates = place.plates.map(({ mass: { grams }, count }) => ({ weight: grams, count }));
  const hung = plate && findHangable(mass.grams, plates, toleranceFor(units));
  const sums = [hung?.below, hung?.above].filter((grams) => grams !== undefined);
  const weights = sums.map((grams): Weight => ({ grams, unit: plate!.mass.unit }));
  const nothing: Weight = { grams: 0, unit: plate?.mass.unit ?? held[0]?.unit ?? mass.unit };
  return held.length > 0 || plate ? findWeight(mass, [nothing, ...weights, ...held]) : undefined;
}

export interface Weight {
  readonly grams: number;
  readonly unit: MassUnit;
}

function findWeight(mass: Mass, weights: readonly Weight[]): NearestMass | undefined {
  const tolerance = toleranceFor([mass.unit, ...weights.map(({ unit }) => unit)]);
  const found = findNearestWeight(
    mass.grams,
    weights.map(({ grams }) => grams),
    tolerance,
  );
  const toWeight = (grams: number | undefined): Weight | undefined =>
    weights.find((weight) => weight.grams === grams);
  return found && { fits: found.fit === 'exact', below: toWeight(found.below), above: toWeight(found.above) };
}

/**
 * Dumbbells and kettlebells stand in for each other, unless the movement's name says which it is. A load that stands in
 * for a written one is of its kind and unit as far as the place has such: a kettlebell of 16 kg is lightened to one of
 * 12 kg, not to a dumbbell of 30 lb.
 */
function listHandWeights(place: PlaceEntry, movement: Movement, standIn: StandIn | undefined): Weight[] {
  const isDumbbell = implementOf(movement) === 'dumbbell';
  const dumbbells = isDumbbell || mayBeEither(movement) ? listRanges(place.dumbbells) : [];
  const kettlebells = !isDumbbell || mayBeEither(movement) ? place.kettlebells : [];
  const all = [...dumbbells, ...kettlebells];
  if (!standIn) return all;
  const own = isDumbbell ? dumbbells : kettlebells;
  const { like } = standIn;
  const ofUnit = (weights: readonly Weight[]): Weight[] => weights.filter(({ unit }) => unit === like?.unit);
  const holders = [dumbbells, kettlebells]
    .map(ofUnit)
    .filter((weights) =>
      weights.some(({ grams }) => Math.abs(grams - (like?.grams ?? 0)) <= POUND_ROUNDING_GRAMS),
    );
  const choices = [holders.flat(), ofUnit(own), ofUnit(all), own, all];
  return [...(choices.find((weights) => weights.length > 0) ?? [])];
}

function mayBeEither(movement: Movement): boolean {
  return !/\b(?:dumbbell|kettlebell)/.test(movement.key);
}

function findStacks({ stacks }: PlaceEntry, equipment: string): readonly MassRange[] {
  const name = foldName(equipment);
  return stacks.filter((stack) => foldName(findEquipment(stack.name.text)?.name ?? stack.name.text) === name);
}

/** Steps are counted in hundredths of the written unit, so that pounds stay exact until they are grams. */
function listRanges(ranges: readonly MassRange[]): Weight[] {
  return ranges.flatMap(({ low, high, step }) => {
    const [from, to, by] = [low, high, step].map(({ written }) => Math.round(written * 100));
    const steps = listSteps(from!, to!, by!) ?? [];
    return steps.map((hundredths) => ({ grams: toGrams(hundredths / 100, step.unit), unit: step.unit }));
  });
}

function toleranceFor(units: readonly MassUnit[]): number {
  return units.includes('lb') ? POUND_ROUNDING_GRAMS : 0;
}
