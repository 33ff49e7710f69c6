import { DiagnosticReports } from '@plimsoll/server/diagnostic-reports';
import { beforeEach, expect, test } from 'vitest';
import { CancellationTokenSource, type Diagnostic } from 'vscode-languageserver/node';
import { takeLong } from './support/long-steps.ts';

const problem = (message: string): Diagnostic => {
  const start = { line: 0, character: 0 };
  return { range: { start, end: start }, message };
};

let files: Map<string, Diagnostic[]>;
let looked: string[];
let reports: DiagnosticReports;
let source: CancellationTokenSource;
beforeEach(() => {
  files = new Map([
    ['a.plim', [problem('one')]],
    ['b.plim', []],
  ]);
  looked = [];
  source = new CancellationTokenSource();
  reports = new DiagnosticReports({
    compute: (uri) => {
      looked.push(uri);
      return files.get(uri) ?? [];
    },
    prepare: () => [],
    versionOf: () => undefined,
    toClientUri: (uri) => `client:${uri}`,
    quietMs: 0,
  });
});

const ask = (uri: string, previous?: string) => reports.report(uri, previous, source.token);

test('what the editor has already is not sent again', async () => {
  const first = await ask('a.plim');
  expect(first).toMatchObject({ kind: 'full', items: [{ message: 'one' }] });
  expect(await ask('a.plim', first.resultId)).toEqual({ kind: 'unchanged', resultId: first.resultId });
  expect(looked).toEqual(['a.plim']);
});

test('a change that leaves the problems as they are leaves their id', async () => {
  const first = await ask('a.plim');
  reports.schedule(['a.plim']);
  expect(await ask('a.plim', first.resultId)).toMatchObject({ kind: 'unchanged' });
  files.set('a.plim', [problem('two')]);
  expect(await ask('a.plim', first.resultId)).toMatchObject({ kind: 'unchanged' });
  reports.schedule(['a.plim']);
  expect(await ask('a.plim', first.resultId)).toMatchObject({ kind: 'full', items: [{ message: 'two' }] });
});

test('all files are told once, those with nothing wrong not at all', async () => {
  reports.schedule(files.keys());
  const { items } = await reports.reportAll(new Map(), source.token);
  expect(items).toMatchObject([{ kind: 'full', uri: 'client:a.plim', items: [{ message: 'one' }] }]);
});

test('a question about all files waits for news', async () => {
  reports.schedule(files.keys());
  const { items: told } = await reports.reportAll(new Map(), source.token);
  const previous = new Map([['a.plim', told[0]!.resultId!]]);
  const answers: unknown[] = [];
  const waiting = reports.reportAll(previous, source.token).then(({ items }) => answers.push(...items));
  reports.schedule(['a.plim']);
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(answers).toEqual([]);
  files.set('a.plim', []);
  files.set('b.plim', [problem('late')]);
  reports.schedule(files.keys());
  await waiting;
  expect(answers).toMatchObject([
    { uri: 'client:a.plim', items: [] },
    { uri: 'client:b.plim', items: [{ message: 'late' }] },
  ]);
});

test('a question that is withdrawn, or left open at the end, is over', async () => {
  const waiting = reports.reportAll(new Map(), source.token);
  source.cancel();
  await expect(waiting).rejects.toThrow(/asks no longer/);
  const last = reports.reportAll(new Map(), new CancellationTokenSource().token);
  reports.dispose();
  expect(await last).toEqual({ items: [] });
});

test('nothing is told until typing has paused', async () => {
  const quiet = new DiagnosticReports({
    compute: () => [],
    prepare: () => [],
    versionOf: () => undefined,
    toClientUri: (uri) => uri,
    quietMs: 40,
  });
  quiet.schedule(['a.plim']);
  const start = performance.now();
  await quiet.report('a.plim', undefined, source.token);
  expect(performance.now() - start).toBeGreaterThanOrEqual(39);
});

test('looking at all files stops as soon as something changes meanwhile, and nothing is told of what is old', async () => {
  const many = Array.from({ length: 40 }, (_, index) => `${index}.plim`);
  let typed = 0;
  const busy = new DiagnosticReports({
    compute: (uri) => {
      const end = performance.now() + 3;
      while (performance.now() < end);
      // Whoever types does so while files are looked at.
      if (uri === '3.plim' && typed++ === 0) setImmediate(() => busy.schedule(['0.plim']));
      looked.push(uri);
      return [problem(`${typed}`)];
    },
    prepare: () => [],
    versionOf: () => undefined,
    toClientUri: (uri) => uri,
    quietMs: 0,
  });
  busy.schedule(many);
  const { items } = await busy.reportAll(new Map(), source.token);
  expect(items).toHaveLength(40);
  const again = looked.lastIndexOf('0.plim');
  expect(looked.filter((uri) => uri === '0.plim')).toHaveLength(2);
  expect(looked.indexOf('39.plim')).toBeGreaterThan(looked.indexOf('3.plim'));
  expect(items.find(({ uri }) => uri === '0.plim')).toMatchObject({ items: [{ message: '1' }] });
  expect(again).toBeGreaterThan(looked.indexOf('3.plim'));
  busy.dispose();
});

test('getting a large file ready stops as soon as something changes meanwhile', async () => {
  const done: string[] = [];
  const busy = new DiagnosticReports({
    compute: (uri) => {
      done.push(`computed ${uri}`);
      return [];
    },
    *prepare(uri) {
      for (const step of takeLong(uri, done)) {
        if (done.length === 2) setImmediate(() => busy.schedule([uri]));
        yield step;
      }
    },
    versionOf: () => undefined,
    toClientUri: (uri) => uri,
    quietMs: 0,
  });
  await busy.report('a.plim', undefined, source.token);
  expect(done).toEqual(['a.plim 1', 'a.plim 2', 'a.plim 1', 'a.plim 2', 'a.plim 3', 'computed a.plim']);
});
