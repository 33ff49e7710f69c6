import { describe, expect, test } from 'vitest';
import { type Case, next } from './write-next.ts';

describe('two for two', () => {
  const plan = ['Back Squat: 3x8 @ 80 kg'];
  const writeAfter = (...sets: string[]) =>
    next({
      plan,
      today: '2026-11-16',
      log: sets.map(
        (line, index) => [`2026-11-${index === 0 ? '02 1' : '09 2'}`, `Back Squat: ${line}`] as const,
      ),
    }).slice(1);

  test('two over the goal in the last set, twice: more load', () => {
    // 2 % more are 81.6, 10 % 88: the lightest that can be loaded is 82.5.
    expect(writeAfter('8, 8, 10 @ 80 kg', '8, 8, 10 @ 80 kg')).toEqual([
      '  Back Squat: 3x8 @ 82.5 kg',
      '  > 2-for-2: two over 8 in the last set twice (8, 8, 10 @ 80 kg on 2026-11-09), so more load',
    ]);
  });

  test('the lightest load that is enough', () => {
    // 2 % more than 60 are 61.2, which is nearer to 60; 62.5 is 4 % more.
    const log: Case['log'] = [
      ['2026-11-02 1', 'Back Squat: 8, 8, 10 @ 60 kg'],
      ['2026-11-09 2', 'Back Squat: 8, 8, 10 @ 60 kg'],
    ];
    expect(next({ plan: ['Back Squat: 3x8 @ 60 kg'], today: '2026-11-16', log })[1]).toBe(
      '  Back Squat: 3x8 @ 62.5 kg',
    );
  });

  test.each<[string, string, string]>([
    ['once is not twice', '8, 8, 10 @ 80 kg', '8, 8, 9 @ 80 kg'],
    ['nor is the first set the last', '10, 8, 8 @ 80 kg', '10, 8, 8 @ 80 kg'],
    ['nor another load', '8, 8, 10 @ 77.5 kg', '8, 8, 10 @ 80 kg'],
  ])('%s', (_name, first, second) => {
    expect(writeAfter(first, second)).toEqual(['  Back Squat: 3x8 @ 80 kg']);
  });

  test('what was raised before stays raised', () => {
    expect(writeAfter('3x8 @ 80 kg', '3x8 @ 82.5 kg')).toEqual([
      '  Back Squat: 3x8 @ 82.5 kg',
      '  > 80 kg in the plan; 3x8 @ 82.5 kg on 2026-11-09',
    ]);
  });

  test('no load between 2 and 10 % more is said', () => {
    const light = ['One-Arm Row: 3x8/side @ 8 kg'];
    const done = 'One-Arm Row: 8/side, 8/side, 10/side @ 8 kg';
    expect(
      next({
        plan: light,
        today: '2026-11-16',
        log: [
          ['2026-11-02 1', done],
          ['2026-11-09 2', done],
        ],
      }).slice(1),
    ).toEqual([
      '  One-Arm Row: 3x8/side @ 8 kg',
      '  > 2-for-2: two over 8/side in the last set twice (8, 8, 10 @ 8 kg on 2026-11-09), and no load between 2 and 10 % more',
    ]);
  });
});
