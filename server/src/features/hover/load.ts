import { METHODS } from '@plimsoll/language/measures/methods';
import {
  findRepsAtPercent,
  HIGHEST_REPS,
  type OneRepMaxFormula,
} from '@plimsoll/language/measures/one-rep-max';
import { findChartPercent, findChartReps } from '@plimsoll/language/measures/percent-of-max';
import type { Load, Mass } from '@plimsoll/language/model/quantity';
import { implementOf } from '@plimsoll/language/practice/movement';
import { printClock } from '@plimsoll/language/units/duration';
import { fromGrams } from '@plimsoll/language/units/mass';
import { printNumber, printRange } from '@plimsoll/language/units/number';
import { escapeMarkdown, joinLines } from '../../markdown.ts';
import type { FeatureContext } from '../context.ts';
import type { LocatedAs } from '../hover.ts';
import { describePlates } from './plates.ts';
import { findWhoTrains } from './who-trains.ts';

/** A load in kilograms and pounds, and for a bar what goes on each side of it at that place. */
export function hoverLoad(
  context: FeatureContext,
  uri: string,
  located: LocatedAs<'load'>,
): string | undefined {
  const { load } = located;
  switch (load.kind) {
    case 'mass':
      return joinLines([describeMass(load), describeBar(context, uri, located, load)]);
    case 'sides':
      return `Left ${inBoth(load.left.grams)}; right ${inBoth(load.right.grams)}`;
    case 'bodyweight':
      return describeBodyWeight(load);
    case 'bodyweight-share':
      return `${printNumber(load.percent, 1)} % of body mass`;
    case 'pin':
      return `Pin ${load.pin}${load.plus ? ` and ${inBoth(load.plus.grams)}` : ''}: a pin has no kilograms, so it enters no volume`;
    case 'band':
      return `${escapeMarkdown(load.band)} band: a band has no kilograms, so it enters no volume`;
    case 'setting':
      return describeSetting(load);
    case 'percent':
      return joinLines([
        `${printRange(load.low, load.high ?? load.low, 1)} % of the max${load.of ? ` of ${escapeMarkdown(load.of.text)}` : ''} that is valid on the day`,
        describeRepsAt(load.high ?? load.low, context.settings.formula),
      ]);
    case 'offset':
      return "So much off the top set's load";
    case 'target':
      return `To be chosen on the day, so that the set ends at ${load.scale.toUpperCase()} ${printRange(load.low, load.high ?? load.low, 1)}`;
    case 'unrecorded':
      return 'The load was not recorded: totals with it are "at least"';
  }
}

/** How many reps to failure go with the heavier end: the row of the chart at it or above, and the formula that is set. */
function describeRepsAt(percent: number, formula: OneRepMaxFormula): string | undefined {
  const row = findChartReps(percent);
  const reps = findRepsAtPercent(percent, formula);
  const name = METHODS[formula].title.replace(/^.*\((.*)\)$/, '$1');
  const parts = [
    row === undefined ? undefined : `NSCA chart ${row} (${findChartPercent(row)} %)`,
    reps === undefined || reps > HIGHEST_REPS ? undefined : `${name} ${printNumber(reps, 1)}`,
  ].filter((part) => part !== undefined);
  return parts.length > 0 ? `Reps to failure: ${parts.join(', ')}` : undefined;
}

function describeMass({
  mass,
  high,
  implements: count,
  other,
  chain,
  band,
}: Extract<Load, { kind: 'mass' }>): string {
  const range = high ? `${inBoth(mass.grams)} to ${inBoth(high.grams)}` : inBoth(mass.grams);
  const together = mass.grams + (other?.grams ?? (count - 1) * mass.grams);
  const parts = [
    count === 2 || other ? `**${inBoth(together)}** together` : `**${range}**`,
    count === 2 && !other ? `each ${range}` : undefined,
    other && `${inBoth(mass.grams)} in one hand, ${inBoth(other.grams)} in the other`,
    chain && `with ${inBoth(chain.grams)} of chain, which enters no volume`,
    band && `with a ${escapeMarkdown(band)} band, which enters no volume`,
  ];
  return parts.filter(Boolean).join('; ');
}

function describeBar(
  { practice }: FeatureContext,
  uri: string,
  located: LocatedAs<'load'>,
  load: Extract<Load, { kind: 'mass' }>,
): string | undefined {
  const movement = located.line && practice.findMovement(located.line.name.text);
  if (implementOf(movement) !== 'bar' || load.implements !== 1 || load.other || load.high) return undefined;
  const name = findWhoTrains(practice, uri, located)?.place;
  const place = name === undefined ? undefined : practice.findPlace(name);
  const plates = place && describePlates(load.mass, place.entry);
  return plates && `At ${escapeMarkdown(place.name)}: ${plates}`;
}

function describeBodyWeight({ sign, mass, pin, band }: Extract<Load, { kind: 'bodyweight' }>): string {
  if (!sign) return 'Body weight alone. What of it counts as load is said by the movement';
  const what = mass
    ? inBoth(mass.grams)
    : pin !== undefined
      ? `pin ${pin}`
      : `a ${escapeMarkdown(band ?? '')} band`;
  return sign === '+' ? `Body weight and ${what} added` : `Body weight with ${what} of help`;
}

function describeSetting({ setting, value, metres }: Extract<Load, { kind: 'setting' }>): string {
  switch (setting) {
    case 'height':
      return `${printNumber(value, 1)} cm high`;
    case 'power':
      return `${printNumber(value)} W`;
    case 'speed':
      return `${printNumber(value, 1)} km/h`;
    case 'pace':
      return `${printClock(value)} for ${printNumber(metres ?? 500)} m`;
  }
}

/** `85 kg = 187.4 lb`, as exact as anybody loads. */
function inBoth(grams: Mass['grams']): string {
  return `${printNumber(fromGrams(grams, 'kg'), 2)} kg = ${printNumber(fromGrams(grams, 'lb'), 1)} lb`;
}
