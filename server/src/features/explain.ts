import { explain } from '@plimsoll/language/measures/explain';
import { describeLenses } from '@plimsoll/language/summaries/file-lenses';
import type { ExplainParams } from '../messages.ts';
import { type FeatureContext, toLensOptions } from './context.ts';

/** Where every number of a lens comes from, in Markdown; nothing once the lens has gone from that line. */
export function provideExplanation(
  context: FeatureContext,
  uri: string,
  { range, id }: ExplainParams,
): string | undefined {
  const lens = describeLenses(context.works, uri, toLensOptions(context)).find(
    ({ kind, line }) => kind === id && line === range.start.line,
  );
  return lens?.results.map(explain).join('\n\n---\n\n') || undefined;
}
