import { findChunk } from '@plimsoll/language/rewrites/entry-chunks';
import { expect, test } from 'vitest';
import { readWhole } from '../support/read-text.ts';

test('an entry has the comments above it and none of the blank lines below', () => {
  const { model, lines } = readWhole('# file\n\n# first\nunits kg\n\n\n# second\nplan A\n  # inside\n');
  expect(model.entries.map((placed) => findChunk(lines, placed))).toEqual([
    { from: 2, to: 4 },
    { from: 6, to: 9 },
  ]);
});
