import { shorten } from '@plimsoll/language/text/shorten';
import { expect, test } from 'vitest';

test.each([
  ['kg', 'kg'],
  ['深蹲', '深蹲'],
  ['a\u202eb', 'aU+202Eb'],
  ['\ud800', 'U+D800'],
  ['\u0000', 'U+0000'],
  ['x'.repeat(40), 'x'.repeat(40)],
  ['x'.repeat(41), `${'x'.repeat(39)}…`],
])('%j is shown as %j', (text, shown) => {
  expect(shorten(text)).toBe(shown);
});
