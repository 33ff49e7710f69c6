/** What a circuit needs, repeats and balances, and how long a round of it will take. */
import { hasEquipment, hasInventory } from '../checks/inventory.ts';
import { predictDuration } from '../measures/predicted-duration.ts';
import type { Result } from '../measures/result.ts';
import type { Block } from '../model/entry.ts';
import type { Movement } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { printLoad } from '../printing/print-load.ts';
import { findEquipment } from '../vocabulary/equipment.ts';
import {
  areOpposite,
  type Circuit,
  type CircuitLine,
  isAlwaysThere,
  listDemands,
  listDirectMuscles,
  listNeeds,
  patternOf,
} from './circuit.ts';

/** Something that the definitions of several movements name, with those movements in the order of their lines. */
export interface Shared {
  readonly what: string;
  readonly movements: readonly string[];
}

/** Two sides that coaches hold against each other, both in the circuit. */
export interface Balanced {
  readonly one: Shared;
  readonly other: Shared;
}

export interface CircuitFacts {
  /** Equipment, each with the movements that need it. */
  readonly needs: readonly Shared[];
  /** All places that list what they have, with what they lack for it; the place of the text first. */
  readonly places: readonly { readonly name: string; readonly lacks: readonly string[] }[];
  readonly repeated: {
    readonly patterns: readonly Shared[];
    readonly muscles: readonly Shared[];
    readonly positions: readonly Shared[];
    readonly trunk: readonly Shared[];
  };
  readonly balanced: readonly Balanced[];
  /** Implements that several movements share at different loads. */
  readonly reloaded: readonly {
    readonly implement: string;
    readonly loads: readonly { readonly movement: string; readonly load: string }[];
  }[];
  /** Seconds of one round, rests between rounds left out. */
  readonly roundTime?: Result;
  /** Movements without a definition: nothing is known of them. */
  readonly unknown: readonly string[];
}

export function describeCircuit(practice: Practice, circuit: Circuit, today: number): CircuitFacts {
  const { lines } = circuit;
  const group = (list: (movement: Movement) => readonly string[]): Shared[] => groupBy(lines, list);
  const repeat = (list: (movement: Movement) => readonly string[]): Shared[] =>
    group(list).filter(({ movements }) => movements.length > 1);
  const patterns = group((movement) => [patternOf(movement)].filter((pattern) => pattern !== undefined));
  const demands = group(listDemands);
  const needs = group((movement) => listNeeds(movement).filter((need) => !isAlwaysThere(need)));
  const roundTime = predictRound(practice, circuit, today);
  return {
    needs,
    places: listPlaces(practice, circuit),
    repeated: {
      patterns: patterns.filter(({ movements }) => movements.length > 1),
      muscles: repeat(listDirectMuscles),
      positions: repeat(({ entry }) => (entry.position ? [entry.position.text.toLowerCase()] : [])),
      trunk: demands.filter(({ movements }) => movements.length > 1),
    },
    balanced: [...pairOpposites(patterns), ...pairOpposites(demands)],
    reloaded: listReloaded(lines, needs),
    ...(roundTime && { roundTime }),
    unknown: [...new Set(lines.filter(({ movement }) => !movement).map(({ name }) => name))],
  };
}

function groupBy(lines: readonly CircuitLine[], list: (movement: Movement) => readonly string[]): Shared[] {
  const groups = new Map<string, string[]>();
  for (const { movement, name } of lines) {
    if (!movement) continue;
    for (const what of new Set(list(movement))) {
      const movements = groups.get(what) ?? [];
      groups.set(what, movements);
      if (!movements.includes(name)) movements.push(name);
    }
  }
  return [...groups].map(([what, movements]) => ({ what, movements }));
}

function pairOpposites(groups: readonly Shared[]): Balanced[] {
  return groups.flatMap((one, index) =>
    groups.slice(index + 1).flatMap((other) => (areOpposite(one.what, other.what) ? [{ one, other }] : [])),
  );
}

function listPlaces(practice: Practice, { lines, place: own }: Circuit): CircuitFacts['places'] {
  const places = practice.allPlaces().filter(({ entry }) => hasInventory(entry));
  const others = places.filter(({ key }) => key !== own?.key).sort((a, b) => (a.key < b.key ? -1 : 1));
  const ordered = own && hasInventory(own.entry) ? [own, ...others] : others;
  return ordered.map(({ name, entry }) => {
    const lacks = lines.flatMap(({ movement }) =>
      movement ? listNeeds(movement).filter((need) => !hasEquipment(entry, need, movement)) : [],
    );
    return { name, lacks: [...new Set(lacks)] };
  });
}

/** The first load of each line, where the lines of one implement differ in it. */
function listReloaded(lines: readonly CircuitLine[], needs: readonly Shared[]): CircuitFacts['reloaded'] {
  return needs.flatMap(({ what, movements }) => {
    const implement = findEquipment(what)?.implement;
    if (implement === undefined || implement === 'none') return [];
    const loads = lines.flatMap(({ name, line }) => {
      if (!movements.includes(name)) return [];
      const load = line.cells.flatMap(({ sets }) => sets).find((group) => group.load)?.load;
      return load?.kind === 'mass' ? [{ movement: name, load: printLoad(load) }] : [];
    });
    const isMixed =
      new Set(loads.map(({ load }) => load)).size > 1 &&
      new Set(loads.map(({ movement }) => movement)).size > 1;
    return isMixed ? [{ implement: what, loads }] : [];
  });
}

/** One round, by the athlete's own rounds where there are enough of them. */
function predictRound(
  practice: Practice,
  { block, athletes, day }: Circuit,
  today: number,
): Result | undefined {
  const once: Block = {
    ...block,
    rounds: 1,
    // The window of an amrap says how long all of it takes, not a round.
    kind: block.kind === 'amrap' ? 'for time' : block.kind,
    times: [],
    restsTaken: [],
    lines: block.lines.map((line) => ({ ...line, cells: line.cells.map(takeOne) })),
  };
  const { done: _done, cap: _cap, ...round } = once;
  return predictDuration(practice, round, {
    athlete: athletes[0]?.key ?? practice.resolveAthlete(''),
    beforeDay: day ?? today,
  });
}

/** A line's first set stands for every round. */
function takeOne<C extends Block['lines'][number]['cells'][number]>(cell: C): C {
  return { ...cell, sets: cell.sets.slice(0, 1).map((group) => ({ ...group, count: 1 })) };
}
