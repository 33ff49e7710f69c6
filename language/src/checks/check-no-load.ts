import type { MovementLine, SessionEntry } from '../model/entry.ts';
import type { Cell, SetGroup } from '../model/quantity.ts';
import type { Fix, Problem } from '../model/source.ts';
import { implementOf, type Movement, workOf } from '../practice/movement.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { MOST_LOADED_REPS } from '../vocabulary/limits.ts';
import { type CheckContext, isPreparation, NO_PROBLEMS, problem } from './check-context.ts';
import type { LineCheck } from './line-checks.ts';
import { listLoadedBefore } from './training-history.ts';
import { printMassLoad } from './written-masses.ts';

/** Working sets without any load where the movement is done with a bar, dumbbells, kettlebells or a machine. */
export const checkNoLoad: LineCheck<SessionEntry> = (_entry, context) => (blockLine) => {
  const { line } = blockLine;
  if (isPreparation(blockLine) || line.broken || line.cells.every(hasLoad)) return NO_PROBLEMS;
  const movement = context.practice.findMovement(line.name.text);
  return movement && isLoaded(movement) ? findUnloaded(line, movement, context) : NO_PROBLEMS;
};

function hasLoad({ sets }: Cell): boolean {
  return sets.some((set) => set.load || set.loadSpan);
}

function* findUnloaded(
  { cells }: MovementLine,
  movement: Movement,
  context: CheckContext,
): Iterable<Problem> {
  for (const [index, cell] of cells.entries()) {
    const last = cell.sets.findLast(isDone);
    if (!last || hasLoad(cell)) continue;
    const before = findLastLoad(index, movement, context);
    yield problem(
      'no-load',
      last.amountSpan,
      `${movement.name} has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it`,
      [
        ...writeAsLoad(last, movement, before),
        ...[before, '?'].map((load) => (load === undefined ? undefined : addLoad(last, load))),
      ],
    );
  }
}

function isLoaded(movement: Movement): boolean {
  const work = workOf(movement);
  const share = movement.entry.bodyShare !== undefined;
  return implementOf(movement) !== 'none' && !share && (work === 'strength' || work === 'carry');
}

function isDone({ amount }: SetGroup): boolean {
  return amount !== undefined && amount.kind !== 'skipped' && amount.kind !== 'unrecorded';
}

function addLoad(set: SetGroup, load: string): Fix {
  const { line, end } = set.within || set.drops.length > 0 ? set.span : set.amountSpan;
  return { title: `Add @ ${load}`, edits: [{ span: { line, start: end, end }, newText: ` @ ${load}` }] };
}

/** No lighter pair is meant by `2x12`. */
const LEAST_OF_PAIR = 10;

/** `5 x 60`, `2 x 24`: the second number may be the load, of one bar or of each of two implements. */
function writeAsLoad(set: SetGroup, movement: Movement, before: string | undefined): Fix[] {
  const { amount, count, counted, ratings, drops } = set;
  if (!counted || amount?.kind !== 'quantity' || amount.quantity.measure !== 'reps' || amount.perSide)
    return [];
  if (ratings.length > 0 || drops.length > 0) return [];
  const { value } = amount.quantity;
  const implement = implementOf(movement);
  const isPair = count === 2 && (implement === 'dumbbell' || implement === 'kettlebell');
  if (isPair ? value < LEAST_OF_PAIR : value <= MOST_LOADED_REPS) return [];
  const unit = before === undefined ? undefined : /lb/.test(before) ? 'lb' : 'kg';
  return (unit ? [unit] : ['kg', 'lb']).map((each) =>
    replaceBy(set.span, isPair ? `? @ 2x${value} ${each}` : `${count} @ ${value} ${each}`),
  );
}

/** What the athlete last used for the movement before this session. */
function findLastLoad(
  cell: number,
  movement: Movement,
  { practice, records }: CheckContext,
): string | undefined {
  const record = records[cell];
  if (!record) return undefined;
  for (const { sets } of listLoadedBefore(practice, record, movement.key)) {
    const load = sets.at(-1)?.load;
    return load && !load.chain && !load.band ? printMassLoad(load) : undefined;
  }
  return undefined;
}
