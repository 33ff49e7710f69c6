import { describe, expect, test } from 'vitest';
import { convertMass, fromGrams, printMass, toGrams } from '../../../language/src/units/mass.ts';

describe('pounds are exact: 1 lb = 0.45359237 kg (international agreement of 1959)', () => {
  test.each([
    [1, 0.45359237],
    [45, 20.41165665],
    [135, 61.23496995],
    [225, 102.05828325],
  ])('%d lb is %d kg', (pounds, kilograms) => {
    expect(convertMass(pounds, 'lb', 'kg')).toBeCloseTo(kilograms, 11);
  });

  test.each([
    [20, 44.09245244],
    [100, 220.46226218],
    [60, 132.27735731],
  ])('%d kg is %d lb', (kilograms, pounds) => {
    expect(convertMass(kilograms, 'kg', 'lb')).toBeCloseTo(pounds, 8);
  });

  test('a mass in its own unit is untouched', () => {
    expect(convertMass(0.1, 'lb', 'lb')).toBe(0.1);
    expect(convertMass(0.1, 'kg', 'kg')).toBe(0.1);
  });
});

test.each([
  [22.5, 'kg', 22_500],
  [1.005, 'kg', 1005],
  [0.1, 'kg', 100],
  [225, 'lb', 102_058],
  [45, 'lb', 20_412],
] as const)('%d %s is %i whole grams', (amount, unit, grams) => {
  expect(toGrams(amount, unit)).toBe(grams);
});

test.each([
  [82_500, 'kg', '82.5 kg'],
  [1_250, 'kg', '1.25 kg'],
  [7_825_000, 'kg', '7 825 kg'],
  [100_000, 'lb', '220.46 lb'],
] as const)('%i g in %s is "%s"', (grams, unit, expected) => {
  expect(printMass(grams, unit)).toBe(expected);
});

test('decimals can be fewer', () => {
  expect(printMass(100_000, 'lb', 1)).toBe('220.5 lb');
});

test('every quarter pound survives whole grams and prints as written', () => {
  for (let quarters = 1; quarters < 4000; quarters++) {
    const grams = toGrams(quarters / 4, 'lb');
    expect(Math.abs(fromGrams(grams, 'lb') - quarters / 4)).toBeLessThan(0.0012);
    expect(printMass(grams, 'lb')).toBe(`${quarters / 4} lb`);
  }
});
