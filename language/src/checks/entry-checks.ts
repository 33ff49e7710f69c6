import type { Entry, MovementLine } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import { listBlocks } from './check-context.ts';
import { checkBlocksForPlans, checkLineForPlans } from './check-for-plans.ts';
import { checkJoinsRounds } from './check-joins-rounds.ts';
import { checkNameRules } from './check-name-rules.ts';
import { checkCells, checkRounds } from './check-rounds.ts';
import { checkUnevenLoads } from './check-uneven-loads.ts';
import { checkVocabulary } from './check-vocabulary.ts';

/**
 * What an entry shows to be wrong by itself, beside what reading found: the same for the same entry, whatever stands
 * in other entries or files.
 */
export function checkEntry(entry: Entry): Problem[] {
  return [
    ...checkNameRules(entry),
    ...checkRounds(entry),
    ...checkJoinsRounds(entry),
    ...(entry.kind === 'exercise' ? checkVocabulary(entry) : []),
    ...(entry.kind === 'session' ? [...checkBlocksForPlans(entry), ...checkCells(entry)] : []),
    ...checkOwnLines(entry),
  ];
}

/** Of a line alone; the answer for a line that shows nothing is remembered, since the same line comes again and again. */
const OF_LINES: Record<'session' | 'other', readonly ((line: MovementLine) => Iterable<Problem>)[]> = {
  session: [checkUnevenLoads, checkLineForPlans],
  other: [checkUnevenLoads],
};
const clean = { session: new WeakSet<MovementLine>(), other: new WeakSet<MovementLine>() };

function checkOwnLines(entry: Entry): Problem[] {
  const problems: Problem[] = [];
  const kind = entry.kind === 'session' ? 'session' : 'other';
  for (const { lines } of listBlocks(entry)) {
    for (const line of lines) {
      if (clean[kind].has(line)) continue;
      const before = problems.length;
      for (const check of OF_LINES[kind]) problems.push(...check(line));
      if (problems.length === before) clean[kind].add(line);
    }
  }
  return problems;
}
