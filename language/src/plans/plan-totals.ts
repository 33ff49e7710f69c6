/** What a plan's day or week adds up to: sets, kilograms, intensity, time, hard sets. Ranges of the plan stay ranges. */
import { type BlockWork, computeBlockWork, isWorking, type WorkContext } from '../measures/block-work.ts';
import { countSetsByMuscle, type NamedSets } from '../measures/muscle-sets.ts';
import { predictDuration } from '../measures/predicted-duration.ts';
import { type Input, type Result, toResult, weakestBound } from '../measures/result.ts';
import { nameMovement, readExternal } from '../measures/series-sets.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { addWork, NO_WORK, volumeOf, type Work } from '../measures/work.ts';
import type { Block, MovementLine } from '../model/entry.ts';
import type { Amount, Load, SetGroup } from '../model/quantity.ts';
import { workOf } from '../practice/movement.ts';
import { findPercentMax, type KnownMax } from './latest-max.ts';
import type { ProjectionOptions } from './project-plan.ts';
import type { ProjectedDay } from './projected.ts';

export interface PlanTotals {
  readonly sets: number;
  /** Kilograms, share of body mass included; `spread` where the plan has ranges. Undefined where nothing is weighed. */
  readonly volume?: Result;
  readonly hasBody: boolean;
  /** Percent of the max, weighed by reps. */
  readonly intensity?: Result;
  /** Seconds, of one day. */
  readonly time?: Result;
  /** Hard sets, most first. */
  readonly muscles: readonly NamedSets[];
}

/** One day, or the days of a week together (then without a time). */
export function sumDays(
  works: SessionWorks,
  days: readonly ProjectedDay[],
  options: ProjectionOptions,
): PlanTotals {
  const ends = (['low', 'high'] as const).map((end) => days.map((day) => toSummed(works, day, options, end)));
  const [low, high] = ends.map((summed) =>
    addWork([NO_WORK, ...summed.flatMap(({ blocks }) => blocks.map(({ total }) => total))]),
  ) as [Work, Work];
  const volume = toVolume(low, high);
  const intensity = computeIntensity(works, days, options);
  const time = days.length === 1 ? predictTime(works, days[0]!, options) : undefined;
  return {
    sets: low.sets,
    hasBody: low.body > 0,
    ...(volume && { volume }),
    ...(intensity && { intensity }),
    ...(time && { time }),
    muscles: countSetsByMuscle(ends[0]!).counts,
  };
}

function toSummed(
  works: SessionWorks,
  day: ProjectedDay,
  options: ProjectionOptions,
  end: 'low' | 'high',
): { blocks: BlockWork[]; context: WorkContext } {
  const context = openContext(works, options.athlete, options.on ?? day.turn.date ?? options.today);
  const blocks = day.blocks.map(({ block }) => computeBlockWork(takeEnds(block, end), { index: 0 }, context));
  return { blocks, context };
}

/** What the sums of an athlete's sets rest on, on a day. */
export function openContext(works: SessionWorks, athlete: string, date: number): WorkContext {
  const { practice } = works;
  const sex = practice.findAthlete(athlete)?.entry.sex;
  return {
    findMovement: (name) => practice.findMovement(name),
    bodyMass: works.bodyMassOn(athlete, date)?.grams,
    ...(sex && { sex }),
  };
}

/** A block with one number in place of each range: its lower or its upper end. */
export function takeEnds(block: Block, end: 'low' | 'high'): Block {
  const lines = block.lines.map(
    (line): MovementLine => ({
      ...line,
      cells: line.cells.map((cell) => ({ ...cell, sets: cell.sets.map((group) => takeEnd(group, end)) })),
    }),
  );
  return { ...block, lines };
}

function takeEnd(group: SetGroup, end: 'low' | 'high'): SetGroup {
  return {
    ...group,
    ...(group.amount && { amount: takeAmount(group.amount, end) }),
    ...(group.load && { load: takeLoad(group.load, end) }),
    drops: group.drops.map((drop) => ({
      ...drop,
      amount: takeAmount(drop.amount, end),
      ...(drop.load && { load: takeLoad(drop.load, end) }),
    })),
  };
}

function takeAmount(amount: Amount, end: 'low' | 'high'): Amount {
  if (amount.kind === 'range') return { ...amount, kind: 'quantity', quantity: amount[end] };
  return amount.kind === 'at-least' ? { ...amount, kind: 'quantity' } : amount;
}

function takeLoad(load: Load, end: 'low' | 'high'): Load {
  if (load.kind !== 'mass' || !load.high) return load;
  const { high, ...plain } = load;
  return end === 'low' ? plain : { ...plain, mass: high };
}

function toVolume(low: Work, high: Work): Result | undefined {
  const [least, most] = [volumeOf(low), volumeOf(high)];
  if (most === 0) return undefined;
  const isRange = most > least;
  return toResult({
    value: isRange ? (least + most) / 2 : least,
    unit: 'kg',
    method: 'volume-load',
    bound: low.atLeast ? 'at least' : 'prediction',
    ...(isRange && { spread: { low: least, high: most } }),
    inputs: [
      { label: 'external load', value: low.external / 1000, unit: 'kg' },
      { label: 'share of body mass', value: low.body / 1000, unit: 'kg' },
      { label: 'reps', value: low.reps, unit: 'reps' },
    ],
    omitted: low.omitted,
  });
}

/** Over strength work whose max is known that day: load over max, weighed by reps. */
function computeIntensity(
  works: SessionWorks,
  days: readonly ProjectedDay[],
  options: ProjectionOptions,
): Result | undefined {
  const { practice } = works;
  let [lifted, possible] = [0, 0];
  const maxes = new Map<string, Input>();
  for (const day of days) {
    const date = options.on ?? day.turn.date ?? options.today;
    const summed = toSummed(works, day, options, 'low');
    // The sets of a line, and its warm-up beside it, ask for one max.
    const found = new Map<string, KnownMax | undefined>();
    const findMax = (name: string): KnownMax | undefined => {
      if (!found.has(name))
        found.set(name, findPercentMax(works, options.athlete, name, date, options.formula));
      return found.get(name);
    };
    for (const { block, sets } of summed.blocks) {
      for (const { set, work } of sets) {
        const name = set.line.name.text;
        const movement = practice.findMovement(name);
        const grams = readExternal(set.group.load, movement);
        if (!isWorking(set, block) || workOf(movement) !== 'strength' || !grams || work.reps === 0) continue;
        const max = findMax(name);
        if (!max || max.added || max.bound === 'at least') continue;
        lifted += work.reps * grams;
        possible += work.reps * max.kilograms * 1000;
        const { name: shown } = nameMovement(movement, name);
        maxes.set(shown, { label: `max of ${shown}`, value: max.kilograms, unit: 'kg' });
      }
    }
  }
  if (possible === 0) return undefined;
  return toResult({
    value: (lifted / possible) * 100,
    unit: '%',
    method: 'planned-intensity',
    bound: 'prediction',
    inputs: [...maxes.values()],
  });
}

/** Blocks one after the other, and the rests written between them; the way from one to the next is not in it. */
function predictTime(works: SessionWorks, day: ProjectedDay, options: ProjectionOptions): Result | undefined {
  const { athlete } = options;
  const beforeDay = Math.min(options.on ?? day.turn.date ?? options.today, options.today) + 1;
  const parts = day.blocks.flatMap(({ block }) => {
    const result = predictDuration(works.practice, block, { athlete, beforeDay, cellIndex: 0 });
    return result ? [{ block, result }] : [];
  });
  if (parts.length === 0) return undefined;
  const sum = (of: (result: Result) => number): number =>
    parts.reduce((total, { result }) => total + of(result), 0);
  return toResult({
    value: sum(({ value }) => value ?? 0),
    unit: 's',
    method: 'predicted-duration',
    bound: weakestBound(parts.map(({ result }) => result.bound)),
    spread: {
      low: sum(({ spread, value }) => spread?.low ?? value ?? 0),
      high: sum(({ spread, value }) => spread?.high ?? value ?? 0),
    },
    inputs: parts.map(({ block, result }) => ({
      label: [block.letter, block.kind].filter((part) => part !== undefined).join(' '),
      value: result.value ?? 0,
      unit: 's',
    })),
    omitted: [
      ...parts.flatMap(({ result }) => result.omitted),
      { what: 'the way from one block to the next', why: 'not written' },
    ],
  });
}
