import { foldName } from '../text/names.ts';
import { findMuscle } from '../vocabulary/muscles.ts';
import { type BlockWork, isWorking, type SetWork } from './block-work.ts';
import { countMuscleSets, type MuscleWork } from './fractional-sets.ts';
import { type Input, type Omission, type Result, toResult } from './result.ts';
import { nameMovement } from './series-sets.ts';
import type { SessionWork } from './session-work.ts';

/** What sets are counted from: a session, or the day of a plan. */
export type SummedBlocks = Pick<SessionWork, 'blocks' | 'context'>;

/** The sets of one muscle or of one movement pattern. */
export interface NamedSets {
  readonly name: string;
  /** Sets; of a muscle the hard ones, the indirect at their fraction. */
  readonly result: Result;
}

export interface SetCounts {
  /** Most sets first. */
  readonly counts: readonly NamedSets[];
  /** Movements that are in no count, and why. */
  readonly omitted: readonly Omission[];
}

/** One movement's sets, and what they count for. */
interface Contribution {
  readonly movement: string;
  readonly name: string;
  readonly sets: number;
  readonly fraction: number;
}

/** Hard sets of each muscle: a direct one counts 1, an indirect one the fraction that its exercise writes. */
export function countSetsByMuscle(sessions: readonly SummedBlocks[]): SetCounts {
  const { contributions, omitted } = collect(sessions, 'hardSets', ({ movement, name }) => {
    if (!movement) return 'no definition, so its muscles are unknown';
    if (movement.entry.muscles.length === 0) return 'its definition names no muscles';
    return movement.entry.muscles.map((muscle) => ({
      movement: name,
      name: findMuscle(muscle.name.text)?.name ?? foldName(muscle.name.text),
      fraction: muscle.share,
    }));
  });
  return {
    counts: groupByName(contributions).map(([name, parts]) => ({ name, result: toMuscleResult(parts) })),
    omitted,
  };
}

/** Working sets of each movement pattern. */
export function countSetsByPattern(sessions: readonly SummedBlocks[]): SetCounts {
  const { contributions, omitted } = collect(sessions, 'sets', ({ movement, name }) => {
    if (!movement) return 'no definition, so its pattern is unknown';
    const { pattern } = movement.entry;
    return pattern
      ? [{ movement: name, name: foldName(pattern.text), fraction: 1 }]
      : 'its definition names no pattern';
  });
  const counts = groupByName(contributions).map(([name, parts]) => ({
    name,
    result: toPatternResult(parts),
  }));
  return { counts, omitted };
}

type Movement = ReturnType<SessionWork['context']['findMovement']>;

function collect(
  sessions: readonly SummedBlocks[],
  sum: 'sets' | 'hardSets',
  assign: (of: { movement: Movement; name: string }) => readonly Omit<Contribution, 'sets'>[] | string,
): { contributions: Contribution[]; omitted: Omission[] } {
  const bySets = new Map<string, { movement: Movement; name: string; sets: number }>();
  for (const { blocks, context } of sessions) {
    for (const { set, work } of blocks.flatMap(listWorking)) {
      if (work[sum] === 0) continue;
      const movement = context.findMovement(set.line.name.text);
      const { key, name } = nameMovement(movement, set.line.name.text);
      const entry = bySets.get(key) ?? { movement, name, sets: 0 };
      bySets.set(key, { ...entry, sets: entry.sets + work[sum] });
    }
  }
  const contributions: Contribution[] = [];
  const omitted: Omission[] = [];
  for (const { sets, ...of } of bySets.values()) {
    const assigned = assign(of);
    if (typeof assigned === 'string') omitted.push({ what: of.name, why: assigned });
    else contributions.push(...assigned.map((part) => ({ ...part, sets })));
  }
  return { contributions, omitted };
}

function listWorking({ block, sets }: BlockWork): readonly SetWork[] {
  return sets.filter(({ set }) => isWorking(set, block));
}

function groupByName(contributions: readonly Contribution[]): [string, Contribution[]][] {
  const byName = new Map<string, Contribution[]>();
  for (const part of contributions) {
    const same = byName.get(part.name);
    if (same) same.push(part);
    else byName.set(part.name, [part]);
  }
  const size = ([, parts]: [string, Contribution[]]) => countMuscleSets(parts).fractional;
  return [...byName].sort((a, b) => size(b) - size(a) || (a[0] < b[0] ? -1 : 1));
}

function toMuscleResult(parts: readonly (Contribution & MuscleWork)[]): Result {
  const { direct, fractional, total } = countMuscleSets(parts);
  return toResult({
    value: fractional,
    unit: 'sets',
    method: 'fractional-sets',
    inputs: [
      ...parts.map(({ movement, sets, fraction }): Input => {
        const label = fraction === 1 ? movement : `${movement} (counts ${Number(fraction.toFixed(2))})`;
        return { label, value: sets, unit: 'sets' };
      }),
      { label: 'direct', value: direct, unit: 'sets' },
      { label: 'direct and indirect', value: total, unit: 'sets' },
    ],
  });
}

function toPatternResult(parts: readonly Contribution[]): Result {
  return toResult({
    value: parts.reduce((total, { sets }) => total + sets, 0),
    unit: 'sets',
    method: 'pattern-sets',
    inputs: parts.map(({ movement, sets }) => ({ label: movement, value: sets, unit: 'sets' })),
  });
}
