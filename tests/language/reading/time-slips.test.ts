import { TIME_SLIPS } from '@plimsoll/language/reading/time-slips';
import { expect, test } from 'vitest';
import { type ItemRow, testItemRows } from './item-rows.ts';
import { printRow } from './print-row.ts';

const ROWS: readonly ItemRow[] = [
  ['4x500m, 2:05/500m', 'Write 4x500m @ 2:05/500 m: a pace stands behind @ [syntax]', '4x500m @ 2:05/500 m'],
  [
    '4x500 m 2:05/500m, rest 2:00',
    'Write 4x500 m @ 2:05/500 m, rest 2:00: a pace stands behind @ [syntax]',
    '4x500 m @ 2:05/500 m, rest 2:00',
  ],
  ['2 km in 2:05 /500 m', 'Write 2 km @ 2:05/500 m: a pace stands behind @ [syntax]', '2 km @ 2:05/500 m'],
  ['5 km @ 5:06/km', 'Write 5 km @ 5:06/1 km: a pace stands behind @ [syntax]', '5 km @ 5:06/1 km'],
  ['5k @ 5:06 min/km', 'Write 5 km @ 5:06/1 km: a pace stands behind @ [syntax]', '5 km @ 5:06/1 km'],
  ['20:00 @ 5:06/km', 'Write 20:00 @ 5:06/1 km: a pace stands behind @ [syntax]', '20:00 @ 5:06/1 km'],
  [
    '5 km @ 5:06/km rpe 8',
    'Write 5 km @ 5:06/1 km rpe 8: a pace names its distance [syntax]',
    '5 km @ 5:06/1 km rpe 8',
  ],
  ["5 @ 60 kg, rest 2'", 'Write 2 min for minutes [syntax]', '5 @ 60 kg, rest 2 min'],
  [`5 @ 60 kg, rest 1'30"`, 'Write 1:30 for minutes and seconds [syntax]', '5 @ 60 kg, rest 1:30'],
  ['5 @ 60 kg, rest 90"', 'Write 90 s for seconds [syntax]', '5 @ 60 kg, rest 90 s'],
  ["5 @ 60 kg rest 1'30", 'Write 1:30 for minutes and seconds [syntax]', '5 @ 60 kg, rest 1:30'],
  [`400 m in 1'30"`, 'Write 1:30 for minutes and seconds [syntax]', '400 m in 1:30'],
  [
    '5 @ 60 kg, rest 2:00 min',
    'Write 2:00 without a unit: minutes and seconds stand on both sides of the colon [syntax]',
    '5 @ 60 kg, rest 2:00',
  ],
  [
    '3x1:30 min @ 5 kg',
    'Write 1:30 without a unit: minutes and seconds stand on both sides of the colon [syntax]',
    '3x1:30 @ 5 kg',
  ],
  [
    '5 @ 60 kg, rest: 2:00',
    'Write rest 2:00, without a colon behind the word [syntax]',
    '5 @ 60 kg, rest 2:00',
  ],
  ['5 @ 60 kg, 2:00 rest', 'Write rest 2:00: the word comes first [syntax]', '5 @ 60 kg, rest 2:00'],
  ["5 @ 60 kg, 1'30 rest", 'Write rest 1:30: the word comes first [syntax]', '5 @ 60 kg, rest 1:30'],
  ['5 @ 60 kg, 90" rest', 'Write rest 90 s: the word comes first [syntax]', '5 @ 60 kg, rest 90 s'],
  ['5, rest ~2 min', 'Write rest 2 min: a rest is not said to be near [syntax]', '5, rest 2 min'],
  ['500m/2:05', 'Write in before the time that a distance took [syntax]', '500m in 2:05'],
  ['5, r 2:00', 'Write rest 2:00: the word in full [syntax]', '5, rest 2:00'],
  ['5k in 25:30', 'Write 5 km for kilometres [syntax]', '5 km in 25:30'],
  ['30/30 s', 'Write 30 s/side: a unit stands before the side [side-slip]', '30 s/side'],
  [
    '3x30s/30s @ 5 kg',
    'Write 3x30 s/side @ 5 kg: a unit stands before the side [side-slip]',
    '3x30 s/side @ 5 kg',
  ],
  [
    '30/20 s',
    'Write 30 s left 20 s right: a unit stands before the side [side-slip]',
    '30 s left 20 s right',
  ],
];

const PLAN_ROWS: readonly ItemRow[] = [
  ['20 min, 2:05/500m', 'Write 20 min @ 2:05/500 m: a pace stands behind @ [syntax]', '20 min @ 2:05/500 m'],
  [
    '5 @ 60 kg, 2:00-3:00 rest',
    'Write rest 2:00-3:00: the word comes first [syntax]',
    '5 @ 60 kg, rest 2:00-3:00',
  ],
];

testItemRows(TIME_SLIPS, { session: ROWS, plan: PLAN_ROWS });

test.each<[title: string, written: string, fixed: string]>([
  ['the same on several items', `1'30", 1'20"`, '1:30, 1:20'],
  ['a pace for each', '5 km @ 5:06/km, 2 km @ 4:50/km', '5 km @ 5:06/1 km, 2 km @ 4:50/1 km'],
  ['a rest beside it', "5 @ 60 kg x 3, rest 2'", '3x5 @ 60 kg, rest 2 min'],
  ['a rest behind a pace', "4x500m, 2:05/500m, rest 2'", '4x500m @ 2:05/500 m, rest 2 min'],
  ['two units', '1:30min, 1:20 min', '1:30, 1:20'],
])('one fix mends it all: %s', (_title, written, fixed) => {
  const [, ...fixes] = printRow(`session: Row: ${written}`);
  expect(fixes.map((fix) => fix.replace(/^.*?: Row: /, ''))).toEqual([fixed]);
});

test.each([
  ['session: lasted 1:10 h', 'Write lasted 70 min: hours and minutes [unclear-time]', 'lasted 70 min'],
  [
    'session: lasted 1:10 min',
    'Is 1:10 hours and minutes, or minutes and seconds? Write lasted 70 min or lasted 0:01:10 [unclear-time]',
    'lasted 70 min',
    'lasted 0:01:10',
  ],
  [
    'session: lasted 72:30 min',
    'Write lasted 1:12:30: hours, minutes and seconds [unclear-time]',
    'lasted 1:12:30',
  ],
  [
    'session: lasted 50-55 min',
    'How long was it? Write one time, such as lasted 50 min or lasted 55 min [unclear-time]',
    'lasted 50 min',
    'lasted 55 min',
  ],
  [
    'session: rest 2:00 min',
    'Write rest 2:00 without a unit: minutes and seconds stand on both sides of the colon [syntax]',
    'rest 2:00',
  ],
  [
    'athlete: max Pull-up: 10 reps on 2026-11-17',
    'A max is the load of one rep: what else was tested stands in a session, behind test Pull-up: [syntax]',
  ],
  [
    'athlete: max Back Squat: 5 @ 100 kg on 2026-11-17',
    'A max is the load of one rep: what else was tested stands in a session, behind test Back Squat: [syntax]',
  ],
])('of a whole property: %s', (input, said, ...fixed) => {
  expect(printRow(input)).toEqual([
    `    2:3 ${said}`,
    ...fixed.map((line) => `      → Write ${line}: ${line}`),
  ]);
});

test.each([
  ['a pace', '500 m @ 2:05/500 m'],
  ['a time on each side', '1:30/side'],
  ['a rest', '5, rest 2:00'],
])('what is written as it should be is no slip: %s', (_name, line) => {
  expect(printRow(`session: Row: ${line}`)).toEqual([]);
});
