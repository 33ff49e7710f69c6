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
function listKnownAfter(change: (text: string) => string, options = OPTIONS): number[] {
  const practice = createPractice();
  const works = new SessionWorks(practice);
  practice.setFile('log.plim', TEXT);
  for (const place of listLensPlaces(works, 'log.plim', OPTIONS))
    describeLens(works, 'log.plim', place, OPTIONS);
  practice.setFile('log.plim', change(TEXT));
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
