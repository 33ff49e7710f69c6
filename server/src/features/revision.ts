import type { Located } from '@plimsoll/language/practice/locate';
import { describeRevision } from '@plimsoll/language/revisions/describe-revision';
import { outlineRevision, type RevisionSection } from '@plimsoll/language/revisions/outline-revision';
import type { Revision } from '@plimsoll/language/revisions/revision';
import { describeRevisionLenses, summarisePlan } from '@plimsoll/language/revisions/revision-lens';
import { foldName } from '@plimsoll/language/text/names';
import type { CodeLens } from 'vscode-languageserver';
import type { Committed } from '../committed-texts.ts';
import { escapeMarkdown, joinParagraphs } from '../markdown.ts';
import type { NoCommittedText } from '../messages.ts';
import { type FeatureContext, toLensOptions } from './context.ts';

const SINCE = 'HEAD';

const WHY: Readonly<Record<NoCommittedText, string>> = {
  restricted:
    'What this plan costs since the last commit is not known in Restricted Mode: git is asked in trusted folders only.',
  'no git':
    'What this plan costs since the last commit is not known: git, or the Git extension of the editor, is missing or turned off.',
  'no repository':
    'What this plan costs since the last commit is not known: the file is in no git repository that the editor has opened.',
  'not committed': 'This file is not committed yet, so there is nothing to compare the plan with.',
};

/** Over each plan that changed since the last commit, what that costs; a click shows all that changed. */
export function provideRevisionLenses(context: FeatureContext, uri: string): CodeLens[] {
  const revision = findRevision(context, uri);
  if (!revision) return [];
  const command = 'plimsoll.showRevision';
  return describeRevisionLenses(revision, SINCE).map(({ line, text }) => {
    const start = { line, character: 0 };
    const shown = context.workspace.toClientUri(uri);
    return { range: { start, end: start }, command: { title: text, command, arguments: [shown] } };
  });
}

/** On a plan's header: what it costs since the last commit, or why that is not known. */
export function describeCommitted(
  context: FeatureContext,
  uri: string,
  located: Located,
): string | undefined {
  const { entry } = located.placed;
  const known = context.committed?.find(uri);
  if (entry.kind !== 'plan' || !known || located.span.line !== entry.header.line) return undefined;
  if (known.missing !== undefined) return WHY[known.missing];
  const name = foldName(entry.name?.text ?? '');
  const plan = findRevision(context, uri)?.plans.find(
    (each) => each.change !== 'removed' && foldName(each.name) === name,
  );
  return plan && `Since ${SINCE}: ${escapeMarkdown(summarisePlan(plan))}`;
}

/** All that changed in a log since the last commit, in Markdown that reads well as it is. */
export function provideRevision(context: FeatureContext, uri: string): string {
  const known = context.committed?.find(uri);
  if (known?.missing !== undefined) return `${WHY[known.missing]}\n`;
  const revision = findRevision(context, uri);
  if (!revision) return 'What changed is not known yet: the logs are being read.\n';
  const sections = outlineRevision(revision, SINCE);
  if (sections.length === 0) return `Nothing that counts has changed since ${SINCE}.\n`;
  return `${joinParagraphs(sections.map(printSection))}\n`;
}

function printSection({ title, lines, tables }: RevisionSection): string {
  const list = lines
    .map(({ depth, text }) => `${'  '.repeat(depth - 1)}- ${escapeMarkdown(text)}`)
    .join('\n');
  return joinParagraphs([`## ${escapeMarkdown(title)}`, list, ...tables.map(printTable)]);
}

function printTable({ head, rows }: RevisionSection['tables'][number]): string {
  const print = (cells: readonly string[]): string => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
  return [print(head), `|${head.map(() => ' --- |').join('')}`, ...rows.map(print)].join('\n');
}

interface Remembered {
  readonly basis: readonly unknown[];
  readonly revision: Revision;
}

const remembered = new WeakMap<NonNullable<Committed['practice']>, Remembered>();

/** Worked out again only when something that it rests on changed; nothing until all logs are read. */
function findRevision(context: FeatureContext, uri: string): Revision | undefined {
  const { practice, works, workspace, committed } = context;
  const before = committed?.find(uri)?.practice;
  const file = practice.file(uri);
  if (!before || !file || !workspace.complete) return undefined;
  const options = toLensOptions(context);
  const athletes = file.model.entries.flatMap(({ entry }) =>
    entry.kind === 'plan' ? entry.athletes.map(({ text }) => practice.sessionsOf(text)) : [],
  );
  const { today, unit, formula } = options;
  const basis = [
    file.model,
    practice.definitionsVersion,
    practice.sessionsOf(practice.resolveAthlete('')),
    today,
    unit,
    formula,
    ...athletes,
  ];
  const known = remembered.get(before);
  if (
    known &&
    known.basis.length === basis.length &&
    basis.every((part, index) => part === known.basis[index])
  )
    return known.revision;
  const paths = [uri];
  const revision = describeRevision({ practice: before, paths }, { practice, paths }, works, options);
  remembered.set(before, { basis, revision });
  return revision;
}
