import { provideWorkspaceSymbols } from '@plimsoll/server/features/workspace-symbols';
import { expect, test } from 'vitest';
import { SymbolKind } from 'vscode-languageserver';
import { createContext } from '../support/feature-context.ts';

const context = createContext({ 'a.plim': 'athlete Quill Harrow\n' });

test('symbols of the workspace say what they are and where', () => {
  const found = provideWorkspaceSymbols(context, 'quill');
  expect(found).toEqual([
    {
      name: 'Quill Harrow',
      kind: SymbolKind.Class,
      containerName: 'athlete',
      location: {
        uri: 'a.plim',
        range: { start: { line: 0, character: 8 }, end: { line: 0, character: 20 } },
      },
    },
  ]);
  const [squat] = provideWorkspaceSymbols(context, 'back squat');
  expect(squat).toMatchObject({
    containerName: 'built in',
    location: { uri: 'plimsoll-library:/barbell.plim' },
  });
});
