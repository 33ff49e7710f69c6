import {
  NEXT_SESSION_KIND,
  provideNextSession,
  provideNextSessionActions,
} from '@plimsoll/server/features/next-session';
import { describe, expect, test } from 'vitest';
import type { CreateFile, TextDocumentEdit, TextEdit } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { readCursor } from '../support/at-cursor.ts';
import { type ContextOptions, createContext } from '../support/feature-context.ts';

const PLAN = `athlete Quill Harrow
plan Ebb
  for Quill Harrow
  starts 2026-11-02
  weeks 6
  day 1
    Push-up: 10, +1 rep each week
`;
const LOG = 'session 2026-11-16 Quill Harrow, Ebb week 3 day 1\n  Push-up: 12\n';
const NEXT = 'session 2026-11-24 Quill Harrow, Ebb week 4 day 1\n  Push-up: 13';

function actionsAt(
  marked: string,
  files: Readonly<Record<string, string>> = {},
  only?: string[],
  options?: ContextOptions,
) {
  const { text, line, character } = readCursor(marked);
  const start = { line, character };
  const context = createContext({ 'plans.plim': PLAN, ...files, 'log.plim': text }, options);
  return provideNextSessionActions(context, 'log.plim', {
    range: { start, end: start },
    context: { diagnostics: [], ...(only && { only }) },
  });
}

describe('an action', () => {
  test('on the header of a session writes the next one behind it', () => {
    const [action, ...others] = actionsAt(LOG.replace('Quill', 'Qu<|>ill'));
    expect(others).toEqual([]);
    expect(action).toMatchObject({
      title: 'Write the next session of Quill Harrow: 2026-11-24',
      kind: NEXT_SESSION_KIND,
    });
    const [change] = action!.edit!.documentChanges as TextDocumentEdit[];
    expect(change!.textDocument).toEqual({ uri: 'log.plim', version: null });
    const document = TextDocument.create('log.plim', 'plimsoll', 1, LOG);
    expect(TextDocument.applyEdits(document, change!.edits as TextEdit[])).toBe(`${LOG}\n${NEXT}\n`);
  });

  test('keeps the line ends of the file', () => {
    const [action] = actionsAt(`se<|>${LOG.slice(2).replaceAll('\n', '\r\n')}`);
    const [change] = action!.edit!.documentChanges as TextDocumentEdit[];
    expect((change!.edits[0] as TextEdit).newText).toBe(`\n\n${NEXT}`.replaceAll('\n', '\r\n'));
  });

  test('makes the file of a new month', () => {
    const months = { 'logs/2026-10.plim': 'session 2026-10-30 Quill Harrow\n  Push-up: 9\n' };
    const [action] = actionsAt('athlete Quill Har<|>row\n', months);
    const [create, change] = action!.edit!.documentChanges as [CreateFile, TextDocumentEdit];
    expect(create).toMatchObject({
      kind: 'create',
      uri: 'logs/2026-11.plim',
      options: { ignoreIfExists: true },
    });
    expect(change.textDocument.uri).toBe('logs/2026-11.plim');
    expect((change.edits[0] as TextEdit).newText).toMatch(
      /^session 2026-11-24 Quill Harrow, Ebb week 1 day 1\n/,
    );
  });

  test('goes on with the plan that it stands on, or that the session names', () => {
    const flood = 'plan Flood\n  for Quill Harrow\n  starts 2026-11-09\n  weeks 4\n  day 1\n    Dip: 5\n';
    const header = (marked: string): string | undefined => {
      const [change] = actionsAt(marked)[0]!.edit!.documentChanges as TextDocumentEdit[];
      return (change!.edits[0] as TextEdit).newText.trim().split('\n')[0];
    };
    // Of Flood nothing is logged yet, of Ebb three weeks; Flood began last.
    expect(header(flood.replace('Flood', 'Fl<|>ood') + LOG)).toBe(
      'session 2026-11-24 Quill Harrow, Flood week 1 day 1',
    );
    expect(header(flood + LOG.replace('Quill', 'Qu<|>ill'))).toBe(
      'session 2026-11-24 Quill Harrow, Ebb week 4 day 1',
    );
    expect(
      header(
        `${flood}athlete Bev Stromm\n${LOG.replace('Quill', 'Qu<|>ill').replace(', Ebb week 3 day 1', '')}`,
      ),
    ).toBe('session 2026-11-24 Quill Harrow, Flood week 1 day 1');
  });

  test('for each athlete of a plan', () => {
    const titles = actionsAt(
      `plan Fl<|>ood\n  for Quill Harrow, Bev Stromm\n  day 1\n    Dip: 5\n${LOG}`,
    ).map(({ title }) => title);
    expect(titles).toEqual([
      'Write the next session of Quill Harrow: 2026-11-24',
      'Write the next session of Bev Stromm: 2026-11-24',
    ]);
  });

  test.each<[string, ...Parameters<typeof actionsAt>]>([
    ['inside a session', LOG.replace('Push', 'Pu<|>sh')],
    ['on a place', `place Nor<|>th\n${LOG}`],
    ['where other kinds are asked for', LOG.replace('Quill', 'Qu<|>ill'), {}, ['quickfix']],
    ['until the logs are read', LOG.replace('Quill', 'Qu<|>ill'), {}, undefined, { complete: false }],
  ])('none %s', (_name, ...args) => {
    expect(actionsAt(...args)).toEqual([]);
  });

  test('with the kinds that hold it', () => {
    expect(actionsAt(LOG.replace('Quill', 'Qu<|>ill'), {}, ['source'])).toHaveLength(1);
  });
});

describe('the command', () => {
  const ask = (
    position?: { line: number; character: number },
    athlete?: string,
    more = '',
    options?: ContextOptions,
  ) =>
    provideNextSession(
      createContext({ 'plans.plim': PLAN, 'log.plim': `${LOG}${more}` }, options),
      'log.plim',
      {
        uri: 'log.plim',
        ...(position && { position }),
        ...(athlete !== undefined && { athlete }),
      },
    );
  const group = 'session 2026-11-17 Bev Stromm | Quill Harrow\n  Dip: 5\n';

  test('takes the athlete at the cursor, and says where the session begins', () => {
    expect(ask({ line: 1, character: 3 })).toMatchObject({ kind: 'written', uri: 'log.plim', line: 3 });
  });

  test('asks whose, where there are several', () => {
    expect(ask({ line: 2, character: 0 }, undefined, group)).toEqual({
      kind: 'choose',
      athletes: ['Bev Stromm', 'Quill Harrow'],
    });
    expect(ask(undefined, undefined, group)).toEqual({
      kind: 'choose',
      athletes: ['Bev Stromm', 'Quill Harrow'],
    });
    expect(ask(undefined, 'quill harrow', group)).toMatchObject({ kind: 'written' });
  });

  test('takes the only athlete without being told', () => {
    expect(ask()).toMatchObject({ kind: 'written' });
  });

  test('says why there is none', () => {
    expect(ask(undefined, 'Odo Plim')).toEqual({
      kind: 'refused',
      why: 'The athlete has neither a plan nor a session to go on from',
    });
    expect(ask(undefined, undefined, '', { complete: false })).toMatchObject({
      kind: 'refused',
      why: /being read/,
    });
    expect(provideNextSession(createContext({}), 'log.plim', { uri: 'log.plim' })).toEqual({
      kind: 'refused',
      why: 'No log names an athlete yet',
    });
  });
});
