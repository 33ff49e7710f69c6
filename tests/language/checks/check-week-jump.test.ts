import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// A week with much more volume than the weeks before.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'over the mean of four weeks',
    lines(
      'session 2026-10-19 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-10-26 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-02 Wim Ostrik',
      '  Back Squat: 10 @ 100 kg',
      'session 2026-11-09 Wim Ostrik',
      '  Back Squat: 10 @ 60 kg',
      'session 2026-11-16 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-18 Wim Ostrik',
      '  Back Squat: 4 @ 61 kg',
    ),
    [
      'log.plim:11:9 Wim Ostrik: week 47 has 1 044 kg, 30 % over the mean of the last four trained weeks (800 kg): is that meant? No threshold has been shown to predict injury [week-jump]',
    ],
  ],
  [
    'just the limit',
    lines(
      'session 2026-10-19 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-10-26 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-02 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-09 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-16 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-18 Wim Ostrik',
      '  Back Squat: 4 @ 60 kg',
    ),
    [],
  ],
  [
    'the running week',
    lines(
      'session 2026-10-19 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-10-26 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-02 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-09 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-16 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-23 Wim Ostrik',
      '  Back Squat: 20 @ 80 kg',
    ),
    [
      'log.plim:11:9 Wim Ostrik: week 48 so far has 1 600 kg, 100 % over the mean of the last four trained weeks (800 kg): is that meant? No threshold has been shown to predict injury [week-jump]',
    ],
  ],
  [
    'three weeks before',
    lines(
      'session 2026-10-19 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-10-26 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-02 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-09 Wim Ostrik',
      '  Back Squat: 20 @ 80 kg',
    ),
    [],
  ],
  [
    'a week before that is not wholly known',
    lines(
      'session 2026-10-19 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-10-26 Wim Ostrik',
      '  Back Squat: ?',
      'session 2026-11-02 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-09 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      'session 2026-11-16 Wim Ostrik',
      '  Back Squat: 10 @ 80 kg',
      '  Deadlift: ? @ 100 kg',
      'session 2026-11-23 Wim Ostrik',
      '  Back Squat: 20 @ 80 kg',
    ),
    [],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
