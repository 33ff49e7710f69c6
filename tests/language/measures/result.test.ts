import { expect, test } from 'vitest';
import { toResult, weakestBound } from '../../../language/src/measures/result.ts';

test('an exact value with nothing left out is the usual case', () => {
  expect(toResult({ value: 1560, unit: 'kg', method: 'volume-load' })).toEqual({
    value: 1560,
    unit: 'kg',
    method: 'volume-load',
    bound: 'exact',
    inputs: [],
    omitted: [],
  });
});

test('what is given stands', () => {
  const parts = {
    value: 102,
    unit: 'kg',
    method: 'epley',
    bound: 'at least',
    spread: { low: 98, high: 105 },
    inputs: [{ label: 'load', value: 85, unit: 'kg' }],
    omitted: [{ what: 'set 3', why: 'no load' }],
    remark: 'set 1',
  } as const;
  expect(toResult(parts)).toEqual(parts);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, undefined])(
  '%d is no value',
  (value) => {
    expect(toResult({ value, unit: 'kg', method: 'volume-load' }).value).toBeUndefined();
  },
);

test('zero is a value', () => {
  expect(toResult({ value: 0, unit: 'kg', method: 'volume-load' }).value).toBe(0);
});

test.each([
  [[], 'exact'],
  [['exact', 'exact'], 'exact'],
  [['exact', 'at least'], 'at least'],
  [['at least', 'prediction', 'exact'], 'prediction'],
] as const)('the weakest of %j is %s', (bounds, expected) => {
  expect(weakestBound(bounds)).toBe(expected);
});
