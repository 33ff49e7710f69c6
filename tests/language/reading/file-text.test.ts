import { expect, test } from 'vitest';
import { FileText } from '../../../language/src/reading/file-text.ts';

test('lines are cut from a text, and a text is put together from lines', () => {
  expect(new FileText({ text: 'a\r\nb\n' }).lines).toEqual(['a', 'b', '']);
  expect(new FileText({ lines: ['a', 'b', ''] }).text).toBe('a\nb\n');
});

test('what is known is given as it is', () => {
  const lines = ['a', 'b'];
  expect(new FileText({ lines }).lines).toBe(lines);
  expect(new FileText({ text: 'a\r\nb', lines }).lines).toBe(lines);
  expect(new FileText({ text: 'a\r\nb', lines }).text).toBe('a\r\nb');
});

test('nobody is given lines that were not cut yet', () => {
  const file = new FileText({ text: 'a\nb' });
  expect(file.cut).toBeUndefined();
  const { lines } = file;
  expect(file.cut).toBe(lines);
  expect(new FileText({ lines: ['a'] }).cut).toEqual(['a']);
});
