/** Help with a circuit, in words. Each is a fact of its own line; names are as they were defined. */
import { joinWords } from '../checks/check-context.ts';
import { printClock } from '../units/duration.ts';
import type { Reason } from './complement-reasons.ts';
import type { CircuitFacts, Shared } from './describe-circuit.ts';
import type { Complement } from './suggest-complements.ts';

const PLACES_SHOWN = 4;

/** `Needs dumbbell, mat`, `Fits at Herne Loft`, `Repeats quadriceps (Goblet Squat, Split Squat)`, … */
export function printCircuitFacts(facts: CircuitFacts): string[] {
  const { needs, repeated, balanced, reloaded, roundTime, unknown } = facts;
  const repeats = [...repeated.patterns, ...repeated.muscles, ...repeated.trunk];
  return [
    needs.length > 0 ? `Needs ${needs.map(({ what }) => what).join(', ')}` : undefined,
    ...printPlaces(facts),
    repeats.length > 0 ? `Repeats ${repeats.map(printShared).join(', ')}` : undefined,
    repeated.positions.length > 0 ? `Position: ${repeated.positions.map(printShared).join(', ')}` : undefined,
    balanced.length > 0
      ? `Balances ${balanced.map(({ one, other }) => `${printShared(one)} with ${printShared(other)}`).join(', ')}`
      : undefined,
    ...reloaded.map(
      ({ implement, loads }) =>
        `Different loads of ${implement}: ${loads.map(({ movement, load }) => `${movement} ${load}`).join(', ')}`,
    ),
    roundTime?.value !== undefined ? printRound(roundTime) : undefined,
    unknown.length > 0 ? `Not known, for it is not defined: ${unknown.join(', ')}` : undefined,
  ].filter((line) => line !== undefined);
}

function printPlaces({ places }: CircuitFacts): string[] {
  const fitting = places.filter(({ lacks }) => lacks.length === 0).map(({ name }) => name);
  const lacking = places.filter(({ lacks }) => lacks.length > 0);
  return [
    ...(fitting.length > 0 ? [`Fits at ${joinWords(fitting.slice(0, PLACES_SHOWN), 'and')}`] : []),
    ...lacking.slice(0, PLACES_SHOWN).map(({ name, lacks }) => `${name} has no ${joinWords(lacks, 'or')}`),
  ];
}

function printShared({ what, movements }: Shared): string {
  return `${what} (${movements.join(', ')})`;
}

function printRound({ value, spread, remark }: NonNullable<CircuitFacts['roundTime']>): string {
  const range =
    spread && spread.low < spread.high ? `, ${printClock(spread.low)} to ${printClock(spread.high)}` : '';
  const behind = remark ? `, ${remark}` : '';
  return `A round takes about ${printClock(value!)}${range}${behind}`;
}

/** `horizontal pull (Push-up: horizontal push)`: what the suggested movement says, and beside it what another does. */
export function printReason({ facts: [own, other] }: Reason): string {
  return `${own.says} (${other.name}: ${other.says})`;
}

/** Its first reasons. */
export function printComplement({ reasons }: Complement, shown = 2): string {
  return reasons.slice(0, shown).map(printReason).join('; ');
}
