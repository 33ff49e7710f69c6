import type { Modifier, SetGroup } from '../model/quantity.ts';
import { printLoad } from '../printing/print-load.ts';
import { printModifier } from '../printing/print-modifiers.ts';
import { printSetGroup } from '../printing/print-sets.ts';

/**
 * Sets and modifiers that a new line may begin with: `3x5 @ 80 kg, tempo 3-1-X-0`. Ratings, times taken and drops are
 * left out: they say how it went on another day.
 */
export function printCell(sets: readonly SetGroup[], modifiers: readonly Modifier[]): string {
  let isWritten = false;
  const kept = sets.map((set, index): SetGroup => {
    const { within: _within, ...rest } = set;
    const next = sets[index + 1];
    // Sets that share a load write it at the last of them; once a load stands, each set writes its own.
    const ownLoad = set.load !== undefined && (isWritten || !next || !isSameLoad(set, next));
    isWritten ||= ownLoad;
    return { ...rest, ownLoad, ratings: [], drops: [] };
  });
  return [...kept.map(printSetGroup), ...modifiers.map(printModifier)].join(', ');
}

export function isSameLoad(one: SetGroup, other: SetGroup): boolean {
  return (one.load && printLoad(one.load)) === (other.load && printLoad(other.load));
}
