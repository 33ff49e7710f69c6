import { printNumber } from '../units/number.ts';
import type { BlockWork } from './block-work.ts';
import { findMaxOn, type ValidMax } from './maxes.ts';
import { DEFAULT_FORMULA, type OneRepMaxFormula } from './one-rep-max.ts';
import { divide } from './quotients.ts';
import { type Input, mergeOmissions, type Omission, type Result, toResult } from './result.ts';
import { listSeriesSets, nameMovement, readExternal, type SeriesSet } from './series-sets.ts';
import type { SessionWork, SessionWorks } from './session-work.ts';
import { findBodyShare, measureAmount } from './set-work.ts';
import { addWork, NO_WORK, volumeOf, type Work } from './work.ts';

/** Shares of the max in percent, each from its floor up to the next (common practice). */
export const INTENSITY_ZONES = [
  { name: 'below 60 %', floor: 0 },
  { name: '60-69 %', floor: 60 },
  { name: '70-79 %', floor: 70 },
  { name: '80-89 %', floor: 80 },
  { name: '90 % and over', floor: 90 },
] as const;

/** The reps of one movement in one session, held against the max valid that day. */
export interface IntensityTally {
  readonly key: string;
  readonly name: string;
  readonly work: Work;
  /** Reps whose share of the max is known, and the sum of their shares in percent. */
  readonly reps: number;
  readonly percentReps: number;
  /** Those reps by zone. */
  readonly zones: readonly number[];
  /** A max was known as a lower bound only, so that shares of it may be too high. */
  readonly atMost: boolean;
  readonly omitted: readonly Omission[];
}

export interface Intensity {
  /** Kilograms a rep. */
  readonly average: Result;
  /** Percent of the max. */
  readonly relative: Result;
  /** Reps, in the order of {@link INTENSITY_ZONES}; empty where no share is known. */
  readonly zones: readonly Result[];
}

const known = new WeakMap<
  readonly BlockWork[],
  { sessions: unknown; version: number; formula: string; list: IntensityTally[] }
>();

/** The strength work of a session, movement by movement; remembered until a session of the athlete or a definition changes. */
export function tallyIntensity(
  works: SessionWorks,
  work: SessionWork,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): readonly IntensityTally[] {
  const sessions = works.practice.sessionsOf(work.record.athlete);
  const found = known.get(work.blocks);
  const version = works.practice.definitionsVersion;
  if (found?.sessions === sessions && found.version === version && found.formula === formula)
    return found.list;
  const byKey = new Map<string, SeriesSet[]>();
  for (const set of listSeriesSets(work)) {
    const { key } = nameMovement(set.movement, set.set.line.name.text);
    const sets = byKey.get(key);
    if (sets) sets.push(set);
    else byKey.set(key, [set]);
  }
  const list = [...byKey].map(([key, sets]) => tallyMovement(works, work, key, sets, formula));
  known.set(work.blocks, { sessions, version, formula, list });
  return list;
}

/** What tallies come to together: of one exercise, a session, or a week. */
export function computeIntensity(tallies: readonly IntensityTally[]): Intensity {
  const work = addWork([NO_WORK, ...tallies.map((tally) => tally.work)]);
  const total = (pick: (tally: IntensityTally) => number) =>
    tallies.reduce((sum, tally) => sum + pick(tally), 0);
  const reps = total((tally) => tally.reps);
  const remark = tallies.some(({ atMost }) => atMost) ? { remark: 'at most, a max is a lower bound' } : {};
  const omitted = mergeOmissions(...tallies.map((tally) => tally.omitted));
  return {
    average: toResult({
      value: divide(volumeOf(work), work.weighedReps),
      unit: 'kg',
      method: 'average-load',
      inputs: [
        { label: work.body > 0 ? 'volume incl. body' : 'volume', value: volumeOf(work), unit: 'kg' },
        { label: 'reps', value: work.weighedReps, unit: 'reps' },
      ],
      omitted: work.omitted,
    }),
    relative: toResult({
      value: divide(
        total((tally) => tally.percentReps),
        reps,
      ),
      unit: '%',
      method: 'relative-intensity',
      inputs: tallies.flatMap(describeShare),
      omitted,
      ...remark,
    }),
    zones:
      reps === 0
        ? []
        : INTENSITY_ZONES.map(({ name }, zone) =>
            toResult({
              value: total((tally) => tally.zones[zone]!),
              unit: 'reps',
              method: 'intensity-zones',
              inputs: [
                ...tallies.flatMap(({ name: movement, zones }): Input[] =>
                  zones[zone]! > 0 ? [{ label: movement, value: zones[zone]!, unit: 'reps' }] : [],
                ),
                { label: 'reps with a share of a max', value: reps, unit: 'reps' },
              ],
              omitted,
              remark: [name, ...Object.values(remark)].join(', '),
            }),
          ),
  };
}

function describeShare({ name, reps, percentReps }: IntensityTally): Input[] {
  const share = divide(percentReps, reps);
  return share === undefined
    ? []
    : [{ label: `${name}, ${printNumber(reps)} reps at`, value: share, unit: '%' }];
}

function tallyMovement(
  works: SessionWorks,
  work: SessionWork,
  key: string,
  sets: readonly SeriesSet[],
  formula: OneRepMaxFormula,
): IntensityTally {
  const { name } = nameMovement(sets[0]!.movement, sets[0]!.set.line.name.text);
  const zones = INTENSITY_ZONES.map(() => 0);
  const { athlete, day } = work.record;
  const maxes = new Map<string, ValidMax | undefined>();
  const reasons = new Set<string>();
  let [reps, percentReps, atMost] = [0, 0, false];
  for (const set of sets) {
    const { group, amount } = set.set;
    const { series } = set;
    if (!maxes.has(series.key))
      maxes.set(series.key, findMaxOn(works, athlete, name, day, { series, formula }));
    const max = maxes.get(series.key);
    for (const part of [{ amount, load: group.load }, ...group.drops]) {
      const done = part.amount && measureAmount(part.amount);
      if (done?.quantity.measure !== 'reps' || done.total === 0) continue;
      const share = max
        ? computeShare(work, set, readExternal(part.load, set.movement), max)
        : 'no max known by that day';
      if (typeof share === 'string') {
        reasons.add(share);
        continue;
      }
      reps += done.total;
      percentReps += share * done.total;
      zones[findZone(share)]! += done.total;
      atMost ||= max?.result.bound === 'at least';
    }
  }
  const omitted = [...reasons].map((why) => ({ what: name, why }));
  return { key, name, work: addWork(sets.map((set) => set.work)), reps, percentReps, zones, atMost, omitted };
}

/** Percent of the max, the body's share in both where the load comes on top of it; else why there is none. */
function computeShare(
  { context }: SessionWork,
  { movement }: SeriesSet,
  grams: number | undefined,
  { result, added, boundOnly }: ValidMax,
): number | string {
  if (grams === undefined) return 'no one load in kilograms';
  // A share of what the set itself proves at least would say more of its reps than of its load.
  if (boundOnly) return 'of its max only a lower bound is known';
  let body = 0;
  if (added) {
    const share = findBodyShare({ movement, ...(context.sex && { sex: context.sex }) });
    if (share === undefined) return 'no published share of body mass';
    if (context.bodyMass === undefined) return 'no weigh-in on or before the day';
    body = (share * context.bodyMass) / 1000;
  }
  const percent = divide((grams / 1000 + body) * 100, result.value! + body);
  return percent === undefined || percent < 0 ? 'no max known by that day' : percent;
}

function findZone(percent: number): number {
  // 69.99999… is what doubles make of 70 %.
  return INTENSITY_ZONES.findLastIndex(({ floor }) => percent >= floor - 1e-9);
}
