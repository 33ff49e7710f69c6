import { listSelections } from '@plimsoll/language/practice/selections';
import { expect, test } from 'vitest';
import { readMarked } from '../support/marked-practice.ts';

/** What each step takes in: text within a line, and `lines 2-5` (from 1) beyond it. */
function grow(marked: string): string[] {
  const { practice, uri, line, column } = readMarked(marked);
  const file = practice.file(uri)!;
  return listSelections(file, line, column).map(({ start, end }) =>
    start.line === end.line && !(start.column === 0 && end.column === file.lines[line]!.length)
      ? file.lines[line]!.slice(start.column, end.column)
      : `lines ${start.line + 1}-${end.line + 1}`,
  );
}

const log = (line: string) => `units kg

session 2026-11-16 Quill Harrow | Bev Stromm
  A straight
    ${line}
    > and a note

  B straight
    Dip: 5
`;

test.each([
  [
    'from a number to the file',
    log('Back Squat: 3x5 @ 8<|>0 kg rpe 8, 5 @ 60 | 5 @ 40, rest 2:00'),
    [
      '80',
      '3x5 @ 80 kg rpe 8',
      '3x5 @ 80 kg rpe 8, 5 @ 60',
      'Back Squat: 3x5 @ 80 kg rpe 8, 5 @ 60 | 5 @ 40, rest 2:00',
      'lines 4-6',
      'lines 3-9',
      'lines 1-10',
    ],
  ],
  [
    'from a word of a name',
    log('Back Sq<|>uat: 5'),
    ['Squat', 'Back Squat', 'Back Squat: 5', 'lines 4-6', 'lines 3-9', 'lines 1-10'],
  ],
  [
    'from a modifier',
    log('Dip: 5, te<|>mpo 3-1-X-0'),
    [
      'tempo',
      'tempo 3-1-X-0',
      '5, tempo 3-1-X-0',
      'Dip: 5, tempo 3-1-X-0',
      'lines 4-6',
      'lines 3-9',
      'lines 1-10',
    ],
  ],
  [
    'in a definition',
    'exercise Crate Haul\n  muscles lower b<|>ack\n',
    ['back', 'lower back', 'muscles lower back', 'lines 1-2', 'lines 1-3'],
  ],
  [
    'in a plan',
    'plan Ebb\n  day 1\n    Di<|>p: 5\n  day 2\n',
    ['Dip', 'Dip: 5', 'lines 3-3', 'lines 2-3', 'lines 1-4', 'lines 1-5'],
  ],
  ['between entries', 'units kg\n<|>\nunits lb', ['lines 2-2', 'lines 1-3']],
])('%s', (_name, marked, expected) => {
  expect(grow(marked)).toEqual(expected);
});

test('every step holds the one before', () => {
  const { practice, uri } = readMarked(`${log('A1 Back Squat: 3x5 @ 80 kg drop 5 @ 60, pain 2 knee')}<|>`);
  const file = practice.file(uri)!;
  const compare = (a: { line: number; column: number }, b: { line: number; column: number }) =>
    a.line - b.line || a.column - b.column;
  for (const [line, text] of file.lines.entries()) {
    for (let column = 0; column <= text.length; column++) {
      const steps = listSelections(file, line, column);
      expect(steps.length).toBeGreaterThan(0);
      for (const [index, { start, end }] of steps.entries()) {
        expect(compare(start, { line, column })).toBeLessThanOrEqual(0);
        expect(compare(end, { line, column })).toBeGreaterThanOrEqual(0);
        const inner = steps[index - 1];
        if (!inner) continue;
        expect(compare(start, inner.start)).toBeLessThanOrEqual(0);
        expect(compare(end, inner.end)).toBeGreaterThanOrEqual(0);
      }
    }
  }
});
