import type { Block, MovementLine } from '../model/entry.ts';
import type { Amount, SetGroup } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { implementOf, workOf } from '../practice/movement.ts';
import { printNumber } from '../units/number.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import type { WorkContext } from './block-work.ts';
import { HIGHEST_USEFUL_RIR } from './exertion.ts';
import { findCell, lacksLoad } from './expand-sets.ts';
import {
  DEFAULT_FORMULA,
  estimateOneRepMax,
  type OneRepMaxEstimate,
  type OneRepMaxFormula,
} from './one-rep-max.ts';
import { type Input, type Omission, type Result, toResult } from './result.ts';
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
  /** The ends of its range, in the result's kilograms, that loads lifted or failed that day set, and no formula. */
  readonly heldAt: { readonly low?: number; readonly high?: number };
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
  /** Not lifted even once, though no clock and no other movement had tired the athlete out. */
  readonly missed: boolean;
  /** 4: rated too far from failure to estimate from; that it was lifted still counts. */
  readonly tier: 1 | 2 | 3 | 4;
  readonly atLeast: boolean;
}

/**
 * The day's estimated max of each series: the highest among sets with a rep made at 0-2 reps in reserve (or failed
 * after one); else at 3-4; else the highest unrated, a lower bound. What was lifted and what failed that day goes before
 * any formula: neither the max nor its range is below a load lifted, or above one that could not be lifted once. Only
 * the lines that `gives` names give an estimate; all of them are evidence.
 */
export function estimateDayMaxes(
  blocks: readonly Block[],
  athleteIndex: number,
  context: WorkContext,
  place: string | undefined,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
  gives: (line: MovementLine) => boolean = () => true,
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
  return [...bySeries.values()].flatMap((candidates) => chooseMax(candidates, formula, gives) ?? []);
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
    const { reserve, tier } = readReserveOf(group, done.failed, line.purpose === 'test');
    return [
      {
        line,
        setNumber: index + 1,
        series: toSeries(line, cell.modifiers, group, movement, place),
        ...load,
        reps: done.reps,
        reserve,
        missed: done.failed && done.reps === 0 && !lowerBound,
        tier,
        atLeast: lowerBound || turns || done.partial || group.drops.length > 0 || reserve === undefined,
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
 * A failed set has none in reserve, and neither has an unrated test, which is taken as far as it goes. Of a rating too
 * far from failure to estimate from none is known.
 */
function readReserveOf(
  group: SetGroup,
  failed: boolean,
  isTest: boolean,
): { reserve: number | undefined; tier: Candidate['tier'] } {
  const rated = group.ratings.some(({ scale }) => scale === 'rpe' || scale === 'rir');
  if (failed || (isTest && !rated)) return { reserve: 0, tier: 1 };
  const reserve = readSetReserve(group.ratings);
  if (!rated) return { reserve: undefined, tier: 3 };
  if (reserve === undefined || reserve > HIGHEST_USEFUL_RIR) return { reserve, tier: 4 };
  return { reserve, tier: reserve <= 2 ? 1 : 2 };
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

interface Estimated {
  readonly candidate: Candidate;
  readonly estimate: OneRepMaxEstimate;
}

/** Kilograms moved. */
interface Evidence {
  readonly lifted: number;
  readonly failed: number | undefined;
  readonly isTested: boolean;
}

function chooseMax(
  candidates: readonly Candidate[],
  formula: OneRepMaxFormula,
  gives: (line: MovementLine) => boolean,
): DayMax | undefined {
  const made = candidates.filter(({ reps }) => reps >= 1);
  const estimates = made
    .filter(({ tier, line }) => tier < 4 && gives(line))
    .flatMap((candidate): Estimated[] => {
      const estimate = estimateOneRepMax(candidate.total, candidate.reps + (candidate.reserve ?? 0), formula);
      return estimate ? [{ candidate, estimate }] : [];
    });
  if (estimates.length === 0) return undefined;
  const tier = Math.min(...estimates.map(({ candidate }) => candidate.tier));
  const best = estimates
    .filter(({ candidate }) => candidate.tier === tier)
    .reduce((top, next) => (isHigher(next, top) ? next : top));
  const heaviest = made.reduce((top, next) => (isHeavier(next, top) ? next : top));
  return decide(best, heaviest, findFailedAbove(candidates, heaviest.total));
}

/** Of the same number one that is no lower bound says more, wherever in the session it stands. */
function isHigher(a: Estimated, b: Estimated): boolean {
  if (a.estimate.value !== b.estimate.value) return a.estimate.value > b.estimate.value;
  return b.candidate.atLeast && !a.candidate.atLeast;
}

/**
 * What was lifted and failed goes before what a formula says. A lower bound above a failed load is none: then what was
 * lifted is the bound. An estimate above it comes down to it; but where the heaviest single was taken to failure and a
 * heavier load failed after all, that single is the max, as in any test, and no formula has anything to add.
 */
function decide(
  { candidate, estimate }: Estimated,
  heaviest: Candidate,
  failedAbove: number | undefined,
): DayMax {
  const isTested = failedAbove !== undefined && isTrueSingle(heaviest) && !heaviest.atLeast;
  const isOver = failedAbove !== undefined && estimate.value > failedAbove;
  const lifted = heaviest.total > estimate.value || isTested || (isOver && candidate.atLeast);
  const from = lifted ? heaviest : candidate;
  const value = lifted ? heaviest.total : isOver ? failedAbove : estimate.value;
  // A load lifted for reps or with some in reserve is no max: the max is that at least.
  const atLeast = from.atLeast || (lifted && !isTrueSingle(from));
  const { body } = candidate;
  const moved = (number: number): number => number - body;
  const spread = lifted ? undefined : estimate.spread;
  const low = spread && (isOver || spread.low < heaviest.total) ? heaviest.total : undefined;
  const high = spread && failedAbove !== undefined && spread.high > failedAbove ? failedAbove : undefined;
  return {
    series: candidate.series,
    added: body > 0,
    line: from.line,
    setNumber: from.setNumber,
    heldAt: { ...(low && { low: moved(low) }), ...(high && { high: moved(high) }) },
    result: toResult({
      value: moved(value),
      unit: 'kg',
      method: lifted
        ? isTrueSingle(from)
          ? 'true-single'
          : 'lifted-load'
        : isOver
          ? 'failed-load'
          : estimate.method,
      bound: atLeast ? 'at least' : 'exact',
      ...(spread && { spread: { low: moved(low ?? spread.low), high: moved(high ?? spread.high) } }),
      inputs: [
        ...describeInputs(from),
        ...(low ? [{ label: 'lifted that day', value: moved(low), unit: 'kg' as const }] : []),
        ...(failedAbove !== undefined && (isOver || high || isTested)
          ? [{ label: 'failed that day', value: moved(failedAbove), unit: 'kg' as const }]
          : []),
      ],
      omitted: listContradicted(estimate, { lifted: heaviest.total, failed: failedAbove, isTested }, moved),
      ...(estimate.quality === 'rough' && !lifted && { remark: 'rough, over 10 reps' }),
    }),
  };
}

/** Of equal loads the one that says more: a single to failure is no max where the same load went up more often. */
function isHeavier(next: Candidate, top: Candidate): boolean {
  const able = ({ reps, reserve }: Candidate): number => reps + (reserve ?? 0);
  if (next.total !== top.total) return next.total > top.total;
  return able(next) === able(top) ? top.atLeast && !next.atLeast : able(next) > able(top);
}

function isTrueSingle({ reps, reserve }: Candidate): boolean {
  return reps === 1 && reserve === 0;
}

/** What the formulas say against what was lifted or failed that day. */
function listContradicted(
  { value, spread }: OneRepMaxEstimate,
  { lifted, failed, isTested }: Evidence,
  moved: (number: number) => number,
): Omission[] {
  const print = (number: number): string => `${printNumber(moved(number), 2)} kg`;
  const numbers = [...new Set([spread?.low, value, spread?.high])].filter((number) => number !== undefined);
  return numbers.flatMap((number): Omission[] => {
    const what = `${printNumber(moved(number), 1)} kg by formula`;
    if (number < lifted) return [{ what, why: `${print(lifted)} was lifted that day` }];
    if (failed === undefined) return [];
    if (number > failed) return [{ what, why: `${print(failed)} was tried and failed that day` }];
    return isTested && number > lifted
      ? [
          {
            what,
            why: `a single at ${print(lifted)} was taken to failure that day and ${print(failed)} failed`,
          },
        ]
      : [];
  });
}

/**
 * The lightest load above all that was lifted which failed at its first rep. A set that failed later moved its load at
 * least once, and one that a clock or a circuit had tired out says nothing of the max.
 */
function findFailedAbove(candidates: readonly Candidate[], lifted: number): number | undefined {
  const failed = candidates.filter(({ missed, total }) => missed && total > lifted);
  return failed.length > 0 ? Math.min(...failed.map(({ total }) => total)) : undefined;
}

function describeInputs({ total, body, reps, reserve, setNumber }: Candidate): Input[] {
  const inputs: Input[] = [
    { label: `set ${setNumber}: load`, value: total - body, unit: 'kg' },
    { label: 'reps a side', value: reps, unit: 'reps' },
  ];
  if (body > 0) inputs.push({ label: 'share of body mass', value: body, unit: 'kg', by: 'body-share' });
  if (reserve !== undefined)
    inputs.push({ label: 'in reserve', value: reserve, unit: 'RIR', by: 'reps-in-reserve' });
  return inputs;
}
