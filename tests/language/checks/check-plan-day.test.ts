import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

const PLAN = [
  'plan Brass Almanac',
  '  weeks 6',
  '  day 1 Squat',
  '    Back Squat: 3x5 @ 70%',
  '    week 5 test Bench Press: 1 @ 100%',
  '    Dip: 10',
  '  day 2',
  '    Push-up: 10',
];

// A session against the plan it names.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'as planned, with a warm-up and a substitute',
    lines(
      ...PLAN,
      'session 2026-11-09, Brass Almanac week 1 day 1',
      '  warmup',
      '    Rower: 5:00',
      '  A straight',
      '    Back Squat: 3x5 @ 70 kg',
      '    Bench Dip: 10, instead of Dip',
    ),
    [],
  ],
  [
    'no such week, no such day',
    lines(
      ...PLAN,
      'session 2026-11-10, Brass Almanac week 7 day 1',
      '  Back Squat: 3x5 @ 70 kg',
      '  Dip: 10',
      'session 2026-11-11, Brass Almanac week 2 day 3',
      '  Dip: 5',
    ),
    [
      'log.plim:9:21 Brass Almanac has 6 weeks, and no week 7: correct the week [plan-day]',
      'log.plim:12:21 Brass Almanac has days 1 and 2, and no day 3: correct the day [plan-day]',
    ],
  ],
  [
    'left out and added',
    lines(
      ...PLAN,
      'session 2026-11-11, Brass Almanac week 4 day 1',
      '  Back Squat: 3x5 @ 70 kg',
      '  Pull-up: 10',
    ),
    ['log.plim:9:21 Not as planned: Dip planned and not done; Pull-up done and not planned [not-as-planned]'],
  ],
  [
    'a line of one week',
    lines(
      ...PLAN,
      'session 2026-11-11, Brass Almanac week 5 day 1',
      '  Back Squat: 3x5 @ 70 kg',
      '  Dip: 10',
    ),
    ['log.plim:9:21 Not as planned: Bench Press planned and not done [not-as-planned]'],
  ],
  [
    'another session altogether',
    lines(
      ...PLAN,
      'session 2026-11-13, Brass Almanac week 5 day 2',
      '  Dip: 1',
      '  Chin-up: 3',
      '  Pull-up: 3',
      '  Dead Bug: 2',
      '  Plank: 20 s',
    ),
    [
      'log.plim:9:21 Not as planned: Push-up planned and not done; 5 movements done and not planned [not-as-planned]',
    ],
  ],
  ['missed', lines(...PLAN, 'session 2026-11-12, Brass Almanac week 5 day 2', '  missed, ill'), []],
  [
    'a plan of one day and one week',
    lines(
      'plan Brass Almanac',
      '  weeks 1',
      '  day 1',
      '    Dip: 3',
      'session 2026-11-12, Brass Almanac week 2 day 2',
      '  Dip: 3',
    ),
    [
      'log.plim:5:21 Brass Almanac has 1 week, and no week 2: correct the week [plan-day]',
      'log.plim:5:21 Brass Almanac has day 1, and no day 2: correct the day [plan-day]',
    ],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
