import { listPlanLinks } from '@plimsoll/language/practice/plan-links';
import { expect, test } from 'vitest';
import { readFiles } from '../support/marked-practice.ts';

const plans = 'units kg\n\nplan Ebb\n  day 1 Squat\n    Dip: 5\n  day 2\n    Dip: 5\n';

/** Each link as `line text → file line:column text`; lines and columns from 1. */
function link(...headers: string[]): string[] {
  const practice = readFiles({ 'log.plim': headers.join('\n'), 'plans.plim': plans });
  return listPlanLinks(practice, 'log.plim').map(({ from, uri, line, column, text }) => {
    const written = headers[from.line]!.slice(from.start, from.end);
    return `${from.line + 1} ${written} → ${uri} ${line + 1}:${column + 1} ${text}`;
  });
}

test.each([
  [
    'a day',
    'session 2026-11-16 Quill Harrow, Ebb week 2 day 1',
    '1 Ebb week 2 day 1 → plans.plim 4:3 Ebb, day 1 Squat',
  ],
  [
    'a day without a name',
    'session 2026-11-16, ebb week 2 day 2  # late',
    '1 ebb week 2 day 2 → plans.plim 6:3 Ebb, day 2',
  ],
  ['a plan alone', 'session 2026-11-16, Ebb', '1 Ebb → plans.plim 3:6 Ebb'],
  [
    'a day that the plan does not have',
    'session 2026-11-16, Ebb week 1 day 9',
    '1 Ebb week 1 day 9 → plans.plim 3:6 Ebb',
  ],
])('%s', (_name, header, expected) => {
  expect(link(header)).toEqual([expected]);
});

test.each([
  ['session 2026-11-16, Flood week 1 day 1'],
  ['session 2026-11-16 Quill Harrow'],
  ['plan Flow\n  follows Ebb'],
])('no link in %s', (text) => {
  expect(link(...text.split('\n'))).toEqual([]);
});
