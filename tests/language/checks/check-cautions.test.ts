import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Cautions: plain, sourced, once for each entry.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'under age',
    lines(
      'athlete Otti Plankermann',
      '  born 2009',
      'athlete Bram Skuttle',
      '  born 2008',
      'session 2026-11-10 Otti Plankermann',
      '  Push-up: 10',
    ),
    [
      'log.plim:1:9 Otti Plankermann is under 18: qualified supervision, light loads, technique first; ask a licensed practitioner before any max [caution-youth]',
    ],
  ],
  [
    'moderate pain, the worst of the session',
    lines(
      'session 2026-11-10',
      '  Push-up: 10, pain 4 left wrist',
      '  Dip: 5, pain 5 left shoulder',
      '  pain 4 right knee',
    ),
    [
      'log.plim:3:11 Pain 5 of 10, left shoulder: leave out what brings it on, and ask a licensed practitioner before loading it again [caution-pain]',
    ],
  ],
  ['little pain', lines('session 2026-11-10', '  Push-up: 10, pain 3 left wrist', '  pain 0 chest'), []],
  [
    'pain that ends a session',
    lines('session 2026-11-10', '  Push-up: 10, pain 6 left wrist', '  pain 2 chest'),
    [
      'log.plim:3:3 Pain 2, chest: stop and seek medical help on chest pain, fainting or unusual breathlessness [caution-pain]',
    ],
  ],
  [
    'pain without a place',
    lines('session 2026-11-10', '  pain 7'),
    [
      'log.plim:2:3 Pain 7 of 10: leave out what brings it on, and ask a licensed practitioner before loading it again [caution-pain]',
    ],
  ],
  [
    'a max test',
    lines(
      'athlete Otti Plankermann',
      '  screened 2026-01-10',
      'session 2026-11-10 Otti Plankermann',
      '  test Back Squat: 1 @ 60 kg',
      '  test Bench Press: 1 @ 40 kg',
    ),
    [
      'log.plim:4:8 A max test: rested, in steps, with a spotter or safeties, stopped at any pain; in doubt ask a licensed practitioner [caution-max-test]',
    ],
  ],
  [
    'a max test of somebody young whose screening is old',
    lines(
      'athlete Otti Plankermann',
      '  screened 2025-11-09',
      'athlete Bram Skuttle',
      '  born 2010',
      '  screened 2026-01-01',
      'session 2026-11-10 Otti Plankermann | Bram Skuttle',
      '  test Back Squat: 1 @ 60 kg',
    ),
    [
      'log.plim:3:9 Bram Skuttle is under 18: qualified supervision, light loads, technique first; ask a licensed practitioner before any max [caution-youth]',
      'log.plim:7:8 A max test: rested, in steps, with a spotter or safeties, stopped at any pain; Bram Skuttle under 18: qualified supervision only; no health screening of Otti Plankermann in the 12 months before; in doubt ask a licensed practitioner [caution-max-test]',
    ],
  ],
  ['a test without a load', lines('session 2026-11-10', '  test Push-up: 30'), []],
  [
    'back after a layoff',
    lines(
      'session 2026-10-01 Otti Plankermann',
      'session 2026-10-15 Otti Plankermann',
      'session 2026-10-25 Otti Plankermann',
      '  missed, ill',
      'session 2026-10-30 Otti Plankermann',
      'session 2026-11-01 Otti Plankermann',
    ),
    [
      'log.plim:5:9 Otti Plankermann: the first session in 15 days: begin with less load and fewer sets and build up; after illness or injury ask a licensed practitioner [caution-layoff]',
    ],
  ],
  [
    'back after a layoff, nobody named',
    lines('session 2026-10-01', 'session 2026-10-31'),
    [
      'log.plim:2:9 The first session in 30 days: begin with less load and fewer sets and build up; after illness or injury ask a licensed practitioner [caution-layoff]',
    ],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
