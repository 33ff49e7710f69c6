import type { Block, MovementLine, SessionEntry } from '../model/entry.ts';
import type { Amount, Drop, Load, Modifier, Rating, SetGroup } from '../model/quantity.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import { printLoad, printRange, printWrittenMass } from '../printing/print-load.ts';
import { printAmount, printPlain, printQuantity, printTime } from '../printing/print-quantity.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { collect, NO_PROBLEMS, problem } from './check-context.ts';

/** What a plan may ask of a block and a session cannot have done: the fix writes a number. */
export function checkBlocksForPlans({ blocks }: SessionEntry): readonly Problem[] {
  const problems: Problem[] = [];
  for (const block of blocks) {
    const { rest, restsBetween, restSteps, roundStep } = block;
    const isRange = rest?.high !== undefined || restsBetween.some(({ high }) => high !== undefined);
    if (isRange || restSteps.length > 0 || roundStep) collect(problems, checkBlock(block));
  }
  return problems;
}

function* checkBlock({ rest, restsBetween, restSteps, roundStep, span }: Block): Iterable<Problem> {
  if (rest?.high !== undefined) yield report(span, 'A range of rests', 'write one rest');
  for (const between of restsBetween) {
    if (between.high === undefined) continue;
    const ends = [between.seconds, between.high].map((end) =>
      replaceBy(between.span, `rest ${printTime(end)}`),
    );
    yield report(between.span, 'A range of rests', 'write the rest that was taken', ends);
  }
  if (roundStep) yield report(roundStep.span, 'A step', 'write the rounds that were done, such as 4 rounds');
  for (const step of restSteps) {
    yield report(step.span, 'A step', 'write the rests that were taken, such as rest 1:10, 1:25');
  }
}

/** The same of a line. */
export function checkLineForPlans(line: MovementLine): Iterable<Problem> {
  // What breaks off says so; the rest is told once it is whole.
  return line.broken || !isForPlans(line) ? NO_PROBLEMS : describeLine(line);
}

/** Whether a line leaves anything open that a plan may. */
function isForPlans({ week, cells, modifiers }: MovementLine): boolean {
  return (
    week !== undefined ||
    modifiers.some(isModifierForPlans) ||
    cells.some((cell) => cell.sets.some(isSetForPlans) || cell.modifiers.some(isModifierForPlans))
  );
}

function isSetForPlans({ amount, ownLoad, load, ratings, drops }: SetGroup): boolean {
  return (
    (amount !== undefined && OPEN_AMOUNTS.has(amount.kind)) ||
    (ownLoad && load !== undefined && isLoadForPlans(load)) ||
    ratings.some(({ high }) => high !== undefined) ||
    drops.some(isDropForPlans)
  );
}

function isDropForPlans({ amount, load }: Drop): boolean {
  return OPEN_AMOUNTS.has(amount.kind) || (load !== undefined && isLoadForPlans(load));
}

const OPEN_AMOUNTS: ReadonlySet<Amount['kind']> = new Set(['range', 'at-least', 'amrap']);
const OPEN_LOADS: ReadonlySet<Load['kind']> = new Set(['percent', 'offset', 'target']);

function isLoadForPlans(load: Load): boolean {
  return load.kind === 'mass' ? load.high !== undefined : OPEN_LOADS.has(load.kind);
}

function isModifierForPlans(modifier: Modifier): boolean {
  if (modifier.kind === 'rest') return modifier.high !== undefined;
  return modifier.kind === 'step' || modifier.kind === 'stall';
}

function* describeLine(line: MovementLine): Iterable<Problem> {
  if (line.week !== undefined) {
    const place = { line: line.span.line, start: line.span.start, end: line.name.span.start };
    const kept = [line.label?.text, line.purpose === 'work' ? undefined : line.purpose];
    const prefix = kept.map((word) => (word === undefined ? '' : `${word} `)).join('');
    yield report(place, `week ${line.week}`, 'a session has its date', [
      replaceBy(place, prefix, `Take out week ${line.week}`),
    ]);
  }
  for (const [index, { sets, modifiers }] of line.cells.entries()) {
    for (const set of sets) yield* checkSet(set);
    const last = index === line.cells.length - 1;
    yield* checkModifiers(sets, last ? [...modifiers, ...line.modifiers] : modifiers);
  }
}

function* checkSet(set: SetGroup): Iterable<Problem> {
  if (set.amount) yield* checkAmount(set.amount, set.amountSpan);
  if (set.ownLoad && set.load && set.loadSpan) yield* checkLoad(set.load, set.loadSpan);
  for (const rating of set.ratings) yield* checkRating(rating);
  for (const drop of set.drops) {
    if (isDropForPlans(drop))
      yield report(drop.span, 'A drop that leaves its reps or load open', 'write what was done');
  }
}

/** What may have been done in place of a range or an open end; nothing for an amount that says it. */
function* listNumbers(amount: Amount): Iterable<Amount> {
  if (amount.kind === 'range') {
    for (const quantity of [amount.low, amount.high]) yield { ...amount, kind: 'quantity', quantity };
  } else if (amount.kind === 'at-least') yield { ...amount, kind: 'quantity' };
  else if (amount.kind === 'amrap') yield { kind: 'unrecorded' };
}

function* checkAmount(amount: Amount, span: Span): Iterable<Problem> {
  const numbers = [...listNumbers(amount)];
  if (numbers.length === 0) return;
  const done = amount.kind === 'amrap' ? 'write how many were done, or ?' : 'write how many were done';
  yield report(
    span,
    printAmount(amount),
    done,
    numbers.map((number) => replaceBy(span, printAmount(number))),
  );
}

function* checkLoad(load: Load, span: Span): Iterable<Problem> {
  switch (load.kind) {
    case 'percent':
    case 'offset':
      yield report(span, printLoad(load), 'write the load that was used, or ?', [replaceBy(span, '?')]);
      break;
    case 'target': {
      const rating = `${load.scale} ${printPlain(load.high ?? load.low)}`;
      yield report(
        span,
        `${printLoad(load)} in place of a load`,
        'write the load, and the rating behind it',
        [replaceBy(span, `? ${rating}`)],
      );
      break;
    }
    case 'mass': {
      if (!load.high) break;
      const { high, ...low } = load;
      const ends = [low, { ...low, mass: high }].map((end) => replaceBy(span, printLoad(end)));
      yield report(
        span,
        `${printPlain(load.mass.written)}-${printWrittenMass(high)}`,
        'write the load that was used',
        ends,
      );
    }
  }
}

function* checkRating({ scale, value, high, span }: Rating): Iterable<Problem> {
  if (high === undefined) return;
  const ends = [value, high].map((end) => replaceBy(span, `${scale} ${printPlain(end)}`));
  yield report(span, `${scale} ${printRange({ low: value, high })}`, 'write one rating', ends);
}

function* checkModifiers(sets: readonly SetGroup[], modifiers: readonly Modifier[]): Iterable<Problem> {
  if (modifiers.length === 0) return;
  const items = [...sets, ...modifiers].sort((a, b) => a.span.start - b.span.start);
  for (const [index, item] of items.entries()) {
    if (!('kind' in item)) continue;
    const { span } = item;
    if (item.kind === 'rest' && item.high) {
      const ends = [item.low, item.high].map((end) => replaceBy(span, `rest ${printQuantity(end)}`));
      yield report(span, 'A range of rests', 'write the rest that was taken', ends);
    } else if (item.kind === 'step' || item.kind === 'stall') {
      // The comma before it goes with it.
      const place = { ...span, start: items[index - 1]?.span.end ?? span.start };
      yield report(span, 'A step', 'a session says what was done', [replaceBy(place, '', 'Take it out')]);
    }
  }
}

function report(span: Span, what: string, advice: string, fixes: readonly Fix[] = []): Problem {
  return problem('for-plans', span, `${what} is for plans: ${advice}`, fixes);
}
