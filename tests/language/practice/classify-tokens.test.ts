import { classifyTokens } from '@plimsoll/language/practice/classify-tokens';
import { expect, test } from 'vitest';
import { readFiles } from '../support/marked-practice.ts';

/** Each token of a file as `text → type modifiers`; a line's tokens stand behind its number, from 1. */
function classify(text: string, from?: number, to?: number): string[] {
  const file = readFiles({ 'a.plim': text }).file('a.plim')!;
  const practice = readFiles({ 'a.plim': text });
  return [...classifyTokens(practice, file, from, to)].map(
    ({ line, start, end, type, modifiers }) =>
      `${line + 1} ${file.lines[line]!.slice(start, end)} → ${[type, ...modifiers].join(' ')}`,
  );
}

test('a movement is known, built in or unknown', () => {
  const text = [
    'exercise Crate Haul',
    '  also Box Haul',
    '  muscles lower back 1/2, glutes',
    'session 2026-11-16',
    '  box haul: 5',
    '  Dip: 5',
    '  Harbour Hop: 5',
  ].join('\n');
  expect(classify(text)).toEqual([
    '1 exercise → keyword declaration',
    '1 Crate Haul → function declaration',
    '2 also → property',
    '2 Box Haul → function',
    '3 muscles → property',
    '3 lower back → enumMember',
    '3 1 → number',
    '3 / → operator',
    '3 2 → number',
    '3 glutes → enumMember',
    '4 session → keyword declaration',
    '4 2026-11-16 → number',
    '5 box haul → function',
    '5 5 → number',
    '6 Dip → function defaultLibrary',
    '6 5 → number',
    '7 Harbour Hop → variable',
    '7 5 → number',
  ]);
});

test('a header names athletes, a place and a plan', () => {
  expect(classify('session 2026-11-16 07:10 Quill | Bev at Loft, Ebb week 2 day 1  # late')).toEqual([
    '1 session → keyword declaration',
    '1 2026-11-16 → number',
    '1 07:10 → number',
    '1 Quill → class',
    '1 | → operator',
    '1 Bev → class',
    '1 at → keyword',
    '1 Loft → namespace',
    '1 Ebb → interface',
    '1 week → keyword',
    '1 2 → number',
    '1 day → keyword',
    '1 1 → number',
    '1 # late → comment',
  ]);
});

test('lines of training', () => {
  const text = [
    'session 2026-11-16',
    '  A giant set, 4 rounds, rest 1:15',
    '  warmup A1 Dip: 3x5/side @ bw+10 kg rpe 8, tempo 3-1-X-0, setting box 40 cm | ?',
    '  Pull-up: 5 @ red band, instead of Dip',
    '  > a note',
    '  time 2:55, ?',
    '  Rower: 500 m @ 8 km/h v 0.45 m/s',
    '  who knows',
  ].join('\n');
  expect(classify(text, 1)).toEqual([
    '2 A → label',
    '2 giant → keyword definition',
    '2 set → keyword definition',
    '2 4 → number',
    '2 rounds → type',
    '2 rest → keyword',
    '2 1:15 → number',
    '3 warmup → modifier',
    '3 A1 → label',
    '3 Dip → function defaultLibrary',
    '3 3 → number',
    '3 x → operator',
    '3 5 → number',
    '3 / → operator',
    '3 side → keyword',
    '3 @ → operator',
    '3 bw → enumMember readonly',
    '3 + → operator',
    '3 10 → number',
    '3 kg → type',
    '3 rpe → keyword',
    '3 8 → number',
    '3 tempo → keyword',
    '3 3-1-X-0 → number',
    '3 setting → keyword',
    '3 box 40 cm → string',
    '3 | → operator',
    '3 ? → enumMember readonly',
    '4 Pull-up → function defaultLibrary',
    '4 5 → number',
    '4 @ → operator',
    '4 red → enumMember',
    '4 band → type',
    '4 instead → keyword',
    '4 of → keyword',
    '4 Dip → function defaultLibrary',
    '5 > a note → string',
    '6 time → property',
    '6 2:55 → number',
    '6 ? → enumMember readonly',
    '7 Rower → function defaultLibrary',
    '7 500 → number',
    '7 m → type',
    '7 @ → operator',
    '7 8 → number',
    '7 km → type',
    '7 / → type',
    '7 h → type',
    '7 v → keyword',
    '7 0.45 → number',
    '7 m → type',
    '7 / → type',
    '7 s → type',
  ]);
});

test('definitions and plans', () => {
  const text = [
    'athlete Quill',
    '  sex female',
    '  avoid hinge until 2026-12-15, left # shoulder',
    'place Loft',
    '  dumbbells 4-32 by 2 kg pairs',
    'plan Ebb',
    '  for Quill',
    '  days Mon, Fri',
    '  day 1 Squat',
    '    week 2 Dip: 5 @ 70% of Back Squat',
  ].join('\n');
  expect(classify(text)).toEqual([
    '1 athlete → keyword declaration',
    '1 Quill → class declaration',
    '2 sex → property',
    '2 female → enumMember',
    '3 avoid → property',
    '3 until → keyword',
    '3 2026-12-15 → number',
    '3 left → string',
    '3 # shoulder → comment',
    '4 place → keyword declaration',
    '4 Loft → namespace declaration',
    '5 dumbbells → property',
    '5 4 → number',
    '5 - → operator',
    '5 32 → number',
    '5 by → keyword',
    '5 2 → number',
    '5 kg → type',
    '5 pairs → keyword',
    '6 plan → keyword declaration',
    '6 Ebb → interface declaration',
    '7 for → property',
    '7 Quill → class',
    '8 days → property',
    '8 Mon → enumMember',
    '8 Fri → enumMember',
    '9 day → keyword definition',
    '9 1 → number',
    '10 week → modifier',
    '10 2 → number',
    '10 Dip → function defaultLibrary',
    '10 5 → number',
    '10 @ → operator',
    '10 70 → number',
    '10 % → type',
    '10 of → keyword',
    '10 Back Squat → function defaultLibrary',
  ]);
});

test('comments before the first entry, and a range alone', () => {
  const text = '# a\n\nunits kg\n# b\nunits lb\n';
  expect(classify(text)).toEqual([
    '1 # a → comment',
    '3 units → keyword declaration',
    '3 kg → type',
    '4 # b → comment',
    '5 units → keyword declaration',
    '5 lb → type',
  ]);
  expect(classify(text, 3, 3)).toEqual(['4 # b → comment']);
  expect(classify('')).toEqual([]);
});
