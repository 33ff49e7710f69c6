import type { Block, MovementLine, PlanDay } from '../model/entry.ts';
import type { Cell } from '../model/quantity.ts';

/** The blocks of a day as they stand in one week: that week's cells, with the lines written for it alone. */
export function takeWeek(day: PlanDay, week: number, toKey: (name: string) => string): Block[] {
  const lines = day.blocks.flatMap((block) => block.lines);
  const replaced = new Set(
    lines
      .filter((line) => line.week === week && line.purpose !== 'warmup')
      .map((line) => toKey(line.name.text)),
  );
  const isMeant = (line: MovementLine): boolean =>
    line.week === undefined
      ? line.purpose === 'warmup' || !replaced.has(toKey(line.name.text))
      : line.week === week;
  return day.blocks.map((block) => ({
    ...block,
    lines: block.lines.filter(isMeant).map((line) => ({ ...line, cells: takeCell(line, week) })),
  }));
}

/** Cells are weeks, from the first again when the plan is longer; a line for one week has its own. */
function takeCell(line: MovementLine, week: number): Cell[] {
  const index = line.week === undefined ? (week - 1) % line.cells.length : 0;
  const cell = line.cells[index];
  return cell ? [cell] : [];
}
