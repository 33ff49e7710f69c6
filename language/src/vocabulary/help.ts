/**
 * One line of help for each word of the notation, as hovers and completion show it. Keys are the words themselves; where
 * one word means two things, the kind of entry or line tells them apart.
 */
export const HELP: Readonly<Record<string, string>> = {
  // Entries
  units: 'The unit of every number in this file that is written without one: `units kg`.',
  exercise: 'Defines a movement. One with a built-in name replaces the built-in movement.',
  place: 'Defines a place and what can be loaded there. A place without an inventory never complains.',
  athlete: 'Defines an athlete: body mass, maxes, goals, what to avoid, days away.',
  plan: 'Defines a plan in days and weeks. Its lines can be copied into a session.',
  session: 'What was done on a day: `session 2026-11-17 07:10 Name at Place, Plan week 2 day 1`.',
  'unknown entry': 'No entry begins like this, so its lines enter no total.',
  stray: 'Nothing recognises this line: it is kept, and counts nowhere.',
  clock: 'The time of day. Two sessions on one day each write theirs.',
  'session at': 'Behind it stands the place: what can be loaded there is checked.',
  'session week': 'The week and the day of the plan that was trained: what was done is compared with them.',
  athletes: 'Separates the athletes of a group, in the order of the header. One cell alone is for all.',
  note: 'A note, kept as it is. It belongs to the line above it.',

  // Blocks
  straight: 'Each movement with all its sets before the next one.',
  circuit:
    'The movements in turn, round by round. Density is compared with the last time the same circuit was done.',
  superset: 'Two movements in turn, round by round.',
  'giant set': 'Three movements or more in turn, round by round.',
  every: 'Work that starts at every full interval: `every 1:00 for 10:00`.',
  amrap: 'As many rounds or reps as possible in the time given; `done 4 rounds + 5` records the score.',
  'for time': 'A fixed amount of work as fast as possible; `done in 9:48` records the score.',
  intervals:
    'Work and rest by the clock or by distance: `intervals 0:40 on, 0:20 off`, `intervals 6 x 500 m`.',
  warmup: 'Preparation: outside working volume, hard sets, records and estimates.',
  cooldown: 'Winding down: outside working volume, hard sets, records and estimates.',
  time: 'How long each round took, in order; `?` is a round that was not timed.',
  done: 'How the block ended: `done in 9:48`, `done 2 of 4 rounds`, `done 4 rounds + 12 cal + 5`.',
  rounds:
    'How often the list is done: `4 rounds`, or `3 rounds x 2 passes`, the list twice a round without rest.',
  'block rest': 'The rest between the rounds; in straight work between the sets.',
  cap: 'The most time that the block may take.',
  alternating: 'The lines take turns, one at each start; without it each is done each time.',
  'rest line': 'The rest at this place; several times are the rests really taken, round by round.',

  letter: 'The letter of the block. Lines such as `A1` join the block of their letter.',
  'block for': 'How long the block goes on.',
  'interval on': 'How long the work lasts.',
  'interval off': 'How long the rest lasts.',

  // Sessions
  effort: 'How hard the whole session was, 0 to 10, asked about half an hour after it.',
  lasted: 'How long the session took: `lasted 58 min`.',
  'session bodyweight': 'Body mass on that day; it counts from then on.',
  sleep: 'Sleep before the session: `sleep 7 h`.',
  readiness: 'How ready the athlete felt, 1 to 5.',
  pain: 'Pain, 0 to 10, and where. It informs, and replaces no licensed practitioner.',
  missed: 'A planned day that did not happen, and why.',

  // Lines and sets
  test: 'The best of this line is a max from that day on.',
  week: 'In this week of the plan the line stands in place of the one of that name, or comes in addition.',
  label: 'Lines with the same letter are one superset.',
  '@': 'Before the load. The sets before the first load of a line share it; after that every set writes its own.',
  count: 'How many sets: `3x5` is three sets of five.',
  in: 'The time that the distance took: `400 m in 1:32`.',
  range: 'From the lower to the higher.',
  'weeks of a line': 'Separates the weeks of the plan. They begin again when it is longer.',
  rpe: 'How hard the set was, 0 to 10 in halves; 8 is two reps left.',
  rir: 'Reps in reserve: how many more could have been made.',
  hr: 'Heart rate, beats a minute.',
  v: 'Speed of the bar: `v 0.45 m/s`.',
  side: 'On each side: `8/side` is one set, eight reps with each arm or leg.',
  skipped: 'Planned, and not done: a known zero.',
  '?': 'Done, and nobody noted how much: totals with it are "at least".',
  drop: 'The same set goes on at once at a smaller load, which it writes itself.',
  tempo: 'Seconds down, in the bottom, up and at the top; X is as fast as possible.',
  rest: 'Rest between the sets.',
  setting: 'What was set: `setting box 40 cm`. Another setting is a series of its own.',
  instead: 'The movement that this one took the place of.',
  step: 'How the plan goes on: a step each week unless said otherwise, up to its bound.',
  'step when full':
    'Taken when every set has reached the top of its range; the reps start again where `from` says.',
  stall: 'What happens after that many misses in a row.',

  // Exercises
  pattern: 'What kind of movement it is; compared in balances and in what an athlete is to avoid.',
  work: 'What is counted: strength, carry, hold, jump, conditioning or mobility.',
  position: 'How the body is placed.',
  trunk: 'What the trunk resists, or how it moves.',
  muscles: 'Muscles trained: in full, or indirectly with the fraction of a set that counts.',
  each: 'Of two implements held, a rep moves both, where nothing is written, or one.',
  counts: 'Its reps are landings: `counts contacts`.',
  needs: 'Equipment. A place with an inventory that lacks it gives a warning.',
  'exercise bodyweight':
    'The share of body mass that is lifted in each rep and counts as load. None written, none counted.',
  also: 'Other spellings of the same movement.',
  easier: 'A movement to go back to.',
  harder: 'A movement to go on to.',
  setup: 'How things are set up.',
  cue: 'What the coach says.',
  caution: 'What to take care of. It informs, and replaces no licensed practitioner.',

  // Places
  bars: 'What the empty bars weigh: `bars 20 kg, 15 kg`.',
  plates: 'How many plates of each weight there are in all: `plates 4x20, 2x10 kg`.',
  collars: 'What both collars weigh together.',
  dumbbells: 'A range and its step: `dumbbells 4-32 by 2 kg pairs`; `singles` where there is one of each.',
  kettlebells: 'What they weigh, one by one: `kettlebells 12, 16, 20 kg`.',
  stacks: 'What a machine or cable can be set to: `stacks cable 5-60 by 2.5 kg`.',
  has: 'Equipment that the place has.',

  // Athletes
  born: 'The year of birth; under 18 gives a caution.',
  sex: 'Only for formulas that need it.',
  'athlete units': 'What numbers are shown in; the log stays as it is written.',
  'athlete bodyweight': 'A weigh-in. The last one on or before a session counts for it.',
  max: 'A max from that day on; percentages of a plan are taken of it.',
  goal: 'What the athlete works toward, and by when.',
  retest: 'Two tests close together, which tell how much such a test varies by itself.',
  avoid: 'A pattern or movement to leave out for now. It warns, and never blocks.',
  away: 'Days on which no training is expected.',
  screened: 'When health was last asked about before training, and by whom.',

  'from day': 'The day from which it counts.',
  by: 'The day by which it is to be reached.',
  until: 'The last day for which it holds.',

  // Plans
  for: 'Whom the plan is for.',
  at: 'Where it is done: loads are rounded to what can be loaded there.',
  starts: 'The first day of the first week.',
  follows: 'Starts when that plan has ended.',
  weeks: 'How many weeks the plan takes.',
  deload: 'A lighter week: shares of its own sets and loads. No step is taken in it.',
  days: 'On which days of the week, or `alternate, 3 a week`.',
  day: 'One training day of the plan.',
  alternate: 'Takes the days of the plan in turn, so many a week: `days alternate, 3 a week`.',
  'property week': 'A week of the plan, or how many days of it there are in one.',
  training: 'Percentages are taken of this share of the max: `training max 85%`.',
};

/** The help for a word, as `HELP` names it. */
export function findHelp(word: string): string | undefined {
  return Object.hasOwn(HELP, word) ? HELP[word] : undefined;
}
