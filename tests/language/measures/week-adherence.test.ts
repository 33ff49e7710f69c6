import { describe, expect, test } from 'vitest';
import {
  computePlanWeekAdherence,
  computeWeekAdherence,
} from '../../../language/src/measures/week-adherence.ts';
import { dayOf, practiceOf, printWithOmissions } from './practice-of.ts';

const PLAN = `
athlete Cuthbert Fennel
plan Gorse Winter
  weeks 4
  day 1 Press
    Bar Press: 4x5 @ 70%
  day 2 Hinge
    Long Hinge: 6x5 @ 70%
`;
const MONDAY = dayOf('2026-04-06');

const session = (date: string, slot: string, lines: string): string =>
  `session ${date} Cuthbert Fennel${slot && `, Gorse Winter ${slot}`}\n  ${lines}\n`;
const PRESS = session('2026-04-06', 'week 1 day 1', 'Bar Press: 3x5 @ 70 kg');
const HINGE = session('2026-04-09', 'week 1 day 2', 'Long Hinge: 6x5 @ 80 kg');

const weekOf = (text: string, until = MONDAY + 6) =>
  computeWeekAdherence(practiceOf(`${PLAN}${text}`).works, 'Cuthbert Fennel', MONDAY, until);

describe('a week against its plan', () => {
  test.each<[string, string, string]>([
    ['3 of 4 and 6 of 6', PRESS + HINGE, '90 % [Bar Press: 3 of 4 sets]'],
    [
      'a day that nobody logged counts as not done: 3 of 10',
      PRESS,
      '30 % [Bar Press: 3 of 4 sets] [day 2 Hinge: not done]',
    ],
    [
      'a missed one too, with its reason',
      PRESS + session('2026-04-09', 'week 1 day 2', 'missed, snow'),
      '30 % [Bar Press: 3 of 4 sets] [Long Hinge: none of 6 sets, missed: snow]',
    ],
    [
      'two sessions of one plan day add up',
      PRESS + session('2026-04-07', 'week 1 day 1', 'Bar Press: 5 @ 70 kg') + HINGE,
      '100 %',
    ],
    [
      'a day moved to the next week is not left out',
      PRESS + session('2026-04-13', 'week 1 day 2', 'Long Hinge: 6x5 @ 80 kg'),
      '75 % [Bar Press: 3 of 4 sets]',
    ],
    [
      'but one of weeks later is another time through the plan',
      PRESS + session('2026-05-04', 'week 1 day 2', 'Long Hinge: 6x5 @ 80 kg'),
      '30 % [Bar Press: 3 of 4 sets] [day 2 Hinge: not done]',
    ],
    [
      'two weeks of the plan in one: 3 of 4, 6 of 6, and day 1 of week 2 is left',
      PRESS + session('2026-04-09', 'week 2 day 2', 'Long Hinge: 6x5 @ 80 kg'),
      // Planned 4 + 6, and not done day 2 of week 1 (6) and day 1 of week 2 (4): 9 of 20.
      '45 % [Bar Press: 3 of 4 sets] [day 2 Hinge: not done] [day 1 Press: not done]',
    ],
    [
      'other sessions stand apart',
      PRESS + HINGE + session('2026-04-10', '', 'Ankle Rock: 3x10'),
      '90 % [Bar Press: 3 of 4 sets]',
    ],
    [
      'a lower bound makes it one',
      session('2026-04-06', 'week 1 day 1', 'Bar Press: 3x5 @ 70 kg ///') + HINGE,
      'at least 90 % [Bar Press: 3 of 4 sets] [Bar Press: part of the line could not be read]',
    ],
  ])('%s', (_name, text, expected) => {
    expect(printWithOmissions(weekOf(text)!.result)).toBe(expected);
  });

  test('before it is over nothing is left out yet', () => {
    const week = weekOf(PRESS, MONDAY + 5)!;
    expect(week.result.value).toBe(75);
    expect(week.notDone).toEqual([]);
  });

  test('names its days', () => {
    const week = weekOf(PRESS)!;
    expect(week.days.map(({ day }) => day.number)).toEqual([1]);
    expect(week.notDone.map(({ number }) => number)).toEqual([2]);
  });

  test('days in turn belong to no week', () => {
    const { works } = practiceOf(
      `${PLAN.replace('  weeks 4', '  weeks 4\n  days alternate, 3 a week')}${PRESS}`,
    );
    const week = computeWeekAdherence(works, 'Cuthbert Fennel', MONDAY, MONDAY + 6)!;
    expect(week.result.value).toBe(75);
    expect(week.notDone).toEqual([]);
  });

  test('a day that takes its turn twice in a week is asked for twice', () => {
    const { works } = practiceOf(
      `${PLAN.replace('  weeks 4', '  weeks 4\n  days alternate, 3 a week')}${PRESS}${HINGE}${session('2026-04-10', 'week 1 day 1', 'Bar Press: 2x5 @ 70 kg')}`,
    );
    // 3 of 4, 6 of 6 and 2 of 4.
    const week = computeWeekAdherence(works, 'Cuthbert Fennel', MONDAY, MONDAY + 6)!;
    expect(printWithOmissions(week.result)).toBe('78.6 % [Bar Press: 3 of 4 sets] [Bar Press: 2 of 4 sets]');
    expect(week.slots.map(({ slot }) => [slot.day.number, slot.nth])).toEqual([
      [1, undefined],
      [2, undefined],
      [1, 1],
    ]);
  });

  test('a week of the plan counts all its days, whenever they are done', () => {
    const { practice, works } = practiceOf(
      `${PLAN}${PRESS}${session('2026-04-20', 'week 1 day 2', 'Long Hinge: 5x5 @ 80 kg')}`,
    );
    const plan = practice.findPlan('Gorse Winter')!;
    const read = (week: number) => computePlanWeekAdherence(works, 'cuthbert fennel', plan, week);
    expect(printWithOmissions(read(1)!.result)).toBe(
      '80 % [Bar Press: 3 of 4 sets] [Long Hinge: 5 of 6 sets]',
    );
    expect(read(2)).toBeUndefined();
    practice.setFile('more.plim', session('2026-04-22', 'week 2 day 1', 'Bar Press: 4x5 @ 70 kg'));
    expect(printWithOmissions(read(2)!.result)).toBe('40 % [day 2 Hinge: not done yet]');
  });

  test('none without a plan', () => {
    expect(weekOf(session('2026-04-10', '', 'Ankle Rock: 3x10'))).toBeUndefined();
    expect(weekOf('')).toBeUndefined();
  });
});
