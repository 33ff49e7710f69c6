/** Why a movement would complement a circuit: each reason is two facts, of the definitions or of an athlete's entry. */
import { toDayNumber } from '../calendar/iso-date.ts';
import { joinWords } from '../checks/check-context.ts';
import type { AthleteEntry } from '../model/entry.ts';
import type { Movement } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import {
  areOpposite,
  type Circuit,
  type Fact,
  isAlwaysThere,
  listDemands,
  listDirectMuscles,
  listNeeds,
  patternOf,
} from './circuit.ts';

export type ReasonKind = 'equipment' | 'pattern' | 'muscles' | 'trunk' | 'goal' | 'avoid';

export interface Reason {
  readonly kind: ReasonKind;
  /** What the suggested movement says, and what stands beside it in the circuit or in an athlete's entry. */
  readonly facts: readonly [own: Fact, other: Fact];
}

export function listReasons(
  practice: Practice,
  circuit: Circuit,
  present: readonly Movement[],
  movement: Movement,
): Reason[] {
  const found = [
    explainPattern(present, movement),
    explainMuscles(present, movement),
    explainTrunk(present, movement),
    explainGoal(practice, circuit, movement),
    explainEquipment(present, movement),
    explainAvoid(circuit, movement),
  ];
  return found.filter((reason) => reason !== undefined);
}

function fact({ name }: Movement, says: string): Fact {
  return { about: 'movement', name, says };
}

/** A pattern not yet used: beside its other side, if that is there. */
function explainPattern(present: readonly Movement[], movement: Movement): Reason | undefined {
  const pattern = patternOf(movement)!;
  const named = present.filter((other) => patternOf(other) !== undefined);
  const beside = named.find((other) => areOpposite(pattern, patternOf(other)!)) ?? named.at(-1);
  if (!beside) return undefined;
  return { kind: 'pattern', facts: [fact(movement, pattern), fact(beside, patternOf(beside)!)] };
}

/** Muscles that no other line trains in full; set against the line before. */
function explainMuscles(present: readonly Movement[], movement: Movement): Reason | undefined {
  const own = listDirectMuscles(movement);
  const used = new Set(present.flatMap(listDirectMuscles));
  const beside = present.findLast((other) => listDirectMuscles(other).length > 0);
  if (own.length === 0 || !beside || own.some((muscle) => used.has(muscle))) return undefined;
  const says = (muscles: readonly string[]): string => `trains ${joinWords(muscles, 'and')}`;
  return {
    kind: 'muscles',
    facts: [fact(movement, says(own)), fact(beside, says(listDirectMuscles(beside)))],
  };
}

function explainTrunk(present: readonly Movement[], movement: Movement): Reason | undefined {
  for (const demand of listDemands(movement)) {
    for (const other of present) {
      const opposite = listDemands(other).find((candidate) => areOpposite(demand, candidate));
      if (opposite) return { kind: 'trunk', facts: [fact(movement, demand), fact(other, opposite)] };
    }
  }
  return undefined;
}

/** The movement that an athlete works toward. */
function explainGoal(practice: Practice, { athletes }: Circuit, movement: Movement): Reason | undefined {
  for (const athlete of athletes) {
    const goal = athlete.entry.goals.find((each) => practice.keyOf(each.movement.text) === movement.key);
    if (!goal) continue;
    const says = `a goal in it${goal.by ? ` by ${goal.by}` : ''}`;
    return {
      kind: 'goal',
      facts: [fact(movement, patternOf(movement)!), { about: 'athlete', name: athlete.name, says }],
    };
  }
  return undefined;
}

/** What is out already, or nothing at all. */
function explainEquipment(present: readonly Movement[], movement: Movement): Reason | undefined {
  const needs = listNeeds(movement).filter((need) => !isAlwaysThere(need));
  const equipped = present.find((other) => listNeeds(other).some((need) => !isAlwaysThere(need)));
  if (needs.length === 0) {
    return (
      equipped && {
        kind: 'equipment',
        facts: [fact(movement, 'needs nothing'), fact(equipped, needsText(equipped))],
      }
    );
  }
  const sharing = present.find((other) => needs.some((need) => listNeeds(other).includes(need)));
  return (
    sharing && {
      kind: 'equipment',
      facts: [fact(movement, needsText(movement)), fact(sharing, needsText(sharing))],
    }
  );
}

function needsText(movement: Movement): string {
  return `needs ${joinWords(
    listNeeds(movement).filter((need) => !isAlwaysThere(need)),
    'and',
  )}`;
}

/** Where something is to be avoided, that this is something else. */
function explainAvoid({ athletes, day }: Circuit, movement: Movement): Reason | undefined {
  for (const athlete of athletes) {
    const avoided = athlete.entry.avoid.find((each) => isActive(each, day));
    if (!avoided) continue;
    const until = avoided.until ? ` until ${avoided.until}` : '';
    return {
      kind: 'avoid',
      facts: [
        fact(movement, patternOf(movement)!),
        { about: 'athlete', name: athlete.name, says: `to avoid ${avoided.what.text}${until}` },
      ],
    };
  }
  return undefined;
}

function isActive({ until }: AthleteEntry['avoid'][number], day: number | undefined): boolean {
  return until === undefined || day === undefined || toDayNumber(until) >= day;
}
