import fc from 'fast-check';
import { expect, test } from 'vitest';
import { printNumber, printRange, printSigned, roundTo } from '../../../language/src/units/number.ts';

test.each([
  [7825, 0, '7 825'],
  [999, 0, '999'],
  [1000, 0, '1 000'],
  [1234567.891, 2, '1 234 567.89'],
  [82.5, 2, '82.5'],
  [82, 2, '82'],
  [100.1, 0, '100'],
  [0.05, 1, '0.1'],
  [1.005, 2, '1.01'],
  [-1.005, 2, '-1.01'],
  [999.95, 1, '1 000'],
  [-1234.5, 1, '-1 234.5'],
  [-0.04, 1, '0'],
  [0, 2, '0'],
  [100, 0, '100'],
  [1e-9, 3, '0'],
  [1234.5678, 4, '1 234.5678'],
])('%d to %i decimals is "%s"', (value, decimals, expected) => {
  expect(printNumber(value, decimals)).toBe(expected);
});

test('whole numbers without being asked for decimals', () => {
  expect([printNumber(12.7), printSigned(12.7), printRange(12.7, 14.2)]).toEqual(['13', '+13', '13 to 14']);
});

test.each([
  [6.779661, 1, '+6.8'],
  [-6.779661, 1, '-6.8'],
  [0.04, 1, '0'],
  [-0.04, 1, '0'],
])('%d with its sign is "%s"', (value, decimals, expected) => {
  expect(printSigned(value, decimals)).toBe(expected);
});

test.each([
  [98, 105, 0, '98 to 105'],
  [98.1, 98.2, 0, '98'],
  [98.1, 98.2, 1, '98.1 to 98.2'],
])('from %d to %d is "%s"', (low, high, decimals, expected) => {
  expect(printRange(low, high, decimals)).toBe(expected);
});

test('what is printed reads back as the rounded value', () => {
  const values = fc.double({ min: -1e7, max: 1e7, noNaN: true });
  fc.assert(
    fc.property(values, fc.nat({ max: 4 }), (value, decimals) => {
      const read = Number(printNumber(value, decimals).replaceAll(' ', ''));
      expect(read).toBe(roundTo(value, decimals) + 0);
      expect(Math.abs(read - value)).toBeLessThanOrEqual(0.5000001 * 10 ** -decimals);
    }),
  );
});
