import { describe, expect, test } from 'vitest';
import {
  isReadyForMoreLoad,
  LOAD_GOALS,
  suggestRaise,
} from '../../../language/src/measures/progression-rules.ts';
import { expectNear } from './expect-near.ts';

describe('the 2-for-2 rule of the NSCA, from memory; goal of 8 in the last set (computed)', () => {
  test.each([
    [[10, 10], true],
    [[10, 9], false],
    [[9, 10], false],
    [[9, 10, 10], true],
    [[10, 8, 10], false],
    [[10, 10, 8], false],
    [[12, 11], true],
    [[10], false],
    [[], false],
  ])('last sets of %j: %s', (lastSets, expected) => {
    expect(isReadyForMoreLoad(lastSets, 8)).toBe(expected);
  });
});

test('ACSM position stand, Ratamess et al. 2009: a raise of 2 to 10 %, 60 to between 61.2 and 66', () => {
  const { low, high } = suggestRaise(60);
  expectNear(low, 61.2, 1e-12);
  expectNear(high, 66, 1e-12);
});

test('load and rep goals of Sheppard & Triplett, Essentials, 4th ed., ch. 17 (the book from memory)', () => {
  const end = (range: { low?: number; high?: number }) => `${range.low ?? ''}-${range.high ?? ''}`;
  const rows = LOAD_GOALS.map(
    ({ goal, percent, reps, sets, rest }) =>
      `${goal} | ${end(percent)} % | ${end(reps)} | ${end(sets)} | ${end(rest)} s`,
  );
  expect(rows).toEqual([
    'strength | 85- % | -6 | 2-6 | 120-300 s',
    'power, single effort | 80-90 % | 1-2 | 3-5 | 120-300 s',
    'power, multiple effort | 75-85 % | 3-5 | 3-5 | 120-300 s',
    'hypertrophy | 67-85 % | 6-12 | 3-6 | 30-90 s',
    'muscular endurance | -67 % | 12- | 2-3 | -30 s',
  ]);
});
