import { expect, test } from 'vitest';
import { printPlain, printTime } from '../../../language/src/printing/print-quantity.ts';
import { printSets } from './print-again.ts';

test.each([
  ['8', '8'],
  ['8/side', '8/side'],
  ['8 left 7 right', '8 left 7 right'],
  ['30 left 25 s right', '30 s left 25 s right'],
  ['30 s/side', '30 s/side'],
  ['4:05', '4:05'],
  ['245 s', '245 s'],
  ['1.50 km', '1.5 km'],
  ['20 yards', '20 yd'],
  ['8-12/side', '8-12/side'],
  ['30 s-45 s', '30-45 s'],
  ['45 s-1:30', '45 s-1:30'],
  ['5 +', '5+'],
  ['AMRAP/side', 'amrap/side'],
  ['3xamrap', '3xamrap'],
  ['4 of 5', '4 of 5'],
  ['(2+2+2 rest 20 s)', '(2+2+2 rest 0:20)'],
  ['(5x10 s/side rest 5 s)', '(5x10 s rest 0:05)/side'],
  ['(3x2+1)', '(2+2+2+1)'],
  ['(4x1+3)', '(4x1+3)'],
  ['?', '?'],
  ['skipped', 'skipped'],
])('the amount %s prints as %s', (sets, printed) => {
  expect(printSets(sets)).toBe(printed);
});

test.each([
  [75, '1:15'],
  [3723, '1:02:03'],
  [58.3, '58.3 s'],
])('%s seconds print as %s', (seconds, printed) => {
  expect(printTime(seconds)).toBe(printed);
});

test.each([
  [1500, '1500'],
  [0.0000005, '0.0000005'],
])('%s is written without grouping or exponent', (value, printed) => {
  expect(printPlain(value)).toBe(printed);
});
