/** What a changed session adds up to otherwise: both versions under the later one's definitions and weigh-ins. */
import { toDayNumber } from '../calendar/iso-date.ts';
import { computeBlockWork } from '../measures/block-work.ts';
import { type Result, toResult, type Unit } from '../measures/result.ts';
import { addWork, NO_WORK, volumeOf, type Work } from '../measures/work.ts';
import type { SessionEntry } from '../model/entry.ts';
import { unitFor } from '../summaries/session-lens.ts';
import { foldName } from '../text/names.ts';
import type { RevisionContext } from './compare-plan.ts';
import type { SessionEffect } from './revision.ts';

/** One for each athlete that both versions have, by position; none for a session without a date. */
export function listSessionEffects(
  context: RevisionContext,
  before: SessionEntry,
  after: SessionEntry,
): SessionEffect[] {
  const day = after.date?.date && toDayNumber(after.date.date);
  if (day === undefined) return [];
  const names = after.athletes.length > 0 ? after.athletes.map(({ text }) => text) : [''];
  const count = Math.min(names.length, Math.max(1, before.athletes.length));
  return names.slice(0, count).map((athlete, index): SessionEffect => {
    const key = context.works.practice.resolveAthlete(foldName(athlete));
    const [was, is] = ([before, after] as const).map((entry) => {
      const side = entry === before ? 'before' : 'after';
      return sumWork(context, entry, side, key, day, index);
    }) as [Work, Work];
    const volume = was.external + was.body + is.external + is.body > 0;
    return {
      athlete,
      unit: unitFor(context.works, key, context.options),
      sets: subtract('sets', was.sets, is.sets, [was, is]),
      ...(volume && { volume: subtract('kg', volumeOf(was), volumeOf(is), [was, is]) }),
    };
  });
}

function sumWork(
  { works, keys }: RevisionContext,
  { blocks }: SessionEntry,
  side: 'before' | 'after',
  athlete: string,
  day: number,
  index: number,
): Work {
  const sex = works.practice.findAthlete(athlete)?.entry.sex;
  const context = {
    findMovement: (name: string) => works.practice.findMovement(keys[side](name)),
    bodyMass: works.bodyMassOn(athlete, day)?.grams,
    ...(sex && { sex }),
  };
  return addWork([NO_WORK, ...blocks.map((block) => computeBlockWork(block, { index }, context).total)]);
}

function subtract(unit: Unit, before: number, after: number, works: readonly Work[]): Result {
  return toResult({
    value: after - before,
    unit,
    method: 'revision',
    inputs: [
      { label: 'before', value: before, unit },
      { label: 'after', value: after, unit },
    ],
    omitted: addWork(works).omitted,
  });
}
