import { findNearestMass, type Weight } from '../checks/inventory.ts';
import { listMasses, type WrittenMass } from '../checks/written-masses.ts';
import type { FileEdit } from '../formatting/file-edit.ts';
import type { Mass } from '../model/quantity.ts';
import type { Place } from '../practice/athlete.ts';
import type { Movement } from '../practice/movement.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { fromGrams } from '../units/mass.ts';
import { roundTo } from '../units/number.ts';
import { findMovementLines, type LineAt } from './find-lines.ts';
import { editSpan, type RewriteRequest, type Rewriter, rewriteFile } from './rewrite.ts';

/** `2x`, the weight, and the other hand's. */
const MASSES = /^((?:\d+\s*[x×]\s*)?)(\d+(?:[.,]\d+)?)(?:(\s*&\s*)(\d+(?:[.,]\d+)?))?/i;

/** `5 @ 83 kg` → `5 @ 82.5 kg` where the place has no such plates; of two that are as near, the heavier. */
export const roundLoads: Rewriter = (request) => {
  const lines = findMovementLines(request);
  const place = lines[0] && findPlaceOf(request, lines[0]);
  if (!place) return undefined;
  const edits = lines.flatMap((at) => roundLine(request, place, at));
  return rewriteFile(request, `Round to the nearest that ${place.name} can load`, edits);
};

/** The place where the entry of a line takes place, if it is defined. */
export function findPlaceOf({ practice }: RewriteRequest, { placed: { entry } }: LineAt): Place | undefined {
  const name = entry.kind === 'session' || entry.kind === 'plan' ? entry.place : undefined;
  return name && practice.findPlace(name.text);
}

function roundLine({ practice }: RewriteRequest, place: Place, { placed, line }: LineAt): FileEdit[] {
  const movement = practice.findMovement(line.name.text);
  if (!movement) return [];
  return listMasses(line.cells).flatMap((written) => {
    const rounded = roundWritten(place, movement, written);
    return rounded === undefined || rounded === written.set.loadText
      ? []
      : [editSpan(placed, written.set.loadSpan, rounded)];
  });
}

function roundWritten(place: Place, movement: Movement, { load, set }: WrittenMass): string | undefined {
  const parts = MASSES.exec(set.loadText);
  if (load.high || !parts) return undefined;
  const [all, times, , and, other] = parts;
  const round = (mass: Mass): string => printIn(mass, findNearestLoad(place, movement, mass));
  const second = load.other && other !== undefined ? `${and}${round(load.other)}` : '';
  return `${times}${round(load.mass)}${second}${set.loadText.slice(all.length)}`;
}

/** The nearest load that a place can make, or the load itself where its list does not say. */
export function findNearestLoad(place: Place, movement: Movement, mass: Mass): Weight {
  const found = findNearestMass(place.entry, movement, mass);
  const { below, above } = found ?? {};
  if (!found || found.fits) return mass;
  if (!below || !above) return below ?? above ?? mass;
  return above.grams - mass.grams <= mass.grams - below.grams ? above : below;
}

/** In the unit that was written, so that a bare number means the same as before. */
function printIn({ unit, written, grams }: Mass, weight: Weight): string {
  return weight.grams === grams ? printPlain(written) : printPlain(roundTo(fromGrams(weight.grams, unit), 2));
}
