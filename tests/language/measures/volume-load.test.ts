import { describe, expect, test } from 'vitest';
import {
  computeAverageLoad,
  computeMechanicalWork,
  computeRelativeIntensity,
  sumVolumeLoad,
} from '../../../language/src/measures/volume-load.ts';
import { expectNear } from './expect-near.ts';

const repeat = <T>(item: T, times: number): T[] => Array.from({ length: times }, () => item);

describe('volume load', () => {
  test('BMJ Military Health, table of training variables: 3 x 8 x 65 kg is 1560 kg', () => {
    expect(sumVolumeLoad(repeat({ reps: 8, load: 65 }, 3))).toBe(1560);
  });

  test('computed: three rounds of a circuit', () => {
    const round = [
      { reps: 10, load: 16 },
      { reps: 12, load: 24 },
      { reps: 8, load: 40 },
    ];
    expect(sumVolumeLoad(repeat(round, 3).flat())).toBe(2304);
  });

  test('nothing done is nothing', () => {
    expect(sumVolumeLoad([])).toBe(0);
  });
});

describe('average load and relative intensity', () => {
  const sets = [
    { reps: 5, load: 100 },
    { reps: 15, load: 60 },
  ];

  test('are weighted by reps', () => {
    expect(computeAverageLoad(sets)).toBe(70);
    expect(computeRelativeIntensity(sets, 140)).toBe(50);
  });

  test('are absent without reps or max', () => {
    expect(computeAverageLoad([])).toBeUndefined();
    expect(computeRelativeIntensity(sets, undefined)).toBeUndefined();
    expect(computeRelativeIntensity(sets, 0)).toBeUndefined();
    expect(computeRelativeIntensity([], 140)).toBeUndefined();
  });
});

test('computed: 10 reps of 100 kg over 0.5 m at standard gravity are 4903.325 J', () => {
  expectNear(computeMechanicalWork(10, 100, 0.5), 4903.325, 1e-12);
});
