import { provideDefinitions } from '@plimsoll/server/features/definition';
import { provideLibraryText } from '@plimsoll/server/features/library-text';
import { expect, test } from 'vitest';
import { readCursor } from '../support/at-cursor.ts';
import { createContext } from '../support/feature-context.ts';

const definitions = `exercise Crate Haul
  also Box Haul

athlete Quill Harrow

place Saltglass Loft

plan Ebb
  day 1
    Dip: 5
`;

/** `origin → file line:column name` of each definition of what is under the cursor. */
function define(marked: string): string[] {
  const { text, line, character } = readCursor(marked);
  const context = createContext({ 'a.plim': text, 'definitions.plim': definitions });
  return provideDefinitions(context, 'a.plim', { line, character }).map((link) => {
    const { targetUri, targetSelectionRange: target, originSelectionRange: origin } = link;
    const read = provideLibraryText(targetUri) ?? context.practice.file(targetUri)!.lines.join('\n');
    const name = read.split('\n')[target.start.line]!.slice(target.start.character, target.end.character);
    const from = text.split('\n')[origin!.start.line]!.slice(origin!.start.character, origin!.end.character);
    const place = targetUri.includes(':')
      ? targetUri
      : `${targetUri} ${target.start.line + 1}:${target.start.character + 1}`;
    return `${from} → ${place} ${name}`;
  });
}

test.each([
  ['a movement', 'session 2026-11-03\n  crate<|> haul: 5', ['crate haul → definitions.plim 1:10 Crate Haul']],
  [
    'another spelling',
    'session 2026-11-03\n  Box<|> Haul: 5',
    ['Box Haul → definitions.plim 1:10 Crate Haul'],
  ],
  [
    'a built-in movement',
    'session 2026-11-03\n  Barbell Back<|> Squat: 5',
    ['Barbell Back Squat → plimsoll-library:/barbell.plim Back Squat'],
  ],
  [
    'a movement that is defined here as well',
    'exercise Crate<|> Haul',
    ['Crate Haul → a.plim 1:10 Crate Haul', 'Crate Haul → definitions.plim 1:10 Crate Haul'],
  ],
  ['an athlete', 'session 2026-11-03 Quill<|> Harrow', ['Quill Harrow → definitions.plim 4:9 Quill Harrow']],
  [
    'a place',
    'session 2026-11-03 at Saltglass<|> Loft',
    ['Saltglass Loft → definitions.plim 6:7 Saltglass Loft'],
  ],
  ['a plan', 'session 2026-11-03, Eb<|>b week 1 day 1', ['Ebb → definitions.plim 8:6 Ebb']],
  ['what nothing defines', 'session 2026-11-03\n  Harbour<|> Hop: 5', []],
  ['a load', 'session 2026-11-03\n  Dip: 5 @ b<|>w', []],
])('%s', (_name, marked, expected) => {
  expect(define(marked)).toEqual(expected);
});

test('the library has no other files', () => {
  expect(provideLibraryText('plimsoll-library:/harbour.plim')).toBeUndefined();
  expect(provideLibraryText('file:///barbell.plim')).toBeUndefined();
});
