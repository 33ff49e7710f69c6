import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// More than a bar holds; a sled or a leg press takes more.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'a bar',
    lines('session 2026-11-17', '  Front Squat: 5 @ 2000 kg'),
    ['log.plim:2:20 2000 kg is out of range: 0 to 1 000 kg [out-of-range]'],
  ],
  ['a bar at its limit', lines('session 2026-11-17', '  Front Squat: 5 @ 1000 kg'), []],
  ['a sled', lines('session 2026-11-17', '  Sled Push: 20 m @ 1200 kg'), []],
  ['a leg press', lines('session 2026-11-17', '  Leg Press: 5 @ 1100 kg'), []],
  [
    'a movement nobody knows',
    lines('exercise Odd Lift', 'session 2026-11-17', '  Odd Lift: 5 @ 1001 kg'),
    ['log.plim:3:17 1001 kg is out of range: 0 to 1 000 kg [out-of-range]'],
  ],
])('the load of %s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
