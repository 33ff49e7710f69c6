import { describe, expect, test } from 'vitest';
import {
  computeDetectableChange,
  computeTypicalError,
  computeTypicalErrorPercent,
  computeWorthwhileChange,
} from '../../../language/src/measures/reliability.ts';
import { expectNear } from './expect-near.ts';

const FIRST = [100, 110, 120, 95, 130];
const SECOND = [102.5, 110, 117.5, 97.5, 132.5];
const PAIRS = FIRST.map((first, index) => ({ first, second: SECOND[index]! }));

describe('computed by the formulas of Hopkins 2000, from memory (0.2 deviations: seen in a secondary copy)', () => {
  test.each([
    ['typical error', computeTypicalError(PAIRS), 1.581139],
    ['typical error in percent of 111.5', computeTypicalErrorPercent(PAIRS), 1.418062],
    ['smallest real change', computeDetectableChange(computeTypicalError(PAIRS)!), 4.382693],
    ['smallest worthwhile change', computeWorthwhileChange(FIRST), 2.863564],
  ])('%s', (_name, actual, expected) => {
    expectNear(actual, expected, 1e-6);
  });
});

test('a shift between the two days is no error', () => {
  expect(computeTypicalError(FIRST.map((first) => ({ first, second: first + 5 })))).toBe(0);
});

test('one pair is too few', () => {
  expect(computeTypicalError(PAIRS.slice(0, 1))).toBeUndefined();
  expect(computeTypicalErrorPercent(PAIRS.slice(0, 1))).toBeUndefined();
  expect(computeTypicalErrorPercent([])).toBeUndefined();
  expect(computeWorthwhileChange([100])).toBeUndefined();
});

test.each([0, -10])('no percentage of a mean of %d', (first) => {
  const pairs = [
    { first, second: first },
    { first, second: first },
  ];
  expect(computeTypicalErrorPercent(pairs)).toBeUndefined();
});
