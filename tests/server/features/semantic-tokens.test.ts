import { SEMANTIC_TOKENS_LEGEND, SemanticTokensProvider } from '@plimsoll/server/features/semantic-tokens';
import { expect, test } from 'vitest';
import { createContext } from '../support/feature-context.ts';

const text = 'exercise Crate Haul\nsession 2026-11-03\n  Crate Haul: 5\n  Harbour Hop: 5\n';

/** `3 Crate Haul → function`, from the numbers that go to the editor. */
function read(data: readonly number[], of = text): string[] {
  const lines = of.split('\n');
  const found: string[] = [];
  let [line, start] = [0, 0];
  for (let at = 0; at < data.length; at += 5) {
    const [down, right, length, type, bits] = data.slice(at, at + 5) as [
      number,
      number,
      number,
      number,
      number,
    ];
    [line, start] = [line + down, down > 0 ? right : start + right];
    const { tokenTypes, tokenModifiers } = SEMANTIC_TOKENS_LEGEND;
    const modifiers = tokenModifiers.filter((_, bit) => bits & (1 << bit));
    found.push(
      `${line + 1} ${lines[line]!.slice(start, start + length)} → ${[tokenTypes[type], ...modifiers].join(' ')}`,
    );
  }
  return found;
}

test('all words of a file', () => {
  const { data } = new SemanticTokensProvider().provideAll(createContext({ 'a.plim': text }), 'a.plim');
  expect(read(data)).toEqual([
    '1 exercise → keyword declaration',
    '1 Crate Haul → function declaration',
    '2 session → keyword declaration',
    '2 2026-11-03 → number',
    '3 Crate Haul → function',
    '3 5 → number',
    '4 Harbour Hop → variable',
    '4 5 → number',
  ]);
});

test('the words of the lines in sight', () => {
  const range = { start: { line: 2, character: 4 }, end: { line: 2, character: 6 } };
  const { data } = new SemanticTokensProvider().provideRange(
    createContext({ 'a.plim': text }),
    'a.plim',
    range,
  );
  expect(read(data)).toEqual(['3 Crate Haul → function', '3 5 → number']);
});

test('what changed since last time, which gives the whole when it is put together', () => {
  const provider = new SemanticTokensProvider();
  const context = createContext({ 'a.plim': text });
  const before = provider.provideAll(context, 'a.plim');
  const changed = text.replace('Harbour Hop: 5', 'Dip: 5, 5');
  context.practice.setFile('a.plim', changed);
  const after = provider.provideChange(context, 'a.plim', before.resultId!);
  if (!('edits' in after)) throw new Error('expected a change');
  const data = [...before.data];
  for (const { start, deleteCount, data: added } of after.edits.toReversed())
    data.splice(start, deleteCount, ...(added ?? []));
  expect(read(data, changed)).toEqual([
    ...read(before.data).slice(0, 6),
    '4 Dip → function defaultLibrary',
    '4 5 → number',
    '4 5 → number',
  ]);
  expect(after.edits.flatMap(({ data: added }) => added ?? []).length).toBeLessThan(before.data.length);
});

test('all of it where it is not known what was told', () => {
  const provider = new SemanticTokensProvider();
  const context = createContext({ 'a.plim': text });
  expect(provider.provideChange(context, 'a.plim', 'x')).toHaveProperty('data');
  expect(provider.provideChange(context, 'a.plim', 'x')).toHaveProperty('data');
  provider.forget('a.plim');
  expect(provider.provideChange(context, 'a.plim', 'x')).toHaveProperty('data');
  expect(provider.provideAll(context, 'missing.plim').data).toEqual([]);
});
