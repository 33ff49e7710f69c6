const NOTHING: readonly never[] = Object.freeze([]);

/**
 * A list that is complete: as long as what is in it, for one that grew keeps room for more, and nearly all that a
 * practice takes in memory is short lists. All empty ones are one.
 */
export function settle<T>(list: readonly T[]): readonly T[] {
  return list.length === 0 ? NOTHING : list.slice();
}
