import type { Entry, MovementLine } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import type { Place } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { type BlockLine, type CheckContext, isPreparation, listBlocks } from './check-context.ts';

/**
 * A check of single lines, made ready for an entry and then asked line by line. Whether it finds anything may rest on
 * the line, on whether it is a preparation, on definitions and on the entry's place alone; its words and fixes on more.
 */
export type LineCheck<E extends Entry = Entry> = (
  entry: E,
  context: CheckContext,
) => (line: BlockLine) => Iterable<Problem>;

/** Lines in which nothing was found: those of work, and those of preparation. */
type Clean = readonly [work: WeakSet<MovementLine>, preparation: WeakSet<MovementLine>];

const newClean = (): Clean => [new WeakSet(), new WeakSet()];

interface Known {
  readonly version: number;
  readonly clean: Map<readonly LineCheck[], Map<Place | undefined, Clean>>;
}

const knownByPractice = new WeakMap<Practice, Known>();

/**
 * Asks some checks of every line of an entry. A line in which they found nothing is not asked about again while
 * definitions and place are the same: most lines of a log say what one before them said, and are the same object.
 */
export function checkLines(checks: readonly LineCheck[], entry: Entry, context: CheckContext): Problem[] {
  return askLines(checks, entry, context, findClean(checks, entry, context));
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

function askLines(
  checks: readonly LineCheck[],
  entry: Entry,
  context: CheckContext,
  clean: Clean,
): Problem[] {
  const problems: Problem[] = [];
  let ready: readonly ((line: BlockLine) => Iterable<Problem>)[] | undefined;
  for (const block of listBlocks(entry)) {
    for (const line of block.lines) {
      const blockLine = { block, line };
      const lines = clean[isPreparation(blockLine) ? 1 : 0];
      if (lines.has(line)) continue;
      ready ??= checks.map((check) => check(entry, context));
      const before = problems.length;
      for (const ask of ready) problems.push(...ask(blockLine));
      if (problems.length === before) lines.add(line);
    }
  }
  return problems;
}
