/** The rests of a plan's day in one week: of a block, and of a line. */
import { countRounds } from '../measures/expand-sets.ts';
import type { Block, MovementLine, PlanEntry, Range } from '../model/entry.ts';
import type { Modifier } from '../model/quantity.ts';
import { countSteps } from './line-steps.ts';
import type { PlanTurn } from './plan-calendar.ts';
import { toBase } from './step-kinds.ts';

/** `rest -10 s each week` in a block; with `each round` the rests run from the first to the last between rounds. */
export function takeRestSteps(plan: PlanEntry, block: Block, turn: PlanTurn): Block {
  let rest = block.rest;
  for (const step of block.restSteps) {
    if (step.kind !== 'step' || !rest) continue;
    if (step.each === 'round') {
      const last = moveRest(rest, step, Math.max(0, (countRounds(block) ?? 1) - 2));
      const ends = [rest.low, rest.high ?? rest.low, last.low, last.high ?? last.low];
      rest = toRange(Math.min(...ends), Math.max(...ends));
    } else rest = moveRest(rest, step, countSteps(plan, step, turn, undefined) ?? 0);
  }
  return rest === block.rest || !rest ? block : { ...block, rest };
}

function moveRest({ low, high }: Range, step: Extract<Modifier, { kind: 'step' }>, times: number): Range {
  const change = step.sign * times * toBase(step.amount, step.unit);
  const bound = step.bound === undefined ? undefined : toBase(step.bound, step.boundUnit ?? step.unit);
  const move = (seconds: number): number => {
    const moved = Math.max(0, seconds + change);
    if (bound === undefined) return moved;
    return step.sign > 0
      ? Math.max(seconds, Math.min(moved, bound))
      : Math.min(seconds, Math.max(moved, bound));
  };
  return toRange(move(low), high === undefined ? undefined : move(high));
}

function toRange(low: number, high: number | undefined): Range {
  return high === undefined || high === low ? { low } : { low, high };
}

/** A line's own rest, or its block's where the line has a step on it. Steps are taken, so they are not part of it any more. */
export function takeLineRest(
  plan: PlanEntry,
  turn: PlanTurn,
  block: Block,
  source: MovementLine,
  modifiers: readonly Modifier[],
): Modifier[] {
  const others = modifiers.filter(({ kind }) => kind !== 'step' && kind !== 'rest');
  const own = modifiers.find((modifier) => modifier.kind === 'rest');
  const steps = modifiers.filter((modifier) => modifier.kind === 'step').filter(({ onRest }) => onRest);
  if (steps.length === 0) return own ? [...others, own] : others;
  let rest: Range | undefined = own
    ? { low: own.low.value, ...(own.high && { high: own.high.value }) }
    : block.rest;
  if (!rest) return others;
  for (const step of steps) rest = moveRest(rest, step, countSteps(plan, step, turn, source) ?? 0);
  const clock = (seconds: number) =>
    ({ measure: 'seconds', value: seconds, written: seconds, unit: 'clock' }) as const;
  return [
    ...others,
    {
      kind: 'rest',
      low: clock(rest.low),
      ...(rest.high !== undefined && { high: clock(rest.high) }),
      span: own?.span ?? steps[0]!.span,
    },
  ];
}
