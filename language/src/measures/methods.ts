/**
 * Every formula that Plimsoll uses, in words, with the source that it rests on. Hovers, reports and the
 * users' reference are made from this table. A source that was not at hand when the formula was entered says
 * "from memory" or "as quoted in later sources"; a custom of the trade says "common practice".
 */

export interface Method {
  readonly title: string;
  /** Plain text, with the names that the inputs carry. */
  readonly formula: string;
  readonly source: string;
  /** What a reader must know to use the number: choices, limits, cautions. */
  readonly note?: string;
}

const QUOTED = '(as quoted in later sources; original not seen)';
const TO_FAILURE =
  'Holds for reps to failure, or reps plus reps in reserve, up to about 10. In deadlifts all seven formulas tend to fall short (LeSuer DA et al. 1997, J Strength Cond Res 11(4):211-213, from memory).';
const SINGLE = 'A true single is its own max, so one rep returns the load.';

export const METHODS = {
  // Sums and rates
  sets: { title: 'Sets', formula: 'number of working sets done', source: 'common practice' },
  reps: { title: 'Reps', formula: 'sum of reps done, both sides counted', source: 'common practice' },
  seconds: {
    title: 'Time held or worked',
    formula: 'sum of seconds, both sides counted',
    source: 'common practice',
  },
  contacts: {
    title: 'Jump contacts',
    formula: 'sum of landings, both sides counted',
    source: 'common practice',
  },
  metres: {
    title: 'Distance',
    formula: 'sum of metres run, walked, swum or ridden, both sides counted',
    source: 'common practice',
    note: 'Carries and machines have sums of their own, by the kind of work and by what the movement needs.',
  },
  'carried-metres': {
    title: 'Distance carried or pushed',
    formula: 'sum of metres of carries, both sides counted',
    source: 'common practice',
    note: 'With and without a load; sleds are carries. With kilograms it also makes loaded distance.',
  },
  'machine-metres': {
    title: 'Distance on machines',
    formula: 'sum of metres as shown by the machine',
    source: 'common practice',
  },
  calories: {
    title: 'Machine calories',
    formula: 'sum of calories as shown by the machine',
    source: 'common practice',
  },
  'volume-load': {
    title: 'Volume load',
    formula: 'sum over sets of reps × load',
    source:
      'Scott BR et al. (2016) Sports Med 46(5):687-698; Haff GG (2010) Strength Cond J 32(4):102-112 (from memory)',
    note: 'Loads are kept in whole grams and rounded only when shown.',
  },
  'average-load': {
    title: 'Average load',
    formula: 'volume load / reps',
    source: 'Scott BR et al. (2016) Sports Med 46(5):687-698',
  },
  'relative-intensity': {
    title: 'Relative intensity',
    formula: 'average load / max of that day × 100',
    source: 'Scott BR et al. (2016) Sports Med 46(5):687-698',
  },
  'intensity-zones': {
    title: 'Reps by intensity zone',
    formula: 'reps below 60, at 60-69, 70-79, 80-89, and at 90 % or more of the max of that day',
    source: 'common practice',
  },
  'change-by-movement': {
    title: 'Change by movement',
    formula: 'now - before, of each movement',
    source: 'arithmetic',
    note: 'The kilograms of all movements add up to the change of the whole. A substitute counts as what was done.',
  },
  'load-distance': {
    title: 'Loaded distance',
    formula: 'sum over sets of load × metres',
    source: 'common practice',
    note: 'Kept apart from volume load: kilograms and kilogram-metres do not add up.',
  },
  'work-density': {
    title: 'Work density',
    formula: 'volume load of the timed rounds / their time',
    source:
      'Scott BR et al. (2016) Sports Med 46(5):687-698; Haff GG (2010) Strength Cond J 32(4):102-112 (from memory)',
    note: 'Total over total, never the mean of the rounds. A round that was not timed is left out.',
  },
  'block-density': {
    title: 'Block density',
    formula: 'volume load / (round times + rests between the rounds)',
    source: 'Scott BR et al. (2016) Sports Med 46(5):687-698',
    note: 'The rest before and after the block does not count.',
  },
  'session-density': {
    title: 'Session density',
    formula: 'working volume load / session time',
    source: 'Scott BR et al. (2016) Sports Med 46(5):687-698',
  },
  'rep-density': {
    title: 'Reps per minute',
    formula: 'reps / time',
    source: 'common practice',
    note: 'For work that is counted in reps and not weighed.',
  },
  'work-rest': {
    title: 'Work to rest',
    formula: 'recorded work time / recorded or written rest',
    source: 'common practice',
  },
  change: {
    title: 'Change',
    formula: '(now / before - 1) × 100',
    source: 'arithmetic',
    note: 'None where there was nothing before.',
  },
  'time-under-tension': {
    title: 'Time under tension',
    formula: 'reps × (down + pause + up + pause)',
    source: 'common practice',
    note: 'An X (as fast as possible) counts one second, by common practice.',
  },
  // Maxes and records
  'stated-max': {
    title: 'Max',
    formula: 'load',
    source: 'stated in the definition of the athlete',
    note: 'Valid from its day until a later one is stated or tested.',
  },
  'tested-max': {
    title: 'Max (tested)',
    formula: 'heaviest single made in the test',
    source: 'common practice',
    note: 'A single that failed is no max. A later test never changes what was valid before.',
  },
  'retested-max': {
    title: 'Max (tested twice)',
    formula: 'highest of the two tests',
    source: 'common practice',
  },
  'rep-record': {
    title: 'Best load for that many reps',
    formula: 'heaviest load of any set of that many reps or more',
    source: 'common practice',
    note: 'Up to 15 reps, of one side, in one series: settings, tempo and two implements each make their own.',
  },
  'test-result': {
    title: 'Best result of a test',
    formula: 'most reps, seconds, metres or calories; of an amount with its time the shortest time',
    source: 'common practice',
    note: 'Against earlier tests of the same movement, settings, load and amount. Reps with kilograms have an estimated max instead.',
  },
  // Estimated one-repetition maximum
  'true-single': {
    title: 'Estimated 1RM',
    formula: 'load',
    source: 'a single rep with none in reserve is the max itself',
  },
  'lifted-load': {
    title: 'Heaviest load lifted',
    formula: 'the heaviest load lifted that day',
    source: 'arithmetic: who lifted a load can lift it',
    note: 'Where the formulas give less than was lifted, or more than a load that failed, what was lifted is the lower bound.',
  },
  'failed-load': {
    title: 'Estimated 1RM, held by a failed load',
    formula: 'the lightest load that failed that day at its first rep, where the formula gives more',
    source: 'arithmetic: who could not lift a load that day could not lift more',
    note: 'The max is between what was lifted and what failed. A set that failed after a rep, or in a circuit or against the clock, holds nothing.',
  },
  epley: {
    title: 'Estimated 1RM (Epley)',
    formula: 'load × (1 + reps / 30)',
    source: `Epley B (1985) Poundage Chart, Boyd Epley Workout, Lincoln NE ${QUOTED}`,
    note: `${TO_FAILURE} ${SINGLE}`,
  },
  brzycki: {
    title: 'Estimated 1RM (Brzycki)',
    formula: 'load × 36 / (37 - reps)',
    source: `Brzycki M (1993) JOPERD 64(1):88-90 ${QUOTED}`,
    note: `${TO_FAILURE} Too high above that.`,
  },
  lombardi: {
    title: 'Estimated 1RM (Lombardi)',
    formula: 'load × reps^0.10',
    source: `Lombardi VP (1989) Beginning Weight Training, W.C. Brown ${QUOTED}`,
    note: TO_FAILURE,
  },
  mayhew: {
    title: 'Estimated 1RM (Mayhew et al.)',
    formula: '100 × load / (52.2 + 41.9 e^(-0.055 reps))',
    source: `Mayhew JL, Ball TE, Arnold MD, Bowen JC (1992) J Appl Sport Sci Res 6(4):200-206 ${QUOTED}`,
    note: `${TO_FAILURE} ${SINGLE}`,
  },
  oconner: {
    title: "Estimated 1RM (O'Conner et al.)",
    formula: 'load × (1 + 0.025 reps)',
    source: `O'Conner B, Simmons J, O'Shea P (1989) Weight Training Today, West Publishing ${QUOTED}`,
    note: `${TO_FAILURE} ${SINGLE}`,
  },
  wathan: {
    title: 'Estimated 1RM (Wathan)',
    formula: '100 × load / (48.8 + 53.8 e^(-0.075 reps))',
    source: `Wathen D (1994) Load assignment, in Baechle (ed.) Essentials of Strength Training and Conditioning ${QUOTED}`,
    note: `${TO_FAILURE} ${SINGLE}`,
  },
  lander: {
    title: 'Estimated 1RM (Lander)',
    formula: '100 × load / (101.3 - 2.67123 reps)',
    source: `Lander J (1985) NSCA Journal 6(6):60-61 ${QUOTED}`,
    note: `${TO_FAILURE} ${SINGLE}`,
  },
  'nsca-chart': {
    title: 'Share of the max by reps (NSCA Training Load Chart)',
    formula: '1 100, 2 95, 3 93, 4 90, 5 87, 6 85, 7 83, 8 80, 9 77, 10 75, 12 70 % of the max',
    source: 'NSCA, Training Load Chart',
    note: 'At 12 reps the chart says 70 %; Haff & Triplett (2016) Essentials, 4th ed., table 17.7 says 67 % (from memory).',
  },
  'reynolds-chest-press': {
    title: 'Chest press 1RM from 5RM (Reynolds et al.)',
    formula: '1.1307 × 5RM + 0.6999 kg',
    source: 'Reynolds JM, Gordon TJ, Robergs RA (2006) J Strength Cond Res 20(3):584-592',
    note: 'Standard error of estimate 2.98 kg.',
  },
  'reynolds-leg-press': {
    title: 'Leg press 1RM from 5RM (Reynolds et al.)',
    formula: '1.0970 × 5RM + 14.2546 kg',
    source: 'Reynolds JM, Gordon TJ, Robergs RA (2006) J Strength Cond Res 20(3):584-592',
    note: 'Standard error of estimate 16.16 kg.',
  },
  'reynolds-percent': {
    title: 'Share of the max by reps (Reynolds et al.)',
    formula: 'chest press 55.51 e^(-0.0723 reps) + 48.47 %; leg press 78.17 e^(-0.0569 reps) + 26.41 %',
    source: 'Reynolds JM, Gordon TJ, Robergs RA (2006) J Strength Cond Res 20(3):584-592 (from memory)',
  },
  // Effort and load over time
  'reps-in-reserve': {
    title: 'Reps in reserve',
    formula: 'RIR = 10 - RPE, for RPE 6 to 10',
    source: 'Zourdos MC et al. (2016) J Strength Cond Res 30(1):267-275',
    note: 'A half point is a range: RPE 8.5 means 1 to 2 and counts as 1.5 by convention. Ratings far from failure are off by more than 2 reps (Hackett DA et al. 2017, J Strength Cond Res 31(8):2162-2168), so more than 4 in reserve gives no estimate.',
  },
  'session-load': {
    title: 'Session load',
    formula: 'effort (0 to 10) × minutes',
    source: 'Foster C et al. (2001) J Strength Cond Res 15(1):109-115',
  },
  'weekly-load': {
    title: 'Weekly load',
    formula: 'sum of the session loads, Monday to Sunday',
    source: 'Foster C (1998) Med Sci Sports Exerc 30(7):1164-1168',
  },
  monotony: {
    title: 'Monotony',
    formula: 'mean of the seven daily loads / their sample standard deviation (n - 1)',
    source: 'Foster C (1998) Med Sci Sports Exerc 30(7):1164-1168',
    note: 'Rest days count 0; none where all days are equal. The paper does not say which standard deviation; later practice mostly takes n - 1.',
  },
  strain: {
    title: 'Strain',
    formula: 'weekly load × monotony',
    source: 'Foster C (1998) Med Sci Sports Exerc 30(7):1164-1168',
    note: 'Monotony is not rounded first.',
  },
  'acute-chronic': {
    title: 'Acute to chronic load',
    formula:
      'moving average over 7 days / over 28 days, each E = E + 2 / (days + 1) × (load - E), from the first day',
    source: 'Williams S, West S, Cross MJ, Stokes KA (2017) Br J Sports Med 51(3):209-210',
    note: 'Shown after 28 days of history. It depends on the weekday. No evidence supports steering injury risk by load ratios; this is no injury predictor (Impellizzeri FM et al. 2020, J Athl Train 55(9):885-892 and 893-901).',
  },
  'fitness-fatigue': {
    title: 'Fitness and fatigue',
    formula: 'Σ load e^(-days / 42) - 2 Σ load e^(-days / 7), over the days before',
    source:
      'Banister EW et al. (1975) Aust J Sports Med 7:57-61; Morton RH, Fitz-Clarke JR, Banister EW (1990) J Appl Physiol 69:1171-1177; constants 42 and 7 days, 1 and 2, customary',
    note: 'A shape without units: the constants were fitted to nobody here, so only rise and fall mean anything. Shown in tenths of its own largest swing, after 42 days of history.',
  },
  'days-since': {
    title: 'Days since the last session',
    formula: 'day - day of the last session with training in it',
    source: 'arithmetic',
  },
  // Series
  'theil-sen': {
    title: 'Trend',
    formula: 'median of the slopes between all pairs of points, with the rank-based 95 % interval',
    source:
      'Sen PK (1968) J Am Stat Assoc 63(324):1379-1389 (from memory); Hollander, Wolfe & Chicken, Nonparametric Statistical Methods, 3rd ed.',
    note: 'From six points up; no clear change where the interval holds zero.',
  },
  'least-squares': {
    title: 'Trend as a straight line',
    formula: 'least-squares slope ± t(0.975, n - 2) × its standard error',
    source: 'ordinary least squares, checked against NIST StRD Norris',
  },
  'typical-error': {
    title: 'Typical error',
    formula: 'standard deviation of the test-retest differences / √2',
    source: 'Hopkins WG (2000) Sports Med 30(1):1-15 (from memory)',
  },
  'retest-error': {
    title: 'Typical error of one athlete',
    formula: 'standard deviation of loads repeated under the same conditions, pooled over retest lines',
    source: 'Hopkins WG (2000) Sports Med 30(1):1-15 (from memory)',
    note: 'Of two loads it is their difference / √2. Few repeats give a rough number.',
  },
  'real-change': {
    title: 'Change between two tests',
    formula: 'now - before',
    source:
      'Hopkins WG (2000) Sports Med 30(1):1-15 (from memory); Weir JP (2005) J Strength Cond Res 19(1):231-240 (from memory)',
    note: 'Called real only beyond 2.77 × typical error, which a retest line gives: 95 of 100 chance differences stay within that, but only 52 of 100 within the typical error itself.',
  },
  'minimal-detectable-change': {
    title: 'Smallest detectable change',
    formula: '1.96 × √2 × typical error',
    source:
      'Hopkins WG (2000) Sports Med 30(1):1-15 (from memory); Weir JP (2005) J Strength Cond Res 19(1):231-240 (from memory)',
  },
  'smallest-worthwhile-change': {
    title: 'Smallest worthwhile change',
    formula: '0.2 × standard deviation between athletes',
    source: 'Hopkins WG (2004) Sportscience 8 (as quoted in later sources)',
  },
  'time-change': {
    title: 'Change of a round',
    formula: 'seconds now - seconds then',
    source: 'arithmetic',
    note: 'Against the same round of the same block the last time.',
  },
  'predicted-duration': {
    title: 'Predicted duration',
    formula: 'rounds × round + rests; a round is reps × seconds a rep + change-overs × seconds a change-over',
    source: 'common practice; the pace by Theil-Sen over the athlete’s timed rounds',
    note: 'From three timed rounds of the same block that asked for about as much: their median and range. Else from the pace of at least six timed rounds of reps, else 3 s a rep and 15 s a change-over, give or take a quarter. A written tempo always counts. Without a written rest: 2 minutes between sets, 1 minute between rounds.',
  },
  // Balance, adherence, plans
  'hard-sets': {
    title: 'Hard sets',
    formula: 'sets with at most 4 reps in reserve, or unrated straight work',
    source: 'common practice; the cut at 4 reps in reserve from memory of research use',
  },
  'fractional-sets': {
    title: 'Hard sets for a muscle',
    formula: 'direct sets + fraction × indirect sets',
    source: 'Pelland JC et al. (2024) preprint, SportRxiv',
    note: 'The fraction of an indirect muscle is the one its exercise writes.',
  },
  'pattern-sets': {
    title: 'Sets of a movement pattern',
    formula: 'working sets of its movements',
    source: 'common practice',
  },
  'left-right': {
    title: 'Left to right',
    formula: 'done on the left / done on the right',
    source: 'common practice',
    note: 'Of sets that are written for each side.',
  },
  balance: {
    title: 'Balance',
    formula: 'sets of one pattern : sets of the other',
    source: 'common practice',
  },
  adherence: {
    title: 'Adherence',
    formula: 'working sets done / working sets planned × 100',
    source: 'common practice',
    note: 'Sets beyond the plan and movements added to it do not make up for those left out. A movement done instead of another counts for it.',
  },
  revision: {
    title: 'What a revision costs',
    formula: 'mean over the weeks of both versions of what is planned after - what was planned before',
    source: 'common practice',
    note: 'Both versions are worked out with the same definitions, maxes and places. A plan that is new or gone is set against nothing.',
  },
  'body-share': {
    title: 'Share of body mass',
    formula: 'share × body mass + added load, or - help',
    source:
      'Mier CM et al. (2014) Int J Exerc Sci 7(2):161-168 for push-ups; segment masses of Winter DA (2009) Biomechanics and Motor Control of Human Movement, 4th ed., table 4.1, for the rest',
    note: 'Body mass is the last weigh-in on or before the day. Never below zero.',
  },
  'planned-load': {
    title: 'Planned load',
    formula:
      'percent × max, or the load written and its steps; × the share of a deload; nearest of bar + collars + 2 × plates on one side, or of what else there is',
    source: 'common practice',
    note: 'Of the max that is valid on the day; a training max is taken of it once. Ties go up, never under the empty bar. Only what is shown is rounded: steps go on from the exact load.',
  },
  'target-load': {
    title: 'Load for a target',
    formula: 'max / factor of the formula at reps + reps in reserve',
    source: 'inverse of the formulas for an estimated max',
    note: 'From the latest estimate. The range is that of the seven formulas; the leading formula gives the middle.',
  },
  'planned-intensity': {
    title: 'Planned intensity',
    formula: 'sum of reps × load / sum of reps × max of that day × 100',
    source: 'Scott BR et al. (2016) Sports Med 46(5):687-698 (relative intensity)',
    note: 'Of the movements whose max is known.',
  },
  'iso-week': {
    title: 'ISO week',
    formula: 'Monday to Sunday; week 1 holds the first Thursday of the year',
    source: 'ISO 8601',
  },
} as const satisfies Readonly<Record<string, Method>>;

/** What no single number is made by, but all of them rest on. */
export const CONVENTIONS: readonly Method[] = [
  {
    title: 'Loadable loads',
    formula: 'bar + collars + 2 × plates on one side; the nearest, ties up',
    source: 'common practice',
    note: 'Never under the empty bar.',
  },
  {
    title: 'Pounds',
    formula: '1 lb = 0.45359237 kg',
    source: 'international yard and pound agreement, 1959; exact',
    note: 'Converted once when read, rounded only when shown.',
  },
];

export type MethodId = keyof typeof METHODS;

/** The method of a result; the same as looking it up, with its optional note in the type. */
export function findMethod(id: MethodId): Method {
  return METHODS[id];
}
