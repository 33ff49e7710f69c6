import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  applyFormula,
  countEffectiveReps,
  estimateOneRepMax,
  findLoadForReps,
  findRepsAtPercent,
  ONE_REP_MAX_FORMULA_IDS,
  type OneRepMaxFormula,
} from '../../../language/src/measures/one-rep-max.ts';
import { COMPUTED, expectNear } from './expect-near.ts';

// Sources: Epley 1985; Brzycki 1993 (JOPERD 64(1):88-90), in both printed forms; Lombardi 1989; Mayhew et al. 1992
// (J Appl Sport Sci Res 6(4):200-206); O'Conner et al. 1989; Wathen 1994; Lander 1985 (NSCA Journal 6(6):60-61).
const COLUMNS = ['epley', 'brzycki', 'printed', 'lombardi', 'mayhew', 'oconner', 'wathan', 'lander'] as const;
const ROWS: readonly (readonly [reps: number, ...number[]])[] = [
  [1, 103.3333, 100, 100, 100, 108.864, 102.5, 101.3042, 101.3903],
  [3, 110, 105.8824, 105.8873, 111.6123, 113.9903, 107.5, 108.9797, 107.1969],
  [5, 116.6667, 112.5, 112.5113, 117.4619, 119.0107, 112.5, 116.5825, 113.7089],
  [8, 126.6667, 124.1379, 124.1619, 123.1144, 126.2863, 120, 127.6714, 125.1092],
  [10, 133.3333, 133.3333, 133.3689, 125.8925, 130.9343, 125, 134.7467, 134.0704],
  [12, 140, 144, 144.0507, 128.2089, 135.3985, 130, 141.4959, 144.4143],
];

describe('the published formulas at 100', () => {
  const cells = ROWS.flatMap(([reps, ...values]) =>
    COLUMNS.map((column, index) => [column, reps, values[index]!] as const),
  );

  test.each(cells.filter(([column]) => column !== 'printed'))(
    '%s, %i reps: %d',
    (formula, reps, expected) => {
      expectNear(applyFormula(formula as OneRepMaxFormula, 100, reps)!, expected, COMPUTED);
    },
  );

  test.each(cells.filter(([column]) => column === 'printed'))(
    'brzycki, whose rounded form (%s) 1.0278 - 0.0278 r gives %i reps: %d, within 0.04 % of ours',
    (_column, reps, expected) => {
      expectNear(100 / (1.0278 - 0.0278 * reps), expected, COMPUTED);
      expectNear(applyFormula('brzycki', 100, reps)!, expected, 4e-4);
    },
  );
});

describe('properties of the formulas', () => {
  test('Epley and Brzycki are equal at 10 reps, Brzycki lower below and higher above', () => {
    expect(applyFormula('brzycki', 100, 10)).toBeCloseTo(applyFormula('epley', 100, 10)!, 10);
    for (let reps = 1; reps <= 15; reps++) {
      const difference = applyFormula('brzycki', 100, reps)! - applyFormula('epley', 100, reps)!;
      expect(Math.sign(Math.abs(difference) < 1e-9 ? 0 : difference)).toBe(Math.sign(reps - 10));
    }
  });

  test("O'Conner and Brzycki are equal at 5 reps", () => {
    expect(applyFormula('oconner', 100, 5)).toBeCloseTo(applyFormula('brzycki', 100, 5)!, 10);
  });

  test('only Brzycki and Lombardi return the load at one rep', () => {
    const same = ONE_REP_MAX_FORMULA_IDS.filter((id) => Math.abs(applyFormula(id, 100, 1)! - 100) < 1e-9);
    expect(same).toEqual(['brzycki', 'lombardi']);
  });

  test('many reps: Mayhew tends to load / 0.522 and Wathan to load / 0.488', () => {
    expect(applyFormula('mayhew', 52.2, 36.9)! / 100).toBeLessThan(1);
    expect(applyFormula('wathan', 48.8, 36.9)! / 100).toBeLessThan(1);
    expectNear(applyFormula('wathan', 48.8, 36.9)!, 100, 0.07);
    expectNear(applyFormula('mayhew', 52.2, 36.9)!, 100, 0.1);
  });

  test.each([...ONE_REP_MAX_FORMULA_IDS])('%s: the poles at 37 and 37.92 reps are never reached', (id) => {
    for (const reps of [37, 37.5, 38, 100, 0, 0.5, -1, Number.NaN]) {
      expect(applyFormula(id, 100, reps)).toBeUndefined();
    }
    expect(applyFormula(id, 100, 36)).toBeGreaterThan(100);
  });

  test.each([...ONE_REP_MAX_FORMULA_IDS])('%s rises with every rep and in proportion to the load', (id) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 35 }), fc.integer({ min: 1, max: 500 }), (reps, load) => {
        expect(applyFormula(id, load, reps + 1)).toBeGreaterThan(applyFormula(id, load, reps)!);
        expectNear(applyFormula(id, load * 3, reps)!, applyFormula(id, load, reps)! * 3, 1e-12);
      }),
    );
  });
});

describe('the spread of the seven', () => {
  // Computed from the formulas: highest over lowest.
  test.each([
    [5, 5.8],
    [8, 6.4],
    [10, 7.8],
    [12, 12.6],
    [15, 24.8],
  ])('%i reps: %d %% of the lowest', (reps, percent) => {
    const { low, high } = estimateOneRepMax(100, reps)!.spread!;
    expect(Math.abs((high / low - 1) * 100 - percent)).toBeLessThan(0.05);
  });

  test('holds the estimate, whichever formula is chosen', () => {
    for (const id of ONE_REP_MAX_FORMULA_IDS) {
      const { value, spread } = estimateOneRepMax(100, 6.5, id)!;
      expect(spread!.low).toBeLessThanOrEqual(value);
      expect(spread!.high).toBeGreaterThanOrEqual(value);
    }
  });
});

describe('reps with reps in reserve (computed; RPE by Zourdos et al. 2016)', () => {
  test.each([
    [100, 5, 8, 7, 123.3333, 120, 124.03],
    [100, 5, 8.5, 6.5, 121.6667, 118.0328, 122.1869],
    [80, 8, 9, 9, 104, 102.8571, 104.9971],
    [140, 3, 7, 6, 168, 162.5806, 168.4628],
    [90, 3, 9, 4, 102, 98.1818, 101.5159],
  ])('%d x %i at RPE %d is %d effective reps', (load, reps, rpe, effective, epley, brzycki, wathan) => {
    expect(countEffectiveReps(reps, { rpe })).toEqual({ reps: effective, rated: true });
    expectNear(estimateOneRepMax(load, effective)!.value, epley, COMPUTED);
    expectNear(estimateOneRepMax(load, effective, 'brzycki')!.value, brzycki, COMPUTED);
    expectNear(estimateOneRepMax(load, effective, 'wathan')!.value, wathan, COMPUTED);
  });

  test('an unrated set stands as performed', () => {
    expect(countEffectiveReps(5)).toEqual({ reps: 5, rated: false });
    expect(countEffectiveReps(1, {})).toEqual({ reps: 1, rated: false });
  });

  test.each([
    [5, { rir: 4 }, { reps: 9, rated: true }],
    [5, { rir: 0 }, { reps: 5, rated: true }],
    [5, { rir: 4.5 }, undefined],
    [5, { rir: -1 }, undefined],
    [5, { rpe: 6 }, { reps: 9, rated: true }],
    [5, { rpe: 5.5 }, undefined],
    [0, { rpe: 10 }, undefined],
    [0, {}, undefined],
    [Number.NaN, {}, undefined],
  ])('%d reps rated %j: %j', (reps, rating, expected) => {
    expect(countEffectiveReps(reps, rating)).toEqual(expected);
  });
});

describe('what is shown', () => {
  test('a true single is the load itself, with no spread', () => {
    expect(estimateOneRepMax(140, 1)).toEqual({ value: 140, quality: 'single', method: 'true-single' });
  });

  test('the formula is Epley unless another is chosen', () => {
    expect(estimateOneRepMax(100, 5)).toMatchObject({ method: 'epley', quality: 'usual' });
    expect(estimateOneRepMax(100, 5, 'lander')).toMatchObject({ method: 'lander' });
  });

  test.each([
    [1.5, 'usual'],
    [10, 'usual'],
    [10.5, 'rough'],
    [15, 'rough'],
    [15.5, undefined],
    [16, undefined],
    [0, undefined],
    [0.5, undefined],
  ])('%d effective reps: %s', (reps, quality) => {
    expect(estimateOneRepMax(100, reps)?.quality).toBe(quality);
  });

  test.each([0, -20, Number.NaN])('no estimate from a load of %d', (load) => {
    expect(estimateOneRepMax(load, 5)).toBeUndefined();
  });
});

describe('inverses', () => {
  test('computed: the load for 5 reps at a max of 150', () => {
    expectNear(findLoadForReps(150, 5)!, 128.5714, COMPUTED);
    expectNear(findLoadForReps(150, 5, 'brzycki')!, 133.3333, COMPUTED);
  });

  test('computed: the reps at 80 %', () => {
    expect(findRepsAtPercent(80)).toBeCloseTo(7.5, 10);
    expect(findRepsAtPercent(80, 'brzycki')).toBeCloseTo(8.2, 10);
  });

  test('one rep is at the max, and at 100 % there is one rep', () => {
    expect(findLoadForReps(150, 1, 'mayhew')).toBe(150);
    for (const id of ONE_REP_MAX_FORMULA_IDS) {
      expect(findRepsAtPercent(100, id)).toBeCloseTo(1, 10);
    }
  });

  test.each([
    [0, 'epley'],
    [101, 'epley'],
    [-5, 'epley'],
    [52, 'mayhew'],
    [48, 'wathan'],
    [40, 'epley'],
  ] as const)('no reps at %d %% by %s', (percent, formula) => {
    expect(findRepsAtPercent(percent, formula)).toBeUndefined();
  });

  test.each([0, 0.5, 37, Number.NaN])('no load for %d reps', (reps) => {
    expect(findLoadForReps(150, reps)).toBeUndefined();
  });

  test.each([...ONE_REP_MAX_FORMULA_IDS])('%s: load and reps lead back to the max', (id) => {
    fc.assert(
      fc.property(fc.double({ min: 1.5, max: 30, noNaN: true }), (reps) => {
        const load = findLoadForReps(150, reps, id)!;
        expectNear(applyFormula(id, load, reps)!, 150, 1e-9);
        fc.pre(load <= 150);
        expectNear(findRepsAtPercent((load / 150) * 100, id)!, reps, 1e-6);
      }),
    );
  });
});
