/** What steps that were taken make of the numbers of a set. */
import type { Amount, Load, Measure, Quantity, SetGroup, Step } from '../model/quantity.ts';
import { kindOf, type TakenStep, toBase } from './step-kinds.ts';

/** The number that an amount's steps move; of a range its lower end. */
export function quantityOf(amount: Amount): Quantity | undefined {
  switch (amount.kind) {
    case 'quantity':
    case 'at-least':
      return amount.quantity;
    case 'range':
      return amount.low;
    case 'sides':
      return amount.left;
    default:
      return undefined;
  }
}

/** An amount after so many steps of its own kind; a range is moved as a whole, its upper end up to the bound. */
export function moveAmount(amount: Amount, { step, times }: TakenStep): Amount {
  const lead = quantityOf(amount);
  if (!lead || lead.measure !== kindOf(step) || times === 0) return amount;
  const top = amount.kind === 'range' ? amount.high.value : lead.value;
  return moveBy(amount, lead.measure, clamp(top, step, times) - top);
}

/** Never below one. */
function moveBy(amount: Amount, measure: Measure, change: number): Amount {
  if (quantityOf(amount)?.measure !== measure) return amount;
  const move = (quantity: Quantity): Quantity => addTo(quantity, Math.max(change, 1 - quantity.value));
  switch (amount.kind) {
    case 'quantity':
    case 'at-least':
      return { ...amount, quantity: move(amount.quantity) };
    case 'range':
      return { ...amount, low: move(amount.low), high: move(amount.high) };
    case 'sides':
      return { ...amount, left: move(amount.left), right: move(amount.right) };
    default:
      return amount;
  }
}

/** A set after its steps; its drops go with it, so that a bound which stops it stops them too. */
export function moveSet(group: SetGroup, taken: readonly TakenStep[]): SetGroup {
  if (!group.amount) return group;
  const amount = taken.reduce(moveAmount, group.amount);
  const [was, is] = [quantityOf(group.amount), quantityOf(amount)];
  if (!was || !is || was.value === is.value) return { ...group, amount };
  const follow = (dropped: Amount): Amount => moveBy(dropped, was.measure, is.value - was.value);
  return { ...group, amount, drops: group.drops.map((drop) => ({ ...drop, amount: follow(drop.amount) })) };
}

/** The steps as a set's drops take them: as far as they took the set's own load, whatever their bound. */
export function followSteps(taken: readonly TakenStep[], load: Load | undefined): TakenStep[] {
  const lead = { load: load?.kind === 'mass' ? load.mass.grams : undefined, percent: readPercent(load) };
  return taken.map((each) => {
    const kind = kindOf(each.step);
    const value = kind === 'load' || kind === 'percent' ? lead[kind] : undefined;
    if (value === undefined || each.step.bound === undefined) return each;
    const size = toBase(each.step.amount, each.step.unit);
    const times = size === 0 ? 0 : Math.abs(clamp(value, each.step, each.times) - value) / size;
    const { bound: _bound, boundUnit: _unit, ...step } = each.step;
    return { step, times };
  });
}

function readPercent(load: Load | undefined): number | undefined {
  return load?.kind === 'percent' ? load.low : undefined;
}

/** A number after so many equal steps, up to the bound; one already past it stays. */
export function clamp(value: number, step: Step, times: number): number {
  const moved = value + step.sign * times * toBase(step.amount, step.unit);
  if (step.bound === undefined) return moved;
  const bound = toBase(step.bound, step.boundUnit ?? step.unit);
  return step.sign > 0 ? Math.max(value, Math.min(moved, bound)) : Math.min(value, Math.max(moved, bound));
}

function addTo(quantity: Quantity, change: number): Quantity {
  if (change === 0) return quantity;
  const factor = quantity.written === 0 ? 1 : quantity.value / quantity.written;
  const value = quantity.value + change;
  return { ...quantity, value, written: Number((value / factor).toFixed(3)) };
}
