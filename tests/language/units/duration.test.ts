import { expect, test } from 'vitest';
import { parseClock, printClock, printMinutes, SECONDS_PER } from '../../../language/src/units/duration.ts';

test.each([
  ['4:05', 245],
  ['0:30', 30],
  ['75:00', 4500],
  ['1:02:03', 3723],
  ['10:59:59', 39_599],
  ['0:00', 0],
  ['04:05', 245],
])('%s is %i s', (text, seconds) => {
  expect(parseClock(text)).toBe(seconds);
});

test.each([
  '4:5',
  '4:60',
  '1:60:00',
  '1:2:03',
  ':30',
  '4:',
  '30',
  '4:05:',
  '1:02:03:04',
  '-4:05',
  '4:05 ',
  '',
])('"%s" is no time', (text) => {
  expect(parseClock(text)).toBeUndefined();
});

test.each([
  [245, '4:05'],
  [30, '0:30'],
  [3599.4, '59:59'],
  [3599.5, '1:00:00'],
  [3723, '1:02:03'],
  [0, '0:00'],
  [-10, '-0:10'],
  [-0.2, '0:00'],
])('%d s is %s', (seconds, expected) => {
  expect(printClock(seconds)).toBe(expected);
});

test.each([
  [3480, '58 min'],
  [1110, '18.5 min'],
  [100, '1.7 min'],
  [60_000, '1 000 min'],
])('%i s is %s', (seconds, expected) => {
  expect(printMinutes(seconds)).toBe(expected);
});

test('minutes can be whole', () => {
  expect(printMinutes(100, 0)).toBe('2 min');
});

test('a day of seconds reads back as printed', () => {
  for (let seconds = 0; seconds <= 86_400; seconds++) {
    expect(parseClock(printClock(seconds))).toBe(seconds);
  }
});

test('an hour is sixty minutes of sixty seconds', () => {
  expect(SECONDS_PER).toEqual({ s: 1, min: 60, h: 3600 });
});
