import type { Entry } from '@plimsoll/language/model/entry';
import { describe, expect, test } from 'vitest';
import { listProblems } from '../support/print-problems.ts';
import { readText } from '../support/read-text.ts';
import {
  BROKEN_ANYWHERE,
  BROKEN_IN_ATHLETE,
  BROKEN_IN_EXERCISE,
  BROKEN_IN_PLACE,
  BROKEN_IN_PLAN,
  BROKEN_IN_SESSION,
  BROKEN_IN_TRAINING,
  HALF_HEADERS,
} from './broken-lines.ts';
import { describeRest } from './describe-rest.ts';

/** A well-formed entry of each kind, cut where a line may be put into it. */
const FRAMES: {
  readonly [K in Entry['kind']]?: readonly [before: readonly string[], after: readonly string[]];
} = {
  session: [
    [
      'session 2026-11-17 Ivo Brundt at Herne Loft',
      'A straight, rest 3:00',
      'Back Squat: 5, 5 @ 80 kg rpe 8',
    ],
    [
      'Box Squat: 5x2 @ 72.5 kg, setting box 40 cm',
      '> Quick.',
      'effort 7',
      'B circuit, 2 rounds',
      'Push-up: 8, 7',
    ],
  ],
  plan: [
    [
      'plan Wicker Base',
      'for Ivo Brundt',
      'starts 2026-11-09',
      'training max 90%',
      'days alternate, 3 a week',
      'day 1 Squat',
      'Back Squat: 3x5 @ 70%',
    ],
    ['Push-up: 12, +1 rep each week to 16', 'day 2 Pull', 'Row: 8-12 @ 2x18 kg'],
  ],
  exercise: [
    ['exercise Goblet Squat', 'pattern squat', 'muscles quadriceps, adductors 1/2'],
    ['needs dumbbell', 'cue In this order: elbows, knees', '> Kind to backs.'],
  ],
  place: [
    ['place Herne Loft', 'bars 20 kg, 10 kg', 'plates 2x20, 4x10 kg'],
    ['dumbbells 4-32 by 2 kg', 'has bench, mat'],
  ],
  athlete: [
    ['athlete Ivo Brundt', 'born 1991', 'bodyweight 68.5 kg on 2026-10-01'],
    ['max Back Squat: 105 kg on 2026-09-28', 'avoid vertical push until 2026-12-15, left shoulder'],
  ],
  units: [['units kg'], ['> For bars from Ostby.']],
};

const NEIGHBOURS = [
  ['place Tarn Barn', 'has mat'],
  ['session 2026-11-19 Ivo Brundt', 'Row: 8 @ 20 kg'],
] as const;

const LINES: { readonly [K in Entry['kind']]?: readonly string[] } = {
  session: [...BROKEN_ANYWHERE, ...BROKEN_IN_TRAINING, ...BROKEN_IN_SESSION],
  plan: [...BROKEN_ANYWHERE, ...BROKEN_IN_TRAINING, ...BROKEN_IN_PLAN],
  exercise: [...BROKEN_ANYWHERE, ...BROKEN_IN_EXERCISE],
  place: [...BROKEN_ANYWHERE, ...BROKEN_IN_PLACE],
  athlete: [...BROKEN_ANYWHERE, ...BROKEN_IN_ATHLETE],
  units: BROKEN_ANYWHERE,
};

test('the table holds at least a hundred broken lines', () => {
  expect(new Set([...Object.values(LINES).flat(), ...HALF_HEADERS]).size).toBeGreaterThanOrEqual(100);
});

for (const [kind, lines] of Object.entries(LINES)) {
  const [before, after] = FRAMES[kind as Entry['kind']]!;
  describe.each([
    ['indented', '  '],
    ['not indented', ''],
  ])(`one broken line in a ${kind}, %s`, (_, indent) => {
    const [header, ...rest] = before;
    const above = [...NEIGHBOURS[0], header!, ...rest.map((line) => indent + line)];
    const below = [...after.map((line) => indent + line), ...NEIGHBOURS[1]];
    const whole = describeRest([...above, '', ...below], above.length);

    test.each(lines)('%j leaves every other line as it was', (line) => {
      const text = [...above, indent + line, ...below];
      expect(describeRest(text, above.length)).toEqual(whole);
      const problems = listProblems(readText(...text)).map(({ entryLine, problem }) => ({
        code: problem.code,
        line: entryLine + problem.span.line,
      }));
      // What the line does say may show at another that something is said twice, or that rounds do not fit.
      const told = problems.filter(({ code }) => code !== 'repeated-property' && code !== 'round-count');
      expect(told.filter(({ line }) => line !== above.length)).toEqual([]);
      expect(problems.filter(({ code }) => code === 'syntax').length).toBeLessThanOrEqual(1);
    });
  });
}

describe('a half-typed header', () => {
  const above = ['session 2026-11-17 Ivo Brundt', '  Back Squat: 5 @ 80 kg', '  effort 7'];
  const below = ['', 'athlete Ivo Brundt', '  born 1991', '', 'place Herne Loft', '  has mat'];

  test.each(HALF_HEADERS)('%j opens an entry and keeps those around it', (line) => {
    const { entries } = readText(...above, line, ...below);
    const without = readText(...above, '', ...below);
    expect(entries.map(({ line }) => line)).toEqual([0, 3, 5, 8]);
    expect(entries[0]!.entry).toEqual({ ...without.entries[0]!.entry, lineCount: 3 });
    expect(entries.slice(2)).toEqual(without.entries.slice(1));
    const syntax = entries[1]!.entry.problems.filter(({ code }) => code === 'syntax');
    expect(syntax.length).toBeLessThanOrEqual(1);
  });

  test.each(HALF_HEADERS)('%j keeps the lines below it', (line) => {
    const typed = readText(line, '  > A note.', '  nonsense of no kind').entries;
    expect(typed).toHaveLength(1);
    const { notes, strays } = typed[0]!.entry;
    expect([...notes, ...strays].map(({ text }) => text)).toEqual(['A note.', 'nonsense of no kind']);
  });
});
