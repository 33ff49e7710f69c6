import { describe, expect, test } from 'vitest';
import { roundAddedToPlace, roundToPlace } from '../../../language/src/plans/round-to-place.ts';
import { toGrams } from '../../../language/src/units/mass.ts';
import { practiceOf } from '../measures/practice-of.ts';

const { practice } = practiceOf(`place Metric Cellar
  bars 20 kg
  plates 4x20, 2x10, 2x5, 2x2.5, 2x1.25 kg
  dumbbells 4-32 by 2 kg
place Pound Cellar
  bars 45 lb
  plates 4x45, 2x25, 2x10, 2x5, 2x2.5 lb
place Bare Cellar
`);

function round(amount: number, unit: 'kg' | 'lb', movement: string, place: string): string {
  const { mass, limit, by } = roundToPlace(
    toGrams(amount, unit),
    unit,
    practice.findMovement(movement),
    practice.findPlace(place)?.entry,
  );
  return [`${mass.written} ${mass.unit}`, limit, by === 'usual step' ? by : undefined]
    .filter((part) => part !== undefined)
    .join(', ');
}

describe('what is loaded for a wanted load', () => {
  test.each([
    [84, 'kg', 'Back Squat', 'Metric Cellar', '85 kg'],
    [83.7, 'kg', 'Back Squat', 'Metric Cellar', '82.5 kg'],
    [78.75, 'kg', 'Back Squat', 'Metric Cellar', '80 kg'],
    [78.74, 'kg', 'Back Squat', 'Metric Cellar', '77.5 kg'],
    [12, 'kg', 'Back Squat', 'Metric Cellar', '20 kg, lightest'],
    [140, 'kg', 'Back Squat', 'Metric Cellar', '137.5 kg, heaviest'],
    [23, 'kg', 'Dumbbell Bench Press', 'Metric Cellar', '24 kg'],
    [23, 'kg', 'Dumbbell Bench Press', 'Bare Cellar', '23 kg, usual step'],
    [101, 'lb', 'Back Squat', 'Pound Cellar', '100 lb'],
    [60, 'kg', 'Back Squat', 'Pound Cellar', '130 lb'],
    [73.9, 'kg', 'Back Squat', 'Bare Cellar', '75 kg, usual step'],
    [73.75, 'kg', 'Back Squat', 'Bare Cellar', '75 kg, usual step'],
    [73.74, 'kg', 'Back Squat', 'Nowhere', '72.5 kg, usual step'],
    [137.5, 'lb', 'Back Squat', 'Bare Cellar', '140 lb, usual step'],
    [11.3, 'kg', 'Pull-up', 'Metric Cellar', '11.5 kg, usual step'],
    [11.3, 'kg', 'Turnip Hoist', 'Metric Cellar', '11.5 kg, usual step'],
  ] as const)('%s %s of %s at %s: %s', (amount, unit, movement, place, expected) => {
    expect(round(amount, unit, movement, place)).toBe(expected);
  });
});

describe('what is added to the body', () => {
  const { practice: places } = practiceOf(`place Odd Plates
  plates 1x7, 3x3, 1x1.1 kg
place Hands Alone
  dumbbells 4-20 by 4 kg
  kettlebells 6 kg
place Iron Pounds
  plates 2x10, 1x5, 1x2.5 lb
place Bare Cellar
  has pull-up bar
`);
  const add = (amount: number, place: string, way?: 'up' | 'down'): string => {
    const found = places.findPlace(place)?.entry;
    const { mass, limit, by } = roundAddedToPlace(toGrams(amount, 'kg'), 'kg', found, way);
    return [`${mass.written} ${mass.unit}`, limit, by === 'usual step' ? by : undefined]
      .filter((part) => part !== undefined)
      .join(', ');
  };
  test.each([
    [1, 'Odd Plates', undefined, '1.1 kg'], // one plate alone
    [0.5, 'Odd Plates', undefined, '0 kg'],
    [0.55, 'Odd Plates', undefined, '1.1 kg'], // in the middle, up
    [8, 'Odd Plates', undefined, '8.1 kg'], // 7 + 1.1
    [9.2, 'Odd Plates', undefined, '9 kg'], // 3 × 3
    [9.2, 'Odd Plates', 'up', '10 kg'], // 7 + 3
    [8.9, 'Odd Plates', 'down', '8.1 kg'],
    [30, 'Odd Plates', undefined, '17.1 kg, heaviest'],
    [5.2, 'Hands Alone', undefined, '6 kg'], // 4 is 1.2 off
    [2, 'Hands Alone', undefined, '4 kg'],
    [1.9, 'Hands Alone', undefined, '0 kg'],
    [11, 'Hands Alone', undefined, '12 kg'], // one, not two of them
    [5.5, 'Iron Pounds', undefined, '12.5 lb'], // 12.13 lb
    [11.3, 'Bare Cellar', undefined, '11.5 kg, usual step'],
    [11.3, 'Nowhere', undefined, '11.5 kg, usual step'],
  ] as const)('%s kg at %s %s: %s', (amount, place, way, expected) => {
    expect(add(amount, place, way)).toBe(expected);
  });
});

describe('in the place of a written load', () => {
  const { practice: mixed } = practiceOf(`place Two Racks
  dumbbells 5-50 by 5 lb
  kettlebells 8, 12, 16, 24 kg
place Both Kinds
  dumbbells 5-30 by 2.5 kg
  kettlebells 8, 12, 16, 24 kg
place Iron Pounds
  dumbbells 5-50 by 5 lb
exercise Turnip Hoist
  needs kettlebell
`);
  const load = (amount: number, unit: 'kg' | 'lb', place: string, written?: number, other = unit): string => {
    const like = written === undefined ? undefined : { grams: toGrams(written, other), written, unit: other };
    const { mass } = roundToPlace(
      toGrams(amount, unit),
      unit,
      mixed.findMovement('Turnip Hoist'),
      mixed.findPlace(place)?.entry,
      like,
    );
    return `${mass.written} ${mass.unit}`;
  };

  test.each([
    ['a kettlebell in kilograms by one, not by a dumbbell in pounds', 13.6, 'kg', 'Two Racks', 16, '12 kg'],
    ['a dumbbell in pounds by one', 27, 'lb', 'Two Racks', 30, '25 lb'],
    ['a weight that only dumbbells have, by one', 17, 'kg', 'Both Kinds', 17.5, '17.5 kg'],
    ['a weight that only kettlebells have, by one', 18, 'kg', 'Both Kinds', 16, '16 kg'],
    ['one that both have, by either', 22, 'kg', 'Both Kinds', 7.5, '22.5 kg'],
    ['one that nothing has, by its own kind in its unit', 13, 'kg', 'Two Racks', 14, '12 kg'],
    ['kilograms where there are only pounds', 13.6, 'kg', 'Iron Pounds', 16, '30 lb'],
    ['a percentage, by the movement’s own kind', 13.6, 'kg', 'Two Racks', undefined, '12 kg'],
  ] as const)('%s', (_name, amount, unit, place, written, expected) => {
    expect(load(amount, unit, place, written)).toBe(expected);
  });
});

test.each([
  [81.6, 'kg', 'Back Squat', 'Metric Cellar', '82.5 kg'],
  [61.2, 'kg', 'Back Squat', 'Metric Cellar', '62.5 kg'],
  [62.5, 'kg', 'Back Squat', 'Metric Cellar', '62.5 kg'],
  [200, 'kg', 'Back Squat', 'Metric Cellar', '137.5 kg'],
  [61.2, 'kg', 'Back Squat', 'Bare Cellar', '62.5 kg'],
  [135, 'lb', 'Back Squat', 'Bare Cellar', '135 lb'],
] as const)('no less than %s %s of %s at %s: %s', (amount, unit, movement, place, expected) => {
  const { mass } = roundToPlace(
    toGrams(amount, unit),
    unit,
    practice.findMovement(movement),
    practice.findPlace(place)?.entry,
    undefined,
    'up',
  );
  expect(`${mass.written} ${mass.unit}`).toBe(expected);
});
