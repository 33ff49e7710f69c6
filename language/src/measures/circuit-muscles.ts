import type { Block } from '../model/entry.ts';
import { type Movement, workOf } from '../practice/movement.ts';
import { foldName } from '../text/names.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import { findMuscle } from '../vocabulary/muscles.ts';
import { findCell } from './expand-sets.ts';
import { type Omission, type Result, toResult } from './result.ts';
import { nameMovement } from './series-sets.ts';

/** A muscle that a round loads directly more than once. */
export interface RepeatedMuscle {
  readonly muscle: string;
  /** In the order of the lines. */
  readonly movements: readonly string[];
  /** Sets of it in one pass of the list. */
  readonly result: Result;
}

/**
 * Muscles that two or more lines of a circuit load directly, so that they get no rest within the round. A pass done
 * twice says nothing, since it repeats them all; where lines take turns, no two of them share a round.
 */
export function findRepeatedMuscles(
  findMovement: (name: string) => Movement | undefined,
  block: Block,
  athleteIndex = 0,
): { readonly muscles: readonly RepeatedMuscle[]; readonly omitted: readonly Omission[] } {
  if (!BLOCK_KINDS[block.kind].inRounds || block.alternating) return { muscles: [], omitted: [] };
  const byMuscle = new Map<string, string[]>();
  const omitted: Omission[] = [];
  for (const line of block.lines) {
    const sets = findCell(line, athleteIndex)?.sets ?? [];
    if (line.purpose === 'warmup' || sets.every(({ amount }) => amount?.kind === 'skipped')) continue;
    const movement = findMovement(line.name.text);
    const { name } = nameMovement(movement, line.name.text);
    if (!movement) omitted.push({ what: name, why: 'no definition, so its muscles are unknown' });
    if (!movement || workOf(movement) === 'mobility') continue;
    for (const { name: written, share } of movement.entry.muscles) {
      if (share !== 1) continue;
      const muscle = findMuscle(written.text)?.name ?? foldName(written.text);
      byMuscle.set(muscle, [...(byMuscle.get(muscle) ?? []), name]);
    }
  }
  const muscles = [...byMuscle]
    .filter(([, movements]) => movements.length >= 2)
    .map(([muscle, movements]) => ({ muscle, movements, result: toRoundResult(movements, omitted) }));
  return { muscles, omitted };
}

function toRoundResult(movements: readonly string[], omitted: readonly Omission[]): Result {
  const inputs = movements.map((label) => ({ label, value: 1, unit: 'sets' as const }));
  return toResult({ value: movements.length, unit: 'sets', method: 'circuit-muscles', inputs, omitted });
}
