import { replaceLines } from '@plimsoll/language/text/line-edit';
import { splitTexts } from '@plimsoll/language/text/lines';
import { findLineEdit } from '@plimsoll/server/line-edit';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';

const BEFORE = 'a\nb\nc';

const at = (line: number, character: number) => ({ line, character });

function edit(text: string, [from, to]: [[number, number], [number, number]], typed: string) {
  const document = TextDocument.create('a.plim', 'plimsoll', 1, text);
  const { lineCount } = document;
  const changes = [{ range: { start: at(...from), end: at(...to) }, text: typed }];
  TextDocument.update(document, changes, 2);
  return { found: findLineEdit(lineCount, document, changes), after: document.getText() };
}

test.for([
  [
    'a letter typed',
    [
      [1, 1],
      [1, 1],
    ],
    'x',
    { first: 1, removed: 1, added: ['bx'] },
  ],
  [
    'a line begun',
    [
      [1, 0],
      [1, 0],
    ],
    '\n',
    { first: 1, removed: 1, added: ['', 'b'] },
  ],
  [
    'lines joined',
    [
      [0, 1],
      [1, 0],
    ],
    '',
    { first: 0, removed: 2, added: ['ab'] },
  ],
  [
    'lines taken out',
    [
      [0, 0],
      [2, 0],
    ],
    '',
    { first: 0, removed: 3, added: ['c'] },
  ],
  [
    'something at the end',
    [
      [2, 1],
      [2, 1],
    ],
    'd\n',
    { first: 2, removed: 1, added: ['cd', ''] },
  ],
  [
    'something behind the end',
    [
      [9, 4],
      [9, 4],
    ],
    'd',
    { first: 2, removed: 1, added: ['cd'] },
  ],
] as const)('%s', ([, [from, to], typed, expected]) => {
  expect(edit(BEFORE, [[...from], [...to]], typed).found).toEqual(expected);
});

test('several changes, or a whole text, tell nothing', () => {
  const document = TextDocument.create('a.plim', 'plimsoll', 1, BEFORE);
  const change = { range: { start: at(0, 0), end: at(0, 0) }, text: 'x' };
  expect(findLineEdit(3, document, [change, change])).toBeUndefined();
  expect(findLineEdit(3, document, [{ text: BEFORE }])).toBeUndefined();
});

test('with any line ends, and halves of them, the lines are those of the new text', () => {
  const text = fc
    .array(fc.constantFrom('a', 'bc', '\n', '\r', '\r\n'), { maxLength: 12 })
    .map((parts) => parts.join(''));
  const place = fc.tuple(fc.nat(6), fc.nat(3));
  fc.assert(
    fc.property(text, place, place, text, (before, from, to, typed) => {
      const { found, after } = edit(before, [from, to], typed);
      expect(replaceLines(splitTexts(before), found!)).toEqual(splitTexts(after));
    }),
    { numRuns: 3000 },
  );
});
