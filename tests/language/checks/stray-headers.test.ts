import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

// Lines with a name and a date, or the word session, that begin no session.
test.each<[title: string, files: Files, problems: string[]]>([
  [
    'a session whose date is none',
    lines('session 2026-11-17', '', 'session next week'),
    [
      'log.plim:3:1 No session begins here, so the lines below count to the entry above: write its date first, such as session 2026-11-17 [stray-line]',
    ],
  ],
  [
    'a name and a date',
    lines(
      'athlete Otti Plankermann',
      'session 2026-11-17 Otti Plankermann',
      '  Push-up: 8',
      'Otti Plankermann 2026-11-18 at Kelp Cellar',
      '  2026-13-40 Otti Plankermann',
      ' session Otti Plankermann',
    ),
    [
      'log.plim:4:1 No session begins here, so the lines below count to the entry above until it is corrected: write session 2026-11-18 Otti Plankermann at Kelp Cellar [stray-line] → Write session 2026-11-18 Otti Plankermann at Kelp Cellar: session 2026-11-18 Otti Plankermann at Kelp Cellar',
      'log.plim:5:3 Nothing recognises this line, so it counts nowhere: a session begins with the word session, a date and an athlete [stray-line]',
      'log.plim:6:2 No session begins here, so the lines below count to the entry above: write its date first, such as session 2026-11-17 [stray-line]',
    ],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files)).toEqual(problems);
});
