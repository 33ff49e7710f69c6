import { NameIndex } from '@plimsoll/language/practice/name-index';
import { expect, test } from 'vitest';

const define = (index: NameIndex<{ uri: string; line: number }>, uri: string, line: number, key: string) =>
  index.add(uri, { uri, line }, [key]);

test('definitions stand in order of file and line, whatever was read or edited last', () => {
  const index = new NameIndex<{ uri: string; line: number }>();
  define(index, 'b', 0, 'light');
  define(index, 'a', 0, 'heavy');
  define(index, 'a', 9, 'long');
  const before = index.values();
  index.removeFile('a');
  define(index, 'a', 1, 'heavy');
  define(index, 'a', 10, 'long');
  expect(before.map(({ uri, line }) => `${uri}${line}`)).toEqual(['a0', 'a9', 'b0']);
  expect(index.values().map(({ uri, line }) => `${uri}${line}`)).toEqual(['a1', 'a10', 'b0']);
});

test('of two of a name the first by file counts, and a definition of two names stands there once', () => {
  const index = new NameIndex<{ uri: string; line: number }>();
  index.add('b', { uri: 'b', line: 0 }, ['row', 'pull']);
  index.add('a', { uri: 'a', line: 3 }, ['row']);
  expect(index.find('row')?.uri).toBe('a');
  expect(index.findAll('row').map(({ uri }) => uri)).toEqual(['a', 'b']);
  expect(index.values()).toHaveLength(2);
  index.removeFile('a');
  expect(index.find('row')?.uri).toBe('b');
});
