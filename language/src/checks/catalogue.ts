import type { Severity } from '../model/source.ts';

interface CheckRule {
  readonly severity: Severity;
  /** Why it is checked, in one sentence for the coach. */
  readonly why: string;
  readonly source?: string;
}

const error = (why: string, source?: string): CheckRule => ({ severity: 'error', why, source });
const warning = (why: string, source?: string): CheckRule => ({ severity: 'warning', why, source });
const info = (why: string, source?: string): CheckRule => ({ severity: 'info', why, source });
const hint = (why: string, source?: string): CheckRule => ({ severity: 'hint', why, source });

/** Everything that is checked: a stable code, its usual severity and why. Messages stand where a problem is found. */
export const CHECKS = {
  // Reading a line
  syntax: error(
    'A line that breaks off or holds something unexpected; what was read before that place counts.',
  ),
  'stray-line': warning('Nothing recognises the line: it is kept, and counts nowhere.'),
  'unknown-entry': warning('The entry has no known first word, so its lines enter no total.'),
  'unknown-item': warning('Something between commas that the notation does not know.'),
  'outside-entry': warning('Training lines belong to a session, so that they have a date and an athlete.'),
  'spelling-of-unit': info('A unit in another spelling is understood.'),
  'spelling-of-word': info('A word in another spelling is understood.'),
  'decimal-comma': error('A comma separates sets, so a decimal is written with a point.'),
  'missing-unit': error('A weight or a time means nothing without its unit.'),
  'missing-load': error('Behind @ stands a load.'),
  'missing-sets': warning('A movement without sets counts nothing.'),
  'missing-name': error('A line needs to say what it is about.'),
  'missing-value': warning('The word says what follows, and nothing does.'),
  'set-without-load': warning('After the first load of a line every set writes its own.'),
  'reps-first': error('Reps come before the load: 5 @ 100 kg.'),
  'sets-spelled-apart': error(
    'Several numbers with dashes are several sets, and a set is written by itself.',
  ),
  'side-slip': error('Reps of each side are written with /side, or left and right.'),
  'load-or-rating': error('A small bare number behind @ may be a load or a rating.'),
  'rating-list': warning('A rating belongs to its own set.'),
  'uneven-loads': warning('One weight on the line is far from the others: a digit or a unit may be missing.'),
  'unclear-time': error('The time may be read in two ways.'),
  'odd-date': error('A date is written year-month-day, as in ISO 8601.'),
  'impossible-date': error('The calendar has no such day.'),
  'out-of-range': error('The number is past what can be meant.'),
  'implement-count': error('A person holds one implement or two.'),
  'for-plans': warning(
    'Ranges, open ends, targets, percentages and steps are for plans; a session says what happened.',
  ),
  'name-rules': error(
    'A name has at least two letters and no comma, colon, @ or |, and is no word of the notation.',
  ),
  'name-without-colon': warning('A movement is followed by a colon.'),
  'repeated-property': warning('The same thing is said twice, and only the last counts.'),
  vocabulary: warning('The word is none of those that this line takes.'),
  'tempo-form': error('A tempo has three or four phases such as 3-1-X-0.'),
  'range-order': error('A range goes from the lower to the higher number.'),
  'merge-conflict': error(
    'Git left two versions of the same lines, and both are counted until one is chosen.',
  ),
  // Blocks
  'round-count': warning('In a block with rounds each number stands for one round.'),
  'time-count': warning('Each round has one time, or ? for one that was not taken.'),
  'cell-count': warning('In a group each | separates one athlete.'),
  'done-mismatch': warning('How the block ended does not fit its header.'),
  // Names across files
  'unknown-movement': warning('What needs the definition of a movement (body share, muscles) waits for it.'),
  'unknown-athlete': warning('A mistyped athlete would split a history in silence.'),
  'unknown-place': warning('What needs the inventory of a place waits for it.'),
  'unknown-plan': warning('The session cannot be compared with its plan.'),
  'defined-twice': warning(
    'Everything is defined once for the whole workspace; the first definition counts.',
  ),
  'which-athlete': warning('The athlete may be left out only where the workspace has just one.'),
  'one-or-two': warning('One load on a movement with two dumbbells: each, or both together?'),
  'session-order': warning('Sessions of an athlete stand in order of date.'),
  'session-twice': warning('The same day and athlete is logged twice.'),
  'future-session': info('A session says what was done, so its date is today or before.'),
  'while-away': info('The athlete was to be away on that day: the date or the absence may be wrong.'),
  'to-avoid': warning(
    'The athlete is to avoid the movement, or its pattern, on that day. It informs and never forbids.',
  ),
  // Loads
  'no-load': warning(
    'A movement with a bar, dumbbells, kettlebells or a machine counts kilograms only with a load.',
  ),
  'not-loadable': warning('The inventory of the place cannot make the load.'),
  'lacks-equipment': warning('The inventory of the place does not list what the movement needs.'),
  'two-loads-one-bar': warning('Plates would change on every pass of a circuit.', 'Common practice'),
  'load-jump': warning(
    'A working load more than 15 % over the best of 90 days, after five sessions or more, may be a slip of the pen.',
    'Common practice',
  ),
  'week-jump': info(
    'A week with more than 30 % over the mean volume of the last four trained weeks is worth a second look.',
    'Common practice (30 %); Impellizzeri FM et al. (2020) J Athl Train 55(9):885-892: no ratio of loads predicts injury',
  ),
  // Plans
  'plan-day': warning('The plan has no such week or day, so nothing can be compared.'),
  'plan-order': warning('A plan starts on a date or after another one, and plans in a circle never start.'),
  'plan-days': warning(
    'Each day of a plan falls on a weekday, and each week that it speaks of is one that it has.',
  ),
  'plan-step': warning('A step that can never be taken would change nothing without a word.'),
  'plan-ceiling': info('What a step goes to is never reached within the weeks of the plan.'),
  'not-as-planned': hint('The movements done differ from those that the plan asked for that day.'),
  // Cautions: they inform, and defer to licensed practice
  'caution-youth': info(
    'Young athletes gain from resistance training under qualified supervision: light loads and technique first.',
    'Faigenbaum AD et al. (2009) J Strength Cond Res 23(5 Suppl):S60-S79, NSCA position statement; steps of 5-10 % from memory',
  ),
  'caution-pain': info(
    'Pain of 4 or more of 10 counts as moderate; pain in the chest, fainting or unusual breathlessness end a session.',
    'Common practice (threshold); ACSM guidelines for stopping exercise, from memory',
  ),
  'caution-max-test': info(
    'A max is tested rested, in steps and with a spotter or safeties; a health screening is renewed every 12 months.',
    'PAR-Q+ (Warburton, Jamnik, Bredin, Gledhill), validity of 12 months from memory; spotting: common practice',
  ),
  'caution-layoff': info(
    'After more than two weeks off, loads and sets start lower and are built up over several weeks.',
    'Caterisano A et al. (2019) Strength Cond J 41(3):1-23, CSCCa and NSCA joint guidelines, from memory',
  ),
} as const satisfies Record<string, CheckRule>;

export type CheckCode = keyof typeof CHECKS;

export function findCheck(code: CheckCode): CheckRule {
  return CHECKS[code];
}
