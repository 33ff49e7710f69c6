import { describe, expect, test } from 'vitest';
import type { Bound } from '../../../language/src/measures/result.ts';
import type { SeriesPoint, TimeSeries } from '../../../language/src/measures/series.ts';
import {
  computeDetectable,
  computeGroupError,
  computeLineTrend,
  computeRetestError,
  computeTrend,
  computeWorthwhile,
  judgeChange,
} from '../../../language/src/measures/trend.ts';
import { expectNear } from './expect-near.ts';
import { dayOf, practiceOf, printWithOmissions } from './practice-of.ts';

const MONDAY = dayOf('2026-03-02');

const weekly = (values: readonly number[], bounds: readonly Bound[] = [], step = 7): TimeSeries => ({
  kind: 'max',
  key: 'bar press',
  title: 'Bar Press',
  unit: 'kg',
  points: values.map((value, index) => ({
    day: MONDAY + step * index,
    value,
    bound: bounds[index] ?? 'exact',
  })),
});
const LATER = MONDAY + 80;
const lower = (count: number): Bound[] => Array(count).fill('at least');

describe('a trend', () => {
  test.each<[string, TimeSeries, string]>([
    [
      // Slope and interval computed with scipy 1.17.1, stats.theilslopes.
      'that may be none: eight weekly estimates',
      weekly([140, 141.5, 141, 143, 144.5, 138, 146, 147]),
      '1 kg/week (-0.4 to 1.5 kg/week), no clear change',
    ],
    [
      // Computed with scipy as well; one odd point does not bend it.
      'that one odd point does not bend',
      weekly([120, 121, 119.5, 123, 122, 124.5, 90, 126, 125.5, 128]),
      '0.88 kg/week (0.33 to 1.2 kg/week), rising',
    ],
    ['downward', weekly([60, 59, 58, 57, 56, 55]), '-1 kg/week (-1 kg/week), falling'],
    ['level', weekly([60, 60, 60, 60, 60, 60]), '0 kg/week (0 kg/week), no clear change'],
    ['of five points', weekly([100, 102, 104, 106, 108]), '2 kg/week, no verdict from 5 of 6 points'],
    [
      'per week, whatever the days between: 1 kg in 3.5 days',
      weekly([100, 101, 102, 103, 104, 105], [], 3.5),
      '2 kg/week (2 kg/week), rising',
    ],
    [
      'of lower bounds alone',
      weekly([100, 101, 102, 103, 104, 105], lower(6)),
      '1 kg/week (1 kg/week), rising, from lower bounds',
    ],
    [
      'of estimates, where there are six of them beside more lower bounds',
      weekly(
        [100, 200, 101, 102, 200, 103, 104, 105, 300, 300, 300, 300],
        ['exact', 'at least', 'exact', 'exact', 'at least', 'exact', 'exact', 'exact', ...lower(4)],
      ),
      // The estimates stand in weeks 0, 2, 3, 5, 6, 7: slopes 1/2, 2/3, 3/5, 4/6, 5/7, 1, 2/3, 3/4, 4/5, 1/2, 2/3, 3/4,
      // 1, 1, 1; the median is 5/7 or 0.71.
      '0.71 kg/week (0.5 to 1 kg/week), rising [6 points: lower bounds only]',
    ],
    [
      'of lower bounds, where estimates are too few',
      weekly([100, 101, 102, 103, 104, 105, 110], [...lower(6), 'exact']),
      '1 kg/week (1 kg/week), rising, from lower bounds [1 point: estimates, too few beside the lower bounds]',
    ],
  ])('%s', (_name, series, expected) => {
    expect(printWithOmissions(computeTrend(series, LATER))).toBe(expected);
  });

  test('names its points', () => {
    expect(computeTrend(weekly([100, 101, 102]), LATER)!.inputs).toEqual([
      { label: 'points from 2026-03-02 to 2026-03-16', value: 3, unit: '' },
      { label: '2026-03-02', value: 100, unit: 'kg' },
      { label: '2026-03-16', value: 102, unit: 'kg' },
    ]);
  });

  test('looks back half a year, or as long as it is told to', () => {
    const series = weekly([500, 100, 101, 102], [], 70);
    // 26 weeks before day 210 is day 28: the first point is older.
    expect(computeTrend(series, MONDAY + 210)!.value).toBeCloseTo(0.1, 12);
    expect(computeTrend(series, MONDAY + 210, 52)!.inputs[0]!.value).toBe(4);
    expect(computeTrend(series, MONDAY + 140, 52)!.inputs[0]!.value).toBe(3);
  });

  test('of a density is per minute and week', () => {
    expect(computeTrend({ ...weekly([300, 310, 320]), unit: 'kg/min' }, LATER)!.unit).toBe('kg/min/week');
  });

  test('needs two days', () => {
    expect(computeTrend(weekly([]), LATER)).toBeUndefined();
    expect(computeTrend(weekly([100]), LATER)).toBeUndefined();
    expect(computeTrend(weekly([100, 101], [], 0), LATER)).toBeUndefined();
  });

  test('has no verdict where too few days differ', () => {
    const points = [0, 0, 0, 0, 0, 1].map(
      (day, index): SeriesPoint => ({ day: MONDAY + 7 * day, value: 100 + index, bound: 'exact' }),
    );
    expect(computeTrend({ ...weekly([]), points }, LATER)!.remark).toBe('no verdict, too few different days');
  });
});

describe('typical error of a retest', () => {
  const errorOf = (lines: string, movement = 'Bar Press') => {
    const { practice } = practiceOf(
      `exercise Bar Press\n  also Loft Press\nathlete Ambrose Quill\n${lines}\n`,
    );
    return computeRetestError(practice, 'Ambrose Quill', movement);
  };

  test.each<[string, string, number | undefined]>([
    // Difference over √2.
    ['two loads', '  retest Bar Press: 100 kg, 102.5 kg on 2026-02-01', 2.5 / Math.SQRT2],
    // Mean 101, squares 1 + 0 + 1 = 2, over 2.
    ['three loads', '  retest Bar Press: 100 kg, 101 kg, 102 kg on 2026-02-01', 1],
    // Squares 2² / 2 = 2 and 4² / 2 = 8, over 2 degrees of freedom.
    [
      'two lines, pooled',
      '  retest Bar Press: 100 kg, 102 kg on 2026-02-01\n  retest Loft Press: 110 kg, 106 kg on 2026-03-01',
      Math.sqrt(5),
    ],
    ['pounds', '  retest Bar Press: 100 lb, 105 lb on 2026-02-01', (5 * 0.45359237) / Math.SQRT2],
  ])('%s', (_name, lines, expected) => {
    // Masses are kept in whole grams.
    expect(errorOf(lines)!.value).toBeCloseTo(expected!, 3);
  });

  test('none of one load, of another movement, or without a line', () => {
    expect(errorOf('  retest Bar Press: 100 kg on 2026-02-01')).toBeUndefined();
    expect(errorOf('  retest Bar Press: 100 kg, 102 kg on 2026-02-01', 'Long Hinge')).toBeUndefined();
    expect(errorOf('  born 1990')).toBeUndefined();
  });

  test('of equal repeats is not known, and not 0', () => {
    expect(errorOf('  retest Bar Press: 100 kg, 100 kg on 2026-02-01')).toMatchObject({
      value: undefined,
      remark: 'the repeats were equal',
    });
  });
});

describe('a change is called real', () => {
  const { practice } = practiceOf(
    'athlete Ambrose Quill\n  retest Bar Press: 100 kg, 102 kg on 2026-02-01\n  retest Long Hinge: 90 kg, 90 kg on 2026-02-01\n',
  );
  // 2 / √2 = 1.414 kg; 95 % of chance differences stay within 1.96 × 2 = 3.92 kg.
  const error = computeRetestError(practice, 'Ambrose Quill', 'Bar Press');
  const equal = computeRetestError(practice, 'Ambrose Quill', 'Long Hinge');
  const point = (value: number, bound: Bound = 'exact', day = 0): SeriesPoint => ({
    day: MONDAY + day,
    value,
    bound,
  });

  test.each([
    ['beyond what chance does', point(100), point(104), error, '4 kg, real: beyond chance'],
    ['downward too', point(100), point(96), error, '-4 kg, real: beyond chance'],
    // Of an unchanged athlete 48 of 100 differences are more than one typical error: P(|z| > 1 / √2).
    [
      'not by merely exceeding the typical error',
      point(100),
      point(103.9),
      error,
      '3.9 kg, not called real: chance can do as much',
    ],
    ['nor downward', point(100), point(98.5), error, '-1.5 kg, not called real: chance can do as much'],
    ['not within it', point(100), point(101.4), error, '1.4 kg, within the typical error'],
    ['not without a retest', point(100), point(120), undefined, '20 kg, not called real: no retest'],
    ['not where the repeats were equal', point(100), point(120), equal, '20 kg, not called real: no retest'],
    [
      'not from a lower bound',
      point(100, 'at least'),
      point(120),
      error,
      '20 kg, not called real: a lower bound',
    ],
    [
      'not to a lower bound',
      point(100),
      point(120, 'at least'),
      error,
      '20 kg, not called real: a lower bound',
    ],
  ] as const)('%s', (_name, before, after, typical, expected) => {
    expect(printWithOmissions(judgeChange(before, after, 'kg', typical))).toBe(expected);
  });

  test('and names what it rests on', () => {
    const { inputs } = judgeChange(point(100), point(102, 'exact', 7), 'kg', error);
    expect(inputs.map(({ label }) => label)).toEqual([
      '2026-03-09',
      '2026-03-02',
      'typical error',
      'within which 95 % of chance differences stay',
    ]);
    expect(inputs[3]!.value).toBeCloseTo(3.92, 12);
  });
});

describe('smallest worthwhile change', () => {
  const sessions = (loads: readonly (string | undefined)[]): string =>
    loads
      .map((load, index) => `session 2026-03-02 Person ${'ABCDEFG'[index]}x\n  Bar Press: ${load}\n`)
      .join('');
  const worthwhile = (text: string) =>
    computeWorthwhile(practiceOf(`exercise Bar Press\n${text}`).works, 'bar press', MONDAY + 7);
  const singles = [100, 110, 120, 95, 130].map((load) => `1 @ ${load} kg rpe 10`);

  // Computed: tests 100, 110, 120, 95, 130 have a standard deviation of 14.317821, and 0.2 of it is 2.863564.
  test('is 0.2 of the standard deviation between athletes', () => {
    const result = worthwhile(sessions(singles))!;
    expect(result.value).toBeCloseTo(2.863564, 6);
    // Of whom the lowest and the highest are is not said.
    expect(result.inputs).toEqual([
      { label: 'athletes', value: 5, unit: '' },
      { label: 'lowest', value: 95, unit: 'kg' },
      { label: 'highest', value: 130, unit: 'kg' },
    ]);
  });

  test('takes the last estimate of each up to the day', () => {
    const later = 'session 2026-03-08 Person Ax\n  Bar Press: 1 @ 100 kg rpe 10\n';
    const beyond = 'session 2026-03-10 Person Ax\n  Bar Press: 1 @ 180 kg rpe 10\n';
    const text = `${sessions(['1 @ 60 kg rpe 10', ...singles.slice(1)])}${later}${beyond}`;
    expect(worthwhile(text)!.value).toBeCloseTo(2.863564, 6);
  });

  test('is none of four athletes, a lower bound not counted', () => {
    expect(worthwhile(sessions([...singles.slice(1), '5 @ 100 kg']))).toBeUndefined();
  });
});

describe('the straight line beside a trend', () => {
  test('with its interval, standard error and points', () => {
    // Computed for the same eight weekly estimates: slope 0.761905, SE 0.408219, interval -0.236972 to 1.760782.
    const line = computeLineTrend(weekly([140, 141.5, 141, 143, 144.5, 138, 146, 147]), LATER)!;
    expectNear(line.value, 0.761905);
    expectNear(line.spread!.low, -0.236972);
    expectNear(line.spread!.high, 1.760782);
    expectNear(line.inputs.at(-1)!.value, 0.408219);
    expect(line).toMatchObject({ unit: 'kg/week', method: 'least-squares', bound: 'exact', omitted: [] });
    expect(line.inputs.map(({ label, unit }) => [label, unit])).toEqual([
      ['points', ''],
      ['2026-03-02', 'kg'],
      ['2026-04-20', 'kg'],
      ['standard error', 'kg/week'],
    ]);
    expect(line.inputs[0]!.value).toBe(8);
  });

  test('of the same points as the trend', () => {
    const mixed = weekly([100, 500, 102, 103, 104, 105, 106], ['exact', 'at least']);
    expect(computeLineTrend(mixed, LATER)).toMatchObject({
      value: 1,
      omitted: [{ what: '1 point', why: 'lower bounds only' }],
    });
    const long = weekly([500, 100, 101, 102], [], 70);
    expect(computeLineTrend(long, MONDAY + 210)!.inputs[0]!.value).toBe(3);
    expect(computeLineTrend(long, MONDAY + 210, 52)!.inputs[0]!.value).toBe(4);
  });

  test('none below three points, or on one day', () => {
    expect(computeLineTrend(weekly([100, 101]), LATER)).toBeUndefined();
    expect(computeLineTrend(weekly([100, 101, 102], [], 0), LATER)).toBeUndefined();
    expect(computeLineTrend(weekly([]), LATER)).toBeUndefined();
  });
});

describe('what a test can tell apart', () => {
  // Computed: tests 100, 110, 120, 95, 130 and 102.5, 110, 117.5, 97.5, 132.5: typical error 1.581139, 1.418062 % of the
  // mean 111.5; smallest detectable change 4.382693.
  const PAIRS = [
    '100 kg, 102.5 kg',
    '110 kg, 110 kg',
    '120 kg, 117.5 kg',
    '95 kg, 97.5 kg',
    '130 kg, 132.5 kg',
  ];
  const groupOf = (pairs: readonly string[]) =>
    practiceOf(
      `exercise Bar Press\n  also Loft Press\n${pairs
        .map(
          (pair, index) =>
            `athlete Person ${'ABCDEFG'[index]}x\n  retest Loft Press: ${pair} on 2026-02-01\n`,
        )
        .join('')}`,
    ).practice;

  test('over the practice: typical error, also in percent', () => {
    const error = computeGroupError(groupOf(PAIRS), 'Bar Press')!;
    expectNear(error.value, 1.581139);
    expect(error).toMatchObject({ unit: 'kg', method: 'typical-error', bound: 'exact' });
    expect(error.inputs[0]).toEqual({ label: 'retests', value: 5, unit: '' });
    expect(error.inputs.slice(1, 6).map(({ label, value, unit }) => `${label} ${value} ${unit}`)).toEqual([
      'difference 2.5 kg',
      'difference 0 kg',
      'difference -2.5 kg',
      'difference 2.5 kg',
      'difference 2.5 kg',
    ]);
    expect(error.inputs[6]).toMatchObject({ label: 'of the mean', unit: '%' });
    expectNear(error.inputs[6]!.value, 1.418062);
    const detectable = computeDetectable(error)!;
    expectNear(detectable.value, 4.382693);
    expect(detectable).toMatchObject({ unit: 'kg', method: 'minimal-detectable-change' });
    expect(detectable.inputs).toEqual([{ label: 'typical error', value: error.value, unit: 'kg' }]);
  });

  test('takes the first two of three', () => {
    const three = computeGroupError(groupOf(['100 kg, 102.5 kg, 200 kg', ...PAIRS.slice(1)]), 'Bar Press')!;
    expectNear(three.value, 1.581139);
  });

  test('is none of four retests, of equal ones, or of another movement', () => {
    expect(computeGroupError(groupOf(PAIRS.slice(1)), 'Bar Press')).toBeUndefined();
    expect(computeGroupError(groupOf(Array(5).fill('100 kg, 100 kg')), 'Bar Press')).toBeUndefined();
    expect(computeGroupError(groupOf(PAIRS), 'Long Hinge')).toBeUndefined();
    expect(computeDetectable(undefined)).toBeUndefined();
  });
});
