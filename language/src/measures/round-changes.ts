/** A timed circuit against the last time it was done, round by round. */
import type { Block } from '../model/entry.ts';
import type { BlockWork } from './block-work.ts';
import { toChangeResult } from './change-result.ts';
import { findTimes } from './density.ts';
import { computePercentChange, computePerMinute } from './quotients.ts';
import { type Omission, type Result, toResult, type Unit } from './result.ts';
import { type EarlierBlock, findLastSameBlock } from './same-block.ts';
import { listWeighed } from './series.ts';
import type { SessionWork, SessionWorks } from './session-work.ts';
import { volumeOf, type Work } from './work.ts';

export interface RoundChange {
  /** From 1. */
  readonly round: number;
  /** Seconds now less seconds then: below zero is faster. */
  readonly time: Result;
  /** Percent; absent where other lines could be weighed, or a lower bound leaves the direction open. */
  readonly density?: Result;
}

export interface RoundChanges {
  readonly earlier: EarlierBlock;
  readonly rounds: readonly RoundChange[];
  /** Rounds of today that cannot be compared. */
  readonly omitted: readonly Omission[];
}

/** Undefined where the same block was not done before. */
export function compareRounds(
  works: SessionWorks,
  work: SessionWork,
  block: Block,
): RoundChanges | undefined {
  const earlier = findLastSameBlock(works.practice, work.record, block).same;
  const now = findBlock(work, block);
  const before = earlier && findBlock(works.of(earlier.record), earlier.block);
  if (!earlier || !now || !before) return undefined;
  const [times, timesBefore] = [findTimes(block, work.record), findTimes(earlier.block, earlier.record)];
  const day = earlier.record.date;
  const rounds: RoundChange[] = [];
  const omitted: Omission[] = [];
  for (const [index, done] of now.rounds.entries()) {
    const [seconds, secondsBefore] = [times[index], timesBefore[index]];
    const doneBefore = before.rounds[index];
    const round = index + 1;
    if (seconds === undefined || secondsBefore === undefined || !doneBefore) {
      const why =
        seconds === undefined ? 'not timed' : doneBefore ? `not timed on ${day}` : `not done on ${day}`;
      omitted.push({ what: `round ${round}`, why });
      continue;
    }
    const density = areAlike(works, now, before, index)
      ? compareDensity({ work: done, seconds }, { work: doneBefore, seconds: secondsBefore }, day)
      : undefined;
    rounds.push({
      round,
      time: compareTimes(round, seconds, secondsBefore, day),
      ...(density && { density }),
    });
  }
  return { earlier, rounds, omitted };
}

function findBlock(work: SessionWork, block: Block): BlockWork | undefined {
  return work.blocks.find((candidate) => candidate.block === block);
}

/** The same lines had kilograms in that round, both times, and no set of it was left unfinished. */
function areAlike(works: SessionWorks, now: BlockWork, before: BlockWork, round: number): boolean {
  const isWhole = [now, before].every(({ sets }) =>
    sets.every(({ set }) => set.round !== round || !set.unfinished),
  );
  const [weighedNow, weighedBefore] = [now, before].map((block) =>
    listWeighed(works, block, round).join('\n'),
  );
  return isWhole && weighedNow === weighedBefore;
}

function compareTimes(round: number, seconds: number, secondsBefore: number, day: string): Result {
  return toResult({
    value: seconds - secondsBefore,
    unit: 's',
    method: 'time-change',
    inputs: [
      { label: `round ${round}`, value: seconds, unit: 's' },
      { label: day, value: secondsBefore, unit: 's' },
    ],
  });
}

interface TimedWork {
  readonly work: Work;
  readonly seconds: number;
}

/** Kilograms a minute, or reps where nothing has kilograms, as for the whole block. */
function compareDensity(now: TimedWork, before: TimedWork, day: string): Result | undefined {
  const byReps = volumeOf(now.work) === 0;
  const [value, valueBefore] = [now, before].map(({ work, seconds }) =>
    computePerMinute(byReps ? work.reps : volumeOf(work), seconds),
  );
  if (!value || !valueBefore) return undefined;
  const percent = computePercentChange(valueBefore, value)!;
  const isOpen =
    (now.work.atLeast && before.work.atLeast) ||
    (now.work.atLeast && percent < 0) ||
    (before.work.atLeast && percent > 0);
  if (isOpen) return undefined;
  const unit: Unit = byReps ? 'reps/min' : 'kg/min';
  return toChangeResult({
    percent,
    atLeast: now.work.atLeast || before.work.atLeast,
    inputs: [
      { label: 'now', value, unit },
      { label: day, value: valueBefore, unit },
    ],
    omitted: [now.work.omitted, before.work.omitted],
  });
}
