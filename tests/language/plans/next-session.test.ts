import { describe, expect, test } from 'vitest';
import type { IsoDate } from '../../../language/src/calendar/iso-date.ts';
import { checkFile } from '../../../language/src/checks/check-file.ts';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { toInsertion, writeNextSession } from '../../../language/src/plans/next-session.ts';
import { ATHLETE, PERSON, PLACE } from './project-text.ts';

const LOG = 'file:///logs/hesper/2026-11.plim';

interface Case {
  readonly today?: IsoDate;
  /** What stands in the plan's one day, a line each. */
  readonly plan?: readonly string[];
  readonly properties?: readonly string[];
  readonly person?: readonly string[];
  /** Sessions, oldest first: a header's date and rest, and its lines. */
  readonly log?: readonly (readonly [header: string, ...lines: string[]])[];
}

function open({ plan, properties = ['weeks 6'], person = [], log = [] }: Case) {
  const practice = createPractice();
  const written = plan
    ? [
        'plan Copper Autumn',
        `  for ${ATHLETE}`,
        '  at Rookery Cellar',
        '  starts 2026-11-02',
        ...properties.map((line) => `  ${line}`),
        '  day 1',
        ...plan.map((line) => `    ${line}`),
      ]
    : [];
  practice.setFile(
    'file:///logs/practice.plim',
    [PLACE, PERSON + person.map((line) => `  ${line}\n`).join(''), ...written].join('\n'),
  );
  const sessions = log.map(([header, ...lines]) => {
    const [date, slot] = header.split(' ');
    const start = `session ${date} ${ATHLETE} at Rookery Cellar${slot ? `, Copper Autumn week ${slot} day 1` : ''}`;
    return [start, ...lines.map((line) => `  ${line}`)].join('\n');
  });
  if (sessions.length > 0) practice.setFile(LOG, `${sessions.join('\n\n')}\n`);
  return { practice, works: new SessionWorks(practice) };
}

function next(example: Case): string[] {
  const { works } = open(example);
  const found = writeNextSession(works, {
    athlete: 'hesper quillon',
    today: example.today ?? '2026-11-09',
    unit: 'kg',
    formula: 'epley',
  });
  if ('refused' in found) return [found.refused];
  // What is written must be a session that can be read, and asks for nothing that a session cannot have.
  const practice = works.practice;
  practice.setFile('file:///logs/next.plim', `${found.text}\n`);
  const problems = checkFile(practice, 'file:///logs/next.plim', { today: '2027-12-31' });
  expect(
    problems
      .filter(({ problem }) => ['error', 'warning'].includes(problem.severity))
      .map(({ problem }) => problem.message),
  ).toEqual([]);
  return found.text.split('\n');
}

const HEADER = (date: string, week: number) =>
  `session ${date} ${ATHLETE} at Rookery Cellar, Copper Autumn week ${week} day 1`;

describe('from the plan', () => {
  test('the first day, on its date, with loads worked out', () => {
    expect(
      next({
        today: '2026-10-28',
        plan: [
          'A straight, rest 2:00-3:00',
          '  warmup Back Squat: 5 @ 40 kg',
          '  Back Squat: 3x5 @ 70% | 4x4 @ 75%',
          'B circuit, 3 rounds, rest 1:30',
          '  Push-up: 10, +1 rep each week',
          '  rest 0:20',
          '  Plank: 30 s',
        ],
      }),
    ).toEqual([
      HEADER('2026-11-02', 1),
      '  A straight, rest 2:00',
      '    warmup Back Squat: 5 @ 40 kg',
      '    Back Squat: 3x5 @ 72.5 kg',
      '  B circuit, 3 rounds, rest 1:30',
      '    Push-up: 10',
      '    rest 0:20',
      '    Plank: 30 s',
    ]);
  });

  test('the day behind the last that was logged, a missed one too', () => {
    const plan = ['Push-up: 10, +1 rep each week'];
    expect(next({ plan, log: [['2026-11-02 1', 'Push-up: 10']] })).toEqual([
      HEADER('2026-11-09', 2),
      '  Push-up: 11',
    ]);
    expect(next({ plan, log: [['2026-11-02 1', 'missed, cold']] })[0]).toBe(HEADER('2026-11-09', 2));
  });

  test('late, today; and never on a day that has its session', () => {
    const plan = ['Push-up: 10'];
    expect(next({ plan, today: '2026-11-11', log: [['2026-11-02 1', 'Push-up: 10']] })[0]).toBe(
      HEADER('2026-11-11', 2),
    );
    expect(next({ plan, today: '2026-11-09', log: [['2026-11-09 1', 'Push-up: 10']] })[0]).toBe(
      HEADER('2026-11-10', 2),
    );
  });

  test('not while away', () => {
    expect(
      next({
        plan: ['Push-up: 10'],
        person: ['away 2026-11-08 to 2026-11-12, at a fair'],
        log: [['2026-11-02 1', 'Push-up: 10']],
      }).slice(0, 2),
    ).toEqual([HEADER('2026-11-13', 2), '  > Away until 2026-11-12 (at a fair), so the day after']);
  });

  test('in a deload', () => {
    expect(
      next({
        today: '2026-10-28',
        plan: ['Back Squat: 4x5 @ 80 kg'],
        properties: ['weeks 2', 'deload week 1, sets 50%, load 90%'],
      }),
    ).toEqual([HEADER('2026-11-02', 1), '  > Deload, sets 50 %, load 90 %', '  Back Squat: 2x5 @ 72.5 kg']);
  });

  test('what the plan leaves open is a number or a question mark, and said', () => {
    expect(
      next({
        today: '2026-10-28',
        plan: [
          'Push-up: 8-12',
          'Dip: amrap',
          'Back Squat: 5+ @ 60-70 kg',
          'Hip Thrust: 5 @ 70%',
          'Row: 8 @ 40 kg rpe 7-8',
        ].slice(0, 4),
      }),
    ).toEqual([
      HEADER('2026-11-02', 1),
      '  Push-up: 8',
      '  > 8-12 in the plan',
      '  Dip: ?',
      '  > As many as possible',
      '  Back Squat: 5 @ 60 kg',
      '  > 5+ in the plan: as many as are good',
      '  > 60-70 kg in the plan',
      '  Hip Thrust: 5 @ ?',
      '  > 70% in the plan, and no max of Hip Thrust is known on that day',
    ]);
  });

  test('an effort that is asked for is a note, not a fact', () => {
    expect(next({ today: '2026-10-28', plan: ['Back Squat: 3x5 @ 60 kg rpe 7'] }).slice(1)).toEqual([
      '  Back Squat: 3x5 @ 60 kg',
      '  > rpe 7 in the plan',
    ]);
  });

  test('a target is the middle of its range', () => {
    // 70 kg for 5 at rpe 8 (see the projection): 70 to 72.5 kg, by Epley 70.
    expect(
      next({
        plan: ['Bench Press: 5 @ rpe 8, 2x5 @ -10%'],
        log: [['2026-11-02 1', 'Bench Press: 5 @ 70 kg rpe 8']],
      }).slice(1),
    ).toEqual([
      '  Bench Press: 5 @ 70 kg, 2x5 @ 62.5 kg',
      '  > rpe 8 of e1RM 86.3: 70-72.5 kg, the middle is written',
    ]);
  });

  test('movements to avoid are left out, and the reason stands there', () => {
    const example: Case = {
      today: '2026-10-28',
      person: ['avoid vertical push until 2026-12-15, left shoulder'],
      plan: [
        'A straight',
        '  Overhead Press: 3x5 @ 30 kg',
        'B superset, 3 rounds',
        '  Push-up: 10',
        '  Overhead Press: 8 @ 25 kg',
      ],
    };
    expect(next(example)).toEqual([
      HEADER('2026-11-02', 1),
      '  > Overhead Press left out: to avoid vertical push until 2026-12-15 (left shoulder)',
      '  B superset, 3 rounds',
      '    Push-up: 10',
      '    > Overhead Press left out: to avoid vertical push until 2026-12-15 (left shoulder)',
    ]);
    expect(next({ ...example, person: ['avoid vertical push until 2026-11-01'] })).toHaveLength(6);
  });
});

describe('double progression', () => {
  const plan = ['Goblet Squat: 3x8-12 @ 20 kg, then +2 kg from 8'];
  const writeAfter = (...sets: string[]) =>
    next({
      plan,
      log: sets.map((line, index) => [`2026-11-0${2 + index} 1`, `Goblet Squat: ${line}`] as const),
    }).slice(1);

  test('begins as written', () => {
    expect(next({ plan, today: '2026-10-28' }).slice(1)).toEqual([
      '  Goblet Squat: 3x8 @ 20 kg',
      '  > 8-12 in the plan',
    ]);
  });

  test.each<[string, string, string[]]>([
    [
      'one rep more in each set',
      '10, 9, 8 @ 20 kg',
      ['  Goblet Squat: 11, 10, 9 @ 20 kg', '  > 8-12 in the plan; 10, 9, 8 @ 20 kg on 2026-11-02'],
    ],
    [
      'up to the top',
      '12, 12, 11 @ 20 kg',
      ['  Goblet Squat: 3x12 @ 20 kg', '  > 8-12 in the plan; 12, 12, 11 @ 20 kg on 2026-11-02'],
    ],
    [
      'and when every set is there, the load',
      '3x12 @ 20 kg',
      ['  Goblet Squat: 3x8 @ 22 kg', '  > All sets at the top of 8-12 (3x12 @ 20 kg on 2026-11-02): +2 kg'],
    ],
    [
      'from what was really lifted',
      '3x12 @ 24 kg',
      ['  Goblet Squat: 3x8 @ 26 kg', '  > All sets at the top of 8-12 (3x12 @ 24 kg on 2026-11-02): +2 kg'],
    ],
    [
      'two sets at the top are not three',
      '2x12 @ 20 kg',
      ['  Goblet Squat: 12, 12, 8 @ 20 kg', '  > 8-12 in the plan; 2x12 @ 20 kg on 2026-11-02'],
    ],
  ])('%s', (_name, done, expected) => {
    expect(writeAfter(done)).toEqual(expected);
  });

  test('a step smaller than the plates of the place is not lost', () => {
    const bar = ['Front Squat: 3x8-10 @ 40 kg, then +1 kg from 8'];
    expect(next({ plan: bar, log: [['2026-11-02 1', 'Front Squat: 3x10 @ 40 kg']] })[1]).toBe(
      '  Front Squat: 3x8 @ 42.5 kg',
    );
  });

  test('waits in a deload', () => {
    expect(
      next({
        plan,
        properties: ['weeks 4', 'deload week 2, sets 50%, load 90%'],
        log: [['2026-11-02 1', 'Goblet Squat: 3x12 @ 20 kg']],
      }).slice(2),
    ).toEqual([
      '  Goblet Squat: 2x8 @ 18 kg',
      '  > 3x12 @ 20 kg on 2026-11-02: ready for +2 kg, which waits',
    ]);
  });

  test('goes on after a deload from the session before it', () => {
    expect(
      next({
        plan,
        today: '2026-11-16',
        properties: ['weeks 4', 'deload week 2, sets 50%, load 90%'],
        log: [
          ['2026-11-02 1', 'Goblet Squat: 3x12 @ 20 kg'],
          ['2026-11-09 2', 'Goblet Squat: 2x8 @ 18 kg'],
        ],
      })[1],
    ).toBe('  Goblet Squat: 3x8 @ 22 kg');
  });
});

describe('a stall rule', () => {
  const plan = ['Overhead Press: 3x5 @ 40 kg, +2.5 kg each week, after 2 misses -10%'];
  const weeks = (...sets: string[]) =>
    next({
      plan,
      today: `2026-11-${String(2 + 7 * sets.length).padStart(2, '0')}` as IsoDate,
      log: sets.map(
        (line, index) =>
          [
            `2026-11-${String(2 + 7 * index).padStart(2, '0')} ${index + 1}`,
            `Overhead Press: ${line}`,
          ] as const,
      ),
    }).slice(1);

  test('up after a session that was made', () => {
    expect(weeks('3x5 @ 40 kg')).toEqual(['  Overhead Press: 3x5 @ 42.5 kg']);
  });

  test('from what was lifted, not from the calendar', () => {
    expect(weeks('3x5 @ 40 kg', '5, 5, 4 @ 42.5 kg', '3x5 @ 42.5 kg')).toEqual([
      '  Overhead Press: 3x5 @ 45 kg',
    ]);
  });

  test('the same after a miss', () => {
    expect(weeks('3x5 @ 40 kg', '5, 5, 4 @ 42.5 kg')).toEqual([
      '  Overhead Press: 3x5 @ 42.5 kg',
      '  > 1 miss (5, 5, 4 @ 42.5 kg on 2026-11-09): the same load again',
    ]);
  });

  test('down after so many in a row', () => {
    // 90 % of 42.5 = 38.25 → 37.5.
    expect(weeks('5, 5, 3 @ 42.5 kg', '5, 4, 4 @ 42.5 kg')).toEqual([
      '  Overhead Press: 3x5 @ 37.5 kg',
      '  > 2 misses in a row (5, 4, 4 @ 42.5 kg on 2026-11-09): -10%',
    ]);
  });

  test('a miss at a lighter load before does not count', () => {
    expect(weeks('5, 5, 3 @ 40 kg', '5, 4, 4 @ 42.5 kg')[0]).toBe('  Overhead Press: 3x5 @ 42.5 kg');
  });
});

describe('two for two', () => {
  const plan = ['Back Squat: 3x8 @ 80 kg'];
  const writeAfter = (...sets: string[]) =>
    next({
      plan,
      today: '2026-11-16',
      log: sets.map(
        (line, index) => [`2026-11-${index === 0 ? '02 1' : '09 2'}`, `Back Squat: ${line}`] as const,
      ),
    }).slice(1);

  test('two over the goal in the last set, twice: more load', () => {
    // 2 % more are 81.6, 10 % 88: the lightest that can be loaded is 82.5.
    expect(writeAfter('8, 8, 10 @ 80 kg', '8, 8, 10 @ 80 kg')).toEqual([
      '  Back Squat: 3x8 @ 82.5 kg',
      '  > 2-for-2: two over 8 in the last set twice (8, 8, 10 @ 80 kg on 2026-11-09), so more load',
    ]);
  });

  test.each<[string, string, string]>([
    ['once is not twice', '8, 8, 10 @ 80 kg', '8, 8, 9 @ 80 kg'],
    ['nor is the first set the last', '10, 8, 8 @ 80 kg', '10, 8, 8 @ 80 kg'],
    ['nor another load', '8, 8, 10 @ 77.5 kg', '8, 8, 10 @ 80 kg'],
  ])('%s', (_name, first, second) => {
    expect(writeAfter(first, second)).toEqual(['  Back Squat: 3x8 @ 80 kg']);
  });

  test('what was raised before stays raised', () => {
    expect(writeAfter('3x8 @ 80 kg', '3x8 @ 82.5 kg')).toEqual([
      '  Back Squat: 3x8 @ 82.5 kg',
      '  > 80 kg in the plan; 3x8 @ 82.5 kg on 2026-11-09',
    ]);
  });

  test('no load between 2 and 10 % more is said', () => {
    const light = ['One-Arm Row: 3x8/side @ 8 kg'];
    const done = 'One-Arm Row: 8/side, 8/side, 10/side @ 8 kg';
    expect(
      next({
        plan: light,
        today: '2026-11-16',
        log: [
          ['2026-11-02 1', done],
          ['2026-11-09 2', done],
        ],
      }).slice(1),
    ).toEqual([
      '  One-Arm Row: 3x8/side @ 8 kg',
      '  > 2-for-2: two over 8/side in the last set twice (8, 8, 10 @ 8 kg on 2026-11-09), and no load between 2 and 10 % more',
    ]);
  });
});

describe('after a gap', () => {
  const plan = [
    'A straight',
    '  Back Squat: 3x5 @ 70% | 3x5 @ 80%',
    '  Front Squat: 3x8-10 @ 40 kg, then +2.5 kg from 8',
    '  week 2 test Deadlift: 1 @ 100%',
  ];
  const first = ['2026-11-02 1', 'Back Squat: 3x5 @ 72.5 kg', 'Front Squat: 3x10 @ 40 kg'] as const;

  test('of over two weeks loads are 90 %, and no max is tested', () => {
    // 15 days. 80 % of 105 = 84 → 85; 90 % of 85 = 76.5 → 77.5. 90 % of 40 = 36 → 35.
    expect(next({ plan, today: '2026-11-17', log: [first] })).toEqual([
      HEADER('2026-11-17', 2),
      "  > 15 days since the last session: loads are 90 % of the plan's, and no max is tested; after illness or injury ask a licensed practitioner",
      '  A straight',
      '    Back Squat: 3x5 @ 77.5 kg',
      '    Front Squat: 3x10 @ 35 kg',
      '    > 3x10 @ 40 kg on 2026-11-02: ready for +2.5 kg, which waits',
      '    > test Deadlift left for later',
    ]);
  });

  test('of a whole week nothing is heavier than last time', () => {
    expect(next({ plan, today: '2026-11-16', log: [first] })).toEqual([
      HEADER('2026-11-16', 2),
      '  > A week without a session (14 days): no load is above the last time',
      '  A straight',
      '    Back Squat: 3x5 @ 72.5 kg',
      '    Front Squat: 3x10 @ 40 kg',
      '    > 3x10 @ 40 kg on 2026-11-02: ready for +2.5 kg, which waits',
      '    test Deadlift: 1 @ 137.5 kg',
    ]);
  });

  test('of a week between two days of the plan is none', () => {
    expect(next({ plan, today: '2026-11-15', log: [first] })[1]).toBe('  A straight');
  });
});

describe('without a plan', () => {
  const log: Case['log'] = [
    ['2026-11-02', 'Deadlift: 3x5 @ 100 kg'],
    ['2026-11-04', 'Bench Press: 3x5 @ 50 kg'],
    ['2026-11-09', 'Deadlift: 3x5 @ 102.5 kg rpe 8, 4 of 5 @ 105 kg', 'Plank: skipped', 'effort 7'],
  ];

  test('the week repeats itself', () => {
    // Behind Monday the 9th comes what was done on Wednesday the 4th, a week later.
    expect(next({ today: '2026-11-10', log })).toEqual([
      `session 2026-11-11 ${ATHLETE} at Rookery Cellar`,
      '  > As on 2026-11-04, to be changed: no plan says what comes next',
      '  Bench Press: 3x5 @ 50 kg',
    ]);
  });

  test('what was done is copied, not how it went', () => {
    expect(next({ today: '2026-11-10', log: [log[2]!] })).toEqual([
      `session 2026-11-16 ${ATHLETE} at Rookery Cellar`,
      '  > As on 2026-11-09, to be changed: no plan says what comes next',
      '  Deadlift: 3x5 @ 102.5 kg, 4 @ 105 kg',
    ]);
  });

  test('and after one has ended, which is said', () => {
    const lines = next({
      plan: ['Push-up: 10'],
      properties: ['weeks 1'],
      log: [['2026-11-02 1', 'Push-up: 10']],
    });
    expect(lines[1]).toBe('  > As on 2026-11-02, to be changed: Copper Autumn ended on 2026-11-08');
  });

  test('a max is not tested every week', () => {
    expect(
      next({
        today: '2026-11-10',
        log: [
          [
            '2026-11-09',
            'warmup Deadlift: 5 @ 60 kg',
            'test Deadlift: 1 @ 140 kg',
            'B straight',
            '  Dip: 3x8',
          ],
        ],
      }),
    ).toEqual([
      `session 2026-11-16 ${ATHLETE} at Rookery Cellar`,
      '  > As on 2026-11-09, to be changed: no plan says what comes next',
      '  > test Deadlift left out: a max is not tested every week',
      '  B straight',
      '    Dip: 3x8',
    ]);
  });

  test('and without a session there is none', () => {
    expect(next({})).toEqual([`${ATHLETE} has neither a plan nor a session to go on from`]);
  });
});

describe('where it goes', () => {
  const place = (example: Case, today: IsoDate, files: Readonly<Record<string, string>> = {}) => {
    const { works } = open(example);
    for (const [uri, text] of Object.entries(files)) works.practice.setFile(uri, text);
    const found = writeNextSession(works, { athlete: 'hesper quillon', today, unit: 'kg', formula: 'epley' });
    if ('refused' in found) throw new Error(found.refused);
    const lines = [...(works.practice.file(found.place.uri)?.lines ?? [''])];
    const { uri, line, column, isNew } = found.place;
    lines[line] = lines[line]!.slice(0, column) + toInsertion(found) + lines[line]!.slice(column);
    return { uri, isNew, text: lines.join('\n') };
  };
  const plan = ['Push-up: 10'];
  const log: Case['log'] = [['2026-11-02 1', 'Push-up: 10']];

  const GAP =
    "  > 29 days since the last session: loads are 90 % of the plan's, and no max is tested; after illness or injury ask a licensed practitioner";

  test('behind the last session, with an empty line between', () => {
    expect(place({ plan, log }, '2026-11-09')).toEqual({
      uri: LOG,
      isNew: false,
      text: `${HEADER('2026-11-02', 1)}\n  Push-up: 10\n\n${HEADER('2026-11-09', 2)}\n  Push-up: 10\n`,
    });
  });

  test('in a new file when the month is over', () => {
    expect(place({ plan, log }, '2026-12-01')).toEqual({
      uri: 'file:///logs/hesper/2026-12.plim',
      isNew: true,
      text: [HEADER('2026-12-01', 2), GAP, '  Push-up: 10', ''].join('\n'),
    });
  });

  test('or in that month’s file, where there is one', () => {
    const file = 'file:///logs/hesper/2026-12.plim';
    expect(place({ plan, log }, '2026-12-01', { [file]: '# December\n' })).toMatchObject({
      uri: file,
      isNew: false,
    });
    expect(place({ plan, log }, '2026-12-01', { [file]: '# December\n' }).text).toMatch(
      /^# December\n\nsession 2026-12-01 .*\n$/s,
    );
  });

  test('before the comment of what comes next in the file, and never among a group', () => {
    const text = `session 2026-11-02 ${ATHLETE}, Copper Autumn week 1 day 1\n  Push-up: 10\n\n# The others\nathlete Odo Plim\n`;
    const files = {
      'file:///logs/all.plim': text,
      'file:///logs/group.plim': `session 2026-11-05 ${ATHLETE} | Odo Plim\n  Push-up: 10\n`,
    };
    const found = place({ plan }, '2026-11-09', files);
    expect(found.uri).toBe('file:///logs/all.plim');
    expect(found.text).toContain('  Push-up: 10\n\nsession 2026-11-09');
    expect(found.text).toContain('  Push-up: 10\n\n# The others\nathlete Odo Plim\n');
  });

  test('beside the athlete’s definition, where nothing is logged yet', () => {
    expect(place({ plan }, '2026-11-02').uri).toBe('file:///logs/practice.plim');
  });
});
