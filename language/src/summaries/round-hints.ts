import { countRounds, findCell } from '../measures/expand-sets.ts';
import type { Block, SessionEntry } from '../model/entry.ts';
import type { LineHint } from './lens.ts';
import { count } from './words.ts';

/** A hint that counts its line from the entry's. */
type EntryHint = Omit<LineHint, 'line'> & { readonly entryLine: number };

/** `= 3 sets` behind a lone number of a block with rounds, which stands for each of them. */
export function describeRoundHints({ blocks }: SessionEntry): EntryHint[] {
  return blocks.flatMap((block) => {
    const rounds = isByRounds(block) ? countRounds(block) : undefined;
    if (rounds === undefined || rounds * block.passes < 2) return [];
    return block.lines.flatMap((line) =>
      line.cells.flatMap((_cell, index): EntryHint[] => {
        const [set, ...others] = findCell(line, index)?.sets ?? [];
        if (!set?.amount || others.length > 0 || set.count !== 1 || set.amount.kind === 'skipped') return [];
        const { line: entryLine, end } = set.span;
        const sets = count(rounds * block.passes, 'set');
        const passes =
          block.passes > 1 ? ` of ${count(block.passes, 'pass').replace(/passs$/, 'passes')}` : '';
        const tooltip = `The same in each of ${count(rounds, 'round')}${passes}`;
        return [{ entryLine, column: end, text: `= ${sets}`, tooltip }];
      }),
    );
  });
}

/** In `every` and `intervals` lines may take turns, and in an amrap nobody knows the rounds before its end. */
function isByRounds({ kind }: Block): boolean {
  return kind === 'circuit' || kind === 'superset' || kind === 'giant set' || kind === 'for time';
}
