import { expect, test } from 'vitest';
import { mergeOmissions, toResult, weakestBound } from '../../../language/src/measures/result.ts';

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
    const result = toResult({ value, unit: 'kg', method: 'volume-load', bound: 'at least' });
    expect(result.value).toBeUndefined();
    // What is not there is neither exact nor a bound.
    expect(result.bound).toBe('none');
  },
);

test('zero is a value', () => {
  expect(toResult({ value: 0, unit: 'kg', method: 'volume-load' }).value).toBe(0);
});

test('what was left out of several numbers is named once', () => {
  const [dip, plank] = ['Dip', 'Plank'].map((what) => ({ what, why: 'no load written' }));
  expect(mergeOmissions([dip!], [plank!, dip!], [])).toEqual([dip, plank]);
  expect(mergeOmissions([dip!], [{ what: 'Dip', why: 'a set not recorded' }])).toHaveLength(2);
});

test.each([
  [[], 'exact'],
  [['exact', 'exact'], 'exact'],
  [['exact', 'at least'], 'at least'],
  [['at least', 'prediction', 'exact'], 'prediction'],
] as const)('the weakest of %j is %s', (bounds, expected) => {
  expect(weakestBound(bounds)).toBe(expected);
});
