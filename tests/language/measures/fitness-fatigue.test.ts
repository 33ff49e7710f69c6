import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  CUSTOMARY_CONSTANTS,
  computeFitnessFatigue,
  findTurningDays,
} from '../../../language/src/measures/fitness-fatigue.ts';
import { expectNear } from './expect-near.ts';

test('the customary constants: 42 and 7 days, 1 and 2', () => {
  expect(CUSTOMARY_CONSTANTS).toEqual({
    baseline: 0,
    fitnessGain: 1,
    fatigueGain: 2,
    fitnessDays: 42,
    fatigueDays: 7,
  });
});

describe('Banister et al. 1975, Morton et al. 1990: seven days from a baseline of 500 (computed)', () => {
  const days = computeFitnessFatigue([100, 0, 100, 0, 150, 0, 0], { ...CUSTOMARY_CONSTANTS, baseline: 500 });
  test.each([
    [1, 100, 100, 400, 500],
    [2, 97.647169, 86.68779, 424.271589, 424.271589],
    [3, 195.349695, 175.147729, 345.054237, 445.054237],
    [4, 190.753447, 151.831696, 387.090055, 387.090055],
    [5, 336.26534, 281.619542, 273.026257, 423.026257],
    [6, 328.353583, 244.129757, 340.09407, 340.09407],
    [7, 320.627977, 211.630691, 397.366596, 397.366596],
  ])('day %i', (day, fitness, fatigue, after, before) => {
    expect(days).toHaveLength(7);
    expectNear(days[day - 1]!.fitness, fitness, 1e-8);
    expectNear(days[day - 1]!.fatigue, fatigue, 1e-8);
    expectNear(days[day - 1]!.after, after, 1e-8);
    expectNear(days[day - 1]!.before, before, 1e-8);
  });
});

describe('one load of 100 (computed)', () => {
  const days = computeFitnessFatigue([100, ...Array.from({ length: 42 }, () => 0)]);
  test.each([
    [0, -100],
    [1, -75.728411],
    [7, 11.072284],
    [14, 44.586074],
    [21, 50.695652],
    [42, 36.292194],
  ])('after %i days', (day, expected) => {
    expectNear(days[day]!.after, expected, 1e-7);
  });
});

describe('closed forms of Fitz-Clarke, Morton & Banister 1991', () => {
  test('computed for 42 and 7 days', () => {
    const { zero, peak } = findTurningDays();
    expectNear(zero, 5.822436, 1e-6);
    expectNear(peak, 20.873216, 1e-6);
    expectNear(100 * Math.exp(-peak / 42) - 200 * Math.exp(-peak / 7), 50.697028, 1e-7);
  });

  test('computed for 45 and 15 days; published, from memory, as about 16 and 40 days', () => {
    const { zero, peak } = findTurningDays({ ...CUSTOMARY_CONSTANTS, fitnessDays: 45, fatigueDays: 15 });
    expectNear(zero, 15.595812, 1e-6);
    expectNear(peak, 40.314588, 1e-6);
    expect([Math.round(zero), Math.round(peak)]).toEqual([16, 40]);
  });
});

test('only the ratio of the two gains counts for the turning days', () => {
  const doubled = { ...CUSTOMARY_CONSTANTS, fitnessGain: 2, fatigueGain: 4 };
  expect(findTurningDays(doubled)).toEqual(findTurningDays());
});

test('the recursion is the sum of the definition, over earlier days and with today', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 900 }), { maxLength: 60 }), (loads) => {
      const add = (until: number, day: number, decay: number) =>
        loads
          .slice(0, until)
          .reduce((total, load, index) => total + load * Math.exp(-(day - index) / decay), 0);
      computeFitnessFatigue(loads).forEach(({ before, after }, day) => {
        expect(before).toBeCloseTo(add(day, day, 42) - 2 * add(day, day, 7), 6);
        expect(after).toBeCloseTo(add(day + 1, day, 42) - 2 * add(day + 1, day, 7), 6);
      });
    }),
  );
});
