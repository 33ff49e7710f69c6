import { type FileOutline, listRests, outlineFile } from '@plimsoll/language/checks/file-outline';
import { createPractice } from '@plimsoll/language/create-practice';
import { expect, test } from 'vitest';

function outline(text: string): FileOutline {
  const practice = createPractice();
  practice.setFile('memory:a.plim', text);
  return outlineFile(practice.file('memory:a.plim')!.model);
}

test.each([
  ['', { athletes: [], defines: false, definesAthlete: false }],
  ['units kg', { athletes: [], defines: false, definesAthlete: false }],
  ['session 2026-11-17\n  Back Squat: 5', { athletes: [''], defines: false, definesAthlete: false }],
  [
    'session 2026-11-17 Quill Harrow | Odalys Fenn\n\nsession 2026-11-19 quill-harrow',
    { athletes: ['odalys fenn', 'quill harrow'], defines: false, definesAthlete: false },
  ],
  ['athlete Quill Harrow', { athletes: [], defines: true, definesAthlete: true }],
  ['exercise Harbour Hop', { athletes: [], defines: true, definesAthlete: false }],
  ['place Gantry Loft', { athletes: [], defines: true, definesAthlete: false }],
  ['plan Slow Tide', { athletes: [''], defines: true, definesAthlete: false }],
  [
    'plan Slow Tide\n  for Quill Harrow',
    { athletes: ['quill harrow'], defines: true, definesAthlete: false },
  ],
] as const)('of %j', (text, expected) => {
  expect(outline(text)).toEqual(expected);
});

const of = (...athletes: string[]): FileOutline => ({ athletes, defines: false, definesAthlete: false });
const PLANS: FileOutline = { athletes: ['ann'], defines: true, definesAthlete: false };
const DEFINITIONS: FileOutline = { athletes: [], defines: true, definesAthlete: true };
const rest = (files: Readonly<Record<string, FileOutline>>) =>
  Object.fromEntries(listRests(new Map(Object.entries(files))));

test('a log rests on definitions and on the logs of its athletes', () => {
  expect(
    rest({
      who: DEFINITIONS,
      plans: PLANS,
      a: of('ann'),
      b: of('bo'),
      a2: of('ann'),
      both: of('ann', 'bo'),
      none: of(),
    }),
  ).toEqual({
    who: ['plans', 'who'],
    plans: ['a', 'a2', 'both', 'plans', 'who'],
    a: ['a', 'a2', 'both', 'plans', 'who'],
    a2: ['a', 'a2', 'both', 'plans', 'who'],
    b: ['b', 'both', 'plans', 'who'],
    both: ['a', 'a2', 'b', 'both', 'plans', 'who'],
    none: ['none', 'plans', 'who'],
  });
});

test('what names nobody may be of anybody', () => {
  expect(rest({ who: DEFINITIONS, a: of('ann'), b: of('bo'), x: of('') })).toEqual({
    who: ['who', 'x'],
    a: ['a', 'who', 'x'],
    b: ['b', 'who', 'x'],
    x: ['a', 'b', 'who', 'x'],
  });
});

test('where nobody is defined every log rests on all, for a rare name may be a slip', () => {
  expect(rest({ a: of('ann'), b: of('bo') })).toEqual({ a: ['a', 'b'], b: ['a', 'b'] });
});
