import { findNearest, measureEditDistance } from '@plimsoll/language/text/edit-distance';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RUNS } from '../support/generators/runs.ts';

test.each([
  ['', '', 0],
  ['squat', 'squat', 0],
  ['sesion', 'session', 1],
  ['plna', 'plan', 1],
  ['squatt', 'squat', 1],
  ['squid', 'squat', 2],
  ['ca', 'abc', 3],
  ['abc', 'xyz', 3],
  ['carry', 'hinge', 4],
  ['', 'abcdefgh', 4],
])('from %j to %j it is %i', (a, b, distance) => {
  expect(measureEditDistance(a, b)).toBe(distance);
});

test('a limit gives up one past it', () => {
  expect(measureEditDistance('squat', 'hinge', 1)).toBe(2);
  expect(measureEditDistance('a'.repeat(100_000), 'b', 2)).toBe(3);
});

test('it is the same both ways, and 0 for equal words only', () => {
  const word = fc.string({ maxLength: 8, unit: fc.constantFrom('a', 'b', 'c') });
  fc.assert(
    fc.property(word, word, (a, b) => {
      expect(measureEditDistance(a, b, 9)).toBe(measureEditDistance(b, a, 9));
      expect(measureEditDistance(a, b, 9) === 0).toBe(a === b);
    }),
    RUNS,
  );
});

test.each([
  ['squatt', ['squat', 'squash', 'hinge'], ['squat', 'squash']],
  ['hnige', ['squat', 'hinge'], ['hinge']],
  ['ab', ['abc', 'xyz'], ['abc']],
  ['carry', ['carry b', 'carry a', 'carry'], ['carry', 'carry a', 'carry b'].slice(0, 1)],
  ['flexion', [], []],
])('nearest to %j of %j', (word, candidates, expected) => {
  expect(findNearest(word, candidates)).toEqual(expected);
});

test('at most as many as asked for, the nearest first, then by the alphabet', () => {
  expect(findNearest('squat', ['squats', 'squad', 'squat', 'squab'], 3)).toEqual(['squat', 'squab', 'squad']);
});
