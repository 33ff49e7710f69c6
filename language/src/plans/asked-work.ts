/** What a plan asks for on a day, line by line: sets, reps, kilograms and load. */
import { computeBlockWork, isWorking, type SetWork, type WorkContext } from '../measures/block-work.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import { nameMovement, readExternal } from '../measures/series-sets.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { addWork, NO_WORK, volumeOf, type Work } from '../measures/work.ts';
import { isAlike } from '../model/alike.ts';
import type { Block, MovementLine, PlanDay, PlanEntry } from '../model/entry.ts';
import type { Movements } from '../practice/change-log.ts';
import { listKeysNamed } from '../practice/mentions.ts';
import type { Practice } from '../practice/practice.ts';
import { type KnownMax, type Maxes, openMaxes } from './latest-max.ts';
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

interface Asked {
  readonly definitionsVersion: number;
  /** Of the practice, when it was last known to be right. */
  edition: number;
  readonly movements: Movements;
  /** All that it has of the days before. */
  readonly maxes: readonly AskedMax[];
  readonly blocks: readonly AskedBlock[];
}

interface AskedMax {
  readonly kind: keyof Maxes;
  readonly movement: string;
  readonly max: KnownMax | undefined;
}

const known = new WeakMap<PlanDay, Map<string, Asked>>();

/**
 * A turn of a plan as it is asked for on a day, in days since 1970-01-01. It rests on definitions, on the days before and
 * on the body's mass that day, and stays the same while those do: what is done that day changes nothing of it.
 */
export function findAsked(
  works: SessionWorks,
  plan: PlanEntry,
  turn: PlanTurn,
  { athlete, on, formula }: { athlete: string; on: number; formula: OneRepMaxFormula },
): readonly AskedBlock[] {
  const { practice } = works;
  const { edition, definitionsVersion } = practice;
  const context = openContext(works, athlete, on);
  const doneBefore = [...turn.doneBefore].map(([day, times]) => `${day.number} ${times}`);
  const id = [athlete, on, formula, context.bodyMass, turn.week, ...doneBefore].join('\n');
  const ofDay = known.get(turn.day) ?? new Map<string, Asked>();
  known.set(turn.day, ofDay);
  const before = ofDay.get(id);
  const maxes = openMaxes(works, athlete, on, formula);
  const isOld = before?.definitionsVersion !== definitionsVersion;
  if (before && !isOld && (isSameBefore(practice, before, athlete, on) || areSame(before, maxes))) {
    before.edition = edition;
    return before.blocks;
  }
  const asked: AskedMax[] = [];
  const options = { athlete, today: on, unit: 'kg', formula, on, maxes: noteAsked(maxes, asked) } as const;
  const { blocks } = projectTurn(works, plan, turn, options);
  const toKey = (name: string): string => nameMovement(practice.findMovement(name), name).key;
  const lines = blocks.flatMap((projected) => askBlock(blocks, projected, context, toKey));
  const movements = listKeysOfDay(practice, plan, turn.day);
  ofDay.set(id, { definitionsVersion, edition, movements, maxes: asked, blocks: lines });
  return lines;
}

function isSameBefore(
  practice: Practice,
  { edition, movements }: Asked,
  athlete: string,
  on: number,
): boolean {
  return edition === practice.edition || !practice.hasChangedSince(edition, athlete, on - 1, movements);
}

/** Most edits of a set change no max that a plan asks for. */
function areSame({ maxes: asked }: Asked, maxes: Maxes): boolean {
  return asked.every(({ kind, movement, max }) => isAlike(maxes[kind](movement), max));
}

function noteAsked(maxes: Maxes, asked: AskedMax[]): Maxes {
  const note =
    (kind: keyof Maxes) =>
    (movement: string): KnownMax | undefined => {
      const max = maxes[kind](movement);
      if (!asked.some((other) => other.kind === kind && other.movement === movement))
        asked.push({ kind, movement, max });
      return max;
    };
  return { percent: note('percent'), target: note('target') };
}

/** Keys of the movements whose maxes a plan's day may ask for. */
export function listKeysOfDay(practice: Practice, plan: PlanEntry, day: PlanDay): ReadonlySet<string> {
  const lines = new Set(day.blocks.flatMap((block) => block.lines.map(({ span }) => span.line)));
  return listKeysNamed(practice, plan, (line) => lines.has(line));
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
