import { editLine, type FileEdit } from '../formatting/file-edit.ts';
import type { MovementLine } from '../model/entry.ts';
import type { Cell, SetGroup } from '../model/quantity.ts';
import { findPlannedLines, type PlannedLine } from '../plans/planned-lines.ts';
import type { Practice } from '../practice/practice.ts';
import { printAmount } from '../printing/print-quantity.ts';
import { type BlockAt, findBlock, linesOf } from './find-lines.ts';
import { editSpan, type Rewrite, type RewriteRequest, type Rewriter, rewriteFile } from './rewrite.ts';

const ROUND_KINDS: ReadonlySet<string> = new Set(['circuit', 'superset', 'giant set']);
const ROUNDS = /(\d+)(\s*)(rounds?)/i;

/** The amount of the new round on a line, from its last set and that one's text; undefined where nobody can say. */
type NextAmount = (line: MovementLine, last: SetGroup, amount: string) => string | undefined;

const repeat: NextAmount = (_line, _last, amount) => amount;

/** One more round like the last: in the header, in every line that writes a set for each round, and in `time`. */
export const addSameRound: Rewriter = (request) => addRound(request, 'Add a round like the last', repeat);

/** The same with one rep more on each line that counts reps. */
export const addRoundWithRep: Rewriter = (request) =>
  addOtherRound(request, 'Add a round with one rep more', (_line, last, amount) => addRep(last, amount));

/** The same with what the plan asks of a round, where it asks for one amount on every line of the block. */
export const addPlannedRound: Rewriter = (request) => {
  const entry = findBlock(request)?.placed.entry;
  if (entry?.kind !== 'session' || !entry.plan) return undefined;
  const { practice } = request;
  const planned = findPlannedLines(practice, entry);
  return addOtherRound(request, 'Add a round as planned', (line) =>
    findPlannedAmount(practice, planned, line),
  );
};

/** Nothing where the round would be like the last: that one is offered already. */
function addOtherRound(request: RewriteRequest, title: string, next: NextAmount): Rewrite | undefined {
  const rewrite = addRound(request, title, next);
  const same = addRound(request, title, repeat);
  return JSON.stringify(rewrite) === JSON.stringify(same) ? undefined : rewrite;
}

function addRound(request: RewriteRequest, title: string, next: NextAmount): Rewrite | undefined {
  const at = findBlock(request);
  const texts = linesOf(request);
  const { block } = at ?? {};
  const header = at && ROUNDS.exec(texts[at.row]!);
  if (!at || !block || !header || block.rounds === undefined || block.done || !ROUND_KINDS.has(block.kind))
    return undefined;
  if (block.lines.length === 0 || block.lines.some(({ broken }) => broken)) return undefined;
  const grown = block.lines.map((line) => growLine(at, line, texts, next));
  if (grown.some((edits) => edits === undefined)) return undefined;
  const [all, count, space] = header;
  const rounds = editLine(
    at.row,
    header.index,
    header.index + all.length,
    `${Number(count) + 1}${space || ' '}rounds`,
  );
  return rewriteFile(request, title, [rounds, ...growTimes(at, texts), ...grown.flatMap((edits) => edits!)]);
}

/** `10/side`, where all sets of the line are planned alike; a range says no one number. */
function findPlannedAmount(
  practice: Practice,
  planned: readonly PlannedLine[],
  line: MovementLine,
): string | undefined {
  const toKey = ({ name }: MovementLine): string => practice.keyOf(name.text);
  const asked = planned.find(
    (each) => each.line.purpose === line.purpose && toKey(each.line) === toKey(line),
  );
  const [set, ...others] = asked?.line.cells[0]?.sets ?? [];
  const isOne = set?.amount?.kind === 'quantity' || set?.amount?.kind === 'sides';
  return isOne && others.length === 0 ? printAmount(set.amount!) : undefined;
}

/** `time 2:55, 3:02` → `time 2:55, 3:02, ?`, for each athlete: nobody timed a round that is only asked for. */
function growTimes({ placed, block }: BlockAt, texts: readonly string[]): FileEdit[] {
  const { timesSpan } = block;
  if (!timesSpan) return [];
  const text = texts[placed.line + timesSpan.line]!.slice(timesSpan.start, timesSpan.end);
  const grown = text
    .split('|')
    .map((cell) => cell.replace(/\s*$/, (space) => `, ?${space}`))
    .join('|');
  return [editSpan(placed, timesSpan, grown)];
}

/** Undefined where the sets of a line are neither one for all rounds nor one for each. */
function growLine(
  { placed, block }: BlockAt,
  line: MovementLine,
  texts: readonly string[],
  next: NextAmount,
): FileEdit[] | undefined {
  const text = texts[placed.line + line.span.line]!;
  const edits: FileEdit[] = [];
  for (const cell of line.cells) {
    const count = cell.sets.reduce((sum, set) => sum + set.count, 0);
    const [first, last] = [cell.sets[0], cell.sets.at(-1)];
    if (!first || !last?.amount || cell.sets.some(({ amount }) => !amount)) return undefined;
    const isForAll = count === 1 && block.rounds! * block.passes > 1;
    const perRound = count === block.rounds ? 1 : count === block.rounds! * block.passes ? block.passes : 0;
    if (!isForAll && perRound === 0) return undefined;
    const amount = text.slice(last.amountSpan.start, last.amountSpan.end);
    const grown = next(line, last, amount);
    if (grown === undefined) return undefined;
    if (isForAll && grown === amount) continue;
    // One set for all rounds is written out before another one differs.
    const sets = isForAll ? [{ ...first, count: block.rounds! }] : cell.sets;
    const span = isForAll ? first.span : last.span;
    edits.push(editSpan(placed, span, growLast({ ...cell, sets }, text, isForAll ? 1 : perRound, grown)));
  }
  return edits;
}

/** The text of the last set with as many new ones behind it; its load is shared or repeated, its rating is not. */
function growLast({ sets }: Pick<Cell, 'sets'>, text: string, times: number, next: string): string {
  const last = sets.at(-1)!;
  const { span, amountSpan, ratings, drops, within, loadText, count } = last;
  const amount = text.slice(amountSpan.start, amountSpan.end);
  const counted = (number: number): string => (number > 1 ? `${number}x${amount}` : amount);
  const isPlain = ratings.length === 0 && drops.length === 0 && !within;
  const sharesLoad = !last.ownLoad || sets.slice(0, -1).every(({ loadSpan }) => !loadSpan);
  const tail = text.slice(amountSpan.end, span.end);
  if (isPlain && next === amount && (last.counted || count > 1)) return counted(count + times) + tail;
  if (isPlain && sharesLoad) return [counted(count), ...Array<string>(times).fill(next)].join(', ') + tail;
  const load = loadText === undefined ? '' : ` @ ${loadText}`;
  return [counted(count) + tail, ...Array<string>(times).fill(next + load)].join(', ');
}

function addRep({ amount }: SetGroup, text: string): string {
  if (amount?.kind !== 'quantity' || amount.quantity.measure !== 'reps') return text;
  return text.replace(/\d+/, (number) => String(Number(number) + 1));
}
