import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Bare numbers of what is not counted in reps.
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
  [
    'carries and sleds',
    lines('session 2026-11-17', '  Farmer Carry: 3x40 @ 2x20 kg', '  Sled Push: 20, 25 m @ 60 kg'),
    [
      'log.plim:2:19 Farmer Carry goes over a distance, and a bare number counts reps: write 40 m if it was metres [distance-in-reps] → Write 40 m: Farmer Carry: 3x40 m @ 2x20 kg',
      'log.plim:3:3 Write Sled Push: 20 m, 25 m @ 60 kg: a number without a unit counts reps [missing-unit] → Write Sled Push: 20 m, 25 m @ 60 kg: Sled Push: 20 m, 25 m @ 60 kg',
    ],
  ],
  [
    'machines and runs, those of the practice too',
    lines(
      'exercise Mole Run',
      '  work conditioning',
      'session 2026-11-17',
      '  Rower: 4x500',
      '  Mole Run: 400, 800',
      '  Run: 5',
    ),
    [
      'log.plim:4:12 Rower goes over a distance, and a bare number counts reps: write 500 m, 500 cal or 500 s, whichever it was [distance-in-reps] → Write 500 m: Rower: 4x500 m → Write 500 cal: Rower: 4x500 cal → Write 500 s: Rower: 4x500 s',
      'log.plim:5:13 Mole Run goes over a distance, and a bare number counts reps: write 400 m or 400 s, whichever it was [distance-in-reps] → Write 400 m, 800 m: Mole Run: 400 m, 800 m → Write 400 s, 800 s: Mole Run: 400 s, 800 s',
    ],
  ],
  ['conditioning that is counted', lines('session 2026-11-17', '  Burpee: 50', '  Jump Rope: 100'), []],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
