import { expect, test } from 'vitest';
import { computeSecondsPerRep, computeTimeUnderTension } from '../../../language/src/measures/tempo.ts';

test('common practice: an X counts one second, so 3-1-X-0 is five', () => {
  expect(computeSecondsPerRep([3, 1, 'X', 0])).toBe(5);
  expect(computeSecondsPerRep(['X', 0, 'X', 0])).toBe(2);
  expect(computeSecondsPerRep([4, 2, 1, 1])).toBe(8);
});

test('8 reps at 3-1-X-0 are 40 seconds', () => {
  expect(computeTimeUnderTension(8, [3, 1, 'X', 0])).toBe(40);
  expect(computeTimeUnderTension(0, [3, 1, 'X', 0])).toBe(0);
});

test('none without a tempo', () => {
  expect(computeTimeUnderTension(8, [])).toBeUndefined();
});
