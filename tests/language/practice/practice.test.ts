import { createPractice } from '@plimsoll/language/create-practice';
import { expect, test } from 'vitest';

const HEAVE = 'exercise Sack Heave\n  also Turnip Toss\n';
const ROW = 'exercise Crate Row\n  also Turnip Toss\n';

/** Which of some movements count as defined otherwise after a file's text became another. */
function listRedefined(before: string, after: string, ...keys: string[]): string[] {
  const practice = createPractice();
  practice.setFile('a.plim', before);
  const { edition } = practice;
  practice.setFile('a.plim', after);
  return keys.filter((key) => practice.hasRedefined(edition, new Set([key])));
}

test.each([
  ['nothing, where it only stands on another line', HEAVE, `# one more\n\n${HEAVE}`, []],
  [
    'a definition that says something else',
    HEAVE,
    `${HEAVE}  bodyweight 40%\n`,
    ['sack heave', 'turnip toss'],
  ],
  ['all the names of a definition that came', '', ROW, ['crate row', 'turnip toss']],
  ['the one that counts from now on', HEAVE + ROW, ROW, ['sack heave', 'crate row', 'turnip toss']],
  ['both of two that change places', HEAVE + ROW, ROW + HEAVE, ['sack heave', 'crate row', 'turnip toss']],
  ['no movement, where a place changes', `${HEAVE}place Gantry Loft\n`, `${HEAVE}place Gantry\n`, []],
])('is redefined: %s', (_what, before, after, expected) => {
  expect(listRedefined(before, after, 'sack heave', 'crate row', 'turnip toss', 'plank')).toEqual(expected);
});

test('of two definitions of a name the first counts, in whatever order they came to stand', () => {
  const practice = createPractice();
  practice.setFile('a.plim', HEAVE + ROW);
  expect(practice.findMovement('Turnip Toss')?.name).toBe('Sack Heave');
  practice.setFile('a.plim', ROW + HEAVE);
  expect(practice.findMovement('Turnip Toss')?.name).toBe('Crate Row');
});
