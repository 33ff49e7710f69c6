import { describe, expect, test } from 'vitest';
import {
  computePercentChange,
  computePercentOf,
  computePerMinute,
  divide,
} from '../../../language/src/measures/quotients.ts';
import { expectNear } from './expect-near.ts';

describe('density', () => {
  test('BMJ Military Health, table of training variables: 1560 kg in 45 min prints as 34.7', () => {
    expect(computePerMinute(1560, 45 * 60)!.toFixed(1)).toBe('34.7');
    expectNear(computePerMinute(1560, 45 * 60), 34.6667, 1e-5);
  });

  test('computed: a circuit of 2304 kg in 18.5 min', () => {
    expectNear(computePerMinute(2304, 18.5 * 60), 124.5405, 1e-6);
    expectNear(computePerMinute(2304, 18.5 * 60)! * 60, 7472.4324, 1e-6);
  });

  test('total over total: 1200 kg in 3:00 and again in 5:00 is 300 kg/min, not 320', () => {
    expect(computePerMinute(1200 + 1200, 180 + 300)).toBe(300);
  });

  test.each([
    [1560, 0],
    [1560, undefined],
    [1560, -60],
    [undefined, 60],
    [1560, Number.NaN],
  ])('none for %d in %d seconds', (amount, seconds) => {
    expect(computePerMinute(amount, seconds)).toBeUndefined();
  });
});

describe('change', () => {
  test('computed: 11 800 to 12 600 kg', () => {
    expectNear(computePercentChange(11_800, 12_600), 6.779661, 1e-6);
  });

  test('common practice: one rep more in every set of five is 20 % more reps', () => {
    expectNear(computePercentChange(3 * 5, 3 * 6), 20, 1e-12);
  });

  test('no change, and a fall to nothing', () => {
    expect(computePercentChange(500, 500)).toBe(0);
    expect(computePercentChange(500, 0)).toBe(-100);
  });

  test.each([
    [0, 12_600],
    [undefined, 12_600],
    [11_800, undefined],
  ])('from %d to %d there is none, and no Infinity', (before, now) => {
    expect(computePercentChange(before, now)).toBeUndefined();
  });
});

test('a part of the whole', () => {
  expect(computePercentOf(18, 24)).toBe(75);
  expect(computePercentOf(0, 24)).toBe(0);
  expect(computePercentOf(3, 0)).toBeUndefined();
});

test('a quotient of zero is zero', () => {
  expect(divide(0, 4)).toBe(0);
  expect(divide(2, 4)).toBe(0.5);
  expect(divide(0, 0)).toBeUndefined();
});
