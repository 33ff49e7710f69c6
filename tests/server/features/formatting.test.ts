import {
  FORMATTED_ON,
  provideFormatting,
  provideOnTypeFormatting,
} from '@plimsoll/server/features/formatting';
import { afterEach, describe, expect, test } from 'vitest';
import type { Range, TextEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { createContext } from '../support/feature-context.ts';
import { FOLDER, TestClient } from '../support/start-client.ts';

const apply = (text: string, edits: TextEdit[]): string =>
  TextDocument.applyEdits(TextDocument.create('a.plim', 'plimsoll', 1, text), edits);

const TEXT = 'session 2026-11-17\nA straight\nDip:5,5\nRow:5 5\nPlank:30s\nsession 2026-11-18';

const range = (from: number, to: number, end: number): Range => ({
  start: { line: from, character: 2 },
  end: { line: to, character: end },
});

describe('a document', () => {
  test('is formatted, and a line that could not be read is indented only', () =>
    expect(apply(TEXT, provideFormatting(createContext({ 'a.plim': TEXT }), 'a.plim'))).toBe(
      'session 2026-11-17\n  A straight\n    Dip: 5, 5\n    Row:5 5\n    Plank: 30 s\n\nsession 2026-11-18\n',
    ));

  test('is formatted in a range, the last line only if something of it is selected', () => {
    const context = createContext({ 'a.plim': TEXT });
    expect(apply(TEXT, provideFormatting(context, 'a.plim', range(1, 2, 0)))).toBe(
      TEXT.replace('A straight', '  A straight'),
    );
    expect(apply(TEXT, provideFormatting(context, 'a.plim', range(1, 2, 1)))).toBe(
      TEXT.replace('A straight\nDip:5,5', '  A straight\n    Dip: 5, 5'),
    );
  });

  test('is formatted on Enter in the line that was left', () => {
    const context = createContext({ 'a.plim': TEXT });
    expect(apply(TEXT, provideOnTypeFormatting(context, 'a.plim', { line: 3, character: 0 }))).toBe(
      TEXT.replace('Dip:5,5', '    Dip: 5, 5'),
    );
    expect(provideOnTypeFormatting(context, 'a.plim', { line: 0, character: 0 })).toEqual([]);
  });

  test('that is not open is left alone', () =>
    expect(provideFormatting(createContext({}), 'a.plim')).toEqual([]));
});

describe('over a connection', () => {
  const clients: TestClient[] = [];
  afterEach(async () => {
    for (const client of clients.splice(0)) await client.stop();
  });

  test('the three requests are answered', async () => {
    const client = await TestClient.start();
    clients.push(client);
    const crlf = TEXT.replaceAll('\n', '\r\n');
    await client.open('a.plim', crlf);
    const textDocument = { uri: `${FOLDER}a.plim` };
    const options = { tabSize: 2, insertSpaces: true };
    const ask = async (method: string, more: object): Promise<string> =>
      apply(crlf, await client.request(`textDocument/${method}`, { textDocument, options, ...more }));
    expect(await ask('formatting', {})).toBe(
      'session 2026-11-17\r\n  A straight\r\n    Dip: 5, 5\r\n    Row:5 5\r\n    Plank: 30 s\r\n\r\nsession 2026-11-18\r\n',
    );
    expect(await ask('rangeFormatting', { range: range(2, 2, 3) })).toBe(
      crlf.replace('Dip:5,5', '    Dip: 5, 5'),
    );
    const position = { line: 5, character: 0 };
    expect(await ask('onTypeFormatting', { position, ch: FORMATTED_ON })).toBe(
      crlf.replace('Plank:30s', '    Plank: 30 s'),
    );
  });
});
