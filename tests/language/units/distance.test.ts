import { expect, test } from 'vitest';
import {
  type DistanceUnit,
  fromMetres,
  printDistance,
  toMetres,
} from '../../../language/src/units/distance.ts';

// Yard and mile: international yard and pound agreement of 1959, exact.
test.each<[number, DistanceUnit, number]>([
  [40, 'm', 40],
  [1.2, 'km', 1200],
  [60, 'cm', 0.6],
  [20, 'yd', 18.288],
  [1, 'mi', 1609.344],
  [1760, 'yd', 1609.344],
])('%d %s is %d m', (amount, unit, metres) => {
  expect(toMetres(amount, unit)).toBeCloseTo(metres, 10);
  expect(fromMetres(metres, unit)).toBeCloseTo(amount, 10);
});

test.each([
  [40, '40 m'],
  [18.288, '18.3 m'],
  [999.9, '999.9 m'],
  [999.96, '1 km'],
  [1000, '1 km'],
  [1200, '1.2 km'],
  [42_195, '42.2 km'],
  [-1500, '-1.5 km'],
])('%d m is "%s"', (metres, expected) => {
  expect(printDistance(metres)).toBe(expected);
});
