import type { Block } from '@plimsoll/language/model/entry';
import { describeBlockRounds } from '@plimsoll/language/summaries/block-rounds';
import { joinLines } from '../../markdown.ts';
import { type FeatureContext, toLensOptions } from '../context.ts';
import type { WhoTrains } from './who-trains.ts';

const HEADINGS = { rounds: 'Round by round', pace: 'Pace' } as const;

/** On the header of a timed block: each round against the last time, and work to rest. */
export function describeRoundsSince(
  context: FeatureContext,
  block: Block,
  { record }: WhoTrains,
): string | undefined {
  if (!record) return undefined;
  const facts = describeBlockRounds(context.works, context.works.of(record), block, toLensOptions(context));
  return joinLines(facts.map(({ of, text }) => `${HEADINGS[of]}: ${text}`));
}
