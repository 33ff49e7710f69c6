import { describe, expect, test } from 'vitest';
import type { IsoDate } from '../../../language/src/calendar/iso-date.ts';
import { writeNextSession } from '../../../language/src/plans/next-session.ts';
import { ATHLETE } from './project-text.ts';
import { LOG, next, open } from './write-next.ts';

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
