import { describe, expect, test } from 'vitest';
import { compareDone } from '../../../language/src/plans/done-work.ts';
import { computeDoneTotals, printDoneTotals } from '../../../language/src/summaries/done-totals.ts';
import { practiceOf } from '../measures/practice-of.ts';

const PLAN = `athlete Hesper Quillon
plan Copper Autumn
  for Hesper Quillon
  weeks 4
  days alternate, 3 a week
  day 1
    Back Squat: 3x5 @ 80 kg
    Bench Press: 3x8-10 @ 50-55 kg
    Goblet Squat: 3x8-12 @ 20 kg, then +2 kg from 8
    Plank: 2x30 s
    test Deadlift: 1 @ 140 kg
  day 2
    Back Squat: 5 @ 60 kg, +2.5 kg each session
`;

function read(...lines: string[]) {
  const header = 'session 2026-11-09 Hesper Quillon, Copper Autumn week 1 day 1';
  const { practice, works } = practiceOf(`${PLAN}${header}\n${lines.map((line) => `  ${line}\n`).join('')}`);
  return computeDoneTotals(compareDone(works, practice.sessionsOf('hesper quillon')[0]!, 'epley')!);
}

const ALL = [
  'Bench Press: 3x9 @ 52.5 kg',
  'Goblet Squat: 3x10 @ 22 kg',
  'Plank: 2x30 s',
  'test Deadlift: 1 @ 140 kg',
];

// Planned 15 x 80 = 1 200 kg and 24 x 50 to 30 x 55, 1 200 to 1 650; of the goblet squat the reps alone, 24 to 36.
describe('what was done beside what was planned', () => {
  test.each<[string, string[], string[]]>([
    [
      'within the ranges',
      ['Back Squat: 3x5 @ 80 kg', ...ALL],
      // 15 + 27 + 30 reps; 1 200 + 27 x 52.5 = 2 617.5.
      ['72 of 63 to 81 reps', '2 618 of 2 400 to 2 850 kg', 'loads as planned'],
    ],
    [
      'a set that nobody counted',
      ['Back Squat: 5, 5, ? @ 80 kg', ...ALL],
      // Its kilograms are not known, so the bench stands alone: 1 417.5 of 1 200 to 1 650.
      ['at least 67 of 63 to 81 reps', '1 418 of 1 200 to 1 650 kg', 'loads as planned'],
    ],
    [
      'lighter, and a line left out',
      ['Back Squat: 3x5 @ 72 kg'],
      // Of its reps 15 x 80 = 1 200; done 1 080: 10 % less.
      ['15 of 63 to 81 reps', '1 080 of 2 400 to 2 850 kg', 'loads 10 % under the plan'],
    ],
    [
      'heavier than the range',
      ['Back Squat: 3x5 @ 80 kg', 'Bench Press: 3x8 @ 60 kg'],
      // 1 200 + 1 440 done; the same reps at most 1 200 + 24 x 55 = 2 520: 4.8 % more.
      ['39 of 63 to 81 reps', '2 640 of 2 400 to 2 850 kg', 'loads 5 % over the plan'],
    ],
  ])('%s', (_name, lines, expected) => {
    expect(printDoneTotals(read(...lines), 'kg')).toEqual(expected);
  });

  test('names what it leaves out', () => {
    expect(read('Back Squat: 5, 5, ? @ 80 kg').volume!.result.omitted).toEqual([
      { what: 'Goblet Squat', why: 'no kilograms are planned, or they are not known' },
      { what: 'Plank', why: 'no kilograms are planned, or they are not known' },
      { what: 'Back Squat', why: 'its kilograms are not known' },
    ]);
  });

  test('nothing where nothing of the kind is planned', () => {
    expect(computeDoneTotals([])).toEqual({});
  });
});

test('where days take turns, each time is held against its own', () => {
  const plan = PLAN.replace(
    '  day 1\n',
    '  day 3\n    Hip Thrust: 5 @ 60 kg, +2.5 kg each session\n  day 1\n',
  ).replace(/ {2}day 1[\s\S]*/, '');
  const session = (date: string, kilograms: number) =>
    `session ${date} Hesper Quillon, Copper Autumn week 1 day 3\n  Hip Thrust: 5 @ ${kilograms} kg\n`;
  const { practice, works } = practiceOf(plan + session('2026-11-09', 60) + session('2026-11-11', 62.5));
  const loads = practice
    .sessionsOf('hesper quillon')
    .map((record) => compareDone(works, record, 'epley')![0]!.lines[0]!.asked.low.grams);
  expect(loads).toEqual([60_000, 62_500]);
});
