import type { Block, MovementLine } from '../model/entry.ts';
import { printNumber } from '../units/number.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import type { WorkContext } from './block-work.ts';
import { type Candidate, findCandidates, type Series } from './max-candidates.ts';
import {
  DEFAULT_FORMULA,
  estimateOneRepMax,
  type OneRepMaxEstimate,
  type OneRepMaxFormula,
} from './one-rep-max.ts';
import { type Input, type Omission, type Result, toResult } from './result.ts';

/** The estimated max of one series on one day. */
export interface DayMax {
  readonly series: Series;
  /** Kilograms; of the added load where body weight is the rest (`added`). */
  readonly result: Result;
  readonly added: boolean;
  readonly line: MovementLine;
  /** Which set of its line gave it, from 1; of several alike the first. */
  readonly setNumber: number;
  /** The ends of its range, in the result's kilograms, that loads lifted or failed that day set, and no formula. */
  readonly heldAt: { readonly low?: number; readonly high?: number };
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
  gives?: (line: MovementLine) => boolean,
): DayMax[] {
  const bySeries = new Map<string, readonly Candidate[]>();
  for (const block of blocks) {
    if (!BLOCK_KINDS[block.kind].working) continue;
    for (const line of block.lines) {
      if (line.purpose === 'warmup') continue;
      const candidates = findCandidates(block, line, athleteIndex, context, place);
      for (const ofSeries of splitBySeries(candidates)) {
        const { key } = ofSeries[0]!.series;
        bySeries.set(key, bySeries.get(key)?.concat(ofSeries) ?? ofSeries);
      }
    }
  }
  return [...bySeries.values()].flatMap(
    (candidates) => (gives ? chooseMax(candidates, formula, gives) : chooseOnce(candidates, formula)) ?? [],
  );
}

/** Most lines are of one series: then that is the very list. */
function splitBySeries(candidates: readonly Candidate[]): readonly (readonly Candidate[])[] {
  const keys = new Set(candidates.map(({ series }) => series.key));
  if (keys.size < 2) return candidates.length > 0 ? [candidates] : [];
  return [...keys].map((key) => candidates.filter(({ series }) => series.key === key));
}

const chosen = new WeakMap<readonly Candidate[], Map<OneRepMaxFormula, DayMax | undefined>>();

/** A series that a session has one line of has the same max wherever that very line stands. */
function chooseOnce(candidates: readonly Candidate[], formula: OneRepMaxFormula): DayMax | undefined {
  const byFormula = chosen.get(candidates) ?? new Map<OneRepMaxFormula, DayMax | undefined>();
  chosen.set(candidates, byFormula);
  if (!byFormula.has(formula))
    byFormula.set(
      formula,
      chooseMax(candidates, formula, () => true),
    );
  return byFormula.get(formula);
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
