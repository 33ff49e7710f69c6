import { expect, test } from 'vitest';
import { askTurn } from '../../../language/src/plans/asked-work.ts';
import { openMaxes } from '../../../language/src/plans/latest-max.ts';
import { findCourse } from '../../../language/src/plans/plan-calendar.ts';
import { practiceOf } from '../measures/practice-of.ts';

const TEXT = `plan Copper Autumn
  for Hesper Quillon
  weeks 1
  day 1
    warmup Back Squat: 5 @ 40 kg
    Back Squat: 3x5 @ 80%
    Bench Press: 3x8-10 @ 50 kg
    Goblet Squat: 3x8-12 @ 20 kg, then +2 kg from 8
    Back Squat: 5+ @ 70 kg
session 2026-11-02 Hesper Quillon
  test Back Squat: 1 @ 100 kg
`;

/** Days since 1970-01-01: of 2026-11-09. */
const ON = 20766;

test('what a plan asks for on a day, line by line', () => {
  const { practice, works } = practiceOf(TEXT);
  const { entry } = practice.findPlan('Copper Autumn')!;
  const [turn] = findCourse(practice, entry).turns;
  const athlete = 'hesper quillon';
  const maxes = openMaxes(works, athlete, ON, 'epley');
  const asked = askTurn(works, entry, turn!, { athlete, on: ON, formula: 'epley', maxes });
  const lines = asked.flatMap((block) => block.lines);
  expect(lines.map(({ key, isLast, low, high }) => [key, isLast, low, high])).toEqual([
    // 80 % of 100 kg, 15 reps: 1 200 kg.
    ['back squat', false, ...Array(2).fill({ sets: 3, reps: 15, kilograms: 1200, grams: 80_000 })],
    [
      'bench press',
      true,
      { sets: 3, reps: 24, kilograms: 1200, grams: 50_000 },
      { sets: 3, reps: 30, kilograms: 1500, grams: 50_000 },
    ],
    // Its load moves with what was done, so none is asked for.
    ['goblet squat', true, { sets: 3, reps: 24 }, { sets: 3, reps: 36 }],
    ['back squat', true, ...Array(2).fill({ sets: 1, reps: 5, kilograms: 350, grams: 70_000 })],
  ]);
});
