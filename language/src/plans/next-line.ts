/** One line of the next session: what the plan asks for that day, and what the last times make of it. */
import type { MovementLine } from '../model/entry.ts';
import type { Amount, Modifier, SetGroup } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printLoad, printRange } from '../printing/print-load.ts';
import { printAmount } from '../printing/print-quantity.ts';
import { listPerformances, type Performance } from './performance.ts';
import {
  type Draft,
  type LineContext,
  progressDouble,
  progressOrStall,
  raiseByTwoForTwo,
  withValue,
} from './progress-line.ts';
import type { ProjectedBlock, ProjectedLine } from './projected.ts';
import { roundToPlace } from './round-to-place.ts';

/** After a layoff loads begin at so many percent of the plan's (common practice). */
export const LAYOFF_SHARE = 90;

/** The line as it goes into the session, its notes below it. */
export function writeLine(context: LineContext, block: ProjectedBlock, planned: ProjectedLine): MovementLine {
  const { line, source } = planned;
  const movement = context.works.practice.findMovement(line.name.text);
  const isPreparation =
    line.purpose === 'warmup' || block.block.kind === 'warmup' || block.block.kind === 'cooldown';
  const performances = isPreparation
    ? []
    : listPerformances(context.works, context.athlete, line.name.text, context.day, context.of);
  const progressed =
    isPreparation || line.purpose === 'test'
      ? undefined
      : (progressDouble(context, block.block, planned, movement, performances) ??
        progressOrStall(context, block.block, planned, movement, performances) ??
        raiseByTwoForTwo(context, block.block, planned, movement, performances));
  const draft = progressed ?? settle(planned, performances);
  const isStepped = !isPreparation && line.purpose === 'work';
  const stepped = isStepped ? stepBack(context, draft, movement, performances) : draft;
  const { groups, reasons } = stripRatings(stepped);
  const notes = [...line.notes, ...reasons.map((text) => ({ text, span: line.span }))];
  const { week: _week, ...plain } = line;
  const cell = { sets: shareLoads(groups), modifiers: [], span: source.span };
  return { ...plain, cells: [cell], modifiers: line.modifiers.map(toRest), notes };
}

/** Numbers in place of what a plan leaves open. */
function settle({ sets }: ProjectedLine, performances: readonly Performance[]): Draft {
  const reasons: string[] = [];
  const last = performances.at(-1);
  let place = 0;
  const groups = sets.map(({ group, load }): SetGroup => {
    const done = last?.sets[Math.min(place, (last?.sets.length ?? 1) - 1)];
    place += group.count;
    const amount = group.amount && settleAmount(group.amount, done?.amount, reasons);
    return { ...group, ...(amount && { amount }), ...settleLoad(group, load, done?.grams, reasons) };
  });
  return { groups, reasons: [...new Set(reasons)] };
}

function settleAmount(amount: Amount, last: number | undefined, reasons: string[]): Amount {
  switch (amount.kind) {
    case 'range': {
      const value = Math.min(amount.high.value, Math.max(amount.low.value, last ?? amount.low.value));
      reasons.push(`${printAmount(amount)} in the plan`);
      return { kind: 'quantity', quantity: withValue(amount.low, value), perSide: amount.perSide };
    }
    case 'at-least':
      reasons.push(`${printAmount(amount)} in the plan: as many as are good`);
      return { kind: 'quantity', quantity: amount.quantity, perSide: amount.perSide };
    case 'amrap':
      reasons.push('As many as possible');
      return { kind: 'unrecorded' };
    default:
      return amount;
  }
}

function settleLoad(
  group: SetGroup,
  projected: ProjectedLine['sets'][number]['load'],
  last: number | undefined,
  reasons: string[],
): Pick<SetGroup, 'load'> {
  const { load } = group;
  if (!load) return {};
  if (projected?.unknown) {
    reasons.push(`${printLoad(load)} in the plan, and ${projected.unknown}`);
    return { load: { kind: 'unrecorded' } };
  }
  if (projected?.result?.bound === 'prediction') {
    const range = printLoad(load);
    reasons.push(`${projected.derivation}: ${range}, the middle is written`);
    const { middle } = projected;
    if (load.kind === 'mass' && middle) {
      const { high: _high, ...plain } = load;
      return { load: { ...plain, mass: middle } };
    }
    return { load };
  }
  if (load.kind === 'mass' && load.high) {
    const { high, ...plain } = load;
    const isWithin = last !== undefined && last > load.mass.grams && last <= high.grams;
    reasons.push(`${printLoad(load)} in the plan`);
    return { load: isWithin && last === high.grams ? { ...plain, mass: high } : plain };
  }
  return { load };
}

/** After a layoff a share of every load; after a missed week nothing heavier than last time. */
function stepBack(
  context: LineContext,
  draft: Draft,
  movement: Movement | undefined,
  performances: readonly Performance[],
): Draft {
  const { gap } = context;
  if (!gap) return draft;
  const last = performances.at(-1);
  const heaviest = last && Math.max(...last.sets.map(({ grams }) => grams ?? 0));
  const groups = draft.groups.map((group): SetGroup => {
    const { load } = group;
    if (load?.kind !== 'mass') return group;
    const lower = (grams: number): number =>
      gap.kind === 'layoff' ? (grams * LAYOFF_SHARE) / 100 : heaviest ? Math.min(grams, heaviest) : grams;
    const lowered = lower(load.mass.grams);
    if (lowered >= load.mass.grams) return group;
    const at = (grams: number) => roundToPlace(grams, load.mass.unit, movement, context.place).mass;
    const other = load.other && at(lower(load.other.grams));
    return { ...group, load: { ...load, mass: at(lowered), ...(other && { other }) } };
  });
  return { ...draft, groups };
}

/** What was asked of an effort is no fact before it is felt. */
function stripRatings({ groups, reasons }: Draft): Draft {
  const asked = groups.flatMap(({ ratings }) =>
    ratings.map(
      ({ scale, value, high }) =>
        `${scale} ${printRange({ low: value, ...(high !== undefined && { high }) })}${scale === 'v' ? ' m/s' : ''} in the plan`,
    ),
  );
  return {
    groups: groups.map((group) => ({ ...group, ratings: [] })),
    reasons: [...new Set([...reasons, ...asked])],
  };
}

/** The first sets share a load where it is the same; after that each writes its own. */
function shareLoads(groups: readonly SetGroup[]): SetGroup[] {
  const keys = groups.map(({ load }) => JSON.stringify(load ?? null));
  const shared = keys.findIndex((key) => key !== keys[0]);
  const prefix = shared < 0 ? keys.length : shared;
  return groups.map((group, index) => ({
    ...group,
    ownLoad: group.load !== undefined && index >= prefix - 1,
  }));
}

/** A rest of a range is begun with its shorter end. */
function toRest(modifier: Modifier): Modifier {
  if (modifier.kind !== 'rest') return modifier;
  const { high: _high, ...plain } = modifier;
  return plain;
}
