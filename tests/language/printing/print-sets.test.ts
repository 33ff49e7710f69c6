import { expect, test } from 'vitest';
import { printSets } from './print-again.ts';

test.each([
  ['3 x 5 @ 85 kg', '3x5 @ 85 kg'],
  ['1x5 @ 85 kg', '1x5 @ 85 kg'],
  ['5, 5, 4 @ 85 kg', '5, 5, 4 @ 85 kg'],
  ['5, 5 @ 60 kg, 5 @ 80 kg', '5, 5 @ 60 kg, 5 @ 80 kg'],
  ['5 rpe 8 @ 85 kg', '5 @ 85 kg rpe 8'],
  ['5 @ 85 kg rpe 8 v 0.45 m/s', '5 @ 85 kg rpe 8 v 0.45 m/s'],
  ['12, 10 hr 148', '12, 10 hr 148'],
  ['400 m in 92 s', '400 m in 1:32'],
  ['400 m in 58.3 s', '400 m in 58.3 s'],
  ['10 @ 2x18 kg drop 8 @ 2x14 kg drop 6 @ 2x10 kg', '10 @ 2x18 kg drop 8 @ 2x14 kg drop 6 @ 2x10 kg'],
])('%s prints as %s', (sets, printed) => {
  expect(printSets(sets)).toBe(printed);
});
