import type { Lifter } from './practice-people.ts';
import type { Random } from './random.ts';

export const PLAN = 'Curfew Bell';
/** Main lift, then the two of the superset. */
export const PLANNED_DAYS = [
  ['Back Squat', 'Push-up', 'Dead Bug'],
  ['Bench Press', 'Bell-Rope Row', 'Glute Bridge'],
  ['Deadlift', 'Chin-up', 'Push-up'],
] as const;

const MAIN = [
  ['Back Squat', 1],
  ['Bench Press', 0.7],
  ['Deadlift', 1.25],
  ['Front Squat', 0.8],
  ['Overhead Press', 0.6],
  ['Romanian Deadlift', 0.8],
] as const;
/** Loads over six weeks: no step so large that it would be taken for a slip of the pen. */
const WAVE = [0.97, 0.98, 0.99, 1, 1.01, 0.97];
/** Put together into notes, hardly two alike: what people write freely does not repeat. */
const NOTES = [
  [
    'Grip',
    'Breathing',
    'The left knee',
    'Depth',
    'The bar path',
    'Balance',
    'The upper back',
    'Tempo',
    'The last row',
  ],
  [
    'went first',
    'was better than last week',
    'held up',
    'needs another look',
    'was even',
    'felt heavy',
    'came late',
  ],
  ['in round', 'from set', 'until set', 'only in rep', 'on the side of plate', 'after minute', 'as on day'],
] as const;

/** What a block is written from. */
interface Day {
  readonly lifter: Lifter;
  /** Weeks since the beginning of the world, so that loads follow a wave. */
  readonly week: number;
  readonly index: number;
  readonly random: Random;
}

type Block = (day: Day, letter: string) => string[];

/** The lines of one session: no two alike, no slip in them, with as many kinds of lines as coaches write. */
export function writeSession(date: string, day: Day): string {
  const { lifter, random, index, week } = day;
  const clock = random.chance(0.2) ? ` 0${random.integer(6, 9)}:${random.pick(['00', '10', '30'])}` : '';
  const header = `session ${date}${clock} ${lifter.name} at ${lifter.place}`;
  if (random.chance(0.015)) return `${header}\n  missed, ${random.pick(['fever', 'ferry did not sail'])}\n`;
  const planned = random.chance(0.2) && index < PLANNED_DAYS.length;
  const blocks = planned
    ? writePlanned(day)
    : [
        ...writeMain(day, 'A'),
        ...random.pick(SECOND)(day, 'B'),
        ...(random.chance(0.7) ? random.pick(THIRD)(day, 'C') : []),
      ];
  const body = [
    ...writeState(day),
    ...(random.chance(0.6) ? writeWarmup(day) : []),
    ...blocks,
    ...(random.chance(0.1) ? ['cooldown', '  Couch Stretch: 60 s/side'] : []),
    `effort ${random.integer(4, 9)}`,
    `lasted ${random.integer(28, 95)} min`,
    ...(random.chance(0.3) ? [`> ${writeNote(random)}`] : []),
  ];
  const plan = planned ? `, ${PLAN} week ${1 + (week % 4)} day ${index + 1}` : '';
  const comment = random.chance(0.03) ? `# ${random.pick(['Back from the coast.', 'A new cycle.'])}\n` : '';
  return `${comment}${header}${plan}\n${body.map((line) => `  ${line}\n`).join('')}`;
}

function writeState({ random, lifter }: Day): string[] {
  const lines = [
    `bodyweight ${lifter.body + random.integer(-4, 4) / 2} ${lifter.unit}`,
    `sleep ${random.integer(11, 17) / 2} h`,
    `readiness ${random.integer(2, 5)}`,
    `pain ${random.integer(1, 3)} ${random.pick(['left', 'right'])} ${random.pick(['knee', 'elbow', 'hip'])}`,
  ];
  return lines.filter((_, index) => random.chance([0.12, 0.1, 0.15, 0.04][index]!));
}

function writeWarmup({ random }: Day): string[] {
  const lines = [
    `Rower: ${random.integer(3, 6)}:00 hr ${random.integer(104, 124)}`,
    'Couch Stretch: 45 s/side',
    'Belfry Wall Slide: 2x8',
    'Dead Bug: 8/side',
    '90/90 Hip Lift: 2x5',
  ];
  return ['warmup', ...lines.filter(() => random.chance(0.4)).map((line) => `  ${line}`)];
}

function writeMain({ random, index, lifter, week }: Day, letter: string): string[] {
  const [name, share] = MAIN[(index + 3 * Math.floor(week / 12)) % MAIN.length]!;
  const { unit } = lifter;
  const at = (part: number) => weigh(lifter, share * part * WAVE[week % WAVE.length]!);
  const warmup = `  warmup ${name}: ${random.chance(0.5) ? `8 @ ${at(0.5)}, ` : ''}5 @ ${at(0.6)}, 3 @ ${at(0.8)} ${unit}`;
  const rating = random.pick([' rpe 7', ' rpe 8', ' rpe 8.5', ' rir 2', '']);
  const sets = random.pick([
    `${random.integer(3, 5)}x5 @ ${at(1)} ${unit}${rating}`,
    `1 @ ${at(1.04)} ${unit} rpe 8, 3x4 @ ${at(1)} ${unit}${rating}`,
    `5, 5, 4 @ ${at(1)} ${unit}${rating}`,
    `5 @ ${at(0.95)} ${unit}, 2x5 @ ${at(1)} ${unit}${rating}, tempo 3-1-X-0`,
    `5, 5, 4 of 5 @ ${at(1)} ${unit} rpe 9.5`,
    `3 @ ${at(1)} ${unit} v 0.${random.integer(31, 62)} m/s, 3 @ ${at(1.03)} ${unit} v 0.${random.integer(24, 48)} m/s`,
    `4x6 @ ${at(0.97)} ${unit}, pain ${random.integer(1, 2)} right knee`,
  ]);
  const test = `1 @ ${at(0.98)} ${unit} rpe 8, 1 @ ${at(1.04)} ${unit} rpe 9, 0 of 1 @ ${at(1.06)} ${unit}`;
  return [
    `${letter} straight, rest ${random.pick(['2:00', '2:30', '3:00'])}`,
    ...(random.chance(0.7) ? [warmup] : []),
    random.chance(0.01) ? `  test ${name}: ${test}` : `  ${name}: ${sets}`,
    ...(random.chance(0.05) ? [`  > ${writeNote(random)}`] : []),
  ];
}

const writeCircuit: Block = (day, letter) => {
  const { random, lifter } = day;
  const rounds = random.integer(3, 4);
  return [
    `${letter} circuit, ${rounds} rounds, rest ${random.pick(['1:15', '1:30', '1:45'])}`,
    `  One-Arm Row: ${random.chance(0.4) ? countDown(day, rounds, 10, '/side') : '10/side'} @ ${dumbbell(day)}`,
    `  Push-up: ${random.chance(0.6) ? countDown(day, rounds, 14) : random.integer(8, 14)}`,
    ...(random.chance(0.3) ? ['  rest 0:15'] : []),
    random.pick([
      `  Goblet Squat: 12 @ ${dumbbell(day)}`,
      `  Suitcase Carry: 30 m/side @ ${lifter.kettlebell} kg`,
      `  Bell-Rope Row: ${random.integer(8, 12)}`,
      `  Kettlebell Swing: 15 @ ${lifter.kettlebell} kg`,
    ]),
    `  time ${times(day, rounds)}`,
    ...(random.chance(0.3) ? [`  rest ${['1:15', '1:25', '1:40'].slice(0, rounds - 1).join(', ')}`] : []),
  ];
};

const writeSuperset: Block = (day, letter) => [
  `${letter} superset, 3 rounds, rest 1:30`,
  `  Chest-Supported Row: ${countDown(day, 3, 10)} @ 2x${dumbbell(day)}`,
  `  ${day.random.pick(['Dip', 'Chin-up', 'Bell-Rope Row'])}: ${countDown(day, 3, 8)}`,
];

const writeGiantSet: Block = (day, letter) => [
  `${letter} giant set, 3 rounds, rest 2:00`,
  `  Dumbbell Bench Press: 3x10 @ 2x${dumbbell(day)}`,
  `  Bell-Rope Row: ${countDown(day, 3, 10)}`,
  '  Dead Bug: 8/side',
  `  Plank: ${day.random.integer(4, 8) * 5} s`,
];

const writePairs: Block = (day, letter) => [
  `${letter}1 Split Squat: 3x8/side @ 2x${dumbbell(day)}`,
  `${letter}2 Pull-up: ${day.random.pick(['6, 5, 4 of 5', '5, 5, ?', '4, 4, skipped', '8, 7, 6'])}`,
];

const writePasses: Block = (day, letter) => [
  `${letter} circuit, 3 rounds x 2 passes, rest 2:00`,
  `  Kettlebell Swing: 15 @ ${day.lifter.kettlebell} kg`,
  `  Push-up: ${countDown(day, 6, 12)}`,
  `  Hollow Hold: ${day.random.integer(4, 6) * 5} s`,
  `  time ${times(day, 3)}`,
];

const writeIntervals: Block = (day, letter) => [
  `${letter} intervals 6 x 500 m, rest 2:00`,
  '  Rower: 500 m',
  `  time ${times(day, 6)}`,
];

const writeClock: Block = (day, letter) => [
  `${letter} intervals 0:40 on, 0:20 off, 8 rounds`,
  `  Rower: ${countDown(day, 8, day.random.integer(150, 180), ' m')}`,
];

const writeAmrap: Block = (day, letter) => [
  `${letter} amrap 10:00`,
  `  Kettlebell Swing: 12 @ ${day.lifter.kettlebell} kg`,
  '  Step-up: 6/side, setting box 40 cm',
  '  Plank: 20 s',
  `  done ${day.random.integer(4, 7)} rounds + ${day.random.integer(3, 11)}`,
];

const writeForTime: Block = (day, letter) => [
  `${letter} for time, 3 rounds, cap 14:00`,
  `  Kettlebell Swing: 21, 15, 9 @ ${day.lifter.kettlebell} kg`,
  '  Push-up: 21, 15, 9',
  '  Rower: 300 m, 200 m, 100 m',
  `  done in ${day.random.integer(8, 12)}:${day.random.integer(10, 59)}`,
];

const writeEvery: Block = (day, letter) => [
  `${letter} every 1:30 for 9:00`,
  `  Box Jump: ${day.random.integer(3, 5)} @ 50 cm`,
];

const writeCarries: Block = (day, letter) => [
  `${letter} straight, rest 1:00`,
  `  Farmer Carry: 2x30 m @ 2x${dumbbell(day)}`,
  `  Side Plank: 2x${day.random.integer(5, 8) * 5} s left ${day.random.integer(6, 9) * 5} s right`,
  `  Millstone Carry: ${day.random.integer(2, 3)}x20 m/side @ ${day.lifter.kettlebell} kg`,
];

const writeArms: Block = (day, letter) => [
  `${letter} straight, rest 1:15`,
  `  Dumbbell Curl: 12 @ 2x${dumbbell(day)}, 10 @ 2x${dumbbell(day)} drop 8 @ 2x${dumbbell(day, 0.6)}`,
  `  Lat Pulldown: 3x${day.random.integer(8, 12)} @ pin ${day.random.integer(6, 7)}`,
  `  Pull-up: ${day.random.pick(['3x3 @ bw-red band', '5, 4 @ bw', '3x4 @ bw'])}`,
];

const SECOND = [
  writeCircuit,
  writeCircuit,
  writeCircuit,
  writeSuperset,
  writeGiantSet,
  writePairs,
  writePasses,
];
const THIRD = [
  writeIntervals,
  writeClock,
  writeAmrap,
  writeForTime,
  writeEvery,
  writeCarries,
  writeCarries,
  writeArms,
  writeArms,
];

function writePlanned(day: Day): string[] {
  const [main, second, third] = PLANNED_DAYS[day.index]!;
  const share = MAIN.find(([name]) => name === main)![1];
  const load = `${weigh(day.lifter, share * WAVE[day.week % WAVE.length]!)} ${day.lifter.unit}`;
  return [
    'A straight, rest 2:30',
    `  ${main}: ${day.random.integer(3, 4)}x5 @ ${load} rpe ${day.random.integer(6, 9)}`,
    'B superset, 3 rounds, rest 1:30',
    `  ${second}: ${countDown(day, 3, 11)}`,
    `  ${third}: ${day.random.integer(10, 15)}`,
  ];
}

function writeNote(random: Random): string {
  const parts = NOTES.map((choices) => random.pick<string>(choices)).join(' ');
  return `${parts} ${random.integer(1, 12)}${random.chance(0.5) ? `, slept ${random.integer(40, 95) / 10} h` : ''}.`;
}

/** A load that the lifter's place can make. */
function weigh({ squat, unit }: Lifter, share: number): number {
  const step = unit === 'kg' ? 2.5 : 5;
  return Math.max(Math.round((squat * share) / step) * step, unit === 'kg' ? 20 : 45);
}

function dumbbell({ lifter, random }: Day, share = 1): string {
  const step = lifter.unit === 'kg' ? 2 : 5;
  const more = random.integer(0, 1);
  return `${(Math.round((lifter.dumbbell * share) / step) + more) * step} ${lifter.unit}`;
}

/** `14, 13, 11, 11`: as many numbers as rounds, never rising. */
function countDown({ random }: Day, rounds: number, from: number, suffix = ''): string {
  let value = from;
  return Array.from({ length: rounds }, () => {
    const written = `${value}${suffix}`;
    value = Math.max(1, value - random.integer(0, 1));
    return written;
  }).join(', ');
}

function times({ random }: Day, count: number): string {
  return Array.from({ length: count }, () =>
    random.chance(0.03) ? '?' : `2:${random.integer(10, 59)}`,
  ).join(', ');
}
