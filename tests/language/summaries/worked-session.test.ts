import { expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { describeLenses } from '../../../language/src/summaries/file-lenses.ts';
import type { LensOptions } from '../../../language/src/summaries/lens.ts';

/** One session with something of everything, and the same athlete a week before. Every sum is derived by hand below. */
const PRACTICE = `
athlete Sunniva Kettleby
  bodyweight 68.5 kg on 2026-10-01
`;
const WEEK_BEFORE = `
session 2026-11-10 Sunniva Kettleby at Gull Attic
  A straight, rest 3:00
    Back Squat: 1 @ 90 kg rpe 8, 3x4 @ 80 kg
  B circuit, 4 rounds, rest 1:15
    Push-up: 13, 12, 11, 10
    One-Arm Row: 10/side, 10/side, 9/side, 8/side @ 20 kg
    Suitcase Carry: 30 m/side @ 24 kg
    time 3:00, 3:05, 3:10, 3:20
  lasted 60 min
`;
const SESSION = `
session 2026-11-17 Sunniva Kettleby at Gull Attic
  warmup
    Rower: 5:00 hr 118
    Couch Stretch: 60 s/side
  A straight, rest 3:00
    warmup Back Squat: 5 @ 40, 5 @ 60 kg
    Back Squat: 1 @ 92.5 kg rpe 8, 3x4 @ 82.5 kg
  B circuit, 4 rounds, rest 1:15
    One-Arm Row: 10/side, 10/side, 9/side, 8/side @ 22 kg
    Push-up: 14, 13, 11, 11
    Suitcase Carry: 30 m/side @ 24 kg
    time 2:55, 3:02, 3:10, ?
  C straight
    Box Squat: 5x2 @ 72.5 kg, setting box 40 cm
    Dumbbell Floor Press: 12 @ 2x18 kg, 10 @ 2x18 kg drop 8 @ 2x14 kg
    Pull-up: 6, 5, 4 of 5 @ bw+5 kg
  effort 7
  lasted 58 min
  > The back gave out before the grip, late on.
`;

const OPTIONS: LensOptions = { today: '2026-11-17', formula: 'epley', unit: 'kg', complete: true };

function readLenses(text: string, options = OPTIONS): string[] {
  const practice = createPractice();
  practice.setFile('practice.plim', PRACTICE);
  practice.setFile('log.plim', text);
  const works = new SessionWorks(practice);
  return describeLenses(works, 'log.plim', options).map(({ line, text }) => `${line}: ${text}`);
}

test('the lenses of a session', () => {
  expect(readLenses(SESSION)).toMatchInlineSnapshot(`
    [
      "1: 58 min · 26 working sets · 7 825 kg incl. body",
      "5: top set 1 @ 92.5 kg rpe 8 · 4 working sets · 1 083 kg",
      "7: e1RM 102 kg (98 to 105 by formula) from set 1",
      "8: round 4 not timed · 3 timed rounds 9:07 · 337 kg/min incl. body",
      "13: 10 working sets · 2 798 kg incl. body",
      "14: e1RM at least 77 kg (75 to 81 by formula) from set 1",
      "15: e1RM at least 25.2 kg a hand (23.1 to 26 by formula), rough, over 10 reps from set 1",
      "16: e1RM bw+14.4 kg (11.4 to 16.6 by formula) from set 3",
    ]
  `);
});
test('the lenses with a week before', () => {
  expect(readLenses(WEEK_BEFORE + SESSION)).toMatchInlineSnapshot(`
    [
      "1: 60 min · 16 working sets · 4 704 kg incl. body",
      "2: top set 1 @ 90 kg rpe 8 · 4 working sets · 1 050 kg",
      "3: e1RM 99 kg (95 to 103 by formula) from set 1",
      "4: 4 rounds 12:35 · 290 kg/min incl. body",
      "11: 58 min · 26 working sets · 7 825 kg incl. body · week 47 so far 66 % over week 46",
      "15: top set 1 @ 92.5 kg rpe 8 · 4 working sets · 1 083 kg",
      "17: e1RM 102 kg (98 to 105 by formula) from set 1 · +3 since 10 Nov · record",
      "18: round 4 not timed · 3 timed rounds 9:07 · 337 kg/min incl. body, 16 % over 10 Nov",
      "23: 10 working sets · 2 798 kg incl. body",
      "24: e1RM at least 77 kg (75 to 81 by formula) from set 1",
      "25: e1RM at least 25.2 kg a hand (23.1 to 26 by formula), rough, over 10 reps from set 1",
      "26: e1RM bw+14.4 kg (11.4 to 16.6 by formula) from set 3",
    ]
  `);
});

test('the week stands over the last session done, where the last entry was missed', () => {
  const missed = '\nsession 2026-11-18 Sunniva Kettleby\n  missed, a cold\n';
  const lenses = readLenses(WEEK_BEFORE + SESSION + missed, { ...OPTIONS, today: '2026-11-30' });
  expect(lenses.filter((lens) => /over week|missed/.test(lens))).toEqual([
    '11: 58 min · 26 working sets · 7 825 kg incl. body · week 47 (missed) 66 % over week 46',
    '31: missed: a cold',
  ]);
});
