import { describe, expect, test } from 'vitest';
import { printSets } from '../../../language/src/plans/print-projected.ts';
import { ATHLETE, PERSON, PLACE, project, projectLine } from './project-text.ts';

const DELOAD = { properties: ['deload week 4, sets 50%, load 90%'] };

/**
 * A whole plan, each number by hand. What can be loaded: 20 kg and from there each 2.5 kg up to 137.5 kg; dumbbells of
 * 4, 6, … 32 kg. Maxes: Back Squat 105 kg, Deadlift 140 kg. Week 4 is a deload.
 */
describe('a worked plan', () => {
  const text = `${PLACE}${PERSON}
plan Copper Autumn
  for ${ATHLETE}
  at Rookery Cellar
  starts 2026-11-02
  weeks 6
  deload week 4, sets 50%, load 90%
  days Mon, Thu
  day 1 Squat
    A straight, rest 3:00
      Back Squat: 3x5 @ 70% | 4x4 @ 75% | 5x3 @ 80%
      week 5 test Back Squat: 1 @ 100%
      Front Squat: 3x5 @ 60 kg, +2.5% each week
    B circuit, 4 rounds, rest 1:30
      Push-up: 10, +1 rep each round
      One-Arm Row: 8/side @ 20 kg, +1 rep each week to 10, then +2 kg from 8
      rest -10 s each week
  day 2 Pull
    A straight, rest 3:00
      Deadlift: 1 @ 85%, 3x5 @ -10%
      Dumbbell Bench Press: 3x8-12 @ 2x22 kg, +2 kg each week to 28
      Plank: 2x30 s, +5 s each session to 45 s
`;
  const { days } = project(text);
  const weekly = (dayNumber: number, name: string): string[] =>
    days
      .filter(({ turn }) => turn.day.number === dayNumber)
      .map(({ blocks }) => blocks.flatMap(({ lines }) => lines).find(({ line }) => line.name.text === name)!)
      .map(printSets);

  test('percentages by week, the cells again after the third, and a test in place of a line', () => {
    expect(weekly(1, 'Back Squat')).toEqual([
      '3x5 @ 72.5 kg', // 70 % of 105 = 73.5: 1 over 72.5, 1.5 under 75
      '4x4 @ 80 kg', // 75 % of 105 = 78.75, in the middle of 77.5 and 80: up
      '5x3 @ 85 kg', // 80 % of 105 = 84
      '2x5 @ 65 kg', // the first cell, deload: 90 % of 73.5 = 66.15; half of 3 sets, up
      '1 @ 105 kg', // the test of week 5
      '5x3 @ 85 kg', // the third cell
    ]);
  });

  test('a step of percent on a weight multiplies what was not rounded, and a deload takes none', () => {
    expect(weekly(1, 'Front Squat')).toEqual([
      '3x5 @ 60 kg',
      '3x5 @ 62.5 kg', // 60 × 1.025 = 61.5
      '3x5 @ 62.5 kg', // × 1.025 = 63.0375
      '2x5 @ 57.5 kg', // 90 % of 63.0375 = 56.73
      '3x5 @ 65 kg', // 63.0375 × 1.025 = 64.61
      '3x5 @ 65 kg', // × 1.025 = 66.23, 1.23 over 65 and 1.27 under 67.5
    ]);
  });

  test('steps of each round, in as many rounds as the deload leaves', () => {
    expect(weekly(1, 'Push-up')).toEqual([
      '10, 11, 12, 13',
      '10, 11, 12, 13',
      '10, 11, 12, 13',
      '10, 11', // 4 rounds × 50 %
      '10, 11, 12, 13',
      '10, 11, 12, 13',
    ]);
  });

  test('reps to a ceiling, then weight and the reps from the beginning', () => {
    expect(weekly(1, 'One-Arm Row')).toEqual([
      '8/side @ 20 kg',
      '9/side @ 20 kg',
      '10/side @ 20 kg',
      '10/side @ 18 kg', // no step; 90 % of 20
      '8/side @ 22 kg', // the third step: full, so + 2 kg from 8
      '9/side @ 22 kg',
    ]);
  });

  test('back-offs from the top set before it is rounded', () => {
    // 85 % of 140 = 119 → 120; 10 % off 119 = 107.1 → 107.5.
    const ordinary = '1 @ 120 kg, 3x5 @ 107.5 kg';
    // 90 % of 119 = 107.1 → 107.5; 10 % off 107.1 = 96.39 → 97.5. Of 4 sets 2 are left.
    expect(weekly(2, 'Deadlift')).toEqual([
      ordinary,
      ordinary,
      ordinary,
      '1 @ 107.5 kg, 1x5 @ 97.5 kg',
      ordinary,
      ordinary,
    ]);
  });

  test('a step on two dumbbells is each one’s, and its bound too', () => {
    expect(weekly(2, 'Dumbbell Bench Press')).toEqual([
      '3x8-12 @ 2x22 kg',
      '3x8-12 @ 2x24 kg',
      '3x8-12 @ 2x26 kg',
      '2x8-12 @ 2x24 kg', // 90 % of 26 = 23.4
      '3x8-12 @ 2x28 kg',
      '3x8-12 @ 2x28 kg', // bound
    ]);
  });

  test('seconds each session, up to the bound', () => {
    expect(weekly(2, 'Plank')).toEqual(['2x30 s', '2x35 s', '2x40 s', '1x40 s', '2x45 s', '2x45 s']);
  });

  test('rests that shorten by the week', () => {
    const rests = days.filter(({ turn }) => turn.day.number === 1).map(({ blocks }) => blocks[1]!.block.rest);
    expect(rests).toEqual([90, 80, 70, 70, 60, 50].map((low) => ({ low })));
  });
});

describe('percentages', () => {
  test('are of the training max once', () => {
    // 90 % of 105 = 94.5; 80 % of it = 75.6.
    expect(
      projectLine('Back Squat: 5 @ 80%', { weeks: 1, properties: ['training max 90%'], explained: true }),
    ).toEqual(['5 @ 75 kg (80 % of 90 % of 105 = 75.6)']);
  });

  test('a step of percent adds points', () => {
    // 75 % = 78.75 → 80; 77.5 % = 81.375 → 82.5; 80 % = 84 → 85; the bound.
    expect(projectLine('Back Squat: 5 @ 75%, +2.5% each week to 80%', { weeks: 4 })).toEqual([
      '5 @ 80 kg',
      '5 @ 82.5 kg',
      '5 @ 85 kg',
      '5 @ 85 kg',
    ]);
  });

  test('a step of weight is added to them', () => {
    // 73.5, 76, 78.5.
    expect(projectLine('Back Squat: 5 @ 70%, +2.5 kg each week', { weeks: 3 })).toEqual([
      '5 @ 72.5 kg',
      '5 @ 75 kg',
      '5 @ 77.5 kg',
    ]);
  });

  test('of another movement, and in a range', () => {
    expect(projectLine('Front Squat: 5 @ 60-70% of Back Squat', { weeks: 1 })).toEqual(['5 @ 62.5-72.5 kg']);
  });

  test('of the max that is valid on the day: a later test changes the weeks after it', () => {
    // The test of 9 November gives 110 kg from the day after: 77 → 77.5 in week 3, 73.5 before.
    const more = `session 2026-11-09 ${ATHLETE}\n  test Back Squat: 1 @ 110 kg\n`;
    expect(projectLine('Back Squat: 5 @ 70%', { weeks: 3, more })).toEqual([
      '5 @ 72.5 kg',
      '5 @ 72.5 kg',
      '5 @ 77.5 kg',
    ]);
  });

  test('of the body and what is added, the body taken off again', () => {
    // 95.6 % of 70 = 66.92, with 20 kg 86.92; 90 % = 78.228, less 66.92 = 11.308: plates of 10 and 1.25.
    const more = `session 2026-10-01 ${ATHLETE}\n  test Pull-up: 1 @ bw+20 kg\n`;
    expect(projectLine('Pull-up: 3 @ 90%', { weeks: 1, more })).toEqual(['3 @ bw+11.25 kg']);
  });

  test('of a max of each hand', () => {
    const more = `session 2026-10-01 ${ATHLETE}\n  test Dumbbell Bench Press: 1 @ 2x30 kg\n`;
    expect(projectLine('Dumbbell Bench Press: 8 @ 70%', { weeks: 1, more })).toEqual(['8 @ 2x22 kg']);
  });

  test('say why there is no number', () => {
    expect(projectLine('Hip Thrust: 5 @ 70%', { weeks: 1, explained: true })).toEqual([
      '5 @ 70% (no max of Hip Thrust is known on that day)',
    ]);
  });
});

describe('rounding', () => {
  test.each([
    ['never under the empty bar', 'Back Squat: 5 @ 10%', '5 @ 20 kg (10 % of 105 = 10.5)'],
    ['never past the heaviest', 'Deadlift: 1 @ 110%', '1 @ 137.5 kg (110 % of 140 = 154)'],
    ['what is written and cannot be loaded', 'Back Squat: 5 @ 61 kg', '5 @ 60 kg (61)'],
    ['what can be loaded stays as it is', 'Back Squat: 5 @ 62.5 kg', '5 @ 62.5 kg'],
    ['a band stays a band', 'Band Row: 12 @ red band', '12 @ red band'],
  ])('%s', (_name, line, expected) => {
    expect(projectLine(line, { weeks: 1, explained: true })).toEqual([expected]);
  });

  test('without an inventory, to the usual step', () => {
    const place = 'place Rookery Cellar\n';
    expect(projectLine('Back Squat: 5 @ 70%', { weeks: 1, place })).toEqual(['5 @ 72.5 kg']);
    expect(projectLine('Dumbbell Bench Press: 8 @ 2x21 kg, +1% each week', { weeks: 2, place })).toEqual([
      '8 @ 2x21 kg',
      '8 @ 2x21 kg', // 21.21
    ]);
  });
});

describe('targets', () => {
  // 5 @ 70 kg rpe 8 is 7 effective reps: Epley 70 × 37/30 = 86.33. At 7 reps the seven formulas give 69.61 (Wathan) to
  // 73.48 kg (O'Conner): 70 to 72.5 kg.
  const more = `session 2026-10-20 ${ATHLETE}\n  Bench Press: 5 @ 70 kg rpe 8\n`;

  test('are a load range from the latest estimate', () => {
    expect(projectLine('Bench Press: 5 @ rpe 8', { weeks: 1, more, explained: true })).toEqual([
      '5 @ 70-72.5 kg (rpe 8 of e1RM 86.3)',
    ]);
  });

  test('say that they are a guess, from what, and how wide it is', () => {
    const { days } = project(
      `${PLACE}${PERSON}${more}plan Copper Autumn\n  for ${ATHLETE}\n  at Rookery Cellar\n  starts 2026-11-02\n  day 1\n    Bench Press: 5 @ rpe 8\n`,
    );
    expect(days[0]!.blocks[0]!.lines[0]!.sets[0]!.load!.result).toMatchObject({
      method: 'target-load',
      bound: 'prediction',
      value: 70,
      spread: { low: 70, high: 72.5 },
      inputs: [
        { label: 'max of Bench Press, estimated 2026-10-20', unit: 'kg' },
        { label: 'reps', value: 5 },
        { label: 'rpe', value: 8 },
        { label: 'before rounding', value: 70 },
      ],
    });
  });

  test('move with a step, and a deload takes its share', () => {
    // rpe 9: 6 reps. Lowest Mayhew, 86.33 × (52.2 + 41.9 e^-0.33)/100 = 71.07; highest O’Conner, 86.33/1.15 = 75.07.
    expect(projectLine('Bench Press: 5 @ rpe 8, +0.5 rpe each week', { weeks: 3, more })[2]).toBe(
      '5 @ 70-75 kg',
    );
    expect(
      projectLine('Bench Press: 5 @ rpe 8', { weeks: 1, more, properties: ['deload week 1, load 90%'] }),
    ).toEqual([
      '5 @ 62.5-65 kg', // 62.65 and 66.13
    ]);
  });

  test('are of a stated max, where the last estimate is older than 90 days', () => {
    // From 4 August to 2 November are 90 days.
    const on = (date: string): string =>
      projectLine('Bench Press: 5 @ rpe 8', {
        weeks: 1,
        explained: true,
        more: `  max Bench Press: 100 kg on 2026-01-01\nsession ${date} ${ATHLETE}\n  Bench Press: 5 @ 70 kg rpe 8\n`,
      })[0]!;
    expect(on('2026-08-04')).toMatch(/of e1RM 86\.3\)$/);
    expect(on('2026-08-03')).toMatch(/\(rpe 8 of 100\)$/);
  });

  test('need an estimate, and few enough in reserve', () => {
    expect(projectLine('Bench Press: 5 @ rpe 8', { weeks: 1, explained: true })).toEqual([
      '5 @ rpe 8 (no estimate of Bench Press is known on that day)',
    ]);
    expect(projectLine('Bench Press: 5 @ rpe 4', { weeks: 1, more, explained: true })).toEqual([
      '5 @ rpe 4 (a target needs a number of reps and at most 4 in reserve)',
    ]);
  });
});

describe('steps', () => {
  test.each<[string, string, string[]]>([
    [
      'each cycle of three cells',
      'Pull-up: 5 @ bw+5 kg | 4 @ bw+5 kg | 3 @ bw+5 kg, +2.5 kg each cycle',
      // 90 % of 5 = 4.5: in the middle of a dumbbell of 4 and a plate of 5, up.
      ['5 @ bw+5 kg', '4 @ bw+5 kg', '3 @ bw+5 kg', '5 @ bw+5 kg', '4 @ bw+7.5 kg', '3 @ bw+7.5 kg'],
    ],
    [
      'on help, up',
      'Pull-up: 5 @ bw-20 kg, +10 kg each week',
      ['5 @ bw-20 kg', '5 @ bw-10 kg', '5 @ bw', '5 @ bw', '5 @ bw+10 kg', '5 @ bw+20 kg'],
    ],
    [
      'on unequal hands',
      'Dumbbell Lunge: 6/side @ 20&12 kg, +2 kg each week',
      [
        '6/side @ 20&12 kg',
        '6/side @ 22&14 kg',
        '6/side @ 24&16 kg',
        '6/side @ 22&14 kg',
        '6/side @ 26&18 kg',
        '6/side @ 28&20 kg',
      ],
    ],
    [
      'of a rating',
      'Hip Thrust: 5 @ 80 kg rpe 7, +0.5 rpe each week',
      ['7', '7.5', '8', '8', '8.5', '9'].map(
        (rpe, week) => `5 @ ${week === 3 ? '72.5' : '80'} kg rpe ${rpe}`,
      ),
    ],
    ['of sets', 'Push-up: 2x8, +1 set each week', ['2x8', '3x8', '4x8', '2x8', '5x8', '6x8']],
    [
      'of a range, with its upper end up to the bound',
      'Push-up: 8-12, +1 rep each week to 14',
      ['8-12', '9-13', '10-14', '10-14', '10-14', '10-14'],
    ],
    [
      'of a distance in yards',
      'Farmer Carry: 20 yd @ 2x20 kg, +5 yd each week',
      ['20', '25', '30', '30', '35', '40'].map((yards, week) => `${yards} yd @ 2x${week === 3 ? 18 : 20} kg`),
    ],
    ['never below one rep', 'Push-up: 3, -1 rep each week', ['3', '2', '1', '1', '1', '1']],
  ])('%s', (_name, line, expected) => {
    expect(projectLine(line, DELOAD)).toEqual(expected);
  });
});

describe('a step each session', () => {
  /** Two days that take turns, three a week: `1.1 60`. */
  const loads = (first: string, second: string, more = ''): string[] =>
    project(
      `${PLACE}${PERSON}
plan Copper Autumn
  for ${ATHLETE}
  at Rookery Cellar
  starts 2026-11-02
  weeks 3
  days alternate, 3 a week
${more}  day 1
    ${first}
  day 2
    ${second}
`,
    ).days.map(({ blocks }) => printSets(blocks[0]!.lines[0]!).split('@ ')[1]!);

  const line = 'Back Squat: 3x5 @ 60 kg, +2.5 kg each session';

  test('goes on from day to day, where both write the very same line', () => {
    expect(loads(line, line)).toEqual(
      ['60', '62.5', '65', '67.5', '70', '72.5', '75', '77.5', '80'].map((load) => `${load} kg`),
    );
    expect(loads(line, `A1 ${line.toLowerCase()}`)[8]).toBe('80 kg');
  });

  test('waits in a deload, at the session before it', () => {
    expect(loads(line, line, '  deload week 2, sets 50%\n')).toEqual(
      ['60', '62.5', '65', '65', '65', '65', '67.5', '70', '72.5'].map((load) => `${load} kg`),
    );
  });

  test('is each day’s own, where they differ', () => {
    // Day 1 comes first, third, fifth, …; day 2 in between.
    expect(loads(line, line.replace('3x5', '3x3'))).toEqual(
      ['60', '60', '62.5', '62.5', '65', '65', '67.5', '67.5', '70'].map((load) => `${load} kg`),
    );
  });
});

describe('drops', () => {
  test('go with their set, as far as its bound lets it', () => {
    expect(projectLine('Dumbbell Curl: 10 @ 2x12 kg drop 8 @ 2x8 kg, +2 kg each week to 16', DELOAD)).toEqual(
      [
        '10 @ 2x12 kg drop 8 @ 2x8 kg',
        '10 @ 2x14 kg drop 8 @ 2x10 kg',
        '10 @ 2x16 kg drop 8 @ 2x12 kg',
        '10 @ 2x14 kg drop 8 @ 2x10 kg', // 90 % of 16 = 14.4, of 12 = 10.8 → 10 is 0.8 off, 12 is 1.2
        '10 @ 2x16 kg drop 8 @ 2x12 kg',
        '10 @ 2x16 kg drop 8 @ 2x12 kg',
      ],
    );
    expect(
      projectLine('Dumbbell Curl: 10 @ 2x12 kg drop 8 @ 2x8 kg, +1 rep each week to 12', { weeks: 4 }),
    ).toEqual(
      ['10|8', '11|9', '12|10', '12|10'].map((reps) => {
        const [first, second] = reps.split('|');
        return `${first} @ 2x12 kg drop ${second} @ 2x8 kg`;
      }),
    );
  });

  test('are loaded as sets are', () => {
    // 75 % of 105 = 78.75 → 80, 55 % = 57.75 → 57.5; 20 % off 78.75 = 63; 46 → 45; the drop’s range is a range.
    expect(
      [
        'Back Squat: 5 @ 75% drop 8 @ 55%',
        'Back Squat: 5 @ 75% drop 8 @ -20%',
        'Back Squat: 8 @ 60 kg drop 8-10 @ 46 kg',
      ].map((line) => projectLine(line, { weeks: 1, explained: true })[0]),
    ).toEqual([
      '5 @ 80 kg drop 8 @ 57.5 kg (75 % of 105 = 78.75, 55 % of 105 = 57.75)',
      '5 @ 80 kg drop 8 @ 62.5 kg (75 % of 105 = 78.75, 20 % off the top set = 63)',
      '8 @ 60 kg drop 8-10 @ 45 kg (46)',
    ]);
    expect(projectLine('Hip Thrust: 5 @ 80 kg drop 8 @ 50%', { weeks: 1, explained: true })).toEqual([
      '5 @ 80 kg drop 8 @ 50% (no max of Hip Thrust is known on that day)',
    ]);
  });
});

// Whatever a plan says, some things hold.
describe('in any plan', () => {
  const lines = [
    'Back Squat: 3x5 @ 70% | 4x4 @ 75%, +2.5% each week',
    'Front Squat: 4x6 @ 60 kg, +2.5 kg each session to 70 kg',
    'Bench Press: 5 @ rpe 8, 3x5 @ -10%',
    'Push-up: 8, +1 rep each week to 10, then +2.5 kg from 8',
    'Plank: 2x30 s, +5 s each cycle',
    'Deadlift: 5+ @ 80%, after 2 misses -10%',
  ];
  const more = `session 2026-10-20 ${ATHLETE}\n  Bench Press: 5 @ 70 kg rpe 8\n`;

  test.each(lines)('so many weeks are the beginning of one more: %s', (line) => {
    for (let weeks = 1; weeks < 12; weeks++) {
      const properties = ['deload week 3, sets 60%, load 85%'];
      const [shorter, longer] = [weeks, weeks + 1].map((count) =>
        projectLine(line, { weeks: count, more, properties }),
      );
      expect(longer!.slice(0, weeks)).toEqual(shorter);
    }
  });

  test.each([
    'Front Squat: 4x6 @ 60 kg',
    'Back Squat: 3x5 @ 70% | 4x4 @ 75%',
    'Push-up: 8-12',
    'Plank: 2x30 s',
    'Pull-up: 5 @ bw+5 kg',
    'Bench Press: 5 @ rpe 7-8',
  ])('steps of nothing change nothing: %s', (line) => {
    const plain = projectLine(line, { more });
    for (const step of [
      '+0 kg each week',
      '+0% each week',
      '+0 rep each session',
      '+0 s each week',
      '+0 set each week',
      '+0 rpe each cycle',
    ])
      expect(projectLine(`${line}, ${step}`, { more })).toEqual(plain);
  });

  test('a deload of all sets and all load is an ordinary week, but takes no step', () => {
    const deload = ['deload week 3, sets 100%, load 100%'];
    expect(projectLine('Back Squat: 3x5 @ 70% | 4x4 @ 75%', { properties: deload })).toEqual(
      projectLine('Back Squat: 3x5 @ 70% | 4x4 @ 75%'),
    );
    expect(projectLine('Push-up: 8, +1 rep each week', { properties: deload, weeks: 4 })).toEqual([
      '8',
      '9',
      '9',
      '10',
    ]);
  });
});

describe('a deload', () => {
  test('leaves warm-ups and tests as they are', () => {
    const properties = ['deload week 1, sets 50%, load 90%'];
    expect(projectLine('test Back Squat: 1 @ 100%', { weeks: 1, properties })).toEqual(['1 @ 105 kg']);
    expect(projectLine('warmup Back Squat: 5 @ 40, 5 @ 60 kg', { weeks: 1, properties })).toEqual([
      '5 @ 40 kg, 5 @ 60 kg',
    ]);
  });

  test('takes its share of what steps made', () => {
    const properties = ['deload week 3, load 90%'];
    expect(
      projectLine('Back Squat: 5 @ 60 kg, +5 kg each week', { weeks: 3, properties, explained: true })[2],
    ).toBe('5 @ 57.5 kg (90 % of (60 + 5) = 58.5)');
  });
});
