import type { MovementLine } from '../model/entry.ts';
import type { Cell } from '../model/quantity.ts';
import { printModifier } from './print-modifiers.ts';
import { printSetGroup } from './print-sets.ts';

/** `week 5 test Back Squat: 1 @ 100%, rest 3:00`; the notes below a line are not part of it. */
export function printMovementLine(line: MovementLine): string {
  const head = [
    ...(line.week === undefined ? [] : [`week ${line.week}`]),
    ...(line.label ? [line.label.text] : []),
    ...(line.purpose === 'work' ? [] : [line.purpose]),
    `${line.name.text}:`,
  ];
  const cells = line.cells.map((cell, index) =>
    printCell(cell, index === line.cells.length - 1 ? line.modifiers : undefined),
  );
  return [
    ...head,
    ...cells.flatMap((cell, index) => [...(index > 0 ? ['|'] : []), ...(cell ? [cell] : [])]),
  ].join(' ');
}

/** Behind the last cell's sets stand the line's modifiers, so that its own come before them. */
function printCell(cell: Cell, ofLine: MovementLine['modifiers'] | undefined): string {
  const sets = cell.sets.map(printSetGroup);
  const own = cell.modifiers.map(printModifier);
  return (ofLine ? [...own, ...sets, ...ofLine.map(printModifier)] : [...sets, ...own]).join(', ');
}
