import { describe, expect, test } from 'vitest';
import { fromDayNumber, type IsoDate, toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { findHighestProven, findMaxOn } from '../../../language/src/measures/maxes.ts';
import { listSeriesSets } from '../../../language/src/measures/series-sets.ts';
import { NAME, printValue, readWorks } from './read-works.ts';

const MOVEMENTS = `
exercise Bar Press
  needs barbell
  also Bench on the Barge
exercise Hang Pull
  bodyweight 95%, for the sums of this test
exercise Hand Press
  needs dumbbell
exercise Stack Press
  needs cable
`;

/** `tested 2026-01-05: 105 kg` of the max valid on a day, or none. */
function maxOn(athlete: string, log: string, movement: string, day: IsoDate, seriesOf?: number): string {
  const { works, sessions } = readWorks(`${MOVEMENTS}\nathlete ${NAME}\n${athlete}`, log);
  const series = seriesOf === undefined ? undefined : listSeriesSets(sessions.at(-1)!)[seriesOf]!.series;
  const max = findMaxOn(works, NAME, movement, toDayNumber(day), { ...(series && { series }) });
  if (!max) return 'none';
  const marks = `${max.added ? ' added' : ''}${max.perHand ? ' a hand' : ''}`;
  return `${max.kind} ${fromDayNumber(max.day)}: ${printValue(max.result)}${marks}`;
}

const session = (date: string, ...lines: string[]): string =>
  `session ${date} ${NAME} at Net Attic\n${lines.map((line) => `  ${line}\n`).join('')}`;

// Estimates by Epley, load x (1 + R / 30).
describe('the max valid on a day', () => {
  test.each([
    [
      'is the stated one',
      '  max Bar Press: 100 kg on 2026-01-05',
      '',
      'Bar Press',
      '2026-02-01',
      'stated 2026-01-05: 100 kg',
    ],
    [
      'from its own day on',
      '  max Bar Press: 100 kg on 2026-01-05',
      '',
      'Bar Press',
      '2026-01-05',
      'stated 2026-01-05: 100 kg',
    ],
    ['not before', '  max Bar Press: 100 kg on 2026-01-05', '', 'Bar Press', '2026-01-04', 'none'],
    [
      'under any spelling',
      '  max Bench on the Barge: 100 kg on 2026-01-05',
      '',
      'bar-press',
      '2026-02-01',
      'stated 2026-01-05: 100 kg',
    ],
    [
      'of several the latest, though lower',
      '  max Bar Press: 100 kg on 2026-01-05\n  max Bar Press: 95 kg on 2026-03-01',
      '',
      'Bar Press',
      '2026-03-02',
      'stated 2026-03-01: 95 kg',
    ],
    [
      'and a later one never rewrites what was before',
      '  max Bar Press: 100 kg on 2026-01-05\n  max Bar Press: 110 kg on 2026-03-01',
      session('2026-02-20', 'test Bar Press: 1 @ 105 kg'),
      'Bar Press',
      '2026-02-19',
      'stated 2026-01-05: 100 kg',
    ],
    [
      'of a retest the better',
      '  retest Bar Press: 100 kg, 102.5 kg on 2026-01-05',
      '',
      'Bar Press',
      '2026-02-01',
      'retested 2026-01-05: 102.5 kg',
    ],
    [
      'of a test the best single made',
      '  max Bar Press: 100 kg on 2026-01-05',
      session('2026-02-02', 'test Bar Press: 1 @ 95, 1 @ 105, 0 of 1 @ 110 kg'),
      'Bar Press',
      '2026-02-02',
      'tested 2026-02-02: 105 kg',
    ],
    // 90 x (1 + 3/30) = 99: what was tested in three reps is an estimate, and unrated a lower bound.
    [
      'of a test in more reps an estimate',
      '  max Bar Press: 110 kg on 2026-01-05',
      session('2026-02-02', 'test Bar Press: 3 @ 90 kg'),
      'Bar Press',
      '2026-02-02',
      'estimated from test 2026-02-02: 99 kg',
    ],
    // 90 x (1 + (3 + 1)/30) = 102; the working set of the day is no part of the test.
    [
      'of that test alone',
      '',
      session('2026-02-02', 'test Bar Press: 3 @ 90 kg rpe 9', 'Bar Press: 5 @ 100 kg rpe 10'),
      'Bar Press',
      '2026-02-02',
      'estimated from test 2026-02-02: 102 kg',
    ],
    [
      'a warm-up single of a test day is no test',
      '',
      session('2026-02-02', 'warmup Bar Press: 1 @ 100 kg'),
      'Bar Press',
      '2026-02-02',
      'none',
    ],
    // 100 x (1 + 7/30) = 123.3333 is higher, and no test.
    [
      'is no estimate where one was ever stated',
      '  max Bar Press: 100 kg on 2026-01-05',
      session('2026-02-02', 'Bar Press: 5 @ 100 kg rpe 8'),
      'Bar Press',
      '2026-02-02',
      'stated 2026-01-05: 100 kg',
    ],
    [
      'else is the latest estimate',
      '',
      session('2026-02-02', 'Bar Press: 5 @ 100 kg rpe 8') +
        session('2026-02-09', 'Bar Press: 5 @ 90 kg rpe 10'),
      'Bar Press',
      '2026-02-20',
      'estimated 2026-02-09: 105 kg',
    ],
    [
      'as of that day',
      '',
      session('2026-02-02', 'Bar Press: 5 @ 100 kg rpe 8') +
        session('2026-02-09', 'Bar Press: 5 @ 90 kg rpe 10'),
      'Bar Press',
      '2026-02-08',
      'estimated 2026-02-02: 123.3333 kg',
    ],
    // 60 x 35/30 = 70 at least: an easy day says nothing against 123.3.
    [
      'an easy day without ratings lowers nothing',
      '',
      session('2026-02-02', 'Bar Press: 5 @ 100 kg rpe 8') + session('2026-02-09', 'Bar Press: 5 @ 60 kg'),
      'Bar Press',
      '2026-02-20',
      'estimated 2026-02-02: 123.3333 kg',
    ],
    [
      'but after three months it is all that is known',
      '',
      session('2026-02-02', 'Bar Press: 5 @ 100 kg rpe 8') + session('2026-06-01', 'Bar Press: 5 @ 60 kg'),
      'Bar Press',
      '2026-06-01',
      'estimated 2026-06-01: at least 70 kg',
    ],
    [
      'comes on top of the body',
      '  max Hang Pull: bw+20 kg on 2026-01-05',
      '',
      'Hang Pull',
      '2026-02-01',
      'stated 2026-01-05: 20 kg added',
    ],
    [
      'with help it is below it',
      '  max Hang Pull: bw-10 kg on 2026-01-05',
      '',
      'Hang Pull',
      '2026-02-01',
      'stated 2026-01-05: -10 kg added',
    ],
    [
      'of two implements counts a hand',
      '  max Hand Press: 2x30 kg on 2026-01-05',
      '',
      'Hand Press',
      '2026-02-01',
      'stated 2026-01-05: 30 kg a hand',
    ],
    [
      'of a pin has no kilograms',
      '  max Stack Press: pin 9 on 2026-01-05',
      '',
      'Stack Press',
      '2026-02-01',
      'none',
    ],
    ['of a movement never done', '', '', 'Bar Press', '2026-02-01', 'none'],
  ] as const)('%s', (_name, athlete, log, movement, day, expected) => {
    expect(maxOn(athlete, log, movement, day)).toBe(expected);
  });

  test.each([
    [
      'two implements do not take the max of one',
      '  max Hand Press: 30 kg on 2026-01-05',
      'Hand Press: 5 @ 2x20 kg rpe 5',
      'none',
    ],
    [
      'a tempo takes the plain max',
      '  max Bar Press: 100 kg on 2026-01-05',
      'Bar Press: 5 @ 60 kg, tempo 3-1-X-0',
      'stated 2026-01-05: 100 kg',
    ],
    // 60 x 37/30 = 74.
    ['else its own estimate', '', 'Bar Press: 5 @ 60 kg rpe 8, tempo 3-1-X-0', 'estimated 2026-02-02: 74 kg'],
    [
      'a test of the same setting goes first',
      '  max Bar Press: 100 kg on 2026-02-02',
      'test Bar Press: 1 @ 80 kg, setting Pins low',
      'tested 2026-02-02: 80 kg',
    ],
    [
      'a stack takes what was stated',
      '  max Stack Press: 50 kg on 2026-01-05',
      'Stack Press: 5 @ 40 kg',
      'stated 2026-01-05: 50 kg',
    ],
  ])('of a series: %s', (_name, athlete, line, expected) => {
    const name = line.replace('test ', '').split(':')[0]!;
    expect(maxOn(athlete, session('2026-02-02', line), name, '2026-02-02', 0)).toBe(expected);
  });

  test('of two tests on one day the better', () => {
    const log =
      session('2026-02-02', 'test Bar Press: 1 @ 100 kg') +
      session('2026-02-02', 'test Bar Press: 1 @ 95 kg');
    expect(maxOn('', log, 'Bar Press', '2026-02-02')).toBe('tested 2026-02-02: 100 kg');
  });

  test('a single goes before an estimate of the same day', () => {
    const log =
      session('2026-02-02', 'test Bar Press: 1 @ 100 kg') +
      session('2026-02-02', 'test Bar Press: 5 @ 95 kg');
    expect(maxOn('', log, 'Bar Press', '2026-02-02')).toBe('tested 2026-02-02: 100 kg');
  });

  test('says how old it is', () => {
    const { works } = readWorks(`${MOVEMENTS}\nathlete ${NAME}\n  max Bar Press: 100 kg on 2026-01-05`, '');
    const max = findMaxOn(works, NAME, 'Bar Press', toDayNumber('2026-02-01'));
    expect(max?.result.inputs).toContainEqual({ label: 'days before', value: 27, unit: 'days' });
  });

  test('follows an edit of the log and of the athlete', () => {
    const { works } = readWorks(
      `${MOVEMENTS}\nathlete ${NAME}\n`,
      session('2026-02-02', 'test Bar Press: 1 @ 100 kg'),
    );
    const read = () => findMaxOn(works, NAME, 'Bar Press', toDayNumber('2026-03-01'))?.result.value;
    expect(read()).toBe(100);
    works.practice.setFile('log.plim', session('2026-02-02', 'test Bar Press: 1 @ 90 kg'));
    expect(read()).toBe(90);
    works.practice.setFile(
      'definitions.plim',
      `${MOVEMENTS}\nathlete ${NAME}\n  max Bar Press: 80 kg on 2026-02-10`,
    );
    expect(read()).toBe(80);
  });
});

describe('without a series', () => {
  const both = (one: string, two: string) =>
    maxOn(
      `  max Hand Press: 26 kg on ${one}\n  max Hand Press: 2x24 kg on ${two}`,
      '',
      'Hand Press',
      '2026-03-01',
    );

  test('the later of one implement and two', () => {
    expect(both('2026-01-05', '2026-02-05')).toBe('stated 2026-02-05: 24 kg a hand');
    expect(both('2026-02-05', '2026-01-05')).toBe('stated 2026-02-05: 26 kg');
    // On one day that of one implement.
    expect(both('2026-01-05', '2026-01-05')).toBe('stated 2026-01-05: 26 kg');
  });

  test('none of a movement that nobody did', () => {
    expect(maxOn('', '', 'Bar Press', '2026-03-01')).toBe('none');
  });
});

test('the highest that was proven, up to and on a day', () => {
  const { works } = readWorks(
    `${MOVEMENTS}\nathlete ${NAME}\n  max Bar Press: 100 kg on 2026-01-05\n  max Bar Press: 110 kg on 2026-01-20\n  max Bar Press: 105 kg on 2026-02-05\n`,
    session('2026-02-01', 'Bar Press: 5 @ 110 kg rpe 10'),
  );
  const series = listSeriesSets(works.of(works.practice.sessionsOf(NAME)[0]!))[0]!.series;
  const highest = (day: IsoDate) => findHighestProven(works, NAME, series, toDayNumber(day));
  // An estimate, 128 kg, proves nothing; a later, lower max takes nothing back.
  expect((['2026-01-04', '2026-01-05', '2026-01-20', '2026-03-01'] as const).map(highest)).toEqual([
    undefined,
    100,
    110,
    110,
  ]);
  expect(
    findHighestProven(works, NAME, { ...series, key: 'long hinge' }, toDayNumber('2026-03-01')),
  ).toBeUndefined();
});
