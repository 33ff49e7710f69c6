import type { ExerciseEntry } from '../model/entry.ts';
import { foldName } from '../text/names.ts';
import { findEquipment } from '../vocabulary/equipment.ts';

/** A movement as defined, by the workspace or the built-in library. */
export interface Movement {
  /** Its defined spelling. */
  readonly name: string;
  /** The folded defined spelling: one key whatever spelling a line used. */
  readonly key: string;
  readonly entry: ExerciseEntry;
  readonly uri: string;
  /** Line of its header in that file. */
  readonly line: number;
  readonly builtIn: boolean;
}

export type WorkKind = 'strength' | 'carry' | 'hold' | 'jump' | 'conditioning' | 'mobility';

export function workOf(movement: Movement | undefined): WorkKind {
  return (movement?.entry.work && (foldName(movement.entry.work.text) as WorkKind)) || 'strength';
}

/** What a movement is loaded with, by the first of its needs that bears load. */
export function implementOf(
  movement: Movement | undefined,
): 'bar' | 'dumbbell' | 'kettlebell' | 'stack' | 'none' {
  for (const need of movement?.entry.needs ?? []) {
    const implement = findEquipment(need.text)?.implement;
    if (implement !== undefined && implement !== 'none') return implement;
  }
  return 'none';
}
