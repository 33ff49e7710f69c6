import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// One bar asked to carry two loads.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'in a circuit',
    lines(
      'session 2026-11-17',
      '  A circuit, 3 rounds',
      '    Back Squat: 5 @ 60 kg',
      '    Push-up: 10',
      '    Overhead Press: 5 @ 40 kg',
    ),
    [
      'log.plim:5:25 One bar would carry 60 kg (Back Squat) and 40 kg (Overhead Press) in one round, so plates change on every pass: use one load, or part the movements [two-loads-one-bar]',
    ],
  ],
  [
    'in a superset, in one of its rounds',
    lines(
      'session 2026-11-17',
      '  B superset, 2 rounds',
      '    Back Squat: 5 @ 60, 5 @ 70 kg',
      '    Bench Press: 5 @ 60 kg',
    ),
    [
      'log.plim:4:22 One bar would carry 70 kg (Back Squat) and 60 kg (Bench Press) in one round, so plates change on every pass: use one load, or part the movements [two-loads-one-bar]',
    ],
  ],
  [
    'in a superset without a header',
    lines('session 2026-11-17', '  A1 Back Squat: 5 @ 60 kg', '  A2 Bench Press: 5 @ 50 kg'),
    [
      'log.plim:3:23 One bar would carry 60 kg (Back Squat) and 50 kg (Bench Press) in one round, so plates change on every pass: use one load, or part the movements [two-loads-one-bar]',
    ],
  ],
  [
    'a warm-up on the way',
    lines(
      'session 2026-11-17',
      '  A circuit, 2 rounds',
      '    warmup Back Squat: 5 @ 40 kg',
      '    Bench Press: 5 @ 60 kg',
    ),
    [],
  ],
  [
    'one load for both, or one after the other',
    lines(
      'session 2026-11-17',
      '  A circuit, 2 rounds',
      '    Back Squat: 5 @ 60 kg',
      '    Bench Press: 5 @ 60 kg',
      '    One-Arm Row: 8/side @ 20 kg',
      '  B straight',
      '    Back Squat: 5 @ 60 kg',
      '    Bench Press: 5 @ 50 kg',
    ),
    [],
  ],
  [
    'as many bars as loads',
    lines(
      'place Loft',
      '  bars 20 kg, 10 kg',
      'session 2026-11-17 at Loft',
      '  A circuit, 3 rounds',
      '    Back Squat: 5 @ 60 kg',
      '    Overhead Press: 5 @ 40 kg',
    ),
    [],
  ],
  [
    'more loads than bars',
    lines(
      'place Loft',
      '  bars 20 kg, 10 kg',
      'session 2026-11-17 at Loft',
      '  A circuit, 3 rounds',
      '    Back Squat: 5 @ 60 kg',
      '    Overhead Press: 5 @ 40 kg',
      '    Bench Press: 5 @ 50 kg',
    ),
    [
      'log.plim:7:22 The 2 bars would carry 60 kg (Back Squat), 40 kg (Overhead Press) and 50 kg (Bench Press) in one round, so plates change on every pass: use one load, or part the movements [two-loads-one-bar]',
    ],
  ],
  [
    'a place that does not list its bars',
    lines(
      'place Loft',
      'session 2026-11-17 at Loft',
      '  A circuit, 3 rounds',
      '    Back Squat: 5 @ 60 kg',
      '    Overhead Press: 5 @ 40 kg',
    ),
    [],
  ],
  [
    'a group',
    lines(
      'session 2026-11-17 Otti Plankermann | Bram Skuttle',
      '  A circuit, 3 rounds',
      '    Back Squat: 5 @ 40 kg | 5 @ 60 kg',
      '    Overhead Press: 5 @ 40 kg',
    ),
    [
      'log.plim:4:25 One bar would carry 60 kg (Back Squat) and 40 kg (Overhead Press) in one round, so plates change on every pass: use one load, or part the movements [two-loads-one-bar]',
    ],
  ],
  [
    'a plan',
    lines(
      'plan Brass Almanac',
      '  day 1',
      '    A circuit, 3 rounds',
      '      Back Squat: 5 @ 60 kg',
      '      Overhead Press: 5 @ 40 kg',
    ),
    [
      'log.plim:5:27 One bar would carry 60 kg (Back Squat) and 40 kg (Overhead Press) in one round, so plates change on every pass: use one load, or part the movements [two-loads-one-bar]',
    ],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
