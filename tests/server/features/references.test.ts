import { provideHighlights, provideReferences } from '@plimsoll/server/features/references';
import { expect, test } from 'vitest';
import { readCursor } from '../support/at-cursor.ts';
import { createContext } from '../support/feature-context.ts';

const marked =
  'exercise Crate Haul\n  also Box Haul\nsession 2026-11-03\n  Box<|> Haul: 5 @ 60 kg\n  Crate Haul: 5\n';
const { text, ...position } = readCursor(marked);
const context = createContext({ 'a.plim': text, 'b.plim': 'session 2026-11-04\n  crate-haul: 5\n' });

const list = (includeDeclaration: boolean) =>
  provideReferences(context, 'a.plim', position, includeDeclaration).map(
    ({ uri, range: { start, end } }) =>
      `${uri} ${start.line + 1}:${start.character + 1}-${end.character + 1}`,
  );

test('all places, with the definition or without', () => {
  expect(list(true)).toEqual([
    'a.plim 1:10-20',
    'a.plim 2:8-16',
    'a.plim 4:3-11',
    'a.plim 5:3-13',
    'b.plim 2:3-13',
  ]);
  expect(list(false)).toEqual(['a.plim 4:3-11', 'a.plim 5:3-13', 'b.plim 2:3-13']);
});

test('highlights stay in the file, and tell where a name is given', () => {
  const found = provideHighlights(context, 'a.plim', position);
  expect(found.map(({ range, kind }) => `${range.start.line + 1} ${kind === 3 ? 'write' : 'read'}`)).toEqual([
    '1 write',
    '2 write',
    '4 read',
    '5 read',
  ]);
});

test('nothing where no name is, or no file', () => {
  const load = { line: 3, character: 18 };
  expect(provideReferences(context, 'a.plim', load, true)).toEqual([]);
  expect(provideHighlights(context, 'a.plim', load)).toEqual([]);
  expect(provideHighlights(context, 'missing.plim', position)).toEqual([]);
});
