import { expect, test } from 'vitest';
import { printAgain } from './print-again.ts';

test('an athlete prints in the order of the reference', () => {
  const lines = [
    'born 1991',
    'sex female',
    'units lb',
    'bodyweight 68.5 kg on 2026-10-01',
    'bodyweight 68 kg on 2026-11-01',
    'max Ferry Squat: 105 kg on 2026-09-28',
    'max Marsh Pull: 75% of Ferry Squat on 2026-09-28',
    'retest Ferry Squat: 100 kg, 102.5 kg on 2026-09-28',
    'goal Marsh Pull: 8 @ bw by 2027-06-01',
    'avoid vertical push until 2026-12-15, left shoulder',
    'away 2026-12-19 to 2027-01-03, at sea',
    'screened 2026-10-01, the harbour nurse',
    '> writes with the left hand',
  ];
  expect(printAgain('athlete Nessa Quill', lines.join('\n'))).toBe(lines.join('\n'));
});
