import type { Result } from '../measures/result.ts';
import type { PlanTotals } from '../plans/plan-totals.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber, printRange } from '../units/number.ts';

const MUSCLES_SHOWN = 2;

/** `at least 1 130 to 1 135 kg incl. body`. */
export function printVolume({ volume, hasBody }: PlanTotals, unit: MassUnit): string | undefined {
  if (volume?.value === undefined) return undefined;
  const shown = (kilograms: number): number => fromGrams(kilograms * 1000, unit);
  const { low, high } = volume.spread ?? { low: volume.value, high: volume.value };
  const lead = volume.bound === 'at least' ? 'at least ' : '';
  return `${lead}${printRange(shown(low), shown(high))} ${unit}${hasBody ? ' incl. body' : ''}`;
}

/** Week by week, in one unit: the middle of ranges, the lower ends where something is not known. */
export function printVolumes(totals: readonly PlanTotals[], unit: MassUnit): string | undefined {
  const volumes = totals.map(({ volume }) => volume);
  if (!volumes.every((volume) => volume?.value !== undefined)) return undefined;
  const isAtLeast = volumes.some((volume) => volume!.bound === 'at least');
  const isRange = volumes.some((volume) => volume!.spread);
  const list = volumes.map((volume) => {
    const kilograms = isAtLeast ? (volume!.spread?.low ?? volume!.value!) : volume!.value!;
    return printNumber(fromGrams(kilograms * 1000, unit));
  });
  const lead = isAtLeast ? 'at least ' : isRange ? 'about ' : '';
  const hasBody = totals.some((total) => total.hasBody);
  return `${lead}${list.join(', ')} ${unit}${hasBody ? ' incl. body' : ''}`;
}

export function printMuscles({ muscles }: PlanTotals, shown = MUSCLES_SHOWN): string | undefined {
  if (muscles.length === 0) return undefined;
  const named = muscles
    .slice(0, shown)
    .map(({ name, result }) => `${name} ${printNumber(result.value ?? 0, 1)}`);
  return named.join(', ');
}

export function listResults({ volume, intensity, time, muscles }: PlanTotals): Result[] {
  return [volume, intensity, time, ...muscles.slice(0, MUSCLES_SHOWN).map(({ result }) => result)].filter(
    (result) => result !== undefined,
  );
}
