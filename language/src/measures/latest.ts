import { countBefore } from '../text/count-before.ts';

/** The last of a list in order of days that is not after a day; halving, for a history may hold thousands. */
export function findLatest<T extends { readonly day: number }>(
  list: readonly T[],
  day: number,
): T | undefined {
  return list[countBefore(list, (item) => item.day <= day) - 1];
}
