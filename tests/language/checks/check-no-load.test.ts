import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Sets without a load where there must have been one.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'never loaded before',
    lines('session 2026-11-17', '  Back Squat: 3x5', '  Farmer Carry: 30 m', '  Lat Pulldown: 12, 10 rpe 8'),
    [
      'log.plim:2:17 Back Squat has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ ?: Back Squat: 3x5 @ ?',
      'log.plim:3:17 Farmer Carry has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ ?: Farmer Carry: 30 m @ ?',
      'log.plim:4:21 Lat Pulldown has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ ?: Lat Pulldown: 12, 10 @ ? rpe 8',
    ],
  ],
  [
    'a number that may be the load',
    lines(
      'session 2026-11-10',
      '  Bench Press: 5 @ 95 lb',
      'session 2026-11-17',
      '  Back Squat: 5 x 60',
      '  Bench Press: 5 x 100',
      '  Kettlebell Swing: 2 x 24',
      '  Deadlift: 3 x 20',
      '  Hammer Curl: 3 x 12',
    ),
    [
      'log.plim:4:19 Back Squat has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Write 5 @ 60 kg: Back Squat: 5 @ 60 kg → Write 5 @ 60 lb: Back Squat: 5 @ 60 lb → Add @ ?: Back Squat: 5 x 60 @ ?',
      'log.plim:5:20 Bench Press has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Write 5 @ 100 lb: Bench Press: 5 @ 100 lb → Add @ 95 lb: Bench Press: 5 x 100 @ 95 lb → Add @ ?: Bench Press: 5 x 100 @ ?',
      'log.plim:6:25 Kettlebell Swing has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Write ? @ 2x24 kg: Kettlebell Swing: ? @ 2x24 kg → Write ? @ 2x24 lb: Kettlebell Swing: ? @ 2x24 lb → Add @ ?: Kettlebell Swing: 2 x 24 @ ?',
      'log.plim:7:17 Deadlift has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ ?: Deadlift: 3 x 20 @ ?',
      'log.plim:8:20 Hammer Curl has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ ?: Hammer Curl: 3 x 12 @ ?',
    ],
  ],
  [
    'with the load of last time',
    lines(
      'session 2026-11-10',
      '  warmup Back Squat: 5 @ 40 kg',
      '  Back Squat: 5 @ 60, 5 @ 80 kg',
      '  Lateral Raise: 12 @ 2x6 kg',
      'session 2026-11-17',
      '  Back Squat: 5, 4 rpe 8',
      '  Lateral Raise: 12',
      'session 2026-11-18',
      '  Back Squat: 5 @ 90 kg',
    ),
    [
      'log.plim:6:18 Back Squat has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ 80 kg: Back Squat: 5, 4 @ 80 kg rpe 8 → Add @ ?: Back Squat: 5, 4 @ ? rpe 8',
      'log.plim:7:18 Lateral Raise has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ 2x6 kg: Lateral Raise: 12 @ 2x6 kg → Add @ ?: Lateral Raise: 12 @ ?',
    ],
  ],
  [
    'with the load of last time, though another stands in the session',
    lines(
      'session 2026-11-10',
      '  Back Squat: 5 @ 80 kg',
      'session 2026-11-17',
      '  Back Squat: 5 @ 60 kg',
      '  Back Squat: 5',
    ),
    [
      'log.plim:5:15 Back Squat has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ 80 kg: Back Squat: 5 @ 80 kg → Add @ ?: Back Squat: 5 @ ?',
    ],
  ],
  [
    'a group, each with their own last time',
    lines(
      'session 2026-11-10 Otti Plankermann | Bram Skuttle',
      '  Back Squat: 5 @ 60 kg | 5 @ 80 kg',
      'session 2026-11-17 Otti Plankermann | Bram Skuttle',
      '  Back Squat: 5 | 5',
    ),
    [
      'log.plim:4:15 Back Squat has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ 60 kg: Back Squat: 5 @ 60 kg | 5 → Add @ ?: Back Squat: 5 @ ? | 5',
      'log.plim:4:19 Back Squat has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ 80 kg: Back Squat: 5 | 5 @ 80 kg → Add @ ?: Back Squat: 5 | 5 @ ?',
    ],
  ],
  [
    'warm-ups, skipped and unknown sets, body weight, jumps, plans',
    lines(
      'session 2026-11-17',
      '  warmup Back Squat: 5',
      '  Front Squat: skipped',
      '  Bench Press: ?',
      '  Push-up: 10',
      '  Pull-up: 10',
      '  Dumbbell Jump Squat: 5',
      '  Deadlift: 5 @ ?',
      'plan Brass Almanac',
      '  day 1',
      '    Back Squat: 3x5',
    ),
    [],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
