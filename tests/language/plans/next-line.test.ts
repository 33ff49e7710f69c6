import { describe, expect, test } from 'vitest';
import { type Case, HEADER, next } from './write-next.ts';

describe('drops in the next session', () => {
  test('are written with their loads, never with what only a plan can say', () => {
    expect(
      next({
        today: '2026-10-28',
        plan: ['Back Squat: 5 @ 75% drop 8-10 @ 55%', 'Hip Thrust: 8 @ 60 kg drop 8 @ 50%'],
      }).slice(1),
    ).toEqual([
      '  Back Squat: 5 @ 80 kg drop 8 @ 57.5 kg',
      '  > 8-10 in the plan',
      '  Hip Thrust: 8 @ 60 kg drop 8 @ ?',
      '  > 50% in the plan, and no max of Hip Thrust is known on that day',
    ]);
  });

  test('go up with their set, and down after a layoff', () => {
    const plan = ['Dumbbell Curl: 3x8-12 @ 2x12 kg drop 8 @ 2x8 kg, then +2 kg from 8'];
    const log: Case['log'] = [['2026-11-02 1', 'Dumbbell Curl: 3x12 @ 2x14 kg drop 8 @ 2x10 kg']];
    expect(next({ plan, log })[1]).toBe('  Dumbbell Curl: 3x8 @ 2x16 kg drop 8 @ 2x12 kg');
    // 90 % of 14 = 12.6, of 10 = 9, which is as near to 10 as to 8, but is to be less.
    expect(next({ plan, log, today: '2026-11-20' })[2]).toBe(
      '  Dumbbell Curl: 3x12 @ 2x12 kg drop 8 @ 2x8 kg',
    );
  });
});

test('a time that is asked for is a note, not a fact', () => {
  expect(next({ today: '2026-10-28', plan: ['Run: 4x400 m in 1:40'] }).slice(1)).toEqual([
    '  Run: 4x400 m',
    '  > 400 m in 1:40 in the plan',
  ]);
});

describe('after a gap', () => {
  const plan = [
    'A straight',
    '  Back Squat: 3x5 @ 70% | 3x5 @ 80%',
    '  Front Squat: 3x8-10 @ 40 kg, then +2.5 kg from 8',
    '  week 2 test Deadlift: 1 @ 100%',
  ];
  const first = ['2026-11-02 1', 'Back Squat: 3x5 @ 72.5 kg', 'Front Squat: 3x10 @ 40 kg'] as const;

  test('of over two weeks loads are 90 %, and no max is tested', () => {
    // 15 days. 80 % of 105 = 84 → 85; 90 % of 85 = 76.5 → 77.5. 90 % of 40 = 36 → 35.
    expect(next({ plan, today: '2026-11-17', log: [first] })).toEqual([
      HEADER('2026-11-17', 2),
      "  > 15 days since the last session: loads are 90 % of the plan's, and no max is tested; after illness or injury ask a licensed practitioner",
      '  A straight',
      '    Back Squat: 3x5 @ 77.5 kg',
      '    Front Squat: 3x10 @ 35 kg',
      '    > 3x10 @ 40 kg on 2026-11-02: ready for +2.5 kg, which waits',
      '    > test Deadlift left for later',
    ]);
  });

  test('of a whole week nothing is heavier than last time', () => {
    expect(next({ plan, today: '2026-11-16', log: [first] })).toEqual([
      HEADER('2026-11-16', 2),
      '  > A week without a session (14 days): no load is above the last time',
      '  A straight',
      '    Back Squat: 3x5 @ 72.5 kg',
      '    Front Squat: 3x10 @ 40 kg',
      '    > 3x10 @ 40 kg on 2026-11-02: ready for +2.5 kg, which waits',
      '    test Deadlift: 1 @ 137.5 kg',
      '    > 140 kg by the plan, and 137.5 kg is the heaviest that the place can load',
    ]);
  });

  test('what is added to the body is less too, and help stays', () => {
    // 90 % of 10 = 9: of the plates 5, 2.5 and 1.25 make 8.75, and 10 is further off.
    const line = ['Pull-up: 5 @ bw+10 kg, 8 @ bw-20 kg'];
    expect(next({ plan: line, today: '2026-11-17', log: [first] })[2]).toBe(
      '  Pull-up: 5 @ bw+8.75 kg, 8 @ bw-20 kg',
    );
  });

  test('added to the body: a step too small for the plates goes to the next that there is', () => {
    // 6.5 would be 6.25 again; 7.5 is the next that plates make.
    const plan = ['Pull-up: 3x5-8 @ bw+5 kg, then +0.25 kg from 5'];
    const log = [['2026-11-02 1', 'Pull-up: 3x8 @ bw+6.25 kg']] as const;
    expect(next({ plan, log }).slice(1)).toEqual([
      '  Pull-up: 3x5 @ bw+7.5 kg',
      '  > All sets at the top of 5-8 (3x8 @ bw+6.25 kg on 2026-11-02): +0.25 kg, rounded from bw+6.5 kg',
    ]);
  });

  test('what the place cannot load is said', () => {
    const plan = [
      'Back Squat: 3x5 @ 61 kg',
      'Dumbbell Bench Press: 8 @ 2x2 kg',
      'Front Squat: 5 @ 65% of Back Squat',
    ];
    // 65 % of 105 = 68.25 is a sum that the plan does not write: it is rounded without a word.
    expect(next({ plan }).slice(1)).toEqual([
      '  Back Squat: 3x5 @ 60 kg',
      '  > 61 kg in the plan: the nearest that the place can load is written',
      '  Dumbbell Bench Press: 8 @ 2x4 kg',
      '  > 2 kg by the plan, and 4 kg is the lightest that the place can load',
      '  Front Squat: 5 @ 67.5 kg',
    ]);
  });

  test('and so is a percentage of a max that nobody knows well', () => {
    // 60 × (1 + 5 / 30) = 70; 75 % = 52.5.
    const log = [['2026-11-02 1', 'Front Squat: 3x5 @ 60 kg']] as const;
    expect(next({ plan: ['Front Squat: 3x5 @ 75%'], log }).slice(1)).toEqual([
      '  Front Squat: 3x5 @ 52.5 kg',
      '  > 75% in the plan, of a max that is only known to be at least 70 kg',
    ]);
  });

  test('where it hurt the last time, the usual caution', () => {
    const write = (pain: string) =>
      next({
        plan: ['Front Squat: 3x5 @ 60 kg'],
        log: [['2026-11-02 1', `Front Squat: 3x5 @ 60 kg, ${pain}`]],
      }).slice(1);
    expect(write('pain 5 left elbow')).toEqual([
      '  Front Squat: 3x5 @ 60 kg',
      '  > pain 5 left elbow on 2026-11-02: leave out what brings it on, and ask a licensed practitioner before loading it again',
    ]);
    expect(write('pain 3 left elbow')).toEqual(['  Front Squat: 3x5 @ 60 kg']);
  });

  test('of a whole week, with a last load that the place cannot make, it is the one below', () => {
    // 41.5 is nearer to 42.5 than to 40.
    const line = ['Front Squat: 3x8 @ 40 kg | 3x8 @ 50 kg'];
    const log = [['2026-11-02 1', 'Front Squat: 3x8 @ 41.5 kg']] as const;
    expect(next({ plan: line, today: '2026-11-16', log })[2]).toBe('  Front Squat: 3x8 @ 40 kg');
  });

  test('of a week between two days of the plan is none', () => {
    expect(next({ plan, today: '2026-11-15', log: [first] })[1]).toBe('  A straight');
  });
});
