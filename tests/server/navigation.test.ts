import { afterEach, expect, test } from 'vitest';
import { type ClientOptions, FOLDER, TestClient } from './support/start-client.ts';

const clients: TestClient[] = [];

async function start(options: ClientOptions = {}): Promise<TestClient> {
  const client = await TestClient.start(options);
  clients.push(client);
  return client;
}

afterEach(async () => {
  for (const client of clients.splice(0)) await client.stop();
});

const files = {
  'moves.plim': 'exercise Crate Haul\n\nathlete Quill Harrow\n\nplan Ebb\n  day 1\n    Dip: 5\n',
  'log.plim': 'session 2026-11-23 Quill Harrow, Ebb week 1 day 1\n  Crate Haul: 5 @ 60 kg\n  Dip: 5\n',
};
const textDocument = { uri: `${FOLDER}log.plim` };
const name = { textDocument, position: { line: 1, character: 5 } };
const builtIn = { textDocument, position: { line: 2, character: 3 } };

const askWeek = (client: TestClient) =>
  client.request('plimsoll/athleteWeek', { uri: textDocument.uri, position: name.position });

async function open(options: ClientOptions = {}): Promise<TestClient> {
  const client = await start({ files, ...options });
  await client.open('log.plim');
  // All files are read once the athlete's week can be told.
  await expect.poll(() => askWeek(client)).not.toBeNull();
  return client;
}

test('finds its way from a name to its definition, references, and back', async () => {
  const client = await open();
  expect(await client.request('textDocument/definition', name)).toEqual([
    {
      uri: `${FOLDER}moves.plim`,
      range: { start: { line: 0, character: 9 }, end: { line: 0, character: 19 } },
    },
  ]);
  const context = { includeDeclaration: true };
  expect(await client.request<unknown[]>('textDocument/references', { ...name, context })).toHaveLength(2);
  expect(await client.request<unknown[]>('textDocument/documentHighlight', name)).toHaveLength(1);
});

test('links say where they come from to an editor that wants to know', async () => {
  const client = await open({ capabilities: { textDocument: { definition: { linkSupport: true } } } });
  expect(await client.request('textDocument/definition', name)).toMatchObject([
    {
      targetUri: `${FOLDER}moves.plim`,
      originSelectionRange: { start: { character: 2 }, end: { character: 12 } },
    },
  ]);
});

test('a built-in movement leads to a document that the server knows', async () => {
  const client = await open();
  const [found] = await client.request<{ uri: string; range: { start: { line: number } } }[]>(
    'textDocument/definition',
    builtIn,
  );
  const { text } = await client.request<{ text: string }>('workspace/textDocumentContent', {
    uri: found!.uri,
  });
  expect(text.split('\n')[found!.range.start.line]).toMatch(/^exercise .*Dip/);
  expect(
    await client.request('workspace/textDocumentContent', { uri: 'plimsoll-library:/none.plim' }),
  ).toBeNull();
});

test('renames in all files, and says why where it does not', async () => {
  const client = await open();
  expect(await client.request('textDocument/prepareRename', name)).toMatchObject({
    placeholder: 'Crate Haul',
  });
  const edit = await client.request<{ documentChanges: { textDocument: unknown }[] }>('textDocument/rename', {
    ...name,
    newName: 'Case Haul',
  });
  expect(edit.documentChanges.map((change) => change.textDocument)).toEqual([
    { uri: `${FOLDER}log.plim`, version: 1 },
    { uri: `${FOLDER}moves.plim`, version: null },
  ]);
  await expect(client.request('textDocument/prepareRename', builtIn)).rejects.toThrow(/^Dip is built in/);
  await expect(client.request('textDocument/rename', { ...name, newName: 'Dip' })).rejects.toThrow(
    'Dip is built in: choose another name',
  );
});

test('answers what outlines, folds, selects, links and colours a file', async () => {
  const client = await open();
  const count = async (method: string, params: object = {}) =>
    (await client.request<unknown[]>(method, { textDocument, ...params })).length;
  expect(await count('textDocument/documentSymbol')).toBe(1);
  expect(await count('textDocument/foldingRange')).toBe(1);
  expect(await count('textDocument/selectionRange', { positions: [name.position] })).toBe(1);
  expect(await count('textDocument/documentLink')).toBe(1);
  expect(await client.request<unknown[]>('workspace/symbol', { query: 'crate haul' })).toMatchObject([
    { name: 'Crate Haul' },
  ]);
  const { data, resultId } = await client.request<{ data: number[]; resultId: string }>(
    'textDocument/semanticTokens/full',
    { textDocument },
  );
  expect(data.length).toBeGreaterThan(0);
  const change = { textDocument, previousResultId: resultId };
  expect(await client.request('textDocument/semanticTokens/full/delta', change)).toMatchObject({ edits: [] });
});

test("the athlete's week follows what is typed", async () => {
  const client = await open();
  const week = () => askWeek(client);
  expect(await week()).toMatchObject({ text: 'Quill · week 48 so far: 1 session, 300 kg' });
  await client.type('log.plim', '5 @ 60', '6 @ 60');
  expect(await week()).toMatchObject({ text: 'Quill · week 48 so far: 1 session, 360 kg' });
});

test('an editor that asks for problems gets those it asks for, and none unasked', async () => {
  const client = await start({
    files: { ...files, 'closed.plim': 'session 2026-11-02 Quill Harrow\n  Dip: 5 @\n' },
    capabilities: { textDocument: { diagnostic: {} } },
  });
  await client.open('log.plim');
  await client.type('log.plim', 'Crate Haul: 5 @ 60 kg', 'Crate Haul: 5 @');
  type Report = { kind: string; resultId: string; items: { code: string }[] };
  const ask = (previousResultId?: string) =>
    client.request<Report>('textDocument/diagnostic', {
      textDocument,
      ...(previousResultId && { previousResultId }),
    });
  const first = await ask();
  expect(first.items.map(({ code }) => code)).toContain('missing-load');
  expect((await ask(first.resultId)).kind).toBe('unchanged');
  const { items } = await client.request<{ items: (Report & { uri: string })[] }>('workspace/diagnostic', {
    previousResultIds: [{ uri: textDocument.uri, value: first.resultId }],
  });
  expect(items.map(({ uri, items: found }) => `${uri} ${found.map(({ code }) => code)}`)).toEqual([
    `${FOLDER}closed.plim missing-load`,
  ]);
  const library = { textDocument: { uri: 'plimsoll-library:/barbell.plim' } };
  expect(await client.request('textDocument/diagnostic', library)).toMatchObject({ items: [] });
  expect([...client.problems('log.plim'), ...client.problems('closed.plim')]).toEqual([]);
});

test('an editor is told when problems, colours and weeks may be others, though it changed nothing itself', async () => {
  const refreshSupport = true;
  const client = await open({
    capabilities: {
      textDocument: { diagnostic: {} },
      workspace: { diagnostics: { refreshSupport }, semanticTokens: { refreshSupport } },
    },
  });
  await expect.poll(() => client.told).toEqual({ problems: 1, colours: 1, weeks: 1 });
  await client.changeFiles({ 'moves.plim': undefined });
  await expect.poll(() => client.told).toEqual({ problems: 2, colours: 2, weeks: 2 });
});
