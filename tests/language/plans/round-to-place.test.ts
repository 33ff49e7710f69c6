import { describe, expect, test } from 'vitest';
import { roundToPlace } from '../../../language/src/plans/round-to-place.ts';
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
