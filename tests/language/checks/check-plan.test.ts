import { describe, expect, test } from 'vitest';
import { check, lines } from './workspace.ts';

/** Problems of a plan's line, in a plan of some weeks. */
function checkLine(
  line: string,
  { weeks = 6, block = 'A straight, rest 2:00', properties = '' } = {},
): string[] {
  return check(
    lines(
      'plan Brass Almanac',
      `  weeks ${weeks}`,
      ...(properties ? [`  ${properties}`] : []),
      '  day 1',
      `    ${block}`,
      `      ${line}`,
    ),
    'no-load',
  ).map((problem) => problem.replace(/^\S+ /, ''));
}

test.each<[string, string[]]>([
  [
    'Push-up: 8 | 10 |',
    [
      'The bar at the end leaves a week of every 3 without Push-up: take it out if it is one too many [cell-count] → Take the bar out: Push-up: 8 | 10',
    ],
  ],
  ['Push-up: 8 | | 10', []],
  ['Push-up: | 10', []],
  ['Push-up: 8 | 10', []],
])('a bar at the end of %s', (line, expected) => {
  expect(checkLine(line)).toEqual(expected);
});

describe('a step', () => {
  test.each<[string, string[]]>([
    ['Push-up: 8, +1 rep each week to 12', []],
    ['Back Squat: 3x5 @ 60 kg, +2.5 kg each session', []],
    ['Back Squat: 3x5 @ 60 kg, +2.5% each week to 80 kg', []],
    ['Back Squat: 3x5 @ 70%, +2.5% each week', []],
    ['Back Squat: 3x5 @ rpe 7, +0.5 rpe each week to 9', []],
    ['Pull-up: 3x5, +2.5 kg each week', []],
    ['Back Squat: 3x5 @ 60 kg | 3x4 @ 65 kg, +2.5 kg each cycle', []],
    ['Goblet Squat: 8-12 @ 20 kg, then +2 kg from 8', []],
    ['Goblet Squat: 8 @ 20 kg, +1 rep each week to 10, then +2 kg from 8', []],
    ['Plank: 2x30 s, +5 s each week, rest 1:00, rest -5 s each week', []],
    [
      'Back Squat: 3x5 @ 60 kg, +2.5 kg',
      ['+2.5 kg can never be taken: it does not say how often, such as each week [plan-step]'],
    ],
    [
      'Plank: 30 s, +1 rep each week',
      ['+1 rep each week can never be taken: the line has no reps to change [plan-step]'],
    ],
    [
      'Leg Extension: 12 @ pin 7, +2.5 kg each week',
      ['+2.5 kg each week can never be taken: the line has no weight to change [plan-step]'],
    ],
    [
      'Back Squat: 3x5 @ 60 kg, +0.5 rpe each week',
      [
        '+0.5 rpe each week can never be taken: the line has no target or rating of that scale to change [plan-step]',
      ],
    ],
    [
      'Push-up: 8, +1 rep each round',
      ['+1 rep each round can never be taken: its block has no rounds [plan-step]'],
    ],
    [
      'Push-up: 8, +1 rep each cycle',
      ['+1 rep each cycle can never be taken: no line of the plan has cells that begin again [plan-step]'],
    ],
    [
      'Push-up: 8, +1 rep each week to 12 kg',
      ['+1 rep each week to 12 kg can never be taken: what it goes to is in another unit [plan-step]'],
    ],
    [
      'Push-up: 14, +1 rep each week to 12',
      ['+1 rep each week to 12 can never be taken: the line begins there already or past it [plan-step]'],
    ],
    [
      'Goblet Squat: 8 @ 20 kg, then +2 kg from 8',
      [
        'then +2 kg from 8 can never be taken: nothing before it is ever full, such as 8-12 or +1 rep each week to 12 [plan-step]',
      ],
    ],
    [
      'Goblet Squat: 8-12 @ 20 kg, then +2 kg from 12',
      ['then +2 kg from 12 can never be taken: it begins again from 12, which is full already [plan-step]'],
    ],
    [
      'Push-up: 8, +1 rep each week, -1 rep each week',
      ['+1 rep each week goes against another step of this line: keep one of the two [plan-step]'],
    ],
    [
      'week 3 Push-up: 8, +1 rep each week',
      ['+1 rep each week can never be taken: the line is for week 3 alone [plan-step]'],
    ],
    [
      'Plank: 30 s, rest 1:00, rest -1 rep each week',
      ['rest -1 rep each week can never be taken: a rest is stepped in seconds or minutes [plan-step]'],
    ],
  ])('%s', (line, problems) => {
    expect(checkLine(line)).toEqual(problems);
  });

  test('of sets, where rounds say how many', () => {
    expect(checkLine('Push-up: 8, +1 set each week', { block: 'B circuit, 3 rounds' })).toEqual([
      '+1 set each week can never be taken: the rounds of the block decide how many sets there are [plan-step]',
    ]);
  });

  test('each round, in rounds', () => {
    expect(checkLine('Push-up: 8, +1 rep each round to 10', { block: 'B circuit, 3 rounds' })).toEqual([]);
  });

  test.each<[string, string, string[]]>([
    ['B circuit, 3 rounds, +1 round each week to 5', 'Push-up: 8', []],
    [
      'B circuit, 3 rounds, +1 round each week to 12',
      'Push-up: 8',
      ['+1 round each week to 12 is never reached: in 6 weeks there are 5 steps [plan-ceiling]'],
    ],
    [
      'B circuit, 3 rounds, +1 round each week to 3',
      'Push-up: 8',
      ['+1 round each week to 3 can never be taken: the block begins there already or past it [plan-step]'],
    ],
    [
      'B circuit, 3 rounds, +1 round',
      'Push-up: 8',
      ['+1 round can never be taken: it does not say how often, such as each week [plan-step]'],
    ],
    [
      'B circuit, 3 rounds, +1 round each round',
      'Push-up: 8',
      [
        '+1 round each round can never be taken: the rounds of one day are as many as they are: write each week or each session [plan-step]',
      ],
    ],
    [
      'C amrap 8:00, +1 round each week',
      'Push-up: 8',
      ['+1 round each week can never be taken: its block has no rounds [plan-step]'],
    ],
    [
      'B circuit, 3 rounds, +1 round each week to 5 kg',
      'Push-up: 8',
      ['+1 round each week to 5 kg can never be taken: what it goes to is in another unit [plan-step]'],
    ],
    [
      'B circuit, 3 rounds, +1 round each cycle',
      'Push-up: 8',
      ['+1 round each cycle can never be taken: no line of the plan has cells that begin again [plan-step]'],
    ],
    [
      'B circuit, 3 rounds',
      'Push-up: 8, +1 round each week',
      [
        "+1 round each week can never be taken: rounds are the block's: write the step in its header, behind its rounds [plan-step]",
      ],
    ],
    [
      'B circuit, 3 rounds, +1 rep each week',
      'Push-up: 8',
      [
        "A block's header has steps of rounds alone, such as +1 round each week: write +1 rep each week behind the sets of a line [unknown-item]",
      ],
    ],
    [
      'B circuit, 3 rounds, +1 round each week, +2 rounds each week',
      'Push-up: 8',
      ['a step of rounds stands here twice: the last one counts [repeated-property]'],
    ],
  ])('on rounds: %s', (block, line, expected) => {
    expect(checkLine(line, { block })).toEqual(expected);
  });

  test.each<[string, string[]]>([
    ['rest 2:00, rest -15 s each week to 1:15', []],
    ['rest 2:00, rest -20 s each week', []],
    ['rest 1:00-2:00, rest -10 s each week', []],
    [
      'rest 0:50-2:00, rest -10 s each week',
      [
        'rest -10 s each week leaves no rest from week 6 on: write where it ends, such as to 30 s [plan-ceiling]',
      ],
    ],
    [
      'rest 1:00, rest -20 s each week',
      [
        'rest -20 s each week leaves no rest from week 4 on: write where it ends, such as to 30 s [plan-ceiling]',
      ],
    ],
    [
      'rest 2:00, rest -15 s each week to 0:30',
      ['rest -15 s each week to 30 s is never reached: in 6 weeks there are 5 steps [plan-ceiling]'],
    ],
    [
      'rest 1:00, rest -15 s each week to 1:15',
      [
        'rest -15 s each week to 1:15 can never be taken: the line begins there already or past it [plan-step]',
      ],
    ],
    [
      'rest 1:00, rest -15 s each week to 75 kg',
      ['rest -15 s each week to 75 kg can never be taken: what it goes to is in another unit [plan-step]'],
    ],
    [
      'rest 1:00, rest -5 s each week, rest +5 s each week',
      ['rest -5 s each week goes against another step of this line: keep one of the two [plan-step]'],
    ],
    // The longer end of a range comes down to the bound, the shorter stays.
    ['rest 1:00-2:00, rest -15 s each week to 1:15', []],
  ])('on a rest: %s', (modifiers, expected) => {
    expect(checkLine(`Push-up: 8, ${modifiers}`)).toEqual(expected);
  });

  test('on a rest of the block, both ways', () => {
    const text = lines(
      'plan Brass Almanac',
      '  weeks 6',
      '  day 1',
      '    B circuit, 3 rounds, rest 2:00',
      '      Push-up: 8',
      '      rest -15 s each week',
      '      rest +5 s each week',
    );
    expect(check(text)).toEqual([
      'log.plim:6:7 rest -15 s each week goes against another step of this block: keep one of the two [plan-step]',
    ]);
  });

  test('on a rest that nobody wrote', () => {
    const wrong = (where: string) =>
      `rest -5 s each week can never be taken: ${where}, such as rest 1:30 [plan-step]`;
    expect(checkLine('Push-up: 8, rest -5 s each week', { block: 'A straight' })).toEqual([
      wrong('the line and its block write no rest'),
    ]);
    const inBlock = lines(
      'plan Brass Almanac',
      '  day 1',
      '    A circuit, 3 rounds',
      '      Push-up: 8',
      '      rest -5 s each week',
    );
    expect(check(inBlock)).toEqual([`log.plim:5:7 ${wrong("the block's header writes no rest")}`]);
  });
});

// Six weeks take five steps, less one for each deload.
describe('a ceiling', () => {
  test.each<[string, string, string[]]>([
    ['Push-up: 8, +1 rep each week to 13', '', []],
    [
      'Push-up: 8, +1 rep each week to 14',
      '',
      ['+1 rep each week to 14 is never reached: in 6 weeks there are 5 steps [plan-ceiling]'],
    ],
    [
      'Push-up: 8, +1 rep each week to 13',
      'deload week 4, sets 50%',
      ['+1 rep each week to 13 is never reached: in 6 weeks there are 4 steps [plan-ceiling]'],
    ],
    [
      'Back Squat: 3x5 @ 60 kg, +2.5 kg each week to 80 kg',
      '',
      ['+2.5 kg each week to 80 kg is never reached: in 6 weeks there are 5 steps [plan-ceiling]'],
    ],
    ['Back Squat: 3x5 @ 60 kg, +2.5 kg each week to 72.5 kg', '', []],
    ['Plank: 2:00, -10 s each week to 70 s', '', []],
    ['Back Squat: 3x5 @ 70%, +2.5% each week to 82.5%', '', []],
  ])('%s %s', (line, properties, problems) => {
    expect(checkLine(line, { properties })).toEqual(problems);
  });
});

describe('when a plan comes', () => {
  const plan = (name: string, ...more: string[]) => [
    `plan ${name}`,
    ...more.map((line) => `  ${line}`),
    '  day 1',
    '    Push-up: 8',
  ];

  test('plans that follow one another in a circle', () => {
    const text = lines(
      ...plan('Brass Almanac', 'follows Tin Almanac'),
      ...plan('Tin Almanac', 'follows Brass Almanac'),
    );
    expect(check(text)).toEqual([
      'log.plim:2:11 The plans follow one another in a circle (Brass Almanac → Tin Almanac → Brass Almanac): give one of them a date with starts [plan-order]',
      'log.plim:6:11 The plans follow one another in a circle (Tin Almanac → Brass Almanac → Tin Almanac): give one of them a date with starts [plan-order]',
    ]);
  });

  test('a plan that follows itself', () => {
    expect(check(lines(...plan('Brass Almanac', 'follows brass almanac')))).toEqual([
      'log.plim:2:11 The plans follow one another in a circle (Brass Almanac → Brass Almanac): give one of them a date with starts [plan-order]',
    ]);
  });

  test('a chain with a beginning is none', () => {
    const text = lines(
      ...plan('Brass Almanac', 'follows Tin Almanac'),
      ...plan('Tin Almanac', 'starts 2026-11-02'),
    );
    expect(check(text)).toEqual([]);
  });

  test('a date and another plan', () => {
    const text = lines(
      ...plan('Brass Almanac', 'starts 2026-12-07', 'follows Tin Almanac'),
      ...plan('Tin Almanac', 'starts 2026-11-02'),
    );
    expect(check(text)).toEqual([
      'log.plim:3:11 The plan starts on a date and follows Tin Almanac: the date counts, so take out one of the two [plan-order]',
    ]);
  });

  test.each<[string, string[]]>([
    ['days Mon', []],
    ['days alternate, 3 a week', []],
    [
      'days Mon, Wed, Fri',
      [
        'log.plim:2:8 The plan has 1 day for 3 weekdays: write days alternate, 3 a week, or the other days [plan-days]',
      ],
    ],
  ])('%s', (days, problems) => {
    expect(check(lines(...plan('Brass Almanac', days)))).toEqual(problems);
  });

  test('weeks past the end', () => {
    const text = lines(
      ...plan('Brass Almanac', 'weeks 4', 'deload week 5, sets 50%'),
      '    week 6 Push-up: 12',
    );
    expect(check(text)).toEqual([
      'log.plim:3:3 The plan has 4 weeks, so week 5 never comes: correct the week [plan-days]',
      'log.plim:6:12 The plan has 4 weeks, so week 6 never comes: correct the week [plan-days]',
    ]);
  });
});
