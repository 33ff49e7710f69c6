import { SessionWorks } from '@plimsoll/language/measures/session-work';
import { describeAthleteWeek } from '@plimsoll/language/summaries/athlete-week';
import { expect, test } from 'vitest';
import { readMarked } from '../support/marked-practice.ts';

const people = 'athlete Quill Harrow\n\nathlete Bev Stromm\n\nathlete Bev Vell\n  units lb\n';
/** Weeks 47 (Monday 16 November) and 48 (Monday 23 November) of 2026. */
const log = `session 2026-11-16 Quill Harrow
  Deadlift: 5 @ 100 kg

session 2026-11-20 Quill Harrow
  Deadlift: 5 @ 100 kg

session 2026-11-23 Quill Harrow
  Deadlift: 6 @ 100 kg

session 2026-11-23 Bev Stromm
  missed, snow

session 2026-11-23 Bev Stromm | Bev Vell
  Deadlift: 5 @ 40 kg | 5 @ 60 kg

session 2025-12-29 Quill Harrow
  Dip: 5
`;

/** What is said at the cursor on a day, as `text (detail)`; narrow spaces as plain ones. */
function say(
  marked: string,
  today: `${number}-${number}-${number}` = '2026-11-24',
  file = 'log.plim',
): string | undefined {
  const files = { 'people.plim': people, 'log.plim': log, [file]: marked };
  const { practice, uri, line, column } = readMarked(files);
  const works = new SessionWorks(practice);
  const week = describeAthleteWeek(works, uri, line, column, {
    today,
    formula: 'epley',
    unit: 'kg',
    complete: true,
  });
  return week && `${week.text}${week.detail && ` (${week.detail})`}`.replace(/\s/g, ' ');
}

const at = (before: string, after: string, text = log) =>
  text.replace(before + after, `${before}<|>${after}`);

test.each([
  [
    'this week stands beside the same weekdays of the last',
    at('session 2026-11-23 Quill', ' Harrow'),
    'Quill · week 48 so far: 1 session, 600 kg (20 % over week 47 to the same weekday)',
  ],
  [
    'a week that is over is whole',
    at('session 2026-11-16 ', 'Quill'),
    'Quill · week 47: 2 sessions, 1 000 kg',
  ],
  ['a week of another year says so', at('session 2025-12-29 ', 'Quill'), 'Quill · week 1: 1 session, 5 reps'],
  [
    'two of one first name have their whole names',
    at('session 2026-11-23 Bev Stromm', '\n  missed'),
    'Bev Stromm · week 48 so far: 1 session, 200 kg',
  ],
  [
    "of a group, whoever's cell it is",
    at('5 @ 40 kg | 5 @ 6', '0 kg'),
    'Bev Vell · week 48 so far: 1 session, 661 lb',
  ],
  ['or whoever is named', at('Bev Stromm | Bev', ' Vell'), 'Bev Vell · week 48 so far: 1 session, 661 lb'],
])('%s', (_name, marked, expected) => {
  expect(say(marked)).toBe(expected);
});

test("an athlete's definition tells this week", () => {
  const marked = at('athlete Quill', ' Harrow', people);
  expect(say(marked, '2026-11-24', 'people.plim')).toBe(
    'Quill · week 48 so far: 1 session, 600 kg (20 % over week 47 to the same weekday)',
  );
  expect(say(marked, '2026-12-08', 'people.plim')).toBe('Quill · week 50 so far: no session');
});

test.each([
  ['in a place', 'place Saltglass<|> Loft\n'],
  ['in an empty file', '<|>'],
  ['in a session without a day', 'session<|>\n  Dip: 5\n'],
])('nothing %s', (_name, marked) => {
  expect(say(marked)).toBeUndefined();
});
