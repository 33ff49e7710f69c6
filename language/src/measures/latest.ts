/** The last of a list in order of days that is not after a day; halving, for a history may hold thousands. */
export function findLatest<T extends { readonly day: number }>(
  list: readonly T[],
  day: number,
): T | undefined {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (list[middle]!.day <= day) low = middle + 1;
    else high = middle;
  }
  return list[low - 1];
}
