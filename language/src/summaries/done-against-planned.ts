import { type Adherence, computeAdherence } from '../measures/adherence.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { Result } from '../measures/result.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { sum } from '../measures/statistics.ts';
import { compareDone } from '../plans/done-work.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { computeDoneTotals } from './done-totals.ts';
import { count, printChange } from './words.ts';

/** More names than this are counted instead. */
const MOST_NAMED = 2;

/**
 * `done 18 of 20 planned sets, 4 % under the planned volume, Split Squat swapped`; undefined where the session names no day of a
 * plan with sets. Kilograms are named where they are known on both sides and differ.
 */
export function describeDone(
  works: SessionWorks,
  record: SessionRecord,
  formula: OneRepMaxFormula,
): { readonly text: string; readonly results: readonly Result[] } | undefined {
  const adherence = computeAdherence(works, record);
  const planned = sum(adherence?.movements.map((movement) => movement.planned) ?? []);
  if (!adherence || planned === 0) return undefined;
  const done = sum(adherence.movements.map((movement) => movement.done));
  const sets = `done ${done} of ${count(planned, 'planned set')}`;
  if (record.entry.missed) return { text: sets, results: [adherence.result] };
  const { volume, reps, load } = computeDoneTotals(compareDone(works, record, formula) ?? []);
  const percent = volume?.result.value;
  const isOther = percent !== undefined && Math.round(percent) !== 100;
  const text = [
    sets,
    ...(isOther ? [`${printChange(percent - 100)} the planned volume`] : []),
    ...listChanges(adherence),
  ].join(', ');
  const results = [adherence.result, volume?.result, reps?.result, load].filter(
    (result) => result !== undefined,
  );
  return { text, results };
}

function listChanges({ movements, swapped, added }: Adherence): string[] {
  const extra = sum(movements.map((movement) => movement.extra)) + sum(added.map(({ sets }) => sets));
  const parts = [
    name(
      swapped.map((exchange) => exchange.planned),
      'swapped',
    ),
    name(
      movements.filter(({ done }) => done === 0).map((movement) => movement.name),
      'left out',
    ),
    extra > 0 ? `${count(extra, 'set')} more` : undefined,
  ];
  return parts.filter((part) => part !== undefined);
}

function name(names: readonly string[], what: string): string | undefined {
  const different = [...new Set(names)];
  if (different.length === 0) return undefined;
  const who = different.length > MOST_NAMED ? count(different.length, 'movement') : different.join(' and ');
  return `${who} ${what}`;
}
