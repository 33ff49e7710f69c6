import { type Adherence, computeAdherence } from '../measures/adherence.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import { computePercentOf } from '../measures/quotients.ts';
import { type Result, toResult } from '../measures/result.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { sum } from '../measures/statistics.ts';
import { compareDone, type DoneBlock, type DoneLine } from '../plans/done-work.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { printNumber } from '../units/number.ts';
import { count } from './words.ts';

/** More names than this are counted instead. */
const MOST_NAMED = 2;

/**
 * `done 18 of 20 planned sets, 96 % of the planned volume, Split Squat swapped`; undefined where the session names no day of a
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
  const volume = compareVolume(compareDone(works, record, formula) ?? []);
  const isOther = volume?.value !== undefined && Math.round(volume.value) !== 100;
  const text = [
    sets,
    ...(isOther ? [`${printNumber(volume.value)} % of the planned volume`] : []),
    ...listChanges(adherence),
  ].join(', ');
  return { text, results: [adherence.result, ...(volume ? [volume] : [])] };
}

/** Percent of the planned kilograms; within a plan's range all of it was done. */
function compareVolume(blocks: readonly DoneBlock[]): Result | undefined {
  const lines = blocks.flatMap((block) => block.lines).filter(({ isTest }) => !isTest);
  const weighed = lines.filter(({ asked }) => asked.high.kilograms !== undefined);
  const addUp = (read: (line: DoneLine) => number | undefined): number | undefined => {
    const known = weighed.flatMap((line) => read(line) ?? []);
    return known.length === weighed.length ? sum(known) : undefined;
  };
  const low = addUp(({ asked }) => asked.low.kilograms);
  const high = addUp(({ asked }) => asked.high.kilograms);
  const done = addUp((line) => line.done.kilograms);
  if (low === undefined || high === undefined || done === undefined || high === 0) return undefined;
  const planned = Math.min(high, Math.max(low, done));
  return toResult({
    value: computePercentOf(done, planned),
    unit: '%',
    method: 'adherence',
    inputs: [
      { label: 'done', value: done, unit: 'kg' },
      { label: 'planned', value: planned, unit: 'kg' },
    ],
    omitted: lines
      .filter((line) => !weighed.includes(line))
      .map(({ name: what }) => ({ what, why: 'no kilograms are planned, or they are not known' })),
    remark: 'kilograms in place of sets',
  });
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
