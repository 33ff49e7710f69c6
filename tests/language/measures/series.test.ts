import { describe, expect, test } from 'vitest';
import {
  computeBodyMassSeries,
  computeVolumeSeries,
  listDensitySeries,
  listMaxSeries,
  type TimeSeries,
} from '../../../language/src/measures/series.ts';
import { printNumber } from '../../../language/src/units/number.ts';
import { dayOf, practiceOf, writeDays } from './practice-of.ts';

const NAME = 'Euphemia Starch';
const MONDAY = '2026-03-02';
const DEFINITIONS = `
athlete Euphemia Starch
  bodyweight 60 kg on 2026-01-01
exercise Bar Press
  needs barbell
exercise Press Up
  bodyweight 50%, for the sums of this test
exercise Stack Pull
  needs cable
exercise Ring Fold
  position prone
`;

/** \`Bar Press: 0 100, 2 at least 102.5\`: the points by days since the first Monday. */
function print({ title, unit, points }: TimeSeries): string {
  const shown = points.map(({ day, value, bound }) => {
    const lead = bound === 'exact' ? '' : `${bound} `;
    return `${day - dayOf(MONDAY)} ${lead}${printNumber(value, 2)}`;
  });
  return `${title} [${unit}]: ${shown.join(', ')}`;
}

const worksOf = (lines: readonly (string | undefined)[]) =>
  practiceOf(`${DEFINITIONS}\n${writeDays(MONDAY, NAME, lines)}`).works;
const LATER = dayOf(MONDAY) + 100;

describe('estimated maxes', () => {
  const printed = (lines: readonly (string | undefined)[], until = LATER): string[] =>
    listMaxSeries(worksOf(lines), NAME, until).map(print);

  test.each<[string, (string | undefined)[], string[]]>([
    [
      // Epley: 100 × (1 + 7 / 30) = 123.33; a true single is itself.
      'one point a day on which there is one',
      ['  Bar Press: 5 @ 100 kg rpe 8', undefined, '  Bar Press: 1 @ 125 kg rpe 10'],
      ['Bar Press [kg]: 0 123.33, 2 125'],
    ],
    [
      'an unrated day is a lower bound: 90 × (1 + 5 / 30)',
      ['  Bar Press: 5 @ 90 kg', '  Bar Press: 1 @ 110 kg rpe 10'],
      ['Bar Press [kg]: 0 at least 105, 1 110'],
    ],
    [
      'settings, tempo and implements are series of their own',
      [
        '  Bar Press: 1 @ 100 kg rpe 10\n  Bar Press: 1 @ 90 kg rpe 10, setting pins at 5\n  Bar Press: 1 @ 80 kg rpe 10, tempo 3-1-X-0\n  Bar Press: 1 @ 2x40 kg rpe 10',
      ],
      [
        'Bar Press [kg]: 0 100',
        'Bar Press, pins at 5 [kg]: 0 90',
        'Bar Press, tempo 3-1-X-0 [kg]: 0 80',
        'Bar Press, two implements [kg]: 0 40',
      ],
    ],
    [
      'of two sessions in a day the better one',
      [`  Bar Press: 1 @ 100 kg rpe 10\nsession 2026-03-02 ${NAME}\n  Bar Press: 1 @ 105 kg rpe 10`],
      ['Bar Press [kg]: 0 105'],
    ],
    [
      'and a rated one before a lower bound, whichever comes first',
      [
        `  Bar Press: 1 @ 100 kg rpe 10\nsession 2026-03-02 ${NAME}\n  Bar Press: 12 @ 90 kg`,
        `  Bar Press: 12 @ 90 kg\nsession 2026-03-03 ${NAME}\n  Bar Press: 1 @ 100 kg rpe 10`,
      ],
      ['Bar Press [kg]: 0 100, 1 100'],
    ],
    ['none without training', [], []],
  ])('%s', (_name, lines, expected) => {
    expect(printed(lines)).toEqual(expected);
  });

  test('end with the day asked for', () => {
    const lines = ['  Bar Press: 1 @ 100 kg rpe 10', '  Bar Press: 1 @ 105 kg rpe 10'];
    expect(printed(lines, dayOf(MONDAY))).toEqual(['Bar Press [kg]: 0 100']);
  });
});

describe('densities of the same block', () => {
  const printed = (lines: readonly (string | undefined)[]): string[] =>
    listDensitySeries(worksOf(lines), NAME, LATER).map(print);
  const circuit = (press: string, time: string): string =>
    `  circuit, 2 rounds\n    Bar Press: ${press}\n    Press Up: 10\n    time ${time}`;

  test.each<[string, (string | undefined)[], string[]]>([
    [
      // 2 × (10 × 40 + 10 × 30) = 1 400 kg in 4:00 and 3:30; with 50 kg 1 600 kg in 4:00.
      'whatever the loads',
      [
        circuit('10 @ 40 kg', '2:00, 2:00'),
        circuit('10 @ 40 kg', '1:45, 1:45'),
        circuit('10 @ 50 kg', '2:00, 2:00'),
      ],
      ['Bar Press + Press Up [kg/min]: 0 350, 1 400, 2 400'],
    ],
    [
      'with a set not recorded at least: 700 + 300 kg in 4:00',
      [circuit('10, ? @ 40 kg', '2:00, 2:00')],
      ['Bar Press + Press Up [kg/min]: 0 at least 250'],
    ],
    [
      'apart where another line could be weighed: a pin has no kilograms',
      [
        '  circuit, 1 rounds\n    Stack Pull: 10 @ 20 kg\n    Press Up: 10\n    time 2:00',
        '  circuit, 1 rounds\n    Stack Pull: 10 @ pin 4\n    Press Up: 10\n    time 2:00',
      ],
      ['Press Up + Stack Pull [kg/min]: 0 250', 'Press Up + Stack Pull [kg/min]: 1 150'],
    ],
    [
      'of an amrap over its window, of reps where nothing is weighed',
      ['  amrap 10:00\n    Ring Fold: 5\n    done 6 rounds'],
      ['amrap Ring Fold [reps/min]: 0 3'],
    ],
    ['not of straight sets', ['  straight, rest 2:00\n    Bar Press: 3x5 @ 60 kg\n    time 1:00'], []],
    ['not without a time', ['  circuit, 2 rounds\n    Bar Press: 10 @ 40 kg'], []],
  ])('%s', (_name, lines, expected) => {
    expect(printed(lines)).toEqual(expected);
  });
});

describe('volume of trained weeks', () => {
  const printed = (lines: readonly (string | undefined)[], until = LATER): string =>
    print(computeVolumeSeries(worksOf(lines), NAME, until));
  const rest = (days: number): undefined[] => Array(days).fill(undefined);

  test.each<[string, (string | undefined)[], string]>([
    [
      'adds the sessions of a week up and leaves an idle week out',
      ['  Bar Press: 10 @ 50 kg', '  Press Up: 10', ...rest(12), '  Bar Press: 10 @ 60 kg'],
      'Volume [kg]: 0 800, 14 600',
    ],
    [
      'a set not recorded makes its week a lower bound',
      ['  Bar Press: 10, ? @ 50 kg', '  Bar Press: 10 @ 50 kg'],
      'Volume [kg]: 0 at least 1 000',
    ],
    ['a week without kilograms has no point, and not 0', ['  Ring Fold: 20'], 'Volume [kg]: '],
  ])('%s', (_name, lines, expected) => {
    expect(printed(lines)).toBe(expected);
  });

  test('a week that is not over is left out', () => {
    const lines = ['  Bar Press: 10 @ 50 kg'];
    expect(printed(lines, dayOf(MONDAY) + 5)).toBe('Volume [kg]: ');
    expect(printed(lines, dayOf(MONDAY) + 6)).toBe('Volume [kg]: 0 500');
  });
});

test('body mass: each day’s last weigh-in, from the definition and the sessions', () => {
  const works = worksOf([
    `  bodyweight 61 kg\nsession 2026-03-02 ${NAME}\n  bodyweight 60.5 kg`,
    '  bodyweight 60.8 kg',
  ]);
  const series = computeBodyMassSeries(works, NAME, dayOf(MONDAY));
  expect(print(series)).toBe('Body mass [kg]: -60 60, 0 60.5');
});
