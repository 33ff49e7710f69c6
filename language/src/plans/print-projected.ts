/** How a projected line is shown: `5x3 @ 85 kg (80 % of 105 = 84)`. */
import { printSetGroup } from '../printing/print-sets.ts';
import type { ProjectedLine, ProjectedSet } from './projected.ts';

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
    if (!set.group.ownLoad && set.group.load) continue;
    texts.push([shared.join(', '), explainLoad(set)].filter((part) => part !== '').join(' '));
    shared = [];
  }
  return shared.length > 0 ? [...texts, shared.join(', ')] : texts;
}

function explainLoad({ load }: ProjectedSet): string {
  if (load?.unknown) return `(${load.unknown})`;
  return load?.derivation ? `(${load.derivation})` : '';
}
