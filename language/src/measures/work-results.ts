import { type Result, toResult } from './result.ts';
import type { BodyMass } from './session-work.ts';
import { volumeOf, type Work } from './work.ts';

/** The sums of some work, each as a number that can explain itself; sums of nothing are left out. */
export function toWorkResults(work: Work, bodyMass?: BodyMass & { readonly age: number }): Result[] {
  const { omitted } = work;
  const bound = work.atLeast ? ('at least' as const) : ('exact' as const);
  const results: Result[] = [toResult({ value: work.sets, unit: 'sets', method: 'sets', omitted: [] })];
  if (work.hardSets > 0) results.push(toResult({ value: work.hardSets, unit: 'sets', method: 'hard-sets' }));
  if (work.reps > 0) results.push(toResult({ value: work.reps, unit: 'reps', method: 'reps', bound }));
  if (volumeOf(work) > 0) results.push(toVolumeResult(work, bodyMass));
  if (work.carried > 0) {
    results.push(
      toResult({ value: work.carried / 1000, unit: 'kg·m', method: 'load-distance', bound, omitted }),
    );
  }
  const sums = [
    ['seconds', work.seconds, 's'],
    ['contacts', work.contacts, 'contacts'],
    ['metres', work.metres, 'm'],
    ['calories', work.calories, 'cal'],
  ] as const;
  for (const [method, value, unit] of sums)
    if (value > 0) results.push(toResult({ value, unit, method, bound }));
  return results;
}

/** Kilograms lifted, with the share of body mass named apart. */
export function toVolumeResult(work: Work, bodyMass?: BodyMass & { readonly age: number }): Result {
  const body = work.body / 1000;
  return toResult({
    value: volumeOf(work),
    unit: 'kg',
    method: 'volume-load',
    bound: work.atLeast ? 'at least' : 'exact',
    inputs: [
      { label: 'external load', value: work.external / 1000, unit: 'kg' },
      ...(body > 0 ? [{ label: 'share of body mass', value: body, unit: 'kg' as const }] : []),
      ...(body > 0 && bodyMass
        ? [
            { label: 'body mass', value: bodyMass.grams / 1000, unit: 'kg' as const },
            { label: 'weighed before', value: bodyMass.age, unit: 'days' as const },
          ]
        : []),
    ],
    omitted: work.omitted,
  });
}
