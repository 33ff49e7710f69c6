/** The semantic comparison of two versions of a practice, or of one file of it. */
import type { SessionWorks } from '../measures/session-work.ts';
import type { Entry, PlanEntry, SessionEntry } from '../model/entry.ts';
import type { Practice } from '../practice/practice.ts';
import { printEntry } from '../printing/print-entry.ts';
import type { LensOptions } from '../summaries/lens.ts';
import { foldName } from '../text/names.ts';
import { compareFiles } from './compare-files.ts';
import { comparePlan, type RevisionContext } from './compare-plan.ts';
import { compareTraining, type NameKeys } from './compare-training.ts';
import { diffTexts } from './diff-texts.ts';
import { type EntryVersion, isSameEntry, listConflicted, listVersions } from './entry-versions.ts';
import { type EntryPair, matchEntries, type Renames } from './match-entries.ts';
import type { Day } from './match-lines.ts';
import type { DefinitionRevision, EntryChange, PlanRevision, Revision, SessionRevision } from './revision.ts';
import { listSessionEffects } from './session-effect.ts';

/** A practice and which of its files are compared. The rest of its files gives names their meaning. */
export interface Version {
  readonly practice: Practice;
  readonly paths: readonly string[];
}

/**
 * What changed from one version to another. Both are worked out with the definitions, maxes and places of the later one
 * (whose sums are `works`), so that what differs is what the revision itself changed.
 *
 * Entries of a conflict are left out on both sides. A file in both versions has the same path in both.
 */
export function describeRevision(
  before: Version,
  after: Version,
  works: SessionWorks,
  options: LensOptions,
): Revision {
  const [earlier, later] = [before, after].map(({ practice, paths }) => listVersions(practice, paths)) as [
    EntryVersion[],
    EntryVersion[],
  ];
  const { pairs, renames } = matchEntries(earlier, later, after.practice);
  const context: RevisionContext = {
    works,
    renames,
    keys: makeKeys(before.practice, after.practice, renames),
    options,
  };
  const torn = new Set([...earlier, ...later].filter((each) => each.isConflicted).map(({ path }) => path));
  const changed = pairs
    .filter((pair) => isComparable(pair, torn) && isChanged(pair))
    .sort(comparePlaces(after.paths));
  return {
    conflicts: [
      ...listConflicted(before.practice, before.paths, 'before'),
      ...listConflicted(after.practice, after.paths, 'after'),
    ],
    files: compareFiles(before.paths, after.paths, pairs),
    plans: changed.flatMap((pair) => toPlanRevision(context, pair)),
    sessions: changed.flatMap((pair) => toSessionRevision(context, pair)),
    definitions: changed.flatMap(toDefinitionRevision),
  };
}

function makeKeys(earlier: Practice, later: Practice, renames: Renames): NameKeys {
  const after = (name: string): string => later.keyOf(name);
  const before = (name: string): string => {
    const defined = earlier.findMovement(name)?.name ?? name;
    return after(renames.find('exercise', defined));
  };
  return { before, after };
}

/**
 * An entry that a merge left in two versions is not compared. Its header itself may stand between the markers, so a file
 * with a conflict does not say either what came or went in it.
 */
function isComparable({ before, after }: EntryPair, torn: ReadonlySet<string>): boolean {
  if (before?.isConflicted || after?.isConflicted) return false;
  return (before && after) !== undefined || !torn.has((before ?? after)!.path);
}

/** As they stand in the later version; what is gone comes last. */
function comparePlaces(paths: readonly string[]): (a: EntryPair, b: EntryPair) => number {
  const ranks = new Map(paths.map((path, index) => [path, index]));
  const rank = ({ after }: EntryPair): number => (after ? ranks.get(after.path)! : paths.length);
  const lineOf = ({ before, after }: EntryPair): number => (after ?? before)!.placed.line;
  return (a, b) => rank(a) - rank(b) || lineOf(a) - lineOf(b);
}

function isChanged({ before, after }: EntryPair): boolean {
  return !before || !after || !isSameEntry(before, after);
}

function toBase({ before, after }: EntryPair): {
  readonly change: EntryChange;
  readonly path: string;
  readonly name: string;
  readonly was?: string;
} {
  const shown = (after ?? before)!;
  return {
    change: !before ? 'added' : after ? 'changed' : 'removed',
    path: shown.path,
    name: shown.name,
    ...(before && after && foldName(before.name) !== foldName(after.name) && { was: before.name }),
  };
}

function toPlanRevision(context: RevisionContext, pair: EntryPair): PlanRevision[] {
  const [before, after] = [pair.before?.entry, pair.after?.entry];
  if ((after ?? before)?.kind !== 'plan') return [];
  const facts = comparePlan(context, before as PlanEntry | undefined, after as PlanEntry | undefined);
  const base = toBase(pair);
  const { texts, blocks, lines } = facts;
  // Where only names are written otherwise, nothing about the plan changed.
  if (base.change === 'changed' && !base.was && texts.length + blocks.length + lines.length === 0) return [];
  return [{ ...base, ...(pair.after && { line: pair.after.placed.line }), ...facts }];
}

function toSessionRevision(context: RevisionContext, pair: EntryPair): SessionRevision[] {
  const [before, after] = [pair.before?.entry, pair.after?.entry];
  if ((after ?? before)?.kind !== 'session') return [];
  const base = toBase(pair);
  if (before?.kind !== 'session' || after?.kind !== 'session')
    return [{ ...base, texts: [], blocks: [], lines: [], effects: [] }];
  const { blocks, lines } = compareTraining([toDay(before)], [toDay(after)], context.keys);
  const texts = diffTexts(printFacts(before), printFacts(after));
  // A name that is written otherwise now is no change of what was done.
  if (texts.length + blocks.length + lines.length === 0) return [];
  return [{ ...base, texts, blocks, lines, effects: listSessionEffects(context, before, after) }];
}

function toDay({ blocks, athletes }: SessionEntry): Day {
  return { number: 1, label: '', blocks, cellNames: athletes.map(({ text }) => text) };
}

/** The header without whose it is, and what was recorded of the whole. */
function printFacts(entry: SessionEntry): string[] {
  const [header, ...facts] = printEntry({ ...entry, athletes: [], blocks: [] }).split('\n');
  return [header!, ...facts.map((line) => line.trim())];
}

const KINDS: Readonly<Partial<Record<Entry['kind'], DefinitionRevision['kind']>>> = {
  exercise: 'exercise',
  athlete: 'athlete',
  place: 'place',
  units: 'units',
  unknown: 'unknown',
};

function toDefinitionRevision(pair: EntryPair): DefinitionRevision[] {
  const [before, after] = [pair.before?.entry, pair.after?.entry];
  const kind = KINDS[(after ?? before)!.kind];
  if (!kind) return [];
  const isLine = kind === 'units' || kind === 'unknown';
  const print = (entry: Entry): string[] =>
    printEntry(entry)
      .split('\n')
      .slice(isLine ? 0 : 1)
      .map((line) => line.trim());
  const texts = before && after ? diffTexts(print(before), print(after)) : [];
  return [{ ...toBase(pair), kind, texts }];
}
