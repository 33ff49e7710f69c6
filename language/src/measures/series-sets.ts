import type { Load } from '../model/quantity.ts';
import { implementOf, type Movement, workOf } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { type BlockWork, isWorking, type SetWork } from './block-work.ts';
import { findCell, numberOfSet } from './expand-sets.ts';
import { type Series, toSeries } from './max-candidates.ts';
import type { SessionWork } from './session-work.ts';
import { findBodyShare } from './set-work.ts';

/** One working set of strength work, with what it may be compared with. */
export interface SeriesSet extends SetWork {
  readonly block: BlockWork;
  readonly movement: Movement | undefined;
  readonly series: Series;
  /** Which of its line it is, or the first of several that are written as one, from 1. */
  readonly setNumber: number;
}

const known = new WeakMap<readonly BlockWork[], readonly SeriesSet[]>();

/** The working sets of strength work of a session, in the order of its lines; remembered as long as its sums are. */
export function listSeriesSets(work: SessionWork): readonly SeriesSet[] {
  const found = known.get(work.blocks);
  if (found) return found;
  const sets = work.blocks.flatMap((block) => block.sets.flatMap((set) => toSeriesSet(work, block, set)));
  known.set(work.blocks, sets);
  return sets;
}

function toSeriesSet({ record, context }: SessionWork, block: BlockWork, done: SetWork): SeriesSet[] {
  const { line, group, groupIndex } = done.set;
  if (!isWorking(done.set, block.block)) return [];
  const movement = context.findMovement(line.name.text);
  if (workOf(movement) !== 'strength') return [];
  const { modifiers, sets } = findCell(line, record.index)!;
  const series = toSeries(line, modifiers, group, movement, record.entry.place?.text);
  return [{ ...done, block, movement, series, setNumber: numberOfSet(sets, groupIndex) }];
}

/** Key and spelling of the movement of a line: as defined, else as written. */
export function nameMovement(movement: Movement | undefined, written: string): { key: string; name: string } {
  return { key: movement?.key ?? written.toLowerCase(), name: movement?.name ?? written };
}

/** The key of {@link nameMovement} for a written name. */
export function findSeriesKey(practice: Practice, written: string): string {
  return nameMovement(practice.findMovement(written), written).key;
}

/**
 * Grams beside the body, of one implement: `2x24 kg` is 24 000, `bw` nothing, `bw-10 kg` -10 000. Undefined where no
 * one mass is written: pins and bands alone, unequal hands or sides, what a plan asks, or nothing on what bears load.
 */
export function readExternal(load: Load | undefined, movement: Movement | undefined): number | undefined {
  if (!load) return implementOf(movement) === 'none' ? 0 : undefined;
  if (load.kind === 'mass') return load.high || load.other ? undefined : load.mass.grams;
  if (load.kind !== 'bodyweight' || load.pin !== undefined || load.band) return undefined;
  return load.mass ? (load.sign === '-' ? -load.mass.grams : load.mass.grams) : 0;
}

/** Whether what is written of a load comes on top of the body. */
export function isAdded(load: Load | undefined, movement: Movement | undefined): boolean {
  return load?.kind === 'bodyweight' || findBodyShare({ movement }) !== undefined;
}
