import type { Entry, MovementLine } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import type { Place } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import {
  type BlockLine,
  type CheckContext,
  collect,
  isPreparation,
  listBlocks,
  NO_PROBLEMS,
} from './check-context.ts';

/**
 * A check of single lines, made ready for an entry and then asked line by line. Whether it finds anything in a line by
 * itself may rest on the line, on whether it is a preparation, on definitions and on the entry's place alone; its words
 * and fixes on more.
 */
export type LineCheck<E extends Entry = Entry> = (
  entry: E,
  context: CheckContext,
) => (line: BlockLine) => Iterable<Problem>;

/** Lines in which nothing can be found: those of work, and those of preparation. */
type Clean = readonly [work: WeakSet<MovementLine>, preparation: WeakSet<MovementLine>];

const newClean = (): Clean => [new WeakSet(), new WeakSet()];

interface Known {
  readonly version: number;
  readonly clean: Map<readonly LineCheck[], Map<Place | undefined, Clean>>;
}

const knownByPractice = new WeakMap<Practice, Known>();

/** Lets go of which lines are clean: of an open file they are soon asked about again. */
export function forgetClean(practice: Practice): void {
  knownByPractice.delete(practice);
}

function findClean(checks: readonly LineCheck[], entry: Entry, { practice }: CheckContext): Clean {
  const before = knownByPractice.get(practice);
  const version = practice.definitionsVersion;
  const known = before?.version === version ? before : { version, clean: new Map() };
  if (known !== before) knownByPractice.set(practice, known);
  const place =
    'place' in entry && entry.place !== undefined ? practice.findPlace(entry.place.text) : undefined;
  const byPlace = known.clean.get(checks) ?? new Map<Place | undefined, Clean>();
  known.clean.set(checks, byPlace);
  const clean = byPlace.get(place) ?? newClean();
  byPlace.set(place, clean);
  return clean;
}

const NO_LINES: readonly BlockLine[] = [];

/**
 * The lines of an entry in which one of the checks may find something. A line in which none did is not asked about again
 * while definitions and place are the same: most lines of a log say what one before them said, and are the same object.
 */
export function listDoubtful(
  checks: readonly LineCheck[],
  entry: Entry,
  context: CheckContext,
): readonly BlockLine[] {
  const clean = findClean(checks, entry, context);
  let doubtful: BlockLine[] | undefined;
  let ready: ReadyChecks | undefined;
  for (const block of listBlocks(entry)) {
    for (const line of block.lines) {
      const lines = clean[isPreparation({ block, line }) ? 1 : 0];
      if (lines.has(line)) continue;
      const blockLine = { block, line };
      ready ??= makeReady(checks, entry, context);
      if (ask(ready, blockLine).length === 0) {
        lines.add(line);
        continue;
      }
      // A check that found something may say it once for an entry: of the next line it is asked afresh.
      ready = undefined;
      doubtful ??= [];
      doubtful.push(blockLine);
    }
  }
  return doubtful ?? NO_LINES;
}

/** What some checks find in some lines of an entry, line by line. */
export function askLines(
  checks: readonly LineCheck[],
  lines: readonly BlockLine[],
  entry: Entry,
  context: CheckContext,
): readonly Problem[] {
  if (lines.length === 0) return NO_PROBLEMS;
  const ready = makeReady(checks, entry, context);
  return lines.flatMap((line) => ask(ready, line));
}

type ReadyChecks = readonly ReturnType<LineCheck>[];

function makeReady(checks: readonly LineCheck[], entry: Entry, context: CheckContext): ReadyChecks {
  return checks.map((check) => check(entry, context));
}

function ask(ready: ReadyChecks, line: BlockLine): readonly Problem[] {
  const problems: Problem[] = [];
  for (const check of ready) collect(problems, check(line));
  return problems;
}
