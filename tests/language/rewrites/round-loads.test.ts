import { roundLoads } from '@plimsoll/language/rewrites/round-loads';
import { expect, test } from 'vitest';
import { applyRewrite, rewriteLog } from '../support/apply-rewrite.ts';

const PLACE =
  'place Marsh Hall\n  bars 20 kg\n  plates 4x20, 2x10, 2x5, 2x2.5, 2x1.25 kg\n  dumbbells 4-20 by 4 kg\n\n';

const round = (line: string, at = ' at Marsh Hall'): string | undefined =>
  rewriteLog(roundLoads, `${PLACE}session 2026-11-17${at}\n  <|>${line}\n`)?.split('\n').at(-2)?.trim();

test.each([
  ['Back Squat: 5 @ 83 kg', 'Back Squat: 5 @ 82.5 kg'],
  ['Back Squat: 5 @ 61, 5 @ 83.75 kg rpe 8', 'Back Squat: 5 @ 60, 5 @ 85 kg rpe 8'],
  ['Back Squat: 5 @ 12 kg', 'Back Squat: 5 @ 20 kg'],
  ['Back Squat: 5 @ 83 kg + 20 kg chain', 'Back Squat: 5 @ 82.5 kg + 20 kg chain'],
  ['Dumbbell Bench Press: 8 @ 2x15 kg', 'Dumbbell Bench Press: 8 @ 2x16 kg'],
  ['Dumbbell Bench Press: 8 @ 13 & 9 kg', 'Dumbbell Bench Press: 8 @ 12 & 8 kg'],
  ['Back Squat: 5 @ 82.5 kg', undefined],
  ['Marsh Pull: 5 @ 83 kg', undefined],
  ['Push-up: 5', undefined],
])('%s', (before, after) => expect(round(before)).toBe(after));

test('nothing is rounded where no place is named', () => {
  expect(round('Back Squat: 5 @ 83 kg', '')).toBeUndefined();
});

test('the title says whose plates', () => {
  const text = `${PLACE}session 2026-11-17 at Marsh Hall\n  Back Sq<|>uat: 5 @ 83 kg\n`;
  expect(applyRewrite(roundLoads, text)?.title).toBe('Round to the nearest that Marsh Hall can load');
});
