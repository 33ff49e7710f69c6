/** What was done of what a plan's day asked for: sets, with what was left out, swapped and added named. */
import type { MovementLine, PlanDay, SessionEntry } from '../model/entry.ts';
import type { Modifier } from '../model/quantity.ts';
import { findCourse } from '../plans/plan-calendar.ts';
import type { Plan, SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { isWorking } from './block-work.ts';
import { findCell } from './expand-sets.ts';
import { listPlannedSets, type PlannedSets } from './planned-sets.ts';
import { computePercentOf } from './quotients.ts';
import { type Omission, type Result, toResult } from './result.ts';
import type { SessionWorks } from './session-work.ts';
import { sum } from './statistics.ts';

/** Working sets of one movement that the plan asks for. */
export interface PlannedMovement {
  readonly name: string;
  readonly planned: number;
  /** Up to the planned ones; those beyond are `extra`. */
  readonly done: number;
  readonly extra: number;
  /** Why fewer were done, where that is written. */
  readonly reason?: string;
}

export interface Adherence {
  /** Percent; sets beyond the plan and movements not in it do not make up for others. */
  readonly result: Result;
  readonly movements: readonly PlannedMovement[];
  /** `instead of`: counted for the movement that it stands for. */
  readonly swapped: readonly { readonly planned: string; readonly done: string; readonly sets: number }[];
  readonly added: readonly { readonly name: string; readonly sets: number }[];
}

/** A day of a plan in one of its weeks. */
export interface PlanSlot {
  readonly plan: Plan;
  readonly week: number;
  readonly day: PlanDay;
  /** Where days take turns and one comes more than once a week: the first is 0. */
  readonly nth?: number;
}

/** One session against the plan, week and day that its header names; undefined where it names no such day. */
export function computeAdherence(works: SessionWorks, record: SessionRecord): Adherence | undefined {
  const slot = findSlotOf(works.practice, record);
  return slot && compareWithPlan(works, slot, [record]);
}

/** As `findSlot`; where days take turns, the time that it is the day's in that week. */
export function findSlotOf(practice: Practice, record: SessionRecord): PlanSlot | undefined {
  const slot = findSlot(practice, record.entry);
  if (!slot?.plan.entry.alternate) return slot;
  const { turns } = findCourse(practice, slot.plan.entry);
  const most = turns.filter(({ week, day }) => week === slot.week && day === slot.day).length - 1;
  const before = practice.sessionsOf(record.athlete);
  const earlier = before
    .slice(0, before.indexOf(record))
    .map(({ entry }) => findSlot(practice, entry))
    .filter((other) => other && isSameSlot(other, slot)).length;
  const nth = Math.min(earlier, most);
  return nth > 0 ? { ...slot, nth } : slot;
}

export function isSameSlot(one: PlanSlot, other: PlanSlot): boolean {
  return (
    one.plan.key === other.plan.key &&
    one.week === other.week &&
    one.day.number === other.day.number &&
    one.nth === other.nth
  );
}

/** The plan's day that a session says it is; the day may be left out where the plan has one only. */
export function findSlot(practice: Practice, entry: SessionEntry): PlanSlot | undefined {
  const plan = entry.plan && practice.findPlan(entry.plan.name.text);
  const week = entry.plan?.week;
  if (!plan || week === undefined || week < 1) return undefined;
  const { days } = plan.entry;
  const number = entry.plan!.day ?? (days.length === 1 ? days[0]!.number : undefined);
  const day = days.find((candidate) => candidate.number === number);
  return day && { plan, week, day };
}

export function planSlot(practice: Practice, { plan, day, week, nth }: PlanSlot): PlannedSets {
  return listPlannedSets(plan.entry, day, week, (name) => practice.keyOf(name), nth);
}

/** Sessions of one plan day, which add up, against that day. */
export function compareWithPlan(
  works: SessionWorks,
  slot: PlanSlot,
  records: readonly SessionRecord[],
): Adherence {
  const toKey = (name: string): string => works.practice.keyOf(name);
  const { lines, omitted } = planSlot(works.practice, slot);
  const tallies = new Map<string, Tally>();
  for (const { line, sets } of lines) {
    const tally = tallyOf(tallies, toKey(line.name.text), line.name.text);
    if (sets === undefined) tally.open = true;
    else tally.planned += sets;
  }
  const swapped = new Map<string, { planned: string; done: string; sets: number }>();
  const broken: Omission[] = [];
  for (const { line, index, sets } of listDone(works, records)) {
    if (line.broken) broken.push({ what: line.name.text, why: 'part of the line could not be read' });
    const modifiers = [...(findCell(line, index)?.modifiers ?? []), ...line.modifiers];
    const replaced = modifiers.find((modifier) => modifier.kind === 'instead')?.of.text;
    const standsFor = replaced === undefined ? undefined : tallies.get(toKey(replaced));
    const tally = standsFor ?? tallyOf(tallies, toKey(line.name.text), line.name.text);
    tally.done += sets;
    tally.reason ??= describePain(modifiers);
    if (!standsFor || sets === 0) continue;
    const pair = `${standsFor.name}\n${toKey(line.name.text)}`;
    const before = swapped.get(pair)?.sets ?? 0;
    swapped.set(pair, { planned: standsFor.name, done: line.name.text, sets: before + sets });
  }
  const missed = records.map(({ entry }) => entry.missed).find((found) => found !== undefined);
  const missedWhy = missed && (missed.reason ? `missed: ${missed.reason}` : 'missed');
  const all = [...tallies.values()];
  const movements = all
    .filter(({ planned }) => planned > 0)
    .map((tally) => toPlannedMovement(tally, tally.reason ?? missedWhy));
  const added = all.filter(({ planned, open, done }) => planned === 0 && !open && done > 0);
  return {
    result: toAdherence(movements, [...movements.flatMap(describeShort), ...omitted], broken),
    movements,
    swapped: [...swapped.values()],
    added: added.map(({ name, done }) => ({ name, sets: done })),
  };
}

interface Tally {
  readonly name: string;
  planned: number;
  done: number;
  /** Asked for without a number of sets: neither planned sets nor an addition. */
  open: boolean;
  reason: string | undefined;
}

function tallyOf(tallies: Map<string, Tally>, key: string, name: string): Tally {
  const known = tallies.get(key);
  if (known) return known;
  const tally: Tally = { name, planned: 0, done: 0, open: false, reason: undefined };
  tallies.set(key, tally);
  return tally;
}

/** Working sets that were done, line by line; 0 where all were skipped. */
function listDone(
  works: SessionWorks,
  records: readonly SessionRecord[],
): { line: MovementLine; index: number; sets: number }[] {
  return records.flatMap((record) =>
    works.of(record).blocks.flatMap(({ block, sets }) => {
      const working = sets.filter(({ set }) => isWorking(set, block));
      const lines = [...new Set(working.map(({ set }) => set.line))];
      return lines.map((line) => ({
        line,
        index: record.index,
        sets: sum(working.filter(({ set }) => set.line === line).map(({ work }) => work.sets)),
      }));
    }),
  );
}

/** `pain 4 left knee` → `pain 4 left knee`. */
function describePain(modifiers: readonly Modifier[]): string | undefined {
  const pain = modifiers.find((modifier) => modifier.kind === 'pain');
  return pain && ['pain', pain.score, pain.where].filter((part) => part !== undefined).join(' ');
}

function toPlannedMovement({ name, planned, done }: Tally, reason: string | undefined): PlannedMovement {
  return {
    name,
    planned,
    done: Math.min(done, planned),
    extra: Math.max(0, done - planned),
    ...(done < planned && reason !== undefined && { reason }),
  };
}

function describeShort({ name, planned, done, reason }: PlannedMovement): Omission[] {
  if (done === planned) return [];
  const why = done === 0 ? `none of ${planned} sets` : `${done} of ${planned} sets`;
  return [{ what: name, why: reason === undefined ? why : `${why}, ${reason}` }];
}

/** Percent of the planned sets that were done; a line that could not be read makes it a lower bound. */
export function toAdherence(
  movements: readonly Pick<PlannedMovement, 'planned' | 'done'>[],
  omitted: readonly Omission[],
  broken: readonly Omission[] = [],
): Result {
  const done = sum(movements.map((movement) => movement.done));
  const planned = sum(movements.map((movement) => movement.planned));
  return toResult({
    value: computePercentOf(done, planned),
    unit: '%',
    method: 'adherence',
    bound: broken.length > 0 ? 'at least' : 'exact',
    inputs: [
      { label: 'working sets done', value: done, unit: 'sets' },
      { label: 'working sets planned', value: planned, unit: 'sets' },
    ],
    omitted: [...omitted, ...broken],
  });
}
