import fc from 'fast-check';
import * as library from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import {
  computeMean,
  computeMedian,
  computePopulationDeviation,
  computeSampleDeviation,
  medianOfSorted,
  sum,
} from '../../../language/src/measures/statistics.ts';

const values = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 2, maxLength: 50 });

test('NIST StRD NumAcc1, from memory: 10000001, 10000003, 10000002 have mean 10000002 and deviation 1 exactly', () => {
  const close = [10_000_001, 10_000_003, 10_000_002];
  expect(computeMean(close)).toBe(10_000_002);
  expect(computeSampleDeviation(close)).toBe(1);
});

describe('agrees with simple-statistics on random data', () => {
  test('mean, median and both deviations', () => {
    fc.assert(
      fc.property(values, (numbers) => {
        const scale = Math.max(1, ...numbers.map(Math.abs)) * 1e-9;
        expectWithin(computeMean(numbers)!, library.mean(numbers), scale);
        expectWithin(computeMedian(numbers)!, library.median(numbers), scale);
        expectWithin(computeSampleDeviation(numbers)!, library.sampleStandardDeviation(numbers), scale);
        expectWithin(computePopulationDeviation(numbers)!, library.standardDeviation(numbers), scale);
      }),
    );
  });
});

test('the sample deviation of seven is √(7/6) of the population deviation', () => {
  const week = [420, 0, 350, 0, 480, 600, 0];
  expectWithin(computeSampleDeviation(week)! / computePopulationDeviation(week)!, 1.0801234, 1e-7);
});

test.each([
  [[3, 1, 2], 2],
  [[4, 1, 3, 2], 2.5],
  [[10, 9, 1], 9],
  [[-1, -10, 5], -1],
  [[7], 7],
])('the median of %j is %d', (numbers, expected) => {
  expect(computeMedian(numbers)).toBe(expected);
});

test('the given numbers keep their order', () => {
  const numbers = [3, 1, 2];
  computeMedian(numbers);
  expect(numbers).toEqual([3, 1, 2]);
});

test('too few numbers give none', () => {
  expect(sum([])).toBe(0);
  expect(sum([1, 2.5])).toBe(3.5);
  expect(computeMean([])).toBeUndefined();
  expect(computeMedian([])).toBeUndefined();
  expect(computeSampleDeviation([])).toBeUndefined();
  expect(computeSampleDeviation([5])).toBeUndefined();
  expect(computePopulationDeviation([])).toBeUndefined();
  expect(computePopulationDeviation([5])).toBe(0);
  expect(medianOfSorted([1, 2])).toBe(1.5);
});

function expectWithin(actual: number, expected: number, tolerance: number): void {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);
}
