import { expect, test } from 'vitest';
import { printAgain } from './print-again.ts';

const print = (...lines: string[]): string => printAgain('session 2026-11-17', lines.join('\n'));

test.each([
  ['b circuit 4 rounds, rest 75 s', 'B circuit, 4 rounds, rest 1:15'],
  ['circuit, rest 1:00-1:30, 3 rounds x 2 passes', 'circuit, 3 rounds x 2 passes, rest 1:00-1:30'],
  ['superset, 1 rounds', 'superset, 1 round'],
  ['giant set, 3 rounds', 'giant set, 3 rounds'],
  ['every 1:00 for 10:00, alternating', 'every 1:00 for 10:00, alternating'],
  ['amrap 12 min', 'amrap 12:00'],
  ['for time, 3 rounds, cap 12:00', 'for time, 3 rounds, cap 12:00'],
  ['intervals 40 s on, 20 s off, 8 rounds', 'intervals 0:40 on, 0:20 off, 8 rounds'],
  ['intervals 6x500 m, rest 1:30', 'intervals 6 x 500 m, rest 1:30'],
  ['intervals 6 x 500 m, 2 rounds', 'intervals 6 x 500 m, 2 rounds'],
  ['warm-up', 'warmup'],
  ['cooldown', 'cooldown'],
])('the header %s prints as %s', (header, printed) => {
  expect(print(header)).toBe(printed);
});

test('what was recorded stands below the movements, rests between them at their places', () => {
  const lines = [
    'C circuit, 2 rounds',
    '  > windy',
    '  rest 0:10',
    '  Marsh Pull: 5 @ 60 kg',
    '  > slow',
    '  rest 0:20',
    '  Ferry Squat: 8',
    '  rest 1:10, ?',
    '  time 2:55, ? | 3:10, 3:02',
    '  done 1 of 2 rounds + 12 cal + 5',
  ];
  expect(print(...lines)).toBe(lines.join('\n'));
});

test('without a header, notes of a block stand behind its first property', () => {
  const lines = ['Marsh Pull: 5 @ 60 kg', '> slow', 'rest 0:20', '> windy', 'Ferry Squat: 8', 'done in 4:10'];
  expect(print(...lines)).toBe(lines.join('\n'));
});

test('lines of another day, whose header is lost, do not join the block before them', () => {
  const lines = ['day 1', 'A circuit, 2 rounds', '  Marsh Pull: 5', 'day 2', 'Ferry Squat: 8'];
  expect(printAgain('plna Slow Tide', lines.join('\n')).split('\n')).toEqual([
    ...['A circuit, 2 rounds', '  Marsh Pull: 5', 'straight', '  Ferry Squat: 8'],
  ]);
});
