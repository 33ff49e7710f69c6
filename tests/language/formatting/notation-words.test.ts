import { isNotationWord } from '@plimsoll/language/formatting/notation-words';
import { expect, test } from 'vitest';

test('keywords of the grammar and units, slips among them, but no other word', () => {
  expect(['rpe', 'circuit', 'side', 'kg', 'lbs', 'w'].filter((word) => !isNotationWord(word))).toEqual([]);
  expect(['red', 'mon', 'RPE', 'squat', 'constructor'].filter(isNotationWord)).toEqual([]);
});
