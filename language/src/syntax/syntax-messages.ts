import type { IParserErrorMessageProvider, IToken, TokenType } from 'chevrotain';

/** What a coach would write in the place where a rule of the grammar did not go on. */
const EXPECTED: Readonly<Record<string, string>> = {
  At: 'a load such as 100 kg',
  Load: 'a load such as 100 kg',
  Mass: 'a weight such as 20 kg',
  RightMass: 'a weight such as 20 kg right',
  Extra: 'a weight, a pin or a band',
  MassRange: 'a range such as 4-32 by 2 kg',
  Amount: 'reps, a time or a distance',
  SetGroup: 'a set such as 3x5 @ 85 kg',
  Drop: 'a smaller set such as 8 @ 14 kg',
  Side: 'both sides such as 8 left 7 right',
  PerSide: '/side',
  ClusterPart: 'mini-sets such as 2+2+2',
  Quantity: 'a number with its unit such as 30 s',
  Duration: 'a time such as 1:30 or 45 s',
  Rating: 'a rating such as rpe 8',
  Modifier: 'tempo, rest, setting, pain or a step',
  Step: 'a step such as +2.5 kg each week',
  RestStep: 'a step such as -10 s each week',
  Cell: 'a set such as 3x5 @ 85 kg',
  NextCell: 'a set such as 3x5 @ 85 kg',
  CellItem: 'a set such as 3x5 @ 85 kg',
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
  ForLine: "an athlete's name",
  AtLine: "a place's name",
  StartsLine: 'a date such as 2026-11-17',
  FollowsLine: "a plan's name",
  WeeksLine: 'a number of weeks',
  DeloadLine: 'week 6, sets 50%, load 90%',
  DeloadShare: 'sets 50% or load 90%',
  DaysLine: 'days such as Mon, Wed, Fri or alternate, 3 a week',
  Weekday: 'a day such as Mon',
  DayLine: 'a number and a name',
  TrainingMaxLine: 'a share such as training max 90%',
  SessionHeader: 'a date, an athlete, at a place, then a plan',
  PlanReference: 'a plan with its week and day',
  UnitsHeader: 'kg or lb',
  ExerciseHeader: "a movement's name",
  PlaceHeader: "a place's name",
  AthleteHeader: "an athlete's name",
  PlanHeader: "a plan's name",
  DateStamp: 'a date such as 2026-11-17',
  Name: 'a name',
  Text: 'text',
  PatternLine: 'a pattern such as squat',
  WorkLine: 'a kind of work such as strength',
  PositionLine: 'a position such as standing',
  TrunkLine: 'resists or moves, then a direction',
  MusclesLine: 'muscles such as quadriceps, adductors 1/2',
  Muscle: 'muscles such as quadriceps, adductors 1/2',
  Fraction: 'a share such as 1/2',
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

/** Rules whose whole line reads better from its first word. */
const FALLBACK = 'something else';

/**
 * Says in a coach's words where the parser stopped: `Expected a load such as 100 kg after "@"`.
 * The parser knows the rule it was in and the token before; the table knows what is written there.
 */
export class SyntaxMessages implements IParserErrorMessageProvider {
  buildMismatchTokenMessage(options: { expected: TokenType; actual: IToken; previous: IToken; ruleName: string }): string {
    const { expected, actual, previous, ruleName } = options;
    if (expected.name === 'NL') return describeRest(actual, previous, ruleName);
    return describe(ruleName, previous, actual);
  }

  buildNotAllInputParsedMessage(options: { firstRedundant: IToken; ruleName: string }): string {
    return `Nothing can be made of "${options.firstRedundant.image}" here`;
  }

  buildNoViableAltMessage(options: { actual: IToken[]; previous: IToken; ruleName: string }): string {
    return describe(options.ruleName, options.previous, options.actual[0]);
  }

  buildEarlyExitMessage(options: { actual: IToken[]; previous: IToken; ruleName: string }): string {
    return describe(options.ruleName, options.previous, options.actual[0]);
  }
}

function describe(ruleName: string, previous: IToken | undefined, actual: IToken | undefined): string {
  const expected = EXPECTED[cleanName(ruleName)] ?? FALLBACK;
  const after = previous?.image ? ` after "${previous.image}"` : '';
  const found = actual?.image ? `, found "${actual.image}"` : '';
  return `Expected ${expected}${after}${found}`;
}

/** More stands on the line than the rule takes. */
function describeRest(actual: IToken, previous: IToken, ruleName: string): string {
  const expected = EXPECTED[cleanName(ruleName)];
  const after = previous.image ? ` after "${previous.image}"` : '';
  return `Nothing can be made of "${actual.image}"${after}${expected ? `; this line takes ${expected}` : ''}`;
}

/** Langium marks its rule methods with a zero-width space. */
function cleanName(ruleName: string): string {
  return ruleName.replace('\u200b', '');
}
