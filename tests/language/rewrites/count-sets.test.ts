import { countSets } from '@plimsoll/language/rewrites/count-sets';
import { expect, test } from 'vitest';
import { rewriteLog } from '../support/apply-rewrite.ts';

const count = (line: string): string | undefined =>
  rewriteLog(countSets, `session 2026-11-17\n  <|>${line}\n`)?.split('\n')[1]?.trim();

test.each([
  ['Back Squat: 5, 5, 5 @ 85 kg', 'Back Squat: 3x5 @ 85 kg'],
  ['Back Squat: 5 @ 85 kg rpe 8, 5 @ 85 kg rpe 8', 'Back Squat: 2x5 @ 85 kg rpe 8'],
  ['Back Squat: 5, 5, 5 @ 85 kg rpe 8', 'Back Squat: 2x5, 5 @ 85 kg rpe 8'],
  ['Back Squat: 2x5 @ 60 kg, 5 @ 60 kg, 3 @ 80 kg', 'Back Squat: 3x5 @ 60 kg, 3 @ 80 kg'],
  ['Back Squat: 5 @ 60, 5 @ 60.0 kg', 'Back Squat: 2x5 @ 60.0 kg'],
  ['Push-up: 10, 10, 8, 8, 10', 'Push-up: 2x10, 2x8, 10'],
  ['Push-up: 10, 10 | 8, 8', 'Push-up: 2x10 | 2x8'],
  ['Dip: ?, ?', 'Dip: 2x?'],
  ['Back Squat: 5 @ 60 kg, 5', undefined],
  ['Back Squat: 5 @, 5', undefined],
  ['Back Squat: 5 @ 60 kg, 5 @ 62.5 kg', undefined],
  ['Dip: 5, tempo 3-1-1-0, 5', undefined],
  ['Dip: 40x5, 20x5', undefined],
])('%s', (before, after) => expect(count(before)).toBe(after));
