import { findNamed } from '@plimsoll/language/practice/symbols';
import { expect, test } from 'vitest';
import { readFiles } from '../support/marked-practice.ts';

const practice = readFiles({
  'a.plim':
    'exercise Crate Haul\n  also Box Haul\nexercise Push-up\nathlete Quill Harrow\nplace Saltglass Loft\n',
  'b.plim':
    'plan Harbour Ebb\n\nsession 2026-11-16 Quill Harrow | Bev Stromm\n  Dip: 5\nsession 2026-11-18 Quill Harrow\n',
});

const find = (query: string) =>
  findNamed(practice, query).map(
    ({ kind, name, uri, line, builtIn }) => `${kind} ${name}, ${builtIn ? 'built in' : `${uri} ${line + 1}`}`,
  );

test('nothing asked for is all that the workspace defines', () => {
  expect(find('')).toEqual([
    'movement Crate Haul, a.plim 1',
    'plan Harbour Ebb, b.plim 1',
    'movement Push-up, a.plim 3',
    'athlete Quill Harrow, a.plim 4',
    'place Saltglass Loft, a.plim 5',
  ]);
});

test.each([
  [
    'the beginning of a name first, then of a word',
    'har',
    ['plan Harbour Ebb, b.plim 1', 'athlete Quill Harrow, a.plim 4'],
  ],
  ['capitals, hyphens and spaces do not matter', 'PUSH UP', ['movement Push-up, a.plim 3']],
  ['letters in order', 'slglft', ['place Saltglass Loft, a.plim 5']],
  [
    'a day',
    '2026-11-1',
    ['session 2026-11-16 Quill Harrow, b.plim 3', 'session 2026-11-18 Quill Harrow, b.plim 5'],
  ],
  ['nothing', 'zzz', []],
])('%s', (_name, query, expected) => {
  expect(find(query).filter((found) => !found.endsWith('built in'))).toEqual(expected);
});

test('built-in movements come behind those of the workspace that fit as well', () => {
  const found = find('push-up');
  expect(found[0]).toBe('movement Push-up, a.plim 3');
  expect(found.slice(1).length).toBeGreaterThan(0);
  expect(found.slice(1).every((each) => each.endsWith('built in'))).toBe(true);
  expect(find('back squat')[0]).toBe('movement Back Squat, built in');
});
