import type { Block, MovementLine, SessionEntry } from '../model/entry.ts';
import type { Amount, Load, Modifier, Rating, SetGroup } from '../model/quantity.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import { printLoad, printRange, printWrittenMass } from '../printing/print-load.ts';
import { printAmount, printPlain, printQuantity, printTime } from '../printing/print-quantity.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { problem } from './check-context.ts';

/** What a plan may ask of a block and a session cannot have done: the fix writes a number. */
export function checkBlocksForPlans({ blocks }: SessionEntry): readonly Problem[] {
  const problems: Problem[] = [];
  for (const block of blocks) checkBlock(block, problems);
  return problems;
}

function checkBlock({ rest, restsBetween, restSteps, roundStep, span }: Block, problems: Problem[]): void {
  if (rest?.high !== undefined) problems.push(report(span, 'A range of rests', 'write one rest'));
  for (const between of restsBetween) {
    if (between.high === undefined) continue;
    const ends = [between.seconds, between.high].map((end) =>
      replaceBy(between.span, `rest ${printTime(end)}`),
    );
    problems.push(report(between.span, 'A range of rests', 'write the rest that was taken', ends));
  }
  if (roundStep)
    problems.push(report(roundStep.span, 'A step', 'write the rounds that were done, such as 4 rounds'));
  for (const step of restSteps)
    problems.push(report(step.span, 'A step', 'write the rests that were taken, such as rest 1:10, 1:25'));
}

/** The same of a line. */
export function checkLineForPlans(line: MovementLine): readonly Problem[] {
  const problems: Problem[] = [];
  // What breaks off says so; the rest is told once it is whole.
  if (line.broken) return problems;
  if (line.week !== undefined) {
    const place = { line: line.span.line, start: line.span.start, end: line.name.span.start };
    const kept = [line.label?.text, line.purpose === 'work' ? undefined : line.purpose];
    const prefix = kept.map((word) => (word === undefined ? '' : `${word} `)).join('');
    const fix = replaceBy(place, prefix, `Take out week ${line.week}`);
    problems.push(report(place, `week ${line.week}`, 'a session has its date', [fix]));
  }
  for (const [index, { sets, modifiers }] of line.cells.entries()) {
    for (const [at, set] of sets.entries()) checkSet(set, sets.slice(0, at), problems);
    const last = index === line.cells.length - 1;
    checkModifiers(sets, last ? [...modifiers, ...line.modifiers] : modifiers, problems);
  }
  return problems;
}

function checkSet(set: SetGroup, before: readonly SetGroup[], problems: Problem[]): void {
  if (set.amount) checkAmount(set.amount, set.amountSpan, problems);
  if (set.ownLoad && set.load && set.loadSpan) {
    const found = describeHelp(set.load, set.loadSpan, before) ?? describeLoad(set.load, set.loadSpan);
    if (found) problems.push(found);
  }
  for (const rating of set.ratings) checkRating(rating, problems);
  for (const { amount, load, span } of set.drops) {
    if (listNumbers(amount).length > 0 || (load && describeLoad(load, span)))
      problems.push(report(span, 'A drop that leaves its reps or load open', 'write what was done'));
  }
}

/** What may have been done in place of a range or an open end; nothing for an amount that says it. */
function listNumbers(amount: Amount): readonly Amount[] {
  switch (amount.kind) {
    case 'range':
      return [amount.low, amount.high].map((quantity) => ({ ...amount, kind: 'quantity', quantity }));
    case 'at-least':
      return [{ ...amount, kind: 'quantity' }];
    case 'amrap':
      return [{ kind: 'unrecorded' }];
    default:
      return NO_NUMBERS;
  }
}

const NO_NUMBERS: readonly Amount[] = [];

function checkAmount(amount: Amount, span: Span, problems: Problem[]): void {
  const numbers = listNumbers(amount);
  if (numbers.length === 0) return;
  const done = amount.kind === 'amrap' ? 'write how many were done, or ?' : 'write how many were done';
  const fixes = numbers.map((number) => replaceBy(span, printAmount(number)));
  problems.push(report(span, printAmount(amount), done, fixes));
}

/** `5 @ -20 kg`: with no load before it that it could be taken off, it is help. */
function describeHelp(load: Load, span: Span, before: readonly SetGroup[]): Problem | undefined {
  if (load.kind !== 'offset' || !('mass' in load)) return undefined;
  if (before.some((set) => set.load && set.load.kind !== 'bodyweight')) return undefined;
  const help = `bw${printLoad(load)}`;
  const advice = `write ${help} for help, or the load that was used`;
  return report(span, printLoad(load), advice, [replaceBy(span, help)]);
}

/** What a load leaves open; undefined for one that says what was used. */
function describeLoad(load: Load, span: Span): Problem | undefined {
  switch (load.kind) {
    case 'percent':
    case 'offset':
      return report(span, printLoad(load), 'write the load that was used, or ?', [replaceBy(span, '?')]);
    case 'target': {
      const rating = `${load.scale} ${printPlain(load.high ?? load.low)}`;
      const what = `${printLoad(load)} in place of a load`;
      return report(span, what, 'write the load, and the rating behind it', [replaceBy(span, `? ${rating}`)]);
    }
    case 'mass': {
      if (!load.high) return undefined;
      const { high, ...low } = load;
      const ends = [low, { ...low, mass: high }].map((end) => replaceBy(span, printLoad(end)));
      const what = `${printPlain(load.mass.written)}-${printWrittenMass(high)}`;
      return report(span, what, 'write the load that was used', ends);
    }
    default:
      return undefined;
  }
}

function checkRating({ scale, value, high, span }: Rating, problems: Problem[]): void {
  if (high === undefined) return;
  const ends = [value, high].map((end) => replaceBy(span, `${scale} ${printPlain(end)}`));
  problems.push(report(span, `${scale} ${printRange({ low: value, high })}`, 'write one rating', ends));
}

function checkModifiers(
  sets: readonly SetGroup[],
  modifiers: readonly Modifier[],
  problems: Problem[],
): void {
  if (modifiers.length === 0) return;
  const items = [...sets, ...modifiers].sort((a, b) => a.span.start - b.span.start);
  for (const [index, item] of items.entries()) {
    if (!('kind' in item)) continue;
    const { span } = item;
    if (item.kind === 'rest' && item.high) {
      const ends = [item.low, item.high].map((end) => replaceBy(span, `rest ${printQuantity(end)}`));
      problems.push(report(span, 'A range of rests', 'write the rest that was taken', ends));
    } else if (item.kind === 'step' || item.kind === 'stall') {
      // The comma before it goes with it.
      const place = { ...span, start: items[index - 1]?.span.end ?? span.start };
      const fix = replaceBy(place, '', 'Take it out');
      problems.push(report(span, 'A step', 'a session says what was done', [fix]));
    }
  }
}

function report(span: Span, what: string, advice: string, fixes: readonly Fix[] = []): Problem {
  return problem('for-plans', span, `${what} is for plans: ${advice}`, fixes);
}
