/** `+2.5 kg each week, after 3 misses -10%`: up after a session that was made, the same after a miss, down after so many. */
import type { MovementLine } from '../model/entry.ts';
import type { Load, Modifier, Step } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printLoad } from '../printing/print-load.ts';
import { printPlain } from '../printing/print-quantity.ts';
import type { Draft, ProgressionRule } from './draft.ts';
import { findPercentMax } from './latest-max.ts';
import type { LineContext } from './line-context.ts';
import { listModifiers } from './line-steps.ts';
import {
  applyShare,
  describeRounding,
  isSameMass,
  printStepSize,
  readMovable,
  takeStep,
  unitOfLoad,
  withLoad,
  withMass,
} from './move-load.ts';
import { LAYOFF_SHARE } from './next-turn.ts';
import {
  type Asked,
  countSets,
  findFalls,
  hasMade,
  loadOf,
  type Performance,
  printDone,
} from './performance.ts';
import type { ProjectedLine } from './projected.ts';
import { kindOf } from './step-kinds.ts';

export const progressOrStall: ProgressionRule = (context, block, planned, movement, performances) => {
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
  // Percentages, weekly loads and what moves by the cycle go on as the plan says, as far below it as they fell.
  const lowered = step ? undefined : lowerPlan(context, planned, movement, stall, performances, asked);
  if (!hasMade(last!, asked)) {
    const most = step ? Number.POSITIVE_INFINITY : readMovable(lowered?.load ?? load)!;
    return write(...takeMiss(context, load, most, stall, movement, performances, asked));
  }
  if (!step) return lowered && write(lowered.load, lowered.why);
  const { deload } = context.of.turn;
  const isSameWeek = step.each === 'week' && last!.record.entry.plan?.week === context.of.turn.week;
  const moves = !deload && context.gap === undefined && !isSameWeek;
  const wanted = applyShare(moves ? takeStep(done, step) : done, deload?.load);
  const moved = withMass(context, movement, load, wanted, {
    unit: unitOfLoad(load, step),
    moreThan: moves ? done : undefined,
  });
  if (!moves) return write(moved, `${told}: ${describeShare(context) ?? 'the load stays'}`);
  const isAsPlanned = isSameMass(readMovable(moved), readMovable(load));
  return write(
    moved,
    isAsPlanned
      ? undefined
      : `${printLoad(load)} in the plan; ${told}: ${printStepSize(step)}${describeRounding(moved, wanted, step)}`,
  );
};

/**
 * The plan's load as much lower as it fell: until a max of a later day is known, or until as much as was missed is made.
 * Undefined where it did not fall, or has come back.
 */
function lowerPlan(
  context: LineContext,
  { sets, source }: ProjectedLine,
  movement: Movement | undefined,
  { misses, step }: Extract<Modifier, { kind: 'stall' }>,
  performances: readonly Performance[],
  asked: Asked,
): { readonly load: Load; readonly why: string } | undefined {
  const { load } = sets[0]!.group;
  // From the load that the note names, so that anybody can work it out.
  const planned = load && readMovable(load);
  if (!load || planned === undefined) return undefined;
  const { falls } = findFalls(performances, misses, asked);
  const maxDay = findMaxDay(context, source);
  const standing = falls.filter((fall) => {
    const missed = loadOf(fall)!;
    const later = performances.slice(performances.indexOf(fall) + 1);
    const hasComeBack = later.some((each) => hasMade(each, asked) && (loadOf(each) ?? 0) >= missed);
    return !hasComeBack && (maxDay === undefined || maxDay <= fall.record.day);
  });
  const last = standing.at(-1);
  if (!last) return undefined;
  const wanted = standing.reduce((moved) => takeStep(moved, step), planned);
  return {
    load: withMass(context, movement, load, wanted, { unit: unitOfLoad(load, step) }),
    why: `${printLoad(load)} in the plan; ${standing.map(() => printStepSize(step)).join(' and ')} since the misses up to ${last.record.date}`,
  };
}

/** The day of the max that a percentage is of. */
function findMaxDay({ works, athlete, day, formula }: LineContext, source: MovementLine): number | undefined {
  const load = source.cells[0]?.sets[0]?.load;
  if (load?.kind !== 'percent') return undefined;
  return findPercentMax(works, athlete, load.of?.text ?? source.name.text, day, formula)?.day;
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
  const { falls, since } = findFalls(performances, stall.misses, asked);
  const hasFallen = falls.at(-1) === last;
  const falling = hasFallen && !deload;
  const misses = hasFallen ? stall.misses : since;
  const wanted = applyShare(falling ? takeStep(done, step) : done, deload?.load);
  const moved = withMass(context, movement, load, Math.min(wanted, most), { unit: unitOfLoad(load, step) });
  const counted = misses === 1 ? '1 miss' : `${misses} misses in a row`;
  const share = describeShare(context);
  const isLess = wanted > most && !isSameMass(wanted, most);
  const what = falling
    ? [printStepSize(step), ...(share ? [share] : [])].join(', then ')
    : (share ?? (isLess ? 'no more than the plan' : 'the same load again'));
  return [moved, `${counted} (${printDone(last, movement)}): ${what}`];
}

/** Why what is written is less than the load of last time: `90 % of that load in the deload`. */
function describeShare({ of, gap }: LineContext): string | undefined {
  const { deload } = of.turn;
  const shares = [
    ...(deload?.load === undefined ? [] : [`${printPlain(deload.load)} % of that load in the deload`]),
    ...(gap?.kind === 'layoff' ? [`${LAYOFF_SHARE} % of that load after the time off`] : []),
  ];
  return shares.length > 0 ? shares.join(', and ') : undefined;
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
