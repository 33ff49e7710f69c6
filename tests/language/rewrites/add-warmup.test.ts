import { addWarmup } from '@plimsoll/language/rewrites/add-warmup';
import { describe, expect, test } from 'vitest';
import { applyRewrite, rewriteLog, sumSessions } from '../support/apply-rewrite.ts';

const PLACE =
  'place Marsh Hall\n  bars 15 kg, 20 kg\n  plates 4x20, 2x10, 2x5 kg\n  dumbbells 4-20 by 4 kg\n\n';

function warmUp(line: string, at = '', header = '  A straight\n'): string | undefined {
  const text = `${at ? PLACE : ''}session 2026-11-17${at}\n${header}    <|>${line}\n`;
  return rewriteLog(addWarmup, text)?.split('\n').at(-3)?.trim();
}

describe('without a place, in usual steps', () => {
  test.each([
    ['Back Squat: 3x5 @ 100 kg', 'warmup Back Squat: 8 @ 20, 5 @ 50, 3 @ 70, 1 @ 85 kg'],
    ['Back Squat: 5 @ 60, 5 @ 92.5, 3 @ 80 kg', 'warmup Back Squat: 8 @ 20, 5 @ 47.5, 3 @ 65, 1 @ 77.5 kg'],
    ['Back Squat: 5 @ 225 lb', 'warmup Back Squat: 8 @ 45, 5 @ 115, 3 @ 160, 1 @ 190 lb'],
    ['Back Squat: 5 @ 30 kg', 'warmup Back Squat: 8 @ 20, 1 @ 25 kg'],
    ['Goblet Squat: 8/side @ 24 kg', 'warmup Goblet Squat: 5/side @ 12.5, 3/side @ 17.5, 1/side @ 20 kg'],
  ])('%s', (line, expected) => expect(warmUp(line)).toBe(expected));
});

describe('in loads that the place can make, never under its bar', () => {
  test.each([
    ['Back Squat: 3x5 @ 100 kg', 'warmup Back Squat: 8 @ 20, 5 @ 50, 3 @ 70, 1 @ 90 kg'],
    ['Back Squat: 3x5 @ 40 kg', 'warmup Back Squat: 8 @ 20, 3 @ 30 kg'],
    ['Dumbbell Bench Press: 8 @ 2x20 kg', 'warmup Dumbbell Bench Press: 5 @ 2x12, 3 @ 2x16 kg'],
  ])('%s', (line, expected) => expect(warmUp(line, ' at Marsh Hall')).toBe(expected));
});

test.each([
  ['nothing fits below', 'Back Squat: 5 @ 20 kg', undefined],
  ['a circuit', 'Back Squat: 5 @ 100 kg', '  B circuit, 3 rounds\n'],
  ['a warm-up is there', 'Back Squat: 5 @ 100 kg', '    warmup Back Squat: 5 @ 40 kg\n'],
  ['a warm-up itself', 'warmup Back Squat: 5 @ 100 kg', undefined],
  ['a carry', 'Farmer Carry: 40 m @ 2x24 kg', undefined],
  ['no load', 'Push-up: 10', undefined],
  ['an unknown movement', 'Marsh Pull: 5 @ 60 kg', undefined],
])('not offered for %s', (_name, line, header) => expect(warmUp(line, '', header)).toBeUndefined());

test('working sums stay, and the title says where the shares come from', () => {
  const text = 'session 2026-11-17\n  <|>Back Squat: 3x5 @ 100 kg\n';
  const { title, files } = applyRewrite(addWarmup, text)!;
  expect(title).toContain('common practice');
  expect(sumSessions(files)).toEqual(sumSessions({ 'log.plim': text.replace('<|>', '') }));
});
