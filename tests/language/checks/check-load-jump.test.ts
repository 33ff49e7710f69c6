import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

const FOUR_WEEKS = [
  'session 2026-08-03 Wim Ostrik',
  '  Back Squat: 3x5 @ 80 kg',
  'session 2026-08-08 Wim Ostrik',
  '  Back Squat: 3x5 @ 80 kg',
  'session 2026-08-13 Wim Ostrik',
  '  Back Squat: 3x5 @ 80 kg',
  'session 2026-08-18 Wim Ostrik',
  '  Back Squat: 3x5 @ 80 kg',
];
const FIFTH = ['session 2026-08-23 Wim Ostrik', '  Back Squat: 3x5 @ 80 kg'];

// Loads far above the history.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'a jump after five sessions',
    lines(
      'session 2026-08-03 Wim Ostrik',
      '  Back Squat: 3x5 @ 70 kg',
      'session 2026-08-08 Wim Ostrik',
      '  Back Squat: 3x5 @ 80 kg',
      'session 2026-08-13 Wim Ostrik',
      '  Back Squat: 3x5 @ 75 kg',
      'session 2026-08-18 Wim Ostrik',
      '  Back Squat: 3x5 @ 80 kg',
      ...FIFTH,
      'session 2026-09-05 Wim Ostrik',
      '  Back Squat: 5 @ 92 kg, 5 @ 92.5 kg',
    ),
    [
      'log.plim:12:30 92.5 kg for 5 is 16 % over the best of 90 days, 80 kg for 5 or more: is the load right? [load-jump]',
    ],
  ],
  [
    'a jump after four',
    lines(...FOUR_WEEKS, 'session 2026-09-05 Wim Ostrik', '  Back Squat: 5 @ 120 kg'),
    [
      'log.plim:9:9 Wim Ostrik: the first session in 18 days: begin with less load and fewer sets and build up; after illness or injury ask a licensed practitioner [caution-layoff]',
    ],
  ],
  [
    'no history of so many reps',
    lines(...FOUR_WEEKS, ...FIFTH, 'session 2026-09-05 Wim Ostrik', '  Back Squat: 6 @ 120 kg, 3 @ 120 kg'),
    [
      'log.plim:12:31 120 kg for 3 is 50 % over the best of 90 days, 80 kg for 3 or more: is the load right? [load-jump]',
    ],
  ],
  [
    'the best is longer ago than 90 days',
    lines(
      'session 2026-08-03 Wim Ostrik',
      '  Back Squat: 3x5 @ 100 kg',
      'session 2026-08-08 Wim Ostrik',
      '  Back Squat: 3x5 @ 80 kg',
      'session 2026-08-13 Wim Ostrik',
      '  Back Squat: 3x5 @ 80 kg',
      'session 2026-08-18 Wim Ostrik',
      '  Back Squat: 3x5 @ 80 kg',
      ...FIFTH,
      'session 2026-11-02 Wim Ostrik',
      '  Back Squat: 5 @ 93 kg',
    ),
    [
      'log.plim:11:9 Wim Ostrik: the first session in 71 days: begin with less load and fewer sets and build up; after illness or injury ask a licensed practitioner [caution-layoff]',
      'log.plim:12:19 93 kg for 5 is 16 % over the best of 90 days, 80 kg for 5 or more: is the load right? [load-jump]',
    ],
  ],
  [
    'somebody else',
    lines(...FOUR_WEEKS, ...FIFTH, 'session 2026-10-01 Otti Plankermann', '  Back Squat: 5 @ 120 kg'),
    [],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
