/** `+2.5 kg each week, after 3 misses -10%`: up after a session that was made, the same after a miss, down after so many. */
import type { Block } from '../model/entry.ts';
import type { Load, Modifier, Step } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printLoad } from '../printing/print-load.ts';
import type { Draft } from './draft.ts';
import type { LineContext } from './line-context.ts';
import { listModifiers } from './line-steps.ts';
import {
  applyShare,
  isSameMass,
  printStepSize,
  readMovable,
  takeStep,
  unitOfLoad,
  withLoad,
  withMass,
} from './move-load.ts';
import {
  type Asked,
  countMisses,
  countSets,
  hasMade,
  loadOf,
  type Performance,
  printDone,
} from './performance.ts';
import type { ProjectedLine } from './projected.ts';
import { kindOf } from './step-kinds.ts';

export function progressOrStall(
  context: LineContext,
  block: Block,
  planned: ProjectedLine,
  movement: Movement | undefined,
  performances: readonly Performance[],
): Draft | undefined {
  const stall = listModifiers(planned.source).find((modifier) => modifier.kind === 'stall');
  const [first, ...others] = planned.sets;
  const { amount, load } = first?.group ?? {};
  const last = performances.at(-1);
  const done = last && loadOf(last);
  if (!stall || others.length > 0 || amount?.kind !== 'quantity' || done === undefined) return undefined;
  if (!load || readMovable(load) === undefined) return undefined;
  const asked: Asked = { amount, sets: countSets(block, planned.line) };
  const write = (written: Load, why: string | undefined): Draft => ({
    groups: [withLoad(context, movement, first!.group, written)],
    reasons: why === undefined ? [] : [why],
  });
  const told = printDone(last!, movement);
  const step = findStep(planned);
  if (!hasMade(last!, asked)) {
    const most = step ? Number.POSITIVE_INFINITY : readMovable(load)!;
    return write(...takeMiss(context, load, most, stall, movement, performances, asked));
  }
  // Percentages, weekly loads and what moves by the cycle go on as the plan says.
  if (!step) return undefined;
  const { deload } = context.of.turn;
  const isSameWeek = step.each === 'week' && last!.record.entry.plan?.week === context.of.turn.week;
  const moves = !deload && context.gap === undefined && !isSameWeek;
  const wanted = applyShare(moves ? takeStep(done, step) : done, deload?.load);
  const moved = withMass(context, movement, load, wanted, {
    unit: unitOfLoad(load, step),
    moreThan: moves ? done : undefined,
  });
  if (!moves) return write(moved, `${told}: the load stays`);
  const isAsPlanned = isSameMass(readMovable(moved), readMovable(load));
  return write(
    moved,
    isAsPlanned ? undefined : `${printLoad(load)} in the plan; ${told}: ${printStepSize(step)}`,
  );
}

/** After a miss the last load again, after so many in a row less; where the plan's own load varies, never more than that. */
function takeMiss(
  context: LineContext,
  load: Load,
  most: number,
  stall: Extract<Modifier, { kind: 'stall' }>,
  movement: Movement | undefined,
  performances: readonly Performance[],
  asked: Asked,
): [Load, string] {
  const { deload } = context.of.turn;
  const { step } = stall;
  const last = performances.at(-1)!;
  const done = loadOf(last)!;
  const misses = countMisses(performances, asked);
  const falls = misses >= stall.misses && !deload;
  const wanted = applyShare(falls ? takeStep(done, step) : done, deload?.load);
  const counted = misses === 1 ? '1 miss' : `${misses} misses in a row`;
  const what = falls ? printStepSize(step) : 'the same load again';
  return [
    withMass(context, movement, load, Math.min(wanted, most), { unit: unitOfLoad(load, step) }),
    `${counted} (${printDone(last, movement)}): ${what}`,
  ];
}

/** The step that a made session earns: of a weight that is the same in every week, in weight or in parts of it. */
function findStep({ source }: ProjectedLine): Step | undefined {
  const load = source.cells[0]?.sets[0]?.load;
  if (source.cells.length > 1 || (load?.kind !== 'mass' && load?.kind !== 'bodyweight')) return undefined;
  return listModifiers(source).find(
    (modifier): modifier is Step =>
      modifier.kind === 'step' &&
      !modifier.onRest &&
      !modifier.whenFull &&
      (modifier.each === 'session' || modifier.each === 'week') &&
      (kindOf(modifier) === 'load' || (kindOf(modifier) === 'percent' && load.kind === 'mass')),
  );
}
