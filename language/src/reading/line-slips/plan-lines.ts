import { GAP, type Groups, JOIN, joinByCommas, type LineSlip, of } from './slip.ts';

const PLAN = ['plan'] as const;
const DAY = '(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?s?';
const PERCENT = String.raw`(\d{1,3})\s*%?`;

/** Slips in what a plan says of itself. */
export const PLAN_SLIPS: readonly LineSlip[] = [
  {
    within: PLAN,
    pattern: of(`(?:days?|on)${GAP}(${DAY}(?:(?:\\s*,\\s*|\\s+|\\s*[-–—]\\s*|${JOIN})${DAY})*)`),
    writes: [writeDays],
    why: 'a comma stands between the days',
  },
  {
    within: PLAN,
    pattern: of(`days${GAP}(\\d)\\s*(?:x|days|times)?\\s*(?:a|per|/|each)?\\s*(?:week|wk)?`),
    writes: ['days alternate, $1 a week'],
    why: 'weekdays such as Mon, Thu, or the days of the plan in turn',
    told: 'syntax',
  },
  {
    within: PLAN,
    pattern: of(`(?:weeks${GAP}|(?:length|duration|lasts|runs)${GAP}|)(\\d{1,3})\\s*[-\\s]*(?:weeks?|wks?)`),
    writes: ['weeks $1'],
    why: 'the word comes first',
  },
  {
    within: PLAN,
    pattern: of(`(?:starts?|starting|begins?|from)${GAP}(?:on\\s+)?(?:${DAY}[.,]?\\s+)?(\\d.*)`),
    writes: [([date]: Groups) => `starts ${date}`],
    why: 'the date alone stands behind the word',
  },
  {
    within: PLAN,
    pattern: of(`(?!deload week \\d+$)deload${GAP}(?:in\\s+)?(?:week\\s*)?\\d{1,3}`),
    writes: [],
    why: 'Write the week, and what is left of its sets and loads, such as deload week 4, sets 50%, load 90%',
    told: 'missing-value',
  },
  {
    within: PLAN,
    pattern: of(`deload${GAP}(?:week\\s*)?(\\d{1,3})(?:\\s*[,:–—-]\\s*|\\s+)(?:at\\s+)?${PERCENT}`),
    writes: ['deload week $1, sets $2%', 'deload week $1, load $2%'],
    why: 'a share is of the sets or of the load',
    told: 'syntax',
  },
  {
    within: PLAN,
    pattern: of(`deload${GAP}(?:week\\s*)?(\\d{1,3})\\s*[,:–—-]?\\s*((?:sets|load|loads|reps)\\b.*)`),
    writes: [
      ([week, shares]: Groups) =>
        `deload week ${week}, ${shares!.replace(/\bloads\b/gi, 'load').replace(/\s+(?:and\s+)?(?=(?:sets|load)\b)/gi, (gap, at: number) => (/,\s*$/.test(shares!.slice(0, at)) ? gap : ', '))}`,
    ],
    why: 'a comma stands before each share',
  },
  {
    within: PLAN,
    pattern: of(`deload${GAP}weeks\\s+(\\d.*)`),
    writes: [],
    why: 'Each lighter week has a line of its own, such as deload week 4, sets 60%',
    told: 'syntax',
  },
  {
    within: PLAN,
    pattern: of(`deload${GAP}every\\s.*`),
    writes: [],
    why: 'A lighter week is named by its number, such as deload week 4, sets 60%, a line for each',
    told: 'syntax',
  },
  {
    within: PLAN,
    // 140 is rather a load.
    pattern: of(`(?:training\\s+max|tm)\\s*[\\s:=]\\s*(?:of\\s+)?(100|\\d{2}(?:\\.\\d+)?)\\s*%?`),
    writes: ['training max $1%'],
    unnoticed: true,
    why: 'a share of the max, in percent',
  },
  {
    within: PLAN,
    pattern: of(`(?:athletes?|client|who)${GAP}(\\S.*)`),
    writes: ['for $1'],
    why: 'whom a plan is for is told by for',
  },
  {
    within: PLAN,
    pattern: of(`(?:place|location|gym|where)${GAP}(\\S.*)`),
    writes: ['at $1'],
    why: 'where a plan is done is told by at',
  },
  {
    within: PLAN,
    pattern: of(`for${GAP}(\\p{L}.*?(?:\\s*[;&+]\\s*|\\s+and\\s+)\\p{L}.*)`),
    writes: [([names]: Groups) => `for ${joinByCommas(names!, /[;&+,]|\sand\s/i)}`],
    unnoticed: true,
    why: 'a comma stands between the athletes',
  },
  {
    within: PLAN,
    pattern: of(`(?:weeks?|wk)\\.?\\s*(\\d{1,2})(?:\\s*[:–—-]\\s*|\\s+)(\\p{L}[^:,@|]*:.*)`),
    writes: ['week $1 $2'],
    unnoticed: true,
    why: 'week and its number stand right before the name',
  },
  {
    within: PLAN,
    pattern: of(
      `(?:week|wk)\\.?\\s*(\\d{1,2})\\s*[:–—-]?\\s*deload\\s*[,:–—(-]*\\s*((?:sets|load)\\s[^()]*)\\)?`,
    ),
    writes: ['deload week $1, $2'],
    why: 'the word deload comes first',
  },
  {
    within: PLAN,
    pattern: of(`(?:week|wk)\\.?\\s*(\\d{1,2})\\s*[:–—-]?\\s*deload(?:\\s+week)?`),
    writes: [],
    why: 'A lighter week says what is left of its sets and loads, such as deload week $1, sets 50%, load 90%',
    told: 'missing-value',
  },
  {
    within: PLAN,
    pattern: of(`(?:week|wk)\\s*(\\d{1,2})\\s*:?`),
    writes: [],
    why: 'Weeks stand on the line of each movement, between bars: Back Squat: 3x5 @ 70% | 3x5 @ 75%; the number of them is told by weeks 4',
    told: 'stray-line',
  },
  {
    within: PLAN,
    pattern: of(`(?:session|workout|training)\\s+([1-7])\\s*[:–—-]?\\s*(.*)`),
    writes: ['day $1 $2'],
    why: 'a day of a plan begins with day and its number',
    told: 'stray-line',
  },
  {
    within: PLAN,
    pattern: of(`day\\s+(a|b|c|d|one|two|three|four|five)\\b\\s*[:–—-]?\\s*(.*)`),
    writes: [writeDay],
    why: 'days have numbers',
    told: 'missing-value',
  },
  {
    within: PLAN,
    pattern: of(`(${DAY})\\s*[:–—-]?\\s*(?:(?<=[:–—-]\\s*)\\p{L}.*)?`),
    writes: [],
    why: 'A day begins with day 1; on which weekdays the days are is told by a line such as days Mon, Thu',
    told: 'stray-line',
  },
];

function writeDays([days]: Groups): string | undefined {
  // A range of days, and what is already right, is no such slip.
  if (/[-–—]/.test(days!) || /^[a-z]+(?:\s*,\s*[a-z]+)*$/i.test(days!)) return undefined;
  const names = joinByCommas(days!, /[\s;/&+,]+|\band\b/i).split(', ');
  return `days ${names.map((name) => name.charAt(0).toUpperCase() + name.slice(1, 3).toLowerCase()).join(', ')}`;
}

const NUMBER_WORDS = ['one', 'two', 'three', 'four', 'five'];

function writeDay([word, name]: Groups): string {
  const lower = word!.toLowerCase();
  const number = lower.length === 1 ? lower.charCodeAt(0) - 96 : NUMBER_WORDS.indexOf(lower) + 1;
  return `day ${number} ${name}`.trim();
}
