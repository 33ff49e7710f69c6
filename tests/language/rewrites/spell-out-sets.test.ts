import { countSets } from '@plimsoll/language/rewrites/count-sets';
import { spellOutSets } from '@plimsoll/language/rewrites/spell-out-sets';
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { DEFINITIONS, sessionText } from '../measures/session-texts.ts';
import { listErrors, rewriteLog, sumSessions } from '../support/apply-rewrite.ts';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';

vi.setConfig({ testTimeout: PATIENCE });

const inSession = (line: string): string => `session 2026-11-17\n  ${line}\n`;

const spell = (line: string): string | undefined =>
  rewriteLog(spellOutSets, inSession(`<|>${line}`))
    ?.split('\n')[1]
    ?.trim();

test.each([
  ['Back Squat: 3x5 @ 85 kg', 'Back Squat: 5, 5, 5 @ 85 kg'],
  ['Back Squat: 3x5 @ 85 kg rpe 8', 'Back Squat: 5 @ 85 kg rpe 8, 5 @ 85 kg rpe 8, 5 @ 85 kg rpe 8'],
  ['Back Squat: 5 @ 60, 2x5 @ 80 kg', 'Back Squat: 5 @ 60, 5 @ 80 kg, 5 @ 80 kg'],
  ['Back Squat: 2x5, 4 @ 80 kg, rest 2:00', 'Back Squat: 5, 5, 4 @ 80 kg, rest 2:00'],
  ['Push-up: 3x10 rpe 7', 'Push-up: 10 rpe 7, 10 rpe 7, 10 rpe 7'],
  [
    'Curl: 2x10 @ 2x12 kg drop 8 @ 2x8 kg',
    'Curl: 10 @ 2x12 kg drop 8 @ 2x8 kg, 10 @ 2x12 kg drop 8 @ 2x8 kg',
  ],
  ['Run: 2x400 m in 1:40 @ 9 km/h', 'Run: 400 m in 1:40 @ 9 km/h, 400 m in 1:40 @ 9 km/h'],
  ['Row: 2x8/side @ 20 kg | 2x10/side @ 30 kg', 'Row: 8/side, 8/side @ 20 kg | 10/side, 10/side @ 30 kg'],
  ['Back Squat: 5, 5 @ 85 kg', undefined],
  ['Back Squat: 1x5 @ 85 kg', undefined],
  ['Back Squat: 3x5 5 @ 85 kg', undefined],
])('%s', (before, after) => expect(spell(before)).toBe(after));

test('all selected lines are written out', () => {
  const text = 'session 2026-11-17\n<|>  Dip: 2x5\n  Row: 2x8\n<|>  Plank: 2x30 s\n';
  expect(rewriteLog(spellOutSets, text)).toBe(
    'session 2026-11-17\n  Dip: 5, 5\n  Row: 8, 8\n  Plank: 2x30 s\n',
  );
});

test('no total changes, and counting again changes none either', () => {
  fc.assert(
    fc.property(sessionText, (log) => {
      const whole = (text: string): string => `<|>${text}<|>`;
      const spelled = rewriteLog(spellOutSets, whole(log)) ?? log;
      const counted = rewriteLog(countSets, whole(spelled)) ?? spelled;
      expect(rewriteLog(spellOutSets, whole(spelled))).toBeUndefined();
      const [before, ...after] = [log, spelled, counted].map((text) =>
        sumSessions({ 'definitions.plim': DEFINITIONS, 'log.plim': text }),
      );
      for (const sums of after) expect(sums).toEqual(before);
      expect(listErrors(spelled)).toEqual([]);
      expect(listErrors(counted)).toEqual([]);
    }),
    RUNS,
  );
});
