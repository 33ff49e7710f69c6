import { type Located, locate } from '@plimsoll/language/practice/locate';
import { findHelp } from '@plimsoll/language/vocabulary/help';
import { type Hover, MarkupKind, type Position } from 'vscode-languageserver';
import { joinParagraphs } from '../markdown.ts';
import { type FeatureContext, toRange } from './context.ts';
import { hoverAmount } from './hover/amount.ts';
import { hoverAthlete } from './hover/athlete.ts';
import { describeCircuitHelp } from './hover/circuit.ts';
import { hoverDate } from './hover/date.ts';
import { hoverLoad } from './hover/load.ts';
import { hoverAvoided, hoverMovement } from './hover/movement.ts';
import { hoverPlace } from './hover/place.ts';
import { hoverPlan } from './hover/plan.ts';
import { describeLineWeeks } from './hover/plan-weeks.ts';
import { hoverRating } from './hover/rating.ts';
import { describeDensitySeries } from './hover/series.ts';
import { findWhoTrains } from './hover/who-trains.ts';
import { describeCommitted } from './revision.ts';

type Kind = Located['kind'];
export type LocatedAs<K extends Kind> = Extract<Located, { kind: K }>;
type Describe<K extends Kind> = (
  context: FeatureContext,
  uri: string,
  located: LocatedAs<K>,
) => string | undefined;

const DESCRIBERS: { readonly [K in Kind]: Describe<K> } = {
  movement: hoverMovement,
  avoided: hoverAvoided,
  athlete: hoverAthlete,
  place: hoverPlace,
  plan: hoverPlan,
  date: hoverDate,
  amount: hoverAmount,
  load: hoverLoad,
  rating: hoverRating,
  term: (_context, _uri, { word }) => findHelp(word),
  word: hoverWord,
};

/** What a word means; of a block's also how its density went on, and help with a circuit. */
function hoverWord(context: FeatureContext, uri: string, located: LocatedAs<'word'>): string | undefined {
  const { word, block } = located;
  const who = block && block.kind === word ? findWhoTrains(context.practice, uri, located) : undefined;
  return joinParagraphs([
    findHelp(word),
    describeCircuitHelp(context, located),
    who && describeDensitySeries(context, block!, who),
  ]);
}

/** What stands under the cursor, in Markdown. */
export function provideHover(context: FeatureContext, uri: string, position: Position): Hover | undefined {
  const file = context.practice.file(uri);
  const located = file && locate(file.model, position.line, position.character);
  if (!located) return undefined;
  const describe = DESCRIBERS[located.kind] as Describe<Kind>;
  const value = joinParagraphs([
    describe(context, uri, located),
    describeLineWeeks(context, located),
    describeCommitted(context, uri, located),
  ]);
  if (value === '') return undefined;
  return {
    contents: { kind: MarkupKind.Markdown, value },
    // Of a word the model knows only roughly where it begins; the editor marks what is under the cursor by itself.
    ...(located.kind !== 'word' && { range: toRange(located.placed.line, located.span) }),
  };
}
