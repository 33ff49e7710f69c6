import type { Block, RoundTime } from '../model/entry.ts';
import type { BlockWork } from './block-work.ts';
import { findRests, findWindow, splitRounds } from './density.ts';
import { computePerMinute, divide } from './quotients.ts';
import { type Input, type Result, toResult } from './result.ts';
import { addWork, NO_WORK } from './work.ts';

interface WorkAndRest {
  readonly work: number;
  readonly rest: number;
  readonly label: string;
}

/**
 * Time worked over time rested in a block: recorded rounds, or intervals by their clock, over the rests that were
 * recorded, else written. Rests within the rounds count as rest. Undefined with a round not timed or a rest not known,
 * and without any rest.
 */
export function computeWorkRest(blockWork: BlockWork, times: readonly RoundTime[]): Result | undefined {
  const found = findByRounds(blockWork, times) ?? findByClock(blockWork) ?? findByTimedSets(blockWork);
  const value = divide(found?.work, found?.rest);
  if (!found || value === undefined || value <= 0) return undefined;
  return toResult({
    value,
    unit: '',
    method: 'work-rest',
    inputs: [
      { label: 'work', value: found.work, unit: 's' },
      { label: found.label, value: found.rest, unit: 's' },
    ],
  });
}

function findByRounds(blockWork: BlockWork, times: readonly RoundTime[]): WorkAndRest | undefined {
  const { block } = blockWork;
  const { timed, untimed } = splitRounds(blockWork, times);
  if (timed.length === 0 || untimed.length > 0) return undefined;
  const rests = findRests(block, timed.length);
  if (!rests) return undefined;
  const inner = sumInnerRests(block) * timed.length;
  const total = timed.reduce((sum, round) => sum + times[round]!, 0);
  return { work: total - inner, rest: rests.seconds + inner, label: rests.label };
}

/** Seconds of rest between the movements of a round, in each of its passes; a range is not known. */
function sumInnerRests({ restsBetween, lines, passes }: Block): number {
  return restsBetween
    .filter(({ after, high }) => high === undefined && after >= 0 && after < lines.length - 1)
    .reduce((sum, { seconds }) => sum + seconds * passes, 0);
}

/** `intervals 0:40 on, 0:20 off`: the clock gives both. */
function findByClock({ block: { intervals }, roundCount }: BlockWork): WorkAndRest | undefined {
  if (intervals?.on === undefined || intervals.off === undefined) return undefined;
  const rounds = roundCount ?? 1;
  return { work: intervals.on * rounds, rest: intervals.off * rounds, label: 'rests by the clock' };
}

/** `intervals 6 x 500 m` with a time beside each set. */
function findByTimedSets({ block, sets }: BlockWork): WorkAndRest | undefined {
  const times = sets.map(({ set }) => set.group.within?.value);
  if (block.kind !== 'intervals' || times.length < 2 || times.some((time) => time === undefined))
    return undefined;
  const rests = findRests(block, times.length);
  return (
    rests && {
      work: times.reduce<number>((sum, time) => sum + time!, 0),
      rest: rests.seconds,
      label: rests.label,
    }
  );
}

/**
 * Reps per minute of what is counted in reps and not weighed: over the timed rounds, else over the block's window.
 * Undefined where there are no such reps or no time.
 */
export function computeRepRate(blockWork: BlockWork, times: readonly RoundTime[]): Result | undefined {
  const { timed, untimed } = splitRounds(blockWork, times);
  const window = findWindow(blockWork.block);
  const done =
    window !== undefined
      ? blockWork.total
      : addWork([NO_WORK, ...timed.map((round) => blockWork.rounds[round] ?? NO_WORK)]);
  const seconds = window ?? timed.reduce((sum, round) => sum + times[round]!, 0);
  const reps = done.reps - done.weighedReps;
  const value = computePerMinute(reps, seconds);
  if (reps === 0 || value === undefined) return undefined;
  const inputs: Input[] = [
    { label: 'reps', value: reps, unit: 'reps' },
    { label: 'time', value: seconds, unit: 's' },
  ];
  const left = window === undefined ? untimed : [];
  return toResult({
    value,
    unit: 'reps/min',
    method: 'rep-density',
    bound: done.atLeast ? 'at least' : 'exact',
    inputs,
    omitted: left.map((round) => ({ what: `round ${round}`, why: 'not timed' })),
  });
}
