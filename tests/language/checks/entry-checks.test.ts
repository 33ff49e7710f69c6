import { checkEntry } from '@plimsoll/language/checks/entry-checks';
import type { Entry } from '@plimsoll/language/model/entry';
import { describe, expect, test } from 'vitest';
import { listProblems } from '../support/print-problems.ts';
import { readText } from '../support/read-text.ts';

/** Codes of all that the check of single entries says about lines of one file. */
const check = (...lines: readonly string[]): string[] =>
  readText(...lines)
    .entries.flatMap(({ entry }) => checkEntry(entry))
    .map(({ code }) => code);

const SESSION = 'session 2026-11-17 Ivo Brundt';
const GROUP = 'session 2026-11-17 Nell | Tibor | Bev';

describe('what counts as rounds', () => {
  test.each([
    ['one set for all rounds', 'A circuit, 4 rounds', ['Row: 8 @ 20 kg']],
    ['one for each', 'A circuit, 4 rounds', ['Row: 8, 8, 7, 6']],
    ['counted ones', 'A circuit, 4 rounds', ['Row: 4x8', 'Pull: 3x8, 7']],
    ['one for each round of several passes', 'A circuit, 3 rounds x 2 passes', ['Row: 8, 8, 7']],
    ['one for each pass', 'A circuit, 3 rounds x 2 passes', ['Row: 8, 8, 7, 8, 8, 7']],
    ['those that were done', 'A circuit, 4 rounds', ['Row: 8, 8', 'time 2:00, 2:10', 'done 2 of 4 rounds']],
    [
      'the begun one too',
      'A circuit, 4 rounds',
      ['Row: 8, 8, 3', 'time 2:00, 2:10', 'done 2 of 4 rounds + 3'],
    ],
    ['a skipped line', 'A circuit, 4 rounds', ['Row: skipped', 'Pull: 8']],
    ['sets of a warm-up', 'A circuit, 4 rounds', ['warmup Row: 5, 5', 'Row: 8']],
    ['no rounds at all', 'A superset', ['Row: 8, 8, 7', 'time 2:00']],
    ['an amrap', 'A amrap 12:00', ['Row: 8, 8, 7', 'done 4 rounds + 5']],
    ['movements of the round begun', 'A amrap 12:00', ['Row: 8', 'Pull: 5/side', 'done 4 rounds + 8 + 10']],
    [
      'lines that take turns',
      'A intervals 6 x 500 m, alternating',
      ['Row: 500 m, 500 m, 500 m', 'Ski: 500 m'],
    ],
    ['a line that broke off', 'A circuit, 4 rounds', ['Row: 8, 8 @ pin']],
    ['an end within its cap', 'A for time, 3 rounds, cap 12:00', ['Row: 8', 'done in 12:00']],
  ])('%s', (_, block, lines) => {
    expect(check(SESSION, block, ...lines)).toEqual([]);
  });

  test('the rounds of a plan are rounds too, week by week', () => {
    expect(check('plan Base', 'day 1', 'A circuit, 3 rounds', 'Row: 8 | 8, 7, 6 | 8, 8')).toEqual([
      'round-count',
    ]);
  });
});

describe('what was done of a round begun', () => {
  test.each([
    ['done 4 rounds + 10', 'done 4 rounds + 8 + 2'],
    ['done 4 rounds + 18', 'done 5 rounds'],
    ['done 4 rounds + 30', 'done 5 rounds + 8 + 4'],
  ])('is no more than a movement asks for: %s', (done, written) => {
    const [found] = listProblems(readText(SESSION, 'A amrap 12:00', 'Row: 8', 'Pull: 5/side', done));
    expect(found?.problem.code).toBe('done-mismatch');
    expect(found?.problem.fixes?.map(({ title }) => title)).toEqual([`Write ${written}`]);
  });

  test('has no fix where it is not clear how it comes out', () => {
    const [found] = listProblems(
      readText(SESSION, 'A amrap 12:00', 'Row: 8', 'Ski: 200 m', 'done 4 rounds + 10'),
    );
    expect(found?.problem.message).toBe(
      '10 are more than the 8 of Row: behind a plus stands what was done of each movement in turn, such as + 10 + 2',
    );
    expect(found?.problem.fixes).toBeUndefined();
  });
});

describe('athletes of a group', () => {
  test.each([
    ['one value for all', ['Row: 8', 'effort 7', 'lasted 58 min']],
    ['one for each', ['Row: 8 | 9 | 10', 'effort 7 | ? | 8', 'lasted 58 min | 50 min | ?']],
  ])('%s', (_, lines) => {
    expect(check(GROUP, ...lines)).toEqual([]);
  });

  test('weeks of a plan are no athletes', () => {
    expect(check('plan Base', 'for Nell, Tibor', 'Row: 8 | 9 | 10 | 11')).toEqual([]);
  });

  test.each(['Row: 8 | 9', 'effort 7 | 8', 'lasted 58 min | 50 min'])('%s', (line) => {
    expect(check(GROUP, line)).toEqual(['cell-count']);
  });

  test('the times of rounds', () => {
    expect(check(GROUP, 'A circuit, 2 rounds', 'Row: 8', 'time 1:00, 2:00 | 1:00, ?')).toEqual([
      'cell-count',
    ]);
    expect(check(GROUP, 'A circuit, 2 rounds', 'Row: 8', 'time 1:00, 2:00 | 1:00, ? | 1:00')).toEqual([
      'time-count',
    ]);
  });
});

describe('what a plan may say', () => {
  const lines = [
    'Row: 8-12 @ 2x18 kg, then +2 kg from 8',
    'Push-up: amrap, +1 rep each week to 16',
    'Squat: 5+ @ 70-75% rpe 7-8, rest 2:00-3:00, after 3 misses -10%',
    'Press: 5 @ rpe 8, 5 @ -10%',
    'week 5 test Squat: 1 @ 100%',
    'rest 1:15-1:30',
  ];
  test('says nothing in a plan, nor where nobody knows what the lines are', () => {
    expect(check('plan Base', 'A circuit, rest 1:00-1:15', ...lines)).toEqual([]);
    expect(check('plna Base', 'A circuit, rest 1:00-1:15', ...lines)).toEqual([]);
  });

  test('says it of every one in a session', () => {
    const said = check(SESSION, 'A circuit, rest 1:00-1:15', ...lines);
    expect(new Set(said)).toEqual(new Set(['for-plans']));
    expect(said).toHaveLength(15);
  });

  test('an attempt, an unrecorded and a skipped set are facts', () => {
    expect(
      check(SESSION, 'Row: 4 of 5 @ 20 kg, ? @ 20 kg, skipped', 'Push-up: (2+2+2 rest 20 s), 8 left 7 right'),
    ).toEqual([]);
  });
});

describe('loads of a line', () => {
  test.each([
    'Row: 5 @ 20, 5 @ 60, 3 @ 100, 1 @ 140 kg',
    'Row: 5 @ 20, 5 @ 80 kg',
    'Row: 5 @ 20, 5 @ 60 kg',
    'Row: 5 @ 10 kg, 5 @ 100 kg',
    'Row: 5 @ bw+5 kg, 5 @ 60 kg',
    'Row: 5 @ 100 kg',
  ])('%s are even enough', (line) => {
    expect(check(SESSION, line)).toEqual([]);
  });

  test.each(['Row: 5 @ 19, 5 @ 80 kg', 'Row: 5 @ 241, 5 @ 80 kg', 'Row: 5 @ 9, 5 @ 90, 5 @ 95 kg'])(
    '%s are not',
    (line) => {
      expect(check(SESSION, line)).toEqual(['uneven-loads']);
    },
  );

  test('those of another athlete are not compared', () => {
    expect(check(GROUP, 'Row: 5 @ 15 | 5 @ 100 kg | 5 @ 60')).toEqual([]);
  });
});

describe('names', () => {
  test.each([
    'athlete Ivo Brundt',
    'athlete Attila Atwater',
    'athlete 王伟',
    'exercise T-Bar Row',
    'exercise 90/90 Hip Lift',
    'exercise Testudo Squat',
    'exercise Weekend Walk',
    'exercise Farmer Carry (heavy)',
    'exercise Rest Pause Curl',
    'place Hall #2',
    'plan Base at home',
    'exercise',
  ])('%s', (line) => {
    expect(check(line)).toEqual([]);
  });

  test.each([
    'exercise tempo',
    'exercise Warm-up Walk',
    'athlete At Home',
    'place 5',
    'plan week 5',
    'exercise EFFORT',
  ])('%s', (line) => {
    expect(check(line)).toEqual(['name-rules']);
  });
});

describe('words of an exercise', () => {
  test('in any case and with or without hyphens', () => {
    expect(
      check(
        'exercise Row',
        'pattern Horizontal  Pull',
        'position half kneeling',
        'trunk resists Side-Bend',
        'muscles QUADS, Lats 1/2',
      ),
    ).toEqual([]);
  });
});

test('an entry is checked by itself: the same entry says the same', () => {
  const { entries } = readText('', SESSION, 'Row: 8-12', '', SESSION, 'Row: 8-12', '');
  const [first, second] = entries.map(({ entry }) => checkEntry(entry as Entry));
  expect(first).toEqual(second);
});
