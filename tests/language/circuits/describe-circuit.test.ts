import { readCircuit } from '@plimsoll/language/circuits/circuit';
import { describeCircuit } from '@plimsoll/language/circuits/describe-circuit';
import { printCircuitFacts } from '@plimsoll/language/circuits/print-circuit';
import type { SessionEntry } from '@plimsoll/language/model/entry';
import { expect, test } from 'vitest';
import { readFiles } from '../support/marked-practice.ts';

const definitions = `exercise Turnip Squat
  pattern squat
  position standing
  trunk resists flexion
  muscles quadriceps, glutes, adductors 1/2
  needs kettlebell

exercise Turnip Hinge
  pattern hinge
  position standing
  trunk resists flexion
  muscles hamstrings, glutes
  needs kettlebell, mat

exercise Turnip Press
  pattern horizontal push
  position supine
  trunk resists extension
  muscles chest
  needs dumbbell, bench

exercise Turnip Row
  pattern horizontal pull
  position prone
  muscles lats
  needs dumbbell, bench

place Herne Shed
  kettlebells 12, 16 kg
  has mat

place Gull Loft
  kettlebells 12, 16 kg
  dumbbells 4-20 by 2 kg pairs
  has bench

place Bare Field
`;

/** The facts of a circuit of these lines, in a session at Herne Shed. */
function describe(header: string, ...lines: readonly string[]): string[] {
  const text = [
    'session 2026-11-24 at Herne Shed',
    `  ${header}`,
    ...lines.map((line) => `    ${line}`),
  ].join('\n');
  const practice = readFiles({ 'a.plim': definitions, 'b.plim': text });
  const session = practice.file('b.plim')!.model.entries[0]!.entry as SessionEntry;
  return printCircuitFacts(describeCircuit(practice, readCircuit(practice, session, session.blocks[0]!), 0));
}

test.each<[title: string, header: string, lines: string[], expected: string[]]>([
  [
    'what is repeated, by each definition that names it',
    'B circuit, 3 rounds',
    ['Turnip Squat: 10 @ 16 kg', 'Turnip Hinge: 10 @ 16 kg'],
    [
      'Needs kettlebell',
      'Fits at Herne Shed and Gull Loft',
      'Repeats glutes (Turnip Squat, Turnip Hinge), resists flexion (Turnip Squat, Turnip Hinge)',
      'Position: standing (Turnip Squat, Turnip Hinge)',
      'Balances squat (Turnip Squat) with hinge (Turnip Hinge)',
      // 20 reps at 3 s and one change-over of 15 s (common practice), a quarter either way.
      'A round takes about 1:15, 0:56 to 1:34, by common practice',
    ],
  ],
  [
    'a kettlebell that would need two weights',
    'B circuit, 3 rounds',
    ['Turnip Squat: 10 @ 16 kg', 'Turnip Hinge: 10 @ 12 kg'],
    expect.arrayContaining(['Different loads of kettlebell: Turnip Squat 16 kg, Turnip Hinge 12 kg']),
  ],
  [
    'push with pull, and a place that lacks what it needs',
    'B superset, 4 rounds',
    ['Turnip Press: 8 @ 2x12 kg', 'Turnip Row: 8 @ 2x12 kg'],
    [
      'Needs dumbbell, bench',
      'Fits at Gull Loft',
      // Kettlebells stand in for dumbbells.
      'Herne Shed has no bench',
      'Balances horizontal push (Turnip Press) with horizontal pull (Turnip Row)',
      'A round takes about 1:03, 0:47 to 1:19, by common practice',
    ],
  ],
  [
    'demands on the trunk that balance',
    'B circuit, 3 rounds',
    ['Turnip Squat: 10 @ 16 kg', 'Turnip Press: 10 @ 2x12 kg'],
    expect.arrayContaining(['Balances resists flexion (Turnip Squat) with resists extension (Turnip Press)']),
  ],
  [
    'a round of an amrap, whose window is the time of all of them',
    'B amrap 9:00',
    ['Turnip Squat: 10 @ 16 kg'],
    expect.arrayContaining(['A round takes about 0:30, 0:23 to 0:38, by common practice']),
  ],
  [
    'a warm-up is no part of it, and what is not defined is told',
    'B circuit, 3 rounds',
    ['warmup Turnip Press: 5', 'Turnip Squat: 10', 'Turnip Tally: 10'],
    [
      'Needs kettlebell',
      'Fits at Herne Shed and Gull Loft',
      expect.stringMatching(/^A round takes about /),
      'Not known, for it is not defined: Turnip Tally',
    ],
  ],
])('%s', (_title, header, lines, expected) => {
  expect(describe(header, ...lines)).toEqual(expected);
});
