import { describeLens, listLensPlaces } from '@plimsoll/language/summaries/file-lenses';
import type { Lens, LensPlace } from '@plimsoll/language/summaries/lens';
import type { CodeLens, Command, Range } from 'vscode-languageserver';
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
 * The lenses over a file's sessions, plans, blocks and lines; of a long file those about what the editor shows, if it
 * tells that. Words are worked out for the ones in sight alone, so that it need not ask one by one after each keystroke,
 * and elsewhere when it asks. Those that an edit did not change come with their words too. Over a plan also what it
 * costs since the last commit.
 */
export function provideCodeLenses(context: FeatureContext, uri: string): CodeLens[] {
  const shown = SHOWN[context.settings.lenses];
  if (shown.length === 0) return [];
  const file = numbers.get(uri) ?? numbered.push(uri) - 1;
  numbers.set(uri, file);
  const { works, sight } = context;
  const lines = { given: sight.give(uri), worded: sight.of(uri) };
  const lenses = listLensPlaces(works, uri, toLensOptions(context), lines)
    .filter(({ kind }) => shown.includes(kind))
    .map(({ kind, line, nth, text }): CodeLens => {
      const start = { line, character: 0 };
      const range = { start, end: start };
      if (text !== undefined) return { range, command: toCommand(context, uri, range, kind, text) };
      return { range, data: [file, kind, nth] satisfies LensData };
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
  context.sight.note(uri, range.start.line);
  const [, kind, nth] = lens.data as LensData;
  const place: LensPlace = { kind, line: range.start.line, nth };
  const title = describeLens(context.works, uri, place, toLensOptions(context))?.text ?? '';
  return { range, command: toCommand(context, uri, range, kind, title) };
}

function toCommand(
  { workspace }: FeatureContext,
  uri: string,
  range: Range,
  id: Lens['kind'],
  title: string,
): Command {
  const params: ExplainParams = { uri: workspace.toClientUri(uri), range, id };
  return { title, command: 'plimsoll.explain', arguments: [params] };
}
