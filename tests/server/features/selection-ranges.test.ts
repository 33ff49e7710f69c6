import { provideSelectionRanges } from '@plimsoll/server/features/selection-ranges';
import { expect, test } from 'vitest';
import type { SelectionRange } from 'vscode-languageserver';
import { createContext } from '../support/feature-context.ts';

/** `1:3-1:6 < 1:1-2:1`, from the innermost outwards. */
function print(selection: SelectionRange | undefined): string {
  if (!selection) return '';
  const { start, end } = selection.range;
  const range = `${start.line + 1}:${start.character + 1}-${end.line + 1}:${end.character + 1}`;
  return selection.parent ? `${range} < ${print(selection.parent)}` : range;
}

test('each place has a chain of its own, from the word to the file', () => {
  const context = createContext({ 'a.plim': 'session 2026-11-03\n  Front Squat: 5 @ 60 kg\n' });
  const positions = [
    { line: 1, character: 10 },
    { line: 0, character: 2 },
  ];
  expect(provideSelectionRanges(context, 'a.plim', positions).map(print)).toEqual([
    '2:9-2:14 < 2:3-2:14 < 2:3-2:25 < 2:1-2:25 < 1:1-2:25 < 1:1-3:1',
    '1:1-1:8 < 1:1-1:19 < 1:1-2:25 < 1:1-3:1',
  ]);
  expect(provideSelectionRanges(context, 'missing.plim', positions)).toEqual([]);
});
