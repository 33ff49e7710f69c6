import { describe, expect, test } from 'vitest';
import { fromDayNumber, type IsoDate, toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { writeNextSession } from '../../../language/src/plans/next-session.ts';
import { ATHLETE } from './project-text.ts';
import { type Case, LOG, next, open } from './write-next.ts';

describe('a stall rule', () => {
  const plan = ['Overhead Press: 3x5 @ 40 kg, +2.5 kg each week, after 2 misses -10%'];
  const weeks = (...sets: string[]) =>
    next({
      plan,
      today: `2026-11-${String(2 + 7 * sets.length).padStart(2, '0')}` as IsoDate,
      log: sets.map(
        (line, index) =>
          [
            `2026-11-${String(2 + 7 * index).padStart(2, '0')} ${index + 1}`,
            `Overhead Press: ${line}`,
          ] as const,
      ),
    }).slice(1);

  test('up after a session that was made', () => {
    expect(weeks('3x5 @ 40 kg')).toEqual(['  Overhead Press: 3x5 @ 42.5 kg']);
  });

  test('from what was lifted, not from the calendar', () => {
    expect(weeks('3x5 @ 40 kg', '5, 5, 4 @ 42.5 kg', '3x5 @ 42.5 kg')).toEqual([
      '  Overhead Press: 3x5 @ 45 kg',
      '  > 47.5 kg in the plan; 3x5 @ 42.5 kg on 2026-11-16: +2.5 kg',
    ]);
  });

  test('the same after a miss', () => {
    expect(weeks('3x5 @ 40 kg', '5, 5, 4 @ 42.5 kg')).toEqual([
      '  Overhead Press: 3x5 @ 42.5 kg',
      '  > 1 miss (5, 5, 4 @ 42.5 kg on 2026-11-09): the same load again',
    ]);
  });

  test('down after so many in a row', () => {
    // 90 % of 42.5 = 38.25 → 37.5.
    expect(weeks('5, 5, 3 @ 42.5 kg', '5, 4, 4 @ 42.5 kg')).toEqual([
      '  Overhead Press: 3x5 @ 37.5 kg',
      '  > 2 misses in a row (5, 4, 4 @ 42.5 kg on 2026-11-09): -10%',
    ]);
  });

  test('a miss at a lighter load before does not count', () => {
    expect(weeks('5, 5, 3 @ 40 kg', '5, 4, 4 @ 42.5 kg')[0]).toBe('  Overhead Press: 3x5 @ 42.5 kg');
  });

  describe('where the plan’s own load varies', () => {
    const writeWeek = (line: string, ...sets: string[]) =>
      next({
        plan: [`Back Squat: ${line}, after 2 misses -10%`],
        today: `2026-11-${String(2 + 7 * sets.length).padStart(2, '0')}` as IsoDate,
        log: sets.map(
          (done, index) =>
            [
              `2026-11-${String(2 + 7 * index).padStart(2, '0')} ${index + 1}`,
              `Back Squat: ${done}`,
            ] as const,
        ),
      }).slice(1);
    // 70, 75 and 80 % of 105: 73.5 → 72.5, 78.75 → 80, 84 → 85.
    const waves = '3x5 @ 70% | 3x4 @ 75% | 3x3 @ 80%';

    test('a session that was made is followed by the plan', () => {
      expect(writeWeek(waves, '3x5 @ 72.5 kg')).toEqual(['  Back Squat: 3x4 @ 80 kg']);
      expect(writeWeek('3x5 @ 60 kg | 3x3 @ 65 kg, +2.5 kg each cycle', '3x5 @ 60 kg')).toEqual([
        '  Back Squat: 3x3 @ 65 kg',
      ]);
    });

    test('what was made of fewer reps is no miss of more', () => {
      expect(writeWeek(waves, '3x5 @ 72.5 kg', '3x4 @ 80 kg', '3x3 @ 85 kg')).toEqual([
        '  Back Squat: 3x5 @ 72.5 kg',
      ]);
    });

    test('a miss is not followed by more load', () => {
      expect(writeWeek(waves, '3x5 @ 72.5 kg', '4, 4, 3 @ 80 kg')).toEqual([
        '  Back Squat: 3x3 @ 80 kg',
        '  > 1 miss (4, 4, 3 @ 80 kg on 2026-11-09): the same load again',
      ]);
      // Week 4 begins again at 72.5 kg, which is less than what was missed.
      expect(writeWeek(waves, '3x5 @ 72.5 kg', '3x4 @ 80 kg', '3, 2, 2 @ 85 kg')[0]).toBe(
        '  Back Squat: 3x5 @ 72.5 kg',
      );
    });

    test('and so many by less', () => {
      // 80 % of 105 = 84 → 85; 90 % of 85 = 76.5.
      expect(writeWeek('3x5 @ 80%', '5, 5, 4 @ 85 kg', '5, 4, 4 @ 85 kg')).toEqual([
        '  Back Squat: 3x5 @ 77.5 kg',
        '  > 2 misses in a row (5, 4, 4 @ 85 kg on 2026-11-09): -10%',
      ]);
    });
  });

  describe('after a fall', () => {
    const writeAll = (line: string, sets: readonly string[], more: Partial<Case> = {}) =>
      next({
        plan: [line],
        today: fromDayNumber(toDayNumber('2026-11-02') + 7 * sets.length),
        properties: ['weeks 12'],
        log: sets.map(
          (done, index) =>
            [
              `${fromDayNumber(toDayNumber('2026-11-02') + 7 * index)} ${index + 1}`,
              `Back Squat: ${done}`,
            ] as const,
        ),
        ...more,
      }).slice(1);
    const percent = 'Back Squat: 3x5 @ 80%, after 2 misses -10%';
    const missed = ['5, 5, 4 @ 85 kg', '5, 4, 4 @ 85 kg'];

    test('a plan of percentages stays as much lower until a later max is known', () => {
      // 90 % of 85 = 76.5.
      expect(writeAll(percent, [...missed, '3x5 @ 77.5 kg'])).toEqual([
        '  Back Squat: 3x5 @ 77.5 kg',
        '  > 85 kg in the plan; -10% since the misses up to 2026-11-09',
      ]);
      // 80 % of 100.
      const retested = ['max Back Squat: 100 kg on 2026-11-20'];
      expect(writeAll(percent, [...missed, '3x5 @ 77.5 kg'], { person: retested })).toEqual([
        '  Back Squat: 3x5 @ 80 kg',
      ]);
    });

    test('or until as much as was missed is made', () => {
      expect(writeAll(percent, [...missed, '3x5 @ 85 kg'])).toEqual(['  Back Squat: 3x5 @ 85 kg']);
    });

    test('weekly cells too', () => {
      // Week 4 is 60 kg again: 54 → 55; week 5 is 65 kg: 58.5 → 57.5 or 60, up.
      const cells = 'Back Squat: 3x5 @ 60 kg | 3x5 @ 65 kg | 3x5 @ 65 kg, after 2 misses -10%';
      expect(writeAll(cells, ['3x5 @ 60 kg', '5, 5, 4 @ 65 kg', '5, 4, 4 @ 65 kg', '3x5 @ 55 kg'])).toEqual([
        '  Back Squat: 3x5 @ 57.5 kg',
        '  > 65 kg in the plan; -10% since the misses up to 2026-11-16',
      ]);
    });

    test('misses are counted anew', () => {
      const steps = 'Back Squat: 3x5 @ 60 kg, +2.5 kg each week, after 2 misses -10%';
      const falling = ['5, 5, 4 @ 60 kg', '5, 4, 4 @ 60 kg', '5, 5, 3 @ 55 kg'];
      // 90 % of 60 = 54 → 55; one miss there.
      expect(writeAll(steps, falling)).toEqual([
        '  Back Squat: 3x5 @ 55 kg',
        '  > 1 miss (5, 5, 3 @ 55 kg on 2026-11-16): the same load again',
      ]);
      // 90 % of 55 = 49.5.
      expect(writeAll(steps, [...falling, '5, 4, 3 @ 55 kg'])).toEqual([
        '  Back Squat: 3x5 @ 50 kg',
        '  > 2 misses in a row (5, 4, 3 @ 55 kg on 2026-11-23): -10%',
      ]);
    });
  });

  test.each<[string, Partial<Case>, string[]]>([
    [
      'after a layoff',
      { today: '2026-12-01' },
      [
        // 90 % of 42.5 = 38.25.
        '  Overhead Press: 3x5 @ 37.5 kg',
        '  > 1 miss (5, 5, 4 @ 42.5 kg on 2026-11-09): 90 % of that load after the time off',
      ],
    ],
    [
      'in a deload',
      { today: '2026-11-16', properties: ['weeks 6', 'deload week 3, load 80%'] },
      [
        // 80 % of 42.5 = 34.
        '  Overhead Press: 3x5 @ 35 kg',
        '  > 1 miss (5, 5, 4 @ 42.5 kg on 2026-11-09): 80 % of that load in the deload',
      ],
    ],
  ])('the reason is that of what is written: %s', (_name, more, expected) => {
    const log = [
      ['2026-11-02 1', 'Overhead Press: 3x5 @ 40 kg'],
      ['2026-11-09 2', 'Overhead Press: 5, 5, 4 @ 42.5 kg'],
    ] as const;
    expect(next({ plan, log, ...more }).slice(-2)).toEqual(expected);
  });

  test('counts every day that writes the same line', () => {
    const { practice, works } = open({});
    const line = 'Overhead Press: 3x5 @ 40 kg, +2.5 kg each session, after 2 misses -10%';
    const days = [1, 2, 3].map((day) => `  day ${day}\n    ${line}\n`).join('');
    practice.setFile(
      'file:///logs/plan.plim',
      `plan Tin Autumn\n  for ${ATHLETE}\n  at Rookery Cellar\n  starts 2026-11-02\n  weeks 2\n  days Mon, Wed, Fri\n${days}`,
    );
    const write = (...sets: string[]): string => {
      const log = sets.map(
        (done, index) =>
          `session 2026-11-0${2 + 2 * index} ${ATHLETE} at Rookery Cellar, Tin Autumn week 1 day ${index + 1}\n  Overhead Press: ${done}\n`,
      );
      practice.setFile(LOG, log.join('\n'));
      const found = writeNextSession(works, {
        athlete: 'hesper quillon',
        today: '2026-11-04',
        unit: 'kg',
        formula: 'epley',
      });
      return 'refused' in found ? found.refused : found.text.split('\n')[1]!;
    };
    expect(write('3x5 @ 40 kg')).toBe('  Overhead Press: 3x5 @ 42.5 kg');
    expect(write('3x5 @ 40 kg', '5, 5, 3 @ 42.5 kg')).toBe('  Overhead Press: 3x5 @ 42.5 kg');
    // 90 % of 42.5 = 38.25.
    expect(write('3x5 @ 40 kg', '5, 5, 3 @ 42.5 kg', '5, 4, 3 @ 42.5 kg')).toBe(
      '  Overhead Press: 3x5 @ 37.5 kg',
    );
  });
});
