import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

const LOFT = [
  'place Kelp Cellar',
  '  bars 20 kg',
  '  plates 2x20, 4x10, 2x5, 2x2.5, 2x1.25 kg',
  '  dumbbells 4-32 by 2 kg',
  '  kettlebells 15, 25 kg',
  '  stacks cable 5-60 by 5 kg',
  '  has bench, mat',
];
const HUT = [
  'place Tar Hut',
  '  bars 45 lb',
  '  plates 4x25, 4x10, 2x5, 2x2.5 lb',
  '  dumbbells 10-50 by 5 lb singles',
];

// What a place can load, and what it has.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'a bar',
    lines(
      ...LOFT,
      'session 2026-11-17 at Kelp Cellar',
      '  Back Squat: 5 @ 82.5 kg, 5 @ 83 kg',
      '  Deadlift: 5 @ 15 kg',
      '  Bench Press: 1 @ 150 kg',
    ),
    [
      'log.plim:9:32 Kelp Cellar cannot load 83 kg: the nearest are 82.5 kg and 85 kg [not-loadable] → Write 82.5 kg: Back Squat: 5 @ 82.5 kg, 5 @ 82.5 kg → Write 85 kg: Back Squat: 5 @ 82.5 kg, 5 @ 85 kg',
      'log.plim:10:17 Kelp Cellar cannot load 15 kg: the lightest is 20 kg [not-loadable] → Write 20 kg: Deadlift: 5 @ 20 kg',
      'log.plim:11:20 Kelp Cellar cannot load 150 kg: the heaviest is 117.5 kg [not-loadable] → Write 117.5 kg: Bench Press: 1 @ 117.5 kg',
    ],
  ],
  [
    'dumbbells',
    lines(
      ...LOFT,
      'session 2026-11-17 at Kelp Cellar',
      '  Dumbbell Curl: 10 @ 2x13 kg',
      '  Lateral Raise: 10 @ 2x2 kg',
      '  Hammer Curl: 10 @ 2x10 kg',
      '  Dumbbell Shrug: 10 @ 2x25 kg',
    ),
    [
      'log.plim:9:23 Kelp Cellar cannot load 2x13 kg: the nearest are 12 kg and 14 kg [not-loadable] → Write 2x12 kg: Dumbbell Curl: 10 @ 2x12 kg → Write 2x14 kg: Dumbbell Curl: 10 @ 2x14 kg',
      'log.plim:10:23 Kelp Cellar cannot load 2x2 kg: the lightest is 4 kg [not-loadable] → Write 2x4 kg: Lateral Raise: 10 @ 2x4 kg',
      'log.plim:12:24 Kelp Cellar cannot load 2x25 kg: the nearest are 24 kg and 26 kg [not-loadable] → Write 2x24 kg: Dumbbell Shrug: 10 @ 2x24 kg → Write 2x26 kg: Dumbbell Shrug: 10 @ 2x26 kg',
    ],
  ],
  [
    'kettlebells for dumbbells, where the name leaves it open',
    lines(
      ...LOFT,
      'session 2026-11-17 at Kelp Cellar',
      '  One-Arm Row: 10/side @ 25 kg',
      '  Suitcase Carry: 30 m/side @ 23 kg',
      '  Kettlebell Swing: 10 @ 20 kg',
    ),
    [
      'log.plim:10:31 Kelp Cellar cannot load 23 kg: the nearest are 22 kg and 24 kg [not-loadable] → Write 22 kg: Suitcase Carry: 30 m/side @ 22 kg → Write 24 kg: Suitcase Carry: 30 m/side @ 24 kg',
      'log.plim:11:26 Kelp Cellar cannot load 20 kg: the nearest are 15 kg and 25 kg [not-loadable] → Write 15 kg: Kettlebell Swing: 10 @ 15 kg → Write 25 kg: Kettlebell Swing: 10 @ 25 kg',
    ],
  ],
  [
    'two unequal ones',
    lines(...LOFT, 'session 2026-11-17 at Kelp Cellar', '  Suitcase Carry: 30 m @ 24&13 kg'),
    ['log.plim:9:26 Kelp Cellar cannot load 13 kg: the nearest are 12 kg and 14 kg [not-loadable]'],
  ],
  [
    'a stack',
    lines(...LOFT, 'session 2026-11-17 at Kelp Cellar', '  Face Pull: 12 @ 17.5 kg, 12 @ 20 kg'),
    [
      'log.plim:9:19 Kelp Cellar cannot load 17.5 kg: the nearest are 15 kg and 20 kg [not-loadable] → Write 15 kg: Face Pull: 12 @ 15 kg, 12 @ 20 kg → Write 20 kg: Face Pull: 12 @ 20 kg, 12 @ 20 kg',
    ],
  ],
  [
    'chains hang on a bar that is loaded',
    lines(
      ...LOFT,
      'session 2026-11-17 at Kelp Cellar',
      '  Back Squat: 5 @ 60 kg + 10 kg chain, 5 @ 61 kg + 10 kg chain',
    ),
    ['log.plim:9:44 Kelp Cellar cannot load 61 kg: the nearest are 60 kg and 62.5 kg [not-loadable]'],
  ],
  [
    'pounds',
    lines(
      ...HUT,
      'session 2026-11-17 at Tar Hut',
      '  Back Squat: 5 @ 115 lb, 5 @ 117.5 lb',
      '  One-Arm Row: 10/side @ 9 kg, 10/side @ 20 lb',
      '  Goblet Squat: 10 @ 9, 10 @ 20 kg',
    ),
    [
      'log.plim:6:31 Tar Hut cannot load 117.5 lb: the nearest are 115 lb and 120 lb [not-loadable] → Write 115 lb: Back Squat: 5 @ 115 lb, 5 @ 115 lb → Write 120 lb: Back Squat: 5 @ 115 lb, 5 @ 120 lb',
      'log.plim:7:26 Tar Hut cannot load 9 kg: the nearest are 15 lb and 20 lb [not-loadable] → Write 15 lb: One-Arm Row: 10/side @ 15 lb, 10/side @ 20 lb → Write 20 lb: One-Arm Row: 10/side @ 20 lb, 10/side @ 20 lb',
      'log.plim:8:22 Tar Hut cannot load 9 kg: the nearest are 15 lb and 20 lb [not-loadable]',
      'log.plim:8:30 Tar Hut cannot load 20 kg: the nearest are 40 lb and 45 lb [not-loadable]',
    ],
  ],
  [
    'single dumbbells',
    lines(...HUT, 'session 2026-11-17 at Tar Hut', '  Dumbbell Curl: 10 @ 2x20 lb, 10 @ 20&25 lb'),
    ['log.plim:6:23 Tar Hut has each dumbbell once, and 2x20 lb needs two of a weight [not-loadable]'],
  ],
  [
    'equipment that is not listed',
    lines(
      ...LOFT,
      'session 2026-11-17 at Kelp Cellar',
      '  Trap-Bar Deadlift: 5 @ 61 kg',
      '  Trap-Bar Deadlift: 5 @ 61 kg',
      '  Leg Press: 5 @ 100 kg',
      '  Box Jump: 5',
      '  Plank: 30 s',
    ),
    [
      'log.plim:9:3 Kelp Cellar has no trap bar for Trap-Bar Deadlift: add to the place what is there, or choose another movement [lacks-equipment]',
      'log.plim:11:3 Kelp Cellar has no leg press machine for Leg Press: add to the place what is there, or choose another movement [lacks-equipment]',
      'log.plim:12:3 Kelp Cellar has no box for Box Jump: add to the place what is there, or choose another movement [lacks-equipment]',
    ],
  ],
  [
    'equipment of a warm-up, or whose setting is written',
    lines(
      ...LOFT,
      'session 2026-11-17 at Kelp Cellar',
      '  warmup',
      '    Rower: 5:00',
      '  A straight',
      '    Box Squat: 5 @ 60 kg, setting box 40 cm',
    ),
    [],
  ],
  [
    'equipment of its own kind',
    lines(
      'exercise Net Drag',
      '  needs net crate, rope',
      'place Shed',
      '  has Rope',
      'session 2026-11-17 at Shed',
      '  Net Drag: 10',
    ),
    [
      'log.plim:6:3 Shed has no net crate for Net Drag: add to the place what is there, or choose another movement [lacks-equipment]',
    ],
  ],
  [
    'a plan',
    lines(
      ...LOFT,
      'plan Brass Almanac',
      '  at Kelp Cellar',
      '  day 1',
      '    Back Squat: 5 @ 83 kg | 5 @ 80-83 kg | 5 @ 70%',
      '    Pull-up: 5',
    ),
    [
      'log.plim:11:21 Kelp Cellar cannot load 83 kg: the nearest are 82.5 kg and 85 kg [not-loadable] → Write 82.5 kg: Back Squat: 5 @ 82.5 kg | 5 @ 80-83 kg | 5 @ 70% → Write 85 kg: Back Squat: 5 @ 85 kg | 5 @ 80-83 kg | 5 @ 70%',
      'log.plim:12:5 Kelp Cellar has no pull-up bar for Pull-up: add to the place what is there, or choose another movement [lacks-equipment]',
    ],
  ],
  [
    'a place without an inventory, and an undefined one',
    lines('place Tar Hut', 'session 2026-11-17 at Tar Hut', '  Trap-Bar Deadlift: 5 @ 61 kg'),
    [],
  ],
  [
    'a place that lists weights alone',
    lines(
      'place Tar Hut',
      '  dumbbells 4-32 by 2 kg',
      'session 2026-11-17 at Tar Hut',
      '  Dumbbell Bench Press: 10 @ 2x20 kg',
      '  Pull-up: 5',
      '  Back Squat: 5 @ 61 kg',
    ),
    [
      'log.plim:6:3 Tar Hut has no barbell for Back Squat: add to the place what is there, or choose another movement [lacks-equipment]',
    ],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
