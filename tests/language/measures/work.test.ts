import { describe, expect, test } from 'vitest';
import { addWork, hasMetres, NO_WORK, volumeOf, type Work } from '../../../language/src/measures/work.ts';

/** Every sum another number, so that none can be taken for another. */
const SOME: Work = {
  sets: 1,
  hardSets: 2,
  reps: 3,
  weighedReps: 4,
  external: 5,
  body: 6,
  carried: 7,
  seconds: 8,
  contacts: 9,
  metres: 10,
  carriedMetres: 12,
  machineMetres: 13,
  calories: 11,
  atLeast: false,
  omitted: [{ what: 'Dip', why: 'a set not recorded' }],
};

describe('a sum of work', () => {
  test('adds each kind to its like, and names once what was left out', () => {
    const more = { what: 'Plank', why: 'a set not recorded' };
    const other = { what: 'Dip', why: 'no load written' };
    expect(addWork([SOME, { ...SOME, omitted: [...SOME.omitted, more, other] }])).toEqual({
      sets: 2,
      hardSets: 4,
      reps: 6,
      weighedReps: 8,
      external: 10,
      body: 12,
      carried: 14,
      seconds: 16,
      contacts: 18,
      metres: 20,
      carriedMetres: 24,
      machineMetres: 26,
      calories: 22,
      atLeast: false,
      omitted: [...SOME.omitted, more, other],
    });
  });

  test('is a lower bound where one of its parts is', () => {
    expect(addWork([SOME, { ...SOME, atLeast: true }]).atLeast).toBe(true);
    expect(addWork([{ ...SOME, atLeast: true }, SOME]).atLeast).toBe(true);
    expect(addWork([SOME, SOME]).atLeast).toBe(false);
  });

  test('of one part is that part, of none nothing', () => {
    expect(addWork([SOME])).toBe(SOME);
    expect(addWork([])).toEqual(NO_WORK);
    expect(addWork([])).toEqual({
      ...Object.fromEntries(Object.keys(SOME).map((key) => [key, 0])),
      atLeast: false,
      omitted: [],
    });
  });

  test('changes none of its parts', () => {
    addWork([NO_WORK, SOME]);
    expect(NO_WORK.sets).toBe(0);
    expect(NO_WORK.omitted).toEqual([]);
  });
});

test.each(['metres', 'carriedMetres', 'machineMetres'] as const)('%s are metres', (sum) => {
  expect(hasMetres({ ...NO_WORK, [sum]: 1 })).toBe(true);
  expect(hasMetres({ ...SOME, metres: 0, carriedMetres: 0, machineMetres: 0 })).toBe(false);
});

test('kilograms are those outside and the share of the body, from whole grams', () => {
  expect(volumeOf({ ...NO_WORK, external: 1_275_000, body: 600_500 })).toBe(1875.5);
});
