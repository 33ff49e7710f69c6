import { describe, expect, test } from 'vitest';
import {
  computeDaysSince,
  computeLoadRatio,
  computeLoadShape,
  computeWeekLoad,
  listDailyLoads,
  readLoadHistory,
} from '../../../language/src/measures/training-load.ts';
import { expectNear } from './expect-near.ts';
import { dayOf, practiceOf, printWithOmissions, writeDays } from './practice-of.ts';

const NAME = 'Wilhelmina Oxbow';
/** A Monday. */
const MONDAY = '2026-11-02';

/** A session of so many AU: effort 10 for a tenth of it in minutes. */
const load = (units: number | undefined): string | undefined =>
  units === undefined || units === 0 ? undefined : `  effort 10\n  lasted ${units / 10} min`;

const weekOf = (lines: readonly (string | undefined)[], untilDay?: number) =>
  computeWeekLoad(practiceOf(writeDays(MONDAY, NAME, lines)).practice, NAME, dayOf(MONDAY), untilDay);

describe('a week', () => {
  // Computed from Foster's definitions (1998, 2001) with seven daily loads, rest days 0, and n - 1.
  test.each<[string, (string | undefined)[], number, number, number]>([
    ['of four days', [420, 0, 350, 0, 480, 600, 0].map(load), 1850, 1.023099, 1892.7336],
    ['of six equal days', [300, 300, 300, 300, 300, 300, 0].map(load), 1800, 2.267787, 4082.0163],
    ['of seven days', [500, 400, 500, 400, 500, 400, 500].map(load), 3200, 8.55236, 27367.5512],
    ['of one day', [0, 350, 0, 0, 0, 0, 0].map(load), 350, 0.377964, 132.2876],
    [
      'in which two sessions of a day add up first',
      // 5 × 60 + 4 × 45 = 480 on the Friday.
      [420, 0, 350, 0, undefined, 600, 0]
        .map(load)
        .with(4, `  effort 5\n  lasted 60 min\nsession 2026-11-06 ${NAME}\n  effort 4\n  lasted 45 min`),
      1850,
      1.023099,
      1892.7336,
    ],
  ])('%s', (_name, lines, total, monotony, strain) => {
    const week = weekOf(lines)!;
    expect(week.load).toMatchObject({ value: total, unit: 'AU', bound: 'exact', method: 'weekly-load' });
    expectNear(week.monotony.value, monotony, 1e-5);
    expectNear(week.strain.value, strain, 1e-5);
    expect(week.monotony).toMatchObject({ unit: '', method: 'monotony', omitted: [] });
    expect(week.strain).toMatchObject({ unit: 'AU', method: 'strain', omitted: [] });
    // What went in explains the number: their product is it, to the last digit.
    const [load, evenness] = week.strain.inputs;
    expect(week.strain.inputs.map(({ label }) => label)).toEqual(
      monotony === undefined ? [] : ['weekly load', 'monotony'],
    );
    expect(week.strain.value).toBe(load && evenness && (load.value as number) * (evenness.value as number));
    expect([week.load, week.monotony, week.strain].map(({ remark }) => remark)).toEqual(
      Array(3).fill(undefined),
    );
  });

  test.each<[string, string]>([
    ['without a duration', '  effort 7'],
    ['without an effort', '  lasted 60 min'],
    ['with neither', '  Back Squat: 3x5 @ 60 kg'],
    ['with neither, of which a part was skipped', '  Back Squat: 5, skipped @ 60 kg'],
    ['with an effort not recorded', '  effort ?\n  lasted 60 min'],
  ])('a session %s makes the week a lower bound without monotony', (_name, lines) => {
    const week = weekOf([load(420), undefined, lines])!;
    const why = '[2026-11-04: no effort or no duration written]';
    expect(printWithOmissions(week.load)).toBe(`at least 420 AU ${why}`);
    expect(printWithOmissions(week.monotony)).toBe(`none, a day is not known ${why}`);
    expect(week.strain.value).toBeUndefined();
  });

  test('of two sessions in a day one is not known, so the day is not', () => {
    const both = `  effort 5\n  lasted 60 min\nsession 2026-11-02 ${NAME}\n  effort 4`;
    expect(weekOf([both, load(200)])!.load).toMatchObject({ value: 200, bound: 'at least' });
    const swapped = `  effort 4\nsession 2026-11-02 ${NAME}\n  effort 5\n  lasted 60 min`;
    expect(weekOf([swapped, load(200)])!.load).toMatchObject({ value: 200, bound: 'at least' });
  });

  test('with nothing but unknown days is no zero', () => {
    expect(weekOf(['  effort 7'])!.load.value).toBeUndefined();
  });

  test.each<[string, string]>([
    ['missed', '  missed, cold'],
    ['missed, whatever else is written', '  missed, cold\n  effort 5\n  lasted 60 min'],
    ['with a weigh-in alone', '  bodyweight 70 kg'],
    ['with nothing but skipped lines', '  Back Squat: skipped'],
  ])('a session %s is rest', (_name, lines) => {
    const week = weekOf([load(420), lines, load(350), undefined, load(480), load(600)])!;
    expect(week.load).toMatchObject({ value: 1850, bound: 'exact' });
    expectNear(week.monotony.value, 1.023099, 1e-5);
  });

  test('effort 0 is a known load of 0', () => {
    expect(weekOf(['  effort 0\n  lasted 20 min', load(350)])!.load).toMatchObject({
      value: 350,
      bound: 'exact',
    });
  });

  test('seven equal days have no monotony', () => {
    expect(printWithOmissions(weekOf(Array(7).fill(load(300)))!.monotony)).toBe('none, all days equal');
  });

  test('that is not over says so', () => {
    const week = weekOf([420, 0, 350].map(load), dayOf('2026-11-04'))!;
    expect(printWithOmissions(week.load)).toBe('770 AU, so far');
    expect(printWithOmissions(week.monotony)).toBe('none, the week is not over');
    expect(printWithOmissions(week.strain)).toBe('none, the week is not over');
  });

  test('names the days that went in', () => {
    expect(weekOf([420, 0, 350].map(load))!.load.inputs).toEqual([
      { label: '2026-11-02', value: 420, unit: 'AU' },
      { label: '2026-11-04', value: 350, unit: 'AU' },
    ]);
  });

  test('before the first session is none, and one of rest after it is 0', () => {
    const { practice } = practiceOf(writeDays(MONDAY, NAME, [load(420)]));
    expect(computeWeekLoad(practice, NAME, dayOf(MONDAY) - 7)).toBeUndefined();
    expect(computeWeekLoad(practice, NAME, dayOf(MONDAY) + 7)!.load).toMatchObject({
      value: 0,
      bound: 'exact',
    });
    expect(computeWeekLoad(practice, NAME, dayOf(MONDAY) + 7, dayOf(MONDAY) + 6)).toBeUndefined();
    expect(computeWeekLoad(practice, NAME, dayOf(MONDAY), dayOf(MONDAY))!.load.value).toBe(420);
    expect(computeWeekLoad(practice, 'Nobody Else', dayOf(MONDAY))).toBeUndefined();
  });

  test('each athlete of a group has a load of their own', () => {
    const { practice } = practiceOf(
      `session 2026-11-02 Wilhelmina Oxbow | Tancred Pewter\n  Plank: 30 s\n  effort 6 | 8\n  lasted 50 min`,
    );
    const loads = ['Wilhelmina Oxbow', 'Tancred Pewter'].map(
      (name) => computeWeekLoad(practice, name, dayOf(MONDAY))!.load.value,
    );
    expect(loads).toEqual([300, 400]);
  });
});

describe('acute to chronic', () => {
  const ratioOf = (
    loads: readonly (number | undefined)[],
    lines: readonly (string | undefined)[] = loads.map(load),
  ) => {
    const { practice } = practiceOf(writeDays(MONDAY, NAME, lines));
    return computeLoadRatio(practice, NAME, dayOf(MONDAY) + lines.length - 1);
  };
  const days = (count: number, value: number): number[] => Array(count).fill(value);

  // Computed by Williams et al. (2017): lambda 0.25 and 2/29, seeded with the first day.
  test.each<[string, number[], number]>([
    ['21 days at 100, then 7 at 200', [...days(21, 100), ...days(7, 200)], 1.33935],
    ['a constant load', days(28, 300), 1],
    [
      'four identical weeks, which depend on the weekday',
      [1, 2, 3, 4].flatMap(() => [400, 0, 300, 0, 500, 0, 0]),
      0.667838,
    ],
  ])('%s', (_name, loads, expected) => {
    const ratio = ratioOf(loads)!;
    expectNear(ratio.value, expected, 1e-6);
    expect(ratio.remark).toBe('no injury predictor');
  });

  test('shows the two averages', () => {
    const { inputs, unit, method } = ratioOf([...days(21, 100), ...days(7, 200)])!;
    expect([unit, method]).toEqual(['', 'acute-chronic']);
    expect(inputs.map(({ label, unit: of }) => `${label}: ${of}`)).toEqual([
      'acute, 7 days: AU/day',
      'chronic, 28 days: AU/day',
      'from 2026-11-02 to 2026-11-29: days',
      'with load: days',
      'load of all of them: AU',
    ]);
    expect(inputs[2]!.value).toBe(28);
    expectNear(inputs[0]!.value, 186.651611, 1e-7);
    expectNear(inputs[1]!.value, 139.359836, 1e-7);
  });

  test('has no value before 28 days', () => {
    expect(printWithOmissions(ratioOf(days(27, 300)))).toBe('none, needs 28 days of known load, has 27');
  });

  test('a day not known breaks the history: it begins on the day after', () => {
    const lines = [...days(30, 300).map(load), '  effort 7', ...days(27, 300).map(load)];
    expect(printWithOmissions(ratioOf([], lines))).toBe(
      'none, needs 28 days of known load, has 27 [up to 2026-12-02: no effort or no duration written that day]',
    );
    expect(ratioOf([], [...lines, load(300)])!.value).toBe(1);
  });

  test('the day asked about is not known', () => {
    const ratio = ratioOf([], [...days(30, 300).map(load), '  effort 7'])!;
    expect(ratio).toMatchObject({ remark: 'needs 28 days of known load, has 0', inputs: [] });
    expect(printWithOmissions(ratioOf([], ['  effort 7', load(300)]))).toBe(
      'none, needs 28 days of known load, has 1 [up to 2026-11-02: no effort or no duration written that day]',
    );
  });

  test('rest days after the last session count', () => {
    const { practice } = practiceOf(writeDays(MONDAY, NAME, days(28, 100).map(load)));
    const ratio = computeLoadRatio(practice, NAME, dayOf(MONDAY) + 28)!;
    // 100 × 0.75 over 100 × 27/29.
    expectNear(ratio.value, 0.75 / (27 / 29), 1e-12);
  });

  test('without a session there is none', () => {
    expect(computeLoadRatio(practiceOf('').practice, NAME, dayOf(MONDAY))).toBeUndefined();
    const { practice } = practiceOf(writeDays(MONDAY, NAME, [load(100)]));
    expect(computeLoadRatio(practice, NAME, dayOf(MONDAY) - 1)).toBeUndefined();
    expect(computeLoadRatio(practice, NAME, dayOf(MONDAY))!.remark).toBe(
      'needs 28 days of known load, has 1',
    );
  });
});

describe('fitness and fatigue as a shape', () => {
  const shapeAfter = (lines: readonly (string | undefined)[], days: number) => {
    const { practice } = practiceOf(writeDays(MONDAY, NAME, lines));
    return computeLoadShape(practice, NAME, dayOf(MONDAY) + days)!;
  };

  // Computed, single impulse of 100, k 1 and 2, 42 and 7 days: day 1 -75.73 (the largest swing), 7 11.07, 14 44.59,
  // 21 50.70, 42 36.29; in tenths of 75.73 these are -10, 1, 6, 7, 5. Day 35: 43.46 - 2 × 0.674 = 42.11, which is 6.
  test('one load', () => {
    const { points, result } = shapeAfter([load(100)], 42);
    expect([0, 1, 7, 14, 21, 42].map((day) => points[day]!.level)).toEqual([0, -10, 1, 6, 7, 5]);
    expect(points).toHaveLength(43);
    expect(points[42]!.day).toBe(dayOf('2026-12-14'));
    expect(printWithOmissions(result)).toBe('5, falling over 7 days, where the largest swing is 10');
    expect(result.unit).toBe('');
  });

  test('rises as fatigue goes, falls under load, and has no digits to read much into', () => {
    expect(shapeAfter(Array(50).fill(load(300)), 56).result.remark).toMatch(/^rising over 7 days/);
    const rampUp = [...Array(50).fill(load(100)), ...Array(7).fill(load(600))];
    const { points, result } = shapeAfter(rampUp, 56);
    expect(result.remark).toMatch(/^falling over 7 days/);
    expect(points.every(({ level }) => Number.isInteger(level) && Math.abs(level) <= 10)).toBe(true);
  });

  test('is level once load and fading balance', () => {
    const { result, points } = shapeAfter(Array(420).fill(load(100)), 419);
    expect(result.remark).toMatch(/^level over 7 days/);
    expect(result.inputs).toEqual([
      { label: 'from 2026-11-02 to 2027-12-26', value: 420, unit: 'days' },
      { label: 'with load', value: 420, unit: 'days' },
      { label: 'load of all of them', value: 42_000, unit: 'AU' },
      { label: 'fitness fades to 1/e in', value: 42, unit: 'days' },
      { label: 'fatigue fades to 1/e in', value: 7, unit: 'days' },
      { label: 'weight of fitness', value: 1, unit: '' },
      { label: 'weight of fatigue', value: 2, unit: '' },
    ]);
    // Steady: 1 / (e^(1/42) - 1) - 2 / (e^(1/7) - 1) = 28.48 days of load; the largest swing.
    expect(points.at(-1)!.level).toBe(10);
    // Never -0: the first day is 0.
    expect(Object.is(points[0]!.level, 0)).toBe(true);
  });

  test('of the days that went in, rest days are none with load', () => {
    const { result } = shapeAfter([load(100), undefined, load(50)], 44);
    expect(result.inputs.slice(0, 3).map(({ value }) => value)).toEqual([45, 2, 150]);
  });

  test('from 42 days on', () => {
    expect(shapeAfter([load(100)], 41).points).toHaveLength(42);
  });

  test.each<[string, (string | undefined)[], number, string]>([
    ['of no load at all', Array(50).fill('  effort 0\n  lasted 20 min'), 49, 'no load'],
    ['below 42 days', [load(100)], 40, 'needs 42 days of known load, has 41'],
    ['after a day not known', [load(100), '  effort 7'], 42, 'needs 42 days of known load, has 41'],
  ])('none %s', (_name, lines, days, remark) => {
    const { points, result } = shapeAfter(lines, days);
    expect(points).toEqual([]);
    expect(result).toMatchObject({ value: undefined, remark });
  });
});

test('days since the last session that was trained', () => {
  const { practice } = practiceOf(
    writeDays(MONDAY, NAME, [load(100), '  missed, cold', undefined, '  effort 7']),
  );
  const since = (days: number) => computeDaysSince(practice, NAME, dayOf(MONDAY) + days)?.value;
  expect([-1, 0, 1, 2, 3, 10].map(since)).toEqual([undefined, 0, 1, 2, 0, 7]);
  expect(computeDaysSince(practice, NAME, dayOf(MONDAY))).toMatchObject({
    unit: 'days',
    method: 'days-since',
  });
  expect(
    computeDaysSince(practice, NAME, dayOf(MONDAY) + 2)?.inputs.map(({ label }) => label.split(' ')[1]),
  ).toEqual([MONDAY]);
  expect(computeLoadShape(practice, NAME, dayOf(MONDAY) - 1)).toBeUndefined();
});

test('daily loads are read anew when a session changes', () => {
  const { practice } = practiceOf(writeDays(MONDAY, NAME, [load(100)]));
  const days = () => listDailyLoads(readLoadHistory(practice, NAME), dayOf(MONDAY), dayOf(MONDAY) + 1);
  expect(days()).toEqual([100, 0]);
  expect(readLoadHistory(practice, NAME)).toBe(readLoadHistory(practice, NAME));
  practice.setFile('log.plim', writeDays(MONDAY, NAME, [load(100), load(250)]));
  expect(days()).toEqual([100, 250]);
});
