import { expect, test } from 'vitest';
import { findMedian, findQuantile, fitExponent } from './statistics.ts';

test('quantiles are samples, by the nearest rank', () => {
  const samples = [30, 10, 20, 40];
  expect(findMedian(samples)).toBe(20);
  expect(findQuantile(samples, 0.95)).toBe(40);
  expect(findQuantile([7], 0.95)).toBe(7);
});

test.each([
  {
    what: 'what is always the same',
    points: [
      [1, 5],
      [10, 5],
      [100, 5],
    ],
    exponent: 0,
  },
  {
    what: 'what grows in step',
    points: [
      [1, 3],
      [10, 30],
      [100, 300],
    ],
    exponent: 1,
  },
  {
    what: 'what grows with the square',
    points: [
      [1, 2],
      [10, 200],
    ],
    exponent: 2,
  },
] as const)('$what has the exponent $exponent', ({ points, exponent }) => {
  expect(fitExponent(points)).toBeCloseTo(exponent, 10);
});

test('one size, or nothing measured, gives no exponent', () => {
  expect(fitExponent([[1, 5]])).toBeUndefined();
  expect(
    fitExponent([
      [1, 0],
      [10, 0],
    ]),
  ).toBeUndefined();
});
