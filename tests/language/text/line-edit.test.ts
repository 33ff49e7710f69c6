import { expect, test } from 'vitest';
import { replaceLines } from '../../../language/src/text/line-edit.ts';

test('other lines take the place of some, and the lines before stay as they were', () => {
  const lines = ['a', 'b', 'c', 'd'];
  expect(replaceLines(lines, { first: 1, removed: 2, added: ['x', 'y', 'z'] })).toEqual([
    'a',
    'x',
    'y',
    'z',
    'd',
  ]);
  expect(replaceLines(lines, { first: 4, removed: 0, added: ['e'] })).toEqual(['a', 'b', 'c', 'd', 'e']);
  expect(lines).toEqual(['a', 'b', 'c', 'd']);
});
