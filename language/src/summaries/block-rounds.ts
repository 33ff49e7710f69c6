/** What stands behind a block's headline: each round against the last time, work to rest, and reps without kilograms. */
import { findTimes } from '../measures/density.ts';
import type { Result } from '../measures/result.ts';
import { compareRounds, type RoundChange } from '../measures/round-changes.ts';
import type { SessionWork, SessionWorks } from '../measures/session-work.ts';
import { computeRepRate, computeWorkRest } from '../measures/work-rest.ts';
import type { Block } from '../model/entry.ts';
import { printClock } from '../units/duration.ts';
import { printNumber, printSigned } from '../units/number.ts';
import type { LensOptions } from './lens.ts';
import { joinFacts, printDay } from './words.ts';

export interface BlockFact {
  readonly of: 'rounds' | 'pace';
  readonly text: string;
  readonly results: readonly Result[];
}

/** How many rounds a line names before it counts the rest. */
const ROUNDS_NAMED = 8;

/** None for a block without times; rounds are compared only once all files are read. */
export function describeBlockRounds(
  works: SessionWorks,
  work: SessionWork,
  block: Block,
  options: LensOptions,
): BlockFact[] {
  const facts = [
    options.complete ? describeChanges(works, work, block) : undefined,
    describePace(work, block),
  ];
  return facts.filter((fact) => fact !== undefined);
}

/** `since 10 Nov: round 1 -9 s (+8 %), round 2 same time, round 3 not timed on 2026-11-10`. */
function describeChanges(works: SessionWorks, work: SessionWork, block: Block): BlockFact | undefined {
  const changes = compareRounds(works, work, block);
  if (!changes || changes.rounds.length === 0) return undefined;
  const { earlier, rounds, omitted } = changes;
  const texts = [
    ...rounds.map(printRound),
    // A word for each round that has no number, so that nobody counts them in vain.
    ...omitted.map(({ what, why }) => `${what} ${why}`),
  ];
  const rest = texts.length - ROUNDS_NAMED;
  const shown = [...texts.slice(0, ROUNDS_NAMED), ...(rest > 0 ? [`${rest} more`] : [])];
  return {
    of: 'rounds',
    text: `since ${printDay(earlier.record.date, work.record.date)}: ${shown.join(', ')}`,
    results: rounds.flatMap(({ time, density }) => [time, ...(density ? [density] : [])]),
  };
}

function printRound({ round, time, density }: RoundChange): string {
  const seconds = time.value!;
  const text = seconds === 0 ? 'same time' : `${printSigned(seconds)} s`;
  const percent = density && Math.round(density.value!);
  return `round ${round} ${text}${percent ? ` (density ${printSigned(percent)} %)` : ''}`;
}

/** `work : rest 2 (8:00 : 4:00) · 12.5 reps/min without kilograms`. */
function describePace(work: SessionWork, block: Block): BlockFact | undefined {
  const blockWork = work.blocks.find((candidate) => candidate.block === block);
  if (!blockWork) return undefined;
  const times = findTimes(block, work.record);
  const ratio = computeWorkRest(blockWork, times);
  const rate = computeRepRate(blockWork, times);
  const results = [ratio, rate].filter((result) => result !== undefined);
  if (results.length === 0) return undefined;
  const clocks = ratio?.inputs.map(({ value }) => printClock(value)).join(' : ');
  const lead = rate?.bound === 'at least' ? 'at least ' : '';
  return {
    of: 'pace',
    text: joinFacts([
      ratio && `work : rest ${printNumber(ratio.value!, 2)} (${clocks})`,
      rate && `${lead}${printNumber(rate.value!, 1)} reps/min without kilograms`,
    ]),
    results,
  };
}
