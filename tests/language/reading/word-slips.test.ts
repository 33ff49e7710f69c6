import { WORD_SLIPS } from '@plimsoll/language/reading/word-slips';
import { expect, test } from 'vitest';
import { type ItemRow, testItemRows } from './item-rows.ts';
import { printRow } from './print-row.ts';

const ROWS: readonly ItemRow[] = [
  ['３x５ @ ６０ kg', 'Write 3x5 @ 60 kg in plain characters [syntax]', '3x5 @ 60 kg'],
  ['５， ４ ＠ 60 kg', 'Write 5, 4 @ 60 kg in plain characters [syntax]', '5, 4 @ 60 kg'],
  [
    '10 @ 2x12 kg, drop 8 @ 2x8 kg, drop 6 @ 2x6 kg',
    'Write 10 @ 2x12 kg drop 8 @ 2x8 kg drop 6 @ 2x6 kg: a drop stands behind its set without a comma [syntax]',
    '10 @ 2x12 kg drop 8 @ 2x8 kg drop 6 @ 2x6 kg',
  ],
  [
    '10 @ 2x12 kg dropset 8 @ 2x8 kg',
    'Write 10 @ 2x12 kg drop 8 @ 2x8 kg: a drop stands behind its set without a comma [syntax]',
    '10 @ 2x12 kg drop 8 @ 2x8 kg',
  ],
  [
    '5 @ 60 kg; 5 @ 65 kg; 5 @ 70 kg',
    'Write a comma between sets, not a semicolon [sets-spelled-apart]',
    '5 @ 60 kg, 5 @ 65 kg, 5 @ 70 kg',
  ],
  ['5, ~5', 'Write 5: a number is not said to be near [syntax]', '5, 5'],
  ['~5 @ 60 kg', 'Write 5 @ 60 kg: a number is not said to be near [syntax]', '5 @ 60 kg'],
  ['l0', 'A letter stands in the number: write 10 [syntax]', '10'],
  ['3x1O @ 60 kg', 'A letter stands in the number: write 3x10 @ 60 kg [syntax]', '3x10 @ 60 kg'],
  ['five', 'Write 5: numbers in digits [syntax]', '5'],
  ['5, twelve reps @ 20 kg', 'Write 12 @ 20 kg: numbers in digits [syntax]', '5, 12 @ 20 kg'],
  [
    '5, 5, x @ 60 kg',
    'Was it left out, or tried and failed? Write skipped @ 60 kg or 0 of 1 @ 60 kg, or ? if nobody noted it [syntax]',
    '5, 5, skipped @ 60 kg',
    '5, 5, 0 of 1 @ 60 kg',
    '5, 5, ? @ 60 kg',
  ],
  ['5、4', 'Write 5, 4 in plain characters [syntax]', '5, 4'],
  [
    '5, pain left knee 3',
    'Write pain 3 left knee: the number comes before the place [syntax]',
    '5, pain 3 left knee',
  ],
  ['5, 3/10 pain', 'Write pain 3: the word comes first, then the number [syntax]', '5, pain 3'],
  ['same', 'Write out what was done: each line is read by itself [syntax]'],
  ['5, same as last time', 'Write out what was done: each line is read by itself [syntax]'],
  ['3x8 to 12', '8 to 12 is for plans: write how many were done [for-plans]', '3x8', '3x12'],
  [
    '5 @ 60 kg, left knee pain 3',
    'Write pain 3 left knee: the word comes first, then the number [syntax]',
    '5 @ 60 kg, pain 3 left knee',
  ],
  [
    '5 @ 60 kg, pain: 3/10 left knee',
    'Write pain 3 left knee, without a colon behind the word [syntax]',
    '5 @ 60 kg, pain 3 left knee',
  ],
  [
    '5 @ 60 kg, 3-1-X-0 tempo',
    'Write tempo 3-1-X-0: the word comes first [syntax]',
    '5 @ 60 kg, tempo 3-1-X-0',
  ],
  [
    '5 @ 60 kg, tempo: 3-1-1',
    'Write tempo 3-1-1, without a colon behind the word [syntax]',
    '5 @ 60 kg, tempo 3-1-1',
  ],
  [
    '5 @ 60/65/70 kg',
    'A load stands behind its own set: write 5 @ 60 kg, 5 @ 65 kg, 5 @ 70 kg [sets-spelled-apart]',
    '5 @ 60 kg, 5 @ 65 kg, 5 @ 70 kg',
  ],
  [
    '8/side @ 20-22-24 kg rpe 8',
    'A load stands behind its own set: write 8/side @ 20 kg, 8/side @ 22 kg, 8/side @ 24 kg rpe 8 [sets-spelled-apart]',
    '8/side @ 20 kg, 8/side @ 22 kg, 8/side @ 24 kg rpe 8',
  ],
  [
    '5 @ 60/65 kg',
    'Are these two sets, or the two hands? Write 5 @ 60 kg, 5 @ 65 kg or 5 @ 60&65 kg [sets-spelled-apart]',
    '5 @ 60 kg, 5 @ 65 kg',
    '5 @ 60&65 kg',
  ],
];

const PLAN_ROWS: readonly ItemRow[] = [
  [
    '5 @ 65/70/75%',
    'Are these sets, or the weeks? Write 5 @ 65%, 5 @ 70%, 5 @ 75% or 5 @ 65% | 5 @ 70% | 5 @ 75% [sets-spelled-apart]',
    '5 @ 65%, 5 @ 70%, 5 @ 75%',
    '5 @ 65% | 5 @ 70% | 5 @ 75%',
  ],
  ['3x8 to 12 @ 20 kg', 'Write 3x8-12 for a range [syntax]', '3x8-12 @ 20 kg'],
  [
    '5 @ 60 kg, 2.5 kg each week',
    'Write +2.5 kg each week for a step [syntax]',
    '5 @ 60 kg, +2.5 kg each week',
  ],
  [
    '10, 1 rep per session to 15',
    'Write +1 rep each session to 15 for a step [syntax]',
    '10, +1 rep each session to 15',
  ],
];

testItemRows(WORD_SLIPS, { session: ROWS, plan: PLAN_ROWS });

test.each([
  ['a side that is called by its letter', '8l 8r'],
  ['words with a number behind them', '5, felt 8 of 10'],
])('no number with a letter in it, and no setting: %s', (_name, line) => {
  const rows = printRow(`session: Row: ${line}`).join('\n');
  expect(rows).not.toContain('A letter stands in the number');
  expect(rows).not.toContain('setting felt');
});

test('a drop and its set that are written as they should be are no slip', () => {
  expect(printRow('session: Row: 10 @ 20 kg drop 8 @ 16 kg, 5 @ 20 kg')).toEqual([]);
});
