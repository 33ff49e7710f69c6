import {
  printEffect,
  printMuscleEffect,
  printNoEffect,
  tabulateEffect,
} from '@plimsoll/language/revisions/print-effect';
import type { PlanEffect } from '@plimsoll/language/revisions/revision';
import { describe, expect, test } from 'vitest';
import { revise } from './revise.ts';

const people =
  'athlete Quill Harrow\n  bodyweight 80 kg on 2026-01-01\n  max Back Squat: 100 kg on 2026-01-01\n';
const plan = (...lines: readonly string[]): string =>
  `${people}plan Ebb\n  for Quill Harrow\n  starts 2026-12-07\n${lines.map((line) => `  ${line}\n`).join('')}`;

function effectOf(before: string, after: string): PlanEffect {
  const [revision] = revise(before, after).plans;
  return revision!.effects[0]!;
}

describe('worked out by hand', () => {
  /**
   * Week 1: 3x5 of 70 kg is 1 050 kg, 4x5 is 1 400. Week 2: 3x4 of 75 kg is 900 kg, 4x4 is 1 200. Mean of +350 and +300:
   * +325. Sets: +1 in each. At 3 s a rep and 2:00 of rest (common practice) a set of five more takes 135 s, one of four
   * 132 s: mean 133.5 s. The intensity of a week is its percentage on either side.
   */
  const before = plan('weeks 2', 'day 1', 'Back Squat: 3x5 @ 70% | 3x4 @ 75%');
  const after = plan('weeks 2', 'day 1', 'Back Squat: 4x5 @ 70% | 4x4 @ 75%');

  test('the mean over the weeks, and how far they differ', () => {
    const { sets, volume, time, intensity } = effectOf(before, after);
    expect(sets).toMatchObject({ value: 1, inputs: [{ value: 3 }, { value: 4 }, { value: 2 }] });
    expect(sets.spread).toBeUndefined();
    expect(volume).toMatchObject({ value: 325, spread: { low: 300, high: 350 }, method: 'revision' });
    expect(time?.value).toBeCloseTo(133.5);
    expect(intensity?.value).toBe(0);
  });

  test('in words and week by week', () => {
    const effect = effectOf(before, after);
    expect(printEffect(effect)).toBe('+1 set, +325 kg a week on average, +2 min a day');
    // Direct muscles count 1, the others the fraction of the built-in definition.
    expect(printMuscleEffect(effect)).toBe(
      'hard sets a week: glutes +1, quadriceps +1, adductors +0.5, lower back +0.5, hamstrings +0.3',
    );
    // 15 reps and two rests: 285 s, 20 and three: 420 s; 12 and two: 276 s, 16 and three: 408 s.
    expect(tabulateEffect(effect)).toEqual([
      ['1', '3 → 4', '1 050 → 1 400', '5 → 7'],
      ['2', '3 → 4', '900 → 1 200', '5 → 7'],
    ]);
  });
});

test.each<[title: string, before: string[], after: string[], expected: string]>([
  [
    'a load alone',
    ['day 1', 'Back Squat: 3x5 @ 70%'],
    ['day 1', 'Back Squat: 3x5 @ 80%'],
    '+150 kg a week, +10 % of max',
  ],
  ['a rest alone', ['day 1', 'Dip: 3x8, rest 1:00'], ['day 1', 'Dip: 3x8, rest 2:00'], '+2 min a day'],
  [
    'what has no kilograms',
    ['day 1', 'Plank: 2x30 s'],
    ['day 1', 'Plank: 3x30 s'],
    '+1 set a week, +3 min a day',
  ],
  [
    'the first thing that is weighed',
    ['day 1', 'Plank: 30 s'],
    ['day 1', 'Plank: 30 s', 'Back Squat: 5 @ 60 kg'],
    '+1 set, +300 kg a week, +2 min a day',
  ],
  [
    'a load that nobody knows',
    ['day 1', 'Bench Press: 3x5 @ 70%'],
    ['day 1', 'Bench Press: 4x5 @ 70%'],
    '+1 set a week, +2 min a day',
  ],
  ['the name of a day', ['day 1 Squat', 'Dip: 3x8'], ['day 1 Legs', 'Dip: 3x8'], ''],
])('%s', (_title, before, after, expected) => {
  expect(printEffect(effectOf(plan(...before), plan(...after)))).toBe(expected);
});

test('weeks that only one version has are in the table and in no mean', () => {
  const days = ['day 1', 'Back Squat: 3x5 @ 60 kg'];
  const effect = effectOf(plan('weeks 1', ...days), plan('weeks 2', ...days));
  expect(effect.sets.value).toBe(0);
  expect(tabulateEffect(effect)).toEqual([['2', '- → 3', '- → 900', '- → 5']]);
  expect(printEffect(effect)).toBe('1 week more: +3 sets, +900 kg in all');
  const more = effectOf(plan('weeks 3', ...days), plan('weeks 1', 'day 1', 'Back Squat: 4x5 @ 60 kg'));
  expect(printEffect(more)).toBe(
    '2 weeks less: -6 sets, -1 800 kg in all; +1 set, +300 kg a week, +2 min a day',
  );
});

test('a plan that is new is set against nothing', () => {
  expect(printEffect(effectOf(people, plan('weeks 2', 'day 1', 'Back Squat: 3x5 @ 60 kg')))).toBe(
    '+3 sets, +900 kg a week, +5 min a day',
  );
});

test('less than a minute is not the same', () => {
  const write = (rest: string) => plan('weeks 2', 'day 1', `Dip: 3x8, rest ${rest}`);
  expect(printNoEffect(effectOf(write('1:00'), write('1:05')))).toBe(
    'the sums of each week are nearly the same',
  );
  const named = effectOf(plan('day 1 Squat', 'Dip: 3x8'), plan('day 1 Legs', 'Dip: 3x8'));
  expect(printNoEffect(named)).toBe('the sums of each week are the same');
});

test('a new max is no part of it: both versions are worked out with the later one', () => {
  const before = plan('day 1', 'Back Squat: 3x5 @ 70%');
  const after = plan('day 1', 'Back Squat: 4x5 @ 70%').replace('100 kg', '120 kg');
  // 70 % of 120 is 84, rounded to 85 kg by the usual step of 2.5 kg; five reps of it.
  expect(effectOf(before, after).volume?.value).toBe(425);
});

test('each athlete of a plan has her own', () => {
  const text = (sets: string): string =>
    `${plan('day 1', `Back Squat: ${sets} @ 70%`)}athlete Ann Vell\n  max Back Squat: 50 kg on 2026-01-01\n`.replace(
      'for Quill Harrow',
      'for Quill Harrow, Ann Vell',
    );
  const { effects } = revise(text('3x5'), text('4x5')).plans[0]!;
  // 70 % of 50 kg is 35 kg.
  expect(effects.map(({ athlete, volume }) => [athlete, volume?.value])).toEqual([
    ['Quill Harrow', 350],
    ['Ann Vell', 175],
  ]);
});

test('a movement that was renamed is meant by its drops too', () => {
  const text = (name: string, dips: string): string =>
    `exercise ${name}\n  pattern hinge\n  muscles glutes\n\nathlete Quill Harrow\n  max ${name}: 100 kg on 2026-01-01\n\nplan Ebb\n  for Quill Harrow\n  weeks 1\n  day 1\n    Back Squat: 5 @ 60 kg drop 8 @ 50% of ${name}\n    Dip: ${dips}\n`;
  const { sets, volume } = effectOf(text('Turnip Hoist', '3x8'), text('Turnip Clean', '4x8'));
  expect(sets.value).toBe(1);
  // 5 x 60 and 8 x 50 kg on both sides; of a dip without a weigh-in only the reps are known.
  expect(volume).toMatchObject({ value: 0, inputs: [{ value: 700 }, { value: 700 }, { value: 1 }] });
});
