import type { IsoDate } from '../calendar/iso-date.ts';
import { SessionWorks } from '../measures/session-work.ts';
import type { PlacedEntry } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';
import type { ReadFile } from '../reading/read-file.ts';
import { checkOrder, type FileProblem } from './check-calendar.ts';
import { checkConflict } from './check-conflict.ts';
import { checkUnitsTwice } from './check-definitions.ts';
import { checkIgnores } from './check-ignores.ts';
import { checkRareNames } from './check-rare-names.ts';
import { checkOnce, listOwn } from './checked-entries.ts';

export type { FileProblem } from './check-calendar.ts';

export interface CheckOptions {
  readonly today: IsoDate;
  /** Those of the caller, where it has sums of sessions already. */
  readonly works?: SessionWorks;
}

const worksByPractice = new WeakMap<Practice, SessionWorks>();

function findWorks(practice: Practice): SessionWorks {
  const works = worksByPractice.get(practice) ?? new SessionWorks(practice);
  worksByPractice.set(practice, works);
  return works;
}

/**
 * All that is wrong or worth telling in one file, by place: what reading found, what each entry shows by itself, and
 * what other entries and files make of it. Lines that say `# ignore code` keep quiet about that code.
 */
export function checkFile(
  practice: Practice,
  uri: string,
  { today, works = findWorks(practice) }: CheckOptions,
): readonly FileProblem[] {
  const ready = prepared.get(works);
  if (ready?.uri === uri && ready.edition === practice.edition && ready.today === today) return ready.found;
  const steps = look(practice, uri, { today, works });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

interface Prepared {
  readonly uri: string;
  readonly edition: number;
  readonly today: IsoDate;
  readonly found: readonly FileProblem[];
}

/** What was prepared last. */
const prepared = new WeakMap<SessionWorks, Prepared>();

/** The same step by step, for whoever has other things to do meanwhile: then {@link checkFile} has nothing left to do. */
export function* prepareCheck(
  practice: Practice,
  uri: string,
  { today, works = findWorks(practice) }: CheckOptions,
): Iterable<undefined> {
  const { edition } = practice;
  const found = yield* look(practice, uri, { today, works });
  // What was found before an edit need not be so behind it.
  if (practice.edition === edition) prepared.set(works, { uri, edition, today, found });
}

function* look(
  practice: Practice,
  uri: string,
  options: Required<CheckOptions>,
): Generator<undefined, readonly FileProblem[]> {
  const file = practice.file(uri);
  if (!file) return [];
  const found: FileProblem[] = [];
  for (const placed of file.model.entries) {
    for (const problem of checkPlaced(practice, uri, placed, options))
      found.push({ entryLine: placed.line, problem });
    yield;
  }
  found.push(...checkOrder(practice, file.model));
  yield;
  found.push(...checkRareNames(practice, file.model));
  yield;
  const conflicts = checkConflict(file);
  yield;
  return arrange(file, found, conflicts);
}

function checkPlaced(
  practice: Practice,
  uri: string,
  placed: PlacedEntry,
  options: Required<CheckOptions>,
): readonly Problem[] {
  const { entry, line } = placed;
  return checkOnce(entry, { practice, uri, line, records: practice.recordsOf(uri, placed), ...options });
}

/** What a file shows by itself, by place: all that can be said until the other files are read. */
export function checkFileAlone(practice: Practice, uri: string): readonly FileProblem[] {
  const file = practice.file(uri);
  if (!file) return [];
  return arrange(
    file,
    file.model.entries.flatMap(({ entry, line }) => place(line, listOwn(entry))),
    checkConflict(file),
  );
}

function place(entryLine: number, problems: readonly Problem[]): FileProblem[] {
  return problems.map((problem) => ({ entryLine, problem }));
}

/** With what a file shows as a whole and what a merge left, without what is ignored, in order of place. */
function arrange(
  file: ReadFile,
  found: readonly FileProblem[],
  conflicts: readonly FileProblem[],
): FileProblem[] {
  const ignored = listIgnored(file);
  // A marker is no line of the notation: nothing else is said of it.
  const markers = new Set(conflicts.map(lineOf));
  const ofTheFile = [...checkUnitsTwice(file.model), ...checkIgnores(file)];
  return [...found, ...ofTheFile]
    .filter((each) => !markers.has(lineOf(each)))
    .concat(conflicts)
    .filter((each) => !ignored.get(lineOf(each))?.has(each.problem.code))
    .sort((a, b) => lineOf(a) - lineOf(b) || a.problem.span.start - b.problem.span.start);
}

/** Codes by line of the file. A comment alone on its line speaks for the line below. */
function listIgnored(file: ReadFile): Map<number, Set<string>> {
  const ignored = new Map<number, Set<string>>();
  for (const { line: entryLine, entry } of file.model.entries) {
    for (const { line, codes } of entry.ignores) {
      const at = entryLine + line;
      const target = /^\s*#/.test(file.lines[at] ?? '') ? at + 1 : at;
      ignored.set(target, new Set([...(ignored.get(target) ?? []), ...codes]));
    }
  }
  return ignored;
}

function lineOf({ entryLine, problem }: FileProblem): number {
  return entryLine + problem.span.line;
}
