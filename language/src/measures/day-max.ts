import type { Block, MovementLine } from '../model/entry.ts';
import type { Amount, SetGroup } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { implementOf, workOf } from '../practice/movement.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import type { WorkContext } from './block-work.ts';
import { HIGHEST_USEFUL_RIR } from './exertion.ts';
import { findCell, lacksLoad } from './expand-sets.ts';
import { DEFAULT_FORMULA, estimateOneRepMax, type OneRepMaxFormula } from './one-rep-max.ts';
import { type Input, type Result, toResult } from './result.ts';
import { findBodyShare, readSetReserve } from './set-work.ts';

/** What tells one series of estimates from another: never compared across. */
export interface Series {
  readonly key: string;
  readonly movement: string;
  /** Per hand where two implements are held. */
  readonly perHand: boolean;
}

/** The key of the movement of a series, or its name in lower case where nothing defines it. */
export function toMovementKey(seriesKey: string): string {
  return seriesKey.split(' | ', 1)[0]!;
}

/** The estimated max of one series on one day. */
export interface DayMax {
  readonly series: Series;
  /** Kilograms; of the added load where body weight is the rest (`added`). */
  readonly result: Result;
  readonly added: boolean;
  readonly line: MovementLine;
  /** The written set that gave it, from 1. */
  readonly setNumber: number;
}

interface Candidate {
  readonly line: MovementLine;
  readonly setNumber: number;
  readonly series: Series;
  /** Kilograms moved, body share included. */
  readonly total: number;
  /** Kilograms of body share in it. */
  readonly body: number;
  readonly reps: number;
  readonly reserve: number | undefined;
  readonly failed: boolean;
  readonly tier: 1 | 2 | 3;
  readonly atLeast: boolean;
}

/**
 * The day's estimated max of each series: the highest among sets with a rep made at 0-2 reps in reserve (or failed
 * after one); else at 3-4; else the highest unrated, a lower bound. Never below a load lifted that day, and where a
 * single was made and a heavier load failed, never above that.
 */
export function estimateDayMaxes(
  blocks: readonly Block[],
  athleteIndex: number,
  context: WorkContext,
  place: string | undefined,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): DayMax[] {
  const bySeries = new Map<string, Candidate[]>();
  for (const block of blocks) {
    if (!BLOCK_KINDS[block.kind].working) continue;
    for (const line of block.lines) {
      if (line.purpose === 'warmup') continue;
      for (const candidate of findCandidates(block, line, athleteIndex, context, place)) {
        const found = bySeries.get(candidate.series.key);
        if (found) found.push(candidate);
        else bySeries.set(candidate.series.key, [candidate]);
      }
    }
  }
  return [...bySeries.values()].flatMap((candidates) => chooseMax(candidates, formula) ?? []);
}

function findCandidates(
  block: Block,
  line: MovementLine,
  athleteIndex: number,
  context: WorkContext,
  place: string | undefined,
): Candidate[] {
  const movement = context.findMovement(line.name.text);
  const cell = findCell(line, athleteIndex);
  if (!cell || workOf(movement) !== 'strength') return [];
  const lowerBound = BLOCK_KINDS[block.kind].endedByClock || block.alternating;
  return cell.sets.flatMap((group, index): Candidate[] => {
    const written = readReps(group.amount);
    const turns = takesTurns(group, movement);
    // Ten in turns are five of each side.
    const done = written && turns ? { ...written, reps: Math.floor(written.reps / 2) } : written;
    const load = done && !lacksLoad(line, group) ? weighForMax(group, movement, context) : undefined;
    if (!done || !load) return [];
    const ratings = readReserveOf(group, done.failed, line.purpose === 'test');
    if (!ratings) return [];
    return [
      {
        line,
        setNumber: index + 1,
        series: toSeries(line, cell.modifiers, group, movement, place),
        ...load,
        reps: done.reps,
        reserve: ratings.reserve,
        failed: done.failed,
        tier: ratings.reserve === undefined ? 3 : ratings.reserve <= 2 ? 1 : 2,
        atLeast:
          lowerBound || turns || done.partial || group.drops.length > 0 || ratings.reserve === undefined,
      },
    ];
  });
}

/** Two implements are held and each rep moves one: the sides take turns, unless the reps of each are written. */
function takesTurns({ amount, load }: SetGroup, movement: Movement | undefined): boolean {
  const perSide = amount?.kind === 'sides' || (amount !== undefined && 'perSide' in amount && amount.perSide);
  return !perSide && movement?.entry.repMoves === 'one' && load?.kind === 'mass' && load.implements === 2;
}

/** Reps per side of a set's first part; a failed attempt counts those made. */
export function readReps(
  amount: Amount | undefined,
): { reps: number; failed: boolean; partial: boolean } | undefined {
  switch (amount?.kind) {
    case 'quantity':
      return amount.quantity.measure === 'reps'
        ? { reps: amount.quantity.value, failed: false, partial: false }
        : undefined;
    case 'sides': {
      if (amount.left.measure !== 'reps') return undefined;
      return { reps: Math.min(amount.left.value, amount.right.value), failed: false, partial: false };
    }
    case 'attempt':
      return { reps: amount.made, failed: amount.made < amount.tried, partial: false };
    case 'cluster': {
      const first = amount.parts[0];
      return first?.measure === 'reps'
        ? { reps: first.value, failed: false, partial: amount.parts.length > 1 }
        : undefined;
    }
    default:
      return undefined;
  }
}

/**
 * A failed set has none in reserve, and neither has an unrated test, which is taken as far as it goes; undefined where a
 * rating is too far from failure to estimate from.
 */
function readReserveOf(
  group: SetGroup,
  failed: boolean,
  isTest: boolean,
): { reserve: number | undefined } | undefined {
  const rated = group.ratings.some(({ scale }) => scale === 'rpe' || scale === 'rir');
  if (failed || (isTest && !rated)) return { reserve: 0 };
  const reserve = readSetReserve(group.ratings);
  if (rated && (reserve === undefined || reserve > HIGHEST_USEFUL_RIR)) return undefined;
  return { reserve };
}

/** Kilograms of one rep: of one hand where two implements are held, with the body's share where it has one. */
function weighForMax(
  group: SetGroup,
  movement: Movement | undefined,
  context: WorkContext,
): { total: number; body: number } | undefined {
  const { load } = group;
  const share = findBodyShare({ movement, ...(context.sex && { sex: context.sex }) });
  const body =
    share === undefined || context.bodyMass === undefined ? undefined : (share * context.bodyMass) / 1000;
  if (share !== undefined && body === undefined) return undefined;
  if (load?.kind === 'mass' && !load.other && !load.high) {
    return { total: load.mass.grams / 1000 + (body ?? 0), body: body ?? 0 };
  }
  const alone = load === undefined || load.kind === 'bodyweight';
  if (!alone || body === undefined) return undefined;
  if (load && (load.pin !== undefined || load.band)) return undefined;
  const added = load?.mass ? ((load.sign === '-' ? -1 : 1) * load.mass.grams) / 1000 : 0;
  return body + added > 0 ? { total: body + added, body } : undefined;
}

/** The series a set belongs to. */
export function toSeries(
  line: MovementLine,
  cellModifiers: MovementLine['modifiers'],
  group: SetGroup,
  movement: Movement | undefined,
  place: string | undefined,
): Series {
  const name = movement?.name ?? line.name.text;
  const { load } = group;
  const marks = [...cellModifiers, ...line.modifiers].flatMap((modifier) => {
    if (modifier.kind === 'setting') return [modifier.text.toLowerCase()];
    return modifier.kind === 'tempo' ? [`tempo ${modifier.phases.join('-')}`] : [];
  });
  if (load?.kind === 'mass' && load.chain) marks.push(`${load.chain.grams} g of chain`);
  if (load?.kind === 'mass' && load.band) marks.push(`${load.band} band`);
  const perHand = load?.kind === 'mass' && load.implements === 2;
  if (perHand) marks.push('two implements');
  // Kilograms marked on a machine or stack mean something on that machine alone.
  if (implementOf(movement) === 'stack') marks.push(`at ${place ?? ''}`);
  return {
    key: [movement?.key ?? line.name.text.toLowerCase(), ...marks.sort()].join(' | '),
    movement: name,
    perHand,
  };
}

function chooseMax(candidates: readonly Candidate[], formula: OneRepMaxFormula): DayMax | undefined {
  const made = candidates.filter(({ reps }) => reps >= 1);
  const tier = Math.min(...made.map((candidate) => candidate.tier));
  const estimates = made
    .filter((candidate) => candidate.tier === tier)
    .flatMap((candidate) => {
      const estimate = estimateOneRepMax(candidate.total, candidate.reps + (candidate.reserve ?? 0), formula);
      return estimate ? [{ candidate, estimate }] : [];
    });
  const best = estimates.reduce<(typeof estimates)[number] | undefined>(
    (top, next) => (!top || next.estimate.value > top.estimate.value ? next : top),
    undefined,
  );
  if (!best) return undefined;
  const { candidate, estimate } = best;
  const heaviest = made.reduce((top, next) => (next.total > top.total ? next : top));
  const failedAbove = findFailedAbove(candidates);
  const capped = failedAbove !== undefined && estimate.value > failedAbove;
  const lifted = heaviest.total > (capped ? failedAbove : estimate.value);
  const value = lifted ? heaviest.total : capped ? failedAbove : estimate.value;
  const from = lifted ? heaviest : candidate;
  const isSingle = from.reps === 1 && from.reserve === 0;
  const body = candidate.body;
  const added = body > 0;
  const moved = (number: number): number => number - body;
  return {
    series: candidate.series,
    added,
    line: from.line,
    setNumber: from.setNumber,
    result: toResult({
      value: moved(value),
      unit: 'kg',
      method: lifted ? (isSingle ? 'true-single' : 'lifted-load') : estimate.method,
      // Lifted for reps or with some in reserve, a load is no max: the max is that at least.
      bound: from.atLeast || (lifted && !isSingle) ? 'at least' : 'exact',
      ...(estimate.spread &&
        !lifted &&
        !capped && { spread: { low: moved(estimate.spread.low), high: moved(estimate.spread.high) } }),
      inputs: describeInputs(from),
      omitted: capped
        ? [
            {
              what: `${estimate.value.toFixed(1)} kg by formula`,
              why: 'a load below it was tried and failed that day',
            },
          ]
        : [],
      ...(estimate.quality === 'rough' && { remark: 'rough, over 10 reps' }),
    }),
  };
}

/** The lightest load failed above a single that was made. */
function findFailedAbove(candidates: readonly Candidate[]): number | undefined {
  const single = Math.max(
    ...candidates.filter(({ reps, failed }) => reps === 1 && !failed).map(({ total }) => total),
    0,
  );
  if (single === 0) return undefined;
  const failed = candidates
    .filter((candidate) => candidate.failed && candidate.total > single)
    .map(({ total }) => total);
  return failed.length > 0 ? Math.min(...failed) : undefined;
}

function describeInputs({ total, body, reps, reserve, setNumber }: Candidate): Input[] {
  const inputs: Input[] = [
    { label: `set ${setNumber}: load`, value: total - body, unit: 'kg' },
    { label: 'reps a side', value: reps, unit: 'reps' },
  ];
  if (body > 0) inputs.push({ label: 'share of body mass', value: body, unit: 'kg' });
  if (reserve !== undefined) inputs.push({ label: 'in reserve', value: reserve, unit: 'RIR' });
  return inputs;
}
