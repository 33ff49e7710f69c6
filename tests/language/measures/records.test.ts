import { describe, expect, test } from 'vitest';
import { toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { findBests, findRecordsOf } from '../../../language/src/measures/records.ts';
import { NAME, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
  bodyweight 80 kg on 2026-01-01
exercise Bar Press
  needs barbell
exercise Hang Pull
  bodyweight 95%, for the sums of this test
exercise Hand Press
  needs dumbbell
exercise Stack Press
  needs cable
exercise Loft Carry
  work carry
`;

const session = (date: string, ...lines: string[]): string =>
  `session ${date} ${NAME}\n${lines.map((line) => `  ${line}\n`).join('')}`;

/** `5 @ 82.5` of each record set, `e1RM` of each record estimate, in the last session of a log. */
function recordsOf(log: string): string[] {
  const { works, sessions } = readWorks(DEFINITIONS, log);
  const { sets, maxes } = findRecordsOf(works, sessions.at(-1)!);
  return [
    ...sets.map(({ reps, result, added }) => `${reps} @ ${added ? 'bw+' : ''}${result.value}`),
    ...maxes.map(({ result }) => `e1RM ${result.value!.toFixed(1)}`),
  ];
}

const FIRST = '2026-02-02';
const LATER = '2026-02-09';

describe('records of a session', () => {
  test.each([
    ['none the first time', [], ['Bar Press: 5 @ 200 kg rpe 10'], []],
    // 82.5 x 35/30 = 96.25 against 93.33.
    [
      'more load for the reps',
      ['Bar Press: 5 @ 80 kg rpe 10'],
      ['Bar Press: 5 @ 82.5 kg rpe 10'],
      ['5 @ 82.5', 'e1RM 96.3'],
    ],
    // 0.95 x 80 = 76 kg of body: (76 + 10) x 35/30 - 76 = 24.3 kg added. The eight forgot their load, which was not the body alone for sure.
    [
      'a set that forgot its load is none',
      ['Hang Pull: 5'],
      ['Hang Pull: 5 @ bw+10 kg, 8'],
      ['5 @ bw+10', 'e1RM 24.3'],
    ],
    ['the same again is none', ['Bar Press: 5 @ 80 kg'], ['Bar Press: 5 @ 80 kg'], []],
    // 4 @ 82.5: at least 93.5, over 93.33.
    [
      'more load for fewer reps than before',
      ['Bar Press: 5 @ 80 kg'],
      ['Bar Press: 4 @ 82.5 kg'],
      ['4 @ 82.5', 'e1RM 93.5'],
    ],
    ['less than a set of more reps is none', ['Bar Press: 8 @ 80 kg'], ['Bar Press: 5 @ 80 kg'], []],
    [
      'more reps at the load of the most reps so far',
      ['Bar Press: 5 @ 80 kg'],
      ['Bar Press: 6 @ 80 kg'],
      ['6 @ 80', 'e1RM 96.0'],
    ],
    ['more reps at less load are other work', ['Bar Press: 5 @ 80 kg'], ['Bar Press: 12 @ 40 kg'], []],
    ['of equal sets one', ['Bar Press: 5 @ 80 kg'], ['Bar Press: 3x5 @ 85 kg'], ['5 @ 85', 'e1RM 99.2']],
    [
      'of sets at one load the most reps',
      ['Bar Press: 5 @ 80 kg'],
      ['Bar Press: 5, 4, 3 @ 85 kg'],
      ['5 @ 85', 'e1RM 99.2'],
    ],
    [
      'of several reps each',
      ['Bar Press: 5 @ 80 kg'],
      ['Bar Press: 1 @ 100 kg, 5 @ 82.5 kg'],
      ['5 @ 82.5', '1 @ 100', 'e1RM 100.0'],
    ],
    ['no warm-up', ['Bar Press: 5 @ 80 kg'], ['warmup Bar Press: 5 @ 100 kg'], []],
    ['and none from one', ['warmup Bar Press: 5 @ 80 kg'], ['Bar Press: 5 @ 100 kg'], []],
    [
      'a failed set counts what was made',
      ['Bar Press: 4 @ 80 kg'],
      ['Bar Press: 4 of 5 @ 85 kg'],
      ['4 @ 85'],
    ],
    ['a missed single is none', ['Bar Press: 1 @ 80 kg'], ['Bar Press: 0 of 1 @ 90 kg'], []],
    [
      'of a cluster the first part',
      ['Bar Press: 3 @ 80 kg'],
      ['Bar Press: (3+3 rest 20 s) @ 85 kg'],
      ['3 @ 85', 'e1RM 93.5'],
    ],
    [
      'of a drop set the first load',
      ['Bar Press: 5 @ 80 kg'],
      ['Bar Press: 5 @ 85 kg drop 15 @ 80 kg'],
      ['5 @ 85', 'e1RM 99.2'],
    ],
    [
      'sides by the weaker',
      ['Bar Press: 5/side @ 20 kg'],
      ['Bar Press: 8 left 6 right @ 20 kg'],
      ['6 @ 20', 'e1RM 24.0'],
    ],
    ['one implement and two are two series', ['Hand Press: 5 @ 20 kg'], ['Hand Press: 5 @ 2x24 kg'], []],
    ['so is another setting', ['Bar Press: 5 @ 80 kg'], ['Bar Press: 5 @ 90 kg, setting Pins low'], []],
    ['body weight: more reps', ['Hang Pull: 6 @ bw'], ['Hang Pull: 8'], ['8 @ bw+0', 'e1RM 20.3']],
    ['body weight: more load', ['Hang Pull: 6 @ bw'], ['Hang Pull: 6 @ bw+2 kg'], ['6 @ bw+2', 'e1RM 17.6']],
    [
      'body weight: less help',
      ['Hang Pull: 6 @ bw-20 kg'],
      ['Hang Pull: 6 @ bw-10 kg'],
      ['6 @ bw+-10', 'e1RM 3.2'],
    ],
    ['a pin has none', ['Stack Press: 5 @ pin 4'], ['Stack Press: 5 @ pin 6'], []],
    ['nor has a carry', ['Loft Carry: 40 m @ 20 kg'], ['Loft Carry: 40 m @ 30 kg'], []],
    ['over 15 reps none', ['Bar Press: 16 @ 20 kg'], ['Bar Press: 17 @ 30 kg'], []],
    ['but they count for 15 and fewer', ['Bar Press: 20 @ 30 kg'], ['Bar Press: 15 @ 30 kg'], []],
  ])('%s', (_name, first, later, expected) => {
    expect(recordsOf(session(FIRST, ...first) + session(LATER, ...later))).toEqual(expected);
  });

  test('not against a later session', () => {
    const log = session(FIRST, 'Bar Press: 5 @ 80 kg') + session('2026-03-02', 'Bar Press: 5 @ 90 kg');
    const { works, sessions } = readWorks(DEFINITIONS, `${log}${session(LATER, 'Bar Press: 5 @ 85 kg')}`);
    const found = sessions.map((work) => findRecordsOf(works, work).sets.map(({ result }) => result.value));
    expect(found).toEqual([[], [85], [90]]);
  });

  // Rated after never having been rated: 5 @ 80 rpe 8 is 98.7 where 93.3 was "at least", which proves nothing.
  test('an estimate above lower bounds alone is none', () => {
    expect(
      recordsOf(session(FIRST, 'Bar Press: 5 @ 80 kg') + session(LATER, 'Bar Press: 5 @ 80 kg rpe 8')),
    ).toEqual([]);
  });

  // 100 x 36/30 = 120 at least, over 116.67 before; but 125 was stated.
  test.each([
    ['stated before is none, of singles and estimates', '2026-01-05', ['6 @ 100']],
    ['stated the same day does not count yet', LATER, ['1 @ 110', '6 @ 100', 'e1RM 120.0']],
  ])('what does not reach a max %s', (_name, day, expected) => {
    const definitions = DEFINITIONS.replace('exercise', `  max Bar Press: 125 kg on ${day}\nexercise`);
    const log = session(FIRST, 'Bar Press: 5 @ 100 kg') + session(LATER, 'Bar Press: 1 @ 110 kg, 6 @ 100 kg');
    const { works, sessions } = readWorks(definitions, log);
    const { sets, maxes } = findRecordsOf(works, sessions[1]!);
    expect([
      ...sets.map(({ reps, result }) => `${reps} @ ${result.value}`).sort(),
      ...maxes.map(({ result }) => `e1RM ${result.value!.toFixed(1)}`),
    ]).toEqual(expected);
  });

  // 90 x 32/30 = 96 before; then 3 @ 95 kg by formula gives 104.5, but 100 kg failed: the max is somewhere under it.
  test('is no estimate that a failed load holds', () => {
    const log =
      session(FIRST, 'Bar Press: 2 @ 90 kg rpe 10') +
      session(LATER, 'Bar Press: 3 @ 95 kg rpe 10, 0 of 1 @ 100 kg');
    const { works, sessions } = readWorks(DEFINITIONS, log);
    const { sets, maxes } = findRecordsOf(works, sessions[1]!);
    expect(maxes).toEqual([]);
    expect(sets.map(({ reps, result }) => `${reps} @ ${result.value}`)).toEqual(['3 @ 95']);
  });

  test('says what it beat', () => {
    const log = session(FIRST, 'Bar Press: 5 @ 80 kg') + session(LATER, 'Bar Press: 5 @ 82.5 kg');
    const { works, sessions } = readWorks(DEFINITIONS, log);
    expect(findRecordsOf(works, sessions[1]!).sets[0]!.result.inputs).toEqual([
      { label: 'set 1: reps a side', value: 5, unit: 'reps' },
      { label: 'best before, 5 reps', value: 80, unit: 'kg' },
    ]);
    const singles = session(FIRST, 'Bar Press: 1 @ 90 kg') + session(LATER, 'Bar Press: 1 @ 95 kg');
    const read = readWorks(DEFINITIONS, singles);
    expect(findRecordsOf(read.works, read.sessions[1]!).sets[0]!.result.inputs[1]).toEqual({
      label: 'best before, 1 rep',
      value: 90,
      unit: 'kg',
    });
  });

  test('follows what is typed', () => {
    const { works } = readWorks(DEFINITIONS, session(FIRST, 'Bar Press: 5 @ 80 kg'));
    const type = (line: string): number => {
      works.practice.setFile('log.plim', session(FIRST, 'Bar Press: 5 @ 80 kg') + session(LATER, line));
      return findRecordsOf(works, works.of(works.practice.sessionsOf(NAME).at(-1)!)).sets.length;
    };
    expect([type('Bar Press: 5 @ 8 kg'), type('Bar Press: 5 @ 85 kg'), type('Bar Press: 5 @ 80 kg')]).toEqual(
      [0, 1, 0],
    );
  });
});

describe('the best sets of a series', () => {
  const log =
    session(FIRST, 'Bar Press: 8 @ 70 kg, 3 @ 85 kg') +
    session(LATER, 'Bar Press: 5 @ 80 kg, 1 @ 95 kg, 20 @ 40 kg') +
    session('2026-02-16', 'Bar Press: 5 @ 75 kg');

  test('for each number of reps the heaviest of that many or more', () => {
    const { works } = readWorks(DEFINITIONS, log);
    const [bests] = findBests(works, NAME);
    expect(bests!.byReps.map((best) => best?.result.value).slice(1)).toEqual([
      95, 85, 85, 80, 80, 70, 70, 70, 40, 40, 40, 40, 40, 40, 40,
    ]);
    expect(bests!.max?.day).toBe(toDayNumber(LATER));
  });

  test('up to a day', () => {
    const { works } = readWorks(DEFINITIONS, log);
    const [bests] = findBests(works, NAME, toDayNumber('2026-02-08'));
    expect(bests!.byReps.map((best) => best?.result.value).slice(1)).toEqual([
      85, 85, 85, 70, 70, 70, 70, 70,
    ]);
    expect(findBests(works, NAME, toDayNumber('2026-02-01'))).toEqual([]);
  });
});
