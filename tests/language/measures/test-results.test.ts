import { describe, expect, test } from 'vitest';
import { findTestResults } from '../../../language/src/measures/test-results.ts';
import { printTestResult } from '../../../language/src/summaries/print-test.ts';
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
exercise Long Hold
  work hold
exercise Loft Rower
  work conditioning
exercise Stack Press
  needs cable
exercise Floor Wave
`;

/** What the last of the sessions tested, each a week after the one before. */
function testsOf(...lines: readonly string[]) {
  const log = lines
    .map((line, week) => `session 2026-02-0${week + 1} ${NAME} at Net Attic\n  ${line}\n`)
    .join('');
  const { works, sessions } = readWorks(DEFINITIONS, log);
  return findTestResults(works, sessions.at(-1)!);
}

const say = (...lines: readonly string[]): string[] => testsOf(...lines).map(printTestResult);

describe('the best result of a test', () => {
  test.each([
    ['of reps is the most', 'test Floor Wave: 30, 34, 32', 'Floor Wave 34 reps'],
    ['of both sides together', 'test Floor Wave: 10/side', 'Floor Wave 20 reps'],
    ['of one rep', 'test Floor Wave: 1', 'Floor Wave 1 rep'],
    ['of what was made', 'test Floor Wave: 4 of 5', 'Floor Wave 4 reps'],
    ['of a hold is the longest', 'test Long Hold: 80 s, 1:35', 'Long Hold 1:35'],
    ['of a short one in seconds', 'test Long Hold: 42.5 s', 'Long Hold 42.5 s'],
    ['of a distance is the farthest', 'test Loft Rower: 1800 m', 'Loft Rower 1.8 km'],
    ['of calories is the most', 'test Loft Rower: 15 cal, 18 cal', 'Loft Rower 18 cal'],
    [
      'of an amount is the shortest time',
      'test Loft Rower: 500 m in 1:45, 500 m in 1:40',
      'Loft Rower 500 m in 1:40',
    ],
    ['of reps in a time too', 'test Floor Wave: 30 in 0:50', 'Floor Wave 30 reps in 50 s'],
    ['of loaded reps in a time', 'test Bar Press: 30 in 1:10 @ 40 kg', 'Bar Press 30 reps in 1:10'],
    ['with the body alone', 'test Hang Pull: 14 @ bw', 'Hang Pull 14 reps'],
    ['at a pin', 'test Stack Press: 20 @ pin 5', 'Stack Press 20 reps'],
    ['with a band', 'test Floor Wave: 20 @ red band', 'Floor Wave 20 reps'],
  ])('%s', (_name, line, expected) => {
    expect(say(line)).toEqual([expected]);
  });

  test.each([
    ['a max instead', 'test Bar Press: 5 @ 100 kg'],
    ['a max on top of the body', 'test Hang Pull: 5 @ bw+10 kg'],
    ['a load that is forgotten', 'test Bar Press: 12'],
    ['a load not recorded', 'test Floor Wave: 12 @ ?'],
    ['what was not recorded', 'test Floor Wave: ?'],
    ['what was not done', 'test Floor Wave: skipped'],
    ['nothing made', 'test Floor Wave: 0 of 1'],
    ['work that is no test', 'Floor Wave: 30'],
  ])('is none of %s', (_name, line) => {
    expect(say(line)).toEqual([]);
  });

  test('of several tests each, apart by settings, load and amount', () => {
    expect(
      say(
        'test Loft Rower: 500 m in 1:40, 1000 m in 3:40, 1500 m\n  test Long Hold: 60 s @ 10 kg, 90 s\n  test Floor Wave: 30\n  test Floor Wave: 20, setting Box high',
      ),
    ).toEqual([
      'Loft Rower 500 m in 1:40',
      'Loft Rower 1 000 m in 3:40',
      'Loft Rower 1.5 km',
      'Long Hold 1:00',
      'Long Hold 1:30',
      'Floor Wave 30 reps',
      'Floor Wave 20 reps',
    ]);
  });
});

describe('against the tests before', () => {
  test('names the best of them, and says what is better than all', () => {
    const lines = ['test Floor Wave: 32', 'test Floor Wave: 30', 'test Floor Wave: 34'];
    expect(say(...lines)).toEqual(['Floor Wave 34 reps (before 32 reps on 2026-02-01), best so far']);
    expect(say(...lines, 'test Floor Wave: 33')).toEqual([
      'Floor Wave 33 reps (before 34 reps on 2026-02-03)',
    ]);
    expect(say(...lines, 'test Floor Wave: 34')).toEqual([
      'Floor Wave 34 reps (before 34 reps on 2026-02-03)',
    ]);
  });

  test('of times the shortest is the best', () => {
    const lines = [
      'test Loft Rower: 500 m in 1:45',
      'test Loft Rower: 500 m in 1:48',
      'test Loft Rower: 500 m in 1:44',
    ];
    expect(say(...lines)).toEqual(['Loft Rower 500 m in 1:44 (before 1:45 on 2026-02-01), best so far']);
  });

  test('is with the same test alone', () => {
    expect(say('test Loft Rower: 500 m in 1:45', 'test Loft Rower: 400 m in 1:20')[0]).not.toContain(
      'before',
    );
    expect(say('test Long Hold: 90 s', 'test Long Hold: 60 s @ 10 kg')[0]).not.toContain('before');
    expect(say('test Floor Wave: 30', 'test Floor Wave: 20, setting Box high')[0]).not.toContain('before');
    expect(say('test Stack Press: 20 @ pin 5', 'test Stack Press: 14 @ pin 6')[0]).not.toContain('before');
    expect(say('Floor Wave: 30', 'test Floor Wave: 20')[0]).not.toContain('before');
    expect(say('test Floor Wave: 30', 'test floor wave: 20 @ bw')[0]).toContain('before 30 reps');
    expect(say('test Long Hold: 60 s @ 10 kg', 'test Long Hold: 70 s @ 22.05 lb')[0]).not.toContain('before');
    expect(say('test Long Hold: 60 s @ 10 kg', 'test Long Hold: 70 s @ 10.0 kg')[0]).toContain('before 1:00');
    expect(say('test Hang Pull: 60 s @ bw+10 kg', 'test Hang Pull: 70 s @ bw-10 kg')[0]).not.toContain(
      'before',
    );
    expect(
      say('test Hand Press: 30 in 1:00 @ 2x10 kg', 'test Hand Press: 30 in 0:50 @ 10 kg')[0],
    ).not.toContain('before');
  });

  test('explains itself', () => {
    const [found] = testsOf('test Long Hold: 75 s', 'test Long Hold: 60 s, 90 s');
    expect(found).toMatchObject({
      movement: 'Long Hold',
      isBest: true,
      before: { value: 75, date: '2026-02-01' },
    });
    expect(found!.result).toEqual({
      value: 90,
      unit: 's',
      bound: 'exact',
      method: 'test-result',
      inputs: [
        { label: 'set 2', value: 90, unit: 's' },
        { label: 'best before, 2026-02-01', value: 75, unit: 's' },
      ],
      omitted: [],
    });
    const [first] = testsOf('test Loft Rower: 500 m in 1:40');
    expect(first).toEqual({
      movement: 'Loft Rower',
      of: '500 m',
      result: {
        value: 100,
        unit: 's',
        bound: 'exact',
        method: 'test-result',
        inputs: [{ label: 'set 1', value: 100, unit: 's' }],
        omitted: [],
      },
    });
  });
});

test('in a group each has their own', () => {
  const log = `session 2026-02-01 ${NAME} | Wenna Flit\n  test Floor Wave: 30 | 20\n`;
  const { works } = readWorks(DEFINITIONS, log);
  const results = [NAME, 'Wenna Flit'].map((name) => {
    const work = works.of(works.practice.sessionsOf(name)[0]!);
    return findTestResults(works, work).map(printTestResult);
  });
  expect(results).toEqual([['Floor Wave 30 reps'], ['Floor Wave 20 reps']]);
});
