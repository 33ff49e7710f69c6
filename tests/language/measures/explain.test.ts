import { describe, expect, test } from 'vitest';
import { describeResult, explain, printResult } from '../../../language/src/measures/explain.ts';
import { toResult } from '../../../language/src/measures/result.ts';

const load = toResult({
  value: 1560,
  unit: 'kg',
  method: 'volume-load',
  inputs: [
    { label: 'sets', value: 3, unit: 'sets' },
    { label: 'load', value: 65, unit: 'kg' },
  ],
});

test('value, formula, what went in, source and note, in this order', () => {
  expect(explain(load)).toBe(
    [
      '**Volume load: 1 560 kg**',
      '',
      '- Formula: sum over sets of reps × load',
      '- What went in: sets 3 sets; load 65 kg',
      '- Source: Scott BR et al. (2016) Sports Med 46(5):687-698; Haff GG (2010) Strength Cond J 32(4):102-112 (from memory)',
      '- Note: Loads are kept in whole grams and rounded only when shown.',
    ].join('\n'),
  );
});

test('what was left out is named, and a method without a note has none', () => {
  const omitted = [
    { what: 'round 4', why: 'not timed' },
    { what: 'Kettle Drag', why: 'no load' },
  ];
  const text = explain(toResult({ value: undefined, unit: 'reps/min', method: 'work-rest', omitted }));
  expect(text).toBe(
    [
      '**Work to rest: none**',
      '',
      '- Formula: recorded work time / recorded or written rest',
      '- Left out: round 4 (not timed); Kettle Drag (no load)',
      '- Source: common practice',
    ].join('\n'),
  );
});

test("a coach's words cannot mark anything up", () => {
  const label = '[Hop](command:x) *now* <b> `c` a_b | #1 ~~x~~ \\ &lt; \n  next';
  const text = explain(
    toResult({ value: 1, unit: '', method: 'reps', inputs: [{ label, value: 1, unit: '' }] }),
  );
  expect(text).toContain(
    '\\[Hop\\](command:x) \\*now\\* \\<b\\> \\`c\\` a\\_b \\| \\#1 \\~\\~x\\~\\~ \\\\ \\&lt; next 1',
  );
  expect(text.split('\n')).toHaveLength(5);
});

test('the plain description holds the same words without markup', () => {
  expect(describeResult(load).title).toBe('Volume load');
  expect(describeResult(load).value).toBe('1 560 kg');
  expect(describeResult(load).lines.map(([heading]) => heading)).toEqual([
    'Formula',
    'What went in',
    'Source',
    'Note',
  ]);
});

describe('the value alone', () => {
  const estimate = { value: 102.04, unit: 'kg', method: 'epley' } as const;
  test.each([
    ['exact', toResult(estimate), '102.04 kg'],
    ['a bound', toResult({ ...estimate, bound: 'at least' }), 'at least 102.04 kg'],
    ['a prediction', toResult({ ...estimate, bound: 'prediction' }), 'about 102.04 kg'],
    ['a spread', toResult({ ...estimate, spread: { low: 98, high: 105.2 } }), '102.04 kg (98 to 105.2 kg)'],
    ['a remark', toResult({ ...estimate, remark: 'rough, over 10 reps' }), '102.04 kg, rough, over 10 reps'],
    ['nothing', toResult({ ...estimate, value: undefined }), 'none'],
    [
      'nothing, and why',
      toResult({ ...estimate, value: undefined, remark: 'no body mass' }),
      'none, no body mass',
    ],
    ['a ratio', toResult({ value: 1.239, unit: '', method: 'monotony' }), '1.24'],
    ['a rate', toResult({ value: 337.26, unit: 'kg/min', method: 'work-density' }), '337.3 kg/min'],
    ['seconds', toResult({ value: 547.4, unit: 's', method: 'work-density' }), '547 s'],
    ['a zero', toResult({ value: 0, unit: 'kg', method: 'volume-load' }), '0 kg'],
    ['one of what is counted', toResult({ value: 1, unit: 'reps', method: 'reps' }), '1 rep'],
    ['nothing of what is counted', toResult({ value: 0, unit: 'sets', method: 'sets' }), '0 sets'],
    ['one of what is measured', toResult({ value: 1, unit: 's', method: 'seconds' }), '1 s'],
    ['one contact of the body', toResult({ value: 1, unit: 'contacts', method: 'contacts' }), '1 contact'],
  ])('%s', (_name, result, expected) => {
    expect(printResult(result)).toBe(expected);
  });
});
