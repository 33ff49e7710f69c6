import { describe, expect, test } from 'vitest';
import { next } from './write-next.ts';

describe('double progression', () => {
  const plan = ['Goblet Squat: 3x8-12 @ 20 kg, then +2 kg from 8'];
  const writeAfter = (...sets: string[]) =>
    next({
      plan,
      log: sets.map((line, index) => [`2026-11-0${2 + index} 1`, `Goblet Squat: ${line}`] as const),
    }).slice(1);

  test('begins as written', () => {
    expect(next({ plan, today: '2026-10-28' }).slice(1)).toEqual([
      '  Goblet Squat: 3x8 @ 20 kg',
      '  > 8-12 in the plan',
    ]);
  });

  test.each<[string, string, string[]]>([
    [
      'one rep more in each set',
      '10, 9, 8 @ 20 kg',
      ['  Goblet Squat: 11, 10, 9 @ 20 kg', '  > 8-12 in the plan; 10, 9, 8 @ 20 kg on 2026-11-02'],
    ],
    [
      'up to the top',
      '12, 12, 11 @ 20 kg',
      ['  Goblet Squat: 3x12 @ 20 kg', '  > 8-12 in the plan; 12, 12, 11 @ 20 kg on 2026-11-02'],
    ],
    [
      'and when every set is there, the load',
      '3x12 @ 20 kg',
      ['  Goblet Squat: 3x8 @ 22 kg', '  > All sets at the top of 8-12 (3x12 @ 20 kg on 2026-11-02): +2 kg'],
    ],
    [
      'from what was really lifted',
      '3x12 @ 24 kg',
      ['  Goblet Squat: 3x8 @ 26 kg', '  > All sets at the top of 8-12 (3x12 @ 24 kg on 2026-11-02): +2 kg'],
    ],
    [
      'two sets at the top are not three',
      '2x12 @ 20 kg',
      ['  Goblet Squat: 12, 12, 8 @ 20 kg', '  > 8-12 in the plan; 2x12 @ 20 kg on 2026-11-02'],
    ],
  ])('%s', (_name, done, expected) => {
    expect(writeAfter(done)).toEqual(expected);
  });

  test('a step smaller than the plates of the place is not lost', () => {
    const bar = ['Front Squat: 3x8-10 @ 40 kg, then +1 kg from 8'];
    expect(next({ plan: bar, log: [['2026-11-02 1', 'Front Squat: 3x10 @ 40 kg']] })[1]).toBe(
      '  Front Squat: 3x8 @ 42.5 kg',
    );
  });

  test('a week in which another line took its place says nothing', () => {
    expect(
      next({
        plan: [...plan, 'week 2 Goblet Squat: 1x20 @ 12 kg'],
        today: '2026-11-16',
        log: [
          ['2026-11-02 1', 'Goblet Squat: 3x12 @ 20 kg'],
          ['2026-11-09 2', 'Goblet Squat: 1x20 @ 12 kg'],
        ],
      })[1],
    ).toBe('  Goblet Squat: 3x8 @ 22 kg');
  });

  test('waits in a deload', () => {
    expect(
      next({
        plan,
        properties: ['weeks 4', 'deload week 2, sets 50%, load 90%'],
        log: [['2026-11-02 1', 'Goblet Squat: 3x12 @ 20 kg']],
      }).slice(2),
    ).toEqual([
      '  Goblet Squat: 2x8 @ 18 kg',
      '  > 3x12 @ 20 kg on 2026-11-02: ready for +2 kg, which waits',
    ]);
  });

  test('goes on after a deload from the session before it', () => {
    expect(
      next({
        plan,
        today: '2026-11-16',
        properties: ['weeks 4', 'deload week 2, sets 50%, load 90%'],
        log: [
          ['2026-11-02 1', 'Goblet Squat: 3x12 @ 20 kg'],
          ['2026-11-09 2', 'Goblet Squat: 2x8 @ 18 kg'],
        ],
      })[1],
    ).toBe('  Goblet Squat: 3x8 @ 22 kg');
  });
});

describe('double progression of what is added to the body', () => {
  const after = (line: string, done: string) =>
    next({ plan: [`Pull-up: ${line}`], log: [['2026-11-02 1', `Pull-up: ${done}`]] })[1];

  test.each([
    ['more load', '3x5-8 @ bw+5 kg, then +2.5 kg from 5', '3x8 @ bw+5 kg', '3x5 @ bw+7.5 kg'],
    ['one rep more', '3x5-8 @ bw+5 kg, then +2.5 kg from 5', '8, 7, 6 @ bw+5 kg', '8, 8, 7 @ bw+5 kg'],
    ['the first load', '3x5-8, then +2.5 kg from 5', '3x8', '3x5 @ bw+2.5 kg'],
    ['before the first load', '3x5-8, then +2.5 kg from 5', '3x7', '3x8'],
    ['less help', '3x5-8 @ bw-20 kg, then +5 kg from 5', '3x8 @ bw-20 kg', '3x5 @ bw-15 kg'],
    ['no help', '3x5-8 @ bw-5 kg, then +5 kg from 5', '3x8 @ bw-5 kg', '3x5 @ bw'],
  ])('%s', (_name, line, done, expected) => {
    expect(after(line, done)).toBe(`  Pull-up: ${expected}`);
  });
});
