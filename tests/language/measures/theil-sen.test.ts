import fc from 'fast-check';
import { TheilSenRegression } from 'ml-regression-theil-sen';
import * as library from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../../language/src/measures/least-squares.ts';
import { fitTrend, isClearTrend } from '../../../language/src/measures/theil-sen.ts';

const series = (
  values: readonly number[],
  xs: readonly number[] = values.map((_, index) => index),
): Point[] => values.map((y, index) => ({ x: xs[index]!, y }));

const ESTIMATES = series([140, 141.5, 141, 143, 144.5, 138, 146, 147]);
const WITH_OUTLIER = series([120, 121, 119.5, 123, 122, 124.5, 90, 126, 125.5, 128]);

describe('the slope', () => {
  test('Hollander, Wolfe & Chicken, Nonparametric Statistical Methods, 3rd ed., data of example 9.1', () => {
    expect(fitTrend(series([1.26, 1.27, 1.12, 1.16, 1.03], [1, 2, 3, 4, 5]))!.slope).toBeCloseTo(
      -0.05625,
      10,
    );
  });

  test('computed: eight weekly estimates, intercept as the median of y - slope × x', () => {
    expect(fitTrend(ESTIMATES)).toMatchObject({ slope: 1, intercept: 140 });
  });

  test('computed: one odd point does not bend it', () => {
    expect(fitTrend(WITH_OUTLIER)!.slope).toBeCloseTo(0.875, 10);
  });

  test('a level series is 0, never -0, in either order', () => {
    expect(fitTrend(series([5, 5], [0, 1]))!.slope).toBe(0);
    expect(fitTrend(series([5, 5], [1, 0]))!.slope).toBe(0);
  });

  test('pairs of equal x are skipped', () => {
    expect(fitTrend(series([1, 9, 3], [0, 0, 1]))!.slope).toBe(-2);
  });

  test.each([
    ['no point', []],
    ['one point', series([5])],
    ['one x', series([1, 2, 3], [4, 4, 4])],
  ])('none from %s', (_name, points) => {
    expect(fitTrend(points)).toBeUndefined();
  });
});

describe("Sen's 95 %% interval, computed with scipy 1.17.1, stats.theilslopes", () => {
  test.each<[string, Point[], number, number, number]>([
    ['eight weekly estimates', ESTIMATES, 1, -0.4, 1.5],
    ['one odd point', WITH_OUTLIER, 0.875, 0.3333333333333333, 1.2],
    ['ties in y', series([100, 100, 102.5, 102.5, 102.5, 105, 100, 105]), 0.6696428571428572, 0, 1.25],
    [
      'ties in x',
      series([10, 12, 11, 13, 13.5, 12, 16, 15], [0, 0, 1, 2, 2, 3, 5, 8]),
      0.6458333333333333,
      0,
      1.5,
    ],
    [
      'ties in y that move both ends',
      series([100, 102.5, 100, 105, 100, 105, 100, 102.5, 100]),
      0,
      -0.625,
      0.625,
    ],
    [
      'ties in x that move both ends',
      series([115, 96, 94, 97, 129, 113, 122, 117, 116], [0, 1, 1, 2, 3, 3, 3, 3, 4]),
      6.666666666666667,
      -1,
      16,
    ],
    ['all equal', series([7, 7, 7, 7, 7, 7]), 0, 0, 0],
    [
      'six weeks in days',
      series([100, 101, 103, 102, 105, 107], [0, 7, 14, 21, 28, 35]),
      0.19047619047619047,
      0.07142857142857142,
      0.35714285714285715,
    ],
    [
      'twelve uneven days',
      series(
        [312, 318, 309, 325, 322, 331, 318, 340, 333, 345, 338, 352],
        [0, 3, 7, 10, 14, 17, 21, 24, 28, 31, 38, 45],
      ),
      0.9087301587301587,
      0.5714285714285714,
      1.1666666666666667,
    ],
  ])('%s', (_name, points, slope, low, high) => {
    const trend = fitTrend(points)!;
    expect(trend.slope).toBeCloseTo(slope, 12);
    expect(trend.interval!.low).toBeCloseTo(low, 12);
    expect(trend.interval!.high).toBeCloseTo(high, 12);
  });

  test('none below six points', () => {
    expect(fitTrend(series([1, 2, 3, 4, 5]))).not.toHaveProperty('interval');
    expect(fitTrend(series([1, 2, 3, 4, 5, 6]))).toHaveProperty('interval');
  });

  test('none where too few pairs differ in x (scipy clamps to the extremes instead)', () => {
    const trend = fitTrend(series([1, 2, 3, 4, 5, 6], [0, 0, 0, 0, 0, 1]))!;
    expect(trend).toEqual({ slope: 3, intercept: 3 });
  });
});

describe('a clear trend', () => {
  test.each([
    ['rising', series([1, 2, 3, 4, 5, 6]), true],
    ['falling', series([6, 5, 4, 3, 2, 1]), true],
    ['one that may be none', ESTIMATES, false],
    ['level', series([7, 7, 7, 7, 7, 7]), false],
    ['rising from zero up', series([100, 100, 102.5, 102.5, 102.5, 105, 100, 105]), false],
    ['too few points', series([1, 2, 3, 4, 5]), false],
  ])('%s', (_name, points, expected) => {
    expect(isClearTrend(fitTrend(points)!)).toBe(expected);
  });
});

describe('on random data', () => {
  const points = fc.array(
    fc.record({ x: fc.integer({ min: 0, max: 60 }), y: fc.integer({ min: -400, max: 400 }) }),
    { minLength: 2, maxLength: 20 },
  );

  test('the slope is the median that simple-statistics finds of all pairs', () => {
    fc.assert(
      fc.property(points, (sample) => {
        const slopes: number[] = [];
        for (const first of sample) {
          for (const second of sample) {
            if (second.x > first.x) {
              slopes.push((second.y - first.y) / (second.x - first.x));
            }
          }
        }
        const trend = fitTrend(sample);
        expect(trend === undefined).toBe(slopes.length === 0);
        fc.pre(trend !== undefined);
        expect(trend.slope).toBeCloseTo(library.median(slopes), 9);
      }),
    );
  });

  // Of an even number of values that library takes the lower one of the middle two; of an odd number there is one middle.
  test('slope and intercept are those of ml-regression-theil-sen where the medians have one middle', () => {
    fc.assert(
      fc.property(points, (sample) => {
        const pairs = sample.flatMap((first, index) =>
          sample.slice(index + 1).filter(({ x }) => x !== first.x),
        );
        fc.pre(pairs.length % 2 === 1);
        const other = new TheilSenRegression(
          sample.map(({ x }) => x),
          sample.map(({ y }) => y),
        );
        const trend = fitTrend(sample)!;
        expect(trend.slope).toBeCloseTo(other.slope, 9);
        if (sample.length % 2 === 1) expect(trend.intercept).toBeCloseTo(other.intercept, 9);
      }),
      { numRuns: 300 },
    );
  });

  test('order does not matter, a shift changes nothing, a scale scales, and the interval holds the slope', () => {
    fc.assert(
      fc.property(points, fc.integer({ min: -1000, max: 1000 }), (sample, shift) => {
        const trend = fitTrend(sample);
        fc.pre(trend !== undefined);
        const interval = trend.interval ?? { low: trend.slope, high: trend.slope };
        expect(interval.low).toBeLessThanOrEqual(trend.slope);
        expect(interval.high).toBeGreaterThanOrEqual(trend.slope);
        expect(fitTrend([...sample].reverse())).toEqual(trend);
        const moved = fitTrend(sample.map(({ x, y }) => ({ x: x + shift, y: 2 * y + shift })))!;
        expect(moved.slope).toBeCloseTo(2 * trend.slope, 9);
        expect(moved.interval?.low).toBe(trend.interval && 2 * trend.interval.low);
      }),
    );
  });
});
