/** Movements that would complement a circuit that was begun, each with reasons that name the two facts they rest on. */
import { findAvoided } from '../checks/check-avoid.ts';
import { hasEquipment, hasInventory } from '../checks/inventory.ts';
import type { Block } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
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
  const usesOf = ({ key }: Movement): number =>
    circuit.athletes.reduce((sum, athlete) => sum + countUses(practice, athlete.key, key), 0);
  const atHand = new Set(present.flatMap(listNeeds));
  const candidates = [...practice.allMovements()]
    .filter((movement) => isCandidate(practice, circuit, { present, atHand }, movement))
    .map((movement) => {
      const reasons = listReasons(practice, circuit, present, movement);
      const score = scoreReasons(reasons) + (movement.builtIn ? 0 : 1);
      return { movement, reasons, score, uses: usesOf(movement) };
    })
    .sort((a, b) => b.score - a.score || b.uses - a.uses || (a.movement.key < b.movement.key ? -1 : 1));
  return takeByPattern(candidates, limit).map(({ movement, reasons }) => ({ movement, reasons }));
}

function isCandidate(
  practice: Practice,
  { place, athletes, day }: Circuit,
  { present, atHand }: { readonly present: readonly Movement[]; readonly atHand: ReadonlySet<string> },
  movement: Movement,
): boolean {
  const pattern = patternOf(movement);
  if (pattern === undefined || OTHER_WORK.has(workOf(movement)) || OTHER_WORK.has(pattern)) return false;
  if (present.some((other) => other.key === movement.key || patternOf(other) === pattern)) return false;
  const needs = listNeeds(movement);
  if (!needs.every((need) => atHand.has(need) || isAlwaysThere(need))) return false;
  if (place && hasInventory(place.entry) && !needs.every((need) => hasEquipment(place.entry, need, movement)))
    return false;
  // Without a day whatever is to be avoided at some time is.
  return athletes.every(
    ({ entry }) => !findAvoided(entry, movement, day ?? Number.NEGATIVE_INFINITY, practice),
  );
}

const usesByRecords = new WeakMap<
  readonly SessionRecord[],
  { readonly version: number; readonly key: string; readonly count: number }
>();

/** In how many lines an athlete did a movement; counted once until a session that names it changes. */
function countUses(practice: Practice, athlete: string, key: string): number {
  const records = practice.sessionsWith(athlete, key);
  const version = practice.movementsVersion;
  const known = usesByRecords.get(records);
  if (known?.version === version && known.key === key) return known.count;
  const count = records
    .flatMap(({ entry }) => entry.blocks.flatMap(({ lines }) => lines))
    .filter(({ name, purpose }) => purpose !== 'warmup' && practice.keyOf(name.text) === key).length;
  usesByRecords.set(records, { version, key, count });
  return count;
}

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
