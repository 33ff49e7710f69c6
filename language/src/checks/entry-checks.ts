import type { Entry, MovementLine } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import { collect, listBlocks } from './check-context.ts';
import { checkBlocksForPlans, checkLineForPlans } from './check-for-plans.ts';
import { checkJoinsRounds } from './check-joins-rounds.ts';
import { checkNameRules } from './check-name-rules.ts';
import { checkCells, checkRounds } from './check-rounds.ts';
import { checkUnevenLoads } from './check-uneven-loads.ts';
import { checkVocabulary } from './check-vocabulary.ts';
import { haveTrait, type Trait } from './line-traits.ts';

type OwnCheck<E extends Entry> = (entry: E) => Iterable<Problem>;

const BY_KIND: { readonly [K in Entry['kind']]: readonly OwnCheck<Extract<Entry, { kind: K }>>[] } = {
  units: [],
  exercise: [checkNameRules, checkVocabulary],
  place: [checkNameRules],
  athlete: [checkNameRules],
  plan: [checkNameRules, checkRounds, checkJoinsRounds],
  session: [checkRounds, checkJoinsRounds, checkBlocksForPlans, checkCells],
  unknown: [checkRounds, checkJoinsRounds],
};

/**
 * What an entry shows to be wrong by itself, beside what reading found: the same for the same entry, whatever stands
 * in other entries or files.
 */
export function checkEntry(entry: Entry): Problem[] {
  const problems: Problem[] = [];
  for (const check of BY_KIND[entry.kind] as readonly OwnCheck<Entry>[]) collect(problems, check(entry));
  checkOwnLines(entry, problems);
  return problems;
}

/** Of a line alone. */
const OF_LINES: Record<
  'session' | 'other',
  readonly (readonly [Trait, (line: MovementLine) => Iterable<Problem>])[]
> = {
  session: [
    ['unevenLoads', checkUnevenLoads],
    ['forPlans', checkLineForPlans],
  ],
  other: [['unevenLoads', checkUnevenLoads]],
};

function checkOwnLines(entry: Entry, problems: Problem[]): void {
  const blocks = listBlocks(entry);
  const checks = OF_LINES[entry.kind === 'session' ? 'session' : 'other'];
  if (!checks.some(([trait]) => haveTrait(blocks, trait))) return;
  for (const { lines } of blocks) {
    for (const line of lines) for (const [, check] of checks) collect(problems, check(line));
  }
}
