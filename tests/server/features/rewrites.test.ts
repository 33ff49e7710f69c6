import { provideRewrites } from '@plimsoll/server/features/rewrites';
import { afterEach, describe, expect, test } from 'vitest';
import type { CodeAction, TextDocumentEdit, TextEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { readCursor } from '../support/at-cursor.ts';
import { createContext } from '../support/feature-context.ts';
import { TestClient } from '../support/start-client.ts';

function rewritesAt(marked: string, only?: string[], complete = true): CodeAction[] {
  const { text, line, character } = readCursor(marked);
  const position = { line, character };
  return provideRewrites(createContext({ 'a.plim': text }, { complete }), 'a.plim', {
    range: { start: position, end: position },
    context: { diagnostics: [], ...(only && { only }) },
  });
}

const titlesAt = (...args: Parameters<typeof rewritesAt>): string[] =>
  rewritesAt(...args).map(({ title }) => title);

const apply = (text: string, action: CodeAction): string =>
  TextDocument.applyEdits(
    TextDocument.create('a.plim', 'plimsoll', 1, text),
    (action.edit!.documentChanges![0] as TextDocumentEdit).edits as TextEdit[],
  );

describe('what is offered', () => {
  test('for a line', () =>
    expect(titlesAt('session 2026-11-17\n  Back Sq<|>uat: 3x5 @ 100 kg\n')).toEqual([
      'Add warm-up sets (common practice: the empty bar, then 50, 70 and 85 % of the top set)',
      'Write each set out',
      'Convert this line to lb',
    ]));

  test('for a circuit', () =>
    expect(titlesAt('session 2026-11-17\n  cir<|>cuit, 3 rounds\n    Push-up: 8\n')).toEqual([
      'Add a round like the last',
      'Add a round with one rep more',
      'Add a time for each round',
      'Make straight sets of this block',
    ]));

  test('for a header', () =>
    expect(titlesAt('<|>session 2026-11-18\n  Back Squat: 5 @ 100 kg\nsession 2026-11-17\n')).toEqual([
      'Add effort and lasted',
      'Convert this session to lb',
      'Convert this file to lb',
      'Sort the sessions of this file by date',
    ]));

  test('of the kinds asked for', () => {
    const text = '<|>session 2026-11-18\n  Dip: 5\nsession 2026-11-17\n';
    expect(titlesAt(text, ['source'])).toEqual(['Sort the sessions of this file by date']);
    expect(titlesAt(text, ['refactor'])).toEqual(['Add effort and lasted']);
    expect(titlesAt(text, ['refactor.extract'])).toEqual([]);
  });

  test('what rests on every file only when every file is read', () => {
    const text = 'session 2026-11-17\n  Harbour <|>Wobble: 5\n';
    expect(titlesAt(text)).toEqual(['Define Harbour Wobble from a template']);
    expect(titlesAt(text, undefined, false)).toEqual([]);
  });

  test('nothing in a file that is not known', () =>
    expect(
      provideRewrites(createContext({}), 'b.plim', {
        range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
        context: { diagnostics: [] },
      }),
    ).toEqual([]));
});

test('new lines end as those of the file do', () => {
  const text = 'session 2026-11-17\r\n  circuit, 2 rounds\r\n    Push-up: 8\r\n';
  const [times] = rewritesAt(text.replace('circuit', 'cir<|>cuit')).filter(({ title }) =>
    title.includes('time'),
  );
  expect(apply(text, times!)).toBe(`${text}    time ?, ?\r\n`);
});

describe('over a connection', () => {
  const clients: TestClient[] = [];
  afterEach(async () => {
    for (const client of clients.splice(0)) await client.stop();
  });

  test('they stand behind the fixes', async () => {
    const client = await TestClient.start({ files: { 'a.plim': 'exercise Marsh Pull\n' } });
    clients.push(client);
    await client.open('b.plim', 'session 2026-11-17\n  Harbour Wobble: 5\n');
    await expect.poll(() => client.problems('b.plim')).toEqual(['2:3 unknown-movement']);
    const actions = await client.actions('b.plim', 'Wobble');
    expect(actions.map(({ title }) => title)).toEqual([
      'Ignore unknown-movement on this line',
      'Define Harbour Wobble from a template',
    ]);
    expect(actions.at(-1)!.edit!.documentChanges).toMatchObject([
      { textDocument: { uri: 'file:///practice/a.plim', version: null } },
    ]);
  });
});
