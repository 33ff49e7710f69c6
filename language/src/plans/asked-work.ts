/** What a plan asks for on a day, line by line: sets, reps, kilograms and load. */
import { computeBlockWork, isWorking, type SetWork, type WorkContext } from '../measures/block-work.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import { findSeriesKey, readExternal } from '../measures/series-sets.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { addWork, NO_WORK, volumeOf, type Work } from '../measures/work.ts';
import type { Block, MovementLine, PlanEntry } from '../model/entry.ts';
import type { Maxes } from './latest-max.ts';
import { listModifiers } from './line-steps.ts';
import type { PlanTurn } from './plan-calendar.ts';
import { openContext, takeEnds } from './plan-totals.ts';
import { projectTurn } from './project-plan.ts';
import type { ProjectedBlock } from './projected.ts';

/** Sums of one side; a number that is not known, or that nobody asked for, is not there. */
export interface Sums {
  readonly sets: number;
  readonly reps: number;
  /** Share of body mass included; undefined where something has no known kilograms. */
  readonly kilograms?: number;
  /** Grams of the heaviest load that stands on one implement, and was lifted. */
  readonly grams?: number;
  /** A set that nobody counted is among them, so there were more reps. */
  readonly isAtLeast?: boolean;
}

/**
 * Ranges of the plan are asked for from their lower to their upper end. Where the load moves with what was done (double
 * progression, a stall rule), neither a load nor kilograms are asked for.
 */
export interface AskedLine {
  readonly line: MovementLine;
  /** Of its movement. */
  readonly key: string;
  /** Whether no later line of the day is of that movement. */
  readonly isLast: boolean;
  readonly low: Sums;
  readonly high: Sums;
}

export interface AskedBlock {
  /** As the plan writes it. */
  readonly block: Block;
  readonly lines: readonly AskedLine[];
}

/** A turn of a plan as it is asked for on a day, in days since 1970-01-01. */
export function askTurn(
  works: SessionWorks,
  plan: PlanEntry,
  turn: PlanTurn,
  { athlete, on, formula, maxes }: { athlete: string; on: number; formula: OneRepMaxFormula; maxes: Maxes },
): readonly AskedBlock[] {
  const { practice } = works;
  const options = { athlete, today: on, unit: 'kg', formula, on, maxes } as const;
  const { blocks } = projectTurn(works, plan, turn, options);
  const context = openContext(works, athlete, on);
  const toKey = (name: string): string => findSeriesKey(practice, name);
  return blocks.flatMap((projected) => askBlock(blocks, projected, context, toKey));
}

function askBlock(
  all: readonly ProjectedBlock[],
  { block, lines: projected }: ProjectedBlock,
  context: WorkContext,
  toKey: (name: string) => string,
): AskedBlock[] {
  const ends = (['low', 'high'] as const).map((end) => listAsked(block, end, context));
  const lines = projected.flatMap(({ line, source }): AskedLine[] => {
    const [low, high] = ends.map((sets): Sums => {
      const ofLine = sets.filter(({ set }) => set.line.span.line === line.span.line);
      const asked = sumSets(ofLine, context);
      return followsWhatWasDone(source) ? { sets: asked.sets, reps: asked.reps } : asked;
    });
    if (low!.sets === 0) return [];
    const key = toKey(line.name.text);
    return [{ line, key, isLast: !comesAgain(all, line, key, toKey), low: low!, high: high! }];
  });
  return lines.length > 0 ? [{ block, lines }] : [];
}

function followsWhatWasDone(source: MovementLine): boolean {
  return listModifiers(source).some(
    (modifier) =>
      modifier.kind === 'stall' || (modifier.kind === 'step' && modifier.whenFull && !modifier.each),
  );
}

function comesAgain(
  blocks: readonly ProjectedBlock[],
  line: MovementLine,
  key: string,
  toKey: (name: string) => string,
): boolean {
  const lines = blocks.flatMap(({ block }) => block.lines).filter(({ purpose }) => purpose !== 'warmup');
  return lines.slice(lines.indexOf(line) + 1).some(({ name }) => toKey(name.text) === key);
}

/** The working sets of all of a block's lines, so that lines which take turns share the rounds. */
function listAsked(block: Block, end: 'low' | 'high', context: WorkContext): SetWork[] {
  const { sets } = computeBlockWork(takeEnds(block, end), { index: 0 }, context);
  return sets.filter(({ set }) => isWorking(set, block));
}

export function sumSets(sets: readonly SetWork[], { findMovement }: WorkContext): Sums {
  const total: Work = addWork([NO_WORK, ...sets.map(({ work }) => work)]);
  const loads = sets.flatMap(({ set, work }) =>
    work.sets > 0 && !(set.amount?.kind === 'attempt' && set.amount.made === 0)
      ? (readExternal(set.group.load, findMovement(set.line.name.text)) ?? [])
      : [],
  );
  const kilograms = volumeOf(total);
  const isWeighed = kilograms > 0 && !total.atLeast && total.omitted.length === 0;
  return {
    sets: total.sets,
    reps: total.reps,
    ...((isWeighed || total.sets === 0) && { kilograms }),
    ...(loads.length > 0 && { grams: Math.max(...loads) }),
    ...(sets.some(({ set: { amount } }) => !amount || amount.kind === 'unrecorded') && { isAtLeast: true }),
  };
}
