import { formatContent } from '@plimsoll/language/formatting/format-line';
import type { LineContext } from '@plimsoll/language/vocabulary/keywords';
import { describe, expect, test } from 'vitest';

/** Line by line as `before → after`; a line without an arrow stays. */
function check(context: LineContext, table: string): void {
  for (const row of table.trim().split('\n')) {
    const [before, after = before] = row.trim().split(' → ');
    expect(formatContent(`  ${before}`, context), before).toBe(after);
  }
}

describe('the sets of a line', () => {
  test('get one space between words and none within a set', () =>
    check(
      'session',
      `
      Back Squat:5@85kg → Back Squat: 5 @ 85 kg
      Back Squat :  3 x 5   @  85   kg   rpe8 → Back Squat: 3x5 @ 85 kg rpe 8
      Back Squat: 5 , 5,4@85 kg → Back Squat: 5, 5, 4 @ 85 kg
      Back Squat: 3×5 @ 85 kg → Back Squat: 3x5 @ 85 kg
      Back Squat: 3X5 @ 85 KG RPE 8 → Back Squat: 3x5 @ 85 kg rpe 8
      Split Squat: 8 / side @ 24 & 16 kg → Split Squat: 8/side @ 24&16 kg
      Split Squat: 8/side @ 2 x 18kg → Split Squat: 8/side @ 2x18 kg
      Pull-up: 4 of 5 @ BW + 5 kg → Pull-up: 4 of 5 @ bw+5 kg
      Pull-up: 6 @ bw – 20kg → Pull-up: 6 @ bw-20 kg
      Bench Press: 5 @ 80kg+20kg chain → Bench Press: 5 @ 80 kg + 20 kg chain
      Leg Extension: 12 @ pin 9+1.25 kg → Leg Extension: 12 @ pin 9 + 1.25 kg
      Band Row: 15 @ Red band
      Row: 8 left 7 RIGHT @ 18kg left 14kg right → Row: 8 left 7 right @ 18 kg left 14 kg right
      Deadlift: ( 3+2 + 2 rest 15s ) @ 90 kg → Deadlift: (3+2+2 rest 15 s) @ 90 kg
      Curl: 10@2x12 kg   drop 8@2x8kg → Curl: 10 @ 2x12 kg drop 8 @ 2x8 kg
      Run: 4x400m in 1:40 → Run: 4x400 m in 1:40
      Rower: 500m@2:05 / 500m → Rower: 500 m @ 2:05/500 m
      Air Bike: 10:00 @ 150w → Air Bike: 10:00 @ 150 W
      Treadmill Run: 20:00 @ 9km/h → Treadmill Run: 20:00 @ 9 km/h
      Front Squat: 3 @ 60 kg v0.52m / s → Front Squat: 3 @ 60 kg v 0.52 m/s
      Row: 8 | 10,9|? → Row: 8 | 10, 9 | ?
      a1.  Push-up: 12 → A1 Push-up: 12
      WARMUP Front Squat: 5 @ 20 kg → warmup Front Squat: 5 @ 20 kg
      TEST   Front Squat: 1 @ 80 kg → test Front Squat: 1 @ 80 kg
      `,
    ));

  test('keep names, settings and reasons as they are', () =>
    check(
      'session',
      `
      90/90  Hip Lift:8 → 90/90  Hip Lift: 8
      Squat – Pause: 5 → Squat – Pause: 5
      Box Squat: 5@60kg,Setting  box  40cm → Box Squat: 5 @ 60 kg, setting box  40cm
      Box Squat: 5 @ 60 kg,PAIN 2  left  Knee → Box Squat: 5 @ 60 kg, pain 2 left  Knee
      Box Squat: 5 @ 60 kg,instead  of Back  Squat → Box Squat: 5 @ 60 kg, instead of Back  Squat
      Box Squat: 5 @ 60 kg, TEMPO 3–1–x–0 → Box Squat: 5 @ 60 kg, tempo 3-1-X-0
      missed,Ferry did  not SAIL → missed, Ferry did  not SAIL
      `,
    ));

  test('of a plan: ranges touch, steps have their sign', () =>
    check(
      'plan',
      `
      Row: 8 – 12 @ 2x18kg,then  + 2kg from 8 → Row: 8-12 @ 2x18 kg, then +2 kg from 8
      Row: 3x5 @ 70 - 75 % → Row: 3x5 @ 70-75%
      Row: 3x5 @ 70% of  Back  Squat → Row: 3x5 @ 70% of Back  Squat
      Row: 2 @ rpe 7–8, 3x4 @ −10 % → Row: 2 @ rpe 7-8, 3x4 @ -10%
      Row: 5 + @ 75 % → Row: 5+ @ 75%
      Row: 5 + , 5 +/side → Row: 5+, 5+/side
      Row: 3x5 @ 30 kg,+ 1.25kg each week,after 3 misses - 10% → Row: 3x5 @ 30 kg, +1.25 kg each week, after 3 misses -10%
      Row: 10, rest 2:00 – 3:00 → Row: 10, rest 2:00-3:00
      Row: 10, rest - 10s each round → Row: 10, rest -10 s each round
      Week 5   TEST Row: 1@100% → week 5 test Row: 1 @ 100%
      Day 2:Pull  and press → day 2 Pull  and press
      DAYS mon,Wed → days mon, Wed
      deload: week 6,sets 50 %,Load 90% → deload week 6, sets 50%, load 90%
      training  MAX 90 % → training max 90%
      `,
    ));
});

describe('other lines', () => {
  test('of a session', () =>
    check(
      'session',
      `
      Effort: 7 → effort 7
      lasted   58min → lasted 58 min
      effort 6|7 → effort 6 | 7
      time:2:55,3:02 ,? → time 2:55, 3:02, ?
      done 4 rounds+12cal + 5 → done 4 rounds + 12 cal + 5
      Rest 1:00–1:30 → rest 1:00-1:30
      b Circuit:3 Rounds × 2 passes,rest 1:15 → B circuit 3 rounds x 2 passes, rest 1:15
      intervals 6x500m,rest 1:30 → intervals 6 x 500 m, rest 1:30
      warm-up → warm-up
      >Left heel  lifts. → > Left heel  lifts.
      >   Left heel  lifts.
      `,
    ));

  test('of definitions', () => {
    check('exercise', 'Muscles: glutes,Lower  Back 1 / 2 → muscles glutes, Lower  Back 1/2');
    check('exercise', 'bodyweight 69 %,kitchen  Scales → bodyweight 69%, kitchen  Scales');
    check('exercise', 'CUE:  In this order:elbows , knees #2 # 3 → cue In this order:elbows , knees #2 # 3');
    check('place', 'plates 2 × 20,4x10kg → plates 2x20, 4x10 kg');
    check('place', 'Dumbbells 4 – 32 by 2kg PAIRS → dumbbells 4-32 by 2 kg pairs');
    check('place', 'stacks  Cable  5–60 by 2.5kg → stacks Cable 5-60 by 2.5 kg');
    check('athlete', 'max Back Squat:105kg on 2026-09-28 → max Back Squat: 105 kg on 2026-09-28');
    check('athlete', 'max Pull-up: bw + 20kg → max Pull-up: bw+20 kg');
    check('athlete', 'max Bench Press: 80 kg+20 kg chain → max Bench Press: 80 kg + 20 kg chain');
    check(
      'athlete',
      'AVOID Horizontal push UNTIL 2026-12-15,sore  Wrist → avoid Horizontal push until 2026-12-15, sore  Wrist',
    );
  });

  test.each([
    ['units:  KG', 'units kg'],
    ['Exercise:  Marsh  Pull', 'exercise Marsh  Pull'],
    ['\ufeffPLAN  Winter', 'plan Winter'],
    [
      'session 2026-11-17T07:10  Nell|Tibor  AT Herne Loft,Wicker Base WEEK 2  day 1',
      'session 2026-11-17 07:10 Nell | Tibor at Herne Loft, Wicker Base week 2 day 1',
    ],
  ])('a header: %s', (before, after) => expect(formatContent(before, 'unknown')).toBe(after));

  test('keep a comment, two spaces behind', () =>
    check(
      'session',
      `
      Dip:5# → Dip:5#
      Dip:5 #  as  said → Dip: 5  #  as  said
      Dip: 5              # ignore unknown-movement → Dip: 5  # ignore unknown-movement
      # Only  a COMMENT
      `,
    ));

  test('that say nothing, or nothing certain, stay', () =>
    check(
      'session',
      `
      felt   heavy  today
      Dip: 5 ;  6
      Dip: 5 - 3 - 1
      Dip: 22 . 5
      `,
    ));
});
