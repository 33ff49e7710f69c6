import { expect, test } from 'vitest';
import { tabulateLine, tabulateWeeks } from '../../../language/src/summaries/plan-tables.ts';
import { viewPlan } from '../../../language/src/summaries/plan-view.ts';
import { practiceOf } from '../measures/practice-of.ts';
import { ATHLETE, PERSON, PLACE } from '../plans/project-text.ts';

const PLAN = `plan Copper Autumn
  for ${ATHLETE}
  at Rookery Cellar
  starts 2026-11-02
  weeks 4
  deload week 4, sets 50%, load 90%
  days Mon
  day 1 Squat
    Back Squat: 3x5 @ 70% | 4x4 @ 75% | 5x3 @ 80%
    Dumbbell Bench Press: 3x8-12 @ 2x20 kg
`;

test('a line and the weeks', () => {
  const { works } = practiceOf(PLACE + PERSON + PLAN);
  const view = viewPlan(works, works.practice.allPlans()[0]!.entry, {
    today: '2026-11-11',
    formula: 'epley',
    unit: 'kg',
    complete: true,
  });
  expect(tabulateLine(works, view, 8)).toEqual([
    ['1, 2026-11-02', '3x5 @ 72.5 kg (70 % of 105 = 73.5)'],
    ['2, 2026-11-09', '4x4 @ 80 kg (75 % of 105 = 78.75)'],
    ['3, 2026-11-16', '5x3 @ 85 kg (80 % of 105 = 84)'],
    ['4, 2026-11-23, deload', '2x5 @ 65 kg (90 % of 70 % of 105 = 66.15)'],
  ]);
  const weeks = tabulateWeeks(works, view).map((row) => row.slice(0, 3));
  // 16 x 80 = 1 280 and 24 to 36 x 40 = 960 to 1 440; in the deload 10 x 65 and 16 to 24 x 2 x 18.
  expect(weeks[1]).toEqual(['2', '7', '2 240 to 2 720 kg']);
  expect(weeks[3]).toEqual(['4, deload', '4', '1 226 to 1 514 kg']);
});
