/** `8-12 @ 20 kg, then +2 kg from 8`: the load moves when every set has reached the top, else each set gets one rep more. */
import { countRounds } from '../measures/expand-sets.ts';
import type { Amount, Quantity, SetGroup, Step } from '../model/quantity.ts';
import { printAmount } from '../printing/print-quantity.ts';
import type { ProgressionRule } from './draft.ts';
import { listModifiers } from './line-steps.ts';
import {
  applyShare,
  describeRounding,
  printStepSize,
  readMovable,
  takeStep,
  unitOfLoad,
  withLoad,
  withMass,
} from './move-load.ts';
import { countSets, hasMade, loadOf, printDone } from './performance.ts';

export const progressDouble: ProgressionRule = (context, block, planned, movement, performances) => {
  const [first, ...others] = planned.sets;
  const then = listModifiers(planned.source).find(
    (modifier): modifier is Step => modifier.kind === 'step' && modifier.whenFull,
  );
  const amount = first?.group.amount;
  const load = first?.group.load ?? { kind: 'bodyweight' };
  const last = performances.at(-1);
  const done = last && loadOf(last);
  if (!then || others.length > 0 || amount?.kind !== 'range' || readMovable(load) === undefined)
    return undefined;
  if (done === undefined || (then.unit !== 'kg' && then.unit !== 'lb')) return undefined;
  if (load.kind === 'mass' && done <= 0) return undefined;
  const { deload } = context.of.turn;
  const count = countSets(block, planned.line);
  const isFull = hasMade(last!, { amount, sets: count });
  const moves = isFull && !deload && context.gap === undefined;
  const wanted = applyShare(moves ? takeStep(done, then) : done, deload?.load);
  const unit = unitOfLoad(load, then);
  const moved = withMass(context, movement, load, wanted, { unit, moreThan: moves ? done : undefined });
  const from = then.from ?? amount.low.value;
  const step = amount.low.measure === 'reps' ? 1 : 0;
  const reps = Array.from({ length: count }, (_, index) => {
    if (moves || deload) return from;
    const before = last!.sets[index]?.amount;
    return before === undefined
      ? amount.low.value
      : Math.min(amount.high.value, Math.max(amount.low.value, before + step));
  });
  const told = printDone(last!, movement);
  const why = moves
    ? `All sets at the top of ${printAmount(amount)} (${told}): ${printStepSize(then)}${describeRounding(moved, wanted, then)}`
    : isFull
      ? `${told}: ready for ${printStepSize(then)}, which waits`
      : `${printAmount(amount)} in the plan; ${told}`;
  const isPlain = !first!.group.load && moved.kind === 'bodyweight' && !moved.mass;
  const group = isPlain ? first!.group : withLoad(context, movement, { ...first!.group, load }, moved);
  return { groups: toGroups(group, amount, reps, countRounds(block)), reasons: [why] };
};

/** `9, 9, 8 @ 22 kg`; equal ones are written once: `3x8`, and in rounds `8`. */
function toGroups(
  group: SetGroup,
  amount: Extract<Amount, { kind: 'range' }>,
  reps: readonly number[],
  rounds: number | undefined,
): SetGroup[] {
  const write = (value: number): Amount => ({
    kind: 'quantity',
    quantity: withValue(amount.low, value),
    perSide: amount.perSide,
  });
  const isEqual = reps.every((value) => value === reps[0]);
  if (isEqual && reps.length > 0) {
    const counted = rounds === undefined && reps.length > 1;
    return [{ ...group, count: counted ? reps.length : 1, counted, amount: write(reps[0]!) }];
  }
  return reps.map((value) => ({ ...group, count: 1, counted: false, amount: write(value) }));
}

export function withValue(quantity: Quantity, value: number): Quantity {
  const factor = quantity.written === 0 ? 1 : quantity.value / quantity.written;
  return { ...quantity, value, written: Number((value / factor).toFixed(3)) };
}
