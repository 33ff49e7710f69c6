import { type BlockWork, isWorking } from './block-work.ts';
import { findCell } from './expand-sets.ts';
import { mergeOmissions, type Result, toResult, type Unit } from './result.ts';
import { nameMovement } from './series-sets.ts';
import type { SessionWork } from './session-work.ts';
import { addWork, NO_WORK, volumeOf, type Work } from './work.ts';

/** The work of one exercise; the parts of a session, a day or a week add up to the whole. */
export interface ExerciseWork {
  readonly key: string;
  /** As defined, else as first written. */
  readonly name: string;
  readonly work: Work;
  /** Names of what it was done instead of. A substitute counts as what was done, not as what it replaced. */
  readonly insteadOf: readonly string[];
}

const known = new WeakMap<readonly BlockWork[], readonly ExerciseWork[]>();

/** Work by exercise, in the order in which they were first done: of one session, or of several. */
export function splitByExercise(sessions: readonly SessionWork[]): ExerciseWork[] {
  return merge(sessions.flatMap((work) => splitSession(work)));
}

function splitSession(work: SessionWork): readonly ExerciseWork[] {
  const found = known.get(work.blocks);
  if (found) return found;
  const split = merge(work.blocks.flatMap((block) => splitBlock(work, block)));
  known.set(work.blocks, split);
  return split;
}

/** The same of one block. */
export function splitBlockByExercise(work: SessionWork, block: BlockWork): ExerciseWork[] {
  return merge(splitBlock(work, block));
}

function splitBlock(
  { context, record }: SessionWork,
  { block, sets, roundCount }: BlockWork,
): ExerciseWork[] {
  const parts = sets
    .filter(({ set }) => isWorking(set, block))
    .map(({ set: { line }, work }) => ({ line, work }));
  const gaps = block.lines.flatMap((line) => {
    const why = line.broken
      ? 'part of the line could not be read'
      : block.kind === 'amrap' && roundCount === undefined
        ? 'its rounds are not written'
        : undefined;
    const omitted = [{ what: line.name.text, why: why ?? '' }];
    return why === undefined ? [] : [{ line, work: { ...NO_WORK, atLeast: true, omitted } }];
  });
  return [...parts, ...gaps].map(({ line, work }) => ({
    ...nameMovement(context.findMovement(line.name.text), line.name.text),
    work,
    insteadOf: [...(findCell(line, record.index)?.modifiers ?? []), ...line.modifiers].flatMap((modifier) =>
      modifier.kind === 'instead' ? [modifier.of.text] : [],
    ),
  }));
}

function merge(parts: readonly ExerciseWork[]): ExerciseWork[] {
  const byKey = new Map<string, ExerciseWork[]>();
  for (const part of parts) {
    const same = byKey.get(part.key);
    if (same) same.push(part);
    else byKey.set(part.key, [part]);
  }
  return [...byKey.values()].map((same) => ({
    ...same[0]!,
    work: addWork(same.map(({ work }) => work)),
    insteadOf: [...new Set(same.flatMap(({ insteadOf }) => insteadOf))],
  }));
}

/** What one movement added to a total, or took away. */
export interface MovementChange {
  readonly key: string;
  readonly name: string;
  readonly presence: 'both' | 'only before' | 'only now';
  readonly insteadOf: readonly string[];
  /** Kilograms, or what else it is counted in where neither week has any; no value where bounds leave it open. */
  readonly change: Result;
}

/**
 * The change from one week to another, movement by movement, the largest first: a change of movements is no progress.
 * The kilograms add up to the change of the whole.
 */
export function splitChange(before: readonly ExerciseWork[], now: readonly ExerciseWork[]): MovementChange[] {
  const names = new Map([...before, ...now].map(({ key, name }) => [key, name]));
  const [earlier, later] = [before, now].map((parts) => new Map(parts.map((part) => [part.key, part])));
  return [...names]
    .map(([key, name]): MovementChange => {
      const [was, is] = [earlier!.get(key), later!.get(key)];
      return {
        key,
        name,
        presence: was && is ? 'both' : was ? 'only before' : 'only now',
        insteadOf: is?.insteadOf ?? [],
        change: toChange(was?.work ?? NO_WORK, is?.work ?? NO_WORK),
      };
    })
    .sort((a, b) => sizeOf(b) - sizeOf(a));
}

/** What a movement may be counted in; the first that either week has any of is compared. */
const SUMS: readonly { unit: Unit; sumOf: (work: Work) => number }[] = [
  { unit: 'kg', sumOf: volumeOf },
  { unit: 'kg·m', sumOf: ({ carried }) => carried / 1000 },
  { unit: 'reps', sumOf: ({ reps }) => reps },
  { unit: 'contacts', sumOf: ({ contacts }) => contacts },
  { unit: 's', sumOf: ({ seconds }) => seconds },
  // One movement has metres of one kind alone.
  { unit: 'm', sumOf: ({ metres, carriedMetres, machineMetres }) => metres + carriedMetres + machineMetres },
  { unit: 'cal', sumOf: ({ calories }) => calories },
  // Nothing was done in either week: a known zero of sets.
  { unit: 'sets', sumOf: ({ sets }) => sets },
];

function toChange(before: Work, now: Work): Result {
  const { unit, sumOf } = SUMS.find((sum) => sum.sumOf(before) > 0 || sum.sumOf(now) > 0) ?? SUMS.at(-1)!;
  const [from, to] = [sumOf(before), sumOf(now)];
  // A lower bound before makes the difference an upper one, and two of them leave it open.
  return toResult({
    value: before.atLeast ? undefined : to - from,
    unit,
    method: 'change-by-movement',
    bound: now.atLeast ? 'at least' : 'exact',
    inputs: [
      { label: 'before', value: from, unit },
      { label: 'now', value: to, unit },
    ],
    omitted: mergeOmissions(before.omitted, now.omitted),
    ...(before.atLeast && { remark: 'the earlier week is a lower bound' }),
  });
}

/** Kilograms go before all else, and what is open goes last. */
function sizeOf({ change: { value, unit } }: MovementChange): number {
  return value === undefined ? -1 : Math.abs(value) + (unit === 'kg' ? 1e9 : 0);
}
