import { describe, expect, test } from 'vitest';
import type { IsoDate } from '../../../language/src/calendar/iso-date.ts';
import { describeFileHints, describeLenses } from '../../../language/src/summaries/file-lenses.ts';
import { practiceOf } from '../measures/practice-of.ts';
import { ATHLETE, PERSON, PLACE } from '../plans/project-text.ts';

const PLAN = `plan Copper Autumn
  for ${ATHLETE}
  at Rookery Cellar
  starts 2026-11-02
  weeks 4
  deload week 4, sets 50%, load 90%
  days Mon, Thu
  day 1 Squat
    A straight, rest 3:00
      Back Squat: 3x5 @ 70% | 4x4 @ 75% | 5x3 @ 80%
      Front Squat: 3x5 @ 60 kg
    B circuit, 3 rounds, rest 1:00
      Push-up: 10, +1 rep each week
      Plank: 30 s
  day 2 Pull
    Deadlift: 1 @ 85%, 3x5 @ -10%
    Dumbbell Bench Press: 3x8-12 @ 2x20 kg
`;

const options = (today: IsoDate, complete = true) =>
  ({ today, formula: 'epley', unit: 'kg', complete }) as const;
const HEAD = (PLACE + PERSON).split('\n').length - 1;

function lenses(today: IsoDate, plan = PLAN, complete = true): string[] {
  const { works } = practiceOf(PLACE + PERSON + plan);
  return describeLenses(works, 'log.plim', options(today, complete)).map(
    ({ kind, line, text }) => `${line - HEAD} ${kind} ${text}`,
  );
}

// Week 2, of body mass 70 kg (push-up 69 %: 48.3 kg): Back Squat 4x4 @ 80 = 1 280; Front Squat 3x5 @ 60 = 900; Push-up
// 3x11 × 48.3 = 1 593.9; Deadlift 120 + 15 × 107.5 = 1 732.5; bench 3x8 × 40 = 960, 3x12 × 40 = 1 440.
describe('lenses over a plan, in its second week', () => {
  const week2 = lenses('2026-11-11');

  test('say where the plan is and what the week comes to', () => {
    // 4 + 3 + 3 + 3, and 4 + 3 sets; 6 466.4 to 6 946.4 kg.
    expect(week2[0]).toMatch(/^0 plan week 2 of 4 · 20 sets · 6 466 to 6 946 kg incl\. body · hard sets /);
  });

  test('say how sets and kilograms go from week to week', () => {
    // Sets: 12 + 7; 13 + 7; 14 + 7; half of each line: 2 + 2 + 2 + 2 and 2 + 2.
    // Week 1, the middle of the bench: 15 × 72.5 + 900 + 30 × 48.3 + 1 732.5 + 1 200 = 6 369; week 2: 6 706.4;
    // week 3: 15 × 85 = 1 275, 36 × 48.3 = 1 738.8: 6 846.3.
    // Week 4: squat 2x5 @ 65 (66.15) = 650, front squat 2x5 @ 55 (54) = 550, push-up 24 × 48.3 = 1 159.2, deadlift
    // 107.5 + 5 × 97.5 = 595, bench 2x8 to 2x12 × 36 (18): 576 to 864, middle 720.
    expect(week2[1]).toBe(
      '4 plan sets by week 19, 20, 21, 12 · about 6 369, 6 706, 6 846, 3 674 kg incl. body',
    );
  });

  test('say of each day sets, kilograms, share of the max and time', () => {
    // Squat at 80 of 105: 76.2 %; front squat has no max. Straight: 31 reps × 3 s + 6 rests of 3 min = 1 173 s; circuit: 3 rounds of
    // 11 × 3 + 30 + 15 s, and 2 rests: 354 s. 25 min.
    expect(week2[2]).toBe('7 plan week 2: 13 sets · 3 774 kg incl. body · 76 % of max · about 25 min');
    // (120 + 15 × 107.5) / (16 × 140) = 77.3 %.
    expect(week2[4]).toMatch(/^14 plan week 2: 7 sets · 2 693 to 3 173 kg · 77 % of max · about \d+ min$/);
  });

  test('say of each line what it comes to, and nothing of one that says it itself', () => {
    expect(week2[3]).toBe('9 line week 2: 4x4 @ 80 kg (75 % of 105 = 78.75)');
    expect(week2[5]).toBe(
      '15 line week 2: 1 @ 120 kg (85 % of 140 = 119) · then 3x5 @ 107.5 kg (10 % off the top set = 107.1)',
    );
    expect(week2).toHaveLength(6);
  });
});

test('once the week has begun, say what was done of it', () => {
  const session = `session 2026-11-09 ${ATHLETE} at Rookery Cellar, Copper Autumn week 2 day 1
  A straight
    Back Squat: 4, 4, 3 @ 77.5 kg
    Front Squat: 3x5 @ 60 kg
  B circuit, 3 rounds
    Push-up: 11
    Plank: 30 s
`;
  // Of 13 sets 12, of 7 none; of 16 + 15 + 33 reps 59, of 16 + 24 to 36 none: 59 of 104 to 116.
  const text = PLAN + session;
  expect(lenses('2026-11-11', text)[0]).toMatch(
    /^0 plan week 2 of 4 · done 12 of 20 sets, 59 of 104 to 116 reps · 6 466 to 6 946 kg incl\. body · hard sets /,
  );
  const { works } = practiceOf(PLACE + PERSON + text);
  const [sets, reps, volume, load] = describeLenses(works, 'log.plim', options('2026-11-11'))[0]!
    .explain()
    .filter(({ method }) => method === 'adherence');
  expect(sets).toMatchObject({
    value: 60,
    omitted: [
      { what: 'Back Squat', why: '3 of 4 sets' },
      { what: 'day 2 Pull', why: 'not done yet' },
    ],
  });
  expect(reps!.inputs.map(({ value }) => value)).toEqual([59, 104]);
  // 11 x 77.5 + 900 + 33 x 48.3 = 3 346.4, beside 6 466.4.
  expect(volume!.inputs[0]!.value).toBeCloseTo(3346.4, 6);
  expect(volume!.inputs[1]!.value).toBeCloseTo(6466.4, 6);
  // The same reps at the planned loads: 11 x 80 + 900 + 1 593.9 = 3 373.9.
  expect(load!.inputs[1]!.value).toBeCloseTo(3373.9, 6);
});

test('before it begins a plan shows its first week, after it has ended the last', () => {
  expect(lenses('2026-10-20')[0]).toMatch(/^0 plan week 1 of 4 from 2 Nov · 19 sets/);
  expect(lenses('2026-12-24')[0]).toMatch(/^0 plan week 4 of 4, deload, ended 29 Nov · 12 sets/);
});

test('until the logs are read there is nothing to work out', () => {
  expect(lenses('2026-11-11', PLAN, false)).toEqual(['0 plan history loading…']);
});

test('a plan without a day has no lens', () => {
  expect(lenses('2026-11-11', 'plan Copper Autumn\n  weeks 4\n')).toEqual([]);
});

test('a line of a circuit says it at its end', () => {
  const { works } = practiceOf(PLACE + PERSON + PLAN);
  const hints = describeFileHints(works, 'log.plim', options('2026-11-11'));
  expect(hints.map(({ line, column, text }) => [line - HEAD, column, text])).toEqual([
    [12, 35, 'week 2: 11'],
  ]);
});

test('a drop’s range is a range of the whole', () => {
  // 10 x 100 and 8 to 10 x 70.
  const plan = `plan Copper Autumn
  for ${ATHLETE}
  at Rookery Cellar
  starts 2026-11-02
  weeks 1
  day 1
    Leg Press: 10 @ 100 kg drop 8-10 @ 70 kg
`;
  expect(lenses('2026-11-02', plan)[0]).toMatch(/^0 plan week 1 of 1 · 1 set · 1 560 to 1 700 kg · /);
});

test('weeks with a load that nobody knows are lower bounds', () => {
  // Of the bench at 60 kg 3x5 each week, the upper end of its reps left out; the hip thrust has no max.
  const plan = `plan Copper Autumn
  for ${ATHLETE}
  at Rookery Cellar
  starts 2026-11-02
  weeks 2
  day 1
    Bench Press: 3x5-8 @ 60 kg
    Hip Thrust: 5 @ 70%
`;
  expect(lenses('2026-11-02', plan)[1]).toBe('4 plan sets by week 4, 4 · at least 900, 900 kg');
});

test('every number explains itself', () => {
  const { works } = practiceOf(PLACE + PERSON + PLAN);
  const found = describeLenses(works, 'log.plim', options('2026-11-11'));
  for (const { explain } of found) for (const { value } of explain()) expect(value).toBeTypeOf('number');
  expect(found.find(({ line }) => line === HEAD + 9)!.explain()[0]).toMatchObject({
    value: 80,
    unit: 'kg',
    method: 'planned-load',
    inputs: [
      { label: 'max of Back Squat, stated 2026-09-01', value: 105 },
      { label: 'percent', value: 75 },
      { label: 'before rounding', value: 78.75 },
    ],
    remark: 'rounded from 78.75 kg',
  });
});
