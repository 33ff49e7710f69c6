import { splitLines, splitTexts } from '@plimsoll/language/text/lines';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RUNS } from '../support/generators/runs.ts';

test.each([
  ['', ['']],
  ['a', ['a']],
  ['a\n', ['a', '']],
  ['a\r\nb\rc\nd', ['a', 'b', 'c', 'd']],
  ['\r\r\n\n', ['', '', '', '']],
  ['a\u2028b\u0085c\vd', ['a\u2028b\u0085c\vd']],
])('%j', (text, lines) => {
  expect(splitLines(text).map((line) => line.text)).toEqual(lines);
  expect(splitTexts(text)).toEqual(lines);
});

test('lines with their ends make the text again', () => {
  const text = fc
    .array(fc.constantFrom('a', ' ', '\r', '\n', '\r\n', '\ud83c\udfcb'))
    .map((parts) => parts.join(''));
  fc.assert(
    fc.property(text, (whole) => {
      const lines = splitLines(whole);
      expect(splitTexts(whole)).toEqual(lines.map((line) => line.text));
      for (const line of lines)
        expect(whole.slice(line.offset, line.offset + line.text.length)).toBe(line.text);
      const ends = lines.map((line) => line.offset + line.text.length + line.endLength);
      expect(ends).toEqual([...lines.slice(1).map((line) => line.offset), whole.length]);
    }),
    RUNS,
  );
});
