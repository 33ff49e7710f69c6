import { expect, test } from 'vitest';
import { check, lines } from './workspace.ts';

test.each([
  [
    'a mistyped code, and the right one beside it',
    lines('session 2026-11-17', '  Back Squat: 5  # ignore no-load, lod-jump'),
    [
      'log.plim:2:36 No check is called lod-jump: did you mean load-jump? [unknown-check] → Write load-jump: Back Squat: 5  # ignore no-load, load-jump',
    ],
  ],
  [
    'a word that is no code',
    lines('session 2026-11-17', '  # ignore weather', '  Push-up: 5'),
    ['log.plim:2:12 No check is called weather [unknown-check]'],
  ],
  ['codes alone', lines('session 2026-11-17', '  Marrow Toss: 5 # ignore unknown-movement'), []],
])('%s', (_title, text, problems) => {
  expect(check(text)).toEqual(problems);
});
