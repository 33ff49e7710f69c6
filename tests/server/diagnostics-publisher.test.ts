import { DiagnosticsPublisher } from '@plimsoll/server/diagnostics-publisher';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver';
import { takeLong } from './support/long-steps.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const at = (line: number): Diagnostic => {
  const place = { line, character: 0 };
  return { range: { start: place, end: place }, message: 'm' };
};

function createPublisher(found: Record<string, Diagnostic[]>, open: string[] = []) {
  const sent: string[] = [];
  const publisher = new DiagnosticsPublisher({
    compute: (uri) => found[uri] ?? [],
    prepare: () => [],
    send: (uri, diagnostics) => sent.push(`${uri} ${diagnostics.map(({ range }) => range.start.line)}`),
    listOpen: () => open,
    quietMs: 150,
  });
  return { publisher, sent };
}

test('waits until nothing changes, and tells open files first', () => {
  const { publisher, sent } = createPublisher({ a: [at(1)], b: [at(2)] }, ['b']);
  publisher.schedule(['a']);
  vi.advanceTimersByTime(100);
  publisher.schedule(['b']);
  vi.advanceTimersByTime(100);
  expect(sent).toEqual([]);
  vi.advanceTimersByTime(50);
  expect(sent).toEqual(['b 2']);
  vi.runAllTimers();
  expect(sent).toEqual(['b 2', 'a 1']);
});

test('of files that are not open tells once typing has paused for longer', () => {
  const { publisher, sent } = createPublisher({ a: [at(1)], b: [at(2)], c: [at(3)] }, ['b']);
  for (let key = 0; key < 10; key++) {
    publisher.schedule(['a', 'b', 'c']);
    vi.advanceTimersByTime(1100);
  }
  expect(sent).toEqual(['b 2']);
  vi.advanceTimersByTime(100);
  expect(sent).toEqual(['b 2', 'a 1', 'c 3']);
});

test('tells only what is not as it was told', () => {
  const found: Record<string, Diagnostic[]> = { a: [at(1)], clean: [] };
  const { publisher, sent } = createPublisher(found);
  publisher.schedule(['a', 'clean']);
  vi.runAllTimers();
  publisher.schedule(['a', 'clean']);
  vi.runAllTimers();
  expect(sent).toEqual(['a 1']);
  found.a = [];
  publisher.schedule(['a']);
  vi.runAllTimers();
  expect(sent).toEqual(['a 1', 'a ']);
});

test('a large file is got ready in several slices, anew where something changes meanwhile', () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const done: string[] = [];
  const publisher = new DiagnosticsPublisher({
    compute: (uri) => {
      done.push(`computed ${uri}`);
      return [];
    },
    prepare: (uri) => takeLong(uri, done),
    send: () => undefined,
    listOpen: () => ['a'],
    quietMs: 150,
  });
  publisher.schedule(['a']);
  vi.advanceTimersByTime(150);
  expect(done).toEqual(['a 1']);
  vi.advanceTimersToNextTimer();
  expect(done).toEqual(['a 1', 'a 2']);
  publisher.schedule(['a']);
  vi.advanceTimersByTime(150);
  expect(done).toEqual(['a 1', 'a 2', 'a 1']);
  vi.runAllTimers();
  expect(done.slice(3)).toEqual(['a 2', 'a 3', 'computed a']);
});

test('says nothing after it was disposed', () => {
  const { publisher, sent } = createPublisher({ a: [at(1)] });
  publisher.schedule(['a']);
  publisher.dispose();
  vi.runAllTimers();
  expect(sent).toEqual([]);
});
