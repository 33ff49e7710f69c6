/** The max of a movement that is valid on a day, in a hover's words: what it is, and the loads that go with it. */

import { fromDayNumber } from '../calendar/iso-date.ts';
import {
  computeReynoldsShare,
  estimateByReynolds,
  findReynoldsLift,
  listLoadsForReps,
} from '../measures/loads-for-reps.ts';
import type { Series } from '../measures/max-candidates.ts';
import type { MaxKind, ValidMax } from '../measures/max-history.ts';
import { findMaxOn } from '../measures/maxes.ts';
import { findBests, type SeriesBests } from '../measures/records.ts';
import type { Result } from '../measures/result.ts';
import { findSeriesKey } from '../measures/series-sets.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { implementOf } from '../practice/movement.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import type { LensOptions } from './lens.ts';
import { printRecordSet } from './print-record.ts';
import { unitFor } from './session-lens.ts';

export interface MaxFact {
  readonly text: string;
  readonly results: readonly Result[];
}

/** Rep counts that coaches plan by; the numbers have all of the chart. */
const REPS_SHOWN: ReadonlySet<number> = new Set([2, 3, 5, 8, 10, 12]);
const SHARES_SHOWN = [3, 5, 8, 10];

/** `Best sets: 1 @ 105 kg, …`, `Max 120 kg (tested on 2026-03-02)`, and the loads that go with it; one fact a line. */
export function describeMovementMax(
  works: SessionWorks,
  athlete: string,
  movement: string,
  day: number,
  options: LensOptions,
  place?: string,
): MaxFact[] {
  const unit = unitFor(works, athlete, options);
  const { formula } = options;
  const series = findMachineSeries(works, movement, place);
  const max = findMaxOn(works, athlete, movement, day, { formula, ...(series && { series }) });
  const key = series?.key ?? findSeriesKey(works.practice, movement);
  const bests = findBests(works, athlete, day, formula).find((found) => found.series.key === key);
  const facts = [
    bests && describeBests(bests, unit),
    max && describeMax(max, unit),
    max && describeLoads(max, unit),
    ...describeReynolds(key, bests, unit),
  ];
  return facts.filter((fact) => fact !== undefined);
}

/** Kilograms marked on a machine mean something on that machine alone. */
function findMachineSeries(works: SessionWorks, name: string, place: string | undefined): Series | undefined {
  const movement = works.practice.findMovement(name);
  if (!movement || implementOf(movement) !== 'stack') return undefined;
  return { key: `${movement.key} | at ${place ?? ''}`, movement: movement.name, perHand: false };
}

/** `Best sets: 1 @ 105 kg, 3 @ 100 kg, 10 @ 70 kg`: of each rep count the heaviest of as many reps or more. */
function describeBests({ byReps }: SeriesBests, unit: MassUnit): MaxFact | undefined {
  const known = [...new Set(byReps.filter((set) => set !== undefined))];
  // With as much for more reps, the fewer say nothing more.
  const sets = known.filter(({ result }, index) => result.value !== known[index + 1]?.result.value);
  if (sets.length === 0) return undefined;
  const results = sets.map(({ result }) => result);
  return { text: `Best sets: ${sets.map((set) => printRecordSet(set, unit)).join(', ')}`, results };
}

const KINDS: Readonly<Record<MaxKind, string>> = {
  stated: 'stated',
  tested: 'tested',
  retested: 'tested twice',
  'estimated from test': 'estimated from a test',
  estimated: 'estimated',
};

function describeMax({ result, kind, day, added, perHand }: ValidMax, unit: MassUnit): MaxFact {
  const value = result.value!;
  const lead = result.method === 'failed-load' ? 'under ' : result.bound === 'at least' ? 'at least ' : '';
  const body = added ? `bw${value < 0 ? '-' : '+'}` : '';
  const hand = perHand ? ' a hand' : '';
  const mass = printMass(added ? Math.abs(value) : value, unit);
  return {
    text: `Max ${lead}${body}${mass} ${unit}${hand} (${KINDS[kind]} on ${fromDayNumber(day)})`,
    results: [result],
  };
}

function describeLoads(max: ValidMax, unit: MassUnit): MaxFact | undefined {
  const loads = listLoadsForReps(max);
  if (loads.length === 0) return undefined;
  const shown = loads.filter(({ reps }) => REPS_SHOWN.has(reps));
  const texts = shown.map(({ reps, result }) => `${reps} reps ${printMass(result.value!, unit)}`);
  return {
    text: `By the NSCA chart: ${texts.join(', ')} ${unit}`,
    results: loads.map(({ result }) => result),
  };
}

/** The two machine lifts that Reynolds and others tested have equations of their own. */
function describeReynolds(
  key: string,
  bests: SeriesBests | undefined,
  unit: MassUnit,
): (MaxFact | undefined)[] {
  const lift = findReynoldsLift(key.split(' | ')[0]!);
  if (!lift) return [];
  const max = estimateByReynolds(lift, bests?.byReps[5]);
  const shares = SHARES_SHOWN.map((reps) => ({ reps, result: computeReynoldsShare(lift, reps) }));
  return [
    max && {
      text: `By Reynolds et al. (2006): max at least ${printMass(max.value!, unit)} ${unit} (${printMass(max.spread!.low, unit)} to ${printMass(max.spread!.high, unit)}) from 5 reps`,
      results: [max],
    },
    {
      text: `By Reynolds et al. (2006, from memory): ${shares.map(({ reps, result }) => `${reps} reps ${printNumber(result.value!)} %`).join(', ')} of the max`,
      results: shares.map(({ result }) => result),
    },
  ];
}

function printMass(kilograms: number, unit: MassUnit): string {
  return printNumber(fromGrams(kilograms * 1000, unit), 1);
}
