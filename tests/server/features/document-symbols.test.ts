import { provideDocumentSymbols } from '@plimsoll/server/features/document-symbols';
import { expect, test } from 'vitest';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver';
import { createContext } from '../support/feature-context.ts';

const nameOfKind = new Map(Object.entries(SymbolKind).map(([name, kind]) => [kind, name]));

const text = `athlete Quill Harrow

session 2026-11-03 Quill Harrow at Saltglass Loft
  A straight
    Dip: 5
    > note
`;
const context = createContext({ 'a.plim': text });

const print = (symbols: readonly DocumentSymbol[], depth = 0): string[] =>
  symbols.flatMap(({ name, detail, kind, range, children }) => [
    `${'  '.repeat(depth)}${nameOfKind.get(kind)} ${name}${detail ? ` (${detail})` : ''} to ${range.end.line + 1}:${range.end.character + 1}`,
    ...print(children ?? [], depth + 1),
  ]);

test('the outline nests, and each range ends with its last line', () => {
  expect(print(provideDocumentSymbols(context, 'a.plim'))).toEqual([
    'Class Quill Harrow (athlete) to 1:21',
    'Class Quill Harrow to 6:11',
    '  Package Week 45, 2026 to 6:11',
    '    Event 2026-11-03 (Saltglass Loft) to 6:11',
    '      Array A straight (Dip) to 6:11',
  ]);
  expect(provideDocumentSymbols(context, 'missing.plim')).toEqual([]);
});

test('every selection lies within its range, as the protocol wants it', () => {
  const check = ({ range, selectionRange, children }: DocumentSymbol) => {
    const offset = ({ line, character }: { line: number; character: number }) => line * 1000 + character;
    expect(offset(selectionRange.start)).toBeGreaterThanOrEqual(offset(range.start));
    expect(offset(selectionRange.end)).toBeLessThanOrEqual(offset(range.end));
    children?.forEach(check);
  };
  provideDocumentSymbols(context, 'a.plim').forEach(check);
});
