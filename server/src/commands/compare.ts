import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import { describeRevision } from '@plimsoll/language/revisions/describe-revision';
import { printRevision } from '@plimsoll/language/revisions/print-revision';
import type { Revision } from '@plimsoll/language/revisions/revision';
import type { Terminal } from '../command-line.ts';
import { DEFAULT_SETTINGS } from '../settings.ts';
import { findCommit, findRepository, NoGit, type Repository } from './git.ts';
import { Misuse } from './misuse.ts';
import { readOptions, readToday } from './read-options.ts';
import { type Comparison, comparePaths, compareRevisions, type NamedCommit } from './read-versions.ts';

const HELP = `plimsoll compare [REVISION [REVISION]] [--] [paths] [--format text|json] [--today DATE]
plimsoll compare PATH PATH

Tells what changed in plans, movements, athletes, places and sessions, and what it costs: sets,
kilograms, hard sets and time. Without a revision it compares the files as they are with the last
commit (HEAD); with one revision, with that; with two, the first with the second. Paths say of
which files to tell; names are looked up in the whole repository. Two paths without a revision
are compared with each other.

Ends with 0, with 1 if a merge conflict kept something from being compared, with 2 if the command
was not understood. git reads objects only: no hook, filter or other program of a repository runs.
`;

export async function runCompare(args: string[], terminal: Terminal): Promise<number> {
  const mark = args.indexOf('--');
  const [before, behind] = mark < 0 ? [args, []] : [args.slice(0, mark), args.slice(mark + 1)];
  const { values, paths, help } = readOptions('compare', before, { format: ['text', 'json'], today: 'any' });
  if (help) {
    terminal.write(HELP);
    return 0;
  }
  const today = readToday(values.today, terminal.today);
  const comparison = await findComparison(paths, behind, mark >= 0, terminal.folder);
  const works = new SessionWorks(comparison.after.practice);
  const { formula, unit } = DEFAULT_SETTINGS;
  const options = { today, formula, unit, complete: true };
  const whole = describeRevision(comparison.before, comparison.after, works, options);
  const revision = narrow(whole, comparison.isShown);
  for (const complaint of comparison.complaints) terminal.writeError(`${complaint}\n`);
  const { since } = comparison;
  terminal.write(
    values.format === 'json'
      ? `${JSON.stringify({ since, today, ...revision }, undefined, 2)}\n`
      : plain(printRevision(revision, since)),
  );
  return revision.conflicts.length > 0 ? 1 : 0;
}

async function findComparison(
  words: readonly string[],
  behind: readonly string[],
  isMarked: boolean,
  folder: string,
): Promise<Comparison> {
  const repository = await findRepository(folder).catch((reason) => {
    if (reason instanceof NoGit) return reason;
    throw reason;
  });
  const revisions =
    repository instanceof NoGit ? [] : await takeRevisions(repository, words, isMarked, folder);
  const paths = [...words.slice(revisions.length), ...behind];
  if (revisions.length === 0 && !isMarked && paths.length > 0) {
    for (const path of paths) await findStatus(path, folder, repository);
    if (paths.length === 2) return comparePaths(paths[0]!, paths[1]!, folder);
    if (paths.length > 2)
      throw new Misuse(
        'Two paths are compared with each other; for more, name a revision before them: plimsoll compare HEAD …',
      );
  }
  if (repository instanceof NoGit) throw repository;
  return compareRevisions(repository, revisions, paths);
}

/** At most two words that name commits, from the first on. */
async function takeRevisions(
  repository: Repository,
  words: readonly string[],
  isMarked: boolean,
  folder: string,
): Promise<NamedCommit[]> {
  const revisions: NamedCommit[] = [];
  for (const name of words.slice(0, 2)) {
    const commit = await findCommit(repository, name);
    if (commit === undefined) break;
    const isPath = !isMarked && (await stat(resolve(folder, name)).catch(() => undefined)) !== undefined;
    if (isPath)
      throw new Misuse(
        `"${name}" is a revision and a path: write ./${name} for the path, or -- behind the revision.`,
      );
    revisions.push({ name, commit });
  }
  if (isMarked && revisions.length < words.length)
    throw new Misuse(`There is no revision "${words[revisions.length]}" in this repository.`);
  return revisions;
}

async function findStatus(path: string, folder: string, repository: Repository | NoGit) {
  const status = await stat(resolve(folder, path)).catch(() => undefined);
  if (!status) {
    const what = repository instanceof NoGit ? 'file or folder' : 'revision, file or folder';
    throw new Misuse(`There is no ${what} "${path}".`);
  }
  return status;
}

function narrow(revision: Revision, isShown: (path: string) => boolean): Revision {
  const shown = <T extends { readonly path: string }>(list: readonly T[]): T[] =>
    list.filter(({ path }) => isShown(path));
  return {
    conflicts: shown(revision.conflicts),
    files: revision.files.filter(
      (file) => isShown(file.path) || (file.change === 'renamed' && isShown(file.was)),
    ),
    plans: shown(revision.plans),
    sessions: shown(revision.sessions),
    definitions: shown(revision.definitions),
  };
}

/** A log must not steer the terminal. */
function plain(text: string): string {
  return text.replace(/(?![\t\n])\p{Cc}/gu, '\ufffd');
}
