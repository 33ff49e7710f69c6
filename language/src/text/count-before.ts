/** How many items of a list are before something, where all that are come first; by halving, for a list may hold thousands. */
export function countBefore<T>(list: readonly T[], isBefore: (item: T) => boolean): number {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isBefore(list[middle]!)) low = middle + 1;
    else high = middle;
  }
  return low;
}
