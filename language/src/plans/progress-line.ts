/** Rules that move a line's load or reps by what was really done: double progression, stall rules, two for two. */
import { fromDayNumber } from '../calendar/iso-date.ts';
import { countRounds, expandBlock } from '../measures/expand-sets.ts';
import { isReadyForMoreLoad, suggestRaise } from '../measures/progression-rules.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { Block, MovementLine, PlaceEntry } from '../model/entry.ts';
import type { Amount, Load, MassLoad, Quantity, SetGroup, Step } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printLoad } from '../printing/print-load.ts';
import { printAmount, printPlain } from '../printing/print-quantity.ts';
import { listModifiers, toBase } from './line-steps.ts';
import type { Gap } from './next-turn.ts';
import { countMisses, hasMade, loadOf, type Performance, type PlanOfLine } from './performance.ts';
import type { ProjectedLine } from './projected.ts';
import { roundToPlace } from './round-to-place.ts';

export interface LineContext {
  readonly works: SessionWorks;
  readonly athlete: string;
  readonly day: number;
  readonly place: PlaceEntry | undefined;
  readonly of: PlanOfLine;
  readonly week: number;
  readonly deload: boolean;
  /** Percent: a deload's share of loads. */
  readonly share: number | undefined;
  readonly gap: Gap | undefined;
}

/** Sets as they will be written, and why they are not what the plan says, one sentence each. */
export interface Draft {
  readonly groups: readonly SetGroup[];
  readonly reasons: readonly string[];
}

/** `8-12 @ 20 kg, then +2 kg from 8`: the load moves when every set has reached the top, else each set gets one rep more. */
export function progressDouble(
  context: LineContext,
  block: Block,
  planned: ProjectedLine,
  movement: Movement | undefined,
  performances: readonly Performance[],
): Draft | undefined {
  const [first, ...others] = planned.sets;
  const then = listModifiers(planned.source).find(
    (modifier): modifier is Step => modifier.kind === 'step' && modifier.whenFull,
  );
  const amount = first?.group.amount;
  const load = first?.group.load;
  const last = performances.at(-1);
  const done = last && loadOf(last);
  if (!then || others.length > 0 || amount?.kind !== 'range' || load?.kind !== 'mass') return undefined;
  if (done === undefined || done === 0 || (then.unit !== 'kg' && then.unit !== 'lb')) return undefined;
  const count = countSets(block, planned.line);
  const isFull = hasMade(last!, amount.high.value, count);
  const moves = isFull && !context.deload && context.gap === undefined;
  const unit = load.mass.unit;
  const wanted = moves ? done + then.sign * toBase(then.amount, then.unit) : done;
  const mass = roundLoad(
    context,
    movement,
    applyShare(wanted, context.share),
    unit,
    load,
    moves ? done : undefined,
  );
  const from = then.from ?? amount.low.value;
  const step = amount.low.measure === 'reps' ? 1 : 0;
  const reps = Array.from({ length: count }, (_, index) => {
    if (moves || context.deload) return from;
    const before = last!.sets[index]?.amount;
    return before === undefined
      ? amount.low.value
      : Math.min(amount.high.value, Math.max(amount.low.value, before + step));
  });
  const told = printDone(last!, movement);
  const why = moves
    ? `All sets at the top of ${printAmount(amount)} (${told}): ${printStepSize(then)}`
    : isFull
      ? `${told}: ready for ${printStepSize(then)}, which waits`
      : `${printAmount(amount)} in the plan; ${told}`;
  return {
    groups: toGroups(first!.group, amount, reps, { ...load, mass }, countRounds(block)),
    reasons: [why],
  };
}

/** `+2.5 kg each week, after 3 misses -10%`: up after a session that was made, the same after a miss, down after so many. */
export function progressOrStall(
  context: LineContext,
  block: Block,
  planned: ProjectedLine,
  movement: Movement | undefined,
  performances: readonly Performance[],
): Draft | undefined {
  const modifiers = listModifiers(planned.source);
  const stall = modifiers.find((modifier) => modifier.kind === 'stall');
  const step = modifiers.find(
    (modifier): modifier is Step =>
      modifier.kind === 'step' &&
      !modifier.onRest &&
      !modifier.whenFull &&
      ['kg', 'lb', '%'].includes(modifier.unit),
  );
  const [first, ...others] = planned.sets;
  const amount = first?.group.amount;
  const load = first?.group.load;
  const last = performances.at(-1);
  const done = last && loadOf(last);
  if (!stall || others.length > 0 || amount?.kind !== 'quantity' || load?.kind !== 'mass' || !done)
    return undefined;
  const count = countSets(block, planned.line);
  const goal = amount.quantity.value;
  const isMade = hasMade(last!, goal, count);
  const misses = countMisses(performances, goal, count);
  const isSameWeek = step?.each === 'week' && last!.record.entry.plan?.week === context.week;
  const moves = isMade && step !== undefined && !context.deload && context.gap === undefined && !isSameWeek;
  const falls = !isMade && misses >= stall.misses && !context.deload;
  const taken = falls ? stall.step : step;
  const wanted = moves || falls ? moveLoad(done, taken!) : done;
  const written = applyShare(wanted, context.share);
  const mass = roundLoad(context, movement, written, load.mass.unit, load, moves ? done : undefined);
  const told = printDone(last!, movement);
  const missed = misses === 1 ? '1 miss' : `${misses} misses in a row`;
  const why = falls
    ? `${missed} (${told}): ${printStepSize(stall.step)}`
    : moves
      ? undefined
      : isMade
        ? `${told}: the load stays`
        : `${missed} (${told}): the same load again`;
  return { groups: [{ ...first!.group, load: { ...load, mass } }], reasons: why ? [why] : [] };
}

/** A line without steps of its own: two reps over the goal in the last set, twice in a row, and the load goes up. */
export function raiseByTwoForTwo(
  context: LineContext,
  block: Block,
  planned: ProjectedLine,
  movement: Movement | undefined,
  performances: readonly Performance[],
): Draft | undefined {
  const [first, ...others] = planned.sets;
  const amount = first?.group.amount;
  const load = first?.group.load;
  const hasSteps = listModifiers(planned.source).some(({ kind }) => kind === 'step' || kind === 'stall');
  const last = performances.at(-1);
  if (hasSteps || planned.source.cells.length > 1 || others.length > 0 || !last || context.deload)
    return undefined;
  if (amount?.kind !== 'quantity' || amount.quantity.measure !== 'reps' || load?.kind !== 'mass')
    return undefined;
  const isWritten = planned.source.cells[0]?.sets[0]?.load?.kind === 'mass';
  if (load.high || load.other || !isWritten) return undefined;
  const goal = amount.quantity.value;
  const done = loadOf(last);
  const before = performances.at(-2);
  if (done === undefined || done < load.mass.grams) return undefined;
  const told = printDone(last, movement);
  const isSame = before !== undefined && loadOf(before) === done;
  const lastSets = [before, last].flatMap((performance) => performance?.sets.at(-1)?.amount ?? []);
  if (isSame && isReadyForMoreLoad(lastSets, goal) && context.gap === undefined) {
    const { low, high } = suggestRaise(done);
    const raised = findRaise(context, movement, low, high, load);
    if (raised) {
      const why = `2-for-2: two over ${printAmount(amount)} in the last set twice (${told}), so more load`;
      return { groups: [{ ...first!.group, load: { ...load, mass: raised } }], reasons: [why] };
    }
    const why = `2-for-2: two over ${printAmount(amount)} in the last set twice (${told}), and no load between 2 and 10 % more`;
    return { groups: [first!.group], reasons: [why] };
  }
  if (done === load.mass.grams || !hasMade(last, goal, countSets(block, planned.line))) return undefined;
  const kept = last.sets[0]?.load;
  if (kept?.kind !== 'mass') return undefined;
  const why = `${printLoad(load)} in the plan; ${told}`;
  return { groups: [{ ...first!.group, load: { ...load, mass: kept.mass } }], reasons: [why] };
}

/** The lightest load from 2 to 10 % more that the place can make. */
function findRaise(
  { place }: LineContext,
  movement: Movement | undefined,
  low: number,
  high: number,
  load: MassLoad,
): MassLoad['mass'] | undefined {
  const { unit } = load.mass;
  const rounded = roundToPlace(low, unit, movement, place);
  if (rounded.mass.grams >= low) return rounded.mass.grams <= high ? rounded.mass : undefined;
  // Rounded down: the next one up is as far above `low` as the one below is under it, or farther.
  const next = roundToPlace(high, unit, movement, place);
  return next.mass.grams >= low && next.mass.grams <= high ? next.mass : undefined;
}

function roundLoad(
  { place }: LineContext,
  movement: Movement | undefined,
  grams: number,
  unit: 'kg' | 'lb',
  load: MassLoad,
  moreThan: number | undefined,
): MassLoad['mass'] {
  if (Math.abs(grams - load.mass.grams) < 1) return load.mass;
  const rounded = roundToPlace(grams, unit, movement, place);
  // A step too small for the plates of the place must not vanish: it is taken to the next load.
  if (moreThan === undefined || rounded.mass.grams > moreThan + 20 || grams <= moreThan) return rounded.mass;
  const next = roundToPlace(moreThan + 2 * (grams - moreThan), unit, movement, place);
  return next.mass.grams > moreThan ? next.mass : rounded.mass;
}

function moveLoad(grams: number, { sign, amount, unit }: Step): number {
  return unit === '%'
    ? grams * (1 + (sign * amount) / 100)
    : Math.max(0, grams + sign * toBase(amount, unit));
}

function applyShare(grams: number, share: number | undefined): number {
  return share === undefined ? grams : (grams * share) / 100;
}

function countSets(block: Block, line: MovementLine): number {
  return expandBlock({ ...block, lines: [line] }).length;
}

/** `9, 9, 8 @ 22 kg`; equal ones are written once: `3x8`, and in rounds `8`. */
function toGroups(
  group: SetGroup,
  amount: Extract<Amount, { kind: 'range' }>,
  reps: readonly number[],
  load: Load,
  rounds: number | undefined,
): SetGroup[] {
  const write = (value: number): Amount => ({
    kind: 'quantity',
    quantity: withValue(amount.low, value),
    perSide: amount.perSide,
  });
  const isEqual = reps.every((value) => value === reps[0]);
  if (isEqual && reps.length > 0)
    return [
      {
        ...group,
        ...(rounds === undefined
          ? { count: reps.length, counted: reps.length > 1 }
          : { count: 1, counted: false }),
        amount: write(reps[0]!),
        load,
      },
    ];
  return reps.map((value) => ({ ...group, count: 1, counted: false, amount: write(value), load }));
}

export function withValue(quantity: Quantity, value: number): Quantity {
  const factor = quantity.written === 0 ? 1 : quantity.value / quantity.written;
  return { ...quantity, value, written: Number((value / factor).toFixed(3)) };
}

/** `10, 9, 8 @ 2x22 kg on 2026-09-14`. */
function printDone({ record, sets }: Performance, movement: Movement | undefined): string {
  const amounts = sets.map(({ measure, amount }) =>
    measure === 'reps'
      ? printPlain(amount)
      : `${printPlain(amount)} ${measure === 'seconds' ? 's' : measure === 'metres' ? 'm' : 'cal'}`,
  );
  const load = sets[0]?.load;
  const isOne = sets.every(({ grams }) => grams === sets[0]?.grams);
  const at = load && isOne && movement !== undefined ? ` @ ${printLoad(load)}` : '';
  const text =
    new Set(amounts).size === 1 && amounts.length > 1
      ? `${amounts.length}x${amounts[0]}`
      : amounts.join(', ');
  return `${text}${at} on ${fromDayNumber(record.day)}`;
}

function printStepSize({ sign, amount, unit }: Step): string {
  return `${sign > 0 ? '+' : '-'}${printPlain(amount)}${unit === '%' ? '' : ' '}${unit}`;
}
