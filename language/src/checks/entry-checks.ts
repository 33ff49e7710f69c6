import type { Entry } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import { checkForPlans } from './check-for-plans.ts';
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
    ...checkUnevenLoads(entry),
    ...(entry.kind === 'exercise' ? checkVocabulary(entry) : []),
    ...(entry.kind === 'session' ? [...checkForPlans(entry), ...checkCells(entry)] : []),
  ];
}
