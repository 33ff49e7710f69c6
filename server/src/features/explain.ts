import { explain } from '@plimsoll/language/measures/explain';
import { describeLens } from '@plimsoll/language/summaries/file-lenses';
import type { ExplainParams, Explanation } from '../messages.ts';
import { toPlace } from './code-lens.ts';
import { type FeatureContext, toLensOptions } from './context.ts';

/** Where every number of a lens comes from, in Markdown; nothing once the lens has gone from that line. */
export function provideExplanation(
  context: FeatureContext,
  uri: string,
  { lens: id }: ExplainParams,
): Explanation {
  const place = toPlace(id);
  const lens = describeLens(context.works, uri, place, toLensOptions(context));
  const markdown = lens?.explain().map(explain).join('\n\n---\n\n') || null;
  return { uri: context.workspace.toClientUri(uri), line: place.line, markdown };
}
