import { describe, expect, test } from 'vitest';
import {
  findBodyShare,
  HARD_SET_RIR,
  measureAmount,
  readSetReserve,
  weighLoad,
} from '../../../language/src/measures/set-work.ts';
import { NO_WORK, type Work } from '../../../language/src/measures/work.ts';
import { NAME, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
  bodyweight 80 kg on 2026-01-01
exercise Bar Press
  needs barbell
exercise Hand Press
  needs dumbbell
exercise Curl in Turns
  each rep moves one
  needs dumbbell
exercise Hang Pull
  bodyweight 95%, for the sums of this test
exercise Loft Carry
  work carry
exercise Long Hold
  work hold
exercise Side Hop
  work jump
exercise Skipping Step
  counts contacts
exercise Hip Opener
  work mobility
exercise Loft Rower
  work conditioning
  needs rower
exercise Stack Press
  needs cable
exercise Floor Wave
`;

/** The sums of the first set that a line gives; before the weigh-in where the day says so. */
function sumOf(line: string, header = 'straight', day = '2026-02-02'): Work {
  const { sessions } = readWorks(DEFINITIONS, `session ${day} ${NAME}\n  ${header}\n    ${line}\n`);
  return sessions[0]!.blocks[0]!.sets[0]!.work;
}

const HARD = { sets: 1, hardSets: 1 };
const omit = (what: string, why: string) => ({ omitted: [{ what, why }] });

// Grams; the expected numbers are worked in the head from the line. The athlete has 80 kg, the pull's share is 0.95.
describe('the sums of one set, each kept apart', () => {
  test.each<[string, Partial<Work>]>([
    ['Bar Press: 5 @ 85 kg', { ...HARD, reps: 5, weighedReps: 5, external: 425_000 }],
    // Both dumbbells ride on each rep: 10 x 28; in turns each rep moves one: 10 x 14.
    ['Hand Press: 10 @ 2x14 kg', { ...HARD, reps: 10, weighedReps: 10, external: 280_000 }],
    ['Curl in Turns: 10 @ 2x14 kg', { ...HARD, reps: 10, weighedReps: 10, external: 140_000 }],
    // One dumbbell, each rep moves it: nothing to halve.
    ['Curl in Turns: 10 @ 14 kg', { ...HARD, reps: 10, weighedReps: 10, external: 140_000 }],
    // Two unequal ones: together 24 + 16 = 40; in turns the mean of both, 20.
    ['Hand Press: 5 @ 24&16 kg', { ...HARD, reps: 5, weighedReps: 5, external: 200_000 }],
    ['Curl in Turns: 10 @ 24&16 kg', { ...HARD, reps: 10, weighedReps: 10, external: 200_000 }],
    // 8 left and 7 right at the same load, and 10 a side at 30 left and 20 right: 300 + 200.
    ['Hand Press: 8 left 7 right @ 20 kg', { ...HARD, reps: 15, weighedReps: 15, external: 300_000 }],
    [
      'Hand Press: 10/side @ 30 kg left 20 kg right',
      { ...HARD, reps: 20, weighedReps: 20, external: 500_000 },
    ],
    [
      'Hand Press: 8 left 6 right @ 30 kg left 20 kg right',
      { ...HARD, reps: 14, weighedReps: 14, external: 360_000 },
    ],
    // 0.95 x 80 = 76 kg of the body, less 20 kg of help 56.
    ['Hang Pull: 5 @ bw+10 kg', { ...HARD, reps: 5, weighedReps: 5, external: 50_000, body: 380_000 }],
    ['Hang Pull: 5 @ bw-20 kg', { ...HARD, reps: 5, weighedReps: 5, body: 280_000 }],
    ['Hang Pull: 5', { ...HARD, reps: 5, weighedReps: 5, body: 380_000 }],
    // Help of 90 kg leaves nothing of 76: the reps are counted and not weighed.
    ['Hang Pull: 5 @ bw-90 kg', { ...HARD, reps: 5 }],
    ['Bar Press: 5 @ 50% of bw', { ...HARD, reps: 5, weighedReps: 5, external: 200_000 }],
    // 10 at 18 a hand and 8 at 14 a hand: 360 + 224, one set.
    ['Hand Press: 10 @ 2x18 kg drop 8 @ 2x14 kg', { ...HARD, reps: 18, weighedReps: 18, external: 584_000 }],
    ['Bar Press: (2+2+1 rest 20 s) @ 100 kg', { ...HARD, reps: 5, weighedReps: 5, external: 500_000 }],
    ['Bar Press: (2+1 rest 20 s)/side @ 100 kg', { ...HARD, reps: 6, weighedReps: 6, external: 600_000 }],
    ['Bar Press: 3 of 5 @ 100 kg', { ...HARD, reps: 3, weighedReps: 3, external: 300_000 }],
    ['Bar Press: 0 of 1 @ 100 kg', HARD],
    ['Loft Carry: 40 m @ 2x32 kg', { sets: 1, carriedMetres: 40, carried: 2_560_000 }],
    ['Loft Carry: 30 m/side @ 24 kg', { sets: 1, carriedMetres: 60, carried: 1_440_000 }],
    [
      'Loft Carry: 10 m left 20 m right @ 24 kg left 12 kg right',
      { sets: 1, carriedMetres: 30, carried: 480_000 },
    ],
    ['Loft Carry: 40 m', { sets: 1, carriedMetres: 40 }],
    ['Long Hold: 30 s/side', { sets: 1, seconds: 60 }],
    ['Side Hop: 6/side', { sets: 1, contacts: 12 }],
    ['Skipping Step: 20', { ...HARD, contacts: 20 }],
    ['Hip Opener: 8', { sets: 1, reps: 8 }],
    ['Loft Rower: 15 cal', { sets: 1, calories: 15 }],
    ['Loft Rower: 500 m in 1:52', { sets: 1, machineMetres: 500 }],
    // Metres of a carry, of a machine and of all else are three sums: the kind of work and what it needs tell them apart.
    ['Rower: 500 m in 1:52', { sets: 1, machineMetres: 500 }],
    ['Treadmill Run: 2 km', { sets: 1, machineMetres: 2000 }],
    ['Sled Push: 20 m @ 60 kg', { sets: 1, carriedMetres: 20, carried: 1_200_000 }],
    ['Run: 5 km', { sets: 1, metres: 5000 }],
    ['Swim: 400 m', { sets: 1, metres: 400 }],
    ['Bar Press: 20 m @ 40 kg', { ...HARD, metres: 20, carried: 800_000 }],
    ['Nothing Known: 20 m', { ...HARD, metres: 20 }],
    ['Floor Wave: 12', { ...HARD, reps: 12 }],
    ['Bar Press: skipped', {}],
  ])('%s', (line, expected) => {
    expect(sumOf(line)).toEqual({ ...NO_WORK, ...expected });
  });
});

describe('what was left out of a set is named, with its reason', () => {
  test.each<[string, Partial<Work>]>([
    ['Bar Press: 5', { ...HARD, reps: 5, atLeast: true, ...omit('Bar Press', 'no load written') }],
    ['Bar Press: 5 @ ?', { ...HARD, reps: 5, atLeast: true, ...omit('Bar Press', 'a load not recorded') }],
    ['Bar Press: ? @ 100 kg', { ...HARD, atLeast: true, ...omit('Bar Press', 'a set not recorded') }],
    [
      'Bar Press: 5 @ 80 kg + 20 kg chain',
      { ...HARD, reps: 5, weighedReps: 5, external: 400_000, ...omit('Bar Press', '20 kg of chain') },
    ],
    [
      'Bar Press: 5 @ 90 kg + blue band',
      {
        ...HARD,
        reps: 5,
        weighedReps: 5,
        external: 450_000,
        ...omit('Bar Press', 'blue band: no kilograms'),
      },
    ],
    ['Stack Press: 10 @ pin 9', { ...HARD, reps: 10, ...omit('Stack Press', 'pin 9: no kilograms') }],
    [
      'Stack Press: 10 @ pin 9 + 2 kg',
      { ...HARD, reps: 10, weighedReps: 10, external: 20_000, ...omit('Stack Press', 'pin 9: no kilograms') },
    ],
    ['Floor Wave: 10 @ red band', { ...HARD, reps: 10, ...omit('Floor Wave', 'red band: no kilograms') }],
    ['Hang Pull: 5 @ bw-red band', { ...HARD, reps: 5, ...omit('Hang Pull', 'red band: no kilograms') }],
    [
      'Hang Pull: 5 @ bw+red band',
      { ...HARD, reps: 5, weighedReps: 5, body: 380_000, ...omit('Hang Pull', 'red band: no kilograms') },
    ],
    ['Hang Pull: 5 @ bw-pin 4', { ...HARD, reps: 5, ...omit('Hang Pull', 'pin 4: no kilograms') }],
    [
      'Floor Wave: 10 @ bw',
      {
        ...HARD,
        reps: 10,
        ...omit('Floor Wave', 'no published share of body mass, so body mass is not counted'),
      },
    ],
    [
      'Loft Carry: 40 m @ ?',
      { sets: 1, carriedMetres: 40, atLeast: true, ...omit('Loft Carry', 'a load not recorded') },
    ],
    // Made none of one: whatever the load was, nothing of it is missing.
    ['Bar Press: 0 of 1', HARD],
    ['Floor Wave: 0 of 1 @ bw', HARD],
    // The chain of each drop is named, in their order.
    [
      'Bar Press: 3 @ 80 kg + 20 kg chain drop 4 @ ?',
      {
        ...HARD,
        reps: 7,
        weighedReps: 3,
        external: 240_000,
        atLeast: true,
        omitted: [
          { what: 'Bar Press', why: '20 kg of chain' },
          { what: 'Bar Press', why: 'a load not recorded' },
        ],
      },
    ],
  ])('%s', (line, expected) => {
    expect(sumOf(line)).toEqual({ ...NO_WORK, ...expected });
  });

  test('a later set without a load counts its reps, and not even the body', () => {
    const { sessions } = readWorks(DEFINITIONS, `session 2026-02-02 ${NAME}\n  Hang Pull: 5 @ bw+10 kg, 3\n`);
    expect(sessions[0]!.blocks[0]!.sets[1]!.work).toEqual({
      ...NO_WORK,
      ...HARD,
      reps: 3,
      atLeast: true,
      ...omit('Hang Pull', 'a set without a load'),
    });
  });

  test('and of a later carry neither metres nor reps', () => {
    const { sessions } = readWorks(
      DEFINITIONS,
      `session 2026-02-02 ${NAME}\n  Loft Carry: 40 m @ 24 kg, 30 m\n`,
    );
    expect(sessions[0]!.blocks[0]!.sets[1]!.work).toEqual({
      ...NO_WORK,
      sets: 1,
      atLeast: true,
      ...omit('Loft Carry', 'a set without a load'),
    });
  });

  test('without a weigh-in on or before the day', () => {
    expect(sumOf('Hang Pull: 5 @ bw+10 kg', 'straight', '2025-12-31')).toEqual({
      ...NO_WORK,
      ...HARD,
      reps: 5,
      weighedReps: 5,
      external: 50_000,
      ...omit('Hang Pull', 'no weigh-in on or before the day, so its reps count without body mass'),
    });
    expect(sumOf('Bar Press: 5 @ 50% of bw', 'straight', '2025-12-31')).toEqual({
      ...NO_WORK,
      ...HARD,
      reps: 5,
      atLeast: true,
      ...omit('Bar Press', 'no weigh-in on or before the day'),
    });
  });
});

// At most 4 reps in reserve (RPE 6 and up): common research cut, from memory.
describe('a hard set', () => {
  test.each([
    [1, 'Bar Press: 5 @ 80 kg rir 4', 'straight'],
    [0, 'Bar Press: 5 @ 80 kg rir 4.5', 'straight'],
    [1, 'Bar Press: 5 @ 80 kg rpe 6', 'straight'],
    [0, 'Bar Press: 5 @ 80 kg rpe 5', 'straight'],
    [1, 'Bar Press: 5 @ 80 kg hr 150', 'straight'],
    [0, 'Bar Press: 5 @ 80 kg hr 150', 'every 1:00 for 1:00'],
    [1, 'Bar Press: 5 @ 80 kg', 'superset, 1 rounds'],
    [1, 'Bar Press: 5 @ 80 kg', 'giant set, 1 rounds'],
    [1, 'Bar Press: 5 @ 80 kg', 'circuit, 1 rounds'],
    [0, 'Bar Press: 5 @ 80 kg', 'for time, 1 rounds'],
    [1, 'Bar Press: 5 @ 80 kg rir 1', 'for time, 1 rounds'],
    [1, 'Long Hold: 30 s rpe 9', 'straight'],
    [0, 'Loft Rower: 500 m', 'straight'],
    [0, 'Hip Opener: 8', 'straight'],
    // A word without a number, or a range, says nothing of this set; it was rated all the same.
    [0, 'Bar Press: 5 @ 80 kg rpe 8-9', 'straight'],
  ])('%i: %s, %s', (expected, line, header) => {
    expect(sumOf(line, header).hardSets).toBe(expected);
  });

  test('takes the cut of research', () => {
    expect(HARD_SET_RIR).toBe(4);
  });
});

describe('parts of a set', () => {
  const span = { line: 0, start: 0, end: 0 };
  const reps = (value: number) => ({ measure: 'reps', value, written: value, unit: 'rep' }) as const;

  test('a side is half of what is not written for each', () => {
    expect(measureAmount({ kind: 'quantity', quantity: reps(9), perSide: false })).toMatchObject({
      total: 9,
      left: 4.5,
      right: 4.5,
    });
    expect(measureAmount({ kind: 'quantity', quantity: reps(9), perSide: true })).toMatchObject({
      total: 18,
      left: 9,
      right: 9,
    });
    expect(measureAmount({ kind: 'attempt', made: 4, tried: 5, perSide: false })).toEqual({
      quantity: { measure: 'reps', value: 4, written: 4, unit: 'rep' },
      total: 4,
      left: 2,
      right: 2,
    });
  });

  test('what a plan asks for is no amount', () => {
    expect(measureAmount({ kind: 'range', low: reps(8), high: reps(10), perSide: false })).toBeUndefined();
    expect(measureAmount({ kind: 'amrap', perSide: false })).toBeUndefined();
    expect(measureAmount({ kind: 'cluster', parts: [], perSide: false })).toBeUndefined();
  });

  test('what a plan asks for has no kilograms and says why', () => {
    const context = { movement: undefined, blockKind: 'straight', bodyMass: 80_000 } as const;
    const kilograms = (written: number) => ({ grams: written * 1000, written, unit: 'kg' }) as const;
    const nothing = { left: 0, right: 0, help: 0, helped: false };
    const target = 'a percentage or target counts once its load is written';
    expect(weighLoad('X', { kind: 'percent', low: 75 }, context)).toEqual({
      ...nothing,
      unknown: true,
      ...omit('X', target),
    });
    expect(weighLoad('X', { kind: 'target', scale: 'rpe', low: 8 }, context).unknown).toBe(true);
    expect(weighLoad('X', { kind: 'offset', percent: -10 }, context)).toMatchObject(omit('X', target));
    const range = { kind: 'mass', mass: kilograms(40), high: kilograms(50), implements: 1 } as const;
    expect(weighLoad('X', range, context)).toEqual({
      ...nothing,
      unknown: false,
      ...omit('X', 'a range of loads counts once its number is written'),
    });
    expect(weighLoad('X', { kind: 'setting', setting: 'height', value: 60 }, context)).toEqual({
      ...nothing,
      unknown: false,
      omitted: [],
    });
    expect(weighLoad('X', { kind: 'bodyweight', sign: '-', mass: kilograms(20) }, context)).toEqual({
      ...nothing,
      help: 20_000,
      unknown: false,
      omitted: [],
    });
  });

  test('reserve is read from one number on a scale', () => {
    expect(readSetReserve([{ scale: 'rpe', value: 8, span }])).toBe(2);
    expect(readSetReserve([{ scale: 'rir', value: 1, span }])).toBe(1);
    expect(readSetReserve([{ scale: 'rpe', value: 8, high: 9, span }])).toBeUndefined();
    expect(readSetReserve([{ scale: 'hr', value: 150, span }])).toBeUndefined();
  });

  // Mier CM et al. (2014): the weighed movements have a share for men and one for women, to two decimals.
  test('a share by sex is of the built-in movement alone', () => {
    const { works } = readWorks('', '');
    const pushUp = works.practice.findMovement('Push-up');
    const squat = works.practice.findMovement('Back Squat');
    expect(findBodyShare({ movement: pushUp })).toBe(0.69);
    expect(findBodyShare({ movement: pushUp, sex: 'male' })).toBe(0.71);
    expect(findBodyShare({ movement: pushUp, sex: 'female' })).toBe(0.68);
    expect(findBodyShare({ movement: { ...pushUp!, builtIn: false }, sex: 'male' })).toBe(0.69);
    expect(findBodyShare({ movement: works.practice.findMovement('Pull-up'), sex: 'male' })).toBe(0.956);
    expect(findBodyShare({ movement: squat, sex: 'male' })).toBeUndefined();
    expect(findBodyShare({ movement: undefined, sex: 'male' })).toBeUndefined();
  });
});
