import { expandBlock } from '../measures/expand-sets.ts';
import type { Block, PlanEntry, SessionEntry } from '../model/entry.ts';
import type { MassLoad } from '../model/quantity.ts';
import type { Problem, Span } from '../model/source.ts';
import type { Movement } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { printMass } from '../units/mass.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import { findEquipment } from '../vocabulary/equipment.ts';
import { type CheckContext, joinWords, listBlocks, NO_PROBLEMS, problem } from './check-context.ts';

/** A barbell that would carry two loads in a round; a place that lists several bars may keep one loaded for each. */
export function checkOneBar(entry: SessionEntry | PlanEntry, { practice }: CheckContext): Iterable<Problem> {
  const bars = countBars(entry, practice);
  if (bars === undefined) return NO_PROBLEMS;
  const blocks = listBlocks(entry).filter(
    (block) => BLOCK_KINDS[block.kind].inRounds && countOnBar(block, practice) > bars,
  );
  return blocks.length === 0 ? NO_PROBLEMS : findTwoLoads(blocks, bars, practice);
}

function* findTwoLoads(blocks: readonly Block[], bars: number, practice: Practice): Iterable<Problem> {
  for (const block of blocks) {
    const cells = Math.max(1, ...block.lines.map((line) => line.cells.length));
    for (let index = 0; index < cells; index++) {
      const found = findTooMany(block, index, bars, practice);
      if (!found) continue;
      const loads = joinWords(found.loads, 'and');
      const bar = bars === 1 ? 'One bar' : `The ${bars} bars`;
      yield problem(
        'two-loads-one-bar',
        found.span,
        `${bar} would carry ${loads} in one round, so plates change on every pass: use one load, or part the movements`,
      );
      break;
    }
  }
}

/** How many movements of a block are done with a bar: no more than there are bars can want too many. */
function countOnBar({ lines }: Block, practice: Practice): number {
  let count = 0;
  for (const { name } of lines) if (needsBar(name.text, practice)) count++;
  return count;
}

/** One where no place is named; undefined where the place is unknown or does not list its bars. */
function countBars({ place }: SessionEntry | PlanEntry, practice: Practice): number | undefined {
  if (!place) return 1;
  return practice.findPlace(place.text)?.entry.bars.length || undefined;
}

/** The first round of a block with more loads than bars. */
function findTooMany(
  block: Block,
  index: number,
  bars: number,
  practice: Practice,
): { readonly loads: readonly string[]; readonly span: Span } | undefined {
  const rounds = new Map<number, { readonly name: string; readonly load: MassLoad; readonly span: Span }[]>();
  const order = new Map<object, number>();
  for (const { line, group, round } of expandBlock(block, index)) {
    const { load } = group;
    if (
      load?.kind !== 'mass' ||
      load.high ||
      line.purpose === 'warmup' ||
      !needsBar(line.name.text, practice)
    )
      continue;
    const position = order.get(line) ?? 0;
    order.set(line, position + 1);
    const loaded = rounds.get(round ?? position) ?? [];
    rounds.set(round ?? position, loaded);
    loaded.push({ name: line.name.text, load, span: group.loadSpan ?? group.span });
  }
  for (const loaded of rounds.values()) {
    // What hangs on one line changes by itself from pass to pass; two lines are two loads.
    const distinct = loaded.filter(
      ({ load, name }, at) =>
        loaded.findIndex((other) => other.load.mass.grams === load.mass.grams || other.name === name) === at,
    );
    if (distinct.length <= bars) continue;
    return {
      loads: distinct.map(({ load, name }) => `${printMass(load.mass.grams, load.mass.unit)} (${name})`),
      span: distinct[bars]!.span,
    };
  }
  return undefined;
}

function needsBar(name: string, practice: Practice): boolean {
  const movement = practice.findMovement(name);
  return movement !== undefined && isOnBar(movement);
}

const onBar = new WeakMap<Movement, boolean>();

function isOnBar(movement: Movement): boolean {
  const known = onBar.get(movement);
  if (known !== undefined) return known;
  const isNeeded = movement.entry.needs.some((need) => findEquipment(need.text)?.name === 'barbell');
  onBar.set(movement, isNeeded);
  return isNeeded;
}
