import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { findStudentT } from '../../../language/src/measures/student-t.ts';
import { expectNear } from './expect-near.ts';

describe('the 97.5 % points of standard tables', () => {
  test.each([
    [1, 12.706205],
    [2, 4.302653],
    [3, 3.182446],
    [4, 2.776445],
    [5, 2.570582],
    [6, 2.446912],
    [8, 2.306004],
    [10, 2.228139],
    [34, 2.032244],
  ])('%i degrees of freedom: %d', (degreesOfFreedom, expected) => {
    expect(Math.abs(findStudentT(0.95, degreesOfFreedom)! - expected)).toBeLessThan(6e-7);
  });
});

test('agrees with jstat', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      fc.double({ min: 0.5, max: 0.995, noNaN: true }),
      (degreesOfFreedom, confidence) => {
        const expected = jstat.studentt.inv((1 + confidence) / 2, degreesOfFreedom);
        expectNear(findStudentT(confidence, degreesOfFreedom), expected, 1e-6);
      },
    ),
  );
});

test('tends to the normal distribution', () => {
  expectNear(findStudentT(0.95, 100_000), 1.959964, 2e-5);
});

test.each([
  [0.95, 0],
  [0.95, -1],
  [0.95, 2.5],
  [0, 5],
  [1, 5],
  [Number.NaN, 5],
])('none at %d with %d degrees of freedom', (confidence, degreesOfFreedom) => {
  expect(findStudentT(confidence, degreesOfFreedom)).toBeUndefined();
});
