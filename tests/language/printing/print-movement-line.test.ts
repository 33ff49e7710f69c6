import { expect, test } from 'vitest';
import { printAgain } from './print-again.ts';

test.each([
  ['Marsh Pull:5@60 kg', 'Marsh Pull: 5 @ 60 kg'],
  ['warm-up Marsh Pull: 5', 'warmup Marsh Pull: 5'],
  ['test week 5 Marsh Pull: 1 @ 100%', 'week 5 test Marsh Pull: 1 @ 100%'],
  ['Marsh Pull: 5 | 4|3, rest 2:00', 'Marsh Pull: 5 | 4 | 3, rest 2:00'],
  ['Marsh Pull: 5, tempo 3-0-1-0 | 4', 'Marsh Pull: 5, tempo 3-0-1-0 | 4'],
  ['Marsh Pull: 5 | 4, tempo 3-0-1-0, 3', 'Marsh Pull: 5 | tempo 3-0-1-0, 4, 3'],
  ['Marsh Pull: | 5 | | 3', 'Marsh Pull: | 5 | | 3'],
  ['Marsh Pull: 5 |', 'Marsh Pull: 5 |'],
  ['Marsh Pull: rest 2:00', 'Marsh Pull: rest 2:00'],
  ['90/90 Hip Lift (slow): 5', '90/90 Hip Lift (slow): 5'],
])('%s prints as %s', (line, printed) => {
  expect(printAgain('plan Slow Tide', `day 1\n${line}`)).toBe(`day 1\n  ${printed}`);
});

test('a label stands before warmup and test', () => {
  expect(printAgain('session 2026-11-17', 'test a1 Marsh Pull: 5')).toBe('A1 test Marsh Pull: 5');
});
