import fc from 'fast-check';
import * as library from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { fitLine, type Point } from '../../../language/src/measures/least-squares.ts';
import { expectNear } from './expect-near.ts';

const weekly = (values: readonly number[], first = 0): Point[] =>
  values.map((y, index) => ({ x: first + index, y }));

// NIST StRD "Norris" (itl.nist.gov/div898/strd/lls/data/Norris.shtml), y then x.
const NORRIS =
  `0.1 0.2; 338.8 337.4; 118.1 118.2; 888.0 884.6; 9.2 10.1; 228.1 226.5; 668.5 666.3; 998.5 996.3;
  449.1 448.6; 778.9 777.0; 559.2 558.2; 0.3 0.4; 0.1 0.6; 778.1 775.5; 668.8 666.9; 339.3 338.0; 448.9 447.5;
  10.8 11.6; 557.7 556.0; 228.3 228.1; 998.0 995.8; 888.8 887.6; 119.6 120.2; 0.3 0.3; 0.6 0.3; 557.6 556.8;
  339.3 339.1; 888.0 887.2; 998.5 999.0; 778.9 779.0; 10.2 11.1; 117.6 118.3; 228.9 229.2; 668.4 669.1;
  449.2 448.9; 0.2 0.5`
    .split(';')
    .map((row) => row.trim().split(' ').map(Number) as [number, number])
    .map(([y, x]) => ({ x, y }));

describe('NIST StRD Norris, certified values', () => {
  const fit = fitLine(NORRIS)!;
  test.each([
    ['intercept', fit.intercept, -0.262323073774029],
    ['its error', fit.errors!.interceptError, 0.232818234301152],
    ['slope', fit.slope, 1.00211681802045],
    ['its error', fit.errors!.slopeError, 0.429796848199937e-3],
    ['residual deviation', fit.errors!.residualDeviation, 0.884796396144373],
    ['R squared', fit.rSquared!, 0.999993745883712],
    ['residual sum of squares', fit.residualSumOfSquares, 26.6173985294224],
    ['mean square error', fit.residualSumOfSquares / 34, 0.782864662630069],
  ])('%s', (_name, actual, certified) => {
    expect(NORRIS).toHaveLength(36);
    expectNear(actual, certified, 1e-11);
  });

  test('the regression sum of squares, by the slope over the spread of x', () => {
    const mean = NORRIS.reduce((sum, { x }) => sum + x, 0) / NORRIS.length;
    const spread = NORRIS.reduce((sum, { x }) => sum + (x - mean) ** 2, 0);
    expectNear(fit.slope ** 2 * spread, 4_255_954.13232369, 1e-12);
  });

  test('computed: the 95 % interval of the slope', () => {
    expect(fit.errors!.low).toBeCloseTo(1.001243366, 9);
    expect(fit.errors!.high).toBeCloseTo(1.00299027, 9);
  });
});

describe('computed examples', () => {
  test('eight weekly estimates', () => {
    const fit = fitLine(weekly([140, 141.5, 141, 143, 144.5, 138, 146, 147]))!;
    expectNear(fit.slope, 0.761905);
    expectNear(fit.intercept, 139.958333);
    expectNear(fit.errors!.slopeError, 0.408219);
    expectNear(fit.errors!.low, -0.236972);
    expectNear(fit.errors!.high, 1.760782);
    expectNear(fit.rSquared, 0.367321);
  });

  test('one odd point bends the line', () => {
    const fit = fitLine(weekly([120, 121, 119.5, 123, 122, 124.5, 90, 126, 125.5, 128]))!;
    expectNear(fit.slope, 0.239394);
    expectNear(fit.errors!.slopeError, 1.267303);
  });

  test('Hollander, Wolfe & Chicken, Nonparametric Statistical Methods, 3rd ed., data of example 9.1', () => {
    expect(fitLine(weekly([1.26, 1.27, 1.12, 1.16, 1.03], 1))!.slope).toBeCloseTo(-0.057, 10);
  });
});

test('agrees with simple-statistics on random data', () => {
  const coordinate = fc.double({ min: -1000, max: 1000, noNaN: true });
  const points = fc.array(fc.record({ x: fc.integer({ min: -500, max: 500 }), y: coordinate }), {
    minLength: 3,
    maxLength: 40,
  });
  fc.assert(
    fc.property(points, (sample) => {
      fc.pre(new Set(sample.map(({ x }) => x)).size > 1);
      const fit = fitLine(sample)!;
      const { m, b } = library.linearRegression(sample.map(({ x, y }) => [x, y]));
      expect(Math.abs(fit.slope - m)).toBeLessThan(1e-6 * Math.max(1, Math.abs(m)));
      expect(Math.abs(fit.intercept - b)).toBeLessThan(1e-5 * Math.max(1, Math.abs(b)));
    }),
  );
});

test('two points give a line and no errors', () => {
  expect(fitLine(weekly([10, 12]))).toEqual({
    slope: 2,
    intercept: 10,
    residualSumOfSquares: 0,
    rSquared: 1,
  });
});

test('a level line explains nothing', () => {
  const fit = fitLine(weekly([5, 5, 5, 5]))!;
  expect(fit.slope).toBe(0);
  expect(fit).not.toHaveProperty('rSquared');
  expect(fit.errors).toMatchObject({ slopeError: 0, low: 0, high: 0 });
});

test.each([
  ['no point', []],
  ['one point', [{ x: 1, y: 2 }]],
  [
    'one x',
    [
      { x: 0.1, y: 2 },
      { x: 0.1, y: 3 },
      { x: 0.1, y: 5 },
    ],
  ],
])('no line through %s', (_name, points) => {
  expect(fitLine(points)).toBeUndefined();
});
