/** What was done of a day or a week beside what was planned: reps, kilograms, and how heavy the loads were. */
import { computePercentOf } from '../measures/quotients.ts';
import { type Input, type Omission, type Result, toResult } from '../measures/result.ts';
import { sum } from '../measures/statistics.ts';
import type { DoneBlock, DoneLine, Sums } from '../plans/done-work.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber, printRange } from '../units/number.ts';
import { printChange } from './words.ts';

/** Within a plan's range all of it was done. Nothing where no line asks for such. */
export interface DoneTotals {
  readonly reps?: DoneTotal;
  /** Kilograms, share of body mass included. */
  readonly volume?: DoneTotal;
  /** Percent of the load that the plan asks for, over the reps that were done. */
  readonly load?: Result;
}

export interface DoneTotal {
  readonly done: number;
  readonly low: number;
  readonly high: number;
  readonly isAtLeast: boolean;
  /** Percent of what was planned. */
  readonly result: Result;
}

/** What is held or carried has none. */
export function readReps({ sets, reps }: Sums): number | undefined {
  return reps > 0 || sets === 0 ? reps : undefined;
}

/** A max is found by as many attempts as it takes: tests are left out. */
export function computeDoneTotals(blocks: readonly DoneBlock[]): DoneTotals {
  const lines = blocks.flatMap((block) => block.lines).filter(({ isTest }) => !isTest);
  const counted = lines.filter(({ asked }) => asked.high.reps > 0);
  const reps = addUp(counted, ({ reps: number }) => number, 'reps', []);
  const weighed = lines.filter(({ asked }) => asked.high.kilograms !== undefined);
  const known = weighed.filter(({ done }) => done.kilograms !== undefined);
  const omitted = [
    ...name(
      lines.filter((line) => !weighed.includes(line)),
      'no kilograms are planned, or they are not known',
    ),
    ...name(
      weighed.filter((line) => !known.includes(line)),
      'its kilograms are not known',
    ),
  ];
  const volume = addUp(known, ({ kilograms }) => kilograms ?? 0, 'kg', omitted);
  const load = compareLoads(known, omitted);
  return { ...(reps && { reps }), ...(volume && { volume }), ...(load && { load }) };
}

function name(lines: readonly DoneLine[], why: string): Omission[] {
  return lines.map(({ name: what }) => ({ what, why }));
}

function addUp(
  lines: readonly DoneLine[],
  read: (sums: Sums) => number,
  unit: 'reps' | 'kg',
  omitted: readonly Omission[],
): DoneTotal | undefined {
  const low = sum(lines.map(({ asked }) => read(asked.low)));
  const high = sum(lines.map(({ asked }) => read(asked.high)));
  const done = sum(lines.map((line) => read(line.done)));
  if (high === 0) return undefined;
  const isAtLeast = unit === 'reps' && lines.some((line) => line.done.isAtLeast);
  const inputs: Input[] = [
    { label: 'done', value: done, unit },
    { label: 'planned', value: clamp(done, low, high), unit },
  ];
  const remark = unit === 'reps' ? 'reps in place of sets' : 'kilograms in place of sets';
  return { done, low, high, isAtLeast, result: toPercent(inputs, omitted, remark, isAtLeast) };
}

/** Line by line, so that a heavy line which was left out does not make the others look light. */
function compareLoads(lines: readonly DoneLine[], omitted: readonly Omission[]): Result | undefined {
  const same = lines.filter(
    ({ asked, done, instead }) =>
      instead.length === 0 && asked.low.reps > 0 && done.reps > 0 && (asked.high.kilograms ?? 0) > 0,
  );
  if (same.length === 0) return undefined;
  const ends = same.map(({ asked: { low, high }, done }) => {
    const each = [low, high].map(({ kilograms, reps }) => ((kilograms ?? 0) / reps) * done.reps);
    return { low: Math.min(...each), high: Math.max(...each) };
  });
  const done = sum(same.map((line) => line.done.kilograms ?? 0));
  const planned = clamp(done, sum(ends.map(({ low }) => low)), sum(ends.map(({ high }) => high)));
  const inputs: Input[] = [
    { label: 'done', value: done, unit: 'kg' },
    { label: 'the same reps at the planned loads', value: planned, unit: 'kg' },
  ];
  return toPercent(inputs, omitted, 'kilograms a rep in place of sets', false);
}

function toPercent(
  inputs: readonly Input[],
  omitted: readonly Omission[],
  remark: string,
  isAtLeast: boolean,
): Result {
  const [done, planned] = inputs;
  return toResult({
    value: computePercentOf(done!.value, planned!.value),
    unit: '%',
    method: 'adherence',
    bound: isAtLeast ? 'at least' : 'exact',
    inputs,
    omitted,
    remark,
  });
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

export function listDoneResults({ reps, volume, load }: DoneTotals): Result[] {
  return [reps?.result, volume?.result, load].filter((result) => result !== undefined);
}

/** `110 of 120 reps`, `4 810 of 5 020 kg`, `loads 2 % under the plan`. */
export function printDoneTotals({ reps, volume, load }: DoneTotals, unit: MassUnit): string[] {
  const toUnit = (kilograms: number): number => fromGrams(kilograms * 1000, unit);
  return [
    reps && printTotal(reps, 'reps', (value) => value),
    volume && printTotal(volume, unit, toUnit),
    load?.value === undefined ? undefined : printLoads(load.value),
  ].filter((text) => text !== undefined);
}

function printTotal(
  { done, low, high, isAtLeast }: DoneTotal,
  unit: string,
  show: (value: number) => number,
): string {
  const lead = isAtLeast ? 'at least ' : '';
  return `${lead}${printNumber(show(done))} of ${printRange(show(low), show(high))} ${unit}`;
}

function printLoads(percent: number): string {
  const isAsPlanned = Math.round(percent) === 100;
  return isAsPlanned ? 'loads as planned' : `loads ${printChange(percent - 100)} the plan`;
}
