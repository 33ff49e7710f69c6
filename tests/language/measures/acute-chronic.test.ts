import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  computeAcuteChronic,
  computeRollingRatio,
  smoothLoads,
} from '../../../language/src/measures/acute-chronic.ts';
import { expectNear } from './expect-near.ts';

const repeat = (loads: readonly number[], times: number): number[] =>
  Array.from({ length: times }, () => loads).flat();

const STEP = [...repeat([100], 21), ...repeat([200], 7)];
const RISING = [...repeat([100], 7), ...repeat([200], 14), ...repeat([300], 7)];
const FOUR_WEEKS = repeat([400, 0, 300, 0, 500, 0, 0], 4);

describe('weights of Williams et al. 2017, seeded with the first day (computed)', () => {
  test('three weeks at 100, one at 200', () => {
    const { acute, chronic, ratio } = computeAcuteChronic(STEP)!;
    expectNear(acute, 186.651611, 1e-7);
    expectNear(chronic, 139.359836, 1e-7);
    expectNear(ratio, 1.33935, 1e-6);
  });

  test.each([
    [7, [200, 150, 112.5, 159.375, 119.53125, 89.648438, 92.236328]],
    [28, [200, 186.206897, 173.365042, 182.098487, 169.539971, 157.847559, 153.858072]],
  ])('day by day over %i days', (days, expected) => {
    const averages = smoothLoads([200, 0, 0, 300, 0, 0, 100], days);
    expect(averages).toHaveLength(expected.length);
    averages.forEach((average, index) => {
      expectNear(average, expected[index]!, 1e-7);
    });
  });

  test('four equal weeks: the ratio depends on the weekday', () => {
    const { acute, chronic, ratio } = computeAcuteChronic(FOUR_WEEKS)!;
    expectNear(acute, 129.155537, 1e-7);
    expectNear(chronic, 193.39355, 1e-7);
    expectNear(ratio, 0.667838, 1e-6);
  });

  test('a constant load is 1 exactly', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 5000, noNaN: true }),
        fc.integer({ min: 28, max: 200 }),
        (load, days) => {
          expect(computeAcuteChronic(repeat([load], days))!.ratio).toBe(1);
        },
      ),
    );
  });
});

describe('rolling means, for comparison (computed)', () => {
  test.each([
    ['coupled', STEP, 1.6],
    ['uncoupled', STEP, 2],
    ['coupled', RISING, 1.5],
    ['uncoupled', RISING, 1.8],
    ['coupled', FOUR_WEEKS, 1],
    ['uncoupled', FOUR_WEEKS, 1],
    ['coupled', [9999, ...STEP], 1.6],
    ['uncoupled', [9999, ...STEP], 2],
  ] as const)('%s', (kind, loads, expected) => {
    expectNear(computeRollingRatio(loads, kind), expected, 1e-12);
  });

  test('none before 28 days, and none over nothing', () => {
    expect(computeRollingRatio(STEP.slice(1), 'coupled')).toBeUndefined();
    expect(computeRollingRatio(repeat([0], 28), 'coupled')).toBeUndefined();
    expect(computeRollingRatio([...repeat([0], 21), ...repeat([5], 7)], 'uncoupled')).toBeUndefined();
    expect(computeRollingRatio([], 'uncoupled')).toBeUndefined();
  });
});

describe('history', () => {
  test('no ratio before 28 days', () => {
    expect(computeAcuteChronic(STEP.slice(1))).not.toHaveProperty('ratio');
    expect(computeAcuteChronic(STEP)).toHaveProperty('ratio');
    expect(computeAcuteChronic([])).toBeUndefined();
  });

  test('no ratio where nothing was trained', () => {
    expect(computeAcuteChronic(repeat([0], 40))).toEqual({ acute: 0, chronic: 0 });
  });

  test('a day that is not known breaks the history: it is no rest day', () => {
    expect(computeAcuteChronic([500, undefined, ...STEP])).toEqual(computeAcuteChronic(STEP));
    expect(computeAcuteChronic([...STEP, undefined, 100, 100])).toEqual({ acute: 100, chronic: 100 });
    expect(computeAcuteChronic([...STEP, undefined])).toBeUndefined();
  });
});
