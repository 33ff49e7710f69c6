/** An invented practice, small enough to know by heart, in which cursors are tried. Today is 2026-11-24, a Tuesday. */
export const LAMP_ROOM = {
  'practice.plim': `place Lamp Room
  bars 20 kg
  plates 4x20, 2x10, 2x5, 2x2.5, 2x1.25 kg
  dumbbells 6-20 by 2 kg pairs
  kettlebells 8, 12, 16, 20 kg
  has bench, mat, pull-up bar, box

place Far Shed
  plates 2x45, 2x25, 2x10, 2x5, 2x2.5 lb
  bars 45 lb

exercise Lantern Walk
  pattern carry
  work carry
  needs kettlebell
  also Lamp Carry
  cue Keep the flame level

athlete Ottilie Marrow
  bodyweight 64 kg on 2026-10-01
  max Back Squat: 100 kg on 2026-10-01
  avoid vertical push until 2026-12-31, right shoulder

athlete Casimir Wold

plan Low Tide
  for Ottilie Marrow
  at Lamp Room
  starts 2026-11-02
  weeks 4
  deload week 4, sets 50%, load 90%
  days Mon, Thu
  day 1 Squat
    A straight, rest 3:00
      Back Squat: 4x5 @ 70% | 4x5 @ 75% | 5x3 @ 80%, tempo 2-1-X-0
      Pull-up: 5+
    B superset, 3 rounds, rest 1:30
      Goblet Squat: 8-12 @ 16 kg, then +4 kg from 8
      Push-up: 10, +1 rep each week to 14
  day 2 Row
    A straight, rest 2:00
      Chest-Supported Row: 3x8 @ 2x14 kg
`,
  'ottilie.plim': `session 2026-11-02 Ottilie Marrow at Lamp Room, Low Tide week 1 day 1
  warmup
    Cat-Cow: 8
  A straight, rest 3:00
    warmup Back Squat: 5 @ 40, 3 @ 60 kg
    Back Squat: 4x5 @ 70 kg rpe 7
    Pull-up: 4, 3 of 4, 3 @ bw+5 kg
  B superset, 3 rounds, rest 1:30
    Goblet Squat: 10 @ 16 kg
    Push-up: 10, 10, 9
  effort 7
  lasted 55 min

session 2026-11-05 Ottilie Marrow at Lamp Room, Low Tide week 1 day 2
  A straight, rest 2:00
    Chest-Supported Row: 3x8 @ 2x14 kg rpe 8
    Plank: 2x45 s
  B circuit, 3 rounds, rest 1:15
    Lantern Walk: 30 m @ 20 kg
    Push-up: 12
    time 2:10, 2:20, ?
  lasted 48 min

session 2026-11-12 Casimir Wold at Far Shed
  A straight
    Back Squat: 5 @ 95, 2x5 @ 135 lb, setting high bar
    Rower: 500 m @ 2:05/500 m hr 148
`,
} as const;
