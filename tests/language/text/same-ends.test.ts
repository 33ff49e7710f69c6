import { countSameEnds } from '@plimsoll/language/text/same-ends';
import { expect, test } from 'vitest';

const count = (before: string, after: string, ...how: ((a: string, b: string) => boolean)[]) => {
  const { front, back } = countSameEnds([...before], [...after], ...how);
  return `${front} and ${back}`;
};

test.each([
  ['abcd', 'abcd', '4 and 0'],
  ['abcd', 'axd', '1 and 1'],
  ['abab', 'ab', '2 and 0'],
  ['ab', 'xaby', '0 and 0'],
  ['ab', 'xab', '0 and 2'],
  ['', 'ab', '0 and 0'],
])('%j and %j: %s', (before, after, expected) => {
  expect(count(before, after)).toBe(expected);
});

test('what is the same may mean less from the last on', () => {
  const isSame = (a: string, b: string): boolean => a === b;
  const isAlike = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
  expect(count('aBxC', 'abyc', isSame, isAlike)).toBe('1 and 1');
  expect(count('aBxC', 'abyc', isAlike)).toBe('2 and 1');
});
