import type { MovementLine } from '../model/entry.ts';
import type { Cell, SetGroup } from '../model/quantity.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printRange } from '../units/number.ts';
import { CHECKS } from './catalogue.ts';
import { problem } from './check-context.ts';

/** How far a bare number may be from the nearest other load of its cell. */
const { most: MOST, least: LEAST } = CHECKS['uneven-loads'].numbers;

interface OwnLoad {
  readonly grams: number;
  readonly written: number;
  readonly unit: MassUnit;
  readonly span: Span;
  /** Written without a unit. */
  readonly bare: boolean;
}

/** `5 @ 10, 5 @ 100 kg`: a bare number far from the loads beside it, where a digit or a unit may be missing. */
export function checkUnevenLoads({ cells }: MovementLine): readonly Problem[] {
  const problems: Problem[] = [];
  // One set has nothing beside it to be uneven with.
  for (const cell of cells) if (cell.sets.length > 1) problems.push(...checkCell(cell));
  return problems;
}

function* checkCell(cell: Cell): Iterable<Problem> {
  const loads = cell.sets.map(findOwnLoad).filter((load) => load !== undefined);
  if (loads.length < 2 || !loads.some(({ bare }) => bare)) return;
  const sorted = loads.map(({ grams }) => grams).sort((a, b) => a - b);
  for (const load of loads) {
    if (!load.bare) continue;
    const lowest = sorted[load.grams === sorted[0] ? 1 : 0]!;
    const highest = sorted[sorted.length - (load.grams === sorted.at(-1) ? 2 : 1)]!;
    if (load.grams <= highest * MOST && load.grams >= lowest * LEAST) continue;
    const others = `${printRange(fromGrams(lowest, load.unit), fromGrams(highest, load.unit), 2)} ${load.unit}`;
    yield problem(
      'uneven-loads',
      load.span,
      `${printPlain(load.written)} ${load.unit} is far from the other loads of this line, ${others}: is a digit or a unit wrong?`,
      suggestDigits(load, lowest, highest),
    );
  }
}

function findOwnLoad(set: SetGroup): OwnLoad | undefined {
  const { load, loadText, loadSpan } = set;
  if (!set.ownLoad || load?.kind !== 'mass' || loadText === undefined || !loadSpan) return undefined;
  const { grams, written, unit } = load.mass;
  return { grams, written, unit, span: loadSpan, bare: /^[\d.]+$/.test(loadText) };
}

/** Ten times as much, or a tenth, where that lies among the others. */
function suggestDigits(load: OwnLoad, lowest: number, highest: number): Fix[] {
  const nearby = (grams: number): boolean => grams >= lowest / 2 && grams <= highest * 2;
  return [10, 1 / 10]
    .filter((factor) => nearby(load.grams * factor))
    .map((factor) => replaceBy(load.span, printPlain(Math.round(load.written * factor * 100) / 100)));
}
