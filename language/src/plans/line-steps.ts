/** How far the steps of a plan's line have gone by a week, and what they make of its numbers. */
import type { MovementLine, PlanEntry } from '../model/entry.ts';
import type { Amount, Modifier, Quantity, SetGroup, Step, StepUnit } from '../model/quantity.ts';
import { METRES_PER } from '../units/distance.ts';
import { toGrams } from '../units/mass.ts';
import { countWeekSteps, findDeload, type PlanTurn } from './plan-calendar.ts';

/** A step and how often it has been taken. */
export interface TakenStep {
  readonly step: Step;
  readonly times: number;
}

/** The steps on a line's sets in a week, besides those of each round. */
export interface LineSteps {
  readonly taken: readonly TakenStep[];
  readonly eachRound: readonly Step[];
}

export type StepKind = 'reps' | 'seconds' | 'metres' | 'calories' | 'load' | 'percent' | 'rating' | 'sets';

const KINDS: Readonly<Record<StepUnit, StepKind>> = {
  rep: 'reps',
  s: 'seconds',
  min: 'seconds',
  m: 'metres',
  km: 'metres',
  yd: 'metres',
  cal: 'calories',
  kg: 'load',
  lb: 'load',
  '%': 'percent',
  rpe: 'rating',
  rir: 'rating',
  set: 'sets',
};

export function kindOf(step: Pick<Step, 'unit'>): StepKind {
  return KINDS[step.unit];
}

/** All steps on a line's sets: its own and, of the weekly cells, those of the cell at hand. */
export function listSteps(line: MovementLine): Step[] {
  return listModifiers(line).filter((modifier) => modifier.kind === 'step');
}

export function listModifiers(line: MovementLine): Modifier[] {
  return [...line.cells.flatMap((cell) => cell.modifiers), ...line.modifiers];
}

/** Weeks until a line begins again: its cells; of a line with one cell, the longest of the plan. */
export function findCycle(plan: PlanEntry, cells: number): number | undefined {
  const lines = plan.days.flatMap(({ blocks }) => blocks.flatMap((block) => block.lines));
  const weeks = cells > 1 ? cells : Math.max(1, ...lines.map((line) => line.cells.length));
  return weeks > 1 ? weeks : undefined;
}

/** How often a step was taken by a day of the plan; undefined where its line does not say how often. */
export function countSteps(
  plan: PlanEntry,
  step: Step,
  turn: Pick<PlanTurn, 'week' | 'stepsBefore'>,
  cells: number,
): number | undefined {
  switch (step.each) {
    case 'week':
      return countWeekSteps(plan, turn.week);
    case 'session':
      return turn.stepsBefore;
    case 'cycle': {
      const cycle = findCycle(plan, cells);
      return cycle && Math.floor((findSteppedWeek(plan, turn.week) - 1) / cycle);
    }
    default:
      return undefined;
  }
}

/** A deload stays in the cycle of the week before it. */
function findSteppedWeek(plan: PlanEntry, week: number): number {
  let stepped = week;
  while (stepped > 1 && findDeload(plan, stepped)) stepped--;
  return stepped;
}

/**
 * Steps taken by a day. A step with a bound that is followed by `then` begins again when the bound is reached:
 * `8, +1 rep each week to 10, then +2 kg from 8` gives 8, 9, 10, then 8 with 2 kg more.
 */
export function takeSteps(
  plan: PlanEntry,
  line: MovementLine,
  cellIndex: number,
  cells: number,
  turn: Pick<PlanTurn, 'week' | 'stepsBefore'>,
): LineSteps {
  const modifiers = [...(line.cells[cellIndex]?.modifiers ?? []), ...line.modifiers];
  const steps = modifiers.filter((modifier) => modifier.kind === 'step').filter(({ onRest }) => !onRest);
  const sets = line.cells[cellIndex]?.sets ?? [];
  const taken: TakenStep[] = [];
  for (const [index, step] of steps.entries()) {
    if (step.whenFull || step.each === 'round') continue;
    const times = countSteps(plan, step, turn, cells);
    if (times === undefined) continue;
    const next = steps[index + 1];
    const then = next?.whenFull && !next.each && step.bound !== undefined ? next : undefined;
    const lead = then && readLead(step, sets);
    if (lead === undefined) taken.push({ step, times });
    else taken.push(...climbAgain(step, then!, lead, times));
  }
  return { taken, eachRound: steps.filter(({ each, whenFull }) => each === 'round' && !whenFull) };
}

/** The first set's number that a step of amounts moves. */
export function readLead(step: Step, sets: readonly SetGroup[]): number | undefined {
  const amount = sets[0]?.amount;
  const quantity = amount && quantityOf(amount);
  return quantity && quantity.measure === kindOf(step) ? quantity.value : undefined;
}

function climbAgain(step: Step, then: Step, lead: number, times: number): TakenStep[] {
  const size = step.sign * toBase(step.amount, step.unit);
  const bound = toBase(step.bound!, step.boundUnit ?? step.unit);
  const from = then.from ?? lead;
  let value = lead;
  let starts = 0;
  for (let count = 0; count < times; count++) {
    const isFull = size > 0 ? value >= bound : value <= bound;
    if (isFull) starts++;
    value = isFull ? from : size > 0 ? Math.min(bound, value + size) : Math.max(bound, value + size);
  }
  // Kept as so many steps of one from where the line begins.
  const moved = value - lead;
  const climbed: Step = { ...step, sign: moved < 0 ? -1 : 1, amount: Math.abs(moved), unit: baseUnit(step) };
  const { bound: _bound, boundUnit: _unit, ...unbounded } = climbed;
  return [
    { step: unbounded, times: 1 },
    { step: then, times: starts },
  ];
}

const BASE_UNITS: Readonly<Partial<Record<StepKind, StepUnit>>> = { seconds: 's', metres: 'm' };

function baseUnit(step: Step): StepUnit {
  return BASE_UNITS[kindOf(step)] ?? step.unit;
}

/** A step's size in what its kind is kept in: seconds, metres, grams, else as it is. */
export function toBase(amount: number, unit: StepUnit): number {
  switch (unit) {
    case 'min':
      return amount * 60;
    case 'm':
    case 'km':
    case 'yd':
      return amount * METRES_PER[unit];
    case 'kg':
    case 'lb':
      return toGrams(amount, unit);
    default:
      return amount;
  }
}

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
  const moved = clamp(top, step, times) - top;
  const move = (quantity: Quantity): Quantity => addTo(quantity, Math.max(moved, 1 - quantity.value));
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
