import { findComment, findNameColon, skipSpace, trimEnd } from '@plimsoll/language/syntax/scanned-token';
import { expect, test } from 'vitest';

test.each([
  ['# all', 0],
  ['5 # five', 2],
  ['5\u00a0# five', 2],
  ['Hall #2', 7],
  ['Hall #2 # the other', 8],
  ['C# minor', 8],
  ['none', 4],
  ['', 0],
])('a comment of %j begins at %i', (line, at) => {
  expect(findComment(line)).toBe(at);
});

test.each([
  ['Row: 5', 3],
  ['4:05 Run: 10', 8],
  ['Run:4:05', 3],
  ['4:05', -1],
  [':', 0],
])('the colon behind the name of %j is at %i', (line, at) => {
  expect(findNameColon(line, 0, line.length)).toBe(at);
});

test('a colon at or behind the end is none', () => {
  expect(findNameColon('Row: 5', 0, 3)).toBe(-1);
});

test('space of any kind is skipped on both sides', () => {
  const line = '\ufeff \t\u00a0\u2009\u3000Row\u202f \u200b';
  expect(skipSpace(line, 0)).toBe(6);
  expect(trimEnd(line, 0, line.length)).toBe(9);
  expect(skipSpace('   ', 0, 2)).toBe(2);
  expect(trimEnd('   ', 1, 3)).toBe(1);
});
