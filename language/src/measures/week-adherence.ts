/** A week's sessions against the plan that they name. */
import type { PlanDay } from '../model/entry.ts';
import { listTurns } from '../plans/plan-calendar.ts';
import type { Plan, SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import {
  type Adherence,
  compareWithPlan,
  findSlot,
  findSlotOf,
  isSameSlot,
  type PlanSlot,
  planSlot,
  toAdherence,
} from './adherence.ts';
import type { Omission, Result } from './result.ts';
import type { SessionWorks } from './session-work.ts';
import { sum } from './statistics.ts';
import { computeWeekWork } from './week-work.ts';

/** A plan's day and what was done of it: no session where it was left out. */
export interface DoneSlot {
  readonly slot: PlanSlot;
  readonly records: readonly SessionRecord[];
}

export interface WeekAdherence {
  readonly result: Result;
  readonly days: readonly { readonly day: PlanDay; readonly adherence: Adherence }[];
  /** All that the result counts: the days that were done, then those that were not. */
  readonly slots: readonly DoneSlot[];
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
  const { sessions } = computeWeekWork(practice, works, athlete, startDay, untilDay);
  const done = groupBySlot(
    practice,
    sessions.map(({ record }) => record),
  );
  if (done.length === 0) return undefined;
  const isOver = untilDay >= startDay + 6;
  const slots = done.map(({ slot }) => slot);
  return compareSlots(works, done, isOver ? listMissing(practice, athlete, startDay, slots) : [], 'not done');
}

/** A week of a plan, whenever its sessions were; undefined before the first of them. */
export function computePlanWeekAdherence(
  works: SessionWorks,
  athlete: string,
  plan: Plan,
  week: number,
): WeekAdherence | undefined {
  const { practice } = works;
  const ofWeek = practice.sessionsOf(athlete).filter(({ entry }) => entry.plan?.week === week);
  const done = groupBySlot(practice, ofWeek).filter(({ slot }) => slot.plan.key === plan.key);
  if (done.length === 0) return undefined;
  const missing = listSlots(plan, week).filter((slot) => !done.some((each) => isSameSlot(each.slot, slot)));
  return compareSlots(works, done, missing, 'not done yet');
}

function groupBySlot(practice: Practice, records: readonly SessionRecord[]): DoneSlot[] {
  const groups: { slot: PlanSlot; records: SessionRecord[] }[] = [];
  for (const record of records) {
    const slot = findSlotOf(practice, record);
    const known = slot && groups.find((group) => isSameSlot(group.slot, slot));
    if (known) known.records.push(record);
    else if (slot) groups.push({ slot, records: [record] });
  }
  return groups;
}

function compareSlots(
  works: SessionWorks,
  done: readonly DoneSlot[],
  missing: readonly PlanSlot[],
  why: string,
): WeekAdherence {
  const days = done.map(({ slot, records }) => ({
    day: slot.day,
    adherence: compareWithPlan(works, slot, records),
  }));
  const counts = [
    ...days.flatMap(({ adherence }) => adherence.movements),
    ...missing.map((slot) => ({
      done: 0,
      planned: sum(planSlot(works.practice, slot).lines.map(({ sets }) => sets ?? 0)),
    })),
  ];
  const omitted = [
    ...days.flatMap(({ adherence }) => adherence.result.omitted),
    ...missing.map(({ day }): Omission => ({ what: printDay(day), why })),
  ];
  const result = toAdherence(counts, omitted);
  const isLower = days.some(({ adherence }) => adherence.result.bound === 'at least');
  return {
    result: isLower ? { ...result, bound: 'at least' } : result,
    days,
    slots: [...done, ...missing.map((slot) => ({ slot, records: [] }))],
    notDone: missing.map(({ day }) => day),
  };
}

/** The days of a plan's week; one that comes twice where days take turns is there twice. */
function listSlots(plan: Plan, week: number): PlanSlot[] {
  const days = listTurns(plan.entry)
    .filter((turn) => turn.week === week)
    .map(({ day }) => day);
  return days.map((day, index) => {
    const nth = days.slice(0, index).filter((other) => other === day).length;
    return { plan, week, day, ...(nth > 0 && { nth }) };
  });
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
    .flatMap(({ plan, week }) => listSlots(plan, week))
    .filter((slot) => !near.some((done) => isSameSlot(done, slot)));
}

function printDay({ number, name }: PlanDay): string {
  return name ? `day ${number} ${name}` : `day ${number}`;
}
