import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Lines that nothing recognises.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'a movement without its colon',
    lines('session 2026-11-17', '  Back Squat 3x5 @ 60 kg'),
    [
      'log.plim:2:3 Write a colon behind Back Squat [name-without-colon] → Add the colon: Back Squat: 3x5 @ 60 kg',
    ],
  ],
  [
    'the longest name that fits',
    lines('session 2026-11-17', '  Bulgarian Split Squat 8/side'),
    [
      'log.plim:2:3 Write a colon behind Bulgarian Split Squat [name-without-colon] → Add the colon: Bulgarian Split Squat: 8/side',
    ],
  ],
  [
    'behind a prefix, with a dash in place of the colon',
    lines(
      'session 2026-11-17',
      '  warmup Push-up - 10, 8',
      '  A1 Front Squat 5 @ 40 kg',
      '  Rower 5:00 hr 118',
    ),
    [
      'log.plim:2:10 Write a colon behind Push-up [name-without-colon] → Add the colon: warmup Push-up: 10, 8',
      'log.plim:3:6 Write a colon behind Front Squat [name-without-colon] → Add the colon: A1 Front Squat: 5 @ 40 kg',
      'log.plim:4:3 Write a colon behind Rower [name-without-colon] → Add the colon: Rower: 5:00 hr 118',
    ],
  ],
  [
    'nearly a block',
    lines('session 2026-11-17', '  A circuit of three', '  amrap of 12 or so'),
    [
      'log.plim:2:3 No block begins here, so the lines below count to the block above: behind its letter stands its kind, then commas and settings, such as A circuit, 3 rounds, rest 1:00 [stray-line]',
      'log.plim:3:3 No block begins here, so the lines below count to the block above: behind its letter stands its kind, then commas and settings, such as A circuit, 3 rounds, rest 1:00 [stray-line]',
    ],
  ],
  [
    'a load where the colon would stand',
    lines('session 2026-11-17', '  Back Squat @ rpe 8: 5, 5'),
    ['log.plim:2:3 Write a colon behind Back Squat [name-without-colon]'],
  ],
  [
    "a block's letter with a bracket or a point",
    lines('session 2026-11-17', '  B) circuit, 3 rounds', '  c. straight'),
    [
      'log.plim:2:3 No block begins here, so the lines below count to the block above: write B circuit, 3 rounds [stray-line] → Write B circuit, 3 rounds: B circuit, 3 rounds',
      'log.plim:3:3 No block begins here, so the lines below count to the block above: write c straight [stray-line] → Write c straight: c straight',
    ],
  ],
  [
    'a name alone',
    lines('session 2026-11-17', '  Push-up'),
    ['log.plim:2:3 Write a colon behind Push-up [name-without-colon] → Add the colon: Push-up:'],
  ],
  [
    'in a plan',
    lines('plan Brass Almanac', '  day 1', '    week 2 Back Squat 3x5 @ 70%'),
    [
      'log.plim:3:12 Write a colon behind Back Squat [name-without-colon] → Add the colon: week 2 Back Squat: 3x5 @ 70%',
    ],
  ],
  [
    'a mistyped word',
    lines('session 2026-11-17', '  efort 7', '  lastd 58 min', '  A circut, 4 rounds'),
    [
      'log.plim:2:3 Nothing is known by "efort" here: did you mean effort? [stray-line] → Write effort: effort 7',
      'log.plim:3:3 Nothing is known by "lastd" here: did you mean lasted? [stray-line] → Write lasted: lasted 58 min',
      'log.plim:4:5 Nothing is known by "circut" here: did you mean circuit? [stray-line] → Write circuit: A circuit, 4 rounds',
    ],
  ],
  [
    'a mistyped word of a definition',
    lines(
      'exercise Keel Wiggle',
      '  patern squat',
      'place Kelp Cellar',
      '  dumbells 4-32 by 2 kg',
      'athlete Otti Plankermann',
      '  avod Dip',
    ),
    [
      'log.plim:2:3 Nothing is known by "patern" here: did you mean pattern? [stray-line] → Write pattern: pattern squat',
      'log.plim:4:3 Nothing is known by "dumbells" here: did you mean dumbbells? [stray-line] → Write dumbbells: dumbbells 4-32 by 2 kg',
      'log.plim:6:3 Nothing is known by "avod" here: did you mean avoid? [stray-line] → Write avoid: avoid Dip',
    ],
  ],
  [
    'an unknown movement without its colon',
    lines('session 2026-11-17', '  Keel Wiggle 3x10 @ 10 kg'),
    [
      'log.plim:2:3 Nothing recognises this line: if Keel Wiggle is a movement, write a colon behind it [stray-line] → Add the colon: Keel Wiggle: 3x10 @ 10 kg',
    ],
  ],
  [
    'a note about a block',
    lines('session 2026-11-17', '  circuit felt hard'),
    [
      'log.plim:2:3 Nothing recognises this line, so it counts nowhere: begin a note with >, a comment with # [stray-line] → Make it a note: > circuit felt hard',
    ],
  ],
  [
    'free text',
    lines('session 2026-11-17', '  legs felt heavy today', 'athlete Otti Plankermann', '  likes carrots'),
    [
      'log.plim:2:3 Nothing recognises this line, so it counts nowhere: begin a note with >, a comment with # [stray-line] → Make it a note: > legs felt heavy today',
      'log.plim:4:3 Nothing recognises this line, so it counts nowhere: begin a note with >, a comment with # [stray-line] → Make it a note: > likes carrots',
    ],
  ],
  [
    'sets outside a session',
    lines('athlete Otti Plankermann', '  Back Squat: 5 @ 40 kg'),
    [
      'log.plim:2:3 Movements and their sets stand in a session or a plan: begin one with session and a date [stray-line]',
    ],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
