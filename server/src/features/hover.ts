import { type Located, locate } from '@plimsoll/language/practice/locate';
import { locateToken } from '@plimsoll/language/practice/locate-token';
import { findHelp } from '@plimsoll/language/vocabulary/help';
import { type Hover, MarkupKind, type Position } from 'vscode-languageserver';
import { joinParagraphs } from '../markdown.ts';
import { type FeatureContext, toRange } from './context.ts';
import { hoverAmount } from './hover/amount.ts';
import { hoverAthlete } from './hover/athlete.ts';
import { hoverCheck } from './hover/check.ts';
import { describeCircuitHelp } from './hover/circuit.ts';
import { hoverDate } from './hover/date.ts';
import { describeFactSeries } from './hover/fact-series.ts';
import { hoverLoad } from './hover/load.ts';
import { hoverAvoided, hoverMovement } from './hover/movement.ts';
import { hoverPlace } from './hover/place.ts';
import { hoverPlan } from './hover/plan.ts';
import { describeLineWeeks } from './hover/plan-weeks.ts';
import { hoverRating } from './hover/rating.ts';
import { describeRoundsSince } from './hover/rounds.ts';
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
  check: (_context, _uri, { code }) => hoverCheck(code),
};

/** What a word means; of a block's also how its density went on, and help with a circuit. */
function hoverWord(context: FeatureContext, uri: string, located: LocatedAs<'word'>): string | undefined {
  const { word, block } = located;
  const who = block && block.kind === word ? findWhoTrains(context.practice, uri, located) : undefined;
  return joinParagraphs([
    findHelp(word),
    describeCircuitHelp(context, located),
    who && describeRoundsSince(context, block!, who),
    who && describeDensitySeries(context, block!, who),
    describeFactSeries(context, uri, located),
  ]);
}

/**
 * Of a place that the facts know only by the word that opens it, the token under the cursor says more; of all else the
 * facts do.
 */
function choose(found: Located | undefined, token: Located | undefined): Located | undefined {
  if (found?.kind !== 'word' || !token) return found ?? token;
  return token.kind === 'word' && token.word === found.word ? found : token;
}

function describeAll(context: FeatureContext, uri: string, located: Located): string {
  const describe = DESCRIBERS[located.kind] as Describe<Kind>;
  return joinParagraphs([
    describe(context, uri, located),
    describeLineWeeks(context, located),
    describeCommitted(context, uri, located),
  ]);
}

/** What stands under the cursor, in Markdown. */
export function provideHover(context: FeatureContext, uri: string, position: Position): Hover | undefined {
  const file = context.practice.file(uri);
  const found = file && locate(file.model, position.line, position.character);
  const token = file && locateToken(file, position.line, position.character);
  const located = choose(found, token);
  if (!located) return undefined;
  const value = describeAll(context, uri, located) || (token ? describeAll(context, uri, token) : '');
  if (value === '') return undefined;
  return {
    contents: { kind: MarkupKind.Markdown, value },
    // Of a word the model knows only roughly where it begins; the editor marks what is under the cursor by itself.
    ...(located.kind !== 'word' && { range: toRange(located.placed.line, located.span) }),
  };
}
