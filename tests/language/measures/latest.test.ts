import { findLatest } from '@plimsoll/language/measures/latest';
import { expect, test } from 'vitest';

const LIST = [3, 5, 5, 9].map((day, index) => ({ day, index }));

test.each([
  [2, undefined],
  [3, 0],
  [4, 0],
  [5, 2],
  [8, 2],
  [9, 3],
  [100, 3],
])('on day %i the last of 3, 5, 5 and 9 that is not after it', (day, index) => {
  expect(findLatest(LIST, day)?.index).toBe(index);
});

test('of nothing there is none', () => {
  expect(findLatest([], 5)).toBeUndefined();
});
