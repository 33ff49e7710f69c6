import { expect, test } from 'vitest';
import { compareDone } from '../../../language/src/plans/done-work.ts';
import { describeDoneBlocks, tabulateDone } from '../../../language/src/summaries/done-lines.ts';
import { practiceOf } from '../measures/practice-of.ts';

/** In the second week the back squat is 80 % of 100 kg, 3x3. */
const PLAN = `athlete Hesper Quillon
  max Back Squat: 100 kg on 2026-10-01
plan Copper Autumn
  for Hesper Quillon
  weeks 4
  day 1
    A straight
      warmup Back Squat: 5 @ 40 kg
      Back Squat: 3x5 @ 70% | 3x3 @ 80%
      Bench Press: 3x5 @ 50 kg, +2.5 kg each week, after 2 misses -10%
    B superset, 3 rounds
      Goblet Squat: 8-12 @ 20 kg, then +2 kg from 8
      One-Arm Row: 8-10/side @ 20 kg
    C straight
      Plank: 2x30 s
      Back Squat: 10 @ 50 kg
`;

function open(lines: readonly string[]) {
  const header = 'session 2026-11-09 Hesper Quillon, Copper Autumn week 2 day 1';
  const session = [header, ...lines.map((line) => `  ${line}`)].join('\n');
  const { practice, works } = practiceOf(`${PLAN}${session}\n`);
  return { works, record: practice.sessionsOf('hesper quillon')[0]! };
}

const describeAll = (lines: readonly string[]): string[] => {
  const { works, record } = open(lines);
  return describeDoneBlocks(works, record, 'kg', 'epley').map(({ of, text }) => `${of}: ${text}`);
};

const A = ['A straight', '  Back Squat: 3x3 @ 80 kg', '  Bench Press: 3x5 @ 52.5 kg'];
const B = ['B superset, 3 rounds', '  Goblet Squat: 10 @ 22 kg', '  One-Arm Row: 9/side @ 20 kg'];
const C = ['C straight', '  Plank: 2x30 s', '  Back Squat: 10 @ 50 kg'];

test.each<[string, string[], string[]]>([
  ['as planned, loads that move with what was done and ranges too', [...A, ...B, ...C], []],
  [
    'sets, reps, kilograms and load',
    // 9 x 80 = 720 and 3 + 3 + 2 at 75 = 600.
    ['A straight', '  Back Squat: 3, 3, 2 @ 75 kg', '  Bench Press: 5, 5 @ 52.5 kg', ...B, ...C],
    [
      'plan A straight: Back Squat 8 of 9 reps, 600 of 720 kg, 75 of 80 kg at the heaviest · Bench Press 2 of 3 sets, 10 of 15 reps',
    ],
  ],
  [
    'more than a range, both sides counted',
    // 16 to 20 reps three times; 3 x 24 x 20 = 1 440 kg.
    [...A, 'B superset, 3 rounds', '  Goblet Squat: 10 @ 22 kg', '  One-Arm Row: 12/side @ 20 kg', ...C],
    ['plan B superset: One-Arm Row 72 of 48 to 60 reps, 1 440 of 960 to 1 200 kg'],
  ],
  [
    'swapped, left out and why, and added',
    [
      ...A,
      'B superset, 3 rounds',
      '  Split Squat: 10/side @ 20 kg, instead of Goblet Squat, pain 3 left knee',
      ...C,
      '  Dip: 2x8',
    ],
    [
      'plan B superset: Goblet Squat Split Squat instead, 60 of 24 to 36 reps, pain 3 left knee · One-Arm Row left out',
      'not planned: Dip 2 sets',
    ],
  ],
  [
    'one of two lines of a movement',
    [...A, ...B, 'C straight', '  Plank: 2x30 s'],
    ['plan C straight: Back Squat left out'],
  ],
  ['missed altogether', ['missed, cold'], []],
])('%s', (_name, lines, expected) => {
  expect(describeAll(lines)).toEqual(expected);
});

test('every line of the day in a table', () => {
  const { works, record } = open([...A, ...B, 'C straight', '  Plank: 30 s']);
  expect(tabulateDone(compareDone(works, record, 'epley')!, 'kg')).toEqual([
    ['Back Squat', '3 of 3', '9 of 9', '720 of 720', '80 of 80'],
    ['Bench Press', '3 of 3', '15 of 15', '788', '52.5'],
    ['Goblet Squat', '3 of 3', '30 of 24 to 36', '660', '22'],
    ['One-Arm Row', '3 of 3', '54 of 48 to 60', '1 080 of 960 to 1 200', '20 of 20'],
    ['Plank', '1 of 2', '', '', ''],
    ['Back Squat', '0 of 1', '0 of 10', '0 of 500', ''],
  ]);
});

test('more than an open end, and more attempts at a max, are as planned', () => {
  const plan = `athlete Hesper Quillon
plan Copper Autumn
  for Hesper Quillon
  day 1
    Bench Press: 2x5 @ 60 kg, 5+ @ 60 kg
    test Deadlift: 1 @ 140 kg
`;
  const header = 'session 2026-11-09 Hesper Quillon, Copper Autumn week 1 day 1';
  const said = (...lines: string[]): string[] => {
    const { practice, works } = practiceOf(
      `${plan}${header}\n${lines.map((line) => `  ${line}\n`).join('')}`,
    );
    const record = practice.sessionsOf('hesper quillon')[0]!;
    return describeDoneBlocks(works, record, 'kg', 'epley').map(({ text }) => text);
  };
  expect(said('Bench Press: 5, 5, 9 @ 60 kg', 'test Deadlift: 1 @ 130, 1 @ 140 kg, 0 of 1 @ 145 kg')).toEqual(
    [],
  );
  expect(said('Bench Press: 5, 5, 4 @ 60 kg', 'test Deadlift: 1 @ 130 kg, 1 @ 142.5 kg')).toEqual([
    'Bench Press 14 of 15 reps, 840 of 900 kg · Deadlift 142.5 of 140 kg at the heaviest',
  ]);
});

test('nothing without a plan', () => {
  const { practice, works } = practiceOf('session 2026-11-02\n  Dip: 3x8\n');
  expect(compareDone(works, practice.sessionsOf('')[0]!, 'epley')).toBeUndefined();
});
