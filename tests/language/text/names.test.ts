import { foldName } from '@plimsoll/language/text/names';
import { describe, expect, test } from 'vitest';

describe('one name', () => {
  test.each([
    ['Push-Up', 'push up'],
    ['PUSH\u2013UP', 'push-up'],
    ['push \u2212 up', 'Push\u2010Up'],
    ["Farmer's Carry", 'Farmer\u2019s  carry'],
    ['Farmer\u02bcs Carry', 'farmer`s carry'],
    ['Back  Squat ', ' back\u00a0squat'],
    ['Zoe\u0308', 'Zo\u00eb'],
    ['ПРИСЕД', 'присед'],
  ])('%j and %j', (a, b) => {
    expect(foldName(a)).toBe(foldName(b));
  });
});

describe('two names', () => {
  test.each([
    ['Push-up', 'Pushup'],
    ['Row', 'Rows'],
    ['Zoe', 'Zo\u00eb'],
    ['Squat (pause)', 'Squat pause'],
  ])('%j and %j', (a, b) => {
    expect(foldName(a)).not.toBe(foldName(b));
  });
});

test('a folded name folds to itself', () => {
  for (const name of ['\u0130ida', 'Stra\u00dfe', 'T-Bar \u2014 Row'])
    expect(foldName(foldName(name))).toBe(foldName(name));
});
