import { listMasses } from '@plimsoll/language/rewrites/list-masses';
import type { LineContext } from '@plimsoll/language/vocabulary/keywords';
import { expect, test } from 'vitest';

/** Each weight as `85 kg`, or `85 ?` without a unit of its own. */
const list = (context: LineContext, line: string): string[] =>
  listMasses(`  ${line}`, context).map(({ value, unit }) => `${value} ${unit?.unit ?? '?'}`);

test.each([
  ['session', 'Back Squat: 5 @ 40, 3x5 @ 85 kg rpe 8, 4', ['40 ?', '85 kg']],
  ['session', 'Curl: 10 @ 2x12 lbs drop 8 @ 2x8, 6', ['12 lb', '8 ?']],
  ['session', 'Split Squat: 8/side @ 24&16 kg', ['24 kg', '16 kg']],
  ['session', 'Row: 8 left 7 right @ 18 left 14 kg right', ['18 ?', '14 kg']],
  ['session', 'Pull-up: 5 @ bw+10 kg, 4 @ bw-5, 3 @ bw-pin 6', ['10 kg', '5 ?']],
  ['session', 'Bench Press: 5 @ 80 + 20 kg chain', ['80 ?', '20 kg']],
  ['session', 'Leg Extension: 12 @ pin 9 + 1.25 kg', ['1.25 kg']],
  ['session', 'Rower: 500 m @ 2:05/500 m, 5:00 @ 150 W, 5 @ 60 cm, 5:00 @ 9 km/h, 5 @ 22,5 kg', ['22.5 kg']],
  ['session', 'bodyweight 68.5', ['68.5 ?']],
  ['session', 'lasted 58 min', []],
  ['plan', 'Row: 5 @ 70-75%, 5 @ 20-24 kg, 3 @ -10 kg, 3 @ -10%, 5 @ rpe 8', ['20 kg', '24 kg', '10 kg']],
  [
    'plan',
    'Row: 8-12 @ 20, +2.5 kg each week to 40, then +2 lb from 8, +1 rep to 12',
    ['20 ?', '2.5 kg', '40 ?', '2 lb'],
  ],
  ['place', 'plates 2x20, 4x10 kg', ['20 ?', '10 kg']],
  ['place', 'dumbbells 4-32 by 2 kg pairs', ['4 ?', '32 ?', '2 kg']],
  ['place', 'stacks cable 5-60 by 2.5 kg', ['5 ?', '60 ?', '2.5 kg']],
  ['place', 'has bench 2', []],
  ['athlete', 'bodyweight 68.5 kg on 2026-10-01', ['68.5 kg']],
  ['athlete', 'max Back Squat: 105 on 2026-09-28', ['105 ?']],
  ['athlete', 'goal Pull-up: 8 @ bw+5 kg by 2027-06-01', ['5 kg']],
  ['athlete', 'retest Front Squat: 80, 81 kg on 2026-02-01', ['80 ?', '81 kg']],
  ['exercise', 'bodyweight 69%', []],
] as const)('%s: %s', (context, line, expected) => expect(list(context, line)).toEqual(expected));
