import {
  findLoadable,
  type Loading,
  POUND_ROUNDING_GRAMS,
  type Rack,
} from '@plimsoll/language/measures/loadable';
import type { PlaceEntry } from '@plimsoll/language/model/entry';
import type { Mass } from '@plimsoll/language/model/quantity';
import { GRAMS_PER, type MassUnit, printMass } from '@plimsoll/language/units/mass';
import { printNumber } from '@plimsoll/language/units/number';

/** What an inventory is counted in, so that its sums are exact: grams, or hundredths of a pound. */
interface Scale {
  readonly unit: MassUnit;
  readonly toWhole: (mass: Mass) => number;
  readonly print: (whole: number) => string;
  readonly tolerance: number;
}

const GRAMS: Scale = {
  unit: 'kg',
  toWhole: ({ grams }) => grams,
  print: (whole) => printMass(whole, 'kg'),
  tolerance: 0,
};
const HUNDREDTHS: Scale = {
  unit: 'lb',
  toWhole: ({ written, unit, grams }) => Math.round((unit === 'lb' ? written : grams / GRAMS_PER.lb) * 100),
  print: (whole) => `${printNumber(whole / 100, 2)} lb`,
  tolerance: Math.ceil((POUND_ROUNDING_GRAMS / GRAMS_PER.lb) * 100),
};

/** `20 kg bar, each side 25 + 2.5 kg`, or the nearest that a place can load; nothing where it lists no bar. */
export function describePlates(target: Mass, { bars, plates, collars }: PlaceEntry): string | undefined {
  const masses = [...bars, ...plates.map(({ mass }) => mass), ...(collars ? [collars] : [])];
  const isPounds = masses.every(({ unit }) => unit === 'lb');
  const scale = isPounds ? HUNDREDTHS : GRAMS;
  const rack: Rack = {
    bars: bars.map(scale.toWhole),
    collars: collars ? scale.toWhole(collars) : 0,
    plates: plates.map(({ count, mass }) => ({ count, weight: scale.toWhole(mass) })),
  };
  // Exact in one unit; across units, or in an inventory of both, rounding must not tell equal loads apart.
  const isMixed = [...masses, target].some(({ unit }) => unit !== scale.unit);
  const tolerance = isMixed ? Math.max(scale.tolerance, isPounds ? 0 : POUND_ROUNDING_GRAMS) : 0;
  const found = findLoadable(scale.toWhole(target), rack, tolerance);
  if (!found) return undefined;
  if (found.fit === 'exact') return printLoading(found.nearest, scale);
  const around = [found.below, found.above].filter((loading) => loading !== undefined);
  const nearest = around.map((loading) => `${scale.print(loading.total)} (${printLoading(loading, scale)})`);
  return `not to be made exactly; nearest ${nearest.join(' or ')}`;
}

function printLoading({ bar, perSide }: Loading, { print }: Scale): string {
  if (perSide.length === 0) return `empty ${print(bar)} bar`;
  const numbers = perSide.map((plate) => print(plate).replace(/ \w+$/, ''));
  return `${print(bar)} bar, each side ${numbers.join(' + ')} ${print(perSide[0]!).replace(/^.* /, '')}`;
}
