import { describe, expect, test } from 'vitest';
import { ATHLETE } from './project-text.ts';
import { type Case, next } from './write-next.ts';

describe('without a plan', () => {
  const log: Case['log'] = [
    ['2026-11-02', 'Deadlift: 3x5 @ 100 kg'],
    ['2026-11-04', 'Bench Press: 3x5 @ 50 kg'],
    ['2026-11-09', 'Deadlift: 3x5 @ 102.5 kg rpe 8, 4 of 5 @ 105 kg', 'Plank: skipped', 'effort 7'],
  ];

  test('the week repeats itself', () => {
    // Behind Monday the 9th comes what was done on Wednesday the 4th, a week later.
    expect(next({ today: '2026-11-10', log })).toEqual([
      `session 2026-11-11 ${ATHLETE} at Rookery Cellar`,
      '  > As on 2026-11-04, to be changed: no plan says what comes next',
      '  Bench Press: 3x5 @ 50 kg',
    ]);
  });

  test('what was done is copied, not how it went', () => {
    expect(next({ today: '2026-11-10', log: [log[2]!] })).toEqual([
      `session 2026-11-16 ${ATHLETE} at Rookery Cellar`,
      '  > As on 2026-11-09, to be changed: no plan says what comes next',
      '  Deadlift: 3x5 @ 102.5 kg, 4 @ 105 kg',
    ]);
  });

  test('and after one has ended, which is said', () => {
    const lines = next({
      plan: ['Push-up: 10'],
      properties: ['weeks 1'],
      log: [['2026-11-02 1', 'Push-up: 10']],
    });
    expect(lines[1]).toBe('  > As on 2026-11-02, to be changed: Copper Autumn ended on 2026-11-08');
  });

  test('a max is not tested every week', () => {
    expect(
      next({
        today: '2026-11-10',
        log: [
          [
            '2026-11-09',
            'warmup Deadlift: 5 @ 60 kg',
            'test Deadlift: 1 @ 140 kg',
            'B straight',
            '  Dip: 3x8',
          ],
        ],
      }),
    ).toEqual([
      `session 2026-11-16 ${ATHLETE} at Rookery Cellar`,
      '  > As on 2026-11-09, to be changed: no plan says what comes next',
      '  > test Deadlift left out: a max is not tested every week',
      '  B straight',
      '    Dip: 3x8',
    ]);
  });

  test('and without a session there is none', () => {
    expect(next({})).toEqual([`${ATHLETE} has neither a plan nor a session to go on from`]);
  });
});
