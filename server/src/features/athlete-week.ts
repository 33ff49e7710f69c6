import { describeAthleteWeek } from '@plimsoll/language/summaries/athlete-week';
import type { Position } from 'vscode-languageserver';
import type { AthleteWeek } from '../messages.ts';
import { type FeatureContext, toLensOptions } from './context.ts';

/** The week of the athlete at the cursor, for the editor's status. */
export function provideAthleteWeek(
  context: FeatureContext,
  uri: string,
  { line, character }: Position,
): AthleteWeek | undefined {
  return describeAthleteWeek(context.works, uri, line, character, toLensOptions(context));
}
