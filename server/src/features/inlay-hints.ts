import { describeFileHints } from '@plimsoll/language/summaries/file-lenses';
import type { InlayHint, Range } from 'vscode-languageserver';
import { type FeatureContext, toLensOptions } from './context.ts';

/** The quiet facts at the ends of the lines in sight. */
export function provideInlayHints(context: FeatureContext, uri: string, { start, end }: Range): InlayHint[] {
  if (!context.settings.hints) return [];
  return describeFileHints(context.works, uri, toLensOptions(context))
    .filter(({ line }) => line >= start.line && line <= end.line)
    .map(({ line, column, text, tooltip }) => ({
      position: { line, character: column },
      label: text,
      tooltip,
      paddingLeft: true,
    }));
}
