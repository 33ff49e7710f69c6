import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// What is defined twice.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'in one file',
    lines('athlete Otti Plankermann', 'athlete otti plankermann'),
    [
      'log.plim:2:9 otti plankermann is defined above, in line 1, and that definition counts: keep one of them [defined-twice]',
    ],
  ],
  [
    'the units of a file',
    lines('units kg', 'session 2026-11-17', '  Back Squat: 5 @ 60', 'units lb'),
    [
      'log.plim:4:1 The units of the file stand in line 1, and hold for all of it: take this line out [defined-twice]',
    ],
  ],
  [
    'in two files',
    {
      'a%20b.plim': lines('place Kelp Cellar', '  has mat'),
      'c.plim': lines('# our places', 'place Kelp Cellar'),
    },
    [
      'c.plim:2:7 Kelp Cellar is defined in a b.plim, line 1, and that definition counts: keep one of them [defined-twice]',
    ],
  ],
  [
    'the first by file counts',
    { 'z.plim': lines('plan Brass Almanac'), 'a.plim': lines('', 'plan Brass-Almanac') },
    [
      'z.plim:1:6 Brass Almanac is defined in a.plim, line 2, and that definition counts: keep one of them [defined-twice]',
    ],
  ],
  [
    'another spelling of another movement',
    lines(
      'exercise Keel Wiggle',
      '  also Hull Wiggle, Bow Wiggle',
      'exercise Bow Wiggle',
      'exercise Stern Wiggle',
      '  also Hull Wiggle',
    ),
    [
      'log.plim:3:10 Bow Wiggle is defined as Keel Wiggle above, in line 1, and that definition counts: keep one of them [defined-twice]',
      'log.plim:5:8 Hull Wiggle is defined as Keel Wiggle above, in line 1, and that definition counts: keep one of them [defined-twice]',
    ],
  ],
  ['a movement that replaces a built-in one', lines('exercise Back Squat', '  pattern squat'), []],
  ['an athlete, a place and a plan of one name', lines('athlete Anker', 'place Anker', 'plan Anker'), []],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
