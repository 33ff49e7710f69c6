import { expect, test } from 'vitest';
import { printSets } from './print-again.ts';

test.each([
  ['85kg', '85 kg'],
  ['185 lbs', '185 lb'],
  ['2x18 kg', '2x18 kg'],
  ['24 & 16 kg', '24&16 kg'],
  ['20 - 24 kg', '20-24 kg'],
  ['2x20-24 kg', '2x20-24 kg'],
  ['18 left 16 kg right', '18 kg left 16 kg right'],
  ['80 kg + 20 kg chain', '80 kg + 20 kg chain'],
  ['80 kg + 45 lb chain', '80 kg + 45 lb chain'],
  ['90 kg + Blue band', '90 kg + blue band'],
  ['bw', 'bw'],
  ['bw + 5 kg', 'bw+5 kg'],
  ['bw-pin 9', 'bw-pin 9'],
  ['bw - red band', 'bw-red band'],
  ['50% of bw', '50% of bw'],
  ['pin 9', 'pin 9'],
  ['pin 9+2.5 kg', 'pin 9 + 2.5 kg'],
  ['red band', 'red band'],
  ['60cm', '60 cm'],
  ['2:05/500 m', '2:05/500 m'],
  ['180 w', '180 W'],
  ['8 km/h', '8 km/h'],
  ['75 %', '75%'],
  ['70-75% of Marsh Squat', '70-75% of Marsh Squat'],
  ['-10%', '-10%'],
  ['-10 kg', '-10 kg'],
  ['rpe 7-8', 'rpe 7-8'],
  ['?', '?'],
])('the load %s prints as %s', (load, printed) => {
  expect(printSets(`5 @ ${load}`)).toBe(`5 @ ${printed}`);
});

test('a unit written once on a line is printed behind each of its loads', () => {
  expect(printSets('5 @ 60, 5 @ 80 kg')).toBe('5 @ 60 kg, 5 @ 80 kg');
});
