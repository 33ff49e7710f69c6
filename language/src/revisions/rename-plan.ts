import type { MovementLine, PlanEntry } from '../model/entry.ts';
import type { Load, SetGroup } from '../model/quantity.ts';
import type { Written } from '../model/source.ts';
import type { Renames } from './match-entries.ts';

/** A plan as it would be written with today's names, so that both versions rest on the same definitions. */
export function renamePlan(plan: PlanEntry, renames: Renames): PlanEntry {
  const to = (kind: Parameters<Renames['find']>[0]) => (written: Written) => ({
    ...written,
    text: renames.find(kind, written.text),
  });
  const { place, follows } = plan;
  return {
    ...plan,
    athletes: plan.athletes.map(to('athlete')),
    ...(place && { place: to('place')(place) }),
    ...(follows && { follows: to('plan')(follows) }),
    days: plan.days.map((day) => ({
      ...day,
      blocks: day.blocks.map((block) => ({
        ...block,
        lines: block.lines.map((line) => renameLine(line, to('exercise'))),
      })),
    })),
  };
}

function renameLine(line: MovementLine, to: (written: Written) => Written): MovementLine {
  return {
    ...line,
    name: to(line.name),
    cells: line.cells.map((cell) => ({ ...cell, sets: cell.sets.map((group) => renameGroup(group, to)) })),
  };
}

function renameGroup(group: SetGroup, to: (written: Written) => Written): SetGroup {
  return {
    ...group,
    ...(group.load && { load: renameLoad(group.load, to) }),
    drops: group.drops.map((drop) => ({ ...drop, ...(drop.load && { load: renameLoad(drop.load, to) }) })),
  };
}

function renameLoad(load: Load, to: (written: Written) => Written): Load {
  return load.kind === 'percent' && load.of ? { ...load, of: to(load.of) } : load;
}
