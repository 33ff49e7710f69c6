import { measureAmount } from '../measures/set-work.ts';
import type { Block, Done, Entry, MovementLine, SessionEntry } from '../model/entry.ts';
import type { Cell, Quantity, SetGroup } from '../model/quantity.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import { printDone } from '../printing/print-block.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { addAfter, replaceBy, spanBetween } from '../reading/line-reading.ts';
import { printClock } from '../units/duration.ts';
import { collect, listBlocks, problem } from './check-context.ts';
import { haveTrait } from './line-traits.ts';

/** Sets and times that do not fit the rounds of their block, and ends that do not fit its header. */
export function checkRounds(entry: Entry): readonly Problem[] {
  const problems: Problem[] = [];
  for (const block of listBlocks(entry)) {
    const { done, rounds, timesSpan } = block;
    if (done) {
      collect(problems, checkDone(block, done));
      if (done.plus.length > 0) collect(problems, checkPlus(block, done));
    }
    if (timesSpan && block.kind === 'straight') problems.push(describeUntimed(block, timesSpan));
    if (rounds === undefined) continue;
    for (const line of block.lines) checkLine(block, line, problems);
    if (timesSpan) checkTimes(block, timesSpan, problems);
  }
  return problems;
}

/** Whether so many numbers may stand for rounds: one for each round or for each pass, of all or of those that were done. */
function isForRounds({ rounds, passes, done }: Block, count: number): boolean {
  if (count === rounds || count === rounds! * passes) return true;
  if (done?.rounds === undefined) return false;
  const begun = done.rounds + (done.plus.length > 0 ? 1 : 0);
  return [done.rounds, begun].some((each) => count === each || count === each * passes);
}

function checkLine(block: Block, { purpose, broken, cells }: MovementLine, problems: Problem[]): void {
  // Lines that take turns have one set for each of their turns.
  if (purpose === 'warmup' || broken || block.alternating) return;
  for (const cell of cells) {
    let count = 0;
    for (const set of cell.sets) count += set.count;
    if (count >= 2 && !isForRounds(block, count)) problems.push(describeCount(block, cell, count));
  }
}

function describeCount(block: Block, cell: Cell, count: number): Problem {
  const span = spanBetween(cell.sets[0]!.span, cell.sets.at(-1)!.span);
  const rounds = block.rounds!;
  const message = `${count} sets for ${describeRounds(block)}: write one that is the same in every round, or ${rounds}`;
  return problem('round-count', span, message, [addUnrecorded(cell, rounds - count)]);
}

function describeRounds({ rounds, passes }: Block): string {
  const counted = rounds === 1 ? '1 round' : `${rounds} rounds`;
  return passes > 1 ? `${counted} x ${passes} passes` : counted;
}

/** Makes the missing rounds ones that nobody recorded; where a load is shared, before it. */
function addUnrecorded(cell: Cell, missing: number): Fix | undefined {
  const last = cell.sets.at(-1)!;
  const loaded = cell.sets.filter((set) => set.loadSpan).length;
  const alone = loaded === 0 || (loaded === 1 && last.loadSpan !== undefined && last.ratings.length === 0);
  if (missing < 1) return undefined;
  const place = alone && last.drops.length === 0 ? last.amountSpan : last.span;
  const mark = alone && last.drops.length === 0 ? ', ?' : ', ? @ ?';
  return addAfter(place, mark.repeat(missing), describeMissing(mark.slice(2), missing));
}

function describeMissing(mark: string, missing: number): string {
  return `Add ${mark} for ${missing === 1 ? 'a round' : `${missing} rounds`}`;
}

/** Straight sets have no rounds: no sum asks for their times. */
function describeUntimed({ times }: Block, span: Span): Problem {
  const [seconds, ...others] = times.flat();
  const isLong = seconds !== undefined && others.length === 0 && seconds >= LONGER_THAN_A_ROUND;
  const message = isLong
    ? 'time is for rounds, and straight sets have none: lasted says how long a session took'
    : 'time is for rounds, and straight sets have none: write such times in a note';
  const fixes = isLong ? [replaceBy(span, `lasted ${printPlain(seconds / 60)} min`)] : [];
  return problem('time-count', span, message, fixes);
}

const LONGER_THAN_A_ROUND = 15 * 60;

function checkTimes(block: Block, span: Span, problems: Problem[]): void {
  const wrong = block.times.find((times) => !isForRounds(block, times.length));
  if (!wrong) return;
  const missing = block.rounds! - wrong.length;
  const fixes =
    block.times.length === 1 && missing > 0
      ? [addAfter(span, ', ?'.repeat(missing), describeMissing('?', missing))]
      : [];
  const times = wrong.length === 1 ? '1 time' : `${wrong.length} times`;
  const message = `${times} for ${describeRounds(block)}: write one for each round, and ? for one that was not taken`;
  problems.push(problem('time-count', span, message, fixes));
}

function* checkDone({ kind, rounds, cap }: Block, done: Done): Iterable<Problem> {
  const report = (message: string, fixes: readonly Fix[] = []): Problem =>
    problem('done-mismatch', done.span, message, fixes);
  if (done.seconds !== undefined && kind === 'amrap') {
    yield report('An amrap ends by its clock: write what was done in it, such as done 4 rounds + 5');
  }
  if (done.seconds !== undefined && cap !== undefined && done.seconds > cap) {
    yield report(`${printClock(done.seconds)} is past the cap of ${printClock(cap)}`);
  }
  if (rounds !== undefined && done.of !== undefined && done.of !== rounds) {
    yield report(`The block has ${rounds} rounds, not ${done.of}`, [
      replaceBy(done.span, printDone({ ...done, of: rounds })),
    ]);
  }
  const most = done.of ?? (kind === 'amrap' ? undefined : rounds);
  if (most !== undefined && done.rounds !== undefined && done.rounds > most) {
    yield report(`${done.rounds} rounds done are more than the ${most} that there were`);
  }
}

/** What was done of the round that was not finished: of each line in turn, and never more than it asks for. */
function* checkPlus({ lines }: Block, done: Done): Iterable<Problem> {
  const asked = lines.map(({ cells }) => readAsked(cells.length === 1 ? cells[0]!.sets.at(-1) : undefined));
  for (const [index, { measure, value }] of done.plus.entries()) {
    const most = asked[index];
    if (most?.measure !== measure || value <= most.value) continue;
    const message = `${printPlain(value)} are more than the ${printPlain(most.value)} of ${lines[index]!.name.text}: behind a plus stands what was done of each movement in turn, such as + 10 + 2`;
    yield problem('done-mismatch', done.span, message, [shareOut(done, asked)]);
    return;
  }
}

interface Asked {
  readonly measure: Quantity['measure'];
  /** On both sides. */
  readonly value: number;
}

function readAsked(set: SetGroup | undefined): Asked | undefined {
  const asked = set?.amount?.kind === 'quantity' ? measureAmount(set.amount) : undefined;
  return asked && { measure: asked.quantity.measure, value: asked.total };
}

/** One number of reps, as it comes out over the movements of a round; where it is a round or more, with those. */
function shareOut(done: Done, asked: readonly (Asked | undefined)[]): Fix | undefined {
  const [all, ...others] = done.plus;
  if (done.rounds === undefined || others.length > 0 || !asked.every((each) => each?.measure === 'reps'))
    return undefined;
  const inRound = asked.reduce((sum, each) => sum + each!.value, 0);
  const plus: Quantity[] = [];
  let left = all!.value % inRound;
  for (const each of asked) {
    if (left <= 0) break;
    const value = Math.min(left, each!.value);
    plus.push({ ...all!, value, written: value });
    left -= value;
  }
  const rounds = done.rounds + Math.floor(all!.value / inRound);
  return replaceBy(done.span, printDone({ ...done, rounds, plus }));
}

/** In a group each `|` separates one athlete; one value is for all. */
export function checkCells({ athletes, blocks, efforts, lasted }: SessionEntry): readonly Problem[] {
  const problems: Problem[] = [];
  const group = Math.max(1, athletes.length);
  const take = (span: Span | undefined, count: number): void => {
    if (span && count > 1 && count !== group) problems.push(describeCells(span, count, group));
  };
  const hasMany = haveTrait(blocks, 'manyCells');
  for (const block of blocks) {
    if (hasMany) for (const line of block.lines) take(line.span, line.cells.length);
    take(block.timesSpan, block.times.length);
  }
  if (efforts) take(efforts.span, efforts.values.length);
  if (lasted) take(lasted.span, lasted.values.length);
  return problems;
}

/** So many values stand between `|` that they are neither one for all nor one for each. */
function describeCells(span: Span, count: number, athletes: number): Problem {
  const message =
    athletes === 1
      ? 'A | separates the athletes of a group, and this session has one athlete: sets are separated by commas'
      : `${count} values between | for ${athletes} athletes: write one for all, or one for each`;
  return problem('cell-count', span, message);
}
