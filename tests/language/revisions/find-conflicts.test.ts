import { findConflicts } from '@plimsoll/language/revisions/find-conflicts';
import { expect, test } from 'vitest';

/** `first-last (markers)` of each, lines from 0. */
const print = (...lines: readonly string[]): string[] =>
  findConflicts(lines).map(({ first, last, markers }) => `${first}-${last} (${markers.join(', ')})`);

test.each<[title: string, lines: string[], expected: string[]]>([
  ['none', ['session 2026-11-17', '  Dip: 8'], []],
  [
    'two versions',
    ['plan Ebb', '<<<<<<< HEAD', 'a', '=======', 'b', '>>>>>>> heavy', 'c'],
    ['1-5 (1, 3, 5)'],
  ],
  [
    'with their common ancestor',
    ['<<<<<<< ours', 'a', '||||||| 1234abc', 'b', '=======', 'c', '>>>>>>> theirs'],
    ['0-6 (0, 2, 4, 6)'],
  ],
  [
    'two of them',
    ['<<<<<<< a', '=======', '>>>>>>> b', 'x', '<<<<<<< a', '=======', '>>>>>>> b'],
    ['0-2 (0, 1, 2)', '4-6 (4, 5, 6)'],
  ],
  ['a beginning that was left behind', ['x', '<<<<<<< HEAD', 'a', 'b'], ['1-1 (1)']],
  ['an end that was left behind', ['a', '>>>>>>> heavy'], ['1-1 (1)']],
  [
    'one that begins within another',
    ['<<<<<<< a', '=======', '<<<<<<< b', '=======', '>>>>>>> c'],
    ['0-1 (0, 1)', '2-4 (2, 3, 4)'],
  ],
  ['a line that a coach drew', ['=======', 'Dip: 8'], []],
  ['a note that begins with signs', ['>>> slower', '>>>>>>>> eight of them', '<<<<<<<eight'], []],
  ['in from the margin', ['  <<<<<<< HEAD'], []],
])('%s', (_title, lines, expected) => {
  expect(print(...lines)).toEqual(expected);
});
