import type { FeatureContext } from '@plimsoll/server/features/context';
import { provideHover } from '@plimsoll/server/features/hover';
import { beforeAll, describe, expect, test } from 'vitest';
import { readCursor } from '../support/at-cursor.ts';
import { createContext } from '../support/feature-context.ts';

const practiceText = `exercise Net *Haul*
  pattern horizontal pull
  work strength
  position standing
  trunk resists flexion
  muscles lats, biceps 1/2
  needs barbell
  also Crate_Haul
  easier Inverted Row
  bodyweight 40%, harbour <trials>
  setup Rope #2 on the mat
  cue In this order: hips, ribs
  caution Stop when the back rounds

place Saltglass Loft
  bars 20 kg, 10 kg
  plates 6x20, 2x15, 4x10, 4x5, 4x2.5, 4x1.25 kg
  collars 1 kg
  dumbbells 4-40 by 2 kg pairs
  stacks cable 5-60 by 1.25 kg
  has bench, rope

place Quillmere Hall
  bars 45 lb
  plates 2x45, 2x35, 4x10, 2x2.5 lb

athlete Quill Harrow
  born 1991
  bodyweight 80.5 kg on 2026-10-01
  max Back Squat: 140 kg on 2026-09-01
  retest Dip: 20 kg, 21 kg on 2026-09-03
  avoid vertical push until 2026-12-15, left shoulder
  avoid Dip until 2026-01-31
  goal Pull-up: 5 @ bw by 2027-01-01

athlete Bev Stromm

plan Ebb
  for Quill Harrow
  at Saltglass Loft
  starts 2026-11-02
  weeks 4
  days Mon, Thu
  deload week 4, sets 50%
  day 1 Squat
    Back Squat: 3x5 @ 70%
  day 2 Pull
    Pull-up: 3x5
`;

const earlier = `session 2026-10-06 Quill Harrow at Saltglass Loft
  warmup Back Squat: 5 @ 200 kg
  Back Squat: 5, 3 of 4 @ 105 kg rpe 9

session 2026-10-13 Quill Harrow at Saltglass Loft
  Barbell Back Squat: 5 @ 100, 2x3 @ 105 kg

session 2026-10-20 Quill Harrow | Bev Stromm at Saltglass Loft
  Back Squat: 5 @ 90 kg | 5 @ 40 kg
`;

let context: FeatureContext;
beforeAll(() => {
  context = createContext({ 'practice.plim': practiceText, 'earlier.plim': earlier });
});

/** What the hover at the cursor says, in a file read for this row alone. */
function hover(marked: string, at: FeatureContext = context): string | undefined {
  const { text, ...position } = readCursor(marked);
  at.practice.setFile('now.plim', text);
  const found = provideHover(at, 'now.plim', position);
  at.practice.removeFile('now.plim');
  return (found?.contents as { value: string } | undefined)?.value;
}

const session = (line: string, header = 'session 2026-11-03 Quill Harrow at Saltglass Loft') =>
  `${header}\n  ${line}\n`;

describe('a load', () => {
  test.each([
    ['in both units', 'Deadlift: 5 @ 8<|>5 lb', '**38.56 kg = 85 lb**'],
    [
      'and plates on each side',
      'Back Squat: 5 @ 1<|>06 kg',
      'At Saltglass Loft: 20 kg bar, each side 20 + 20 + 2.5 kg',
    ],
    ['of a bar alone', 'Back Squat: 5 @ <|>21 kg', 'At Saltglass Loft: empty 20 kg bar'],
    [
      'that cannot be made',
      'Back Squat: 5 @ 25<|> kg',
      'not to be made exactly; nearest 23.5 kg (20 kg bar, each side 1.25 kg) or 26 kg (20 kg bar, each side 2.5 kg)',
    ],
    [
      'of two implements',
      'Farmer Carry: 30 m @ 2x<|>18 kg',
      '**36 kg = 79.4 lb** together; each 18 kg = 39.7 lb',
    ],
    [
      'of two unequal ones',
      'Farmer Carry: 30 m @ <|>24&16 kg',
      '**40 kg = 88.2 lb** together; 24 kg = 52.9 lb in one hand, 16 kg = 35.3 lb in the other',
    ],
    [
      'with a chain',
      'Back Squat: 5 @ <|>81 kg + 20 kg chain',
      'with 20 kg = 44.1 lb of chain, which enters no volume',
    ],
    ['added to the body', 'Dip: 5 @ <|>bw+10 kg', 'Body weight and 10 kg = 22 lb added'],
    ['taken off the body', 'Dip: 5 @ <|>bw-10 kg', 'Body weight with 10 kg = 22 lb of help'],
    ['of a pin', 'Leg Extension: 5 @ <|>pin 9', 'a pin has no kilograms'],
    ['of a drop', 'Dumbbell Curl: 12 @ 2x18 kg <|>drop 8 @ 2x14 kg', '**28 kg = 61.7 lb** together'],
    ['that a jump is set to', 'Box Jump: 3 @ <|>60 cm', '60 cm high'],
    ['that a rower is set to', 'Rower: 500 m @ <|>2:05/500 m', '2:05 for 500 m'],
    ['nobody noted', 'Deadlift: 5 @ <|>?', 'The load was not recorded'],
  ])('%s', (_name, line, expected) => {
    expect(hover(session(line))).toContain(expected);
  });

  test('in pounds at a place that weighs in pounds', () => {
    const header = 'session 2026-11-03 Bev Stromm at Quillmere Hall';
    expect(hover(session('Back Squat: 5 @ <|>140 lb', header))).toContain(
      'At Quillmere Hall: 45 lb bar, each side 45 + 2.5 lb',
    );
  });

  test('of a plan', () => {
    const plan = (line: string) => `plan Tide\n  for Quill Harrow\n  day 1\n    ${line}\n`;
    expect(hover(plan('Back Squat: 5 @ <|>70-75% of Front Squat'))).toBe(
      [
        '70 to 75 % of the max of Front Squat that is valid on the day  ',
        // Epley: 30 x (1 / 0.75 - 1) = 10.
        'Reps to failure: NSCA chart 10 (75 %), Epley 10\n',
        '| Week | Back Squat |',
        '| --- | --- |',
        '| 1 | 5 @ 70-75% of Front Squat (no max of Front Squat is known on that day) |',
      ].join('\n'),
    );
    // Epley: 30 x (1 / 0.86 - 1) = 4.9; the row above 86 % is that of 5 reps.
    expect(hover(plan('Back Squat: 5 @ <|>86%'))).toContain(
      'Reps to failure: NSCA chart 5 (87 %), Epley 4.9',
    );
    // 30 x (1 / 0.67 - 1) = 14.8, below the chart; at 50 % 30 reps are no strength to speak of.
    expect(hover(plan('Back Squat: 5 @ <|>67%'))).toContain('Reps to failure: Epley 14.8');
    expect(hover(plan('Back Squat: 5 @ <|>50%'))).not.toContain('Reps to failure');
    expect(hover(plan('Back Squat: 5 @ <|>rpe 8'))).toContain('the set ends at RPE 8');
  });
});

describe('a rating', () => {
  test.each([
    ['rpe <|>8', '**RPE 8** = RIR 2  \n2 reps left'],
    ['rpe <|>8.5', '**RPE 8.5** = RIR 1.5  \n1 to 2 reps left'],
    ['rpe <|>4', '**RPE 4**  \nLight effort'],
    ['rir <|>2', '**RIR 2: reps in reserve** = RPE 8  \n2 reps left'],
    ['hr <|>148', 'Heart rate: 148 beats a minute'],
    ['v <|>0.45 m/s', 'Bar velocity: 0.45 m/s'],
  ])('%s', (rating, expected) => {
    expect(hover(session(`Back Squat: 5 @ 60 kg ${rating}`))?.toLowerCase()).toContain(
      expected.toLowerCase(),
    );
  });
});

describe('an amount', () => {
  test.each([
    ['10<|>/side', '20 reps in all, both sides counted; one set'],
    ['8 left <|>7 right', '15 reps in all, both sides counted; one set'],
    ['4 <|>of 5', '4 made, one more tried and failed; the reps made count'],
    ['(2+2+<|>2 rest 20 s)', 'One set in 3 parts, 0:20 rest between them: 6 reps in all'],
    ['20 <|>yd', '18.3 m'],
    ['skipped<|>', 'Planned, not done: counts as nothing done'],
    ['<|>?', 'Not recorded: totals with it are "at least"'],
  ])('%s', (amount, expected) => {
    expect(hover(session(`Split Squat: ${amount}`))).toBe(expected);
  });

  test('of plain reps is what it says', () => {
    expect(hover(session('Split Squat: <|>5'))).toBe('5 reps');
  });
});

describe('a date', () => {
  test('has its week, its distance, and the days since the last session of each athlete', () => {
    expect(hover('session 2026-<|>11-03 Quill Harrow | Bev Stromm\n')).toBe(
      '**Tuesday, week 2026-W45** · 21 days ago  \n' +
        'Quill Harrow: 14 days after the session of 2026-10-20  \n' +
        'Bev Stromm: 14 days after the session of 2026-10-20',
    );
  });

  test('is so long after the last session that was trained, not after one that was missed', () => {
    const before = 'session 2026-11-01 Ann Vell\n  Push-up: 5\n\nsession 2026-11-10 Ann Vell\n  missed\n\n';
    expect(hover(`${before}session 2026-<|>11-25 Ann Vell\n  Push-up: 5\n`)).toContain(
      'Ann Vell: 24 days after the session of 2026-11-01',
    );
  });

  test('of a first session says so', () => {
    expect(hover('session 2026-<|>11-24 Ann Vell\n')).toBe(
      '**Tuesday, week 2026-W48** · today  \nAnn Vell: the first session',
    );
  });

  test('waits for history', () => {
    const loading = createContext({}, { complete: false });
    expect(hover('session 2026-<|>11-25 Ann Vell\n', loading)).toBe(
      '**Wednesday, week 2026-W48** · in 1 day  \nAnn Vell: history loading…',
    );
  });
});

describe('a movement', () => {
  test("is shown as defined, with a coach's words taken as words", () => {
    expect(hover('exercise Net Haul Twice\n  easier Net *Ha<|>ul*\n')).toBe(
      [
        '**Net \\*Haul\\***',
        [
          'horizontal pull · strength · standing',
          'Trunk: resists flexion',
          'Muscles: lats',
          'Indirectly: biceps 1/2',
          'Needs: barbell',
          'Body mass that counts: 40 % (harbour \\<trials\\>)',
          'Also called: Crate\\_Haul',
          'Easier: Inverted Row',
        ].join('  \n'),
        [
          'Setup: Rope \\#2 on the mat',
          'Cue: In this order: hips, ribs',
          '**Caution:** Stop when the back rounds',
        ].join('  \n'),
      ].join('\n\n'),
    );
  });

  test('has the last times of this athlete as written, and the best', () => {
    const text = hover(session('Back Sq<|>uat: 5 @ 100 kg'));
    expect(text).toContain('**Back Squat**');
    expect(text).toContain('built in');
    expect(text).toContain('**Caution:**');
    expect(text?.split('\n\n').slice(-4)).toEqual([
      'Last times, Quill Harrow:',
      [
        '- 2026-10-20 (14 days before): 5 @ 90 kg',
        '- 2026-10-13 (21 days before): 5 @ 100, 2x3 @ 105 kg',
        '- 2026-10-06 (28 days before): 5, 3 of 4 @ 105 kg rpe 9',
      ].join('\n'),
      'Best: 5 @ 105 kg on 2026-10-06',
      // The NSCA Training Load Chart's 95, 93, 87, 80, 75 and 70 % of 140 kg.
      'Best sets: 5 @ 105 kg  \nMax 140 kg (stated on 2026-09-01)  \nBy the NSCA chart: 2 reps 133, 3 reps 130.2, 5 reps 121.8, 8 reps 112, 10 reps 105, 12 reps 98 kg',
    ]);
  });

  test('in a group is that of the cell, before this session only', () => {
    const text = hover(
      'session 2026-10-27 Quill Harrow | Bev Stromm\n  Back Sq<|>uat: 5 @ 90 kg | 5 @ 42.5 kg\n',
    );
    expect(text).toContain('Last times, Quill Harrow:');
    expect(hover('session 2026-10-01 Quill Harrow\n  Back S<|>quat: 5\n')).toContain(
      'Last times, Quill Harrow: none before this session',
    );
  });

  test('of a plan has the latest times of its athlete', () => {
    const text = hover('plan Tide\n  for Bev Stromm\n  day 1\n    Back Sq<|>uat: 5 @ 70%\n');
    expect(text).toContain('- 2026-10-20: 5 @ 40 kg');
  });

  test('that nothing defines says so, and has its history', () => {
    expect(hover(session('Harbour <|>Hop: 5'))).toBe(
      '**Harbour Hop** · not defined here or built in\n\nLast times, Quill Harrow: none before this session',
    );
  });

  test('shows no history while it is being read', () => {
    const loading = createContext({ 'earlier.plim': earlier }, { complete: false });
    expect(hover(session('Back Sq<|>uat: 5'), loading)?.split('\n\n').at(-1)).toBe('*History loading…*');
  });
});

describe('a name', () => {
  test('of an athlete', () => {
    expect(hover('session 2026-11-03 Quill Har<|>row\n')).toBe(
      [
        '**Quill Harrow**',
        '**Avoid** vertical push (until 2026-12-15, left shoulder)',
        'Body mass: 80.5 kg on 2026-10-01  \nMax Back Squat: 140 kg on 2026-09-01  \nRetest Dip: 20 kg, 21 kg on 2026-09-03  \nGoal: Pull-up 5 @ bw by 2027-01-01',
        '4 sessions, the last on 2026-11-03',
        'Volume a week: ▅█▁ 840, 1 130, 450 kg (5 Oct to 19 Oct)',
      ].join('\n\n'),
    );
  });

  test('of a place', () => {
    expect(hover(session('Dip: 5', 'session 2026-11-03 Bev Stromm at Salt<|>glass Loft'))).toBe(
      '**Saltglass Loft**\n\n' +
        [
          'Bars: 20 kg, 10 kg',
          'Plates: 6x20 kg, 2x15 kg, 4x10 kg, 4x5 kg, 4x2.5 kg, 4x1.25 kg',
          'Collars: 1 kg',
          'Dumbbells: 4 to 40 kg by 2 kg, pairs',
          'cable: 5 to 60 kg by 1.25 kg',
          'Has: bench, rope',
        ].join('  \n'),
    );
    expect(hover('session 2026-11-03 Bev Stromm at Now<|>here\n')).toContain('no entry of its own');
  });

  test('of a plan', () => {
    expect(hover('session 2026-11-03 Quill Harrow, E<|>bb week 1 day 1\n')).toBe(
      [
        '**Ebb**\n\nfor Quill Harrow at Saltglass Loft  \n4 weeks · from 2026-11-02 · Mon, Thu · deload week 4  \nDay 1: Squat  \nDay 2: Pull\n',
        '| Week | Sets | Volume | Hard sets |',
        '| --- | --- | --- | --- |',
        '| 1 | 6 | 2 632 kg incl. body | glutes 3, lats 3, quadriceps 3, adductors 1.5 |',
        '| 2 | 6 | 2 632 kg incl. body | glutes 3, lats 3, quadriceps 3, adductors 1.5 |',
        '| 3 | 6 | 2 632 kg incl. body | glutes 3, lats 3, quadriceps 3, adductors 1.5 |',
        '| 4, deload | 4 | 1 755 kg incl. body | glutes 2, lats 2, quadriceps 2, adductors 1 |',
      ].join('\n'),
    );
  });

  test('that a session names, with what was done of each line', () => {
    const text = hover(
      'session 2026-11-03 Quill Harrow, Fl<|>ood week 1 day 1\n  Front Squat: 3, 3, 2 @ 57.5 kg\n\nplan Flood\n  for Quill Harrow\n  weeks 1\n  day 1\n    Front Squat: 3x3 @ 60 kg\n    Plank: 2x30 s\n',
    );
    expect(text).toContain(
      [
        'Done of what was planned:\n',
        '|  | Sets | Reps | kg | Heaviest, kg |',
        '| --- | --- | --- | --- | --- |',
        '| Front Squat | 3 of 3 | 8 of 9 | 460 of 540 | 57.5 of 60 |',
        '| Plank | 0 of 2 |  |  |  |',
      ].join('\n'),
    );
  });
});

describe('a word', () => {
  test.each([
    ['sess<|>ion 2026-11-03 Quill Harrow\n', 'What was done on a day'],
    ['session 2026-11-03\n  eff<|>ort 7\n', 'How hard the whole session was'],
    ['session 2026-11-03\n  B cir<|>cuit, 4 rounds\n    Dip: 5\n', 'round by round'],
    ['session 2026-11-03\n  Dip: 5, temp<|>o 3-1-X-0\n', 'X is as fast as possible'],
    ['session 2026-11-03\n  warm<|>up Dip: 5\n', 'outside working volume'],
    ['exercise Tide Plank\n  cu<|>e Hips level\n', 'What the coach says'],
    ['exercise Tide Plank\n  patt<|>ern trunk\n', 'What kind of movement it is'],
    ['athlete Ann Vell\n  av<|>oid Dip\n', 'never blocks'],
  ])('%s', (text, expected) => {
    expect(hover(text)).toContain(expected);
  });
});

describe('a series', () => {
  const round = (date: string, load: number, times: string) => `session ${date} Quill Harrow
  A straight
    Deadlift: 3 @ ${load} kg rpe 8
  B circuit, 2 rounds, rest 1:00
    Goblet Squat: 10 @ 20 kg
    Push-up: 10
    time ${times}
`;
  const loaded = (options = {}) =>
    createContext(
      {
        'practice.plim': practiceText,
        'a.plim': round('2026-11-02', 100, '2:00, 2:00'),
        'b.plim': round('2026-11-09', 105, '1:50, 1:50'),
      },
      options,
    );

  test('of estimated maxes is drawn behind a movement, with its numbers', () => {
    const text = hover('session 2026-11-16 Quill Harrow\n  Dead<|>lift: 3 @ 105 kg\n', loaded());
    // Epley: 100 kg and 105 kg for 3 reps with 2 in reserve, times 1 + 5 / 30.
    expect(text?.split('\n\n').at(-1)).toBe('Estimated max: ▁█ 116.7, 122.5 kg (2 Nov to 9 Nov)');
  });

  test('of densities is drawn behind a block', () => {
    const text = hover(
      'session 2026-11-16 Quill Harrow\n  B cir<|>cuit, 2 rounds, rest 1:00\n    Goblet Squat: 10 @ 20 kg\n    Push-up: 10\n',
      loaded(),
    );
    expect(text?.split('\n\n').at(-1)).toMatch(/^Density: ▁█ [\d.]+, [\d.]+ kg\/min \(2 Nov to 9 Nov\)$/);
  });

  test('of rounds stands behind a block, each against the last time, with its pace', () => {
    const earlier = {
      'practice.plim': practiceText,
      'a.plim': round('2026-11-02', 100, '2:00, 2:00'),
    };
    const text = hover(
      round('2026-11-09', 105, '1:50, 2:04').replace('B circuit', 'B cir<|>cuit'),
      createContext(earlier),
    );
    expect(text).toContain(
      'Round by round: since 2 Nov: round 1 -10 s (density +9 %), round 2 +4 s (density -3 %)',
    );
    // 1:50 and 2:04 with one rest of a minute between them.
    expect(text).toContain('Pace: work : rest 3.9 (3:54 : 1:00)');
  });

  test('of weeks and weigh-ins is drawn behind an athlete', () => {
    const text = hover('session 2026-11-16 Quill Har<|>row\n', loaded());
    expect(text?.split('\n\n').at(-1)).toMatch(/^Volume a week: ▁█ [\d ]+, [\d ]+ kg \(2 Nov to 9 Nov\)$/);
  });

  test('waits for history', () => {
    const text = hover('session 2026-11-16 Quill Har<|>row\n', loaded({ complete: false }));
    expect(text).not.toContain('Volume');
  });
});
