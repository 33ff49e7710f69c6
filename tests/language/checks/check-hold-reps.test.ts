import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Bare numbers where a movement is held.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'of each line once',
    lines('session 2026-11-17', '  Plank: 3x45', '  Side Plank: 30/side, 25/side'),
    [
      'log.plim:2:12 Plank is held, and a bare number counts reps: write 45 s if it was seconds [hold-in-reps] → Write 45 s: Plank: 3x45 s',
      'log.plim:3:15 Side Plank is held, and a bare number counts reps: write 30 s/side if it was seconds [hold-in-reps] → Write 30 s/side, 25 s/side: Side Plank: 30 s/side, 25 s/side',
    ],
  ],
  ['few reps may be meant', lines('session 2026-11-17', '  Plank: 9'), []],
  ['seconds and minutes are fine', lines('session 2026-11-17', '  Plank: 45 s, 1:10'), []],
  ['reps of what is not held', lines('session 2026-11-17', '  Push-up: 45'), []],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
