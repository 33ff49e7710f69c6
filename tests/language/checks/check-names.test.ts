import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Names that nothing defines, and the nearest that something does.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'a letter off',
    lines('session 2026-11-17', '  Goblin Squat: 8 @ 12 kg'),
    [
      'log.plim:2:3 No movement is called Goblin Squat: did you mean Goblet Squat? [unknown-movement] → Write Goblet Squat: Goblet Squat: 8 @ 12 kg',
    ],
  ],
  [
    'a letter off in two ways',
    lines('session 2026-11-17', '  Bak Squat: 8 @ 12 kg'),
    [
      'log.plim:2:3 No movement is called Bak Squat: did you mean Back Squat or Hack Squat? [unknown-movement] → Write Back Squat: Back Squat: 8 @ 12 kg → Write Hack Squat: Hack Squat: 8 @ 12 kg',
    ],
  ],
  [
    'part of a name',
    lines('session 2026-11-17', '  bulgarian split: 8/side'),
    [
      'log.plim:2:3 No movement is called bulgarian split: did you mean Bulgarian Split Squat? [unknown-movement] → Write Bulgarian Split Squat: Bulgarian Split Squat: 8/side',
    ],
  ],
  [
    'a word of many names',
    lines('session 2026-11-17', '  Squats: 5 @ 40 kg'),
    [
      'log.plim:2:3 No movement is called Squats: did you mean Back Squat, Low-Bar Squat or Pause Squat? [unknown-movement] → Write Back Squat: Back Squat: 5 @ 40 kg → Write Low-Bar Squat: Low-Bar Squat: 5 @ 40 kg → Write Pause Squat: Pause Squat: 5 @ 40 kg',
    ],
  ],
  [
    'nothing near',
    lines('session 2026-11-17', '  Keel Wiggle: 20 m', '  Keel Pull: 10', '  Moored Squat: 5'),
    [
      'log.plim:2:3 No movement is called Keel Wiggle: define it with "exercise Keel Wiggle", or correct the name [unknown-movement]',
      'log.plim:3:3 No movement is called Keel Pull: define it with "exercise Keel Pull", or correct the name [unknown-movement]',
      'log.plim:4:3 No movement is called Moored Squat: define it with "exercise Moored Squat", or correct the name [unknown-movement]',
    ],
  ],
  [
    'an athlete of a group where a plan would stand',
    {
      'who.plim': lines('athlete Quill Harrow', '', 'athlete Odalys Fenn'),
      'log.plim': lines('session 2026-11-17 Quill Harrow, Odalys Fenn', '  Push-up: 8'),
    },
    [
      'log.plim:1:34 No plan is called Odalys Fenn: write Quill Harrow | Odalys Fenn [unknown-plan] → Write Quill Harrow | Odalys Fenn: session 2026-11-17 Quill Harrow | Odalys Fenn',
    ],
  ],
  [
    'other spellings, case and hyphens are the same name',
    lines('session 2026-11-17', '  goblet squats: 8 @ 12 kg', '  PUSH UP: 8', '  RDL: 5 @ 60 kg'),
    [],
  ],
  [
    "a workspace's own movement",
    {
      'movements.plim': lines('exercise Keel Wiggle', '  pattern trunk'),
      'log.plim': lines('session 2026-11-17', '  keel wiggle: 20', '  Keel Wigle: 10'),
    },
    [
      'log.plim:3:3 No movement is called Keel Wigle: did you mean Keel Wiggle? [unknown-movement] → Write Keel Wiggle: Keel Wiggle: 10',
    ],
  ],
  [
    'what a movement stands in for',
    lines('session 2026-11-17', '  Front Squat: 5 @ 60 kg, instead of Leg Pres'),
    [
      'log.plim:2:38 No movement is called Leg Pres: did you mean Leg Press? [unknown-movement] → Write Leg Press: Front Squat: 5 @ 60 kg, instead of Leg Press',
    ],
  ],
  [
    'what a percentage is of',
    lines('plan Brass Almanac', '  day 1', '    Back Squat: 5 @ 70% of Frnt Squat'),
    [
      'log.plim:3:28 No movement is called Frnt Squat: did you mean Front Squat? [unknown-movement] → Write Front Squat: Back Squat: 5 @ 70% of Front Squat',
    ],
  ],
  [
    'easier and harder',
    lines('exercise Keel Wiggle', '  easier Goblt Squat', '  harder Moored Handstand'),
    [
      'log.plim:2:10 No movement is called Goblt Squat: did you mean Goblet Squat? [unknown-movement] → Write Goblet Squat: easier Goblet Squat',
      'log.plim:3:10 No movement is called Moored Handstand: did you mean Handstand Hold or Handstand Push-up? [unknown-movement] → Write Handstand Hold: harder Handstand Hold → Write Handstand Push-up: harder Handstand Push-up',
    ],
  ],
  [
    'max, goal and retest',
    lines(
      'athlete Otti Plankermann',
      '  max Bck Squat: 100 kg on 2026-10-01',
      '  goal Pul-up: 8 @ bw by 2027-06-01',
      '  retest Dedlift: 100 kg, 101 kg on 2026-10-01',
    ),
    [
      'log.plim:2:7 No movement is called Bck Squat: did you mean Back Squat or Hack Squat? [unknown-movement] → Write Back Squat: max Back Squat: 100 kg on 2026-10-01 → Write Hack Squat: max Hack Squat: 100 kg on 2026-10-01',
      'log.plim:3:8 No movement is called Pul-up: did you mean Pull-up? [unknown-movement] → Write Pull-up: goal Pull-up: 8 @ bw by 2027-06-01',
      'log.plim:4:10 No movement is called Dedlift: did you mean Deadlift? [unknown-movement] → Write Deadlift: retest Deadlift: 100 kg, 101 kg on 2026-10-01',
    ],
  ],
  [
    'to avoid: a pattern, a movement, or neither',
    lines(
      'athlete Otti Plankermann',
      '  avoid vertical push',
      '  avoid Dips',
      '  avoid push',
      '  avoid vertcal pull until 2026-12-01',
    ),
    [
      'log.plim:4:9 No pattern or movement is called push: did you mean horizontal push or vertical push? [unknown-movement] → Write horizontal push: avoid horizontal push → Write vertical push: avoid vertical push',
      'log.plim:5:9 No pattern or movement is called vertcal pull: did you mean vertical pull? [unknown-movement] → Write vertical pull: avoid vertical pull until 2026-12-01',
    ],
  ],
  [
    'an athlete',
    lines('athlete Otti Plankermann', 'session 2026-11-17 Otti Plankerman', '  Push-up: 10'),
    [
      'log.plim:2:20 No athlete is called Otti Plankerman: did you mean Otti Plankermann? [unknown-athlete] → Write Otti Plankermann: session 2026-11-17 Otti Plankermann → Define athlete Otti Plankerman: athlete Otti Plankerman ⏎ session 2026-11-17 Otti Plankerman',
    ],
  ],
  [
    'an athlete of a group',
    lines(
      'athlete Otti Plankermann',
      'athlete Bram Skuttle',
      'session 2026-11-17 Otti Plankermann | Bram Skutle | Zed',
      '  Push-up: 10',
    ),
    [
      'log.plim:3:39 No athlete is called Bram Skutle: did you mean Bram Skuttle? [unknown-athlete] → Write Bram Skuttle: session 2026-11-17 Otti Plankermann | Bram Skuttle | Zed → Define athlete Bram Skutle: athlete Bram Skutle ⏎ session 2026-11-17 Otti Plankermann | Bram Skutle | Zed',
      'log.plim:3:53 No athlete is called Zed: define it with "athlete Zed", or correct the name [unknown-athlete] → Define athlete Zed: athlete Zed ⏎ session 2026-11-17 Otti Plankermann | Bram Skutle | Zed',
    ],
  ],
  [
    'athletes and places where nobody defines any',
    lines('session 2026-11-17 Otti Plankermann at Kelp Cellar', '  Push-up: 10'),
    [],
  ],
  [
    'a place',
    lines(
      'place Kelp Cellar',
      'session 2026-11-17 at Kelp Cellor',
      '  Push-up: 10',
      'plan Brass Almanac',
      '  at The Hut',
    ),
    [
      'log.plim:2:23 No place is called Kelp Cellor: did you mean Kelp Cellar? [unknown-place] → Write Kelp Cellar: session 2026-11-17 at Kelp Cellar → Define place Kelp Cellor: place Kelp Cellor ⏎ session 2026-11-17 at Kelp Cellor',
      'log.plim:5:6 No place is called The Hut: define it with "place The Hut", or correct the name [unknown-place] → Define place The Hut: place The Hut ⏎ plan Brass Almanac',
    ],
  ],
  [
    'a plan',
    lines(
      'plan Brass Almanac',
      '  follows Copper Clock',
      'session 2026-11-17, Brass Almanak week 2 day 1',
      '  Push-up: 10',
    ),
    [
      'log.plim:2:11 No plan is called Copper Clock: define it with "plan Copper Clock", or correct the name [unknown-plan] → Define plan Copper Clock: plan Copper Clock ⏎ plan Brass Almanac',
      'log.plim:3:21 No plan is called Brass Almanak: did you mean Brass Almanac? [unknown-plan] → Write Brass Almanac: session 2026-11-17, Brass Almanac week 2 day 1 → Define plan Brass Almanak: plan Brass Almanak ⏎ session 2026-11-17, Brass Almanak week 2 day 1',
    ],
  ],
  [
    'what reading has told is something else',
    lines('session 2026-11-17', '  rpe: 7', '  weight: 60.5 kg', '  3 rounds:'),
    [
      "log.plim:2:3 Write effort 7: that is the whole session's; a set's rating stands behind its load, such as 5 @ 60 kg rpe 7 [stray-line] → Write effort 7: effort 7",
      'log.plim:3:3 Write bodyweight 60.5 kg: a weigh-in is told by bodyweight; a load stands behind the sets, such as 5 @ 60 kg [stray-line] → Write bodyweight 60.5 kg: bodyweight 60.5 kg',
      'log.plim:4:3 Write circuit, 3 rounds or superset, 3 rounds or for time, 3 rounds: a block says how it is done [stray-line] → Write circuit, 3 rounds: circuit, 3 rounds → Write superset, 3 rounds: superset, 3 rounds → Write for time, 3 rounds: for time, 3 rounds',
    ],
  ],
  [
    'a header whose date is told of',
    lines(
      'athlete Otti Plankermann',
      'session today Otti Plankermann',
      '  Push-up: 10',
      'session 23 Nov Otti Plankermann',
      '  Push-up: 10',
    ),
    [
      'log.plim:2:1 Write the date itself, such as session 2026-11-17: another day, nobody knows which day this was [odd-date]',
      'log.plim:4:1 23 Nov is not a whole date: write year-month-day, such as 2026-11-17 [odd-date]',
    ],
  ],
  [
    'a plan for somebody',
    lines('athlete Otti Plankermann', 'plan Brass Almanac', '  for Otti Plankermam'),
    [
      'log.plim:3:7 No athlete is called Otti Plankermam: did you mean Otti Plankermann? [unknown-athlete] → Write Otti Plankermann: for Otti Plankermann → Define athlete Otti Plankermam: athlete Otti Plankermam ⏎ plan Brass Almanac',
    ],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
