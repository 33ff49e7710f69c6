import { describe, expect, test } from 'vitest';
import {
  estimateFromChart,
  findChartLoad,
  findChartPercent,
  findChartReps,
  NSCA_CHART,
} from '../../../language/src/measures/percent-of-max.ts';
import { expectNear } from './expect-near.ts';

describe('NSCA Training Load Chart', () => {
  test.each([
    [1, 100],
    [2, 95],
    [3, 93],
    [4, 90],
    [5, 87],
    [6, 85],
    [7, 83],
    [8, 80],
    [9, 77],
    [10, 75],
    [12, 70],
  ])('%i reps are %i %%', (reps, percent) => {
    expect(findChartPercent(reps)).toBe(percent);
  });

  test('nothing else is in it', () => {
    expect(NSCA_CHART.size).toBe(11);
  });

  test('at 12 reps it is the chart (70), not the 67 of Essentials, 4th ed., table 17.7 (from memory)', () => {
    expect(findChartPercent(12)).not.toBe(67);
  });

  test.each([
    [110, [104.5, 102.3, 99, 95.7, 93.5, 91.3, 88, 84.7, 82.5]],
    [250, [237.5, 232.5, 225, 217.5, 212.5, 207.5, 200, 192.5, 187.5]],
  ])('its row for a max of %i, 2 to 10 reps', (max, loads) => {
    loads.forEach((load, index) => {
      expectNear(findChartLoad(max, index + 2), load, 1e-12);
    });
  });

  test.each([
    [110, 77],
    [250, 175],
  ])('its row for a max of %i, 12 reps: %d', (max, load) => {
    expectNear(findChartLoad(max, 12), load, 1e-12);
  });
});

describe('a max from the chart (computed)', () => {
  test.each([
    [100, 5, 114.9425],
    [100, 10, 133.3333],
    [80, 8, 100],
    [62.5, 3, 67.2043],
    [100, 7, 120.4819],
    [80, 9, 103.8961],
    [140, 6, 164.7059],
    [90, 4, 100],
  ])('%d x %i: %d', (load, reps, expected) => {
    expectNear(estimateFromChart(load, reps), expected);
  });
});

test.each([0, 0.5, 6.5, 11, 13, 15, -1, Number.NaN])('%d reps are not tabulated', (reps) => {
  expect(findChartPercent(reps)).toBeUndefined();
  expect(estimateFromChart(100, reps)).toBeUndefined();
  expect(findChartLoad(100, reps)).toBeUndefined();
});

// Rows of the NSCA Training Load Chart, and the next row above a share that has none.
test.each([
  [100, 1],
  [99, 1],
  [95, 2],
  [87, 5],
  [77, 9],
  [76, 9],
  [75, 10],
  [74, 10],
  [70, 12],
  [69.9, undefined],
  [100.5, undefined],
])('%d %% of the max stands in the row of %s reps', (percent, reps) => {
  expect(findChartReps(percent)).toBe(reps);
});
