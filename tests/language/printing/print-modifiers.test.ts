import { expect, test } from 'vitest';
import { printSets } from './print-again.ts';

test.each([
  ['tempo 3-1-x-0', 'tempo 3-1-X-0'],
  ['rest 90 s', 'rest 1:30'],
  ['rest 2:00-3:00', 'rest 2:00-3:00'],
  ['setting box 40 cm', 'setting box 40 cm'],
  ['pain 3 left knee', 'pain 3 left knee'],
  ['instead of Ferry Squat', 'instead of Ferry Squat'],
  ['+1 reps each week to 16', '+1 rep each week to 16'],
  ['+2 rep to 16 rep', '+2 reps to 16 reps'],
  ['then +2 kg from 8 reps', 'then +2 kg from 8'],
  ['+2.5 % each cycle to 80 %', '+2.5% each cycle to 80%'],
  ['+2.5 kg each week to 62.5', '+2.5 kg each week to 62.5'],
  ['rest -10 s each round to 60 s', 'rest -10 s each round to 1:00'],
  ['rest -0:10 each round to 0:45', 'rest -10 s each round to 45 s'],
  ['+0:05 each week to 1:15', '+5 s each week to 75 s'],
  ['after 3 misses -10%', 'after 3 misses -10%'],
  ['after 1 misses -10 kg', 'after 1 miss -10 kg'],
])('%s prints as %s', (modifier, printed) => {
  expect(printSets(`5 @ 60 kg, ${modifier}`)).toBe(`5 @ 60 kg, ${printed}`);
});
