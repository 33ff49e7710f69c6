import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// One load where a rep moves two implements.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'one load for a line',
    lines('session 2026-11-17', '  Dumbbell Curl: 12, 10 @ 14 kg'),
    [
      'log.plim:2:27 14 kg each, or both together? Dumbbell Curl takes two: write 2x14 kg if each is that heavy [one-or-two] → Each: 2x14 kg: Dumbbell Curl: 12, 10 @ 2x14 kg → Both together: 2x7 kg: Dumbbell Curl: 12, 10 @ 2x7 kg → Only one is held: 1x14 kg: Dumbbell Curl: 12, 10 @ 1x14 kg',
    ],
  ],
  [
    'all loads of a line at once',
    lines('session 2026-11-17', '  Dumbbell Curl: 12 @ 15, 10 @ 17.5 kg'),
    [
      'log.plim:2:23 15 kg each, or both together? Dumbbell Curl takes two: write 2x15 kg if each is that heavy [one-or-two] → Each: 2x15: Dumbbell Curl: 12 @ 2x15, 10 @ 2x17.5 kg → Both together: 2x7.5: Dumbbell Curl: 12 @ 2x7.5, 10 @ 2x8.75 kg → Only one is held: 1x15: Dumbbell Curl: 12 @ 1x15, 10 @ 1x17.5 kg',
    ],
  ],
  [
    'drops',
    lines('session 2026-11-17', '  Hammer Curl: 12 @ 30 lb drop 8 @ 20 lb'),
    [
      'log.plim:2:21 30 lb each, or both together? Hammer Curl takes two: write 2x30 lb if each is that heavy [one-or-two] → Each: 2x30 lb: Hammer Curl: 12 @ 2x30 lb drop 8 @ 2x20 lb → Both together: 2x15 lb: Hammer Curl: 12 @ 2x15 lb drop 8 @ 2x10 lb → Only one is held: 1x30 lb: Hammer Curl: 12 @ 1x30 lb drop 8 @ 1x20 lb',
    ],
  ],
  [
    'a carry',
    lines('session 2026-11-17', '  Farmer Carry: 30 m @ 24 kg'),
    [
      'log.plim:2:24 24 kg each, or both together? Farmer Carry takes two: write 2x24 kg if each is that heavy [one-or-two] → Each: 2x24 kg: Farmer Carry: 30 m @ 2x24 kg → Both together: 2x12 kg: Farmer Carry: 30 m @ 2x12 kg → Only one is held: 1x24 kg: Farmer Carry: 30 m @ 1x24 kg',
    ],
  ],
  [
    'a range of a plan',
    lines('plan Brass Almanac', '  day 1', '    Dumbbell Curl: 12 @ 12-14 kg'),
    [
      'log.plim:3:25 12 kg each, or both together? Dumbbell Curl takes two: write 2x12 kg if each is that heavy [one-or-two] → Each: 2x12-14 kg: Dumbbell Curl: 12 @ 2x12-14 kg → Only one is held: 1x12-14 kg: Dumbbell Curl: 12 @ 1x12-14 kg',
    ],
  ],
  [
    'said to be one or two',
    lines('session 2026-11-17', '  Dumbbell Curl: 12 @ 2x14 kg, 12 @ 1x14 kg, 8 @ 14&16 kg'),
    [],
  ],
  [
    'one implement by its definition',
    lines('session 2026-11-17', '  Goblet Squat: 8 @ 24 kg', '  One-Arm Row: 8/side @ 24 kg'),
    [],
  ],
  [
    'a movement that does not say what a rep moves',
    lines('exercise Keel Curl', '  needs dumbbell', 'session 2026-11-17', '  Keel Curl: 8 @ 24 kg'),
    [],
  ],
  [
    'loads that are told to stand where reps belong',
    lines('session 2026-11-17', '  Lateral Raise: 15 @ 6, 8 kg'),
    [
      'log.plim:2:18 A load stands behind its own set: write 15 @ 6, 15 @ 8 kg [sets-spelled-apart] → Write 15 @ 6, 15 @ 8 kg: Lateral Raise: 15 @ 6, 15 @ 8 kg',
    ],
  ],
  ['a bar', lines('session 2026-11-17', '  Back Squat: 8 @ 24 kg'), []],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
