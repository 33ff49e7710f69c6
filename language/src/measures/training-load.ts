/** Load by effort and time over an athlete's days: weeks, recent against usual load, and the shape it leaves. */
import { fromDayNumber } from '../calendar/iso-date.ts';
import type { PerAthlete, SessionEntry } from '../model/entry.ts';
import type { Practice } from '../practice/practice.ts';
import { CHRONIC_DAYS, computeAcuteChronic } from './acute-chronic.ts';
import { findCell } from './expand-sets.ts';
import { CUSTOMARY_CONSTANTS, computeFitnessFatigue } from './fitness-fatigue.ts';
import { rememberByHistory } from './remember.ts';
import { type Input, type Omission, type Result, toResult } from './result.ts';
import { computeSessionLoad, type DayLoad, summariseWeekLoad } from './session-load.ts';
import { sum } from './statistics.ts';

/**
 * Loads of the days that have training, in order of days (since 1970-01-01). Two sessions of a day add up; a day is
 * undefined where one of them has no effort or no duration. A day that is not in the map is a rest day.
 */
export type LoadHistory = ReadonlyMap<number, DayLoad>;

export const readLoadHistory = rememberByHistory((practice, athlete): LoadHistory => {
  const history = new Map<number, DayLoad>();
  for (const { entry, index, day } of practice.sessionsOf(athlete)) {
    if (!isTrained(entry, index)) continue;
    const load = readSessionLoad(entry, index);
    const before = history.has(day) ? history.get(day) : 0;
    history.set(day, before === undefined || load === undefined ? undefined : before + load);
  }
  return history;
});

/** A missed session, one with nothing but skipped lines, and a weigh-in without training are rest. */
function isTrained(entry: SessionEntry, index: number): boolean {
  if (entry.missed) return false;
  if (entry.efforts || entry.lasted) return true;
  const lines = entry.blocks.flatMap((block) => block.lines);
  return lines.some((line) => findCell(line, index)?.sets.some(({ amount }) => amount?.kind !== 'skipped'));
}

function readSessionLoad(entry: SessionEntry, index: number): DayLoad {
  const effort = readOwn(entry.efforts, index);
  const seconds = readOwn(entry.lasted, index);
  return effort === undefined || seconds === undefined ? undefined : computeSessionLoad(effort, seconds / 60);
}

/** One value is for all athletes of a group. */
function readOwn<T>(list: PerAthlete<T> | undefined, index: number): T | undefined {
  return list && (list.values.length === 1 ? list.values[0] : list.values[index]);
}

/** One load a day from one day to another, rest days 0. */
export function listDailyLoads(history: LoadHistory, fromDay: number, untilDay: number): DayLoad[] {
  return Array.from({ length: Math.max(0, untilDay - fromDay + 1) }, (_, index) => {
    const day = fromDay + index;
    return history.has(day) ? history.get(day) : 0;
  });
}

export interface WeekLoadResults {
  readonly load: Result;
  /** Without a value where a day is not known, the week is not over, or all its days are equal. */
  readonly monotony: Result;
  readonly strain: Result;
}

/** An ISO week up to and including a day (all of it by default); none before the athlete's first session. */
export function computeWeekLoad(
  practice: Practice,
  athlete: string,
  startDay: number,
  untilDay = startDay + 6,
): WeekLoadResults | undefined {
  const history = readLoadHistory(practice, athlete);
  const first = firstDayOf(history);
  const last = Math.min(untilDay, startDay + 6);
  if (first === undefined || last < first || last < startDay) return undefined;
  const days = listDailyLoads(history, startDay, last);
  const week = summariseWeekLoad(days);
  const isOver = days.length === 7;
  const omitted = listUnknownDays(days, startDay);
  const trained = days.flatMap((load, index): Input[] =>
    load === undefined || !history.has(startDay + index)
      ? []
      : [{ label: fromDayNumber(startDay + index), value: load, unit: 'AU' }],
  );
  const load = toResult({
    // Nothing known beside something unknown is no zero.
    value: trained.length === 0 && omitted.length > 0 ? undefined : week.total,
    unit: 'AU',
    method: 'weekly-load',
    bound: week.bound,
    inputs: trained,
    omitted,
    ...(!isOver && { remark: 'so far' }),
  });
  const why = !isOver ? 'the week is not over' : omitted.length > 0 ? 'a day is not known' : 'all days equal';
  const missing = week.monotony === undefined && { remark: why };
  return {
    load,
    monotony: toResult({
      value: week.monotony,
      unit: '',
      method: 'monotony',
      inputs: trained,
      omitted,
      ...missing,
    }),
    strain: toResult({
      value: week.strain,
      unit: 'AU',
      method: 'strain',
      inputs:
        week.monotony === undefined
          ? []
          : [
              { label: 'weekly load', value: week.total, unit: 'AU' },
              { label: 'monotony', value: week.monotony, unit: '' },
            ],
      omitted,
      ...missing,
    }),
  };
}

/**
 * Acute over chronic load on a day, from the first session, or from the day after the last one that is not known. It
 * has no value before 28 such days, and never goes without its caution.
 */
export function computeLoadRatio(practice: Practice, athlete: string, day: number): Result | undefined {
  const known = takeKnownDays(readLoadHistory(practice, athlete), day);
  if (!known) return undefined;
  const averages = computeAcuteChronic(known.loads);
  const remark =
    known.loads.length < CHRONIC_DAYS
      ? `needs ${CHRONIC_DAYS} days of known load, has ${known.loads.length}`
      : 'no injury predictor';
  return toResult({
    value: averages?.ratio,
    unit: '',
    method: 'acute-chronic',
    inputs: averages
      ? [
          { label: 'acute, 7 days', value: averages.acute, unit: 'AU/day' },
          { label: 'chronic, 28 days', value: averages.chronic, unit: 'AU/day' },
          ...describeHistory(known),
        ]
      : [],
    omitted: known.omitted,
    remark,
  });
}

/** Days of history below which the slower of the two sums says more about where the log begins than about training. */
const FEWEST_SHAPE_DAYS = CUSTOMARY_CONSTANTS.fitnessDays;
/** The curve has no unit: its largest swing is ten, and no more digits than that are shown. */
const LARGEST_LEVEL = 10;
const DIRECTION_DAYS = 7;

export interface LoadShape {
  /** One point a day before that day's training, from -10 to 10 of the curve's own largest swing. */
  readonly points: readonly { readonly day: number; readonly level: number }[];
  /** The last level; its remark says where the curve went in the last seven days. */
  readonly result: Result;
}

/** Fitness less fatigue as a shape up to a day, from the day after the last one that is not known. */
export function computeLoadShape(practice: Practice, athlete: string, day: number): LoadShape | undefined {
  const known = takeKnownDays(readLoadHistory(practice, athlete), day);
  if (!known) return undefined;
  const { loads, firstDay, omitted } = known;
  const curve = computeFitnessFatigue(loads).map(({ before }) => before);
  const swing = curve.reduce((largest, value) => Math.max(largest, Math.abs(value)), 0);
  const base = { unit: '', method: 'fitness-fatigue', omitted } as const;
  if (loads.length < FEWEST_SHAPE_DAYS || swing === 0) {
    const remark =
      loads.length < FEWEST_SHAPE_DAYS
        ? `needs ${FEWEST_SHAPE_DAYS} days of known load, has ${loads.length}`
        : 'no load';
    return { points: [], result: toResult({ ...base, value: undefined, remark }) };
  }
  const points = curve.map((value, index) => ({
    day: firstDay + index,
    // Adding 0 turns -0 into 0.
    level: Math.round((value / swing) * LARGEST_LEVEL) + 0,
  }));
  const [level, before] = [points.at(-1)!.level, points.at(-1 - DIRECTION_DAYS)!.level];
  const direction = level > before ? 'rising' : level < before ? 'falling' : 'level';
  return {
    points,
    result: toResult({
      ...base,
      value: level,
      inputs: [
        ...describeHistory(known),
        { label: 'fitness fades to 1/e in', value: CUSTOMARY_CONSTANTS.fitnessDays, unit: 'days' },
        { label: 'fatigue fades to 1/e in', value: CUSTOMARY_CONSTANTS.fatigueDays, unit: 'days' },
        { label: 'weight of fitness', value: CUSTOMARY_CONSTANTS.fitnessGain, unit: '' },
        { label: 'weight of fatigue', value: CUSTOMARY_CONSTANTS.fatigueGain, unit: '' },
      ],
      remark: `${direction} over ${DIRECTION_DAYS} days, where the largest swing is ${LARGEST_LEVEL}`,
    }),
  };
}

/** Whole days from the last training to a day: 0 on the day itself. */
export function computeDaysSince(practice: Practice, athlete: string, day: number): Result | undefined {
  const last = [...readLoadHistory(practice, athlete).keys()].findLast((trained) => trained <= day);
  if (last === undefined) return undefined;
  return toResult({
    value: day - last,
    unit: 'days',
    method: 'days-since',
    inputs: [
      { label: `from ${fromDayNumber(last)} to ${fromDayNumber(day)}`, value: day - last, unit: 'days' },
    ],
  });
}

interface KnownDays {
  /** One a day, rest days 0. */
  readonly loads: readonly number[];
  readonly firstDay: number;
  readonly omitted: readonly Omission[];
}

/** From which day to which, on how many of the days there was load, and how much in all. */
function describeHistory({ loads, firstDay }: KnownDays): Input[] {
  const last = fromDayNumber(firstDay + loads.length - 1);
  return [
    { label: `from ${fromDayNumber(firstDay)} to ${last}`, value: loads.length, unit: 'days' },
    { label: 'with load', value: loads.filter((load) => load > 0).length, unit: 'days' },
    { label: 'load of all of them', value: sum(loads), unit: 'AU' },
  ];
}

/** The run of known days that ends on a day; undefined before the first session. */
function takeKnownDays(history: LoadHistory, day: number): KnownDays | undefined {
  const first = firstDayOf(history);
  if (first === undefined || first > day) return undefined;
  const all = listDailyLoads(history, first, day);
  const unknown = all.lastIndexOf(undefined);
  return {
    loads: all.slice(unknown + 1).filter((load) => load !== undefined),
    firstDay: first + unknown + 1,
    omitted:
      unknown < 0
        ? []
        : [
            {
              what: `up to ${fromDayNumber(first + unknown)}`,
              why: 'no effort or no duration written that day',
            },
          ],
  };
}

function firstDayOf(history: LoadHistory): number | undefined {
  for (const day of history.keys()) return day;
  return undefined;
}

function listUnknownDays(days: readonly DayLoad[], startDay: number): Omission[] {
  return days.flatMap((load, index) =>
    load === undefined
      ? [{ what: fromDayNumber(startDay + index), why: 'no effort or no duration written' }]
      : [],
  );
}
