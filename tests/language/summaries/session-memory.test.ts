import { createPractice } from '@plimsoll/language/create-practice';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import { describeLens, listLensPlaces } from '@plimsoll/language/summaries/file-lenses';
import type { LensOptions } from '@plimsoll/language/summaries/lens';
import { expect, test } from 'vitest';

const OPTIONS: LensOptions = { today: '2026-11-24', formula: 'epley', unit: 'kg', complete: true };
const TEXT = `athlete Ann Vell

session 2026-11-03 Ann Vell
  Back Squat: 5 @ 60 kg rpe 8

session 2026-11-10 Ann Vell
  Back Squat: 5 @ 62.5 kg rpe 8

session 2026-11-24 Ann Vell
  Back Squat: 5 @ 65 kg rpe 8
`;

/** Lines of the lenses whose words are known, after all words were asked for and the text then changed. */
function listKnownAfter(change: (text: string) => string, options = OPTIONS, before = TEXT): number[] {
  const practice = createPractice();
  const works = new SessionWorks(practice);
  practice.setFile('log.plim', before);
  for (const place of listLensPlaces(works, 'log.plim', OPTIONS))
    describeLens(works, 'log.plim', place, OPTIONS);
  practice.setFile('log.plim', change(before));
  const known = listLensPlaces(works, 'log.plim', options).filter(({ text }) => text !== undefined);
  return [...new Set(known.map(({ line }) => line))];
}

test.each([
  ['nothing changed', (text: string) => text, [2, 3, 5, 6, 8, 9]],
  ['the last session changed', (text: string) => text.replace('@ 65', '@ 66'), [2, 3, 5, 6]],
  [
    'a session changed: those of later weeks may rest on it',
    (text: string) => text.replace('@ 62.5', '@ 63'),
    [2, 3],
  ],
  [
    'a session of the next day came: only the change of the week may be another',
    (text: string) => `${text}\nsession 2026-11-11 Ann Vell\n  Push-Up: 9\n`,
    [2, 3, 6],
  ],
  [
    'a session of somebody else came',
    (text: string) => `${text}\nsession 2026-11-01 Oda Brill\n  Push-Up: 9\n`,
    [2, 3, 5, 6, 8, 9],
  ],
  ['a definition came', (text: string) => `${text}\nplace Shed\n`, []],
])('what is known of lenses after %s', (_what, change, lines) => {
  expect(listKnownAfter(change)).toEqual(lines);
});

test('another unit or another day knows nothing', () => {
  expect(listKnownAfter((text) => text, { ...OPTIONS, unit: 'lb' })).toEqual([]);
  expect(listKnownAfter((text) => text, { ...OPTIONS, today: '2026-11-25' })).toEqual([]);
});

test('a set of one movement takes nothing from what is said of others, but for the change of a week', () => {
  const text = `session 2026-11-02
  A superset
    Back Squat: 5 @ 60 kg rpe 8
    Bench Press: 5 @ 40 kg rpe 8
    time 4:00

session 2026-11-03
  A straight
    Back Squat: 5 @ 60 kg rpe 8
  B straight
    Bench Press: 5 @ 40 kg rpe 8

session 2026-11-05
  Push-Up: 9
`;
  const known = (change: (text: string) => string) => listKnownAfter(change, OPTIONS, text);
  // The session of the fifth is the last of its week.
  expect(known((before) => before.replace('40 kg', '42 kg'))).toEqual([6, 7, 8]);
  expect(known((before) => before.replace('5 @ 60 kg', '6 @ 60 kg'))).toEqual([6, 9, 10]);
  // With another time it may be another block, whatever is in it.
  expect(known((before) => before.replace('4:00', '4:10'))).toEqual([6]);
  // A weigh-in may be in any sum.
  expect(known((before) => before.replace('\n', '\n  bodyweight 60 kg\n'))).toEqual([]);
});

test('what a session did of its plan rests on the maxes that the plan asks for', () => {
  const text = `plan Slow Tide
  weeks 2
  day 1
    Bench Press: 3x5 @ 60% of Back Squat

session 2026-11-02
  Back Squat: 5 @ 100 kg rpe 8
  Deadlift: 5 @ 120 kg rpe 8

session 2026-11-04, Slow Tide week 1 day 1
  Bench Press: 3x5 @ 60 kg

session 2026-11-06
  Push-Up: 9
`;
  const header = text.split('\n').findIndex((line) => line.includes('week 1 day 1'));
  const isKnown = (from: string, to: string) =>
    listKnownAfter((before) => before.replace(from, to), OPTIONS, text).includes(header);
  expect(isKnown('120 kg', '130 kg')).toBe(true);
  expect(isKnown('100 kg', '110 kg')).toBe(false);
});

test('a definition takes nothing from what is said of other movements, but for the change of a week', () => {
  const text = `session 2026-11-03
  A straight
    Back Squat: 5 @ 60 kg rpe 8
  B straight
    Sack Heave: 8 @ 30 kg rpe 8

session 2026-11-05
  Push-Up: 9
`;
  const define = (name: string) => (before: string) => `${before}\nexercise ${name}\n  needs barbell\n`;
  expect(listKnownAfter(define('Crate Row'), OPTIONS, text)).toEqual([0, 1, 2, 3, 4]);
  expect(listKnownAfter(define('Crate Row\n  also Sack Heave'), OPTIONS, text)).toEqual([1, 2]);
  expect(listKnownAfter(define('Back Squat'), OPTIONS, text)).toEqual([3, 4]);
});

test('a movement that another took the place of is named as it is defined by now', () => {
  const text = `session 2026-11-03 Ann Vell
  B circuit, 2 rounds
    Push-up: 10
    Sack Heave: 8 @ 30 kg
    time 1:40, 1:45

session 2026-11-10 Ann Vell
  B circuit, 2 rounds
    Push-up: 10
    Goblet Squat: 8 @ 20 kg
    time 1:40, 1:45
`;
  const practice = createPractice();
  const works = new SessionWorks(practice);
  practice.setFile('log.plim', text);
  const place = { kind: 'block', line: 7, nth: 0 } as const;
  const tell = () => describeLens(works, 'log.plim', place, OPTIONS)?.text;
  expect(tell()).toContain('Goblet Squat in place of sack heave since');
  practice.setFile('movements.plim', 'exercise Crate Row\n  also Sack Heave\n');
  expect(tell()).toContain('Goblet Squat in place of Crate Row since');
});
