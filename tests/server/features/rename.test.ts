import { prepareRename, provideRename } from '@plimsoll/server/features/rename';
import { expect, test } from 'vitest';
import type { TextDocumentEdit, TextEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { readCursor } from '../support/at-cursor.ts';
import { createContext } from '../support/feature-context.ts';

const { text, ...position } = readCursor(
  'exercise Crate Haul\r\nsession 2026-11-03 Quill\r\n  crate<|> haul: 5, instead of Crate Haul\r\n',
);
const files: Readonly<Record<string, string>> = {
  'a.plim': text,
  'b.plim': 'session 2026-11-04\n  Crate Haul: 5\n',
};

test('what is renamed is the name as written', () => {
  expect(prepareRename(createContext(files), 'a.plim', position)).toEqual({
    range: { start: { line: 2, character: 2 }, end: { line: 2, character: 12 } },
    placeholder: 'crate haul',
  });
});

test('the edits of all files give texts with the new name', () => {
  const edit = provideRename(createContext(files), 'a.plim', position, 'Case Haul');
  if ('refused' in edit) throw new Error(edit.refused);
  const texts = edit.documentChanges!.map((change) => {
    const { textDocument, edits } = change as TextDocumentEdit;
    const document = TextDocument.create(textDocument.uri, 'plimsoll', 1, files[textDocument.uri]!);
    return TextDocument.applyEdits(document, edits as TextEdit[]);
  });
  expect(texts).toEqual([
    'exercise Case Haul\r\nsession 2026-11-03 Quill\r\n  Case Haul: 5, instead of Case Haul\r\n',
    'session 2026-11-04\n  Case Haul: 5\n',
  ]);
});

test('an open file is changed as of the version that was seen', () => {
  const context = createContext(files);
  const workspace = { ...context.workspace, versionOf: (uri: string) => (uri === 'a.plim' ? 7 : undefined) };
  const edit = provideRename({ ...context, workspace }, 'a.plim', position, 'Case Haul');
  if ('refused' in edit) throw new Error(edit.refused);
  const versions = edit.documentChanges!.map((change) => (change as TextDocumentEdit).textDocument.version);
  expect(versions).toEqual([7, null]);
});

test('nothing is renamed where no name is, and before all logs are read', () => {
  const load = { line: 2, character: 15 };
  expect(prepareRename(createContext(files), 'a.plim', load)).toEqual({
    refused: expect.stringMatching(/^Only/),
  });
  expect(provideRename(createContext(files), 'a.plim', load, 'X Y')).toEqual({ refused: expect.any(String) });
  const loading = createContext(files, { complete: false });
  expect(prepareRename(loading, 'a.plim', position)).toEqual({
    refused: expect.stringMatching(/still being read/),
  });
  expect(provideRename(loading, 'a.plim', position, 'Case Haul')).toEqual({
    refused: expect.stringMatching(/still being read/),
  });
});

test('a name that collides is refused with the reason', () => {
  expect(provideRename(createContext(files), 'a.plim', position, 'Back Squat')).toEqual({
    refused: 'Back Squat is built in: choose another name',
  });
});
