import { scanLine } from '@plimsoll/language/syntax/line-scanner';
import type { LineContext } from '@plimsoll/language/vocabulary/keywords';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RUNS } from '../support/generators/runs.ts';
import { printTokens } from './print-tokens.ts';

const scan = (line: string, context: LineContext): string =>
  printTokens(line, scanLine(line, context).tokens);

test.each<[LineContext, string, string]>([
  ['session', 'Back Squat: 5', 'NAME(Back Squat) : NUMBER(5)'],
  ['session', '  A1 Row: 8 # low', 'LABEL(A1) NAME(Row) : NUMBER(8) COMMENT(# low)'],
  ['session', 'a2) Row: 8', 'LABEL(a2) NAME(Row) : NUMBER(8)'],
  ['session', 'warm-up Row: 8', 'PREFIX(warm-up) NAME(Row) : NUMBER(8)'],
  ['session', 'test Row: 8', 'PREFIX(test) NAME(Row) : NUMBER(8)'],
  ['plan', 'week 5 test Row: 8', 'WORD(week) NUMBER(5) PREFIX(test) NAME(Row) : NUMBER(8)'],
  ['session', 'test: 8', 'NAME(test) : NUMBER(8)'],
  ['session', 'A1: 8', 'NAME(A1) : NUMBER(8)'],
  ['session', 'A1 5: 8', 'NAME(A1 5) : NUMBER(8)'],
  ['session', '90/90 Hip Lift: 5', 'NAME(90/90 Hip Lift) : NUMBER(5)'],
  ['session', 'B circuit, 4 rounds', 'LETTER(B) WORD(circuit) , NUMBER(4) WORD(rounds)'],
  ['session', 'B circuit: 4 rounds', 'LETTER(B) WORD(circuit) NUMBER(4) WORD(rounds)'],
  ['session', 'Warm-Up', 'WORD(Warm-Up=warmup)'],
  ['session', 'effort: 7,5', 'WORD(effort) NUMBER(7,5)'],
  ['session', 'pain 2 right knee, sore', 'WORD(pain) NUMBER(2) TEXT(right knee) , WORD(sore)'],
  ['session', 'missed, ill, again', 'WORD(missed) , TEXT(ill, again)'],
  ['session', '> A note # with that', 'NOTE(> A note # with that)'],
  ['session', 'no idea # what', 'STRAY(no idea) COMMENT(# what)'],
  ['session', '  # alone', 'COMMENT(# alone)'],
  ['session', '', ''],
  [
    'unknown',
    'session 2026-11-17 07:10 Ivo | Bo at Loft, Base week 2 day 1',
    'WORD(session) DATE(2026-11-17) TIME(07:10) NAME(Ivo) | NAME(Bo) WORD(at) NAME(Loft) , NAME(Base) WORD(week) NUMBER(2) WORD(day) NUMBER(1)',
  ],
  ['unknown', 'session 2026-11-17T07:10 Ivo', 'WORD(session) DATE(2026-11-17) TIME(07:10) NAME(Ivo)'],
  ['unknown', 'session 11/17 Ivo', 'WORD(session) ODD_DATE(11/17) NAME(Ivo)'],
  ['unknown', 'session 2026-11-17 Atlas Hall', 'WORD(session) DATE(2026-11-17) NAME(Atlas Hall)'],
  ['unknown', 'session at Loft', 'WORD(session) WORD(at) NAME(Loft)'],
  ['unknown', 'athlete Ivo, Bo: x', 'WORD(athlete) NAME(Ivo, Bo: x)'],
  ['unknown', 'sesion 2026-11-17 Ivo', 'TITLE(sesion 2026-11-17 Ivo)'],
  [
    'exercise',
    'muscles glutes, hip flexors 1/2',
    'WORD(muscles) NAME(glutes) , NAME(hip flexors) NUMBER(1) / NUMBER(2)',
  ],
  ['exercise', 'cue: Heels # down', 'WORD(cue) TEXT(Heels # down)'],
  ['exercise', 'trunk resists side bend', 'WORD(trunk) WORD(resists) NAME(side bend)'],
  ['exercise', 'bodyweight 69%, a study, 2010', 'WORD(bodyweight) NUMBER(69) % , TEXT(a study, 2010)'],
  [
    'place',
    'stacks Low Cable 5-100 by 5 kg',
    'WORD(stacks) NAME(Low Cable) NUMBER(5) - NUMBER(100) WORD(by) NUMBER(5) WORD(kg)',
  ],
  ['place', 'has bench, pull-up bar', 'WORD(has) NAME(bench) , NAME(pull-up bar)'],
  [
    'athlete',
    'max Back Squat: 102,5 kg on 2026-09-28',
    'WORD(max) NAME(Back Squat) : NUMBER(102,5) WORD(kg) WORD(on) DATE(2026-09-28)',
  ],
  ['athlete', 'retest Row: 100, 102.5 kg', 'WORD(retest) NAME(Row) : NUMBER(100) , NUMBER(102.5) WORD(kg)'],
  [
    'athlete',
    'avoid vertical push until 2026-12-15, left shoulder',
    'WORD(avoid) NAME(vertical push) WORD(until) DATE(2026-12-15) , TEXT(left shoulder)',
  ],
  ['athlete', 'away 12/19 to 2027-01-03', 'WORD(away) ODD_DATE(12/19) WORD(to) DATE(2027-01-03)'],
  ['plan', 'day 1: Squat', 'WORD(day) NUMBER(1) NAME(Squat)'],
  ['plan', 'for Ivo, Bo', 'WORD(for) NAME(Ivo) , NAME(Bo)'],
])('in %s: %j', (context, line, expected) => {
  expect(scan(line, context)).toBe(expected);
});

test('tokens stand in order, apart, within the line, and hold no space at their ends', () => {
  const contexts = fc.constantFrom<LineContext>(
    'session',
    'plan',
    'exercise',
    'place',
    'athlete',
    'units',
    'unknown',
  );
  const words = fc.constantFrom(
    'session',
    'A1',
    'Row',
    ':',
    '5',
    '@',
    ',',
    '|',
    ' ',
    '\t',
    '2026-11-17',
    'at',
    'week 5',
    'cue',
    '#',
    '>',
    'until',
    '1/2',
  );
  const line = fc
    .oneof(
      fc.string({ unit: 'binary' }),
      fc.array(words).map((parts) => parts.join(' ')),
    )
    .filter((text) => !/[\r\n]/.test(text));
  fc.assert(
    fc.property(line, contexts, (text, context) => {
      let last = 0;
      for (const { start, end } of scanLine(text, context).tokens) {
        expect(start >= last && end > start && end <= text.length).toBe(true);
        expect(text.slice(start, end)).toBe(text.slice(start, end).trim());
        last = end;
      }
    }),
    RUNS,
  );
});
