import { describe, expect, test } from 'vitest';
import { toChangeResult } from '../../../language/src/measures/change-result.ts';
import { describeResult } from '../../../language/src/measures/explain.ts';

const INPUTS = [
  { label: 'now', value: 12_600, unit: 'kg' },
  { label: 'week 46', value: 11_800, unit: 'kg' },
] as const;
const DIP = { what: 'Dip', why: 'a set not recorded' };

describe('a change in percent', () => {
  // Computed: 11 800 to 12 600 kg is +6.78 %.
  const up = { percent: 6.779661, atLeast: false, inputs: INPUTS, omitted: [[DIP], [DIP]] } as const;

  test('names what was left out of either once', () => {
    expect(toChangeResult(up)).toEqual({
      value: 6.779661,
      unit: '%',
      method: 'change',
      bound: 'exact',
      inputs: INPUTS,
      omitted: [DIP],
    });
  });

  test.each([
    ['so much up at least', { ...up, atLeast: true }, 'at least 6.8 %'],
    ['so much down at least', { ...up, percent: -6.779661, atLeast: true }, '-6.8 %, or less'],
    ['of what is known', up, '6.8 %'],
    [
      'of nothing',
      { ...up, percent: undefined, atLeast: true },
      'none, nothing before, or open since a total is a lower bound',
    ],
  ])('%s', (_name, parts, expected) => {
    expect(describeResult(toChangeResult(parts)).value).toBe(expected);
  });

  test('which there is not is no exact one', () => {
    expect(toChangeResult({ ...up, percent: 0, atLeast: true })).toMatchObject({
      value: 0,
      bound: 'exact',
      remark: 'a total is a lower bound',
    });
    expect(toChangeResult({ ...up, percent: undefined })).toMatchObject({ value: undefined, bound: 'none' });
  });
});
