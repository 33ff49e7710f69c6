import { isWorking } from '../measures/block-work.ts';
import { expandBlock } from '../measures/expand-sets.ts';
import { isReadyForMoreLoad, suggestRaise, TWO_FOR_TWO } from '../measures/progression-rules.ts';
import type { MovementLine, SessionEntry } from '../model/entry.ts';
import type { Amount, Measure } from '../model/quantity.ts';
import type { Problem } from '../model/source.ts';
import { listModifiers, listSteps } from '../plans/line-steps.ts';
import { quantityOf } from '../plans/move-amount.ts';
import { findPlannedLines } from '../plans/planned-lines.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { printStep } from '../printing/print-modifiers.ts';
import { printAmount } from '../printing/print-quantity.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printRange } from '../units/number.ts';
import { type CheckContext, listLines, NO_PROBLEMS, problem } from './check-context.ts';
import { countReps, isDoneAfter, listLoadedBefore } from './training-history.ts';

/**
 * What of a planned day is ready for more, by two rules that are not the same: every set at the top of its range
 * (double progression), and two reps over a fixed goal in the last set, twice in a row (2-for-2). Told at the latest
 * session that did the movement.
 */
export function checkProgress(entry: SessionEntry, context: CheckContext): Iterable<Problem> {
  if (!entry.plan) return NO_PROBLEMS;
  const latest = context.records.filter((record) => isLatestOfAny(entry, record, context));
  return latest.length === 0 ? NO_PROBLEMS : findProgress(entry, latest, context);
}

function* findProgress(
  entry: SessionEntry,
  latest: readonly SessionRecord[],
  context: CheckContext,
): Iterable<Problem> {
  const planned = listPlanned(entry, context);
  for (const record of latest) {
    for (const goal of planned) {
      if (isDoneLater(goal.line, record, context)) continue;
      const done = readDone(record, goal, context);
      const message = done && (describeTop(goal, done) ?? describeTwoForTwo(goal, done, context));
      if (!message) continue;
      const written = listLines(entry).find(({ line }) => isSame(line, goal.line, context.practice));
      if (written) yield problem(message.code, written.line.name.span, message.text);
    }
  }
}

/** A planned line, as it stands in the week that the session names, and how many sets it asks for. */
interface Goal {
  readonly line: MovementLine;
  readonly source: MovementLine;
  readonly amount: Amount;
  readonly count: number;
}

interface Message {
  readonly code: 'top-of-range' | 'two-for-two';
  readonly text: string;
}

/** Lines of one amount for all their sets: of several nobody can say which is the goal. A deload asks for no progress. */
function listPlanned(entry: SessionEntry, { practice }: CheckContext): readonly Goal[] {
  if (entry.missed) return [];
  return findPlannedLines(practice, entry).flatMap(({ block, line, source, isDeload }) => {
    const [set, ...others] = line.cells[0]?.sets ?? [];
    if (!set?.amount || others.length > 0 || line.purpose !== 'work' || isDeload) return [];
    return { line, source, amount: set.amount, count: expandBlock({ ...block, lines: [line] }).length };
  });
}

function describeTop({ line, source, amount, count }: Goal, done: Done): Message | undefined {
  if (amount.kind !== 'range' || done.sets.length < count) return undefined;
  if (!done.sets.every((value) => value >= amount.high.value)) return undefined;
  const then = listSteps(source).find(({ whenFull }) => whenFull);
  const next = then ? `the plan says ${printStep(then)}` : 'more load, or a harder movement, next time';
  const text = `${line.name.text}: every set is at the top of ${printAmount(amount)}, so ${next}`;
  return { code: 'top-of-range', text };
}

function describeTwoForTwo(goal: Goal, done: Done, context: CheckContext): Message | undefined {
  const { line, source, amount } = goal;
  if (amount.kind !== 'quantity' || amount.quantity.measure !== 'reps' || hasOwnSteps(source))
    return undefined;
  const value = amount.quantity.value;
  const last = done.sets.at(-1)!;
  if (!done.grams || last < value + TWO_FOR_TWO.reps) return undefined;
  const before = findBefore(goal, done, context);
  if (before?.grams !== done.grams) return undefined;
  const lastSets = [before.sets.at(-1)!, last];
  if (!isReadyForMoreLoad(lastSets, value)) return undefined;
  const reps = `${lastSets.join(' and ')} reps in the last set for a goal of ${printAmount(amount)}`;
  const text = `${line.name.text}: ${reps}, twice in a row: by the 2-for-2 rule 2 to 10 % more next time, ${printRaise(done)}`;
  return { code: 'two-for-two', text };
}

/** A line that says itself how it goes on needs no other rule. */
function hasOwnSteps(source: MovementLine): boolean {
  return (
    source.cells.length > 1 || listModifiers(source).some(({ kind }) => kind === 'step' || kind === 'stall')
  );
}

function printRaise({ grams, unit }: Done): string {
  const { low, high } = suggestRaise(grams!);
  return `${printRange(fromGrams(low, unit), fromGrams(high, unit), 1)} ${unit}`;
}

/** What an athlete did of a planned line in one session. */
interface Done {
  readonly record: SessionRecord;
  /** Amounts of the working sets, in what the plan counts; of one side. What was not recorded is none. */
  readonly sets: readonly number[];
  /** Of each set, where all have the same; of one implement. */
  readonly grams: number | undefined;
  readonly unit: MassUnit;
}

/** Undefined where the movement was not done, or a set of it was not recorded. */
function readDone(
  record: SessionRecord,
  { line, amount }: Goal,
  { practice }: CheckContext,
): Done | undefined {
  const measure = quantityOf(amount)?.measure;
  const done = record.entry.blocks.flatMap((block) =>
    expandBlock(block, record.index).filter(
      (set) => isWorking(set, block) && isSame(set.line, line, practice),
    ),
  );
  const sets = done.flatMap((set) => (set.amount && readAmount(set.amount, measure)) ?? []);
  if (done.length === 0 || sets.length < done.length) return undefined;
  const masses = done.map(({ group: { load } }) =>
    load?.kind === 'mass' && !load.other ? load.mass : undefined,
  );
  const [first] = masses;
  const isOne = masses.every((mass) => mass?.grams === first?.grams);
  return { record, sets, grams: isOne ? first?.grams : undefined, unit: first?.unit ?? 'kg' };
}

function readAmount(amount: Amount, measure: Measure | undefined): number | undefined {
  if (measure === 'reps') return countReps(amount);
  return amount.kind === 'quantity' && amount.quantity.measure === measure
    ? amount.quantity.value
    : undefined;
}

/** The time before that the athlete did the movement with a load. */
function findBefore(goal: Goal, { record }: Done, context: CheckContext): Done | undefined {
  const { practice } = context;
  for (const day of listLoadedBefore(practice, record, toKey(practice, goal.line)))
    return readDone(day.record, goal, context);
  return undefined;
}

/** Whether there is a movement that no later session worked on: of the others a later one tells. */
function isLatestOfAny({ blocks }: SessionEntry, record: SessionRecord, context: CheckContext): boolean {
  return blocks.some(({ lines }) => lines.some((line) => !isDoneLater(line, record, context)));
}

function isDoneLater(line: MovementLine, record: SessionRecord, { practice }: CheckContext): boolean {
  return isDoneAfter(practice, record, toKey(practice, line));
}

function isSame(written: MovementLine, planned: MovementLine, practice: Practice): boolean {
  return written.purpose === 'work' && toKey(practice, written) === toKey(practice, planned);
}

function toKey(practice: Practice, { name }: Pick<MovementLine, 'name'>): string {
  return practice.keyOf(name.text);
}
