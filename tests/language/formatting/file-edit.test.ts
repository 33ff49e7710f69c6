import { editLine, replaceLine } from '@plimsoll/language/formatting/file-edit';
import { expect, test } from 'vitest';

test.each([
  ['same', 'same', []],
  ['5,6', '5, 6', [editLine(3, 2, 2, ' ')]],
  ['a  b', 'a b', [editLine(3, 2, 3, '')]],
  ['aaa', 'aa', [editLine(3, 2, 3, '')]],
  ['', 'x', [editLine(3, 0, 0, 'x')]],
  ['RPE 8', 'rpe 8', [editLine(3, 0, 3, 'rpe')]],
])('%j → %j touches what differs', (before, after, edits) =>
  expect(replaceLine(3, before, after)).toEqual(edits),
);
