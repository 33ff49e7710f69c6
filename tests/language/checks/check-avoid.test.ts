import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Movements an athlete is to avoid.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'by pattern, until a day',
    lines(
      'athlete Otti Plankermann',
      '  avoid vertical push until 2026-11-16, left shoulder',
      'session 2026-11-16 Otti Plankermann',
      '  Overhead Press: 5 @ 40 kg',
      'session 2026-11-17 Otti Plankermann',
      '  Overhead Press: 5 @ 40 kg',
    ),
    [
      'log.plim:4:3 Otti Plankermann is to avoid vertical push until 2026-11-16 (left shoulder): choose another movement [to-avoid]',
    ],
  ],
  [
    'done more than two weeks ago, before anybody thought of it',
    lines(
      'athlete Otti Plankermann',
      '  avoid Dip',
      'session 2026-11-09 Otti Plankermann',
      '  Dip: 5',
      'session 2026-11-10 Otti Plankermann',
      '  Dip: 6',
    ),
    ['log.plim:6:3 Otti Plankermann is to avoid Dip: choose another movement [to-avoid]'],
  ],
  [
    'by name, in any spelling',
    lines(
      'athlete Otti Plankermann',
      '  avoid Dip',
      'session 2026-11-16 Otti Plankermann',
      '  Dips: 5',
      '  Push-up: 5',
    ),
    ['log.plim:4:3 Otti Plankermann is to avoid Dip: choose another movement [to-avoid]'],
  ],
  [
    'skipped',
    lines('athlete Otti Plankermann', '  avoid Dip', 'session 2026-11-16 Otti Plankermann', '  Dip: skipped'),
    [],
  ],
  [
    'one of a group',
    lines(
      'athlete Otti Plankermann',
      '  avoid Dip',
      'athlete Bram Skuttle',
      'session 2026-11-16 Bram Skuttle | Otti Plankermann',
      '  Dip: 5 | skipped',
      '  Dip: 5',
    ),
    ['log.plim:6:3 Otti Plankermann is to avoid Dip: choose another movement [to-avoid]'],
  ],
  [
    'the only athlete, not named',
    lines('athlete Otti Plankermann', '  avoid Dip', 'session 2026-11-16', '  Dip: 5'),
    ['log.plim:4:3 Otti Plankermann is to avoid Dip: choose another movement [to-avoid]'],
  ],
  [
    'a plan, from its first day on',
    lines(
      'athlete Otti Plankermann',
      '  avoid Dip until 2026-12-01',
      '  avoid Pull-up until 2026-11-29',
      'plan Brass Almanac',
      '  for Otti Plankermann',
      '  starts 2026-11-30',
      '  day 1',
      '    Dip: 5',
      '    Pull-up: 5',
    ),
    ['log.plim:8:5 Otti Plankermann is to avoid Dip until 2026-12-01: choose another movement [to-avoid]'],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
