import { checkEntry } from '@plimsoll/language/checks/entry-checks';
import { describe, expect, test } from 'vitest';
import { readWhole } from '../support/read-text.ts';

/** A piece of a line to be repeated, and what stands before it. */
const PIECES: readonly (readonly [name: string, before: string, piece: string])[] = [
  ['digits', '  Row: ', '1'],
  ['letters', '  Row: ', 'a'],
  ['spaces', '  Row: 5', ' '],
  ['spaces before a letter', '  Row: 5 @ 20 kg, setting a', '  '],
  ['tabs in a name', '  Row', '\t'],
  ['sets', '  Row: 5', ', 5'],
  ['sets with loads', '  Row: 5 @ 20 kg', ', 5 @ 20 kg'],
  ['sets behind a load', '  Row: 5 @ 20 kg', ', 5'],
  ['bare loads', '  Row: 5 @ 20 kg', ', 5 @ 90'],
  ['ratings', '  Row: 5 @ 20 kg', ' rpe 8'],
  ['bare ratings', '  Row: 5 @ 20 kg rpe 8', ', 8'],
  ['drops', '  Row: 5 @ 20 kg', ' drop 5 @ 20 kg'],
  ['cells', '  Row: 5', ' | 5'],
  ['steps', '  Row: 5', ', +1 rep'],
  ['mini-sets', '  Row: (1', '+1'],
  ['dashes', '  Row: 1', '-1'],
  ['dates', '  Row: ', '2026-11-17 '],
  ['decimal commas', '  Row: 5 @ ', '1,5'],
  ['times', '  Row: ', '1:00'],
  ['x', '  Row: 3', ' x'],
  ['words', '  Row: ', 'no '],
  ['names', '  Row: 5, instead of ', 'v v '],
  ['pains', '  Row: 5', ', pain 1 a'],
  ['at signs', '  Row: ', '@'],
  ['brackets', '  Row: ', '('],
  ['odd characters', '  Row: ', '$'],
  ['surrogates', '  Row: ', '\ud800'],
  ['combining marks', '  Row: ', '\u0301'],
  ['comments', '  Row: 5', ' #'],
  ['labels', '  ', 'A1 '],
  ['prefixes', '  ', 'warmup '],
  ['colons', '  ', ':'],
  ['colons between digits', '  1', ':1'],
  ['a stray line', '  ', 'no '],
  ['options', '  A circuit', ', 4 rounds'],
  ['unknown options', '  A circuit', ', a'],
  ['bare options', '  A circuit', ', 5'],
  ['brackets in cells', '  Row: 5', ' | )'],
  ['round times', '  time 1:00', ', 1:00'],
  ['rests', '  rest 1:00', ', 1:00'],
  ['parts of a round', '  done 1 rounds', ' + 1'],
  ['efforts', '  effort 7', ' | 7'],
  ['a note', '  > ', 'a '],
  ['a reason', '  missed, ', 'a,'],
];

const HEADERS: readonly (readonly [name: string, before: string, piece: string])[] = [
  ['athletes', 'session 2026-11-17 Ivo', ' | Ivo'],
  ['places', 'session 2026-11-17', ' at'],
  ['weeks', 'session 2026-11-17 Ivo, Base', ' week 1'],
  ['spaces behind a header', 'session', '  '],
  ['spaces behind a title', 'sesion', '  '],
  ['capitals', 'sesion ', 'A '],
  ['a name', 'athlete ', 'Ivo '],
  ['spaces in units', 'units', '  '],
  ['letters', '', 'a'],
  ['digits and dots', 'session ', '1.'],
];

const LINES_OF: readonly (readonly [name: string, before: string, piece: string])[] = [
  ['muscles', 'exercise Row\n  muscles glutes', ', glutes 1/2'],
  ['shares', 'exercise Row\n  muscles glutes', ' 1/2'],
  ['spaces in muscles', 'exercise Row\n  muscles glutes 1', '  '],
  ['spaces before until', 'athlete Ivo\n  avoid squat', '  '],
  ['until', 'athlete Ivo\n  avoid squat', ' until'],
  ['plates', 'place Loft\n  plates 2x20', ', 2x20'],
  ['ranges', 'place Loft\n  dumbbells 4-8 by 2 kg', ', 4-8 by 2 kg'],
  ['directions', 'exercise Row\n  trunk resists flexion', ', flexion'],
  ['days', 'plan Base\n  days Mon', ', Mon'],
  ['lines', 'session 2026-11-17', '\n  Row: 5 @ 20 kg'],
  ['broken lines', 'session 2026-11-17', '\n  A circuit, )'],
  ['lines that break off', 'session 2026-11-17', '\n  Row: 5 @ pin'],
  ['entries', '', 'session 2026-11-17\n'],
  ['blank lines', '', '\n'],
  ['lone CR', '', '\r'],
];

const SHORT = 6_000;

/** Milliseconds that reading and checking take. What stands below the text is read whatever the text is. */
function measure(text: string): number {
  const whole = `${text}\nathlete Ivo\n  born 1991`;
  const start = performance.now();
  const { model } = readWhole(whole);
  for (const { entry } of model.entries) checkEntry(entry);
  const time = performance.now() - start;
  expect(model.entries.at(-1)!.entry).toMatchObject({ kind: 'athlete', born: 1991 });
  return time;
}

const repeat = (piece: string, length: number): string => piece.repeat(Math.ceil(length / piece.length));

// Another program may take the machine for a moment: what grows with the square is slow every time.
describe('four times the text takes about four times as long', { retry: 3 }, () => {
  test.each([
    ...PIECES.map(([name, before, piece]) => [name, `session 2026-11-17 Ivo\n${before}`, piece] as const),
    ...HEADERS,
    ...LINES_OF,
  ])('%s', (_, before, piece) => {
    // Behind a run of anything, a letter makes patterns that hoped for its end look back.
    const short = `${before + repeat(piece, SHORT)}Z`;
    const long = `${before + repeat(piece, 4 * SHORT)}Z`;
    // Four times the text: 4 where time grows with the text, 16 where it grows with its square.
    expect(measure(long) / Math.max(measure(short), 4)).toBeLessThan(10);
  });
});

test('a line of a hundred thousand characters is read as far as a line may go, and harms no other', () => {
  const { model } = readWhole(`session 2026-11-17 Ivo\n  Row: ${repeat('5, ', 100_000)}5\n  Row: 5`);
  const entry = model.entries[0]!.entry;
  const lines = entry.kind === 'session' ? entry.blocks[0]!.lines : [];
  expect(lines.map(({ cells }) => cells[0]!.sets.length)).toEqual([499, 1]);
  expect(entry.problems.map(({ code, span }) => [code, span.line])).toEqual([['unknown-item', 1]]);
});
