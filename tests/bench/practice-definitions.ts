import { BARN, type Lifter, LOFT } from './practice-people.ts';
import { PLAN, PLANNED_DAYS } from './practice-sessions.ts';

/** The movement whose definition the benchmark edits: it is used in every log. */
export const EDITED_MOVEMENT = 'Bell-Rope Row';

export const MOVEMENTS = `# Movements of this practice.

exercise ${EDITED_MOVEMENT}
  pattern horizontal pull
  position standing
  muscles lats, upper back, biceps 1/2
  bodyweight 60%, bathroom scales
  needs rope
  also Rope Row
  setup Feet on the second flagstone
  cue Chest to the knot, elbows close
  caution Let go of nothing: step forward first

exercise Belfry Wall Slide
  pattern mobility
  work mobility
  position standing
  setup Forearms on the wall, elbows at shoulder height
  cue Ribs down, then slide
  caution Only as high as it stays free of pain

exercise Millstone Carry
  pattern carry
  work carry
  position standing
  trunk resists side bend
  muscles obliques, forearms 1/2, upper traps 1/2
  needs kettlebell
  easier Farmer Carry
  cue Walk as if somebody slept below
`;

const HAS =
  'rack, bench, mat, wall, box, pull-up bar, dip bars, rower, band, rope, jump rope, cable, lat pulldown machine';

export const PLACES = `# Where the work is done.

place ${LOFT}
  bars 20 kg, 10 kg
  plates 10x20, 2x15, 4x10, 4x5, 4x2.5, 4x1.25 kg
  dumbbells 4-50 by 2 kg pairs
  kettlebells 8, 12, 16, 20, 24, 28, 32 kg
  stacks cable 5-80 by 2.5 kg
  has ${HAS}
  > No dropping of bars while the bells are rung.

place ${BARN}
  bars 45 lb, 35 lb
  plates 10x45, 2x35, 2x25, 4x10, 4x5, 4x2.5, 2x1.25 lb
  dumbbells 5-100 by 5 lb pairs
  kettlebells 8, 12, 16, 20, 24, 28, 32 kg
  stacks cable 10-160 by 5 lb
  has ${HAS}
`;

/** One plan for everybody; sessions follow it now and then. */
export function writePlans(lifters: readonly Lifter[]): string {
  const days = PLANNED_DAYS.map(
    ([main, second, third], index) => `  day ${index + 1} ${main}
    A straight, rest 2:30
      ${main}: 3x5 @ 70% | 3x5 @ 72.5% | 4x4 @ 77.5% | 3x3 @ 82.5%
    B superset, 3 rounds, rest 1:30
      ${second}: 8-12, then +1 rep from 8
      ${third}: 10, +1 rep each week to 15
`,
  );
  return `plan ${PLAN}
  for ${lifters[0]!.name}
  at ${lifters[0]!.place}
  starts 2026-09-07
  weeks 4
  deload week 4, sets 60%, load 90%
  days Mon, Wed, Fri
${days.join('')}`;
}

export function writeAthletes(lifters: readonly Lifter[]): string {
  return lifters.map(writeAthlete).join('\n');
}

function writeAthlete({ name, born, unit, body, squat, seed }: Lifter): string {
  const round = (share: number) => Math.round((squat * share) / 5) * 5;
  return `athlete ${name}
  born ${born}
  sex ${seed % 2 === 0 ? 'female' : 'male'}
  units ${unit}
  bodyweight ${body} ${unit} on 2012-01-08
  bodyweight ${body + 1.5} ${unit} on 2024-06-02
  max Back Squat: ${round(1.2)} ${unit} on 2012-01-09
  max Deadlift: ${round(1.5)} ${unit} on 2012-01-10
  max Bench Press: ${round(0.85)} ${unit} on 2012-01-11
  max Overhead Press: ${round(0.75)} ${unit} on 2012-01-12
  goal Pull-up: 8 @ bw by 2027-06-01
  avoid Burpee until 2027-03-01, the floor below is let
  screened 2026-${String(1 + (seed % 9)).padStart(2, '0')}-11, village surgery
`;
}
