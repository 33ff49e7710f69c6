import type { MassRange, PlaceEntry } from '../model/entry.ts';
import type { Mass } from '../model/quantity.ts';
import { indent, printList, printProperty, textsOf } from './print-lines.ts';
import { printWrittenMass } from './print-load.ts';
import { printPlain } from './print-quantity.ts';

/** `place Herne Loft` and its inventory. */
export function printPlace(entry: PlaceEntry): string[] {
  return [
    ...printProperty('place', entry.name?.text ?? ''),
    ...indent([
      ...printList('bars', entry.bars.map(printWrittenMass)),
      ...printList('plates', printPlates(entry.plates)),
      ...printProperty('collars', entry.collars && printWrittenMass(entry.collars)),
      ...printList('dumbbells', printMassRanges(entry.dumbbells)),
      ...printList('kettlebells', entry.kettlebells.map(printWrittenMass)),
      ...entry.stacks.map((stack) => `stacks ${stack.name.text} ${printMassRanges([stack])}`),
      ...printList('has', textsOf(entry.has)),
    ]),
  ];
}

/** `2x20, 4x10, 2x1.25 kg`: one unit is written once, behind the last. */
function printPlates(plates: PlaceEntry['plates']): string[] {
  const units = new Set(plates.map(({ mass }) => mass.unit));
  return plates.map(({ count, mass }, index) => {
    const bare = units.size === 1 && index < plates.length - 1;
    return `${printPlain(count)}x${bare ? printPlain(mass.written) : printWrittenMass(mass)}`;
  });
}

/** `4-32 by 2 kg pairs`; a bare number takes its line's unit, so that a line of two units writes each. */
function printMassRanges(ranges: readonly MassRange[]): string[] {
  const units = new Set(ranges.flatMap(({ low, high, step }) => [low.unit, high.unit, step.unit]));
  const print = units.size === 1 ? (mass: Mass) => printPlain(mass.written) : printWrittenMass;
  return ranges.map(
    ({ low, high, step, sold }) =>
      `${print(low)}-${print(high)} by ${printWrittenMass(step)}${sold ? ` ${sold}` : ''}`,
  );
}
