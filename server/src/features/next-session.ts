import { type NextSession, toInsertion, writeNextSession } from '@plimsoll/language/plans/next-session';
import { nameAthlete } from '@plimsoll/language/plans/next-turn';
import { foldName } from '@plimsoll/language/text/names';
import {
  type CodeAction,
  type CodeActionParams,
  CreateFile,
  type Position,
  type Range,
  type TextDocumentEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import type { NextSessionAnswer, NextSessionParams } from '../messages.ts';
import { type FeatureContext, toLensOptions } from './context.ts';

/** A kind of its own, so that an editor can bind it to a key. */
export const NEXT_SESSION_KIND = 'source.nextSession';

const NOT_YET = 'The logs are still being read: try again in a moment';

/** On the header of a session, a plan or an athlete: to write the next session of each of its athletes. */
export function provideNextSessionActions(
  context: FeatureContext,
  uri: string,
  { range, context: { only } }: Pick<CodeActionParams, 'range' | 'context'>,
): CodeAction[] {
  const isAsked = !only || only.some((kind) => kind === '' || `${NEXT_SESSION_KIND}.`.startsWith(`${kind}.`));
  if (!isAsked || !context.workspace.complete) return [];
  const { athletes, plan } = readSpot(context, uri, range.start.line, 'header');
  return athletes.flatMap((athlete): CodeAction[] => {
    const next = write(context, uri, athlete, plan);
    if ('refused' in next) return [];
    const name = nameAthlete(context.practice, athlete);
    const title = `Write the next session${name ? ` of ${name}` : ''}: ${next.date}`;
    return [{ title, kind: NEXT_SESSION_KIND, edit: toEdit(context, next) }];
  });
}

/** For the command: the edit, or who to choose from, or why there is none. */
export function provideNextSession(
  context: FeatureContext,
  uri: string,
  { position, athlete }: NextSessionParams,
): NextSessionAnswer {
  const { practice, workspace } = context;
  if (!workspace.complete) return { kind: 'refused', why: NOT_YET };
  const chosen = athlete === undefined ? undefined : [foldName(athlete)];
  const spot = position ? readSpot(context, uri, position.line, 'entry') : NOBODY;
  const athletes = chosen ?? spot.athletes;
  const candidates = athletes.length > 0 ? athletes : practice.athleteKeys();
  const [only, ...others] = candidates;
  if (only === undefined) return { kind: 'refused', why: 'No log names an athlete yet' };
  if (others.length > 0)
    return { kind: 'choose', athletes: candidates.map((key) => nameAthlete(practice, key)) };
  const next = write(context, uri, only, spot.plan);
  if ('refused' in next) return { kind: 'refused', why: next.refused };
  return {
    kind: 'written',
    edit: toEdit(context, next),
    uri: workspace.toClientUri(next.place.uri),
    line: next.place.column === 0 ? next.place.line : next.place.line + 2,
  };
}

function write(context: FeatureContext, uri: string, athlete: string, plan: string | undefined) {
  const { today, formula, unit } = toLensOptions(context);
  const options = { athlete, today, formula, unit, fallback: uri, ...(plan !== undefined && { plan }) };
  return writeNextSession(context.works, options);
}

/** Folded names: whose session is meant, and of which plan. */
interface Spot {
  readonly athletes: readonly string[];
  readonly plan?: string;
}

const NOBODY: Spot = { athletes: [] };

/** Of the entry that a line is in, or only where the line is its header; else of nobody. */
function readSpot({ practice }: FeatureContext, uri: string, line: number, where: 'header' | 'entry'): Spot {
  const placed = practice.file(uri)?.model.entries.findLast((each) => each.line <= line);
  if (!placed || (where === 'header' && placed.line !== line)) return NOBODY;
  const { entry } = placed;
  switch (entry.kind) {
    case 'session': {
      const athletes = practice.recordsOf(uri, placed).map(({ athlete }) => athlete);
      return { athletes, ...(entry.plan && { plan: foldName(entry.plan.name.text) }) };
    }
    case 'plan': {
      const named = entry.athletes.map(({ text }) => foldName(text));
      const athletes = named.length > 0 ? named : [practice.resolveAthlete('')];
      return { athletes, ...(entry.name && { plan: foldName(entry.name.text) }) };
    }
    case 'athlete':
      return entry.name ? { athletes: [foldName(entry.name.text)] } : NOBODY;
    default:
      return NOBODY;
  }
}

/** One edit, so that one undo takes it back; a file that is not there yet is made by it. */
function toEdit({ workspace }: FeatureContext, next: NextSession): WorkspaceEdit {
  const { place } = next;
  const uri = workspace.toClientUri(place.uri);
  const at: Position = { line: place.line, character: place.column };
  const range: Range = { start: at, end: at };
  const lineEnd = /\r\n?|\n/.exec(workspace.textOf(place.uri) ?? '')?.[0] ?? '\n';
  const change: TextDocumentEdit = {
    textDocument: { uri, version: workspace.versionOf(place.uri) ?? null },
    edits: [{ range, newText: toInsertion(next).replaceAll('\n', lineEnd) }],
  };
  return {
    documentChanges: place.isNew ? [CreateFile.create(uri, { ignoreIfExists: true }), change] : [change],
  };
}
