import type { IsoDate } from '../calendar/iso-date.ts';
import type { Entry, SessionEntry } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import { listKeysNamed } from '../practice/mentions.ts';
import type { Practice } from '../practice/practice.ts';
import { isSamePast, REST_OF_WEEK } from '../practice/same-past.ts';
import { settle } from '../reading/settle.ts';
import { checkAvoid } from './check-avoid.ts';
import { checkBareReps } from './check-bare-reps.ts';
import { checkAway, checkFuture, checkTwice, checkWhose } from './check-calendar.ts';
import { checkLayoff, checkMaxTest, checkPain, checkYouth } from './check-cautions.ts';
import { type BlockLine, type CheckContext, collect, NO_PROBLEMS } from './check-context.ts';
import { checkDefinedTwice } from './check-definitions.ts';
import { checkHeavy } from './check-heavy.ts';
import { checkLoadJump } from './check-load-jump.ts';
import { checkLineNames, checkNames } from './check-names.ts';
import { checkNoLoad } from './check-no-load.ts';
import { checkOneBar } from './check-one-bar.ts';
import { checkOneOrTwo } from './check-one-or-two.ts';
import { checkPlace } from './check-place.ts';
import { checkPlan } from './check-plan.ts';
import { checkPlanDay } from './check-plan-day.ts';
import { checkProgress } from './check-progress.ts';
import { checkStrays } from './check-strays.ts';
import { checkWeekJump } from './check-week-jump.ts';
import { checkEntry } from './entry-checks.ts';
import { askLines, forgetClean, type LineCheck, listDoubtful } from './line-checks.ts';
import { forgetHistory } from './training-history.ts';

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
const OF_ALL_LINES: readonly LineCheck[] = [checkLineNames, checkOneOrTwo, checkHeavy, checkBareReps];
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

/** What rests on the athlete's sessions up to that day too, as far as they are of its movements, if only by its fixes. */
const OF_LINES_BY_HISTORY: readonly LineCheck[] = [checkNoLoad as LineCheck];
const OF_SESSION_LINES: readonly LineCheck[] = [...OF_LINES.session, ...OF_LINES_BY_HISTORY];
const BY_HISTORY: readonly Check<SessionEntry>[] = [checkTwice, checkLoadJump, checkLayoff];
/** On those of its week and before, whatever they are of. */
const BY_WEEK: readonly Check<SessionEntry>[] = [checkWeekJump];
/** On later ones too, as far as they are of its movements. */
const BY_ALL: readonly Check<SessionEntry>[] = [checkProgress];

/** What reading an entry found, and what it shows by itself. */
export function listOwn(entry: Entry): readonly Problem[] {
  return settle([...entry.problems, ...checkEntry(entry)]);
}

/** What the checks of an entry rest on beside other sessions: one object for all that rest on the same. */
interface Basis {
  readonly version: number;
  readonly today: IsoDate;
}

/** Problems of an entry and what they rest on: while that is the same, so are they. */
interface Known {
  readonly own: readonly Problem[];
  readonly basis: Basis;
  readonly line: number;
  /** What comes of other sessions was last known to be right in that edition of the practice. */
  edition: number;
  /** Undefined where nothing was found at all, as in most entries: years of them are remembered. */
  found: Found | undefined;
}

interface Found {
  readonly defined: readonly Problem[];
  readonly byHistory: readonly Problem[];
  readonly byWeek: readonly Problem[];
  readonly byAll: readonly Problem[];
}

interface Memory {
  readonly entries: WeakMap<Entry, Known>;
  readonly bases: Map<boolean, Basis>;
}

const memories = new WeakMap<Practice, Memory>();

/** Lets go of what only makes the next look faster. */
export function forgetChecks(practice: Practice): void {
  forgetHistory(practice);
  forgetClean(practice);
}

/**
 * All that is wrong or worth telling in an entry, looked for once as long as all is the same that it rests on. An entry's
 * model belongs to one file, so that the file needs no comparing.
 */
export function checkOnce(entry: Entry, context: CheckContext): readonly Problem[] {
  const { practice, line } = context;
  const memory = memories.get(practice) ?? { entries: new WeakMap<Entry, Known>(), bases: new Map() };
  memories.set(practice, memory);
  const basis = findBasis(memory, entry, context);
  const known = memory.entries.get(entry);
  if (known?.basis !== basis || known.line !== line) {
    const fresh = checkAnew(known?.own ?? listOwn(entry), basis, entry, context);
    memory.entries.set(entry, fresh);
    return joinFound(fresh);
  }
  if (entry.kind === 'session') checkAgain(known, entry, context);
  return joinFound(known);
}

function findBasis({ bases }: Memory, entry: Entry, { practice, today }: CheckContext): Basis {
  const isSession = entry.kind === 'session';
  // Of a definition it may be said on which line another stands.
  const version = isSession ? practice.definitionsVersion : practice.linesVersion;
  const known = bases.get(isSession);
  if (known?.version === version && known.today === today) return known;
  const basis = { version, today };
  bases.set(isSession, basis);
  return basis;
}

function checkAnew(own: readonly Problem[], basis: Basis, entry: Entry, context: CheckContext): Known {
  const isSession = entry.kind === 'session';
  const lines = listDoubtful(isSession ? OF_SESSION_LINES : OF_LINES[entry.kind], entry, context);
  const found = {
    defined: settle(checkDefined(entry, lines, context)),
    byHistory: isSession ? checkByHistory(entry, lines, context) : NO_PROBLEMS,
    byWeek: isSession ? settle(askAll(BY_WEEK, entry, context)) : NO_PROBLEMS,
    byAll: isSession ? settle(askAll(BY_ALL, entry, context)) : NO_PROBLEMS,
  };
  return { own, basis, line: context.line, edition: context.practice.edition, found: orNothing(found) };
}

/** Looks again for what may be another since other sessions changed. */
function checkAgain(known: Known, entry: SessionEntry, context: CheckContext): void {
  const { practice, records } = context;
  const { edition } = known;
  if (edition === practice.edition) return;
  known.edition = practice.edition;
  // An edit concerns one athlete, most of one day's movements alone, and a history is thousands of sessions.
  if (isSamePast(practice, records, edition, EVER)) return;
  const keys = listKeysNamed(practice, entry);
  const isSameEver = isSamePast(practice, records, edition, EVER, keys);
  const isSameWeek = isSamePast(practice, records, edition, REST_OF_WEEK);
  if (isSameEver && isSameWeek) return;
  const { defined, byHistory, byWeek, byAll } = known.found ?? NOTHING;
  known.found = orNothing({
    defined,
    byHistory:
      isSameEver || isSamePast(practice, records, edition, 0, keys)
        ? byHistory
        : checkByHistory(entry, listDoubtful(OF_LINES_BY_HISTORY, entry, context), context),
    byWeek: isSameWeek ? byWeek : settle(askAll(BY_WEEK, entry, context)),
    byAll: isSameEver ? byAll : settle(askAll(BY_ALL, entry, context)),
  });
}

/** So many days behind a session are all later ones. */
const EVER = Number.POSITIVE_INFINITY;

const NOTHING: Found = {
  defined: NO_PROBLEMS,
  byHistory: NO_PROBLEMS,
  byWeek: NO_PROBLEMS,
  byAll: NO_PROBLEMS,
};

function orNothing(found: Found): Found | undefined {
  const isNothing = Object.values(found).every((problems) => problems.length === 0);
  return isNothing ? undefined : found;
}

function joinFound({ own, found }: Known): readonly Problem[] {
  return found ? [...own, ...found.defined, ...found.byHistory, ...found.byWeek, ...found.byAll] : own;
}

function checkDefined(entry: Entry, lines: readonly BlockLine[], context: CheckContext): Problem[] {
  const problems: Problem[] = [];
  askAll(EVERY, entry, context, problems);
  askAll((BY_KIND[entry.kind] ?? []) as readonly Check<Entry>[], entry, context, problems);
  collect(problems, askLines(OF_LINES[entry.kind], lines, entry, context));
  return problems;
}

function checkByHistory(
  entry: SessionEntry,
  lines: readonly BlockLine[],
  context: CheckContext,
): readonly Problem[] {
  const problems = [...askLines(OF_LINES_BY_HISTORY, lines, entry, context)];
  return settle(askAll(BY_HISTORY, entry, context, problems));
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
