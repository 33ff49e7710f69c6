import { describeLenses } from '@plimsoll/language/summaries/file-lenses';
import type { Lens } from '@plimsoll/language/summaries/lens';
import type { CodeLens, Range } from 'vscode-languageserver';
import type { ExplainParams } from '../messages.ts';
import type { Settings } from '../settings.ts';
import { type FeatureContext, toLensOptions } from './context.ts';
import { provideRevisionLenses } from './revision.ts';

const SHOWN: Readonly<Record<Settings['lenses'], readonly Lens['kind'][]>> = {
  all: ['session', 'plan', 'block', 'line'],
  blocks: ['session', 'plan', 'block'],
  sessions: ['session', 'plan'],
  none: [],
};

/** The lenses over a file's sessions, plans, blocks and lines, a click on which explains their numbers; over a plan also what it costs since the last commit. */
export function provideCodeLenses(context: FeatureContext, uri: string): CodeLens[] {
  const shown = SHOWN[context.settings.lenses];
  if (shown.length === 0) return [];
  const lenses = describeLenses(context.works, uri, toLensOptions(context))
    .filter(({ kind }) => shown.includes(kind))
    .map((lens) => toCodeLens(context, uri, lens));
  // First, for a narrow window cuts off what stands behind.
  return [...provideRevisionLenses(context, uri), ...lenses];
}

function toCodeLens({ workspace }: FeatureContext, uri: string, { kind, line, text }: Lens): CodeLens {
  const start = { line, character: 0 };
  const range: Range = { start, end: start };
  const params: ExplainParams = { uri: workspace.toClientUri(uri), range, id: kind };
  return { range, command: { title: text, command: 'plimsoll.explain', arguments: [params] } };
}
