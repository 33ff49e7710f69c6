import { TWO_FOR_TWO } from '../measures/progression-rules.ts';
import type { Severity } from '../model/source.ts';

export interface CheckRule {
  /** As long as nobody sets another. */
  readonly severity: Severity;
  /** One of its messages, word for word. */
  readonly says: string;
  /** What a quick fix does; none where only the coach can put it right. */
  readonly fix?: string;
  /** Why it is checked, in one sentence for the coach. */
  readonly why: string;
  /** From where on something is told; `{name}` stands for one of the numbers. */
  readonly from?: string;
  /** What must be recorded first. */
  readonly history?: string;
  readonly numbers?: Readonly<Record<string, number>>;
  /** Of a threshold, or of what a caution says. */
  readonly source?: string;
}

/**
 * Everything that is checked: a stable code, its usual severity, what it says and why, and for what rests on a threshold
 * its numbers, which the check itself takes from here. Messages stand where a problem is found. `checks.md` is made from
 * this table by `npm run generate`.
 */
export const CHECKS = {
  // Reading a line
  syntax: {
    severity: 'error',
    says: 'Expected a load such as 100 kg, bw, or red band after heavy',
    fix: 'writes what a slip of the hand meant, where that is known',
    why: 'A line that breaks off or holds something unexpected; what was read before that place counts.',
  },
  'stray-line': {
    severity: 'warning',
    says: 'Nothing is known by "efort" here: did you mean effort?',
    fix: 'writes the nearest word, or the colon of a movement',
    why: 'Nothing recognises the line: it is kept, and counts nowhere.',
  },
  'unknown-entry': {
    severity: 'warning',
    says: 'No entry begins with sesion: did you mean session? Until then its lines count in no total',
    fix: 'writes the nearest word',
    why: 'The entry has no known first word, so its lines enter no total.',
  },
  'unknown-item': {
    severity: 'warning',
    says: '"slowly" is no set and no tempo, rest, setting or pain: write it as a setting, or as a note on a line with >',
    fix: 'writes it as a setting, or as a note below',
    why: 'Something between commas that the notation does not know.',
  },
  'outside-entry': {
    severity: 'warning',
    says: 'These lines stand before any session: begin with session, a date and an athlete',
    why: 'Training lines belong to a session, so that they have a date and an athlete.',
  },
  'spelling-of-unit': {
    severity: 'info',
    says: 'Write kg for kgs',
    fix: 'writes the unit',
    why: 'A unit in another spelling is understood.',
  },
  'spelling-of-word': {
    severity: 'info',
    says: 'Write warmup for warm-up',
    fix: 'writes the word',
    why: 'A word in another spelling is understood.',
  },
  'decimal-comma': {
    severity: 'error',
    says: 'Write 22.5 with a point: a comma begins something new',
    fix: 'writes the point',
    why: 'A comma separates sets, so a decimal is written with a point, and thousands without either.',
  },
  'missing-unit': {
    severity: 'error',
    says: 'Which unit has 100? Write kg or lb behind it, or units kg at the top of the file',
    fix: 'writes either unit',
    why: 'A weight or a time means nothing without its unit.',
  },
  'missing-load': {
    severity: 'error',
    says: 'Expected a load such as 100 kg after @',
    why: 'Behind @ stands a load.',
  },
  'missing-sets': {
    severity: 'warning',
    says: 'Expected sets after the colon, such as 3x5 @ 85 kg',
    why: 'A movement without sets counts nothing.',
  },
  'missing-name': {
    severity: 'error',
    says: 'Expected a movement before the colon',
    why: 'A line needs to say what it is about.',
  },
  'missing-value': {
    severity: 'warning',
    says: 'Expected a time after rest, such as 1:30',
    why: 'The word says what follows, and nothing does.',
  },
  'set-without-load': {
    severity: 'warning',
    says: 'After the first load every set writes its own, and this one has none',
    fix: 'writes the load before it, or the one behind it',
    why: 'After the first load of a line every set writes its own.',
  },
  'reps-first': {
    severity: 'error',
    says: 'Write 5 @ 100 kg: reps come before the load',
    fix: 'turns them round',
    why: 'Reps come before the load: 5 @ 100 kg.',
  },
  'sets-spelled-apart': {
    severity: 'error',
    says: '21-15-9 is several sets: write 21, 15, 9',
    fix: 'writes the sets, or what else it may be',
    why: 'Sets stand between commas: with dashes or other signs between them they may be something else.',
  },
  'side-slip': {
    severity: 'error',
    says: 'Write 10/side for 10/10',
    fix: 'writes the sides, or how many were made of those tried',
    why: 'Reps of each side are written with /side, or left and right.',
  },
  'load-or-rating': {
    severity: 'error',
    says: 'Is 8 a load or an RPE? Write 8 kg or rpe 8',
    fix: 'writes either',
    why: 'A small bare number behind @ may be a load or a rating.',
    from: 'a number from {least} to {most} behind @, on a line without a unit',
    numbers: { least: 5, most: 10 },
    source: 'Our choice',
  },
  'rating-list': {
    severity: 'warning',
    says: 'A rating stands behind its own set, such as 5 @ 100 kg rpe 8: are these sets or ratings?',
    fix: 'writes a set for each rating',
    why: 'A rating belongs to its own set.',
  },
  'uneven-loads': {
    severity: 'warning',
    says: '10 kg is far from the other loads of this line, 100 to 105 kg: is a digit or a unit wrong?',
    fix: 'writes ten times as much, or a tenth, where that is near the others',
    why: 'One weight on the line is far from the others: a digit or a unit may be missing.',
    from: 'a number without a unit over {most} times the heaviest of the other loads, or under a quarter ({least}) of the lightest',
    numbers: { most: 3, least: 0.25 },
    source: 'Our choice',
  },
  'time-as-set': {
    severity: 'info',
    says: 'Did 500 m take 2:05? Then write 500 m in 2:05: behind a comma the time is a set of its own',
    fix: 'writes in between them',
    why: 'The time that a distance took stands behind in, and a time behind a comma is another set.',
  },
  'unclear-time': {
    severity: 'error',
    says: 'm stands for metres: write min for minutes',
    fix: 'writes what it may be',
    why: 'The time may be read in two ways.',
  },
  'odd-date': {
    severity: 'error',
    says: '17.11.2026 is no date that can be read without doubt: write year-month-day, such as 2026-11-17',
    fix: 'writes the date, or both that it may be',
    why: 'A date is written year-month-day, as in ISO 8601.',
  },
  'impossible-date': {
    severity: 'error',
    says: 'The calendar has no 2026-06-31: look at the day and the month',
    why: 'The calendar has no such day.',
  },
  'out-of-range': {
    severity: 'error',
    says: '2001 kg is out of range: 0 to 2 000 kg',
    fix: 'writes an RPE in halves',
    why: 'The number is past what can be meant.',
    from: 'the limits in README.md',
    source: 'Our choice',
  },
  'implement-count': {
    severity: 'error',
    says: '3x: one implement is held, or two such as 2x18 kg',
    fix: 'writes 2x',
    why: 'A person holds one implement or two.',
  },
  'plate-count': {
    severity: 'warning',
    says: '20x2 says 20 plates. Where the weight stands first, write 2x20, 2x10 kg',
    fix: 'turns each count and weight, or makes pairs of single plates',
    why: 'How many there are stands before x, and a bar takes two of a weight. Otherwise every true load would be told as one that the place cannot make.',
  },
  'for-plans': {
    severity: 'warning',
    says: '8-12/side is for plans: write how many were done',
    fix: 'writes the lower or the higher number, or ?',
    why: 'Ranges, open ends, targets, percentages and steps are for plans; a session says what happened.',
  },
  'name-rules': {
    severity: 'error',
    says: 'A name has at least two letters',
    fix: 'takes out the sign',
    why: 'A name has at least two letters and no comma, colon, @ or |, and is no word of the notation.',
  },
  'name-without-colon': {
    severity: 'warning',
    says: 'Write a colon behind Back Squat',
    fix: 'writes the colon',
    why: 'A movement is followed by a colon.',
  },
  'repeated-property': {
    severity: 'warning',
    says: 'effort stands here twice: the last one counts',
    why: 'The same thing is said twice, and only the last counts.',
  },
  vocabulary: {
    severity: 'warning',
    says: 'squatt is no pattern: did you mean squat?',
    fix: 'writes the nearest word',
    why: 'The word is none of those that this line takes.',
  },
  'tempo-form': {
    severity: 'error',
    says: 'A tempo has three or four phases with dashes between them, such as 3-1-X-0: down, pause, up, pause',
    fix: 'writes the dashes',
    why: 'A tempo has three or four phases such as 3-1-X-0.',
  },
  'range-order': {
    severity: 'error',
    says: '12-8: a range goes from the lower to the higher number, and both count the same',
    fix: 'turns them round',
    why: 'A range goes from the lower to the higher number.',
  },
  'merge-conflict': {
    severity: 'error',
    says: 'A merge left two versions here, and both are counted: keep one, then take out the lines that begin with <<<<<<<, ======= and >>>>>>>',
    why: 'Git left two versions of the same lines, and both are counted until one is chosen.',
  },
  'unknown-check': {
    severity: 'warning',
    says: 'No check is called lod-jump: did you mean load-jump?',
    fix: 'writes the nearest codes',
    why: 'Behind # ignore stands the code of a check; another word silences nothing.',
  },
  // Blocks
  'round-count': {
    severity: 'warning',
    says: '3 sets for 4 rounds: write one that is the same in every round, or 4',
    fix: 'writes ? for the rounds that are missing',
    why: 'In a block with rounds each number stands for one round.',
  },
  'joins-rounds': {
    severity: 'info',
    says: 'Plank counts in each of the 3 rounds above: write a line such as C straight before it, or indent it like the others',
    fix: 'begins a block of its own',
    why: 'A block lasts to the next header, so a movement below its rounds is done in each of them.',
    from: 'a line farther left than the first of its block, or behind the times',
    source: 'Our choice',
  },
  'time-count': {
    severity: 'warning',
    says: '2 times for 3 rounds: write one for each round, and ? for one that was not taken',
    fix: 'writes ? for the rounds that are missing',
    why: 'Each round has one time, or ? for one that was not taken.',
  },
  'cell-count': {
    severity: 'warning',
    says: '2 values between | for 3 athletes: write one for all, or one for each',
    fix: 'takes out a bar at the end',
    why: 'In a group each | separates one athlete, in a plan one week.',
  },
  'done-mismatch': {
    severity: 'warning',
    says: 'The block has 4 rounds, not 5',
    fix: 'writes the number of the header',
    why: 'How the block ended does not fit its header.',
  },
  // Names across files
  'unknown-movement': {
    severity: 'warning',
    says: 'No movement is called Goblin Squat: did you mean Goblet Squat?',
    fix: 'writes the nearest names, or defines the movement from a template',
    why: 'What needs the definition of a movement (body share, muscles) waits for it.',
  },
  'unknown-athlete': {
    severity: 'warning',
    says: 'No athlete is called Otti Plankerman: did you mean Otti Plankermann?',
    fix: 'writes the nearest names, or defines the athlete',
    why: 'A mistyped athlete would split a history in silence.',
    from: 'where no athlete is defined: a name of {letters} letters or more that is one letter off another',
    history: '{times} times as many sessions under the other name',
    numbers: { letters: 5, times: 3 },
    source: 'Our choice',
  },
  'unknown-place': {
    severity: 'warning',
    says: 'No place is called Kelp Cellor: did you mean Kelp Cellar?',
    fix: 'writes the nearest names, or defines the place',
    why: 'What needs the inventory of a place waits for it.',
  },
  'unknown-plan': {
    severity: 'warning',
    says: 'No plan is called Brass Almanak: did you mean Brass Almanac?',
    fix: 'writes the nearest names, or defines the plan',
    why: 'The session cannot be compared with its plan.',
  },
  'defined-twice': {
    severity: 'warning',
    says: 'Kelp Cellar is defined in a b.plim, line 1, and that definition counts: keep one of them',
    why: 'Everything is defined once for the whole workspace; the first definition counts.',
  },
  'which-athlete': {
    severity: 'warning',
    says: 'Whose session is it? Several athletes are defined, so write the name behind the date',
    fix: 'writes the name of an athlete',
    why: 'The athlete may be left out only where the workspace has just one.',
  },
  'one-or-two': {
    severity: 'warning',
    says: '14 kg each, or both together? Dumbbell Curl takes two: write 2x14 kg if each is that heavy',
    fix: 'writes each of the three that it may be',
    why: 'One load on a movement with two dumbbells: each, or both together?',
  },
  'session-order': {
    severity: 'warning',
    says: '2026-11-11 stands below a later session of Otti Plankermann: put sessions in order of date, or correct it',
    why: 'Sessions of an athlete stand in order of date.',
  },
  'session-twice': {
    severity: 'warning',
    says: 'A session of Otti Plankermann on 2026-11-12 stands in line 1 already: write the time of day behind each date, or take one out',
    why: 'The same day and athlete is logged twice.',
  },
  'future-session': {
    severity: 'info',
    says: '2026-11-25 is still to come: is the date right?',
    why: 'A session says what was done, so its date is today or before.',
  },
  'while-away': {
    severity: 'info',
    says: 'Otti Plankermann is away from 2026-11-02 to 2026-11-08, travelling: is the date right?',
    why: 'The athlete was to be away on that day: the date or the absence may be wrong.',
  },
  'to-avoid': {
    severity: 'warning',
    says: 'Otti Plankermann is to avoid vertical push until 2026-11-16 (left shoulder): choose another movement',
    why: 'The athlete is to avoid the movement, or its pattern, on that day. It informs and never forbids. An older session was before anybody said so, or cannot be chosen anew.',
    from: 'a session of the last {recent} days, or to come',
    numbers: { recent: 14 },
    source: 'Our choice',
  },
  // Loads
  'no-load': {
    severity: 'warning',
    says: 'Back Squat has no load here, so it counts no kilograms: write it behind @, or @ ? if nobody noted it',
    fix: 'writes the load of the last time, or ?',
    why: 'A movement with a bar, dumbbells, kettlebells or a machine counts kilograms only with a load.',
  },
  'hold-in-reps': {
    severity: 'warning',
    says: 'Plank is held, and a bare number counts reps: write 45 s if it was seconds',
    fix: 'writes seconds',
    why: 'What is held counts seconds, and a number without a unit counts reps, so the time would be lost.',
    from: '{least} reps of a movement that is held',
    numbers: { least: 10 },
    source: 'Our choice',
  },
  'distance-in-reps': {
    severity: 'warning',
    says: 'Rower goes over a distance, and a bare number counts reps: write 500 m, 500 cal or 500 s, whichever it was',
    fix: 'writes the unit',
    why: 'Carries, sleds, runs and machines count metres, calories or time, and a number without a unit counts reps, so that it would stand among the wrong sums.',
    from: '{least} reps of a carry, or of conditioning whose name ends in run, walk, sprint, ride, swim or a machine',
    numbers: { least: 10 },
    source: 'Our choice',
  },
  'not-loadable': {
    severity: 'warning',
    says: 'Kelp Cellar cannot load 83 kg: the nearest are 82.5 kg and 85 kg',
    fix: 'writes either of the nearest two',
    why: 'The inventory of the place cannot make the load.',
  },
  'lacks-equipment': {
    severity: 'warning',
    says: 'Kelp Cellar has no trap bar for Trap-Bar Deadlift: add to the place what is there, or choose another movement',
    why: 'The inventory of the place does not list what the movement needs.',
  },
  'two-loads-one-bar': {
    severity: 'warning',
    says: 'One bar would carry 60 kg (Back Squat) and 40 kg (Overhead Press) in one round, so plates change on every pass: use one load, or part the movements',
    why: 'Plates would change on every pass of a circuit.',
    from: 'more loads in a round than the place has bars, or than one where no place is named',
    source: 'Common practice',
  },
  'load-jump': {
    severity: 'warning',
    says: '92.5 kg for 5 is 16 % over the best of 90 days, 80 kg for 5 or more: is the load right?',
    why: 'A working load far outside what the athlete has done may be a slip of the pen.',
    from: 'more than {percent} % over the heaviest load for as many reps or more in {days} days',
    history: '{sessions} sessions of the movement',
    numbers: { percent: 15, days: 90, sessions: 5 },
    source: 'Common practice',
  },
  'top-of-range': {
    severity: 'hint',
    says: 'Goblet Squat: every set is at the top of 8-12, so the plan says then +4 kg from 8',
    why: 'Double progression: once every set is at the top of its range, the load moves.',
    from: 'as many sets as planned, each at the top of the range or over it',
    history: 'one session of a day of the plan, the latest of its movement',
    source: 'Common practice',
  },
  'two-for-two': {
    severity: 'hint',
    says: 'Back Squat: 7 and 8 reps in the last set for a goal of 5, twice in a row: by the 2-for-2 rule 2 to 10 % more next time, 71.4 to 77 kg',
    why: 'The 2-for-2 rule, for a line with a fixed goal and no steps of its own: the last set tells whether the load moves.',
    from: '{reps} reps or more over the goal in the last set, in {workouts} workouts in a row at one load',
    history: '{workouts} sessions of the movement, the latest of a day of the plan',
    numbers: TWO_FOR_TWO,
    source:
      'Haff & Triplett (2016) Essentials of Strength Training and Conditioning, 4th ed., ch. 17 (from memory); raise of 2 to 10 %: Ratamess NA et al. (2009) Med Sci Sports Exerc 41(3):687-708',
  },
  'week-jump': {
    severity: 'info',
    says: 'Wim Ostrik: week 48 so far has 1 600 kg, 100 % over the mean of the last four trained weeks (800 kg): is that meant? No threshold has been shown to predict injury',
    why: 'A week far above those before it is worth a second look. It is a question, and predicts nothing.',
    from: 'volume more than {percent} % over the mean of the last {weeks} trained weeks, in the last {recent} days',
    history: '{weeks} trained weeks among the {within} weeks before, wholly recorded',
    numbers: { percent: 30, weeks: 4, within: 12, recent: 28 },
    source:
      'Common practice (30 %); Impellizzeri FM et al. (2020) J Athl Train 55(9):885-892: no ratio of loads predicts injury',
  },
  // Plans
  'plan-day': {
    severity: 'warning',
    says: 'Brass Almanac has 6 weeks, and no week 7: correct the week',
    why: 'The plan has no such week or day, so nothing can be compared.',
  },
  'plan-order': {
    severity: 'warning',
    says: 'The plan starts on a date and follows Tin Almanac: the date counts, so take out one of the two',
    why: 'A plan starts on a date or after another one, and plans in a circle never start.',
  },
  'plan-days': {
    severity: 'warning',
    says: 'The plan has 4 weeks, so week 5 never comes: correct the week',
    why: 'Each day of a plan falls on a weekday, and each week that it speaks of is one that it has.',
  },
  'plan-step': {
    severity: 'warning',
    says: '+1 rep each week can never be taken: the line has no reps to change',
    why: 'A step that can never be taken would change nothing without a word.',
  },
  'plan-ceiling': {
    severity: 'info',
    says: '+1 rep each week to 14 is never reached: in 6 weeks there are 5 steps',
    why: 'What a step goes to is never reached within the weeks of the plan, or a rest that shrinks comes to nothing within them.',
  },
  'not-as-planned': {
    severity: 'hint',
    says: 'Not as planned: Push-up planned and not done; 5 movements done and not planned',
    why: 'The movements done differ from those that the plan asked for that day.',
  },
  // Cautions: they inform, and defer to licensed practice
  'caution-youth': {
    severity: 'info',
    says: 'Otti Plankermann is under 18: qualified supervision, light loads, technique first; ask a licensed practitioner before any max',
    why: 'Young athletes gain from resistance training under qualified supervision: light loads and technique first.',
    from: 'under {years} years for the whole of this year',
    numbers: { years: 18 },
    source:
      'Faigenbaum AD et al. (2009) J Strength Cond Res 23(5 Suppl):S60-S79, NSCA position statement; steps of 5-10 % from memory',
  },
  'caution-pain': {
    severity: 'info',
    says: 'Pain 5 of 10, left shoulder: leave out what brings it on, and ask a licensed practitioner before loading it again',
    why: 'Pain of 4 or more of 10 counts as moderate; pain in the chest, fainting or unusual breathlessness end a session.',
    from: '{score} of 10, or any pain of the chest, fainting, dizziness or breathlessness',
    numbers: { score: 4 },
    source: 'Common practice (threshold); ACSM guidelines for stopping exercise, from memory',
  },
  'caution-max-test': {
    severity: 'info',
    says: 'A max test: rested, in steps, with a spotter or safeties, stopped at any pain; in doubt ask a licensed practitioner',
    why: 'A max is tested rested, in steps and with a spotter or safeties; a health screening is renewed every 12 months.',
    from: 'any test with a weight; a screening counts for {days} days',
    numbers: { days: 365 },
    source:
      'PAR-Q+ (Warburton, Jamnik, Bredin, Gledhill), validity of 12 months from memory; spotting: common practice',
  },
  'caution-layoff': {
    severity: 'info',
    says: 'Wim Ostrik: the first session in 18 days: begin with less load and fewer sets and build up; after illness or injury ask a licensed practitioner',
    why: 'After more than two weeks off, loads and sets start lower and are built up over several weeks.',
    from: 'more than {days} days since the last session',
    history: 'one session before it',
    numbers: { days: 14 },
    source:
      'Caterisano A et al. (2019) Strength Cond J 41(3):1-23, CSCCa and NSCA joint guidelines, from memory',
  },
} as const satisfies Record<string, CheckRule>;

export type CheckCode = keyof typeof CHECKS;

export function findCheck(code: CheckCode): CheckRule {
  return CHECKS[code];
}
