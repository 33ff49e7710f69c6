import { checkFile } from '@plimsoll/language/checks/check-file';
import { forgetChecks } from '@plimsoll/language/checks/checked-entries';
import { expect, test } from 'vitest';
import { lines, openPractice, TODAY, toUri } from './workspace.ts';

/** Logs in which one set, or one name, of a session says whether something is told of another. */
const RESTING: readonly [code: string, text: string, from: string, to: string][] = [
  [
    'load-jump',
    lines(
      ...['10-05', '10-12', '10-19', '10-26'].flatMap((day) => [
        `session 2026-${day}`,
        '  Back Squat: 5 @ 70 kg',
      ]),
      'session 2026-11-02',
      '  Back Squat: 5 @ 80 kg',
      '  Deadlift: 5 @ 80 kg',
      'session 2026-11-17',
      '  Back Squat: 5 @ 90 kg',
    ),
    'Back Squat: 5 @ 80 kg',
    'Back Squat: 5 @ 75 kg',
  ],
  [
    'week-jump',
    lines(
      ...['10-19', '10-26', '11-02', '11-09'].flatMap((day) => [
        `session 2026-${day}`,
        '  Deadlift: 10 @ 100 kg',
      ]),
      'session 2026-11-17',
      '  Back Squat: 12 @ 100 kg',
    ),
    '10 @ 100 kg',
    '1 @ 100 kg',
  ],
  [
    'top-of-range',
    lines(
      'plan Slow Tide',
      '  weeks 2',
      '  day 1',
      '    Goblet Squat: 2x8-12 @ 16 kg, then +4 kg from 8',
      'session 2026-11-10, Slow Tide week 1 day 1',
      '  Goblet Squat: 12, 12 @ 16 kg',
      'session 2026-11-17',
      '  Goblet Squat: 8 @ 20 kg',
    ),
    'Goblet Squat: 8 @ 20 kg',
    'Deadlift: 8 @ 20 kg',
  ],
];

test.each(RESTING)(
  '%s is looked for again once another session says something else',
  (code, text, from, to) => {
    const practice = openPractice('');
    const isTold = (now: string): boolean => {
      practice.setFile(toUri('log.plim'), now);
      const found = checkFile(practice, toUri('log.plim'), { today: TODAY });
      return found.some(({ problem }) => problem.code === code);
    };
    const changed = text.replace(from, to);
    expect([text, changed, text].map(isTold)).toEqual([false, true, false]);
  },
);

test('what is let go of is found again', () => {
  for (const [code, text, from, to] of RESTING) {
    const practice = openPractice(text.replace(from, to));
    const find = () => checkFile(practice, toUri('log.plim'), { today: TODAY });
    const found = find();
    expect(found.map(({ problem }) => problem.code)).toContain(code);
    forgetChecks(practice);
    practice.setFile(toUri('other.plim'), 'session 2026-11-20\n  Back Squat: 5 @ 70 kg\n');
    practice.removeFile(toUri('other.plim'));
    expect(find()).toEqual(found);
  }
});
