import { explain } from '@plimsoll/language/measures/explain';
import { describeLens } from '@plimsoll/language/summaries/file-lenses';
import type { Lens } from '@plimsoll/language/summaries/lens';
import type { ExplainParams } from '../messages.ts';
import { type FeatureContext, toLensOptions } from './context.ts';

/** Where every number of a lens comes from, in Markdown; nothing once the lens has gone from that line. */
export function provideExplanation(
  context: FeatureContext,
  uri: string,
  { range, id }: ExplainParams,
): string | undefined {
  const place = { kind: id as Lens['kind'], line: range.start.line, nth: 0 };
  const lens = describeLens(context.works, uri, place, toLensOptions(context));
  return lens?.results.map(explain).join('\n\n---\n\n') || undefined;
}
