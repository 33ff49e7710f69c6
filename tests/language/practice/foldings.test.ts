import { listFoldings } from '@plimsoll/language/practice/foldings';
import { expect, test } from 'vitest';
import { readWhole } from '../support/read-text.ts';

/** Each folding as `1-4`, and `comments` where it is of them; lines from 1. */
function fold(...lines: string[]): string[] {
  return listFoldings(readWhole(lines.join('\n'))).map(
    ({ first, last, kind }) => `${first + 1}-${last + 1}${kind === 'comments' ? ' comments' : ''}`,
  );
}

test.each([
  [
    'an entry, without the blank lines behind it',
    ['session 2026-11-16', '  Dip: 5', '', '', 'units kg'],
    ['1-2'],
  ],
  [
    'comments above an entry belong to it',
    ['units kg', '  # a', '# b', '# c', 'session 2026-11-16', '  Dip: 5'],
    ['1-2', '2-4 comments', '5-6'],
  ],
  [
    'blocks, with the notes and comments below their last line',
    [
      'session 2026-11-16',
      '  A straight',
      '    Dip: 5',
      '    > a',
      '    # b',
      '',
      '  B straight',
      '    Dip: 5',
    ],
    ['1-8', '2-5', '7-8'],
  ],
  ['no block without a header', ['session 2026-11-16', '  Dip: 5', '  Push-up: 5'], ['1-3']],
  [
    "a plan's days",
    ['plan Ebb', '  day 1', '    Dip: 5', '', '  day 2', '    A straight', '      Dip: 5'],
    ['1-7', '2-3', '5-7', '6-7'],
  ],
  ['runs of notes', ['session 2026-11-16', '  > a', '  > b', '  Dip: 5', '  > c'], ['1-5', '2-3']],
  ['runs of comments', ['# a', '# b', '', '# c'], ['1-2 comments']],
  ['nothing of one line', ['session 2026-11-16', '', 'session 2026-11-17'], []],
  ['nothing in an empty file', [''], []],
])('%s', (_name, lines, expected) => {
  expect(fold(...lines)).toEqual(expected);
});
