import type { Entry, MovementLine } from '../model/entry.ts';
import type { Mass, MassLoad } from '../model/quantity.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import { listModifiers } from '../plans/line-steps.ts';
import type { Place } from '../practice/athlete.ts';
import type { Movement } from '../practice/movement.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { fromGrams, printMass } from '../units/mass.ts';
import { roundTo } from '../units/number.ts';
import { isPreparation, joinWords, NO_PROBLEMS, problem } from './check-context.ts';
import { findNearestMass, hasInventory, listLacking, type NearestMass, type Weight } from './inventory.ts';
import type { LineCheck } from './line-checks.ts';
import { listMasses, printMassLoad, printPlain, type WrittenMass } from './written-masses.ts';

/** Loads that a place cannot make, and movements that it has not the equipment for. */
export const checkPlace: LineCheck<Extract<Entry, { readonly place?: unknown }>> = (entry, { practice }) => {
  const place = entry.place && practice.findPlace(entry.place.text);
  if (!place || !hasInventory(place.entry)) return () => NO_PROBLEMS;
  const named = new Set<string>();
  return ({ block, line }) => {
    const movement = practice.findMovement(line.name.text);
    if (!movement) return NO_PROBLEMS;
    const problems: Problem[] = [];
    // A warm-up takes what is at hand.
    const lacking = isPreparation({ block, line }) ? [] : findLacking(place, movement, line);
    // Said once for each movement, where it first stands.
    if (lacking.length > 0 && !named.has(movement.key)) {
      named.add(movement.key);
      const what = joinWords(lacking, 'or');
      const message = `${place.name} has no ${what} for ${movement.name}: add to the place what is there, or choose another movement`;
      problems.push(problem('lacks-equipment', line.name.span, message));
    }
    const masses = listMasses(line.cells);
    for (const mass of masses) {
      const found = checkMass(place, movement, mass, masses);
      if (found) problems.push(found);
    }
    return problems;
  };
};

/** A thing whose setting is written (`setting box 40 cm`) is there, whatever the list says. */
function findLacking(place: Place, movement: Movement, line: MovementLine): readonly string[] {
  const lacking = listLacking(place.entry, movement);
  if (lacking.length === 0) return lacking;
  const settings = listModifiers(line).flatMap((modifier) =>
    modifier.kind === 'setting' ? [modifier.text.toLowerCase()] : [],
  );
  return lacking.filter((need) => !settings.some((setting) => setting.includes(need.toLowerCase())));
}

function checkMass(
  place: Place,
  movement: Movement,
  { set, load }: WrittenMass,
  onLine: readonly WrittenMass[],
): Problem | undefined {
  if (load.high) return undefined;
  for (const mass of load.other ? [load.mass, load.other] : [load.mass]) {
    const nearest = findNearestMass(place.entry, movement, mass);
    if (!nearest || nearest.fits) continue;
    const offered = [nearest.below, nearest.above].filter((weight) => weight !== undefined);
    const hasBare = onLine.some((each) => !/\p{L}{2}/u.test(each.set.loadText));
    return problem(
      'not-loadable',
      set.loadSpan,
      `${place.name} cannot load ${describe(mass, load)}: ${describeNearest(nearest)}`,
      offered.map((weight) => replaceMass(weight, mass, load, set.loadSpan, hasBare)),
    );
  }
  if (load.implements === 2 && !load.other && isSoldSingly(place, movement, load.mass)) {
    const message = `${place.name} has each dumbbell once, and ${printMassLoad(load)} needs two of a weight`;
    return problem('not-loadable', set.loadSpan, message);
  }
  return undefined;
}

function describe(mass: Mass, load: MassLoad): string {
  return load.other ? printMass(mass.grams, mass.unit) : printMassLoad(load);
}

function describeNearest({ below, above }: NearestMass): string {
  const print = ({ grams, unit }: Weight): string => printMass(grams, unit);
  if (below && above) return `the nearest are ${print(below)} and ${print(above)}`;
  return below ? `the heaviest is ${print(below)}` : `the lightest is ${print(above!)}`;
}

/** No fix where it would bring a second unit to a line with bare numbers, or cut off chains. */
function replaceMass(
  { grams, unit }: Weight,
  mass: Mass,
  load: MassLoad,
  span: Span,
  hasBare: boolean,
): Fix | undefined {
  if (load.other || load.chain || load.band || (unit !== mass.unit && hasBare)) return undefined;
  const times = load.implements === 2 ? '2x' : '';
  return replaceBy(span, `${times}${printPlain(roundTo(fromGrams(grams, unit), 2))} ${unit}`);
}

function isSoldSingly({ entry }: Place, movement: Movement, mass: Mass): boolean {
  if (!movement.entry.needs.some(({ text }) => text.toLowerCase() === 'dumbbell')) return false;
  const holding = entry.dumbbells.filter(
    ({ low, high }) => low.grams <= mass.grams && mass.grams <= high.grams,
  );
  return holding.length > 0 && holding.every(({ sold }) => sold === 'singles');
}
