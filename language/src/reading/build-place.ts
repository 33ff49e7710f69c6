import type { MassRange, PlaceEntry } from '../model/entry.ts';
import type { Mass } from '../model/quantity.ts';
import type { Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import {
  buildCountedMass,
  buildMass,
  buildMasses,
  hasUnit,
  type LineUnits,
  readLineUnits,
  reportBareMass,
} from './build-mass.ts';
import { buildName, buildNames } from './build-values.ts';
import {
  type EntryReading,
  type Facts,
  type Holed,
  present,
  spanOf,
  textOf,
  toNumber,
} from './line-reading.ts';
import { reportPlateCounts } from './plate-counts.ts';

/** The inventory of a `place`. A bare number takes the unit of its line. */
export function buildPlaceFacts(reading: EntryReading, lines: readonly ast.PlaceLine[]): Facts<PlaceEntry> {
  const bars: Mass[] = [];
  const plates: PlaceEntry['plates'][number][] = [];
  const dumbbells: MassRange[] = [];
  const kettlebells: Mass[] = [];
  const stacks: PlaceEntry['stacks'][number][] = [];
  const has: Written[] = [];
  let collars: Mass | undefined;
  for (const line of lines) {
    if (!line.$cstNode) continue;
    const span = spanOf(line);
    const missing = (message: string): undefined => reading.expect('missing-value', span, message);
    const units = readLineUnits(line);
    switch (line.$type) {
      case 'BarsLine':
        if (line.masses.length === 0) missing('Expected weights after bars, such as 20 kg, 10 kg');
        for (const mass of buildMasses(reading, units, line.masses)) bars.push(mass);
        break;
      case 'PlatesLine':
        if (line.plates.length === 0) missing('Expected plates after plates, such as 2x20, 4x10 kg');
        for (const plate of line.plates) plates.push(...buildPlates(reading, units, plate));
        break;
      case 'CollarsLine':
        if (!reading.once(collars, span, 'collars')) break;
        if (!line.mass) missing('Expected a weight after collars, such as 2.5 kg');
        collars = buildMass(reading, units, line.mass) ?? collars;
        break;
      case 'DumbbellsLine':
        if (line.ranges.length === 0) missing('Expected a range after dumbbells, such as 4-32 by 2 kg');
        for (const range of line.ranges) dumbbells.push(...buildRange(reading, units, range));
        break;
      case 'KettlebellsLine':
        if (line.masses.length === 0) missing('Expected weights after kettlebells, such as 16 kg, 24 kg');
        for (const mass of buildMasses(reading, units, line.masses)) kettlebells.push(mass);
        break;
      case 'StacksLine': {
        const name = present(line.name);
        if (!name || !line.range)
          missing('Expected a name and a range after stacks, such as Cable 5-100 by 5 kg');
        const ranges = line.range ? buildRange(reading, units, line.range) : [];
        if (name) stacks.push(...ranges.map((range) => ({ ...range, name: buildName(name) })));
        break;
      }
      case 'HasLine':
        if (line.names.length === 0) missing('Expected equipment after has, such as bench, mat');
        for (const name of buildNames(line.names)) has.push(name);
    }
  }
  for (const line of lines)
    if (line.$type === 'PlatesLine' && line.$cstNode) reportPlateCounts(reading, line, bars.length > 0);
  return { bars, plates, ...(collars && { collars }), dumbbells, kettlebells, stacks, has };
}

function buildPlates(reading: EntryReading, units: LineUnits, node: Holed<ast.Mass>): PlaceEntry['plates'] {
  const mass = buildCountedMass(reading, units, node);
  const count = node.count === undefined ? 1 : toNumber(node.count);
  return mass && reading.acceptWhole('plates', count, spanOf(node), `${count} plates`)
    ? [{ count, mass }]
    : [];
}

/** `4-32 by 2 kg pairs`: the unit stands once, at the end. */
function buildRange(reading: EntryReading, units: LineUnits, node: Holed<ast.MassRange>): MassRange[] {
  if (!present(node) || !present(node.low)) return [];
  const span = spanOf(node);
  // One unit is for the whole range, so that one complaint is enough.
  if (!hasUnit(reading, units) && units.units.size === 0) {
    reportBareMass(reading, span, textOf(node), units);
    return [];
  }
  const low = buildMass(reading, units, node.low);
  const high = low && buildMass(reading, units, node.high);
  if (!low || !high) return [];
  if (!node.step) {
    reading.expect(
      'missing-value',
      span,
      `Expected the step from one weight to the next, such as ${textOf(node)} by 2 kg`,
    );
    return [];
  }
  const step = buildMass(reading, units, node.step);
  if (!step || !reading.acceptOrder(low.grams, high.grams, span, 'the lower to the higher weight')) return [];
  if (step.grams === 0) {
    reading.report('range-order', span, 'The step from one weight to the next is above 0');
    return [];
  }
  return [{ low, high, step, ...(node.sold && { sold: node.sold }) }];
}
