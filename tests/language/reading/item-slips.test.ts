import { ITEM_SLIPS } from '@plimsoll/language/reading/item-slips';
import { TIME_SLIPS } from '@plimsoll/language/reading/time-slips';
import { WORD_SLIPS } from '@plimsoll/language/reading/word-slips';
import { expect, test } from 'vitest';
import { type ItemRow, testItemRows } from './item-rows.ts';
import { printRow } from './print-row.ts';

const ROWS: readonly ItemRow[] = [
  ['80kg 3x5', 'Write 3x5 @ 80kg: reps come before the load [reps-first]', '3x5 @ 80kg'],
  ['80 kg: 5, 5, 4', 'Write 5, 5, 4 @ 80 kg: reps come before the load [reps-first]', '5, 5, 4 @ 80 kg'],
  [
    '80 kg x 5 x 3',
    'Which of 5 and 3 are the sets? Write 3x5 @ 80 kg or 5x3 @ 80 kg [reps-first]',
    '3x5 @ 80 kg',
    '5x3 @ 80 kg',
  ],
  [
    '80x5x3',
    'Which of 5 and 3 are the sets? Write 3x5 @ 80 or 5x3 @ 80 [reps-first]',
    '3x5 @ 80',
    '5x3 @ 80',
  ],
  ['3x5x80kg', 'Write 3x5 @ 80kg: an @ stands before the load [syntax]', '3x5 @ 80kg'],
  ['5 @ 80 kg x 3', 'Write 3x5 @ 80 kg: the number of sets comes first [syntax]', '3x5 @ 80 kg'],
  [
    '3 sets of 5 reps @ 80 kg',
    'Write 3x5: sets come before reps, with an x between them [syntax]',
    '3x5 @ 80 kg',
  ],
  ['5 reps x 3 @ 80 kg', 'Write 3x5: sets come before reps, with an x between them [syntax]', '3x5 @ 80 kg'],
  ['3*5 @ 80 kg', 'Write 3x5: an x stands between sets and reps [syntax]', '3x5 @ 80 kg'],
  ['x5 @ 80 kg', 'Write 5, or the number of sets before the x [syntax]', '5 @ 80 kg'],
  ['3x5 80kg rpe 8', 'Write 3x5 @ 80kg: an @ stands before the load [syntax]', '3x5 @ 80kg rpe 8'],
  ['3x5 with 80 kg', 'Write 3x5 @ 80 kg: an @ stands before the load [syntax]', '3x5 @ 80 kg'],
  ['3x5 (80 kg)', 'Write 3x5 @ 80 kg: an @ stands before the load [syntax]', '3x5 @ 80 kg'],
  ['3x5 @ 80 kg (rpe 8)', 'Write rpe 8 without anything around it [syntax]', '3x5 @ 80 kg rpe 8'],
  [
    '3x5 @ 80 kg @ 2 RIR',
    'Write rir 2: the word comes first, and one @ stands before the load [load-or-rating]',
    '3x5 @ 80 kg rir 2',
  ],
  ['5 @ +10 kg', 'Write bw+10 kg for weight added to the body [syntax]', '5 @ bw+10 kg'],
  [
    '3x5 @ 80 kg @8',
    'Write rpe 8: one @ stands before the load, and a rating behind it has none [load-or-rating]',
    '3x5 @ 80 kg rpe 8',
  ],
  ['10 @ 20 kg each', 'Write 2x20 kg: two implements of 20 kg [syntax]', '10 @ 2x20 kg'],
  ['3x8 per side @ 20 kg', 'Write 3x8/side: that many on each side [side-slip]', '3x8/side @ 20 kg'],
  ['3x8 l/r @ 20 kg', 'Write 3x8/side: that many on each side [side-slip]', '3x8/side @ 20 kg'],
  ['3x30"', 'Write 3x30 s for seconds [syntax]', '3x30 s'],
  ["20'", 'Write 20 min for minutes [syntax]', '20 min'],
  [`1'30"`, 'Write 1:30 for minutes and seconds [syntax]', '1:30'],
  ['5k', 'Write 5 km for kilometres [syntax]', '5 km'],
  ['4x400 m 1:32', 'Write in before the time that a distance took [syntax]', '4x400 m in 1:32'],
  ['3x5 @ 80 kg, 2 min rest', 'Write rest 2 min: the word comes first [syntax]', '3x5 @ 80 kg, rest 2 min'],
  [
    '3x5 @ 80 kg 2 min rest',
    'Write rest 2 min behind a comma: the word comes first [syntax]',
    '3x5 @ 80 kg, rest 2 min',
  ],
  ['3x5 @ 80 kg rest 2 min', 'Put a comma before rest [syntax]', '3x5 @ 80 kg, rest 2 min'],
  [
    '5+5+5 @ 80 kg',
    'Are these sets, or the parts of one? Sets stand between commas, parts of one set within ( ) [sets-spelled-apart]',
    '5, 5, 5 @ 80 kg',
    '(5+5+5) @ 80 kg',
  ],
  [
    '3x8 12/14/16',
    'Are 12/14/16 reps that were done? Then write 12, 14, 16; a load stands behind its own set, such as 8 @ 20 kg [sets-spelled-apart]',
    '12, 14, 16',
  ],
  ['5/5/5 @ 80 kg', '5/5/5 is several sets: write 5, 5, 5 [sets-spelled-apart]', '5, 5, 5 @ 80 kg'],
  [
    '5 @ 80 kg; 5 @ 85 kg',
    'Write a comma between sets, not a semicolon [sets-spelled-apart]',
    '5 @ 80 kg, 5 @ 85 kg',
  ],
  [
    '5 80',
    'Write @ before a load, or a comma before the next set: 5 and 80 stand side by side [syntax]',
    '5 @ 80',
    '5, 80',
  ],
  ['5 5 4 @ 80 kg', '5 5 4 is several sets: write 5, 5, 4 [sets-spelled-apart]', '5, 5, 4 @ 80 kg'],
  ['5 @ bodyweight', 'Write bw for body weight [syntax]', '5 @ bw'],
  ['12 to failure @ 20 kg', 'Write rir 0 for a set to failure: no rep was left [syntax]', '12 rir 0 @ 20 kg'],
  ['failed @ 100 kg', 'Write 0 of 1 for a try that failed [syntax]', '0 of 1 @ 100 kg'],
  [
    'max @ 20 kg',
    'max says no number: write how many were done, or ?; in a plan, amrap [syntax]',
    '? @ 20 kg',
    'amrap @ 20 kg',
  ],
  ['5 @ 80 k', 'Which unit is that? Write kg or lb [syntax]', '5 @ 80 kg'],
  ['5 @ 8o kg', 'A letter stands in the number: write 80 [syntax]', '5 @ 80 kg'],
  [
    '3x5 @ 80 kg - felt heavy',
    '"felt heavy" is no part of a set: write it as a note on a line with > [unknown-item]',
    '3x5 @ 80 kg ⏎     > felt heavy',
  ],
  ['3x5 @ 60 kg rpe @8', 'Write 8 behind the word, without a sign before it [syntax]', '3x5 @ 60 kg rpe 8'],
  ['3x5 @ 60 kg rpe ~8', 'Write 8 behind the word, without a sign before it [syntax]', '3x5 @ 60 kg rpe 8'],
  [
    '3x5 @ 60 kg rpe 8/10',
    'A rating is a number alone, from 0 to 10: write 3x5 @ 60 kg rpe 8 [syntax]',
    '3x5 @ 60 kg rpe 8',
  ],
  ['3x5 @ 60 kg 2 rir', 'Write rir 2: the word comes first [syntax]', '3x5 @ 60 kg rir 2'],
  ['3x5 @ ~60 kg', 'Write 3x5 @ 60 kg: a load is not said to be near [syntax]', '3x5 @ 60 kg'],
  ['3x5 @ 60 kg.', 'Write 3x5 @ 60 kg without a point behind it [syntax]', '3x5 @ 60 kg'],
  ['5 @ 60 kg x 3 sets', 'Write 3x5 @ 60 kg: the number of sets comes first [syntax]', '3x5 @ 60 kg'],
  ['5 @ 60 kg (3 sets)', 'Write 3x5 @ 60 kg: the number of sets comes first [syntax]', '3x5 @ 60 kg'],
  ['45 s x 3', 'Write 3x45 s: the number of sets comes first [syntax]', '3x45 s'],
  [
    '3 sets to failure',
    'How many reps were they? Until somebody knows, write 3x?; in a plan, 3xamrap [syntax]',
    '3x? rir 0',
    '3xamrap',
  ],
  [
    '3 sets 5 reps 60 kg',
    'Write 3x5 @ 60 kg: sets come before reps, and an @ before the load [syntax]',
    '3x5 @ 60 kg',
  ],
  ['60kgx5', 'Write 5 @ 60 kg: reps come before the load [reps-first]', '5 @ 60 kg'],
  ['3x10 bw', 'Write 3x10 @ bw: an @ stands before the load [syntax]', '3x10 @ bw'],
  ['3x5 +10 kg', 'Write 3x5 @ bw+10 kg for weight added to the body [syntax]', '3x5 @ bw+10 kg'],
  ['3x8 e/l @ 20 kg', 'Write 3x8/side: that many on each side [side-slip]', '3x8/side @ 20 kg'],
  ['3x8 @ 20 kg e/s', 'Write 3x8/side: the side stands behind the reps [side-slip]', '3x8/side @ 20 kg'],
  ['8L 8R @ 20 kg', 'Write 8 left 8 right for the sides apart [side-slip]', '8 left 8 right @ 20 kg'],
  [
    '8+7 @ 20 kg',
    'Are these the sides, or the parts of one set? Write 8 left 7 right or (8+7) [side-slip]',
    '8 left 7 right @ 20 kg',
    '(8+7) @ 20 kg',
  ],
  ['3x8 @ 20+20 kg', 'Write 20&20 kg for one in each hand [syntax]', '3x8 @ 20&20 kg'],
  ['3x5 @ empty bar', 'Write what the empty bar weighs, such as 20 kg [missing-load]'],
  [
    '5 @ 60 kg “felt heavy”',
    '"felt heavy" is no part of a set: write it as a note on a line with > [unknown-item]',
    '5 @ 60 kg ⏎     > felt heavy',
  ],
  ['5 @ 62½ kg', 'Write 5 @ 62.5: a half is .5 [syntax]', '5 @ 62.5 kg'],
  ['5 @ 62 1/2 kg', 'Write 5 @ 62.5: a half is .5 [syntax]', '5 @ 62.5 kg'],
  ['5х5 @ 60 kg', 'Write 5x5 with the letter x of this alphabet [syntax]', '5x5 @ 60 kg'],
  ['3x5 60', 'Write 3x5 @ 60: an @ stands before the load [syntax]', '3x5 @ 60'],
  ['5 km 25 min', 'Write in before the time that a distance took [syntax]', '5 km in 25 min'],
  ['done', 'Write ? for a set that was done and not noted [syntax]', '?'],
  ['-', 'Write skipped for sets that were planned and not done [syntax]', 'skipped'],
  [
    '3x5 @ 60 kg, rpe 8',
    'Write rpe 8 behind its set, without a comma before it [syntax]',
    '3x5 @ 60 kg rpe 8',
  ],
  ['5 x 60 kg', 'Write 5 @ 60 kg: an @ stands before the load [syntax]', '5 @ 60 kg'],
  ['5 -20 kg rpe 8', 'Write 5 @ bw-20 kg for weight taken off the body [syntax]', '5 @ bw-20 kg rpe 8'],
  ['12 s; 10 s; 8 s', 'Write a comma between sets, not a semicolon [sets-spelled-apart]', '12 s, 10 s, 8 s'],
  ['3x40m @ 20kg each', 'Write 2x20kg: two implements of 20kg [syntax]', '3x40m @ 2x20kg'],
  ['5 @ 60 kg setting pins 3', 'Put a comma before setting [syntax]', '5 @ 60 kg, setting pins 3'],
  [
    '3x5 @ 60 kg per side',
    'Is it a side of the body, or of the bar? Write 3x5/side @ 60 kg, or the whole weight: with a bar of its usual weight, 3x5 @ 140 kg [side-slip]',
    '3x5/side @ 60 kg',
    '3x5 @ 140 kg',
  ],
  [
    '5 @ 135 lb/side rpe 8',
    'Is it a side of the body, or of the bar? Write 5/side @ 135 lb rpe 8, or the whole weight: with a bar of its usual weight, 5 @ 315 lb rpe 8 [side-slip]',
    '5/side @ 135 lb rpe 8',
    '5 @ 315 lb rpe 8',
  ],
];

/** The same in a plan. */
const PLAN_ROWS: readonly ItemRow[] = [
  [
    '3x8 @ 20 kg, +2.5kg/week',
    'Write each week: how often the step is taken [syntax]',
    '3x8 @ 20 kg, +2.5kg each week',
  ],
  [
    '3x8 @ 20 kg, +2.5 kg per session to 30 kg',
    'Write each session: how often the step is taken [syntax]',
    '3x8 @ 20 kg, +2.5 kg each session to 30 kg',
  ],
  [
    '3x8 @ 20 kg, add 2.5 kg each week',
    'Write +2.5 kg each week for a step [syntax]',
    '3x8 @ 20 kg, +2.5 kg each week',
  ],
  [
    '3x8 @ 20 kg +2.5 kg each week',
    'Put a comma before the step +2.5 kg each week [syntax]',
    '3x8 @ 20 kg, +2.5 kg each week',
  ],
  ['3x5 @ 70% 1RM', 'A percentage is of the max without saying so: write 3x5 @ 70% [syntax]', '3x5 @ 70%'],
  [
    '3x8 @ 20 kg, +2.5 kg weekly',
    'Write each week: how often the step is taken [syntax]',
    '3x8 @ 20 kg, +2.5 kg each week',
  ],
  [
    '3x5 @ 70% TM',
    'A percentage is of the max, or of the training max where the plan has one: write 3x5 @ 70% [syntax]',
    '3x5 @ 70%',
  ],
];

const ELSEWHERE = new Set([...TIME_SLIPS, ...WORD_SLIPS]);

testItemRows(
  ITEM_SLIPS.filter((slip) => !ELSEWHERE.has(slip)),
  { session: ROWS, plan: PLAN_ROWS },
);

test.each([
  [
    'warmup 5 @ 40 kg, 5 @ 60 kg',
    'Write warmup before the name, for sets that have a line of their own: warmup Row: 5 @ 40 kg [syntax]',
    'warmup Row: 5 @ 40 kg ⏎   Row: 5 @ 60 kg',
  ],
  [
    'WU: 5 @ 40 kg',
    'Write warmup before the name, for sets that have a line of their own: warmup Row: 5 @ 40 kg [syntax]',
    'warmup Row: 5 @ 40 kg',
  ],
])('a warm-up among the sets: %s', (written, said, fixed) => {
  expect(printRow(`session: Row: ${written}`)).toEqual([
    `    2:8 ${said}`,
    `      → Write warmup Row: 5 @ 40 kg: ${fixed}`,
  ]);
});

test.each([
  ['A1: Push-up 3x8', 'Write A1 Push-up', 'A1 Push-up: 3x8'],
  ['A1: Push-up: 10, 9', 'Write A1 Push-up', 'A1 Push-up: 10, 9'],
  ['b2: Row - 8/side @ 12 kg', 'Write b2 Row', 'b2 Row: 8/side @ 12 kg'],
])('a colon behind the letter: %s', (written, said, fixed) => {
  expect(printRow(`session: ${written}`)).toEqual([
    expect.stringContaining(said),
    expect.stringContaining(fixed),
  ]);
});

test.each([
  ['a word that means something behind a set', 'Row: 8 left', 'Expected the right side'],
  ['words that are no note where more follows', 'Row: 5 @ 80 kg felt heavy, 5 @ 85 kg', 'no part of a set'],
  ['a broken line of another kind', 'effort 7 8', '8 does not fit after 7'],
])('not %s', (_name, line, said) => {
  const rows = printRow(`session: ${line}`);
  expect(rows).toEqual([expect.stringContaining(said)]);
});

test('a slip leaves the other sets of its line as they are', () => {
  expect(printRow('session: Row: 80kg 3x5, 5 @ 90')).toEqual([
    '    2:8 Write 3x5 @ 80kg: reps come before the load [reps-first]',
    '      → Write 3x5 @ 80kg: Row: 3x5 @ 80kg, 5 @ 90',
  ]);
});
