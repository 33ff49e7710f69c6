import { checkFile, checkFileAlone, prepareCheck } from '@plimsoll/language/checks/check-file';
import type { Practice } from '@plimsoll/language/practice/practice';
import { describe, expect, test } from 'vitest';
import {
  check,
  countSeverities,
  type Files,
  lines,
  listChecks,
  openPractice,
  openWithoutLibrary,
  readFolder,
  TODAY,
  toUri,
} from './workspace.ts';

test.each<[title: string, files: Files, problems: string[]]>([
  [
    'names on broken lines and under impossible dates are checked all the same',
    lines('session 2026-06-31', '  Keel Wiggle: 20', '  Back Squat: 5 @'),
    [
      'log.plim:2:3 No movement is called Keel Wiggle: define it with "exercise Keel Wiggle", or correct the name [unknown-movement]',
    ],
  ],
  [
    'a code ignored on its line',
    lines('session 2026-11-17', '  Keel Wiggle: 20  # ignore unknown-movement', '  Keel Waggle: 20'),
    [
      'log.plim:3:3 No movement is called Keel Waggle: define it with "exercise Keel Waggle", or correct the name [unknown-movement]',
    ],
  ],
  [
    'a code ignored by the comment line above, headers included',
    lines(
      'session 2026-11-12',
      '  # ignore no-load, unknown-movement',
      '  Keel Wiggle: 20',
      '# ignore session-twice',
      'session 2026-11-12',
    ),
    [],
  ],
  [
    'another code ignored',
    lines('session 2026-11-17', '  Back Squat: 20  # ignore unknown-movement'),
    [
      'log.plim:2:15 Back Squat has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it [no-load] → Add @ ?: Back Squat: 20 @ ?  # ignore unknown-movement',
    ],
  ],
  [
    'an unknown entry: its names are checked, its stray lines are silent',
    lines('sesion 2026-11-17', '  Keel Wiggle: 20', '  legs felt heavy'),
    [
      'log.plim:2:3 No movement is called Keel Wiggle: define it with "exercise Keel Wiggle", or correct the name [unknown-movement]',
    ],
  ],
])('%s', (_title, files, problems) => {
  expect(check(files, 'impossible-date', 'missing-load', 'unknown-entry')).toEqual(problems);
});

test('what reading found is among the problems', () => {
  const found = checkFile(openPractice('session 2026-06-31'), toUri('log.plim'), { today: TODAY });
  expect(found.map(({ problem }) => problem.code)).toContain('impossible-date');
});

test('a file alone says nothing about names', () => {
  const practice = openPractice(
    lines('session 2026-06-31', '  Keel Wiggle: 8-12  # ignore for-plans', '  Dip: 8-12'),
  );
  const found = checkFileAlone(practice, toUri('log.plim'));
  expect(
    found.map(({ entryLine, problem }) => `${entryLine + problem.span.line + 1} ${problem.code}`),
  ).toEqual(['1 impossible-date', '3 for-plans']);
});

test('a file that is not there has no problems', () => {
  expect(checkFile(openPractice(''), toUri('other.plim'), { today: TODAY })).toEqual([]);
});

describe('what was found before is found anew after a change elsewhere', () => {
  const log = lines('session 2026-11-12 Bram Skuttle', '  Keel Wiggle: 20');
  const codes = (practice: ReturnType<typeof openPractice>, today = TODAY): string[] =>
    checkFile(practice, toUri('log.plim'), { today }).map(({ problem }) => problem.code);

  test('a definition', () => {
    const practice = openPractice({ 'log.plim': log });
    expect(codes(practice)).toEqual(['unknown-movement']);
    practice.setFile(toUri('movements.plim'), 'exercise Keel Wiggle');
    expect(codes(practice)).toEqual([]);
    practice.removeFile(toUri('movements.plim'));
    expect(codes(practice)).toEqual(['unknown-movement']);
  });

  test('a session of the same athlete', () => {
    const practice = openPractice({ 'log.plim': log, 'movements.plim': 'exercise Keel Wiggle' });
    practice.setFile(toUri('earlier.plim'), 'session 2026-11-12 Bram Skuttle');
    expect(codes(practice)).toEqual(['session-twice']);
    practice.setFile(toUri('earlier.plim'), 'session 2026-10-12 Bram Skuttle');
    expect(codes(practice)).toEqual(['caution-layoff']);
  });

  test('the day', () => {
    const practice = openPractice({ 'log.plim': log, 'movements.plim': 'exercise Keel Wiggle' });
    expect(codes(practice, '2026-11-11')).toEqual(['future-session']);
    expect(codes(practice, '2026-11-12')).toEqual([]);
  });
});

test('the samples have no error and no warning; what is said beside that stays little', () => {
  const practice = openPractice(Object.fromEntries(readFolder('samples')));
  expect(countSeverities(practice)).toMatchObject({ error: 0, warning: 0 });
  expect(listChecks(practice)).toMatchInlineSnapshot(`
    [
      "barnaby-tidewick/2026-10.plim:56:9 Barnaby Tidewick: the first session in 20 days: begin with less load and fewer sets and build up; after illness or injury ask a licensed practitioner [caution-layoff]",
      "odalys-wrackfern/2026-11.plim:88:9 Odalys Wrackfern: week 46 has 10 329 kg incl. body, 33 % over the mean of the last four trained weeks (7 764 kg): is that meant? No threshold has been shown to predict injury [week-jump]",
      "odalys-wrackfern/2026-11.plim:112:10 A max test: rested, in steps, with a spotter or safeties, stopped at any pain; in doubt ask a licensed practitioner [caution-max-test]",
      "perrin-oakumby/2026-09.plim:9:10 A max test: rested, in steps, with a spotter or safeties, stopped at any pain; in doubt ask a licensed practitioner [caution-max-test]",
      "perrin-oakumby/2026-09.plim:22:10 A max test: rested, in steps, with a spotter or safeties, stopped at any pain; in doubt ask a licensed practitioner [caution-max-test]",
      "perrin-oakumby/2026-10.plim:55:10 A max test: rested, in steps, with a spotter or safeties, stopped at any pain; in doubt ask a licensed practitioner [caution-max-test]",
      "perrin-oakumby/2026-10.plim:102:10 A max test: rested, in steps, with a spotter or safeties, stopped at any pain; in doubt ask a licensed practitioner [caution-max-test]",
      "perrin-oakumby/2026-10.plim:116:10 A max test: rested, in steps, with a spotter or safeties, stopped at any pain; in doubt ask a licensed practitioner [caution-max-test]",
      "zephrine-mizzenholt/2026-11.plim:74:10 A max test: rested, in steps, with a spotter or safeties, stopped at any pain; in doubt ask a licensed practitioner [caution-max-test]",
    ]
  `);
});

test('the built-in library has no problem at all', () => {
  const library = openWithoutLibrary(Object.fromEntries(readFolder('language/library')));
  expect(listChecks(library)).toEqual([]);
});

describe('a file that is prepared step by step', () => {
  const LOG = 'session 2026-11-17\n  Keel Wiggle: 20\nsession 2026-11-16\n  Keel Waggle: 20\n';
  const uri = toUri('log.plim');
  const look = (practice: Practice) => checkFile(practice, uri, { today: TODAY });

  test('takes more steps than it has sessions, and then there is nothing left to do', () => {
    const practice = openPractice(LOG);
    const found = look(practice);
    expect([...prepareCheck(practice, uri, { today: TODAY })].length).toBeGreaterThan(2);
    const prepared = look(practice);
    expect(prepared).toEqual(found);
    expect(look(practice)).toBe(prepared);
  });

  test.each<[string, (practice: Practice) => void]>([
    ['edited since', (practice) => practice.setFile(uri, LOG.replace('Waggle', 'Wobble'))],
    ['whose definitions changed since', (practice) => practice.setFile('d.plim', 'exercise Keel Wiggle\n')],
  ])('one %s is looked at again', (_, change) => {
    const practice = openPractice(LOG);
    for (const _step of prepareCheck(practice, uri, { today: TODAY }));
    const before = look(practice);
    change(practice);
    expect(look(practice)).not.toEqual(before);
  });

  test('one edited between two steps is looked at again', () => {
    const practice = openPractice(LOG);
    const steps = prepareCheck(practice, uri, { today: TODAY })[Symbol.iterator]();
    steps.next();
    practice.setFile(uri, LOG.replace('Wiggle', 'Wobble'));
    while (!steps.next().done);
    expect(look(practice)).toEqual(look(openPractice(LOG.replace('Wiggle', 'Wobble'))));
  });

  test('on another day it is looked at again', () => {
    const practice = openPractice(LOG);
    for (const _step of prepareCheck(practice, uri, { today: TODAY }));
    expect(checkFile(practice, uri, { today: '2026-11-16' })).not.toEqual(look(practice));
  });
});
