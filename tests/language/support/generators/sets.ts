import fc, { type Arbitrary } from 'fast-check';
import type { Drop, Rating, SetGroup } from '../../../../language/src/model/quantity.ts';
import { load } from './loads.ts';
import { maybe, NOWHERE } from './names.ts';
import { amount, decimal, time, whole } from './quantities.ts';

const halves = (min: number, max: number): Arbitrary<number> =>
  whole(min * 2, max * 2).map((twice) => twice / 2);

export const rating: Arbitrary<Rating> = fc
  .oneof(
    fc.record({ scale: fc.constant('rpe' as const), value: halves(0, 6), high: maybe(halves(7, 10)) }),
    fc.record({ scale: fc.constant('rir' as const), value: whole(0, 4), high: maybe(whole(5, 10)) }),
    fc.record({ scale: fc.constant('hr' as const), value: whole(25, 250) }),
    fc.record({ scale: fc.constant('v' as const), value: decimal(0, 3) }),
  )
  .map((rating) => ({ ...rating, span: NOWHERE }));

const drop: Arbitrary<Drop> = fc.record({ amount, load, span: fc.constant(NOWHERE) });

/** A set with or without a load of its own. */
export const setGroup: Arbitrary<SetGroup> = fc
  .record({
    count: maybe(whole(1, 50)),
    amount,
    within: fc.oneof({ weight: 5, arbitrary: fc.constant(undefined) }, time),
    load: maybe(load),
    ratings: fc.oneof({ weight: 3, arbitrary: fc.constant([]) }, fc.array(rating, { maxLength: 2 })),
    drops: fc.oneof({ weight: 5, arbitrary: fc.constant([]) }, fc.array(drop, { maxLength: 2 })),
  })
  .map(({ count, ...set }) => ({
    ...set,
    count: count ?? 1,
    counted: count !== undefined,
    ownLoad: set.load !== undefined,
    span: NOWHERE,
    amountSpan: NOWHERE,
  }));

/** The sets of one cell: those before the first load share it. */
export const sets: Arbitrary<SetGroup[]> = fc.array(setGroup, { maxLength: 4 }).map((list) => {
  const first = list.findIndex((set) => set.ownLoad);
  return list.map((set, index) => (index < first ? { ...set, load: list[first]!.load } : set));
});
