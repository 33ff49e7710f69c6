/** How many items of two lists are the same from the first on, and how many of the others from the last on back. */
export interface SameEnds {
  readonly front: number;
  readonly back: number;
}

/**
 * `abcd`, `axd` → 1 and 1. Identical items are the same without being looked into; `isSameBehind` is for items from the
 * last on, where being the same may mean less.
 */
export function countSameEnds<T>(
  before: readonly T[],
  after: readonly T[],
  isSame: (before: T, after: T) => boolean = isIdentical,
  isSameBehind = isSame,
): SameEnds {
  const shorter = Math.min(before.length, after.length);
  let front = 0;
  while (front < shorter) {
    const one = before[front]!;
    const other = after[front]!;
    if (one !== other && !isSame(one, other)) break;
    front++;
  }
  let back = 0;
  while (back < shorter - front) {
    const one = before[before.length - 1 - back]!;
    const other = after[after.length - 1 - back]!;
    if (one !== other && !isSameBehind(one, other)) break;
    back++;
  }
  return { front, back };
}

function isIdentical(a: unknown, b: unknown): boolean {
  return a === b;
}
