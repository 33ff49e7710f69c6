/** A week's sessions against the plan that they name. */
import type { PlanDay } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import {
  type Adherence,
  compareWithPlan,
  findSlot,
  type PlanSlot,
  planSlot,
  toAdherence,
} from './adherence.ts';
import type { Omission, Result } from './result.ts';
import type { SessionWorks } from './session-work.ts';
import { sum } from './statistics.ts';
import { computeWeekWork } from './week-work.ts';

export interface WeekAdherence {
  readonly result: Result;
  readonly days: readonly { readonly day: PlanDay; readonly adherence: Adherence }[];
  /** Days of the plan's week without a session once the week is over; a plan whose days take turns has none. */
  readonly notDone: readonly PlanDay[];
}

/** A day done this long before or after its week was moved and not left out (chosen here). */
const NEAR_DAYS = 14;

/**
 * An athlete's ISO week up to and including a day. Sessions of the same plan day add up. Once the week is over, a day
 * without a session counts as not done, unless it was done up to two weeks before or after.
 */
export function computeWeekAdherence(
  works: SessionWorks,
  athlete: string,
  startDay: number,
  untilDay: number,
): WeekAdherence | undefined {
  const { practice } = works;
  const groups: { slot: PlanSlot; records: SessionRecord[] }[] = [];
  for (const { record } of computeWeekWork(practice, works, athlete, startDay, untilDay).sessions) {
    const slot = findSlot(practice, record.entry);
    const known = slot && groups.find((group) => isSame(group.slot, slot));
    if (known) known.records.push(record);
    else if (slot) groups.push({ slot, records: [record] });
  }
  if (groups.length === 0) return undefined;
  const days = groups.map(({ slot, records }) => ({
    day: slot.day,
    adherence: compareWithPlan(works, slot, records),
  }));
  const isOver = untilDay >= startDay + 6;
  const slots = groups.map(({ slot }) => slot);
  const missing = isOver ? listMissing(practice, athlete, startDay, slots) : [];
  const counts = [
    ...days.flatMap(({ adherence }) => adherence.movements),
    ...missing.map((slot) => ({
      done: 0,
      planned: sum(planSlot(practice, slot).lines.map(({ sets }) => sets ?? 0)),
    })),
  ];
  const omitted = [
    ...days.flatMap(({ adherence }) => adherence.result.omitted),
    ...missing.map(({ day }): Omission => ({ what: printDay(day), why: 'not done' })),
  ];
  const result = toAdherence(counts, omitted);
  const isLower = days.some(({ adherence }) => adherence.result.bound === 'at least');
  return {
    result: isLower ? { ...result, bound: 'at least' } : result,
    days,
    notDone: missing.map(({ day }) => day),
  };
}

function isSame(one: PlanSlot, other: PlanSlot): boolean {
  return one.plan.key === other.plan.key && one.week === other.week && one.day.number === other.day.number;
}

/** Days of the plan's weeks at hand that were not done, neither then nor near it. */
function listMissing(
  practice: Practice,
  athlete: string,
  startDay: number,
  slots: readonly PlanSlot[],
): PlanSlot[] {
  const near = practice
    .sessionsOf(athlete)
    .filter(({ day }) => day >= startDay - NEAR_DAYS && day <= startDay + 6 + NEAR_DAYS)
    .map(({ entry }) => findSlot(practice, entry))
    .filter((slot) => slot !== undefined);
  const weeks = slots.filter(
    ({ plan, week }, index) => slots.findIndex((slot) => slot.plan === plan && slot.week === week) === index,
  );
  return weeks
    .filter(({ plan }) => plan.entry.alternate === undefined)
    .flatMap(({ plan, week }) => plan.entry.days.map((day) => ({ plan, week, day })))
    .filter((slot) => !near.some((done) => isSame(done, slot)));
}

function printDay({ number, name }: PlanDay): string {
  return name ? `day ${number} ${name}` : `day ${number}`;
}
