import type { IParserErrorMessageProvider, IToken, TokenType } from 'chevrotain';
import { shorten } from '../text/shorten.ts';

/** What a coach would write in the place where a rule of the grammar did not go on. */
const EXPECTED: Readonly<Record<string, string>> = {
  At: 'a load such as 100 kg',
  Load: 'a load such as 100 kg',
  Mass: 'a weight such as 20 kg',
  Extra: 'a weight, a pin or a band',
  MassRange: 'a range such as 4-32 by 2 kg',
  PerSide: '/side',
  Quantity: 'a number with its unit such as 30 s',
  Rating: 'a rating such as rpe 8',
  Modifier: 'tempo, rest, setting, pain or a step',
  Sign: 'a step such as +2.5 kg',
  StepTail: 'each round, each session, each week or each cycle',
  Step: 'a step such as +2.5 kg each week',
  RestStep: 'a step such as -10 s each week',
  MovementLine: 'sets such as 3x5 @ 85 kg',
  Prefix: 'a movement',
  BlockLine: 'a setting such as 4 rounds or rest 1:15',
  BlockKind: 'a setting such as 4 rounds or rest 1:15',
  BlockOption: 'a setting such as 4 rounds or rest 1:15',
  Rounds: 'rounds such as 4 rounds or 3 rounds x 2 passes',
  TimeLine: 'times such as 2:55, 3:02, ?',
  TimeCell: 'times such as 2:55, 3:02, ?',
  TimeEntry: 'a time such as 2:55, or ?',
  DoneLine: 'a result such as in 9:48 or 2 of 4 rounds',
  DoneResult: 'a result such as in 9:48 or 2 of 4 rounds',
  RestLine: 'a rest such as 1:15',
  EffortLine: 'a number from 0 to 10',
  Score: 'a number from 0 to 10',
  LastedLine: 'a time such as 58 min',
  BodyweightLine: 'a weight such as 68.2 kg',
  SleepLine: 'hours such as 7 h',
  ReadinessLine: 'a number from 1 to 5',
  PainLine: 'a number from 0 to 10 and where it hurts',
  PainModifier: 'a number from 0 to 10 and where it hurts',
  MissedLine: 'a comma and the reason',
  AtLine: "a place's name",
  StartsLine: 'a date such as 2026-11-17',
  FollowsLine: "a plan's name",
  WeeksLine: 'a number of weeks',
  DeloadLine: 'week 6, sets 50%, load 90%',
  DeloadShare: 'sets 50% or load 90%',
  DaysLine: 'days such as Mon, Wed, Fri or alternate, 3 a week',
  TrainingMaxLine: 'a share such as training max 90%',
  SessionHeader: 'a date, an athlete, at a place, then a plan',
  PlanReference: 'a plan with its week and day',
  UnitsHeader: 'kg or lb',
  DateStamp: 'a date such as 2026-11-17',
  Name: 'a name',
  PatternLine: 'a pattern such as squat',
  WorkLine: 'a kind of work such as strength',
  PositionLine: 'a position such as standing',
  TrunkLine: 'resists or moves, then a direction',
  RepMovesLine: 'each rep moves one, or each rep moves both',
  BodyShareLine: 'a share of body mass such as 69%',
  CountsLine: 'contacts',
  BarsLine: 'weights such as 20 kg, 10 kg',
  PlatesLine: 'plates such as 2x20, 4x10 kg',
  CollarsLine: 'a weight such as 2.5 kg',
  DumbbellsLine: 'a range such as 4-32 by 2 kg',
  KettlebellsLine: 'weights such as 16 kg, 24 kg',
  StacksLine: 'a name and a range such as 5-100 by 5 kg',
  BornLine: 'a year such as 1991',
  SexLine: 'female or male',
  AthleteUnitsLine: 'kg or lb',
  WeighInLine: 'a weight and a day such as 68.5 kg on 2026-10-01',
  MaxLine: 'a load and a day such as 105 kg on 2026-09-28',
  GoalLine: 'a set and a day such as 8 @ bw by 2027-06-01',
  RetestLine: 'two loads and a day such as 100, 102.5 kg on 2026-09-28',
  AvoidLine: 'until a day, or a comma and the reason',
  AwayLine: 'two days such as 2026-12-19 to 2027-01-03',
  ScreenedLine: 'a date such as 2026-11-17',
};

/** Behind these words something else is expected than what the rule around them begins with. */
const EXPECTED_BEHIND: Readonly<Record<string, string>> = {
  left: 'the right side such as 8 left 7 right',
  'Load of': 'a movement or bw such as 75% of Back Squat',
  of: 'a number such as 2 of 4 rounds',
  in: 'a time such as 1:32',
  'each rep': 'each rep moves one, or each rep moves both',
  to: 'a number such as to 16',
  from: 'a number of reps such as from 8',
  after: 'a number of misses',
  pin: 'a number such as pin 9',
  rpe: 'a number such as rpe 8',
  rir: 'a number such as rir 2',
  a: 'week',
  rest: 'a time such as 1:15',
};

/** Marks that the parser waits for, whatever the rule. */
const EXPECTED_MARKS: Readonly<Record<string, string>> = {
  ')': 'a closing )',
  '%': 'a % sign',
  right: 'the word right',
  band: 'a load such as 100 kg, bw, or red band',
  '/': 'a distance such as /500 m',
  of: 'of and a movement',
  a: 'a week',
  week: 'week',
  'Rating DISTANCE_UNIT': 'm/s',
  DISTANCE_UNIT: 'a unit such as m or km',
  TIME_UNIT: 'a unit of time such as h',
};

const FALLBACK = 'something else';

/**
 * Says in a coach's words where the parser stopped: `Expected a load such as 100 kg after @, found ,`. The parser knows
 * the rule it was in and the token that did not fit; that token knows the one before it; the tables know what is
 * written there.
 */
export class SyntaxMessages implements IParserErrorMessageProvider {
  buildMismatchTokenMessage(options: { expected: TokenType; actual: IToken; ruleName: string }): string {
    const { expected, actual, ruleName } = options;
    if (expected.name === 'NL') return describeRest(actual, ruleName);
    const mark = EXPECTED_MARKS[`${cleanName(ruleName)} ${expected.name}`] ?? EXPECTED_MARKS[expected.name];
    return mark === undefined ? describe(ruleName, actual) : describeMissing(mark, actual);
  }

  buildNotAllInputParsedMessage(options: { firstRedundant: IToken }): string {
    return describeRest(options.firstRedundant, '');
  }

  buildNoViableAltMessage(options: { actual: IToken[]; ruleName: string }): string {
    return describe(options.ruleName, options.actual[0]);
  }

  buildEarlyExitMessage(options: { actual: IToken[]; ruleName: string }): string {
    return describe(options.ruleName, options.actual[0]);
  }
}

function describe(ruleName: string, actual: IToken | undefined): string {
  const rule = cleanName(ruleName);
  const word = beforeOf(actual)?.image.toLowerCase() ?? '';
  const expected = EXPECTED_BEHIND[`${rule} ${word}`] ?? EXPECTED_BEHIND[word] ?? EXPECTED[rule];
  return describeMissing(expected ?? FALLBACK, actual);
}

function describeMissing(expected: string, actual: IToken | undefined): string {
  const before = beforeOf(actual);
  const after = before ? ` after ${show(before)}` : '';
  const found = actual?.image ? `, found ${show(actual)}` : '';
  return `Expected ${expected}${after}${found}`;
}

function beforeOf(token: IToken | undefined): IToken | undefined {
  return token?.payload as IToken | undefined;
}

/** What begins something of its own on a movement's line, and needs a comma before it. */
const OWN_ITEMS: ReadonlySet<string> = new Set([
  'tempo',
  'rest',
  'setting',
  'pain',
  'instead',
  'then',
  'after',
]);

/** More stands on the line than the rule takes. */
function describeRest(actual: IToken, ruleName: string): string {
  const before = beforeOf(actual);
  if (cleanName(ruleName) === 'MovementLine' && before) {
    const word = actual.image.toLowerCase();
    if (OWN_ITEMS.has(word)) return `Put a comma before ${word}`;
    if (actual.tokenType.name === 'NUMBER' && before.tokenType.name === 'NUMBER')
      return `Write @ before a load, or a comma before the next set: ${before.image} and ${actual.image} stand side by side`;
  }
  const expected = EXPECTED[cleanName(ruleName)];
  const after = before ? ` after ${show(before)}` : '';
  return `${show(actual)} does not fit${after}${expected ? `: expected ${expected}` : ''}`;
}

/** A token as it was written; punctuation that the sentence itself might hold stands in quotes. */
function show(token: IToken): string {
  const text = shorten(token.image);
  return /^[\x21\x22\x27\x2c-\x2e\x3a\x3b\x3f]+$/.test(text) ? `"${text}"` : text;
}

/** Langium marks its rule methods with a zero-width space. */
function cleanName(ruleName: string): string {
  return ruleName.replace('\u200b', '');
}
