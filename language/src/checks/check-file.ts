import type { IsoDate } from '../calendar/iso-date.ts';
import { SessionWorks } from '../measures/session-work.ts';
import type { Entry, PlacedEntry, SessionEntry } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';
import { isSamePast } from '../practice/same-past.ts';
import type { ReadFile } from '../reading/read-file.ts';
import { settle } from '../reading/settle.ts';
import { checkAvoid } from './check-avoid.ts';
import {
  checkAway,
  checkFuture,
  checkOrder,
  checkTwice,
  checkWhose,
  type FileProblem,
} from './check-calendar.ts';
import { checkLayoff, checkMaxTest, checkPain, checkYouth } from './check-cautions.ts';
import { checkConflict } from './check-conflict.ts';
import { type BlockLine, type CheckContext, collect } from './check-context.ts';
import { checkDefinedTwice, checkUnitsTwice } from './check-definitions.ts';
import { checkHeavy } from './check-heavy.ts';
import { checkHoldReps } from './check-hold-reps.ts';
import { checkIgnores } from './check-ignores.ts';
import { checkLoadJump } from './check-load-jump.ts';
import { checkLineNames, checkNames } from './check-names.ts';
import { checkNoLoad } from './check-no-load.ts';
import { checkOneBar } from './check-one-bar.ts';
import { checkOneOrTwo } from './check-one-or-two.ts';
import { checkPlace } from './check-place.ts';
import { checkPlan } from './check-plan.ts';
import { checkPlanDay } from './check-plan-day.ts';
import { checkProgress } from './check-progress.ts';
import { checkRareNames } from './check-rare-names.ts';
import { checkStrays } from './check-strays.ts';
import { checkWeekJump } from './check-week-jump.ts';
import { checkEntry } from './entry-checks.ts';
import { askLines, type LineCheck, listDoubtful } from './line-checks.ts';

export type { FileProblem } from './check-calendar.ts';

type Check<E extends Entry> = (entry: E, context: CheckContext) => Iterable<Problem>;

/** What rests on an entry and on definitions: for every entry, and for some kinds beside that. */
const EVERY: readonly Check<Entry>[] = [checkNames, checkStrays];
const BY_KIND: { readonly [K in Entry['kind']]?: readonly Check<Extract<Entry, { kind: K }>>[] } = {
  exercise: [checkDefinedTwice],
  place: [checkDefinedTwice],
  athlete: [checkDefinedTwice, checkYouth],
  plan: [checkDefinedTwice, checkOneBar, checkAvoid, checkPlan],
  session: [
    checkOneBar,
    checkAvoid,
    checkWhose,
    checkFuture,
    checkAway,
    checkPlanDay,
    checkPain,
    checkMaxTest,
  ],
};

/** What rests on a movement's line and on definitions, the place among them. */
const OF_ALL_LINES: readonly LineCheck[] = [checkLineNames, checkOneOrTwo, checkHeavy, checkHoldReps];
const OF_PLACED_LINES: readonly LineCheck[] = [...OF_ALL_LINES, checkPlace as LineCheck];
const NO_CHECKS: readonly LineCheck[] = [];
const OF_LINES: Readonly<Record<Entry['kind'], readonly LineCheck[]>> = {
  units: NO_CHECKS,
  exercise: NO_CHECKS,
  place: NO_CHECKS,
  athlete: NO_CHECKS,
  plan: OF_PLACED_LINES,
  session: OF_PLACED_LINES,
  unknown: OF_ALL_LINES,
};

/** What rests on the athlete's sessions up to that day too, if only by its fixes. */
const OF_LINES_BY_HISTORY: readonly LineCheck[] = [checkNoLoad as LineCheck];
const OF_SESSION_LINES: readonly LineCheck[] = [...OF_LINES.session, ...OF_LINES_BY_HISTORY];
const BY_HISTORY: readonly Check<SessionEntry>[] = [checkTwice, checkLoadJump, checkLayoff];
/** What rests on later ones too. */
const BY_ALL: readonly Check<SessionEntry>[] = [checkWeekJump, checkProgress];

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
  const file = practice.file(uri);
  if (!file) return [];
  const found = file.model.entries.flatMap((placed) =>
    place(placed.line, checkPlaced(practice, uri, placed, { today, works })),
  );
  return arrange(file, [
    ...found,
    ...checkOrder(practice, file.model),
    ...checkRareNames(practice, file.model),
  ]);
}

/**
 * Looks at a file's entries one by one, for whoever has other things to do between them: what was found is remembered, so
 * that {@link checkFile} has little left to do.
 */
export function* prepareCheck(
  practice: Practice,
  uri: string,
  { today, works = findWorks(practice) }: CheckOptions,
): Iterable<undefined> {
  for (const placed of practice.file(uri)?.model.entries ?? []) {
    checkPlaced(practice, uri, placed, { today, works });
    yield;
  }
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
  );
}

function place(entryLine: number, problems: readonly Problem[]): FileProblem[] {
  return problems.map((problem) => ({ entryLine, problem }));
}

/** With what a file shows as a whole and what a merge left, without what is ignored, in order of place. */
function arrange(file: ReadFile, found: readonly FileProblem[]): FileProblem[] {
  const ignored = listIgnored(file);
  const conflicts = checkConflict(file);
  // A marker is no line of the notation: nothing else is said of it.
  const markers = new Set(conflicts.map(lineOf));
  const ofTheFile = [...checkUnitsTwice(file.model), ...checkIgnores(file)];
  return [...found, ...ofTheFile]
    .filter((each) => !markers.has(lineOf(each)))
    .concat(conflicts)
    .filter((each) => !ignored.get(lineOf(each))?.has(each.problem.code))
    .sort((a, b) => lineOf(a) - lineOf(b) || a.problem.span.start - b.problem.span.start);
}

const ownByEntry = new WeakMap<Entry, readonly Problem[]>();

/** What reading an entry found, and what it shows by itself. */
function listOwn(entry: Entry): readonly Problem[] {
  const before = ownByEntry.get(entry);
  if (before) return before;
  const found = settle([...entry.problems, ...checkEntry(entry)]);
  ownByEntry.set(entry, found);
  return found;
}

/** Problems of an entry and what they rest on: while that is the same, so are they. */
interface Known {
  readonly version: number;
  readonly today: IsoDate;
  readonly line: number;
  readonly problems: readonly Problem[];
  /** What comes of other sessions, as they were in that edition of the practice. */
  readonly edition: number;
  readonly byHistory: readonly Problem[];
  readonly byAll: readonly Problem[];
}

const knownByPractice = new WeakMap<Practice, WeakMap<Entry, Known>>();

/** An entry's model belongs to one file, so that the file needs no comparing. */
function checkOnce(entry: Entry, context: CheckContext): readonly Problem[] {
  const { practice, line, today } = context;
  const entries = knownByPractice.get(practice) ?? new WeakMap<Entry, Known>();
  knownByPractice.set(practice, entries);
  const before = entries.get(entry);
  // Of a definition it may be said on which line another stands.
  const version = entry.kind === 'session' ? practice.definitionsVersion : practice.linesVersion;
  const same =
    before?.version === version && before.today === today && before.line === line ? before : undefined;
  if (same && isSamePast(practice, context.records, same.edition, Number.POSITIVE_INFINITY))
    return joinProblems(same);
  const isSession = entry.kind === 'session';
  const byHistory = same && isSamePast(practice, context.records, same.edition) ? same.byHistory : undefined;
  const isAllKnown = same !== undefined && byHistory !== undefined;
  const checks = isSession ? OF_SESSION_LINES : OF_LINES[entry.kind];
  const lines = isAllKnown ? [] : listDoubtful(checks, entry, context);
  const known: Known = {
    version,
    today,
    line,
    problems: same?.problems ?? settle(checkDefined(entry, lines, context)),
    edition: practice.edition,
    byHistory: byHistory ?? settle(isSession ? checkByHistory(entry, lines, context) : []),
    byAll: settle(isSession ? askAll(BY_ALL, entry, context) : []),
  };
  entries.set(entry, known);
  return joinProblems(known);
}

function joinProblems({ problems, byHistory, byAll }: Known): readonly Problem[] {
  return byHistory.length === 0 && byAll.length === 0 ? problems : [...problems, ...byHistory, ...byAll];
}

function checkDefined(entry: Entry, lines: readonly BlockLine[], context: CheckContext): Problem[] {
  const problems = [...listOwn(entry)];
  askAll(EVERY, entry, context, problems);
  askAll((BY_KIND[entry.kind] ?? []) as readonly Check<Entry>[], entry, context, problems);
  collect(problems, askLines(OF_LINES[entry.kind], lines, entry, context));
  return problems;
}

function checkByHistory(entry: SessionEntry, lines: readonly BlockLine[], context: CheckContext): Problem[] {
  const problems = [...askLines(OF_LINES_BY_HISTORY, lines, entry, context)];
  return askAll(BY_HISTORY, entry, context, problems);
}

/** Puts what each check finds behind the problems, and gives them. */
function askAll<E extends Entry>(
  checks: readonly Check<E>[],
  entry: E,
  context: CheckContext,
  problems: Problem[] = [],
): Problem[] {
  for (const check of checks) collect(problems, check(entry, context));
  return problems;
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
