import { describe, expect, test } from 'vitest';
import {
  describeRpe,
  HIGHEST_USEFUL_RIR,
  readReserve,
  toRir,
  toRirRange,
  toRpe,
  toRpeRange,
} from '../../../language/src/measures/exertion.ts';

describe('RPE = 10 - RIR from 6 to 10 (Zourdos et al. 2016)', () => {
  test.each([
    [10, 0],
    [9.5, 0.5],
    [9, 1],
    [8.5, 1.5],
    [8, 2],
    [7, 3],
    [6, 4],
  ])('RPE %d is RIR %d', (rpe, rir) => {
    expect(toRir(rpe)).toBe(rir);
    expect(toRpe(rir)).toBe(rpe);
  });

  test.each([5.5, 5, 0, 10.5, -1])('RPE %d has no reps in reserve', (rpe) => {
    expect(toRir(rpe)).toBeUndefined();
  });

  test.each([4.5, 10, -0.5])('RIR %d has no RPE', (rir) => {
    expect(toRpe(rir)).toBeUndefined();
  });
});

describe('ranges (common practice)', () => {
  test('RIR 1-2 is RPE 8-9, and back', () => {
    expect(toRpeRange({ low: 1, high: 2 })).toEqual({ low: 8, high: 9 });
    expect(toRirRange({ low: 8, high: 9 })).toEqual({ low: 1, high: 2 });
  });

  test.each([
    { low: 3, high: 6 },
    { low: -1, high: 2 },
  ])('RIR %j leaves the scale', (range) => {
    expect(toRpeRange(range)).toBeUndefined();
  });

  test.each([
    { low: 5, high: 8 },
    { low: 8, high: 11 },
  ])('RPE %j leaves the scale', (range) => {
    expect(toRirRange(range)).toBeUndefined();
  });
});

test.each([
  [{ rpe: 8 }, 2],
  [{ rir: 2 }, 2],
  [{ rir: 0 }, 0],
  [{ rir: 7 }, 7],
  [{ rpe: 5 }, undefined],
  [{}, undefined],
])('%j holds %s in reserve', (rating, expected) => {
  expect(readReserve(rating)).toBe(expected);
});

test('the cut for estimates is 4 in reserve (Hackett et al. 2017: errors grow with distance from failure)', () => {
  expect(HIGHEST_USEFUL_RIR).toBe(4);
});

test.each([
  [10, 'maximal effort'],
  [9.5, 'no further rep, but a little more load'],
  [9, '1 rep left'],
  [8.5, '1 to 2 reps left'],
  [8, '2 reps left'],
  [7.5, '2 to 3 reps left'],
  [7, '3 reps left'],
  [6, '4 to 6 reps left'],
  [5, '4 to 6 reps left'],
  [4, 'light effort'],
  [3, 'light effort'],
  [1, 'little or no effort'],
  [0, 'little or no effort'],
])('from memory of Zourdos et al. (2016): RPE %d, %s', (rpe, words) => {
  expect(describeRpe(rpe)).toBe(words);
});

test.each([10.5, -1])('RPE %d has no words', (rpe) => {
  expect(describeRpe(rpe)).toBeUndefined();
});
