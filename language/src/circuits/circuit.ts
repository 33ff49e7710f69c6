/** What the movements of a circuit say of themselves, and whom and where it is for: what all help with it rests on. */
import { toDayNumber } from '../calendar/iso-date.ts';
import type { Block, MovementLine, PlanEntry, SessionEntry } from '../model/entry.ts';
import type { Athlete, Place } from '../practice/athlete.ts';
import type { Movement } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { foldName } from '../text/names.ts';
import { findEquipment } from '../vocabulary/equipment.ts';
import { findMuscle } from '../vocabulary/muscles.ts';

export type Training = SessionEntry | PlanEntry;

/** One fact that a definition or an athlete's entry states. */
export interface Fact {
  readonly about: 'movement' | 'athlete';
  readonly name: string;
  /** `horizontal pull`, `resists flexion`, `to avoid Dip`. */
  readonly says: string;
}

export interface CircuitLine {
  readonly line: MovementLine;
  /** As defined, else as written. */
  readonly name: string;
  readonly movement?: Movement;
}

export interface Circuit {
  readonly block: Block;
  /** Its working lines. */
  readonly lines: readonly CircuitLine[];
  readonly athletes: readonly Athlete[];
  readonly place?: Place;
  /** Since 1970-01-01; absent where the text gives no day. */
  readonly day?: number;
}

/** Kinds of block in which several movements share a round. */
export const CIRCUIT_KINDS: ReadonlySet<Block['kind']> = new Set([
  'circuit',
  'superset',
  'giant set',
  'amrap',
  'for time',
]);

export function readCircuit(practice: Practice, training: Training, block: Block): Circuit {
  const lines = block.lines
    .filter((line) => line.purpose !== 'warmup')
    .map((line): CircuitLine => {
      const movement = practice.findMovement(line.name.text);
      return { line, name: movement?.name ?? line.name.text, ...(movement && { movement }) };
    });
  const named = training.athletes.map(({ text }) => text);
  const keys = named.length > 0 ? named : [practice.resolveAthlete('')];
  const athletes = keys.flatMap((name) => practice.findAthlete(name) ?? []);
  const place = training.place && practice.findPlace(training.place.text);
  const date = training.kind === 'session' ? training.date?.date : training.starts?.date;
  return {
    block,
    lines,
    athletes,
    ...(place && { place }),
    ...(date && { day: toDayNumber(date) }),
  };
}

/** Remembered as long as a movement is defined as it is: all movements are asked at each keystroke. */
function remember<T>(read: (movement: Movement) => T): (movement: Movement) => T {
  const known = new WeakMap<Movement, { readonly value: T }>();
  return (movement) => {
    const found = known.get(movement) ?? { value: read(movement) };
    known.set(movement, found);
    return found.value;
  };
}

/** Names of what a movement needs, each in its usual spelling. */
export const listNeeds = remember(({ entry }): readonly string[] =>
  entry.needs.map(({ text }) => findEquipment(text)?.name ?? foldName(text)),
);

/** What can be done anywhere needs nothing. */
export function isAlwaysThere(need: string): boolean {
  return findEquipment(need)?.alwaysThere === true;
}

export const patternOf = remember(({ entry }): string | undefined =>
  entry.pattern ? foldName(entry.pattern.text) : undefined,
);

/** The muscles that it trains in full. */
export const listDirectMuscles = remember(({ entry }): readonly string[] =>
  entry.muscles
    .filter(({ share }) => share === 1)
    .map(({ name }) => findMuscle(name.text)?.name ?? foldName(name.text)),
);

/** `resists flexion`, `moves rotation`. */
export const listDemands = remember(({ entry }): readonly string[] =>
  entry.trunk.map(({ demand, direction }) => `${demand} ${foldName(direction.text)}`),
);

/** Sides that coaches set against each other (common practice). */
const OPPOSITES: readonly (readonly [string, string])[] = [
  ['horizontal push', 'horizontal pull'],
  ['vertical push', 'vertical pull'],
  ['squat', 'hinge'],
  ['lunge', 'hinge'],
  ['resists flexion', 'resists extension'],
  ['moves flexion', 'moves extension'],
];

/** Whether one pattern, or one demand on the trunk, is the other side of another. */
export function areOpposite(one: string, other: string): boolean {
  return OPPOSITES.some(
    ([left, right]) => (left === one && right === other) || (left === other && right === one),
  );
}
