import { describe, expect, test } from 'vitest';
import { explain } from '../../../language/src/measures/explain.ts';
import { NO_WORK } from '../../../language/src/measures/work.ts';
import { toVolumeResult, toWorkResults } from '../../../language/src/measures/work-results.ts';

const OMITTED = [{ what: 'Dip', why: 'a set not recorded' }];
const base = { bound: 'exact', inputs: [], omitted: [] };

describe('the sums of some work as numbers that explain themselves', () => {
  test('each in its own unit, what is nothing left out', () => {
    const work = {
      ...NO_WORK,
      sets: 12,
      hardSets: 9,
      reps: 60,
      external: 4_000_000,
      carried: 2_560_000,
      seconds: 90,
      contacts: 36,
      metres: 40,
      carriedMetres: 50,
      machineMetres: 500,
      calories: 15,
    };
    expect(toWorkResults(work)).toEqual([
      { ...base, value: 12, unit: 'sets', method: 'sets' },
      { ...base, value: 9, unit: 'sets', method: 'hard-sets' },
      { ...base, value: 60, unit: 'reps', method: 'reps' },
      {
        ...base,
        value: 4000,
        unit: 'kg',
        method: 'volume-load',
        inputs: [{ label: 'external load', value: 4000, unit: 'kg' }],
      },
      { ...base, value: 2560, unit: 'kg·m', method: 'load-distance' },
      { ...base, value: 90, unit: 's', method: 'seconds' },
      { ...base, value: 36, unit: 'contacts', method: 'contacts' },
      { ...base, value: 50, unit: 'm', method: 'carried-metres' },
      { ...base, value: 500, unit: 'm', method: 'machine-metres' },
      { ...base, value: 40, unit: 'm', method: 'metres' },
      { ...base, value: 15, unit: 'cal', method: 'calories' },
    ]);
  });

  test('with the exercises that went in, and those whose sets are not known to be hard', () => {
    const exercises = [
      { name: 'Back Squat', work: { ...NO_WORK, sets: 3, hardSets: 3, reps: 15 } },
      { name: 'Plank', work: { ...NO_WORK, sets: 2, seconds: 90 } },
    ];
    const work = { ...NO_WORK, sets: 5, hardSets: 3, reps: 15, seconds: 90 };
    expect(toWorkResults(work, { exercises })).toEqual([
      {
        ...base,
        value: 5,
        unit: 'sets',
        method: 'sets',
        inputs: [
          { label: 'Back Squat', value: 3, unit: 'sets' },
          { label: 'Plank', value: 2, unit: 'sets' },
        ],
      },
      {
        ...base,
        value: 3,
        unit: 'sets',
        method: 'hard-sets',
        inputs: [{ label: 'Back Squat', value: 3, unit: 'sets' }],
        omitted: [{ what: 'Plank', why: '2 of 2 sets not known to be hard' }],
      },
      {
        ...base,
        value: 15,
        unit: 'reps',
        method: 'reps',
        inputs: [{ label: 'Back Squat', value: 15, unit: 'reps' }],
      },
      {
        ...base,
        value: 90,
        unit: 's',
        method: 'seconds',
        inputs: [{ label: 'Plank', value: 90, unit: 's' }],
      },
    ]);
  });

  test('no sets is an answer, no kilograms is none', () => {
    expect(toWorkResults(NO_WORK)).toEqual([{ ...base, value: 0, unit: 'sets', method: 'sets' }]);
  });

  test('where something is not known all but the sets are lower bounds, and say what', () => {
    const work = {
      ...NO_WORK,
      sets: 3,
      hardSets: 3,
      reps: 10,
      external: 500_000,
      carried: 1000,
      seconds: 30,
      contacts: 1,
      metres: 2,
      carriedMetres: 4,
      machineMetres: 5,
      calories: 3,
      atLeast: true,
      omitted: OMITTED,
    };
    const results = toWorkResults(work);
    expect(results.map(({ method, bound, omitted }) => [method, bound, omitted.length])).toEqual([
      ['sets', 'exact', 0],
      ['hard-sets', 'exact', 0],
      ['reps', 'at least', 1],
      ['volume-load', 'at least', 1],
      ['load-distance', 'at least', 1],
      ['seconds', 'at least', 1],
      ['contacts', 'at least', 1],
      ['carried-metres', 'at least', 1],
      ['machine-metres', 'at least', 1],
      ['metres', 'at least', 1],
      ['calories', 'at least', 1],
    ]);
    expect(results[3]!.omitted).toBe(OMITTED);
  });
});

describe('volume', () => {
  const work = { ...NO_WORK, external: 50_000, body: 380_000 };

  test('names the share of the body apart, with the weigh-in it rests on', () => {
    expect(toVolumeResult(work, { grams: 80_000, day: 0, age: 3 })).toEqual({
      ...base,
      value: 430,
      unit: 'kg',
      method: 'volume-load',
      inputs: [
        { label: 'external load', value: 50, unit: 'kg' },
        { label: 'share of body mass', value: 380, unit: 'kg', by: 'body-share' },
        { label: 'body mass', value: 80, unit: 'kg' },
        { label: 'weighed before', value: 3, unit: 'days' },
      ],
    });
  });

  test('names no weigh-in that is not known or did not count', () => {
    expect(toVolumeResult(work).inputs.map(({ label }) => label)).toEqual([
      'external load',
      'share of body mass',
    ]);
    const external = toVolumeResult({ ...work, body: 0 }, { grams: 80_000, day: 0, age: 3 });
    expect(external.inputs.map(({ label }) => label)).toEqual(['external load']);
  });

  test('reads as a coach reads it', () => {
    const text = explain(toVolumeResult({ ...work, atLeast: true, omitted: OMITTED }));
    expect(text).toContain('**Volume load: at least 430 kg**');
    expect(text).toContain('What went in: external load 50 kg; share of body mass 380 kg');
    expect(text).toContain('Left out: Dip (a set not recorded)');
    expect(text).toContain(
      'Rests on: Share of body mass: share × body mass + added load, or - help (Mier CM',
    );
  });
});
