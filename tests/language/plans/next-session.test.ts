import { describe, expect, test } from 'vitest';
import { writeNextSession } from '../../../language/src/plans/next-session.ts';
import { ATHLETE } from './project-text.ts';
import { type Case, HEADER, LOG, next, open } from './write-next.ts';

describe('from the plan', () => {
  test('the first day, on its date, with loads worked out', () => {
    expect(
      next({
        today: '2026-10-28',
        plan: [
          'A straight, rest 2:00-3:00',
          '  warmup Back Squat: 5 @ 40 kg',
          '  Back Squat: 3x5 @ 70% | 4x4 @ 75%',
          'B circuit, 3 rounds, rest 1:30',
          '  Push-up: 10, +1 rep each week',
          '  rest 0:20',
          '  Plank: 30 s',
        ],
      }),
    ).toEqual([
      HEADER('2026-11-02', 1),
      '  A straight, rest 2:00',
      '    warmup Back Squat: 5 @ 40 kg',
      '    Back Squat: 3x5 @ 72.5 kg',
      '  B circuit, 3 rounds, rest 1:30',
      '    Push-up: 10',
      '    rest 0:20',
      '    Plank: 30 s',
    ]);
  });

  test('the day behind the last that was logged, a missed one too', () => {
    const plan = ['Push-up: 10, +1 rep each week'];
    expect(next({ plan, log: [['2026-11-02 1', 'Push-up: 10']] })).toEqual([
      HEADER('2026-11-09', 2),
      '  Push-up: 11',
    ]);
    expect(next({ plan, log: [['2026-11-02 1', 'missed, cold']] })[0]).toBe(HEADER('2026-11-09', 2));
  });

  test('late, today; and never on a day that has its session', () => {
    const plan = ['Push-up: 10'];
    expect(next({ plan, today: '2026-11-11', log: [['2026-11-02 1', 'Push-up: 10']] })[0]).toBe(
      HEADER('2026-11-11', 2),
    );
    expect(next({ plan, today: '2026-11-09', log: [['2026-11-09 1', 'Push-up: 10']] })[0]).toBe(
      HEADER('2026-11-10', 2),
    );
  });

  test('of two plans that began together, the one whose day comes first', () => {
    const { practice, works } = open({});
    const plan = (name: string, weekday: string): string =>
      `plan ${name}\n  for ${ATHLETE}\n  starts 2026-11-02\n  weeks 2\n  days ${weekday}\n  day 1\n    Push-up: 10\n\n`;
    const header = (text: string): string => {
      practice.setFile('file:///logs/plans.plim', text);
      const found = writeNextSession(works, {
        athlete: 'hesper quillon',
        today: '2026-11-02',
        unit: 'kg',
        formula: 'epley',
      });
      return 'refused' in found ? found.refused : found.text.split('\n')[0]!;
    };
    const expected = `session 2026-11-03 ${ATHLETE}, Tin Tuesdays week 1 day 1`;
    expect(header(plan('Tin Tuesdays', 'Tue') + plan('Zinc Fridays', 'Fri'))).toBe(expected);
    expect(header(plan('Zinc Fridays', 'Fri') + plan('Tin Tuesdays', 'Tue'))).toBe(expected);
  });

  test('of a plan that the last session misspells, with a word about that', () => {
    const { practice, works } = open({ plan: ['Push-up: 10'], log: [['2026-11-02 1', 'Push-up: 10']] });
    const log = practice.file(LOG)!.lines.join('\n');
    practice.setFile(LOG, log.replace('Copper Autumn', 'Coper Autumn'));
    const found = writeNextSession(works, {
      athlete: 'hesper quillon',
      today: '2026-11-09',
      unit: 'kg',
      formula: 'epley',
    });
    expect('text' in found && found.text.split('\n')[1]).toBe(
      '  > The session on 2026-11-02 names a plan that nothing defines, Coper Autumn, so it counts for none',
    );
  });

  test('not while away', () => {
    expect(
      next({
        plan: ['Push-up: 10'],
        person: ['away 2026-11-08 to 2026-11-12, at a fair'],
        log: [['2026-11-02 1', 'Push-up: 10']],
      }).slice(0, 2),
    ).toEqual([HEADER('2026-11-13', 2), '  > Away until 2026-11-12 (at a fair), so the day after']);
  });

  test('in a deload', () => {
    expect(
      next({
        today: '2026-10-28',
        plan: ['Back Squat: 4x5 @ 80 kg'],
        properties: ['weeks 2', 'deload week 1, sets 50%, load 90%'],
      }),
    ).toEqual([HEADER('2026-11-02', 1), '  > Deload, sets 50 %, load 90 %', '  Back Squat: 2x5 @ 72.5 kg']);
  });

  test('what the plan leaves open is a number or a question mark, and said', () => {
    expect(
      next({
        today: '2026-10-28',
        plan: [
          'Push-up: 8-12',
          'Dip: amrap',
          'Back Squat: 5+ @ 60-70 kg',
          'Hip Thrust: 5 @ 70%',
          'Row: 8 @ 40 kg rpe 7-8',
        ].slice(0, 4),
      }),
    ).toEqual([
      HEADER('2026-11-02', 1),
      '  Push-up: 8',
      '  > 8-12 in the plan',
      '  Dip: ?',
      '  > As many as possible',
      '  Back Squat: 5 @ 60 kg',
      '  > 5+ in the plan: as many as are good',
      '  > 60-70 kg in the plan',
      '  Hip Thrust: 5 @ ?',
      '  > 70% in the plan, and no max of Hip Thrust is known on that day',
    ]);
  });

  test('an effort that is asked for is a note, not a fact', () => {
    expect(next({ today: '2026-10-28', plan: ['Back Squat: 3x5 @ 60 kg rpe 7'] }).slice(1)).toEqual([
      '  Back Squat: 3x5 @ 60 kg',
      '  > rpe 7 in the plan',
    ]);
  });

  test('a target is the middle of its range', () => {
    // 70 kg for 5 at rpe 8 (see the projection): 70 to 72.5 kg, by Epley 70.
    expect(
      next({
        plan: ['Bench Press: 5 @ rpe 8, 2x5 @ -10%'],
        log: [['2026-11-02 1', 'Bench Press: 5 @ 70 kg rpe 8']],
      }).slice(1),
    ).toEqual([
      '  Bench Press: 5 @ 70 kg, 2x5 @ 62.5 kg',
      '  > rpe 8 of e1RM 86.3: 70-72.5 kg, the middle is written',
    ]);
  });

  test('movements to avoid are left out, and the reason stands there', () => {
    const example: Case = {
      today: '2026-10-28',
      person: ['avoid vertical push until 2026-12-15, left shoulder'],
      plan: [
        'A straight',
        '  Overhead Press: 3x5 @ 30 kg',
        'B superset, 3 rounds',
        '  Push-up: 10',
        '  Overhead Press: 8 @ 25 kg',
      ],
    };
    expect(next(example)).toEqual([
      HEADER('2026-11-02', 1),
      '  > Overhead Press left out: to avoid vertical push until 2026-12-15 (left shoulder)',
      '  B superset, 3 rounds',
      '    Push-up: 10',
      '    > Overhead Press left out: to avoid vertical push until 2026-12-15 (left shoulder)',
    ]);
    expect(next({ ...example, person: ['avoid vertical push until 2026-11-01'] })).toHaveLength(6);
  });
});
