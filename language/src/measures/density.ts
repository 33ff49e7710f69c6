import type { Block, RoundTime } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { printNumber } from '../units/number.ts';
import type { BlockWork } from './block-work.ts';
import { type Input, type Omission, type Result, toResult } from './result.ts';
import { addWork, NO_WORK, volumeOf, type Work } from './work.ts';

/** Times of one athlete's rounds; one list is for all of a group. */
export function findTimes(block: Block, record: Pick<SessionRecord, 'index'>): readonly RoundTime[] {
  return (block.times.length === 1 ? block.times[0] : block.times[record.index]) ?? [];
}

/** Rounds with a time, and the numbers (from 1) of those without, among the rounds that were done. */
export function splitRounds(
  work: BlockWork,
  times: readonly RoundTime[],
): { timed: number[]; untimed: number[] } {
  const count = work.roundCount ?? Math.max(times.length, work.rounds.length);
  const rounds = Array.from({ length: count }, (_, round) => round);
  return {
    timed: rounds.filter((round) => times[round] !== undefined),
    untimed:
      times.length === 0
        ? []
        : rounds.filter((round) => times[round] === undefined).map((round) => round + 1),
  };
}

/**
 * Volume of the timed rounds over their time, kg/min; total over total, never the mean of rounds. A round runs from its
 * first rep to its last. Undefined without a timed round, or where nothing in them can be weighed.
 */
export function computeWorkDensity(work: BlockWork, times: readonly RoundTime[]): Result | undefined {
  const { timed, untimed } = splitRounds(work, times);
  if (timed.length === 0) return undefined;
  const done = addWork([NO_WORK, ...timed.map((round) => work.rounds[round] ?? NO_WORK)]);
  const seconds = timed.reduce((sum, round) => sum + times[round]!, 0);
  const omitted = [
    ...done.omitted,
    ...untimed.map((round): Omission => ({ what: `round ${round}`, why: 'not timed' })),
  ];
  return toDensity('work-density', done, seconds, omitted, [
    { label: 'timed rounds', value: timed.length, unit: 'rounds' },
  ]);
}

/**
 * All volume over the rounds' times and the rests between them, kg/min. Absent with a round not timed or a rest not
 * known. `amrap` and `every` take their whole window, `for time` its end.
 */
export function computeBlockDensity(work: BlockWork, times: readonly RoundTime[]): Result | undefined {
  const { block } = work;
  const window = findWindow(block);
  if (window !== undefined) return toDensity('block-density', work.total, window, work.total.omitted, []);
  const { timed, untimed } = splitRounds(work, times);
  if (timed.length === 0 || untimed.length > 0) return undefined;
  const rests = findRests(block, timed.length);
  if (!rests) return undefined;
  const seconds = timed.reduce((sum, round) => sum + times[round]!, 0) + rests.seconds;
  const inputs: Input[] = [{ label: rests.label, value: rests.seconds, unit: 's' }];
  return toDensity('block-density', work.total, seconds, work.total.omitted, inputs);
}

/** Seconds of a block whose clock is written, whatever was done in them. */
export function findWindow(block: Block): number | undefined {
  switch (block.kind) {
    case 'amrap':
      return block.window;
    case 'every':
      return block.every?.total;
    case 'for time':
      return block.done?.seconds;
    default:
      return undefined;
  }
}

/** The R - 1 rests between R rounds: as taken where they were recorded, else as the header writes them. */
export function findRests(block: Block, rounds: number): { seconds: number; label: string } | undefined {
  const between = rounds - 1;
  if (block.restsTaken.length > 0) {
    const taken = block.restsTaken.slice(0, between);
    if (taken.length < between || taken.some((rest) => rest === undefined)) return undefined;
    return { seconds: taken.reduce<number>((sum, rest) => sum + rest!, 0), label: 'rests taken' };
  }
  if (between === 0) return { seconds: 0, label: 'rests between' };
  if (!block.rest || block.rest.high !== undefined) return undefined;
  return { seconds: block.rest.low * between, label: 'rests at the written rest' };
}

/** Working volume over the time the session lasted, kg/min. */
export function computeSessionDensity(total: Work, seconds: number | undefined): Result | undefined {
  return seconds === undefined ? undefined : toDensity('session-density', total, seconds, total.omitted, []);
}

function toDensity(
  method: 'work-density' | 'block-density' | 'session-density',
  work: Work,
  seconds: number,
  omitted: readonly Omission[],
  inputs: readonly Input[],
): Result | undefined {
  if (!(seconds > 0)) return undefined;
  const minutes = seconds / 60;
  const weighed = volumeOf(work);
  const byReps = weighed === 0;
  if (byReps && work.reps === 0) return undefined;
  const unweighed = work.reps - work.weighedReps;
  const left: Omission[] =
    !byReps && unweighed > 0 ? [{ what: `${printNumber(unweighed)} reps`, why: 'without kilograms' }] : [];
  return toResult({
    value: (byReps ? work.reps : weighed) / minutes,
    unit: byReps ? 'reps/min' : 'kg/min',
    method,
    bound: work.atLeast ? 'at least' : 'exact',
    inputs: [
      byReps
        ? { label: 'reps', value: work.reps, unit: 'reps' }
        : { label: work.body > 0 ? 'volume incl. body' : 'volume', value: weighed, unit: 'kg' },
      { label: 'time', value: seconds, unit: 's' },
      ...inputs,
    ],
    omitted: [...omitted, ...left],
  });
}
