import { provideCompletion } from '@plimsoll/server/features/completion';
import { expect, test } from 'vitest';
import { CompletionItemKind, CompletionTriggerKind, InsertTextFormat } from 'vscode-languageserver';
import { readCursor } from '../support/at-cursor.ts';
import { type ContextOptions, createContext } from '../support/feature-context.ts';

const earlier = `athlete Quill Harrow
  avoid Dip until 2026-12-31, left *shoulder*

exercise Net Haul
  cue Hand over _hand_

session 2026-11-02 Quill Harrow
  A straight
    Back Squat: 3x5 @ 80 kg rpe 8
`;

function ask(marked: string, options: ContextOptions = {}, triggerCharacter?: string) {
  const { text, ...position } = readCursor(marked);
  const context = createContext({ 'earlier.plim': earlier, 'now.plim': text }, options);
  return provideCompletion(
    context,
    'now.plim',
    position,
    triggerCharacter === undefined
      ? { triggerKind: CompletionTriggerKind.Invoked }
      : { triggerKind: CompletionTriggerKind.TriggerCharacter, triggerCharacter },
  );
}

const session = (line: string) => `session 2026-11-24 Quill Harrow\n  ${line}`;

test('an item replaces what is typed, shows its detail beside it, and keeps its place', () => {
  expect(ask(session('Back Sq<|>'))?.items[0]).toEqual({
    label: 'Back Squat',
    kind: CompletionItemKind.Function,
    detail: '2 Nov: 3x5 @ 80 kg rpe 8',
    labelDetails: { description: '2 Nov: 3x5 @ 80 kg rpe 8' },
    documentation: expect.objectContaining({ kind: 'markdown' }),
    sortText: '0000',
    filterText: expect.stringContaining('Back Squat'),
    textEdit: {
      range: { start: { line: 1, character: 2 }, end: { line: 1, character: 9 } },
      newText: 'Back Squat: ',
    },
    command: { title: '', command: 'editor.action.triggerSuggest' },
  });
});

test('what is complete asks for nothing more', () => {
  const [last] = ask(session('Back Squat: <|>'))!.items;
  expect(last).toMatchObject({ label: '3x5 @ 80 kg', detail: 'as on 2 Nov' });
  expect(last).not.toHaveProperty('command');
});

test('a template is a snippet', () => {
  const template = ask('<|>')!.items.find(({ kind }) => kind === CompletionItemKind.Snippet);
  expect(template).toMatchObject({ label: 'first day', insertTextFormat: InsertTextFormat.Snippet });
});

test("a coach's words mark nothing up", () => {
  const [haul] = ask(session('Net Ha<|>'))!.items;
  expect(haul!.documentation).toMatchObject({ value: 'Cue: Hand over \\_hand\\_' });
  const dip = ask(session('Dip<|>'))!.items.find(({ label }) => label === 'Dip');
  expect(dip!.detail).toBe('to avoid until 2026-12-31, left *shoulder*');
});

test('a space that only indents opens nothing; one behind a colon does', () => {
  expect(ask(session('<|>'), {}, ' ')).toBeUndefined();
  expect(ask(session('<|>'))!.items.length).toBeGreaterThan(100);
  expect(ask(session('Back Squat: <|>'), {}, ' ')!.items.length).toBeGreaterThan(0);
});

test('a list is complete as soon as history is', () => {
  expect(ask(session('Back Sq<|>'))!.isIncomplete).toBe(false);
  expect(ask(session('Back Sq<|>'), { complete: false })!.isIncomplete).toBe(true);
});
