import { SessionWorks } from '@plimsoll/language/measures/session-work';
import type { Practice } from '@plimsoll/language/practice/practice';
import { rename, startRename } from '@plimsoll/language/practice/rename';
import { describe, expect, test } from 'vitest';
import { readFiles, readMarked } from '../support/marked-practice.ts';

type Files = Readonly<Record<string, string>>;

/** The files as they are after a rename at the cursor, or why it was refused. */
function renameAt(files: string | Files, newName: string): Files | string {
  const { practice, texts, uri, line, column } = readMarked(files);
  const renaming = rename(practice, uri, line, column, newName);
  if (!renaming) return 'nothing to rename';
  if ('refused' in renaming) return renaming.refused;
  const lines = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, text.split('\n')]));
  for (const place of renaming.places.toReversed()) {
    const text = lines[place.uri]![place.line]!;
    lines[place.uri]![place.line] =
      text.slice(0, place.span.start) + renaming.newName + text.slice(place.span.end);
  }
  return Object.fromEntries(Object.entries(lines).map(([name, changed]) => [name, changed.join('\n')]));
}

/** The lines of all files that differ afterwards. */
function changedLines(files: string | Files, newName: string): string[] | string {
  const after = renameAt(files, newName);
  if (typeof after === 'string') return after;
  const { texts } = readMarked(files);
  return Object.entries(after).flatMap(([name, text]) => {
    const before = texts[name]!.split('\n');
    return text.split('\n').filter((line, index) => line !== before[index]);
  });
}

const practice = `exercise Crate Haul
  also Box Haul
  harder Barrel Haul
  muscles lats
  bodyweight 40%

exercise Barrel Haul

athlete Quill Harrow
  bodyweight 80 kg on 2026-01-01
  max Crate Haul: 60 kg on 2026-09-01
  avoid crate-haul until 2026-12-15

athlete Bev Stromm
  bodyweight 60 kg on 2026-01-01

place Saltglass Loft

plan Ebb
  for Quill Harrow
  at Saltglass Loft
  day 1
    Crate Haul: 3x5 @ 70% of Crate Haul rpe 8

plan Flow
  follows Ebb

session 2026-11-03 Quill Harrow | Bev Stromm at Saltglass Loft, Ebb week 1 day 1  # Crate Haul
  Crate Haul: 5 @ 40 kg, instead of Crate Haul
  Box Haul: 5 @ 20 kg
  > Crate Haul went well
  Harbour Hop: 5
`;

const at = (before: string, after: string) => practice.replace(before + after, `${before}<|>${after}`);

describe('changes every place that is spelt so', () => {
  test.each([
    [
      'a movement, whatever its capitals and hyphens',
      at('exercise Crate', ' Haul'),
      'Harbour Haul',
      [
        'exercise Harbour Haul',
        '  max Harbour Haul: 60 kg on 2026-09-01',
        '  avoid Harbour Haul until 2026-12-15',
        '    Harbour Haul: 3x5 @ 70% of Harbour Haul rpe 8',
        '  Harbour Haul: 5 @ 40 kg, instead of Harbour Haul',
      ],
    ],
    [
      'another spelling of it',
      at('  also Box', ' Haul'),
      'Case Haul',
      ['  also Case Haul', '  Case Haul: 5 @ 20 kg'],
    ],
    ['from a use', at('  Box', ' Haul: 5'), 'Case Haul', ['  also Case Haul', '  Case Haul: 5 @ 20 kg']],
    [
      'capitals alone',
      at('exercise Barrel', ' Haul'),
      'barrel-haul',
      ['  harder barrel-haul', 'exercise barrel-haul'],
    ],
    [
      'an athlete',
      at('athlete Quill', ' Harrow'),
      ' Quill  Vann ',
      [
        'athlete Quill Vann',
        '  for Quill Vann',
        'session 2026-11-03 Quill Vann | Bev Stromm at Saltglass Loft, Ebb week 1 day 1  # Crate Haul',
      ],
    ],
    [
      'a place',
      at('at Saltglass', ' Loft, Ebb'),
      'Attic #2',
      [
        'place Attic #2',
        '  at Attic #2',
        'session 2026-11-03 Quill Harrow | Bev Stromm at Attic #2, Ebb week 1 day 1  # Crate Haul',
      ],
    ],
    [
      'a plan',
      at('plan E', 'bb'),
      'Spring Tide',
      [
        'plan Spring Tide',
        '  follows Spring Tide',
        'session 2026-11-03 Quill Harrow | Bev Stromm at Saltglass Loft, Spring Tide week 1 day 1  # Crate Haul',
      ],
    ],
    ['a name that nothing defines', at('  Harbour', ' Hop'), 'Quay Hop', ['  Quay Hop: 5']],
    ['a slip into what was meant', at('  Harbour', ' Hop'), 'Back Squat', ['  Back Squat: 5']],
  ])('%s', (_name, marked, newName, expected) => {
    expect(changedLines(marked, newName)).toEqual(expected);
  });

  test('in all files', () => {
    const files = {
      'a.plim': 'exercise Crate<|> Haul\n',
      'b.plim': 'session 2026-11-03\n  crate haul: 5\n',
      'c.plim': 'session 2026-11-04\n  Dip: 5\n',
    };
    expect(changedLines(files, 'Case Haul')).toEqual(['exercise Case Haul', '  Case Haul: 5']);
  });
});

describe('refuses, and says why', () => {
  test.each([
    [
      'a built-in movement',
      'session 2026-11-03\n  Di<|>p: 5\n',
      'Deep Dip',
      /^Dip is built in and keeps its name.*"also Dip"$/,
    ],
    ['a pattern', 'athlete Quill Harrow\n  avoid hin<|>ge\n', 'Bend', /^hinge is a pattern/],
    ['no name', at('exercise Crate', ' Haul'), '  ', /at least two letters/],
    ['a sign', at('exercise Crate', ' Haul'), 'Crate: Haul', /^A name has no ":" in it$/],
    ['a word of the notation', at('exercise Crate', ' Haul'), 'Circuit', /is a word of the notation/],
    [
      'a beginning that means something',
      at('exercise Crate', ' Haul'),
      'test Haul',
      /does not begin with test/,
    ],
    ["and in an athlete's name", at('athlete Quill', ' Harrow'), 'Quill and Ash', /does not hold and/],
    ["at in an athlete's name", at('athlete Quill', ' Harrow'), 'Quill at Sea', /does not hold the word at/],
    ['a pattern as a name', at('exercise Crate', ' Haul'), 'Carry', /^Carry is a pattern/],
    [
      'another definition',
      at('exercise Crate', ' Haul'),
      'barrel haul',
      /^barrel haul is defined in a.plim, line 7: choose/,
    ],
    [
      'another spelling of itself',
      at('exercise Crate', ' Haul'),
      'Box Haul',
      /^Box Haul is defined in a.plim, line 1 as another spelling of Crate Haul: choose/,
    ],
    [
      'a built-in movement as a name',
      at('exercise Crate', ' Haul'),
      'Push Up',
      /^Push Up is built in: choose/,
    ],
    [
      'a name in use that nothing defines',
      at('exercise Crate', ' Haul'),
      'Harbour Hop',
      /^Harbour Hop is written in a.plim, line 32 without being defined/,
    ],
    [
      'another athlete',
      at('athlete Quill', ' Harrow'),
      'Bev Stromm',
      /^Bev Stromm is defined in a.plim, line 14/,
    ],
    [
      'what a line would read as a comment',
      at('exercise Crate', ' Haul'),
      'Haul #two',
      /line 1, Haul #two could not be told/,
    ],
    [
      'what a line would read as a label',
      at('  Harbour', ' Hop'),
      'B2 Hop',
      /line 32, B2 Hop could not be told/,
    ],
    [
      'what an avoid would end at',
      at('exercise Crate', ' Haul'),
      'Haul until Dawn',
      /line 12, Haul until Dawn/,
    ],
    ['what a percentage would end at', at('exercise Crate', ' Haul'), 'Haul rpe 9', /line 23, Haul rpe 9/],
    ['what a session would read as a week', at('plan E', 'bb'), 'Ebb day 2', /line 28, Ebb day 2/],
  ])('%s', (_name, marked, newName, reason) => {
    expect(renameAt(marked, newName)).toMatch(reason);
  });

  test.each([
    ['on a load', at('Crate Haul: 5 @ 4', '0 kg')],
    ['in a note', at('> Crate', ' Haul')],
    ['on a muscle', at('muscles la', 'ts')],
  ])('nothing %s', (_name, marked) => {
    const { practice: read, uri, line, column } = readMarked(marked);
    expect(startRename(read, uri, line, column)).toBeUndefined();
    expect(renameAt(marked, 'Anything Else')).toBe('nothing to rename');
  });
});

describe('changes no number', () => {
  /** Every athlete's sessions as sums, in the order of their definitions, and the maxes that are known. */
  function sum(read: Practice): unknown[] {
    const works = new SessionWorks(read);
    return read.allAthletes().map(({ key, entry }) => ({
      sums: read.sessionsOf(key).map((record) => works.of(record).total),
      maxes: entry.maxes.map(({ movement }) => read.findMovement(movement.text) !== undefined),
    }));
  }

  test.each([
    ['a movement', at('exercise Crate', ' Haul'), 'Harbour Haul'],
    ['another spelling', at('  also Box', ' Haul'), 'Case Haul'],
    ['an athlete', at('athlete Bev', ' Stromm'), 'Zara Stromm'],
    ['a place', at('place Saltglass', ' Loft'), 'Saltglass Attic'],
    ['a plan', at('plan E', 'bb'), 'Neap Tide'],
  ])('of %s', (_name, marked, newName) => {
    const after = renameAt(marked, newName) as Files;
    expect(after).not.toEqual(readMarked(marked).texts);
    expect(sum(readFiles(after))).toEqual(sum(readMarked(marked).practice));
  });
});

describe('lines that are read as they are meant', () => {
  const LOG = 'session 2026-11-03 Ann Vell\n  A1: Crate<|> Haul: 5\n';

  test('take the new name', () => {
    expect(changedLines(LOG, 'Box Haul')).toEqual(['  A1: Box Haul: 5']);
  });

  test.each([['session 2026-11-03 Ann Vell\n  Crate<|> Haul: 5\n', 'Note', 'line 2']])(
    'are not made by a name: %s',
    (text, name, where) => {
      expect(renameAt(text, name)).toBe(
        `In a.plim, ${where}, ${name} could not be told from the rest of the line: choose another name`,
      );
    },
  );
});
