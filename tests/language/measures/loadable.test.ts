import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  findHangable,
  findLoadable,
  findNearestWeight,
  findPlatesPerSide,
  listSteps,
  POUND_ROUNDING_GRAMS,
  type Rack,
} from '../../../language/src/measures/loadable.ts';
import { sum } from '../../../language/src/measures/statistics.ts';
import { toGrams } from '../../../language/src/units/mass.ts';

/** A rack in kilograms: `bars`, then plates as weight and count. */
function rack(bars: readonly number[], plates: readonly (readonly [number, number])[], collars = 0): Rack {
  return {
    bars: bars.map((bar) => toGrams(bar, 'kg')),
    collars: toGrams(collars, 'kg'),
    plates: plates.map(([weight, count]) => ({ weight: toGrams(weight, 'kg'), count })),
  };
}

const FULL = rack(
  [20],
  [
    [20, 4],
    [15, 2],
    [10, 2],
    [5, 2],
    [2.5, 2],
    [1.25, 2],
  ],
);
const LIGHT = rack(
  [15],
  [
    [20, 4],
    [10, 2],
    [5, 2],
    [2, 4],
    [1, 2],
    [0.5, 2],
  ],
);

describe('the nearest loadable load: bar + 2 × plates on one side, ties up (computed)', () => {
  test.each([
    ['87.3 with a step of 2.5', 87_300, FULL, 87_500, 85_000, 87_500, 'rounded'],
    ['86.25 is a tie', 86_250, FULL, 87_500, 85_000, 87_500, 'rounded'],
    ['61.2 with a step of 1', 61_200, LIGHT, 61_000, 61_000, 62_000, 'rounded'],
    ['18 is the empty bar, never less', 18_000, FULL, 20_000, undefined, 20_000, 'under the lightest'],
    ['85 as it is', 85_000, FULL, 85_000, 85_000, 85_000, 'exact'],
    ['500 is all there is', 500_000, FULL, 167_500, 167_500, undefined, 'beyond the heaviest'],
    ['20 is the bar', 20_000, FULL, 20_000, 20_000, 20_000, 'exact'],
  ] as const)('%s', (_name, target, place, nearest, below, above, fit) => {
    const found = findLoadable(target, place)!;
    expect(found.nearest.total).toBe(nearest);
    expect(found.below?.total).toBe(below);
    expect(found.above?.total).toBe(above);
    expect(found.fit).toBe(fit);
  });
});

describe('plates on each side', () => {
  test.each([
    [87.5, [20, 10, 2.5, 1.25]],
    [100, [20, 20]],
    [20, []],
    [22.5, [1.25]],
    [86, undefined],
    [17.5, undefined],
    [500, undefined],
  ])('%d kg: %j', (total, expected) => {
    expect(findPlatesPerSide(toGrams(total, 'kg'), FULL)).toEqual(expected?.map((plate) => plate * 1000));
  });

  test('the fewest plates, though heavier ones could start it', () => {
    const place = rack(
      [20],
      [
        [25, 4],
        [15, 8],
        [10, 2],
      ],
    );
    expect(findPlatesPerSide(140_000, place)).toEqual([25_000, 25_000, 10_000]);
  });

  test('of as many plates those that start heavier, though lighter ones end it', () => {
    const plates = [
      [10, 2],
      [9, 2],
      [8, 2],
      [5, 4],
      [3, 2],
    ] as const;
    expect(findPlatesPerSide(60_000, rack([20], plates))).toEqual([10_000, 5000, 5000]);
  });

  test('an odd plate stays on the floor, and the same weight written twice adds up', () => {
    expect(findPlatesPerSide(30_000, rack([20], [[5, 1]]))).toBeUndefined();
    expect(findPlatesPerSide(40_000, rack([20], [[5, 3]]))).toBeUndefined();
    const twice = rack(
      [20],
      [
        [5, 1],
        [5, 1],
      ],
    );
    expect(findPlatesPerSide(30_000, twice)).toEqual([5000]);
  });

  test('collars weigh', () => {
    const place = rack([20], [[10, 2]], 5);
    expect(findPlatesPerSide(45_000, place)).toEqual([10_000]);
    expect(findLoadable(20_000, place)!.nearest.total).toBe(25_000);
  });

  test('discs as competitions have them (IWF: 20 kg bar, 2.5 kg collars) make 101 kg', () => {
    const discs = [25, 20, 15, 10, 5, 2.5, 2, 1.5, 1, 0.5].map((weight) => [weight, 2] as const);
    expect(findPlatesPerSide(101_000, rack([20], discs, 5))).toEqual([25_000, 10_000, 2500, 500]);
  });
});

describe('several bars', () => {
  const place = rack(
    [10, 20],
    [
      [5, 4],
      [1.25, 2],
    ],
  );
  test.each([
    [20, 20, []],
    [12.5, 10, [1.25]],
    [32.5, 20, [5, 1.25]],
    [18, 20, []],
    [10, 10, []],
  ])('%d kg goes on the bar of %d kg', (target, bar, perSide) => {
    const { nearest } = findLoadable(toGrams(target, 'kg'), place)!;
    expect(nearest.bar).toBe(bar * 1000);
    expect(nearest.perSide).toEqual(perSide.map((plate) => plate * 1000));
  });

  test.each([
    ['with equally many plates the heavier bar', 25, 20, [2.5]],
    ['with fewer plates the lighter bar', 40, 15, [12.5]],
  ])('%s, whatever their order', (_name, total, bar, perSide) => {
    const plates = [
      [12.5, 2],
      [5, 4],
      [2.5, 2],
    ] as const;
    for (const bars of [
      [15, 20],
      [20, 15],
    ]) {
      expect(findLoadable(toGrams(total, 'kg'), rack(bars, plates))!.nearest).toEqual({
        total: total * 1000,
        bar: bar * 1000,
        perSide: perSide.map((plate) => plate * 1000),
      });
    }
  });

  test('no bar, no answer', () => {
    expect(findLoadable(60_000, rack([], [[20, 2]]))).toBeUndefined();
  });
});

describe('pounds', () => {
  const grams: Rack = {
    bars: [toGrams(45, 'lb')],
    collars: 0,
    plates: [45, 25, 10, 5, 2.5].map((weight) => ({ weight: toGrams(weight, 'lb'), count: 8 })),
  };

  test('three 45s are 135 lb exactly in hundredths of a pound', () => {
    const hundredths: Rack = { bars: [4500], collars: 0, plates: [{ weight: 4500, count: 2 }] };
    expect(findPlatesPerSide(13_500, hundredths)).toEqual([4500]);
  });

  test('in whole grams they miss it by one gram, which the tolerance takes up', () => {
    expect(findPlatesPerSide(toGrams(135, 'lb'), grams)).toBeUndefined();
    expect(findPlatesPerSide(toGrams(135, 'lb'), grams, POUND_ROUNDING_GRAMS)).toEqual([toGrams(45, 'lb')]);
  });

  test('every 5 lb from 45 to 400 is found, and nothing 2.5 lb beside them', () => {
    for (let pounds = 45; pounds <= 400; pounds += 5) {
      expect(findLoadable(toGrams(pounds, 'lb'), grams, POUND_ROUNDING_GRAMS)!.fit).toBe('exact');
      const beside = findLoadable(toGrams(pounds + 2.5, 'lb'), grams, POUND_ROUNDING_GRAMS)!;
      expect(beside.fit).toBe('rounded');
    }
  });

  test('the empty bar is the same load too, from just below it', () => {
    const bar = toGrams(45, 'lb');
    expect(findLoadable(bar - 1, grams, POUND_ROUNDING_GRAMS)!.fit).toBe('exact');
    expect(findLoadable(bar - 21, grams, POUND_ROUNDING_GRAMS)!.fit).toBe('under the lightest');
  });
});

test('what hangs without a bar, against brute force over every choice of plates', () => {
  const plate = fc.record({ weight: fc.integer({ min: 1, max: 25 }), count: fc.integer({ min: 0, max: 3 }) });
  fc.assert(
    fc.property(fc.array(plate, { maxLength: 4 }), fc.integer({ min: 0, max: 200 }), (plates, target) => {
      const found = findHangable(target, plates);
      let sums = new Set([0]);
      for (const { weight, count } of plates)
        for (let each = 0; each < count; each++)
          sums = new Set([...sums, ...[...sums].map((one) => one + weight)]);
      if (sums.size === 1) {
        expect(found).toBeUndefined();
        return;
      }
      const sorted = [...sums].sort((one, other) => one - other);
      const distance = Math.min(...sorted.map((total) => Math.abs(total - target)));
      expect(found!.below).toBe(sorted.findLast((total) => total <= target));
      expect(found!.above).toBe(sorted.find((total) => total >= target));
      expect(found!.nearest).toBe(sorted.findLast((total) => Math.abs(total - target) === distance));
    }),
    { numRuns: 500 },
  );
});

describe('against brute force over every choice of plates', () => {
  const plates = fc.array(
    fc.record({ weight: fc.integer({ min: 1, max: 25 }), count: fc.integer({ min: 0, max: 6 }) }),
    { maxLength: 5 },
  );
  const bars = fc.array(fc.integer({ min: 5, max: 20 }), { minLength: 1, maxLength: 2 });
  const racks = fc.record({ bars, plates, collars: fc.constantFrom(0, 1, 5) });

  test('nearest, below, above and the number of plates agree', () => {
    fc.assert(
      fc.property(racks, fc.integer({ min: 0, max: 320 }), (place, target) => {
        const fewest = new Map<number, number>();
        for (const bar of place.bars) {
          for (const side of chooseAll(place)) {
            const total = bar + place.collars + 2 * sum(side);
            fewest.set(total, Math.min(side.length, fewest.get(total) ?? Number.POSITIVE_INFINITY));
          }
        }
        const totals = [...fewest.keys()].sort((first, second) => first - second);
        const below = totals.findLast((total) => total <= target);
        const above = totals.find((total) => total >= target);
        const found = findLoadable(target, place)!;
        expect(found.below?.total).toBe(below);
        expect(found.above?.total).toBe(above);
        const distance = Math.min(...totals.map((total) => Math.abs(total - target)));
        const nearest = totals.findLast((total) => Math.abs(total - target) === distance);
        expect(found.nearest.total).toBe(nearest);
        expect(found.nearest.perSide).toHaveLength(fewest.get(found.nearest.total)!);
        const { bar, perSide, total } = found.nearest;
        expect(bar + place.collars + 2 * sum(perSide)).toBe(total);
        const fewestSides = chooseAll(place)
          .filter((side) => side.length === perSide.length && bar + place.collars + 2 * sum(side) === total)
          .map((side) => side.sort((first, second) => second - first));
        for (const side of fewestSides) {
          const index = side.findIndex((weight, position) => weight !== perSide[position]);
          expect(index === -1 || side[index]! < perSide[index]!).toBe(true);
        }
        expect(fewestSides.some((side) => side.join() === perSide.join())).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  /** Every multiset of plates that one side can take. */
  function chooseAll({ plates }: Rack): number[][] {
    const counts = new Map<number, number>();
    for (const { weight, count } of plates) {
      counts.set(weight, (counts.get(weight) ?? 0) + count);
    }
    let sides: number[][] = [[]];
    for (const [weight, count] of counts) {
      const pairs = Array.from({ length: Math.floor(count / 2) + 1 }, (_, number) =>
        Array.from({ length: number }, () => weight),
      );
      sides = sides.flatMap((side) => pairs.map((more) => [...side, ...more]));
    }
    return sides;
  }
});

test('an inventory that no place has gives no answer, soon', () => {
  const plates = Array.from({ length: 30 }, (_, index) => ({
    weight: 2 ** (index % 15) + index,
    count: 1000,
  }));
  expect(findLoadable(1_000_000, { bars: [20_000], collars: 0, plates })).toBeUndefined();
});

test('a plate of no weight is passed over', () => {
  const plates = [
    { weight: 0, count: 4 },
    { weight: -5, count: 4 },
    { weight: 10, count: 2 },
  ];
  expect(findPlatesPerSide(40, { bars: [20], collars: 0, plates })).toEqual([10]);
});

describe('single weights', () => {
  test.each([
    [4, 12, 2, [4, 6, 8, 10, 12]],
    [4, 11, 2, [4, 6, 8, 10]],
    [5, 5, 1, [5]],
    [1, 1000, 1, 1000],
    [1, 1001, 1, undefined],
    [8, 4, 2, undefined],
    [4, 8, 0, undefined],
    [4, 8, -2, undefined],
  ])('%d-%d by %d', (from, to, step, expected) => {
    const steps = listSteps(from, to, step);
    expect(typeof expected === 'number' ? steps?.length : steps).toEqual(expected);
  });

  test.each([
    [13, 14, 12, 14, 'rounded'],
    [12.9, 12, 12, 14, 'rounded'],
    [12, 12, 12, 12, 'exact'],
    [5, 8, undefined, 8, 'under the lightest'],
    [40, 24, 24, undefined, 'beyond the heaviest'],
  ])('%d of 24, 8, 14, 12: %d', (target, nearest, below, above, fit) => {
    expect(findNearestWeight(target, [24, 8, 14, 12])).toEqual({ nearest, below, above, fit });
  });

  test('none of none', () => {
    expect(findNearestWeight(10, [])).toBeUndefined();
  });

  test('within the tolerance it is the same weight', () => {
    expect(findNearestWeight(22_679, [22_680], POUND_ROUNDING_GRAMS)!.fit).toBe('exact');
    expect(findNearestWeight(22_660, [22_680], POUND_ROUNDING_GRAMS)!.fit).toBe('exact');
    expect(findNearestWeight(22_659, [22_680], POUND_ROUNDING_GRAMS)!.fit).toBe('under the lightest');
    expect(findNearestWeight(22_700, [22_680, 30_000], POUND_ROUNDING_GRAMS)!.fit).toBe('exact');
    expect(findNearestWeight(22_701, [22_680, 30_000], POUND_ROUNDING_GRAMS)!.fit).toBe('rounded');
  });
});
