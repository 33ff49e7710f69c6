import { countSameEnds } from '../text/same-ends.ts';

/** Values of a list's items, each of them by itself. */
export interface Mapped<T, U> {
  readonly items: readonly T[];
  readonly values: readonly U[];
}

/**
 * Values of a list that differs by little from one before: those of the same items at its beginning and at its end are
 * taken over.
 */
export function mapAgain<T, U>(
  items: readonly T[],
  compute: (item: T) => U,
  before: Mapped<T, U> = { items: [], values: [] },
): Mapped<T, U> {
  const { front, back } = countSameEnds(before.items, items);
  const values = before.values
    .slice(0, front)
    .concat(items.slice(front, items.length - back).map(compute))
    .concat(before.values.slice(before.values.length - back));
  return { items, values };
}
