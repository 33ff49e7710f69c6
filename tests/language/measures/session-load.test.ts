import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  computeMonotony,
  computeSessionLoad,
  summariseWeekLoad,
} from '../../../language/src/measures/session-load.ts';
import {
  computeMean,
  computePopulationDeviation,
  computeSampleDeviation,
  sum,
} from '../../../language/src/measures/statistics.ts';
import { expectNear } from './expect-near.ts';

test('Foster et al. 2001: effort × minutes', () => {
  expect(computeSessionLoad(7, 58)).toBe(406);
});

describe('weeks of daily loads, rest as 0, by the formulas of Foster 1998 (computed)', () => {
  test.each([
    ['three hard days', [420, 0, 350, 0, 480, 600, 0], 1850, 1.023099, 1892.7336],
    [
      'six equal days and a rest, above the warning level of 2.0 (from memory)',
      [300, 300, 300, 300, 300, 300, 0],
      1800,
      2.267787,
      4082.0163,
    ],
    ['no rest', [500, 400, 500, 400, 500, 400, 500], 3200, 8.55236, 27_367.5512],
    ['one session a week', [0, 0, 400, 0, 0, 0, 0], 400, 0.377964, 151.1858],
  ])('%s', (_name, days, total, monotony, strain) => {
    const week = summariseWeekLoad(days);
    expect(week.total).toBe(total);
    expect(week.bound).toBe('exact');
    expectNear(week.monotony, monotony, 2e-6);
    expectNear(week.strain, strain, 1e-6);
  });

  test.each([
    [[420, 0, 350, 0, 480, 600, 0], 239.156682, 1.105074, 2044.386],
    [[300, 300, 300, 300, 300, 300, 0], 104.978132, 2.44949, 4409.0815],
    [[500, 400, 500, 400, 500, 400, 500], 49.487166, 9.237604, 29_560.3338],
  ])(
    'the other reading, with the population deviation, is not the one taken: %j',
    (days, deviation, monotony, strain) => {
      expectNear(computePopulationDeviation(days), deviation, 1e-6);
      expectNear(computeMean(days)! / computePopulationDeviation(days)!, monotony, 1e-6);
      expectNear((sum(days) * computeMean(days)!) / computePopulationDeviation(days)!, strain, 1e-6);
      expect(Math.abs(summariseWeekLoad(days).monotony! / monotony - 1)).toBeGreaterThan(0.05);
    },
  );
});

describe('the one worked example: Foster et al. 2001, table 5, prints 3400, 1.26 and 4284', () => {
  const sessions = [940, 50, 840, 280, 180, 390, 50, 390, 280];
  const days = [940, 50, 840 + 280, 180, 390, 50, 390 + 280];

  test.each([
    ['nine sessions', sessions, 377.7778, 316.8508, 1.1923, 298.7298, 1.2646],
    ['seven days', days, 485.7143, 433.0072, 1.1217, 400.8868, 1.2116],
  ])('%s', (_name, loads, mean, sample, bySample, population, byPopulation) => {
    expect(sum(loads)).toBe(3400);
    expectNear(computeMean(loads), mean);
    expectNear(computeSampleDeviation(loads), sample);
    expectNear(computeMonotony(loads), bySample);
    expectNear(computePopulationDeviation(loads), population);
    expectNear(computeMean(loads)! / computePopulationDeviation(loads)!, byPopulation);
  });

  test('only sessions with the population deviation print as 1.26; ours is the daily sample reading, 1.12', () => {
    const readings = [sessions, days].flatMap((loads) => [
      computeMonotony(loads)!,
      computeMean(loads)! / computePopulationDeviation(loads)!,
    ]);
    expect(readings.map((value) => value.toFixed(2))).toEqual(['1.19', '1.26', '1.12', '1.21']);
    expect(summariseWeekLoad(days).monotony!.toFixed(2)).toBe('1.12');
  });

  test('its strain is 3400 × the rounded 1.26; not rounded in between it would be 4299.69', () => {
    const monotony = computeMean(sessions)! / computePopulationDeviation(sessions)!;
    expect(3400 * Number(monotony.toFixed(2))).toBe(4284);
    expect(3400 * monotony).toBeCloseTo(4299.69, 2);
    const ours = summariseWeekLoad(days);
    expect(ours.strain).toBe(ours.total * ours.monotony!);
  });
});

test('monotony of volume load is in print too: mean 790 over deviation 897 is 0.88', () => {
  // Two values at the mean ± deviation/√2 have exactly that sample deviation.
  const half = 897 / Math.SQRT2;
  expect(computeMonotony([790 - half, 790 + half])!.toFixed(2)).toBe('0.88');
});

describe('what is missing stays missing', () => {
  test('a day trained but not rated makes the total "at least", and there is no monotony', () => {
    expect(summariseWeekLoad([420, undefined, 350, 0, 480, 600, 0])).toEqual({
      total: 1850,
      bound: 'at least',
    });
  });

  test('a week not yet over has a total only', () => {
    expect(summariseWeekLoad([420, 0, 350])).toEqual({ total: 770, bound: 'exact' });
    expect(summariseWeekLoad([])).toEqual({ total: 0, bound: 'exact' });
  });

  test('seven equal days have no monotony, whatever the rounding', () => {
    expect(summariseWeekLoad([0, 0, 0, 0, 0, 0, 0])).toEqual({ total: 0, bound: 'exact' });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), (load) => {
        expect(computeMonotony(Array.from({ length: 7 }, () => load))).toBeUndefined();
      }),
    );
  });

  test.each([[[]], [[400]]])('none from %j', (days) => {
    expect(computeMonotony(days)).toBeUndefined();
  });
});
