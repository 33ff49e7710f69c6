/** Whether every step of a plan's line can be taken, and gets where it is to go. */
import { countRounds } from '../measures/expand-sets.ts';
import type { Block, MovementLine, PlanEntry, Range } from '../model/entry.ts';
import type { Load, Modifier, Step } from '../model/quantity.ts';
import type { Problem } from '../model/source.ts';
import { countSteps, findCycle, listModifiers } from '../plans/line-steps.ts';
import { clamp, quantityOf } from '../plans/move-amount.ts';
import { countWeeks, listTurns, type PlanTurn } from '../plans/plan-calendar.ts';
import { kindOf, type StepKind, toBase } from '../plans/step-kinds.ts';
import { printStep } from '../printing/print-modifiers.ts';
import { printNumber } from '../units/number.ts';
import { problem } from './check-context.ts';

export function* checkLineSteps(
  entry: PlanEntry,
  dayNumber: number,
  block: Block,
  line: MovementLine,
): Iterable<Problem> {
  const steps = listModifiers(line).filter((modifier) => modifier.kind === 'step');
  const timed: Step[] = [];
  for (const step of steps) {
    if (step.onRest) {
      const own = listModifiers(line).find((modifier) => modifier.kind === 'rest');
      yield* checkRestStep(entry, { step, rest: own ? toRange(own) : block.rest, line, dayNumber });
      continue;
    }
    const wrong = step.whenFull ? findWrongThen(steps, step, line) : findWrongStep(entry, block, line, step);
    if (wrong) yield problem('plan-step', step.span, `${printStep(step)} can never be taken: ${wrong}`);
    else if (!step.whenFull) timed.push(step);
  }
  const opposed = findOpposed(timed) ?? findOpposed(steps.filter(({ onRest }) => onRest));
  if (opposed) {
    const message = `${printStep(opposed)} goes against another step of this line: keep one of the two`;
    yield problem('plan-step', opposed.span, message);
    return;
  }
  if (line.week !== undefined) return;
  for (const step of timed)
    yield* checkCeiling(
      entry,
      dayNumber,
      line,
      step,
      steps.some(({ whenFull }) => whenFull),
    );
}

/** A step that another of the same kind takes back as often. */
export function findOpposed(steps: readonly Step[]): Step | undefined {
  const goesAgainst = (one: Step, other: Step): boolean =>
    other.each === one.each && kindOf(other) === kindOf(one) && other.sign !== one.sign;
  return steps.find((step) => steps.some((other) => goesAgainst(step, other)));
}

/** A step on a rest; `rest` is the one that it begins with. */
export function* checkRestStep(
  entry: PlanEntry,
  {
    step,
    rest,
    line,
    dayNumber,
  }: { step: Step; rest: Range | undefined; line?: MovementLine; dayNumber: number },
): Iterable<Problem> {
  const isSeconds = kindOf(step) === 'seconds';
  const goesToSeconds = step.boundUnit === undefined || kindOf({ unit: step.boundUnit }) === 'seconds';
  const wrong = !isSeconds
    ? 'a rest is stepped in seconds or minutes'
    : !step.each
      ? 'it does not say how often, such as each week'
      : !goesToSeconds
        ? 'what it goes to is in another unit'
        : rest !== undefined
          ? undefined
          : line
            ? 'the line and its block write no rest, such as rest 1:30'
            : "the block's header writes no rest, such as rest 1:30";
  if (wrong) yield problem('plan-step', step.span, `${printStep(step)} can never be taken: ${wrong}`);
  else if (line?.week === undefined) {
    yield* checkBound(entry, step, readEnd(rest!, step), line, dayNumber);
    yield* checkRunsOut(entry, step, rest!.low, line, dayNumber);
  }
}

/** A rest that shrinks and says no end, in a plan long enough for it to come to nothing. */
function* checkRunsOut(
  entry: PlanEntry,
  step: Step,
  seconds: number,
  line: MovementLine | undefined,
  dayNumber: number,
): Iterable<Problem> {
  if (step.bound !== undefined || step.sign > 0 || step.each === 'round') return;
  const isOver = (turn: PlanTurn): boolean =>
    turn.day.number === dayNumber && clamp(seconds, step, countSteps(entry, step, turn, line) ?? 0) <= 0;
  const first = entry.weeks && listTurns(entry).find(isOver);
  if (!first) return;
  const message = `${printStep(step)} leaves no rest from week ${first.week} on: write where it ends, such as to 30 s`;
  yield problem('plan-ceiling', step.span, message);
}

function toRange({ low, high }: Extract<Modifier, { kind: 'rest' }>): Range {
  return { low: low.value, ...(high && { high: high.value }) };
}

/** The end of a range that has farther to go. */
function readEnd({ low, high = low }: Range, { sign }: Step): number {
  return sign > 0 ? low : high;
}

/** The step on a block's rounds. */
export function* checkRoundStep(
  entry: PlanEntry,
  dayNumber: number,
  block: Block,
  step: Step,
): Iterable<Problem> {
  const rounds = countRounds(block);
  const wrong = !step.each
    ? 'it does not say how often, such as each week'
    : step.each === 'round'
      ? 'the rounds of one day are as many as they are: write each week or each session'
      : rounds === undefined
        ? 'its block has no rounds'
        : step.boundUnit !== undefined && step.boundUnit !== 'round'
          ? 'what it goes to is in another unit'
          : step.each === 'cycle' && findCycle(entry, 1) === undefined
            ? 'no line of the plan has cells that begin again'
            : undefined;
  if (wrong) yield problem('plan-step', step.span, `${printStep(step)} can never be taken: ${wrong}`);
  else yield* checkBound(entry, step, rounds!, undefined, dayNumber);
}

function findWrongStep(entry: PlanEntry, block: Block, line: MovementLine, step: Step): string | undefined {
  const kind = kindOf(step);
  if (kind === 'rounds') return "rounds are the block's: write the step in its header, behind its rounds";
  if (!step.each) return 'it does not say how often, such as each week';
  if (line.week !== undefined) return `the line is for week ${line.week} alone`;
  const rounds = countRounds(block);
  if (step.each === 'round' && rounds === undefined) return 'its block has no rounds';
  if (step.each === 'cycle' && findCycle(entry, line.cells.length) === undefined)
    return 'no line of the plan has cells that begin again';
  if (kind === 'sets' && rounds !== undefined)
    return 'the rounds of the block decide how many sets there are';
  if (
    step.bound !== undefined &&
    step.boundUnit &&
    kindOf({ unit: step.boundUnit }) !== kind &&
    !isMassBound(step)
  )
    return 'what it goes to is in another unit';
  const sets = line.cells.flatMap((cell) => cell.sets);
  if (sets.length === 0 || kind === 'sets' || canMove(kind, step, line)) return undefined;
  return `the line has no ${NOUNS[kind]} to change`;
}

/** `+2.5% each week to 100 kg`. */
function isMassBound({ unit, boundUnit }: Step): boolean {
  return unit === '%' && (boundUnit === 'kg' || boundUnit === 'lb');
}

const NOUNS: Readonly<Record<StepKind, string>> = {
  reps: 'reps',
  seconds: 'time',
  metres: 'distance',
  calories: 'calories',
  load: 'weight',
  percent: 'percentage or weight',
  rating: 'target or rating of that scale',
  sets: 'sets',
  rounds: 'rounds',
};

const WEIGHTS: ReadonlySet<Load['kind']> = new Set([
  'mass',
  'sides',
  'bodyweight',
  'percent',
  'target',
  'bodyweight-share',
]);
const SHARES: ReadonlySet<Load['kind']> = new Set(['percent', 'bodyweight-share', 'mass', 'sides']);

function canMove(kind: StepKind, step: Step, { cells }: MovementLine): boolean {
  const sets = cells.flatMap((cell) => cell.sets);
  switch (kind) {
    case 'load':
      // Without a load the step is added to the body's weight.
      return sets.some(({ load }) => !load || WEIGHTS.has(load.kind));
    case 'percent':
      return sets.some(({ load }) => load && SHARES.has(load.kind));
    case 'rating':
      return sets.some(
        ({ load, ratings }) =>
          (load?.kind === 'target' && load.scale === step.unit) ||
          ratings.some(({ scale }) => scale === step.unit),
      );
    default:
      return sets.some(({ amount }) => amount && quantityOf(amount)?.measure === kind);
  }
}

/** `then` follows a range, or a step that comes to an end. */
function findWrongThen(steps: readonly Step[], step: Step, line: MovementLine): string | undefined {
  const before = steps[steps.indexOf(step) - 1];
  const sets = line.cells.flatMap((cell) => cell.sets);
  const hasRange = sets.some(({ amount }) => amount?.kind === 'range');
  const ends = before !== undefined && !before.whenFull && before.bound !== undefined;
  if (!hasRange && !ends) return 'nothing before it is ever full, such as 8-12 or +1 rep each week to 12';
  const top = hasRange
    ? Math.max(...sets.flatMap(({ amount }) => (amount?.kind === 'range' ? [amount.high.value] : [])))
    : before!.bound!;
  if (step.from !== undefined && step.from >= top && (hasRange || before!.sign > 0))
    return `it begins again from ${printNumber(step.from, 1)}, which is full already`;
  return undefined;
}

/** A bound that the plan's weeks never get to, or that lies behind where the line begins. */
function* checkCeiling(
  entry: PlanEntry,
  dayNumber: number,
  line: MovementLine,
  step: Step,
  hasThen: boolean,
): Iterable<Problem> {
  if (step.bound === undefined || step.each === 'round' || isMassBound(step)) return;
  const base = readBase(line, step);
  if (base === undefined) return;
  // What follows a bound is reached by its rounds, and cells begin again.
  const isOpen = hasThen || line.cells.length > 1;
  yield* checkBound(entry, step, base, line, isOpen ? 'open' : dayNumber);
}

/** `on` is the day that counts the sessions; `open` where the bound need not be reached. */
function* checkBound(
  entry: PlanEntry,
  step: Step,
  base: number,
  line: MovementLine | undefined,
  on: number | 'open',
): Iterable<Problem> {
  if (step.bound === undefined || step.each === 'round') return;
  const bound = toBase(step.bound, step.boundUnit ?? step.unit);
  if (step.sign > 0 ? base >= bound : base <= bound) {
    const message = `${printStep(step)} can never be taken: ${line ? 'the line' : 'the block'} begins there already or past it`;
    yield problem('plan-step', step.span, message);
    return;
  }
  // A plan that does not say how long it is gets there some time.
  if (!entry.weeks || on === 'open') return;
  const turns = listTurns(entry).filter((turn) => turn.day.number === on);
  const most = Math.max(0, ...turns.map((turn) => countSteps(entry, step, turn, line) ?? 0));
  const { bound: _bound, ...unbounded } = step;
  const reached = clamp(base, unbounded, most);
  if (step.sign > 0 ? reached >= bound : reached <= bound) return;
  const weeks = countWeeks(entry);
  const steps = `${most} ${most === 1 ? 'step' : 'steps'}`;
  const message = `${printStep(step)} is never reached: in ${weeks} weeks there ${most === 1 ? 'is' : 'are'} ${steps}`;
  yield problem('plan-ceiling', step.span, message);
}

/** Where a step begins, in what its kind is kept in; of several sets the first that it moves. */
function readBase({ cells }: MovementLine, step: Step): number | undefined {
  const kind = kindOf(step);
  const sets = cells[0]?.sets ?? [];
  switch (kind) {
    case 'sets':
      return sets.reduce((total, { count }) => total + count, 0);
    case 'load':
      return sets.flatMap(({ load }) => (load?.kind === 'mass' ? [(load.high ?? load.mass).grams] : []))[0];
    case 'percent':
      return sets.flatMap(({ load }) => (load?.kind === 'percent' ? [load.high ?? load.low] : []))[0];
    case 'rating':
      return sets.flatMap(({ load }) =>
        load?.kind === 'target' && load.scale === step.unit ? [load.high ?? load.low] : [],
      )[0];
    default: {
      const amount = sets.find(({ amount: each }) => each && quantityOf(each)?.measure === kind)?.amount;
      return amount?.kind === 'range' ? amount.high.value : amount && quantityOf(amount)?.value;
    }
  }
}
