import { describeFileHints } from '@plimsoll/language/summaries/file-lenses';
import { describePercentHints } from '@plimsoll/language/summaries/percent-hints';
import type { InlayHint, Range } from 'vscode-languageserver';
import { type FeatureContext, toLensOptions } from './context.ts';
import { listPlateHints } from './plate-hints.ts';

/** The quiet facts in the lines in sight: at their ends, and kilograms behind percentages. */
export function provideInlayHints(context: FeatureContext, uri: string, range: Range): InlayHint[] {
  const { hints, plates } = context.settings;
  if (!hints) return [];
  return [...listFacts(context, uri, range), ...(plates ? listPlateHints(context, uri, range) : [])];
}

function listFacts(context: FeatureContext, uri: string, { start, end }: Range): InlayHint[] {
  const lines = { first: start.line, last: end.line };
  const options = toLensOptions(context);
  const plans = (context.practice.file(uri)?.model.entries ?? []).filter(
    ({ line, entry }) => entry.kind === 'plan' && line <= end.line && line + entry.lineCount > start.line,
  );
  const percentages = plans.flatMap((placed) => describePercentHints(context.works, placed, options));
  return [...describeFileHints(context.works, uri, options, lines), ...percentages]
    .filter(({ line }) => line >= start.line && line <= end.line)
    .map(({ line, column, text, tooltip }) => ({
      position: { line, character: column },
      label: text,
      tooltip,
      paddingLeft: true,
    }));
}
