import { findMention } from '@plimsoll/language/practice/mentions';
import { findDefinitions, findReferences } from '@plimsoll/language/practice/references';
import { expect, test } from 'vitest';
import { readFiles, readMarked } from '../support/marked-practice.ts';

const library = `exercise Crate Haul
  pattern horizontal pull
  also Box Haul, Haul of Crates
  easier Inverted Row
  harder Barrel Haul

exercise Barrel Haul
  easier Crate-Haul
`;

const people = `athlete Quill Harrow
  max crate haul: 60 kg on 2026-09-01
  goal Box Haul: 5 @ 90% of Crate Haul by 2027-01-01
  retest Box Haul: 60, 62.5 kg on 2026-09-28
  avoid Crate Haul until 2026-12-15

place Saltglass Loft

plan Ebb
  for Quill Harrow, Bev Stromm
  at Saltglass Loft
  day 1
    Crate Haul: 3x5 @ 70% | 3x5 @ 75% of Box Haul rpe 8

plan Flow
  follows Ebb
`;

const log = `session 2026-11-03 Quill Harrow | Bev Stromm at Saltglass Loft, Ebb week 1 day 1
  warmup CRATE HAUL: 5 @ 40 kg
  A1 Box Haul: 3, 5 @ 60 kg | 5 @ 40 kg, instead of Crate Haul
  Dip: 5 drop 5 @ bw

session 2026-11-05 quill harrow
  Dip: 5
`;

/** Each place as `file line: name`, with the role where it is no mere use. */
function list(files: Readonly<Record<string, string>>): string[] {
  const { practice, uri, line, column } = readMarked(files);
  const mention = findMention(practice.file(uri)!.model, line, column)?.mention;
  if (!mention) return [];
  return findReferences(practice, mention.kind, mention.written.text).map((found) => {
    const text = practice.file(found.uri)!.lines[found.line]!.slice(found.span.start, found.span.end);
    const role = found.mention.role === 'use' ? '' : ` (${found.mention.role})`;
    return `${found.uri.replace('.plim', '')} ${found.line + 1}: ${text}${role}`;
  });
}

const files = { 'library.plim': library, 'log.plim': log, 'people.plim': people };
const mark = (file: keyof typeof files, before: string, after: string) => ({
  ...files,
  [file]: files[file].replace(before + after, `${before}<|>${after}`),
});

const haul = [
  'library 1: Crate Haul (definition)',
  'library 3: Box Haul (spelling)',
  'library 3: Haul of Crates (spelling)',
  'library 8: Crate-Haul',
  'log 2: CRATE HAUL',
  'log 3: Box Haul',
  'log 3: Crate Haul',
  'people 2: crate haul',
  'people 3: Box Haul',
  'people 3: Crate Haul',
  'people 4: Box Haul',
  'people 5: Crate Haul (avoided)',
  'people 13: Crate Haul',
  'people 13: Box Haul',
];

test.each([
  ['a movement from its definition', mark('library.plim', 'exercise Cra', 'te Haul'), haul],
  ['a movement from another spelling', mark('library.plim', 'also Bo', 'x Haul'), haul],
  ['a movement from a use', mark('log.plim', 'A1 Box', ' Haul'), haul],
  ['a movement from a percentage', mark('people.plim', '90% of Crate', ' Haul'), haul],
  ['a built-in movement', mark('log.plim', 'Di', 'p: 5 drop'), ['log 4: Dip', 'log 7: Dip']],
  [
    'an athlete',
    mark('log.plim', '2026-11-03 Quill ', 'Harrow'),
    [
      'log 1: Quill Harrow',
      'log 6: quill harrow',
      'people 1: Quill Harrow (definition)',
      'people 10: Quill Harrow',
    ],
  ],
  [
    'an athlete that nothing defines',
    mark('people.plim', ', Bev', ' Stromm'),
    ['log 1: Bev Stromm', 'people 10: Bev Stromm'],
  ],
  [
    'a place',
    mark('people.plim', 'place Saltglass', ' Loft'),
    ['log 1: Saltglass Loft', 'people 7: Saltglass Loft (definition)', 'people 11: Saltglass Loft'],
  ],
  [
    'a plan',
    mark('people.plim', 'follows E', 'bb'),
    ['log 1: Ebb', 'people 9: Ebb (definition)', 'people 16: Ebb'],
  ],
  ['nothing on a load', mark('log.plim', '@ 4', '0 kg'), []],
])('%s', (_name, marked, expected) => {
  expect(list(marked)).toEqual(expected);
});

test('a load that several sets share is mentioned once', () => {
  const text = 'plan Ebb\n  day 1\n    Dip: 5, 5, 5 @ 70% of Bench<|> Press\n';
  expect(list({ 'a.plim': text })).toEqual(['a 3: Bench Press']);
});

test('a built-in movement replaced by one of the workspace keeps the spellings that are left to it', () => {
  const practice = readFiles({
    'a.plim': 'exercise Push-up\n  also Floor Push\n\nsession 2026-11-03\n  Push Up: 5\n  Floor Push: 5\n',
  });
  const names = findReferences(practice, 'movement', 'floor push').map(({ line }) => line + 1);
  expect(names).toEqual([1, 2, 5, 6]);
});

test('follows every change of the files', () => {
  const practice = readFiles({
    'a.plim': 'session 2026-11-03 Bev Stromm\n',
    'b.plim': 'athlete Bev Stromm\n',
  });
  const count = () => findReferences(practice, 'athlete', 'Bev Stromm').length;
  expect(count()).toBe(2);
  practice.setFile('a.plim', 'session 2026-11-03 Bev Stromm\n\nsession 2026-11-04 Bev Stromm\n');
  expect(count()).toBe(3);
  practice.setFile('a.plim', '\n\nsession 2026-11-03 Bev Stromm\n');
  expect(findReferences(practice, 'athlete', 'Bev Stromm').map(({ line }) => line)).toEqual([2, 0]);
  practice.removeFile('b.plim');
  expect(count()).toBe(1);
  practice.removeFile('a.plim');
  expect(count()).toBe(0);
});

test('a movement is defined by the workspace, each time it does so, or else by the library', () => {
  const practice = readFiles({ 'b.plim': 'exercise Dip\n', 'c.plim': 'exercise dip\n' });
  const where = (name: string) => findDefinitions(practice, 'movement', name).map(({ uri }) => uri);
  expect(where('DIP')).toEqual(['b.plim', 'c.plim']);
  expect(where('Back Squat')).toEqual(['plimsoll-library:/barbell.plim']);
  expect(where('Harbour Hop')).toEqual([]);
});
