import { expect, test } from 'vitest';
import { printAgain } from './print-again.ts';

test('a plan prints its settings, its notes and its days', () => {
  const lines = [
    'for Nessa Quill, Bo Marsh',
    'at Marsh Hall',
    'starts 2026-11-09',
    'follows Spring Tide',
    'weeks 6',
    'deload week 6, sets 50%, load 90%',
    'days Mon, Wed, Fri',
    'days alternate, 3 a week',
    'training max 90%',
    '> easy on the knees',
    'day 1 Squat',
    '  > calm',
    '  A straight, rest 3:00',
    '    Ferry Squat: 3x5 @ 70% | 4x4 @ 75%',
    '    week 2 test Ferry Squat: 1 @ 100%',
    'day 2',
    '  Marsh Pull: 8-12 @ 2x18 kg, then +2 kg from 8',
  ];
  expect(printAgain('plan Slow Tide', lines.join('\n'))).toBe(lines.join('\n'));
});

test('a plan without days has one', () => {
  expect(printAgain('plan Slow Tide', 'Marsh Pull: 8')).toBe('day 1\n  Marsh Pull: 8');
});
