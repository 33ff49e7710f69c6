import { provideCodeActions } from '@plimsoll/server/features/code-actions';
import { expect, test } from 'vitest';
import type { TextDocumentEdit, TextEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { readCursor } from '../support/at-cursor.ts';
import { createContext } from '../support/feature-context.ts';

/** Each offer at the cursor as `title → the lines it changes, as they are afterwards`. */
function listOffers(marked: string): string[] {
  const { text, line, character } = readCursor(marked);
  const context = createContext({ 'a.plim': text, 'athletes.plim': 'athlete Ann Vell\n' });
  const position = { line, character };
  const offers = provideCodeActions(context, 'a.plim', {
    range: { start: position, end: position },
    context: { diagnostics: [] },
  });
  return offers.map(({ title, edit }) => {
    const edits = edit!.documentChanges!.flatMap(
      (change) => (change as TextDocumentEdit).edits as TextEdit[],
    );
    const after = TextDocument.applyEdits(TextDocument.create('a.plim', 'plimsoll', 1, text), edits);
    const before = new Set(text.split('\n'));
    return `${title} → ${after
      .split('\n')
      .filter((changed) => !before.has(changed))
      .join(' ⏎ ')}`;
  });
}

const session = (line: string) => `# this week\n\nsession 2026-11-03 Ann Vell\n${line}\n`;

test.each([
  [
    'a mistyped movement',
    session('  Bakc Sq<|>uat: 5 @ 60 kg'),
    [
      'Write Back Squat →   Back Squat: 5 @ 60 kg',
      'Ignore unknown-movement on this line →   Bakc Squat: 5 @ 60 kg  # ignore unknown-movement',
    ],
  ],
  [
    'a comment that is there already',
    session('  Harbour <|>Hop: 5  # his own'),
    ['Ignore unknown-movement on this line →   Harbour Hop: 5  # ignore unknown-movement # his own'],
  ],
  [
    'another code that is ignored already',
    session('  Harbour <|>Hop: 5  # ignore to-avoid'),
    ['Ignore unknown-movement on this line →   Harbour Hop: 5  # ignore unknown-movement, to-avoid'],
  ],
  [
    'a line that is read as it is meant, and a misspelt movement on it',
    session('  A1: Bakc Sq<|>uat: 5 @ 60 kg'),
    [
      'Write A1 Bakc Squat: 5 @ 60 kg →   A1 Bakc Squat: 5 @ 60 kg',
      'Ignore spelling-of-word on this line →   A1: Bakc Squat: 5 @ 60 kg  # ignore spelling-of-word',
      'Ignore unknown-movement on this line →   A1: Bakc Squat: 5 @ 60 kg  # ignore unknown-movement',
    ],
  ],
  ['an error, which nobody may ignore', session('  Back Squat: 5 <|>@'), []],
  ['a line without a problem', session('  Back Sq<|>uat: 5 @ 60 kg'), []],
])('%s', (_name, text, expected) => {
  expect(listOffers(text)).toEqual(expected);
});

test('what is ignored is no longer a problem', () => {
  expect(listOffers(session('  Harbour <|>Hop: 5  # ignore unknown-movement, to-avoid'))).toEqual([]);
});

test('the only fix of a problem is the preferred one', () => {
  const text = session('  Back Squat: 5 @ 22,5 kg');
  const context = createContext({ 'a.plim': text });
  const range = { start: { line: 3, character: 18 }, end: { line: 3, character: 22 } };
  const [only] = provideCodeActions(context, 'a.plim', { range, context: { diagnostics: [] } });
  expect(only).toMatchObject({
    title: 'Write 22.5',
    isPreferred: true,
    diagnostics: [{ code: 'decimal-comma' }],
  });
});
