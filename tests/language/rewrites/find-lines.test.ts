import { appendEntry, insertBelow, selectRows } from '@plimsoll/language/rewrites/find-lines';
import { expect, test } from 'vitest';
import { applyFileEdits } from '../support/apply-file-edits.ts';
import { openFiles } from '../support/apply-rewrite.ts';

test.each([
  ['', 'plan B\n'],
  ['plan A', 'plan A\n\nplan B\n'],
  ['plan A\n', 'plan A\n\nplan B\n'],
  ['plan A\n\n', 'plan A\n\nplan B\n'],
])('an entry is added to %j', (text, expected) =>
  expect(applyFileEdits(text, [appendEntry(text.split('\n'), ['plan B'])])).toBe(expected),
);

test.each([
  ['a\nb', 0, 'a\nx\ny\nb'],
  ['a\nb', 1, 'a\nb\nx\ny'],
])('lines are put below a line of %j', (text, row, expected) =>
  expect(applyFileEdits(text, [insertBelow(text.split('\n'), row, ['x', 'y'])])).toBe(expected),
);

test('a selection that ends at a line does not hold it', () => {
  const rows = (line: number, character: number) =>
    selectRows({
      practice: openFiles({}),
      uri: 'a',
      range: { start: { line: 1, character: 2 }, end: { line, character } },
    }).last;
  expect([rows(1, 2), rows(3, 1), rows(3, 0)]).toEqual([1, 3, 2]);
});
