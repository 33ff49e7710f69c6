/** What is followed over time: one number for each day or week on which it is known. */

import type { Block } from '../model/entry.ts';
import { type BlockWork, isWorking } from './block-work.ts';
import { computeBlockDensity, computeWorkDensity, findTimes } from './density.ts';
import type { OneRepMaxFormula } from './one-rep-max.ts';
import { DEFAULT_FORMULA } from './one-rep-max.ts';
import { rememberByWorks } from './remember.ts';
import type { Bound, Unit } from './result.ts';
import { identifyBlock } from './same-block.ts';
import type { SessionWork, SessionWorks } from './session-work.ts';
import { startDayOf } from './week-work.ts';
import { volumeOf } from './work.ts';

export interface SeriesPoint {
  /** Days since 1970-01-01; of a week its Monday. */
  readonly day: number;
  readonly value: number;
  readonly bound: Bound;
}

export interface TimeSeries {
  readonly kind: 'max' | 'density' | 'volume' | 'body mass';
  /** Tells one series of a kind from another. */
  readonly key: string;
  readonly title: string;
  readonly unit: Unit;
  /** In order of days. */
  readonly points: readonly SeriesPoint[];
}

type Growing = Omit<TimeSeries, 'points'> & { readonly points: SeriesPoint[] };

/** Estimated maxes up to a day: one series for each movement, setting, tempo and implement; the best of each day. */
export function listMaxSeries(
  works: SessionWorks,
  athlete: string,
  untilDay: number,
  formula: OneRepMaxFormula = DEFAULT_FORMULA,
): TimeSeries[] {
  return cutAt(readMaxSeries(works, athlete, formula), untilDay);
}

const readMaxSeries = rememberByWorks((works, athlete, formula): readonly TimeSeries[] => {
  const found = new Map<string, Growing>();
  for (const work of listWorks(works, athlete)) {
    for (const { series, result } of works.maxesOf(work, formula as OneRepMaxFormula)) {
      if (result.value === undefined) continue;
      const [, ...marks] = series.key.split(' | ');
      const title = [series.movement, ...marks].join(', ');
      const { points } = grow(found, { kind: 'max', key: series.key, title, unit: 'kg' });
      const point = { day: work.record.day, value: result.value, bound: result.bound };
      const last = points.at(-1);
      if (last?.day !== point.day) points.push(point);
      else if (isBetter(point, last)) points[points.length - 1] = point;
    }
  }
  return [...found.values()];
});

/** A rated estimate goes before a lower bound, as within a session; else the higher one. */
function isBetter(point: SeriesPoint, other: SeriesPoint): boolean {
  if (point.bound !== other.bound) return point.bound === 'exact';
  return point.value > other.value;
}

/** Blocks that are followed by their density. */
const DENSITY_BLOCKS: ReadonlySet<Block['kind']> = new Set([
  'circuit',
  'superset',
  'giant set',
  'amrap',
  'for time',
]);

/** Densities of the same block up to a day. Where other lines could be weighed, it is another series. */
export function listDensitySeries(works: SessionWorks, athlete: string, untilDay: number): TimeSeries[] {
  return cutAt(readDensitySeries(works, athlete), untilDay);
}

const readDensitySeries = rememberByWorks((works, athlete): readonly TimeSeries[] => {
  const found = new Map<string, Growing>();
  for (const work of listWorks(works, athlete)) {
    for (const blockWork of work.blocks) {
      const { block } = blockWork;
      if (block.implicit || !DENSITY_BLOCKS.has(block.kind)) continue;
      const times = findTimes(block, work.record);
      const density = computeWorkDensity(blockWork, times) ?? computeBlockDensity(blockWork, times);
      if (density?.value === undefined) continue;
      const { key, movements } = identifyBlock(works.practice, block);
      const weighed = listWeighed(works, blockWork).join(' + ');
      const { points } = grow(found, {
        kind: 'density',
        key: [key, density.method, density.unit, weighed].join(' | '),
        title: printBlock(works, block, movements),
        unit: density.unit,
      });
      points.push({ day: work.record.day, value: density.value, bound: density.bound });
    }
  }
  return [...found.values()];
});

/**
 * Keys of the movements of a block, or of one of its rounds, whose reps have kilograms: only equal lists can be
 * compared. A set without a made or known rep is taken as the other sets of its line.
 */
export function listWeighed(works: SessionWorks, { block, sets }: BlockWork, round?: number): string[] {
  const working = sets.filter(({ set }) => isWorking(set, block));
  const lines = new Set(working.filter(({ work }) => work.weighedReps > 0).map(({ set }) => set.line));
  const weighed = working.filter(
    ({ set, work }) =>
      (round === undefined || set.round === round) &&
      (work.weighedReps > 0 || (work.sets > 0 && work.reps === 0 && lines.has(set.line))),
  );
  const names = weighed.map(({ set }) => set.line.name.text);
  return [...new Set(names.map((name) => works.practice.findMovement(name)?.key ?? name))].sort();
}

/** `Back Squat + Push-up`, and with its kind where that is no circuit: `amrap Push-up`. */
function printBlock(works: SessionWorks, { kind }: Block, movements: readonly string[]): string {
  const names = movements.map((name) => printMovement(works, name)).join(' + ');
  return kind === 'circuit' ? names : `${kind} ${names}`;
}

/** `box squat, box 40 cm` → `Box Squat, box 40 cm`. */
function printMovement(works: SessionWorks, identified: string): string {
  const [key, ...settings] = identified.split(', ');
  return [works.practice.findMovement(key!)?.name ?? key, ...settings].join(', ');
}

/** Volume of each trained week that ended by a day, share of body mass included. Weeks without kilograms have no point. */
export function computeVolumeSeries(works: SessionWorks, athlete: string, untilDay: number): TimeSeries {
  const points = readVolumes(works, athlete).filter(({ day }) => day + 6 <= untilDay);
  return { kind: 'volume', key: 'volume', title: 'Volume', unit: 'kg', points };
}

const readVolumes = rememberByWorks((works, athlete): readonly SeriesPoint[] => {
  const weeks = new Map<number, { kilograms: number; atLeast: boolean }>();
  for (const { record, total } of listWorks(works, athlete)) {
    const start = startDayOf(record.day);
    const before = weeks.get(start);
    weeks.set(start, {
      kilograms: (before?.kilograms ?? 0) + volumeOf(total),
      atLeast: (before?.atLeast ?? false) || total.atLeast,
    });
  }
  return [...weeks].flatMap(([day, { kilograms, atLeast }]): SeriesPoint[] =>
    kilograms > 0 ? [{ day, value: kilograms, bound: atLeast ? 'at least' : 'exact' }] : [],
  );
});

/** Weigh-ins up to a day; the last one of each day counts. */
export function computeBodyMassSeries(works: SessionWorks, athlete: string, untilDay: number): TimeSeries {
  const byDay = new Map<number, SeriesPoint>();
  for (const { day, grams } of works.weighInsOf(athlete))
    if (day <= untilDay) byDay.set(day, { day, value: grams / 1000, bound: 'exact' });
  return { kind: 'body mass', key: 'body mass', title: 'Body mass', unit: 'kg', points: [...byDay.values()] };
}

function* listWorks(works: SessionWorks, athlete: string): Iterable<SessionWork> {
  for (const record of works.practice.sessionsOf(athlete)) yield works.of(record);
}

/** Series as they stood on a day; one that began later is none. */
function cutAt(series: readonly TimeSeries[], untilDay: number): TimeSeries[] {
  return series
    .map((one) => ({ ...one, points: one.points.filter(({ day }) => day <= untilDay) }))
    .filter(({ points }) => points.length > 0);
}

function grow(found: Map<string, Growing>, series: Omit<TimeSeries, 'points'>): Growing {
  const known = found.get(series.key);
  if (known) return known;
  const growing = { ...series, points: [] };
  found.set(series.key, growing);
  return growing;
}
