import fc, { type Arbitrary } from 'fast-check';
import type { MovementLine } from '../../../../language/src/model/entry.ts';
import type { Cell } from '../../../../language/src/model/quantity.ts';
import { modifier } from './modifiers.ts';
import { few, movementName, NOWHERE, notes } from './names.ts';
import { whole } from './quantities.ts';
import { sets } from './sets.ts';

const span = fc.constant(NOWHERE);

const cell: Arbitrary<Cell> = fc.record({ sets, modifiers: few(modifier), span });

const cells = fc.oneof(
  { weight: 4, arbitrary: fc.array(cell, { maxLength: 1 }) },
  fc.array(cell, { minLength: 2, maxLength: 4 }),
);

/** What a line without sets cannot say: modifiers behind the last cell's sets are the line's. */
function settle(line: MovementLine): MovementLine {
  const last = line.cells.at(-1);
  if (!last) return { ...line, modifiers: [] };
  const bare = last.sets.length === 0;
  if (bare && line.cells.length === 1 && line.modifiers.length === 0) return { ...line, cells: [] };
  return bare ? { ...line, cells: [...line.cells.slice(0, -1), { ...last, modifiers: [] }] } : line;
}

/** A line with a label of that kind, or without. */
export const movementLine = (label: Arbitrary<string | undefined>): Arbitrary<MovementLine> =>
  fc
    .record({
      kind: fc.constant('movement' as const),
      name: movementName,
      purpose: fc.constantFrom('work', 'work', 'work', 'warmup', 'test'),
      week: fc.oneof({ weight: 3, arbitrary: fc.constant(undefined) }, whole(1, 12)),
      label: label.map((text) => (text === undefined ? undefined : { text, span: NOWHERE })),
      cells,
      modifiers: few(modifier),
      notes,
      broken: fc.constant(false),
      span,
    } as const)
    .map(settle);
