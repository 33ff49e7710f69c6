import { describeLens, listLensPlaces } from '@plimsoll/language/summaries/file-lenses';
import type { Lens, LensPlace } from '@plimsoll/language/summaries/lens';
import type { CodeLens } from 'vscode-languageserver';
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

/** Which lens it is, beside its line. Short, for a file has hundreds of them and each keystroke sends all. */
type LensData = readonly [file: number, kind: Lens['kind'], nth: number];

/** Files by the numbers that stand for them in lenses. */
const numbered: string[] = [];
const numbers = new Map<string, number>();

/**
 * The lenses over a file's sessions, plans, blocks and lines, still without their words: those are worked out for the
 * ones in sight alone, when the editor asks for them. Over a plan also what it costs since the last commit.
 */
export function provideCodeLenses(context: FeatureContext, uri: string): CodeLens[] {
  const shown = SHOWN[context.settings.lenses];
  if (shown.length === 0) return [];
  const file = numbers.get(uri) ?? numbered.push(uri) - 1;
  numbers.set(uri, file);
  const lenses = listLensPlaces(context.works, uri, toLensOptions(context))
    .filter(({ kind }) => shown.includes(kind))
    .map(({ kind, line, nth }): CodeLens => {
      const start = { line, character: 0 };
      return { range: { start, end: start }, data: [file, kind, nth] satisfies LensData };
    });
  // First, for a narrow window cuts off what stands behind.
  return [...provideRevisionLenses(context, uri), ...lenses];
}

/** The file that a lens stands in; undefined for one that needs nothing more. */
export function findLensFile({ data }: CodeLens): string | undefined {
  return numbered[(data as LensData | undefined)?.[0] ?? -1];
}

/**
 * A lens with its words, a click on which explains its numbers. Where the text has no such lens any more it says
 * nothing, for the editor takes a lens without words for a mistake; it asks again after each change.
 */
export function resolveCodeLens(context: FeatureContext, lens: CodeLens): CodeLens {
  const uri = findLensFile(lens);
  if (uri === undefined) return lens;
  const { range } = lens;
  const [, kind, nth] = lens.data as LensData;
  const place: LensPlace = { kind, line: range.start.line, nth };
  const title = describeLens(context.works, uri, place, toLensOptions(context))?.text ?? '';
  const params: ExplainParams = { uri: context.workspace.toClientUri(uri), range, id: kind };
  return { range, command: { title, command: 'plimsoll.explain', arguments: [params] } };
}
