import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Where no athlete is defined, a rare name beside a usual one.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'one letter off a usual name',
    lines(
      'session 2026-11-10 Otti Plankermann',
      'session 2026-11-12 Otti Plankermann',
      'session 2026-11-14 Otti Plankermann',
      'session 2026-11-16 Otti Plankerman',
    ),
    [
      'log.plim:4:20 Otti Plankerman has few sessions: did you mean Otti Plankermann, who has 3? [unknown-athlete] → Write Otti Plankermann: session 2026-11-16 Otti Plankermann',
    ],
  ],
  [
    'as usual as the other',
    lines(
      'session 2026-11-10 Otti Plankermann',
      'session 2026-11-12 Otti Plankermann',
      'session 2026-11-14 Otti Plankerman',
    ),
    [],
  ],
  [
    'short names are other people',
    lines(
      'session 2026-11-10 Otti',
      'session 2026-11-12 Otti',
      'session 2026-11-14 Otti',
      'session 2026-11-16 Orti',
    ),
    [],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
