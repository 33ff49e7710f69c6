/** How long a block will take: from the athlete's own rounds of it, else from their pace, else by common practice. */
import type { Block } from '../model/entry.ts';
import type { Practice } from '../practice/practice.ts';
import { countRounds, type ExpandedSet, expandBlock, findCell } from './expand-sets.ts';
import { COMMON_PACE, COMMON_PACE_ONLY, fitPace, type Pace, predictSeconds } from './pace.ts';
import { type Input, type Omission, type Result, type Spread, toResult } from './result.ts';
import { identifyBlock } from './same-block.ts';
import { computeMedian } from './statistics.ts';
import {
  addInnerRests,
  type Demand,
  listTimedRounds,
  type RangeEnd,
  splitByRound,
  sumDemand,
  type TimedRound,
} from './timed-rounds.ts';

export interface DurationContext {
  /** Folded name. */
  readonly athlete: string;
  /** Only rounds done before this day (since 1970-01-01) are looked at. */
  readonly beforeDay: number;
  /** Which cell of each line: the athlete's place in a group, 0 for a plan's week taken by itself. */
  readonly cellIndex?: number;
}

/** Fewer rounds of the same block than this are no history of it. */
export const FEWEST_SAME_ROUNDS = 3;
/** How many of the last ones count. */
const MOST_SAME_ROUNDS = 20;
/** Rounds of the same block count when their reps make them this much shorter or longer (chosen here). */
const MOST_DIFFERENCE = 1.25;

const ROUND_BLOCKS: ReadonlySet<Block['kind']> = new Set(['circuit', 'superset', 'giant set', 'for time']);

/**
 * Seconds from the first rep of a block to its last, rests between rounds or sets included; undefined for a block
 * without a set. Always a prediction, with the range that its basis gives.
 */
export function predictDuration(
  practice: Practice,
  block: Block,
  context: DurationContext,
): Result | undefined {
  const cellIndex = context.cellIndex ?? 0;
  const sets = expandBlock(block, cellIndex).filter(({ amount }) => amount?.kind !== 'skipped');
  if (sets.length === 0) return undefined;
  const window = findWindow(block);
  if (window !== undefined) {
    return toPrediction(window, { low: window, high: window }, [], [], 'the time that its header gives');
  }
  const history = listTimedRounds(practice, context.athlete).filter(({ day }) => day < context.beforeDay);
  const rests = ROUND_BLOCKS.has(block.kind)
    ? restBetweenRounds(block)
    : restBetweenSets(block, sets, cellIndex);
  const same = ROUND_BLOCKS.has(block.kind)
    ? predictFromSame(practice, block, sets, cellIndex, history)
    : undefined;
  const work = same ?? predictFromPace(practice, block, sets, cellIndex, history);
  const cap = block.cap ?? Number.POSITIVE_INFINITY;
  const capped = (seconds: number): number => Math.min(seconds, cap);
  return toPrediction(
    capped(work.seconds + (rests.low + rests.high) / 2),
    { low: capped(work.spread.low + rests.low), high: capped(work.spread.high + rests.high) },
    [...work.inputs, ...rests.inputs],
    work.omitted,
    work.basis,
  );
}

function toPrediction(
  seconds: number,
  spread: Spread,
  inputs: readonly Input[],
  omitted: readonly Omission[],
  basis: string,
): Result {
  return toResult({
    value: seconds,
    unit: 's',
    method: 'predicted-duration',
    bound: 'prediction',
    spread,
    inputs,
    omitted,
    remark: basis,
  });
}

/** The time of a block whose clock is written, in seconds. */
function findWindow({ kind, window, every, intervals, rounds }: Block): number | undefined {
  if (kind === 'amrap') return window;
  if (kind === 'every' && every) return every.total ?? (rounds && rounds * every.interval);
  const count = intervals?.count ?? rounds;
  if (kind !== 'intervals' || intervals?.on === undefined || count === undefined) return undefined;
  return count * intervals.on + (count - 1) * (intervals.off ?? 0);
}

interface PredictedWork {
  readonly seconds: number;
  readonly spread: Spread;
  readonly inputs: readonly Input[];
  readonly omitted: readonly Omission[];
  readonly basis: string;
}

/** Rounds times the median of the last rounds of the same block that asked for about as much. */
function predictFromSame(
  practice: Practice,
  block: Block,
  sets: readonly ExpandedSet[],
  cellIndex: number,
  history: readonly TimedRound[],
): PredictedWork | undefined {
  const { key } = identifyBlock(practice, block);
  const rounds = splitByRound(sets);
  const demands = rounds.map((round) => addInnerRests(block, sumDemand(practice, round, cellIndex)));
  const asked = computeMedian(demands.map((demand) => predictSeconds(demand, COMMON_PACE)))!;
  const alike = history.filter((past) => {
    const ratio = predictSeconds(past.demand, COMMON_PACE) / asked;
    return past.block === key && ratio <= MOST_DIFFERENCE && ratio >= 1 / MOST_DIFFERENCE;
  });
  const times = alike.slice(-MOST_SAME_ROUNDS).map(({ seconds }) => seconds);
  if (times.length < FEWEST_SAME_ROUNDS) return undefined;
  const count = countRounds(block) ?? rounds.length;
  const median = computeMedian(times)!;
  return {
    seconds: count * median,
    spread: { low: count * Math.min(...times), high: count * Math.max(...times) },
    inputs: [
      { label: 'median of past rounds', value: median, unit: 's' },
      { label: 'past rounds', value: times.length, unit: 'rounds' },
      { label: 'rounds', value: count, unit: 'rounds' },
    ],
    omitted: [],
    basis: 'from past rounds of this block',
  };
}

/** Reps and change-overs at the athlete's own pace where enough rounds were timed, else at the common one. */
function predictFromPace(
  practice: Practice,
  block: Block,
  sets: readonly ExpandedSet[],
  cellIndex: number,
  history: readonly TimedRound[],
): PredictedWork {
  const pace = fitPace(history) ?? COMMON_PACE_ONLY;
  // Straight sets have a rest behind each: nobody changes over.
  const parts = ROUND_BLOCKS.has(block.kind) ? splitByRound(sets) : sets.map((set) => [set]);
  const demand = (end: RangeEnd): Demand[] =>
    parts.map((part) => {
      const summed = sumDemand(practice, part, cellIndex, end);
      return ROUND_BLOCKS.has(block.kind) ? addInnerRests(block, summed) : summed;
    });
  const seconds = (demands: readonly Demand[]): number =>
    demands.reduce((total, part) => total + predictSeconds(part, pace), 0);
  const [low, high] = [demand('low'), demand('high')];
  const isOwn = pace.rounds > 0;
  return {
    seconds: (seconds(low) + seconds(high)) / 2,
    spread: { low: seconds(low) * pace.low, high: seconds(high) * pace.high },
    inputs: listPaceInputs(low, pace),
    omitted: low.some(({ isOpen }) => isOpen)
      ? [{ what: 'a set', why: 'without a number of reps or a time' }]
      : [],
    basis: isOwn ? `from the pace of ${pace.rounds} timed rounds` : 'by common practice',
  };
}

function listPaceInputs(demands: readonly Demand[], pace: Pace): Input[] {
  const total = (of: (demand: Demand) => number): number =>
    demands.reduce((sum, demand) => sum + of(demand), 0);
  const custom = pace.rounds > 0 ? '' : ' (common practice)';
  const reps = total((demand) => demand.reps);
  const changes = total((demand) => Math.max(0, demand.sets - 1));
  const written = total((demand) => demand.seconds);
  const parts: (Input | false)[] = [
    reps > 0 && { label: 'reps', value: reps, unit: 'reps' },
    reps > 0 && { label: `a rep${custom}`, value: pace.secondsPerRep, unit: 's' },
    changes > 0 && { label: 'change-overs', value: changes, unit: '' },
    changes > 0 && { label: `a change-over${custom}`, value: pace.secondsPerChange, unit: 's' },
    written > 0 && { label: 'holds, tempos and rests written', value: written, unit: 's' },
  ];
  return parts.filter((part) => part !== false);
}

interface Rests {
  readonly low: number;
  readonly high: number;
  readonly inputs: readonly Input[];
}

/** Rests between rounds as the header writes them; for time has none. */
function restBetweenRounds(block: Block): Rests {
  const count = (countRounds(block) ?? 1) - 1;
  if (count <= 0 || (block.kind === 'for time' && !block.rest)) return { low: 0, high: 0, inputs: [] };
  const { low, high = low } = block.rest ?? { low: COMMON_PACE.restBetweenRounds };
  const label = block.rest ? 'rests between rounds' : 'rests between rounds (common practice)';
  return {
    low: count * low,
    high: count * high,
    inputs: [{ label, value: (count * (low + high)) / 2, unit: 's' }],
  };
}

/** A rest behind each set but the last: the line's own, else the block's, else the common one. */
function restBetweenSets(block: Block, sets: readonly ExpandedSet[], cellIndex: number): Rests {
  let isCommon = false;
  const rests = sets.slice(0, -1).map(({ line }) => {
    const modifiers = [...(findCell(line, cellIndex)?.modifiers ?? []), ...line.modifiers];
    const own = modifiers.find((modifier) => modifier.kind === 'rest');
    if (own) return { low: own.low.value, high: (own.high ?? own.low).value };
    isCommon ||= !block.rest;
    const { low, high = low } = block.rest ?? { low: COMMON_PACE.restBetweenSets };
    return { low, high };
  });
  const [low, high] = (['low', 'high'] as const).map((end) =>
    rests.reduce((total, rest) => total + rest[end], 0),
  ) as [number, number];
  if (high === 0) return { low, high, inputs: [] };
  const label = isCommon ? 'rests between sets (common practice)' : 'rests between sets';
  return { low, high, inputs: [{ label, value: (low + high) / 2, unit: 's' }] };
}
