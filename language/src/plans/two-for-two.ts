/** A line without steps of its own: two reps over the goal in the last set, twice in a row, and the load goes up. */
import { isReadyForMoreLoad, suggestRaise } from '../measures/progression-rules.ts';
import type { MassLoad } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printLoad } from '../printing/print-load.ts';
import { printAmount } from '../printing/print-quantity.ts';
import type { Draft, ProgressionRule } from './draft.ts';
import type { LineContext } from './line-context.ts';
import { listModifiers } from './line-steps.ts';
import { withLoad } from './move-load.ts';
import { countSets, hasMade, loadOf, printDone } from './performance.ts';
import { roundToPlace } from './round-to-place.ts';

export const raiseByTwoForTwo: ProgressionRule = (context, block, planned, movement, performances) => {
  const [first, ...others] = planned.sets;
  const amount = first?.group.amount;
  const load = first?.group.load;
  const hasSteps = listModifiers(planned.source).some(({ kind }) => kind === 'step' || kind === 'stall');
  const last = performances.at(-1);
  if (hasSteps || planned.source.cells.length > 1 || others.length > 0 || !last || context.of.turn.deload)
    return undefined;
  if (amount?.kind !== 'quantity' || amount.quantity.measure !== 'reps' || load?.kind !== 'mass')
    return undefined;
  const isWritten = planned.source.cells[0]?.sets[0]?.load?.kind === 'mass';
  if (load.high || load.other || !isWritten) return undefined;
  const done = loadOf(last);
  if (done === undefined || done < load.mass.grams) return undefined;
  const write = (written: MassLoad, why: string): Draft => ({
    groups: [withLoad(context, movement, first!.group, written)],
    reasons: [why],
  });
  const before = performances.at(-2);
  const told = printDone(last, movement);
  const isSame = before !== undefined && loadOf(before) === done;
  const lastSets = [before, last].flatMap((performance) => performance?.sets.at(-1)?.amount ?? []);
  if (isSame && isReadyForMoreLoad(lastSets, amount.quantity.value) && context.gap === undefined) {
    const raised = findRaise(context, movement, done, load);
    const why = `2-for-2: two over ${printAmount(amount)} in the last set twice (${told})`;
    return raised
      ? write({ ...load, mass: raised }, `${why}, so more load`)
      : write(load, `${why}, and no load between 2 and 10 % more`);
  }
  if (done === load.mass.grams || !hasMade(last, { amount, sets: countSets(block, planned.line) }))
    return undefined;
  const kept = last.sets[0]?.load;
  if (kept?.kind !== 'mass') return undefined;
  return write({ ...load, mass: kept.mass }, `${printLoad(load)} in the plan; ${told}`);
};

/** The lightest load from 2 to 10 % more that the place can make. */
function findRaise(
  { place }: LineContext,
  movement: Movement | undefined,
  done: number,
  { mass }: MassLoad,
): MassLoad['mass'] | undefined {
  const { low, high } = suggestRaise(done);
  const raised = roundToPlace(low, mass.unit, movement, place, mass, 'up').mass;
  return raised.grams >= low && raised.grams <= high ? raised : undefined;
}
