import { replaceLines } from '@plimsoll/language/text/line-edit';
import { splitTexts } from '@plimsoll/language/text/lines';
import { OpenDocument } from '@plimsoll/server/open-document';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';

const BEFORE = 'a\nb\nc';

type Place = readonly [line: number, character: number];

const change = (from: Place, to: Place, text: string) => ({
  range: {
    start: { line: from[0], character: from[1] },
    end: { line: to[0], character: to[1] },
  },
  text,
});

const open = (text: string) => new OpenDocument('a.plim', 1, text);

describe('which lines a change made others', () => {
  test.each<[string, Place, Place, string, { first: number; removed: number; added: string[] }]>([
    ['a letter typed', [1, 1], [1, 1], 'x', { first: 1, removed: 1, added: ['bx'] }],
    ['a line begun', [1, 0], [1, 0], '\n', { first: 1, removed: 1, added: ['', 'b'] }],
    ['lines joined', [0, 1], [1, 0], '', { first: 0, removed: 2, added: ['ab'] }],
    ['lines taken out', [0, 0], [2, 0], '', { first: 0, removed: 3, added: ['c'] }],
    ['something at the end', [2, 1], [2, 1], 'd\n', { first: 2, removed: 1, added: ['cd', ''] }],
    ['something behind the end', [9, 4], [9, 4], 'd', { first: 2, removed: 1, added: ['cd'] }],
  ])('%s', (_, from, to, typed, edit) => {
    expect(open(BEFORE).update([change(from, to, typed)], 2)).toEqual(edit);
  });

  test('several changes, or a whole text, tell nothing', () => {
    const one = change([0, 0], [0, 0], 'x');
    expect(open(BEFORE).update([one, one], 2)).toBeUndefined();
    expect(open(BEFORE).update([{ text: 'd' }], 2)).toBeUndefined();
  });
});

test('a document has the version that the editor counts', () => {
  const document = open(BEFORE);
  expect(document.version).toBe(1);
  document.update([change([0, 0], [0, 0], 'x')], 7);
  expect(document).toMatchObject({ version: 7, uri: 'a.plim', text: 'xa\nb\nc' });
});

test('a text of more lines than a call has room for arguments can be put in', () => {
  const many = 'x\n'.repeat(200_000);
  const document = open(BEFORE);
  document.update([change([1, 0], [1, 1], many)], 2);
  expect(document.text).toBe(`a\n${many}\nc`);
});

// The library that editors' servers usually keep their documents with.
describe('with any line ends, and halves of them, after any changes', () => {
  const text = fc
    .array(fc.constantFrom('a', 'bc', '\n', '\r', '\r\n'), { maxLength: 12 })
    .map((parts) => parts.join(''));
  const place = fc.tuple(fc.integer({ min: -1, max: 7 }), fc.integer({ min: -1, max: 4 }));
  const changes = fc.array(fc.tuple(place, place, text), { minLength: 1, maxLength: 5 });

  test('the text is that of vscode-languageserver-textdocument, and so are the lines', () => {
    fc.assert(
      fc.property(text, changes, (before, edits) => {
        const document = open(before);
        let lines: readonly string[] = splitTexts(before);
        for (const [from, to, typed] of edits) {
          // Made anew each time: behind a change of half a line end, or below its last line, the library loses count.
          const other = TextDocument.create('a.plim', 'plimsoll', 1, document.text);
          TextDocument.update(other, [change(from, to, typed)], 2);
          lines = replaceLines(lines, document.update([change(from, to, typed)], 2)!);
          expect(document.text).toBe(other.getText());
          expect(lines).toEqual(splitTexts(other.getText()));
        }
        const together = open(before);
        together.update(
          edits.map(([from, to, typed]) => change(from, to, typed)),
          2,
        );
        expect(together.text).toBe(document.text);
      }),
      { numRuns: 3000 },
    );
  });
});
