/** How a projected line is shown: `5x3 @ 85 kg (80 % of 105 = 84)`. */
import { printSetGroup } from '../printing/print-sets.ts';
import { listLoads, type ProjectedLine, type ProjectedSet } from './projected.ts';

/** The sets as they would be written, each group by itself. */
export function printSets({ sets }: ProjectedLine): string {
  return sets.map(({ group }) => printSetGroup(group)).join(', ');
}

/** The sets with where their loads come from, one text for each load; what cannot be worked out says why. */
export function explainSets({ sets }: ProjectedLine): string[] {
  const texts: string[] = [];
  let shared: string[] = [];
  for (const set of sets) {
    shared.push(printSetGroup(set.group));
    if (!set.group.ownLoad && set.group.load && set.dropLoads.length === 0) continue;
    texts.push([shared.join(', '), explainLoad(set)].filter((part) => part !== '').join(' '));
    shared = [];
  }
  return shared.length > 0 ? [...texts, shared.join(', ')] : texts;
}

function explainLoad(set: ProjectedSet): string {
  const texts = listLoads(set).flatMap(({ unknown, derivation }) => unknown ?? (derivation || []));
  return texts.length > 0 ? `(${[...new Set(texts)].join(', ')})` : '';
}
