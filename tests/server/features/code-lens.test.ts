import { provideCodeLenses } from '@plimsoll/server/features/code-lens';
import { provideExplanation } from '@plimsoll/server/features/explain';
import type { ExplainParams } from '@plimsoll/server/messages';
import { expect, test } from 'vitest';
import { createContext } from '../support/feature-context.ts';

const text = `athlete Ann Vell

session 2026-11-03 Ann Vell
  A straight
    Back Squat: 5 @ 60 kg rpe 8
`;

test('each lens carries what its explanation is asked with', () => {
  const context = createContext({ 'a.plim': text });
  const lenses = provideCodeLenses(context, 'a.plim');
  expect(lenses.map(({ range }) => range.start.line)).toEqual([2, 3, 4]);
  for (const { command } of lenses) {
    expect(command!.command).toBe('plimsoll.explain');
    const [params] = command!.arguments as [ExplainParams];
    expect(provideExplanation(context, 'a.plim', params)).toMatch(/^\*\*.+\*\*\n\n- Formula: /);
  }
});

test('until all files are read, what needs history shows as loading', () => {
  const titles = provideCodeLenses(createContext({ 'a.plim': text }, { complete: false }), 'a.plim').map(
    ({ command }) => command!.title,
  );
  expect(titles[0]).toContain('history loading…');
  expect(titles[2]).toContain('history loading…');
});

test('a lens that is no longer there has no explanation', () => {
  const context = createContext({ 'a.plim': text });
  const start = { line: 2, character: 0 };
  const params = { uri: 'a.plim', range: { start, end: start }, id: 'line' };
  expect(provideExplanation(context, 'a.plim', params)).toBeUndefined();
});
