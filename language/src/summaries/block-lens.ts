import type { BlockWork } from '../measures/block-work.ts';
import { OTHER_WEIGH_IN, toChangeResult } from '../measures/change-result.ts';
import { computeBlockDensity, computeWorkDensity, findTimes, splitRounds } from '../measures/density.ts';
import { splitBlockByExercise } from '../measures/exercise-work.ts';
import { findCell } from '../measures/expand-sets.ts';
import type { Result } from '../measures/result.ts';
import { findLastSameBlock } from '../measures/same-block.ts';
import { listWeighed } from '../measures/series.ts';
import type { SessionWork, SessionWorks } from '../measures/session-work.ts';
import { measureAmount } from '../measures/set-work.ts';
import { toWorkResults } from '../measures/work-results.ts';
import type { Block } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { printClock } from '../units/duration.ts';
import { fromGrams } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import type { Lens, LensOptions } from './lens.ts';
import { areSumsKnown, LOADING } from './loading.ts';
import { printSum, unitFor } from './session-lens.ts';
import { count, joinFacts, printChange, printDay } from './words.ts';

/** The headline of a block, by its kind; warm-ups have none. */
export function describeBlock(
  works: SessionWorks,
  work: SessionWork,
  block: Block,
  options: LensOptions,
): Omit<Lens, 'line'> | undefined {
  const blockWork = work.blocks.find((candidate) => candidate.block === block);
  if (!blockWork || block.implicit) return undefined;
  const headline = HEADLINES[block.kind](works, work, blockWork, options);
  if (!headline) return undefined;
  const text = joinFacts(headline.facts);
  if (text === '') return undefined;
  return {
    kind: 'block',
    text,
    explain: () => (areSumsKnown(work, [block], options) ? headline.explain() : []),
  };
}

/** Kinds whose headline always says something, if only how many sets there were. */
const ALWAYS_SAYING: ReadonlySet<Block['kind']> = new Set([
  'straight',
  'circuit',
  'superset',
  'giant set',
  'amrap',
  'for time',
]);

/** Whether {@link describeBlock} has anything to say, told without working it out where that is sure. */
export function hasHeadline(
  works: SessionWorks,
  work: SessionWork,
  block: Block,
  options: LensOptions,
): boolean {
  if (block.implicit) return false;
  return ALWAYS_SAYING.has(block.kind) || describeBlock(works, work, block, options) !== undefined;
}

/** The main sum of a block, unless it may still change. */
function printTotal(
  works: SessionWorks,
  work: SessionWork,
  { block, total }: BlockWork,
  options: LensOptions,
): string | undefined {
  const text = printSum(total, unitFor(works, work.record.athlete, options));
  return text === undefined || areSumsKnown(work, [block], options) ? text : LOADING;
}

interface Headline {
  readonly facts: readonly (string | undefined)[];
  readonly explain: () => readonly Result[];
}
type Describe = (
  works: SessionWorks,
  work: SessionWork,
  block: BlockWork,
  options: LensOptions,
) => Headline | undefined;

const describeRounds: Describe = (works, work, blockWork, options) => {
  const { block } = blockWork;
  const times = findTimes(block, work.record);
  const { timed, untimed } = splitRounds(blockWork, times);
  const unit = unitFor(works, work.record.athlete, options);
  if (timed.length === 0) {
    return {
      facts: [count(blockWork.total.sets, 'working set'), printTotal(works, work, blockWork, options)],
      explain: () => explainWork(work, blockWork),
    };
  }
  const seconds = timed.reduce((sum, round) => sum + times[round]!, 0);
  const density = computeWorkDensity(blockWork, times);
  const drift = density && describeDrift(works, work, blockWork, density, options);
  return {
    facts: [
      untimed.length > 0
        ? `round${untimed.length > 1 ? 's' : ''} ${untimed.join(', ')} not timed`
        : undefined,
      `${count(timed.length, untimed.length > 0 ? 'timed round' : 'round')} ${printClock(seconds)}`,
      density && !areSumsKnown(work, [block], options)
        ? LOADING
        : density &&
          [printDensity(density, blockWork, unit), drift?.text]
            .filter((part) => part !== undefined)
            .join(', '),
    ],
    explain: () => {
      const whole = computeBlockDensity(blockWork, times);
      return [
        ...(density ? [density] : []),
        ...(whole ? [whole] : []),
        ...(drift?.result ? [drift.result] : []),
        ...explainWork(work, blockWork),
      ];
    },
  };
};

/** The sums of a block, with the exercises that went in. */
function explainWork(work: SessionWork, block: BlockWork): Result[] {
  return toWorkResults(block.total, { exercises: splitBlockByExercise(work, block) });
}

function printDensity(density: Result, { total }: BlockWork, unit: 'kg' | 'lb'): string {
  const lead = density.bound === 'at least' ? 'at least ' : '';
  if (density.unit === 'reps/min') return `${lead}${printNumber(density.value!, 1)} reps/min`;
  const value = printNumber(fromGrams(density.value! * 1000, unit));
  return `${lead}${value} ${unit}/min${total.body > 0 ? ' incl. body' : ''}`;
}

/** How the density of the same block stands to the last time it was done. */
function describeDrift(
  works: SessionWorks,
  work: SessionWork,
  blockWork: BlockWork,
  density: Result,
  options: LensOptions,
): { text: string; result?: Result } | undefined {
  const { block } = blockWork;
  if (!options.complete) return { text: LOADING };
  const { same, changed } = findLastSameBlock(works.practice, work.record, block);
  if (changed) {
    const name = (identity: string): string => {
      const [key, ...settings] = identity.split(', ');
      return [works.practice.findMovement(key!)?.name ?? key, ...settings].join(', ');
    };
    return {
      text: `${name(changed.now)} in place of ${name(changed.before)} since ${printDay(changed.record.date, work.record.date)}`,
    };
  }
  if (!same) return undefined;
  const before = works.of(same.record).blocks.find((candidate) => candidate.block === same.block)!;
  const earlier = computeWorkDensity(before, findTimes(same.block, same.record));
  if (!earlier || earlier.unit !== density.unit) return undefined;
  const percent = (density.value! / earlier.value! - 1) * 100;
  // A lower bound on either side leaves the direction open, unless the bounds decide it.
  if (earlier.bound === 'at least' && (density.bound === 'at least' || percent > 0)) return undefined;
  if (density.bound === 'at least' && percent < 0) return undefined;
  const day = printDay(same.record.date, work.record.date);
  const [linesNow, linesThen] = [blockWork, before].map((each) => listWeighed(works, each).join('\n'));
  if (linesNow !== linesThen) return { text: `not compared: other lines had kilograms on ${day}` };
  const weighed = work.bodyMass?.grams !== works.of(same.record).bodyMass?.grams;
  return {
    text: `${printChange(percent, density.bound === 'at least' || earlier.bound === 'at least')} ${day}`,
    result: toChangeResult({
      percent,
      atLeast: density.bound === 'at least' || earlier.bound === 'at least',
      inputs: [
        { label: 'now', value: density.value!, unit: density.unit },
        { label: day, value: earlier.value!, unit: earlier.unit },
      ],
      omitted: [density.omitted, earlier.omitted, weighed && before.total.body > 0 ? [OTHER_WEIGH_IN] : []],
    }),
  };
}

/** The heaviest set, and its day's estimated max. */
const describeStraight: Describe = (works, work, blockWork, options) => {
  const { block, total } = blockWork;
  const lines = block.lines.filter((line) => line.purpose !== 'warmup');
  const explain = () => explainWork(work, blockWork);
  const sum = printTotal(works, work, blockWork, options);
  if (lines.length !== 1) return { facts: [count(total.sets, 'working set'), sum], explain };
  const top = findTopSet(blockWork, work.record.index);
  return {
    facts: [top && `top set ${top}`, count(total.sets, 'working set'), sum],
    explain,
  };
};

/** `1 @ 92.5 kg rpe 8`: as it was written. */
function findTopSet({ block }: BlockWork, index: number): string | undefined {
  const line = block.lines.find((candidate) => candidate.purpose !== 'warmup');
  const sets = line ? (findCell(line, index)?.sets ?? []) : [];
  let top: { grams: number; text: string } | undefined;
  for (const { amount, load, ratings } of sets) {
    const done = amount && measureAmount(amount);
    if (!done || done.total === 0 || done.quantity.measure !== 'reps' || load?.kind !== 'mass') continue;
    const { grams, written, unit } = load.mass;
    if (top && grams <= top.grams) continue;
    const reps =
      amount.kind === 'quantity' && amount.perSide
        ? `${amount.quantity.value}/side`
        : printNumber(done.total);
    const rated = ratings.find(({ scale }) => scale === 'rpe' || scale === 'rir');
    const implementsText = load.implements === 2 && !load.other ? '2x' : '';
    top = {
      grams,
      text: `${reps} @ ${implementsText}${written} ${unit}${rated ? ` ${rated.scale} ${rated.value}` : ''}`,
    };
  }
  return top?.text;
}

/** `4 rounds + 12 cal + 5`, `9:48`: the score, and how it stands to the last time. */
const describeScore: Describe = (works, work, blockWork, options) => {
  const { block } = blockWork;
  const unit = unitFor(works, work.record.athlete, options);
  const score = printScore(block);
  const density = computeBlockDensity(blockWork, findTimes(block, work.record));
  return {
    facts: [
      score ?? 'no score written',
      score ? compareScore(works, work, block, options) : undefined,
      printTotal(works, work, blockWork, options),
      density && areSumsKnown(work, [block], options) ? printDensity(density, blockWork, unit) : undefined,
    ],
    explain: () => [...(density ? [density] : []), ...explainWork(work, blockWork)],
  };
};

function printScore({ done }: Block): string | undefined {
  if (!done) return undefined;
  if (done.seconds !== undefined) return printClock(done.seconds);
  if (done.rounds === undefined) return undefined;
  const plus = done.plus.map(
    (part) => `${part.written}${part.unit === 'rep' || part.unit === 'clock' ? '' : ` ${part.unit}`}`,
  );
  return [
    `${done.of === undefined ? count(done.rounds, 'round') : `${done.rounds} of ${done.of} rounds`}`,
    ...plus,
  ].join(' + ');
}

function compareScore(
  works: SessionWorks,
  work: SessionWork,
  block: Block,
  options: LensOptions,
): string | undefined {
  if (!options.complete) return LOADING;
  const same = findLastSameBlock(works.practice, work.record, block).same;
  const [now, before] = [block.done, same?.block.done];
  if (!same || !now || !before) return undefined;
  const day = printDay(same.record.date, work.record.date);
  if (now.seconds !== undefined && before.seconds !== undefined) {
    const change = now.seconds - before.seconds;
    if (change === 0) return `same time as ${day}`;
    return `${printClock(Math.abs(change))} ${change < 0 ? 'faster' : 'slower'} than ${day}`;
  }
  if (now.rounds === undefined || before.rounds === undefined) return undefined;
  const change = now.rounds - before.rounds;
  if (change === 0) return `same full rounds as ${day}`;
  return `${change > 0 ? '+' : '-'}${count(Math.abs(change), 'round')} since ${day}`;
}

/** How many of the sets asked for were made. */
const describeEvery: Describe = (works, work, blockWork, options) => {
  const sets = blockWork.sets.filter(({ set }) => set.line.purpose !== 'warmup');
  const made = sets.filter(({ set: { amount } }) => {
    if (!amount || amount.kind === 'skipped' || amount.kind === 'unrecorded') return false;
    return amount.kind !== 'attempt' || amount.made === amount.tried;
  }).length;
  return {
    facts: [
      sets.length > 0 ? `${made} of ${sets.length} made` : undefined,
      printTotal(works, work, blockWork, options),
    ],
    explain: () => explainWork(work, blockWork),
  };
};

/** Mean and spread over the intervals: of their times, else of what was done in each. */
const describeIntervals: Describe = (works, work, blockWork, options) => {
  const sets = blockWork.sets.map(({ set }) => set).filter((set) => set.line.purpose !== 'warmup');
  const times = sets.map((set) => set.group.within?.value).filter((value) => value !== undefined);
  const recorded = findTimes(blockWork.block, work.record).filter((value) => value !== undefined);
  const spread =
    times.length > 1 && times.length === sets.length
      ? printSpread(times, printClock)
      : recorded.length > 1
        ? printSpread(recorded, printClock)
        : describeAmounts(sets.map((set) => set.amount && measureAmount(set.amount)));
  return {
    facts: [spread, printTotal(works, work, blockWork, options)],
    explain: () => explainWork(work, blockWork),
  };
};

function describeAmounts(
  amounts: readonly (ReturnType<typeof measureAmount> | undefined)[],
): string | undefined {
  const first = amounts[0];
  if (!first || amounts.length < 2) return undefined;
  if (!amounts.every((amount) => amount?.quantity.measure === first.quantity.measure)) return undefined;
  const words = { reps: ' reps', seconds: ' s', metres: ' m', calories: ' cal' }[first.quantity.measure];
  return printSpread(
    amounts.map((amount) => amount!.total),
    (value) => `${printNumber(value, 1)}${words}`,
  );
}

function printSpread(values: readonly number[], print: (value: number) => string): string {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return low === high ? `each ${print(mean)}` : `mean ${print(mean)} (${print(low)} to ${print(high)})`;
}

const describeNothing: Describe = () => undefined;

const HEADLINES: Readonly<Record<Block['kind'], Describe>> = {
  straight: describeStraight,
  circuit: describeRounds,
  superset: describeRounds,
  'giant set': describeRounds,
  every: describeEvery,
  amrap: describeScore,
  'for time': describeScore,
  intervals: describeIntervals,
  warmup: describeNothing,
  cooldown: describeNothing,
};

/** Those that say how a block stands to the last time. */
const COMPARING: ReadonlySet<Describe> = new Set([describeRounds, describeScore]);

/** Whether {@link describeBlock} says nothing of other movements than the block's, as of one that another took the place of. */
export function namesNoOther(
  practice: Practice,
  record: SessionRecord,
  block: Block,
  { complete }: LensOptions,
): boolean {
  const compares = complete && COMPARING.has(HEADLINES[block.kind]);
  return !compares || findLastSameBlock(practice, record, block).same !== undefined;
}
