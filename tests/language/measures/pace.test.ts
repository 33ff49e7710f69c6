import { describe, expect, test } from 'vitest';
import { COMMON_PACE_ONLY, fitPace, predictSeconds } from '../../../language/src/measures/pace.ts';
import { type Demand, NO_DEMAND, type TimedRound } from '../../../language/src/measures/timed-rounds.ts';

const round = (seconds: number, demand: Partial<Demand>): TimedRound => ({
  day: 0,
  block: 'any',
  seconds,
  demand: { ...NO_DEMAND, ...demand },
});
/** Two sets: reps × 2 s and one change-over of 10 s. */
const exact = (reps: number): TimedRound => round(2 * reps + 10, { reps, sets: 2 });

describe('a pace from timed rounds', () => {
  test('takes reps and change-overs apart', () => {
    const pace = fitPace([20, 20, 30, 30, 40, 40].map(exact))!;
    expect(pace).toMatchObject({ secondsPerRep: 2, secondsPerChange: 10, rounds: 6, low: 1, high: 1 });
  });

  test('from rounds with any number of sets', () => {
    // Three sets have two change-overs: 30 × 2 + 2 × 10.
    const three = [30, 60, 90].map((reps) => round(2 * reps + 20, { reps, sets: 3 }));
    const pace = fitPace([...[20, 30, 40].map(exact), ...three])!;
    expect(pace.secondsPerRep).toBeCloseTo(2, 12);
    expect(pace.secondsPerChange).toBeCloseTo(10, 12);
  });

  test('with written seconds taken off first', () => {
    const held = (reps: number): TimedRound => round(2 * reps + 10 + 45, { reps, sets: 2, seconds: 45 });
    expect(fitPace([20, 20, 30, 30, 40, 40].map(held))).toMatchObject({
      secondsPerRep: 2,
      secondsPerChange: 10,
    });
  });

  test('that one odd round does not bend, but widens', () => {
    const pace = fitPace([...[20, 20, 30, 30, 40, 40].map(exact), round(210, { reps: 30, sets: 2 })])!;
    expect(pace).toMatchObject({ secondsPerRep: 2, secondsPerChange: 10, low: 1, high: 3 });
  });

  test('of rounds too much alike: 15 s to change over, and the median of what is left', () => {
    // (50 - 15) / 20 = 1.75; the others 1.5 and 2, each twice.
    const alike = [50, 50, 45, 45, 55, 55].map((seconds) => round(seconds, { reps: 20, sets: 2 }));
    const pace = fitPace(alike)!;
    expect(pace).toMatchObject({ secondsPerRep: 1.75, secondsPerChange: 15, rounds: 6 });
    expect(pace.low).toBeCloseTo(0.9, 12);
    expect(pace.high).toBeCloseTo(1.1, 12);
  });

  test('reps a change must differ by 1.3 for a line', () => {
    // By the line 2 and 10; with 15 s to change over (2 × reps - 5) / reps, whose median is (1.8 + 1.76) / 2.
    const ofReps = (reps: readonly number[]) => fitPace(reps.map(exact))!;
    expect(ofReps([20, 20, 26, 26, 26, 26])).toMatchObject({ secondsPerRep: 2, secondsPerChange: 10 });
    expect(ofReps([20, 20, 25, 25, 25, 25])).toMatchObject({ secondsPerRep: 1.8, secondsPerChange: 15 });
    // Three sets of 39 have 19.5 reps a change, as much as two sets of 20.
    const mixed = [20, 20, 20].map(exact);
    const three = [39, 39, 39].map((reps) => round(2 * reps + 20, { reps, sets: 3 }));
    // (50 - 15) / 20 = 1.75 and (98 - 30) / 39 = 1.744.
    expect(fitPace([...mixed, ...three])!.secondsPerRep).toBeCloseTo((1.75 + 68 / 39) / 2, 12);
  });

  test('of rounds too much alike, with written seconds taken off', () => {
    const held = Array.from({ length: 6 }, () => round(95, { reps: 20, sets: 2, seconds: 45 }));
    expect(fitPace(held)!.secondsPerRep).toBe(1.75);
  });

  test('a change-over of no time is one, of less is none', () => {
    const straightOn = [20, 20, 30, 30, 40, 40].map((reps) => round(3 * reps, { reps, sets: 2 }));
    expect(fitPace(straightOn)).toMatchObject({ secondsPerRep: 3, secondsPerChange: 0 });
    const before = [20, 20, 30, 30, 40, 40].map((reps) => round(3 * reps - 5, { reps, sets: 2 }));
    expect(fitPace(before)).toMatchObject({ secondsPerChange: 15 });
  });

  test('where longer rounds took less time a line makes no sense, and the median is taken', () => {
    const reversed = [20, 20, 30, 30, 40, 40].map((reps) => round(200 - reps, { reps, sets: 2 }));
    // (180 - 15) / 20 = 8.25, (170 - 15) / 30 = 5.167, (160 - 15) / 40 = 3.625.
    expect(fitPace(reversed)).toMatchObject({ secondsPerChange: 15 });
    expect(fitPace(reversed)!.secondsPerRep).toBeCloseTo(155 / 30, 12);
  });

  test.each<[string, TimedRound[]]>([
    ['five rounds', [20, 20, 30, 30, 40].map(exact)],
    ['none', []],
    ['rounds of one set', [20, 20, 30, 30, 40, 40].map((reps) => round(2 * reps, { reps, sets: 1 }))],
    [
      'rounds with metres',
      [20, 20, 30, 30, 40, 40].map((reps) => round(2 * reps, { reps, sets: 2, metres: 30 })),
    ],
    [
      'rounds with machine metres',
      [20, 20, 30, 30, 40, 40].map((reps) => round(2 * reps, { reps, sets: 2, machineMetres: 30 })),
    ],
    [
      'rounds with calories',
      [20, 20, 30, 30, 40, 40].map((reps) => round(2 * reps, { reps, sets: 2, calories: 9 })),
    ],
    [
      'rounds with something unknown',
      [20, 20, 30, 30, 40, 40].map((reps) => round(2 * reps, { reps, sets: 2, isOpen: true })),
    ],
    ['rounds without a rep', [20, 20, 30, 30, 40, 40].map((seconds) => round(seconds, { seconds, sets: 2 }))],
    ['a pace nobody has', [20, 20, 30, 30, 40, 40].map((reps) => round(40 * reps, { reps, sets: 2 }))],
  ])('none from %s', (_name, rounds) => {
    expect(fitPace(rounds)).toBeUndefined();
  });

  test('looks at the last sixty rounds', () => {
    const slow = Array.from({ length: 30 }, (_, index) =>
      round(6 * (20 + (index % 3) * 10) + 30, { reps: 20 + (index % 3) * 10, sets: 2 }),
    );
    const now = Array.from({ length: 60 }, (_, index) => exact(20 + (index % 3) * 10));
    expect(fitPace([...slow, ...now])).toMatchObject({ secondsPerRep: 2, secondsPerChange: 10, rounds: 60 });
  });
});

/** By common practice: 3 s a rep, 15 s a change-over, 1 s a metre walked, 0.25 s a metre on a machine, 4 s a calorie. */
test.each<[string, Partial<Demand>, number]>([
  ['20 reps in two sets', { reps: 20, sets: 2 }, 75],
  ['one set has no change-over', { reps: 10, sets: 1 }, 30],
  ['nothing', {}, 0],
  ['written seconds', { seconds: 60, sets: 1 }, 60],
  ['30 m walked', { metres: 30, sets: 1 }, 30],
  ['500 m on a machine', { machineMetres: 500, sets: 1 }, 125],
  ['12 cal', { calories: 12, sets: 1 }, 48],
])('the common pace: %s', (_name, demand, seconds) => {
  expect(predictSeconds({ ...NO_DEMAND, ...demand }, COMMON_PACE_ONLY)).toBe(seconds);
});
