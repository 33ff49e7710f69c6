/** Movements that would complement a circuit that was begun, each with reasons that name the two facts they rest on. */
import { findAvoided } from '../checks/check-avoid.ts';
import { hasEquipment, hasInventory } from '../checks/inventory.ts';
import { rememberByHistory } from '../measures/remember.ts';
import type { Block } from '../model/entry.ts';
import { type Movement, workOf } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import {
  areOpposite,
  type Circuit,
  isAlwaysThere,
  listNeeds,
  patternOf,
  readCircuit,
  type Training,
} from './circuit.ts';
import { listReasons, type Reason, type ReasonKind } from './complement-reasons.ts';

export interface Complement {
  readonly movement: Movement;
  /** The weightiest first. */
  readonly reasons: readonly Reason[];
}

/** How much a reason counts: the other side of a pattern before fresh muscles before the rest (chosen here). */
const WEIGHTS: Readonly<Record<ReasonKind, number>> = {
  pattern: 2,
  muscles: 3,
  goal: 2,
  trunk: 2,
  equipment: 1,
  avoid: 0,
};
const OPPOSITE_PATTERN = 3;

/** Preparation and machines for the heart are chosen by other lights. */
const OTHER_WORK: ReadonlySet<string> = new Set(['mobility', 'conditioning']);

/**
 * At most `limit` movements, the best first and no pattern twice before each had its turn; none for a circuit without a
 * movement that is defined. Nothing that needs more equipment than the circuit has out, that its place lacks, that
 * repeats a pattern, or that one of its athletes is to avoid. Of equals it is the one that its athletes did more often.
 */
export function suggestComplements(
  practice: Practice,
  session: Training,
  block: Block,
  limit: number,
): Complement[] {
  const circuit = readCircuit(practice, session, block);
  const present = circuit.lines.flatMap(({ movement }) => movement ?? []);
  if (present.length === 0) return [];
  const uses = circuit.athletes.map(({ key }) => countUses(practice, key));
  const usesOf = ({ key }: Movement): number => uses.reduce((sum, each) => sum + (each.get(key) ?? 0), 0);
  const candidates = [...practice.allMovements()]
    .filter((movement) => isCandidate(practice, circuit, present, movement))
    .map((movement) => {
      const reasons = listReasons(practice, circuit, present, movement);
      return { movement, reasons, score: scoreReasons(reasons) + (movement.builtIn ? 0 : 1) };
    })
    .sort(
      (a, b) =>
        b.score - a.score ||
        usesOf(b.movement) - usesOf(a.movement) ||
        (a.movement.key < b.movement.key ? -1 : 1),
    );
  return takeByPattern(candidates, limit).map(({ movement, reasons }) => ({ movement, reasons }));
}

function isCandidate(
  practice: Practice,
  { place, athletes, day }: Circuit,
  present: readonly Movement[],
  movement: Movement,
): boolean {
  const pattern = patternOf(movement);
  if (pattern === undefined || OTHER_WORK.has(workOf(movement)) || OTHER_WORK.has(pattern)) return false;
  if (present.some((other) => other.key === movement.key || patternOf(other) === pattern)) return false;
  const atHand = new Set(present.flatMap(listNeeds));
  const needs = listNeeds(movement);
  if (!needs.every((need) => atHand.has(need) || isAlwaysThere(need))) return false;
  if (place && hasInventory(place.entry) && !needs.every((need) => hasEquipment(place.entry, need, movement)))
    return false;
  // Without a day whatever is to be avoided at some time is.
  return athletes.every(
    ({ entry }) => !findAvoided(entry, movement, day ?? Number.NEGATIVE_INFINITY, practice),
  );
}

/** In how many lines an athlete did each movement, by its key. */
const countUses = rememberByHistory((practice, athlete): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const { entry } of practice.sessionsOf(athlete))
    for (const { lines } of entry.blocks)
      for (const { name, purpose } of lines) {
        const key = purpose === 'warmup' ? undefined : practice.findMovement(name.text)?.key;
        if (key !== undefined) counts.set(key, (counts.get(key) ?? 0) + 1);
      }
  return counts;
});

function scoreReasons(reasons: readonly Reason[]): number {
  return reasons.reduce((sum, { kind, facts: [one, other] }) => {
    const isOpposite = kind === 'pattern' && areOpposite(one.says, other.says);
    return sum + WEIGHTS[kind] + (isOpposite ? OPPOSITE_PATTERN : 0);
  }, 0);
}

function takeByPattern<C extends Complement>(candidates: readonly C[], limit: number): C[] {
  const turns = new Map<string, number>();
  const ranked = candidates.map((candidate, index) => {
    const pattern = patternOf(candidate.movement)!;
    const turn = turns.get(pattern) ?? 0;
    turns.set(pattern, turn + 1);
    return { candidate, turn, index };
  });
  return ranked
    .sort((a, b) => a.turn - b.turn || a.index - b.index)
    .slice(0, limit)
    .map(({ candidate }) => candidate);
}
