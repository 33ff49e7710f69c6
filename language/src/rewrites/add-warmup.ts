import { listBlocks } from '../checks/check-context.ts';
import { findNearestMass } from '../checks/inventory.ts';
import { rangeBetween } from '../formatting/file-edit.ts';
import type { Mass, MassLoad, MassUnit, SetGroup } from '../model/quantity.ts';
import type { Place } from '../practice/athlete.ts';
import { implementOf, type Movement } from '../practice/movement.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { foldName } from '../text/names.ts';
import { fromGrams, toGrams } from '../units/mass.ts';
import { roundTo } from '../units/number.ts';
import { findMovementLines, indentationOf, type LineAt } from './find-lines.ts';
import { type Rewriter, rewriteFile } from './rewrite.ts';
import { findNearestLoad, findPlaceOf } from './round-loads.ts';

/** Shares of the top set's load and their reps; common practice. 0 is the empty bar. */
const STEPS: readonly { readonly share: number; readonly reps: number }[] = [
  { share: 0, reps: 8 },
  { share: 0.5, reps: 5 },
  { share: 0.7, reps: 3 },
  { share: 0.85, reps: 1 },
];
const TITLE = 'Add warm-up sets (common practice: the empty bar, then 50, 70 and 85 % of the top set)';

/** Where no place says what can be loaded: usual bars, and steps of the smallest usual plates. Common practice. */
const USUAL: Readonly<Record<MassUnit, { readonly bar: number; readonly step: number }>> = {
  kg: { bar: 20, step: 2.5 },
  lb: { bar: 45, step: 5 },
};

/** A `warmup` line above a line of straight sets, up to its heaviest one, in loads that the place can make. */
export const addWarmup: Rewriter = (request) => {
  const [at, ...more] = findMovementLines(request);
  if (!at || more.length > 0 || !mayWarmUp(at)) return undefined;
  const { line, row, text } = at;
  const movement = request.practice.findMovement(line.name.text);
  const top = findTopSet(line.cells[0]!.sets);
  if (!movement || !top) return undefined;
  const sets = listWarmups(top.load, movement, findPlaceOf(request, at));
  if (sets.length === 0) return undefined;
  const times = top.load.implements === 2 ? '2x' : '';
  const side = top.perSide ? '/side' : '';
  const written = sets.map(({ reps, load }) => `${reps}${side} @ ${times}${load}`).join(', ');
  const newText = `${indentationOf(text)}warmup ${line.name.text}: ${written} ${top.load.mass.unit}\n`;
  return rewriteFile(request, TITLE, [{ range: rangeBetween(row, 0, row, 0), newText }]);
};

function mayWarmUp({ placed, block, line }: LineAt): boolean {
  const isWarm = listBlocks(placed.entry)
    .flatMap(({ lines }) => lines)
    .some((other) => other.purpose === 'warmup' && foldName(other.name.text) === foldName(line.name.text));
  return (
    block.kind === 'straight' &&
    line.purpose !== 'warmup' &&
    !line.label &&
    line.cells.length === 1 &&
    !isWarm
  );
}

interface TopSet {
  readonly load: MassLoad;
  readonly perSide: boolean;
}

/** The heaviest set of reps, if all that counts of its load is one weight or a pair. */
function findTopSet(sets: readonly SetGroup[]): TopSet | undefined {
  let top: TopSet | undefined;
  for (const { load, amount } of sets) {
    if (load?.kind !== 'mass' || load.high || load.other || load.chain || load.band) continue;
    if (amount?.kind !== 'quantity' || amount.quantity.measure !== 'reps') continue;
    if (!top || load.mass.grams > top.load.mass.grams) top = { load, perSide: amount.perSide };
  }
  return top;
}

/** Each heavier than the one before and lighter than the top set; never under the bar. */
function listWarmups({ mass: top }: MassLoad, movement: Movement, place: Place | undefined) {
  const { unit } = top;
  const bar = implementOf(movement) === 'bar' ? findBar(top, movement, place) : undefined;
  const lightest = bar?.grams ?? 0;
  // Nobody changes the bar between warm-up sets.
  const rack = place && bar ? { ...place, entry: { ...place.entry, bars: [bar] } } : place;
  const sets: { reps: number; load: string }[] = [];
  let last = 0;
  for (const { share, reps } of STEPS) {
    if (share === 0 && !bar) continue;
    const written = Math.max(top.written * share, fromGrams(lightest, unit));
    const grams = Math.max(lightest, findLoad(toMass(written, unit), movement, rack));
    if (grams <= last || grams >= top.grams) continue;
    last = grams;
    sets.push({ reps, load: printPlain(roundTo(fromGrams(grams, unit), 2)) });
  }
  return sets;
}

/** The heaviest bar that makes the top set, else the heaviest that is lighter; without a list of bars a usual one. */
function findBar(top: Mass, movement: Movement, place: Place | undefined): Mass {
  const bars = (place?.entry.bars ?? []).toSorted((a, b) => b.grams - a.grams);
  const makesTop = (bar: Mass): boolean =>
    findNearestMass({ ...place!.entry, bars: [bar] }, movement, top)?.fits ?? false;
  return (
    bars.find(makesTop) ??
    bars.find(({ grams }) => grams < top.grams) ??
    bars.at(-1) ??
    toMass(USUAL[top.unit].bar, top.unit)
  );
}

/** Grams; in usual steps where the place does not list what this movement is loaded with. */
function findLoad(wanted: Mass, movement: Movement, place: Place | undefined): number {
  const found = place && findNearestMass(place.entry, movement, wanted);
  if (place && found) return findNearestLoad(place, movement, wanted).grams;
  const { step } = USUAL[wanted.unit];
  return toGrams(Math.max(step, Math.round(wanted.written / step) * step), wanted.unit);
}

function toMass(written: number, unit: MassUnit): Mass {
  return { written, unit, grams: toGrams(written, unit) };
}
