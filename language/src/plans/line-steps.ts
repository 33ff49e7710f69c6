/** How far the steps of a plan's line have gone by a week. */
import type { MovementLine, PlanDay, PlanEntry } from '../model/entry.ts';
import type { Modifier, SetGroup, Step } from '../model/quantity.ts';
import { printMovementLine } from '../printing/print-movement-line.ts';
import { foldName } from '../text/names.ts';
import { quantityOf } from './move-amount.ts';
import { countWeekSteps, findDeload, type PlanTurn } from './plan-calendar.ts';
import { baseUnit, kindOf, type TakenStep, toBase } from './step-kinds.ts';

/** The steps on a line's sets in a week, besides those of each round. */
export interface LineSteps {
  readonly taken: readonly TakenStep[];
  readonly eachRound: readonly Step[];
}

/** All steps on a line's sets: its own and, of the weekly cells, those of the cell at hand. */
export function listSteps(line: MovementLine): Step[] {
  return listModifiers(line).filter((modifier) => modifier.kind === 'step');
}

/** What stands behind the sets of a line, in its cells first: mostly nothing. */
export function listModifiers({ cells, modifiers }: MovementLine): readonly Modifier[] {
  if (cells.every((cell) => cell.modifiers.length === 0)) return modifiers;
  return [...cells.flatMap((cell) => cell.modifiers), ...modifiers];
}

/** Weeks until a line begins again: its cells; of a line with one cell, the longest of the plan. */
export function findCycle(plan: PlanEntry, cells: number): number | undefined {
  const lines = plan.days.flatMap(({ blocks }) => blocks.flatMap((block) => block.lines));
  const weeks = cells > 1 ? cells : Math.max(1, ...lines.map((line) => line.cells.length));
  return weeks > 1 ? weeks : undefined;
}

/** How often a step of a line, or of a block's rest, was taken by a day; undefined where it does not say how often. */
export function countSteps(
  plan: PlanEntry,
  step: Step,
  turn: PlanTurn,
  line: MovementLine | undefined,
): number | undefined {
  switch (step.each) {
    case 'week':
      return countWeekSteps(plan, turn.week);
    case 'session': {
      const days = line ? findDaysOfLine(plan, line) : [turn.day];
      const done = days.reduce((sum, day) => sum + (turn.doneBefore.get(day) ?? 0), 0);
      // A deload takes no step: it stays where the session before it was.
      return turn.deload ? Math.max(0, done - 1) : done;
    }
    case 'cycle': {
      const cycle = findCycle(plan, line?.cells.length ?? 1);
      return cycle && Math.floor((findSteppedWeek(plan, turn.week) - 1) / cycle);
    }
    default:
      return undefined;
  }
}

const daysByLine = new WeakMap<PlanEntry, ReadonlyMap<string, readonly PlanDay[]>>();

/** The days that write just that line: on several days it is one progression, a step from each to the next. */
export function findDaysOfLine(plan: PlanEntry, line: MovementLine): readonly PlanDay[] {
  const known = daysByLine.get(plan) ?? groupDays(plan);
  daysByLine.set(plan, known);
  return known.get(nameLine(line)) ?? [];
}

function groupDays({ days }: PlanEntry): Map<string, readonly PlanDay[]> {
  const groups = new Map<string, readonly PlanDay[]>();
  for (const day of days) {
    const lines = new Set(day.blocks.flatMap((block) => block.lines.map(nameLine)));
    for (const line of lines) groups.set(line, [...(groups.get(line) ?? []), day]);
  }
  return groups;
}

export function isSameLine(one: MovementLine, other: MovementLine): boolean {
  return one === other || nameLine(one) === nameLine(other);
}

/** All that it says, but for the letter of its superset. */
function nameLine({ label: _label, ...line }: MovementLine): string {
  return foldName(printMovementLine(line));
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
export function takeSteps(plan: PlanEntry, line: MovementLine, cellIndex: number, turn: PlanTurn): LineSteps {
  const modifiers = [...(line.cells[cellIndex]?.modifiers ?? []), ...line.modifiers];
  const steps = modifiers.filter((modifier) => modifier.kind === 'step').filter(({ onRest }) => !onRest);
  const sets = line.cells[cellIndex]?.sets ?? [];
  const taken: TakenStep[] = [];
  for (const [index, step] of steps.entries()) {
    if (step.whenFull || step.each === 'round') continue;
    const times = countSteps(plan, step, turn, line);
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
