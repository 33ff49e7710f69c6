import { describeLens, listLensPlaces } from '@plimsoll/language/summaries/file-lenses';
import type { Lens, LensPlace } from '@plimsoll/language/summaries/lens';
import type { CodeLens, Command } from 'vscode-languageserver';
import type { ExplainParams, LensId } from '../messages.ts';
import type { Settings } from '../settings.ts';
import { type FeatureContext, toLensOptions } from './context.ts';
import { provideRevisionLenses } from './revision.ts';

const SHOWN: Readonly<Record<Settings['lenses'], readonly Lens['kind'][]>> = {
  all: ['session', 'plan', 'block', 'line'],
  blocks: ['session', 'plan', 'block'],
  sessions: ['session', 'plan'],
  none: [],
};

/** Files by the numbers that stand for them in lenses, from one on that another server hardly began with. */
const numbered: string[] = [];
const FIRST = Math.floor(Math.random() * 1_000);
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
  const file = numbers.get(uri) ?? FIRST + numbered.push(uri) - 1;
  numbers.set(uri, file);
  const { works, sight } = context;
  const lines = { given: sight.give(uri), worded: sight.of(uri) };
  const lenses = listLensPlaces(works, uri, toLensOptions(context), lines)
    .filter(({ kind }) => shown.includes(kind))
    .map(({ kind, line, nth, text }): CodeLens => {
      const start = { line, character: 0 };
      const range = { start, end: start };
      const id: LensId = [file, line, kind, nth];
      return text === undefined ? { range, data: id } : { range, command: toCommand(id, text) };
    });
  // First, for a narrow window cuts off what stands behind.
  return [...provideRevisionLenses(context, uri), ...lenses];
}

/** The file that a lens stands in; undefined for one of another server. */
export function findLensFile([file]: LensId): string | undefined {
  return numbered[file - FIRST];
}

/**
 * A lens with its words, a click on which explains its numbers. Where the text has no such lens any more it says
 * nothing, for the editor takes a lens without words for a mistake; it asks again after each change.
 */
export function resolveCodeLens(context: FeatureContext, lens: CodeLens): CodeLens {
  const id = lens.data as LensId | undefined;
  const uri = id && findLensFile(id);
  if (uri === undefined) return lens;
  const place = toPlace(id!);
  context.sight.note(uri, place.line);
  const title = describeLens(context.works, uri, place, toLensOptions(context))?.text ?? '';
  return { range: lens.range, command: toCommand(id!, title) };
}

export function toPlace([, line, kind, nth]: LensId): LensPlace {
  return { kind: kind as LensPlace['kind'], line, nth };
}

function toCommand(lens: LensId, title: string): Command {
  return { title, command: 'plimsoll.explain', arguments: [{ lens } satisfies ExplainParams] };
}
