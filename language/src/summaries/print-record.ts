import type { DayMax } from '../measures/day-max.ts';
import type { BestSet } from '../measures/records.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';

/** `5 @ 82.5 kg`, `5 @ 2x24 kg`, `8 @ bw`, `3 @ bw-10 kg`: as a set is written. */
export function printRecordSet({ reps, result, added, series }: BestSet, unit: MassUnit): string {
  const value = result.value!;
  const mass = `${printNumber(fromGrams(Math.abs(value) * 1000, unit), 2)} ${unit}`;
  if (!added) return `${reps} @ ${series.perHand ? '2x' : ''}${mass}`;
  return `${reps} @ bw${value === 0 ? '' : `${value < 0 ? '-' : '+'}${mass}`}`;
}

/** `record for 5 reps`, `record for 1, 3 and 5 reps`; undefined without one. */
export function printRecordReps(sets: readonly BestSet[]): string | undefined {
  const reps = [...new Set(sets.map((set) => set.reps))].sort((a, b) => a - b);
  const last = reps.at(-1);
  if (last === undefined) return undefined;
  const first = reps.slice(0, -1).join(', ');
  return `record for ${first === '' ? '' : `${first} and `}${last} rep${last === 1 ? '' : 's'}`;
}

/** `e1RM 102 kg`, `e1RM at least 28.5 kg a hand`, `e1RM bw+22 kg`. */
export function printRecordMax({ result, added, series }: DayMax, unit: MassUnit): string {
  const value = result.value!;
  const body = added ? `bw${value < 0 ? '-' : '+'}` : '';
  const mass = `${printNumber(fromGrams((added ? Math.abs(value) : value) * 1000, unit), Math.abs(value) < 30 ? 1 : 0)} ${unit}`;
  return `e1RM ${result.bound === 'at least' ? 'at least ' : ''}${body}${mass}${series.perHand ? ' a hand' : ''}`;
}
