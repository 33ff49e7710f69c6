import { findLibraryFile } from '@plimsoll/language/rewrites/library-file';
import { expect, test } from 'vitest';
import { openFiles } from '../support/apply-rewrite.ts';

test('the file with most exercises, or none', () => {
  const two = 'exercise Marsh Pull\nexercise Marsh Push\n';
  expect(findLibraryFile(openFiles({ 'c.plim': two, 'b.plim': two, 'a.plim': 'exercise Marsh Hop\n' }))).toBe(
    'b.plim',
  );
  expect(findLibraryFile(openFiles({ 'a.plim': 'plan A\n' }))).toBeUndefined();
});
