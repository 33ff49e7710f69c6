import { toDayNumber } from '@plimsoll/language/calendar/iso-date';
import type { SeriesPoint } from '@plimsoll/language/measures/series';
import { describeSeries, drawSparkline } from '@plimsoll/language/summaries/sparkline';
import { describe, expect, test } from 'vitest';

test.each([
  [[10, 20, 30], '▁▅█'],
  [[30, 20, 10], '█▅▁'],
  [[0, 1, 2, 3, 4, 5, 6, 7], '▁▂▃▄▅▆▇█'],
  [[-5, 5], '▁█'],
  [[82, 82, 82], '▄▄▄'],
  [[7], '▄'],
  [[], ''],
])('%j is drawn as %s', (values, expected) => {
  expect(drawSparkline(values)).toBe(expected);
});

describe('a series in words', () => {
  const start = toDayNumber('2026-10-05');
  const weekly = (values: readonly number[], bound: SeriesPoint['bound'] = 'exact'): SeriesPoint[] =>
    values.map((value, index) => ({ day: start + 7 * index, value, bound }));
  const write = (
    points: readonly SeriesPoint[],
    unit: 'kg' | 'kg/min' | 'reps/min',
    shown: 'kg' | 'lb' = 'kg',
  ) => describeSeries({ points, unit }, shown, '2026-11-24');

  test.each([
    [
      'has its numbers beside it',
      write(weekly([96, 98.46, 102]), 'kg'),
      '▁▄█ 96, 98.5, 102 kg (5 Oct to 19 Oct)',
    ],
    [
      'is shown in pounds where they are wanted',
      write(weekly([100, 110]), 'kg', 'lb'),
      '▁█ 220, 243 lb (5 Oct to 12 Oct)',
    ],
    [
      'of a rate keeps its time',
      write(weekly([400, 410]), 'kg/min', 'lb'),
      '▁█ 882, 904 lb/min (5 Oct to 12 Oct)',
    ],
    [
      'without kilograms has no other unit',
      write(weekly([10, 12]), 'reps/min', 'lb'),
      '▁█ 10, 12 reps/min (5 Oct to 12 Oct)',
    ],
    ['of lower bounds alone is none', write(weekly([90, 92], 'at least'), 'kg'), undefined],
    [
      'leaves lower bounds out where there are better points',
      write([...weekly([96, 98]), { day: start + 21, value: 80, bound: 'at least' }], 'kg'),
      '▁█ 96, 98 kg (5 Oct to 12 Oct)',
    ],
    ['of one point is none', write(weekly([96]), 'kg'), undefined],
    ['of no point is none', write([], 'kg'), undefined],
  ])('%s', (_name, found, expected) => {
    expect(found).toBe(expected);
  });

  test('shows the last eight points', () => {
    const text = write(weekly([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]), 'kg')!;
    expect(text).toBe('▁▂▃▄▅▆▇█ 3, 4, 5, 6, 7, 8, 9, 10 kg (19 Oct to 7 Dec)');
  });
});
