import { expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { listReaching } from '../../../language/src/practice/extents.ts';

/** Headers on lines 1, 4 and 7; the first line belongs to none. */
const TEXT = `# June
session 2026-06-01
  Push-up: 9

session 2026-06-02
  Push-up: 9

session 2026-06-03
  Push-up: 9
`;

test.each([
  [0, 99, [1, 4, 7]],
  [0, 0, []],
  [3, 4, [1, 4]],
  [5, 5, [4]],
  [6, 7, [4, 7]],
  [8, 99, [7]],
  [99, 120, []],
  [1, 0, []],
])('the entries that reach into the lines from %i to %i', (first, last, lines) => {
  const practice = createPractice();
  practice.setFile('log.plim', TEXT);
  const { model } = practice.file('log.plim')!;
  expect(listReaching(model, { first, last }).map(({ line }) => line)).toEqual(lines);
  expect(listReaching(undefined, { first, last })).toEqual([]);
});
