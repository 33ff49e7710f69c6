import { provideFoldingRanges } from '@plimsoll/server/features/folding-ranges';
import { expect, test } from 'vitest';
import { createContext } from '../support/feature-context.ts';

test('lines fold under the first, and comments are told as such', () => {
  const context = createContext({ 'a.plim': '# a\n# b\nsession 2026-11-03\n  Dip: 5\n\n' });
  expect(provideFoldingRanges(context, 'a.plim')).toEqual([
    { startLine: 0, endLine: 1, kind: 'comment' },
    { startLine: 2, endLine: 3 },
  ]);
  expect(provideFoldingRanges(context, 'missing.plim')).toEqual([]);
});
