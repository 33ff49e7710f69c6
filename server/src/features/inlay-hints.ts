import { describeFileHints } from '@plimsoll/language/summaries/file-lenses';
import type { InlayHint, Range } from 'vscode-languageserver';
import { type FeatureContext, toLensOptions } from './context.ts';
import { listPlateHints } from './plate-hints.ts';

/** The quiet facts at the ends of the lines in sight. */
export function provideInlayHints(context: FeatureContext, uri: string, range: Range): InlayHint[] {
  const { hints, plates } = context.settings;
  if (!hints) return [];
  return [...listFacts(context, uri, range), ...(plates ? listPlateHints(context, uri, range) : [])];
}

function listFacts(context: FeatureContext, uri: string, { start, end }: Range): InlayHint[] {
  return describeFileHints(context.works, uri, toLensOptions(context))
    .filter(({ line }) => line >= start.line && line <= end.line)
    .map(({ line, column, text, tooltip }) => ({
      position: { line, character: column },
      label: text,
      tooltip,
      paddingLeft: true,
    }));
}
