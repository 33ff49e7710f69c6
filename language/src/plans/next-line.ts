/** One line of the next session: what the plan asks for that day, and what the last times make of it. */
import type { MovementLine } from '../model/entry.ts';
import type { Amount, Drop, Load, Mass, Modifier, SetGroup } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printLoad, printRange } from '../printing/print-load.ts';
import { printAmount, printQuantity } from '../printing/print-quantity.ts';
import { progressDouble, withValue } from './double-progression.ts';
import type { Draft, ProgressionRule } from './draft.ts';
import type { LineContext } from './line-context.ts';
import { isSameMass } from './move-load.ts';
import { LAYOFF_SHARE } from './next-turn.ts';
import { listPerformances, type Performance } from './performance.ts';
import type { ProjectedBlock, ProjectedLine, ProjectedLoad } from './projected.ts';
import { roundAddedToPlace, roundToPlace, type Way } from './round-to-place.ts';
import { progressOrStall } from './stall-rule.ts';
import { raiseByTwoForTwo } from './two-for-two.ts';

/** The first that is for a line says how it goes on. */
const RULES: readonly ProgressionRule[] = [progressDouble, progressOrStall, raiseByTwoForTwo];

/** The line as it goes into the session, its notes below it. */
export function writeLine(context: LineContext, block: ProjectedBlock, planned: ProjectedLine): MovementLine {
  const { line, source } = planned;
  const movement = context.works.practice.findMovement(line.name.text);
  const isPreparation =
    line.purpose === 'warmup' || block.block.kind === 'warmup' || block.block.kind === 'cooldown';
  const performances = isPreparation ? [] : listPerformances(context, source);
  let progressed: Draft | undefined;
  for (const rule of isPreparation || line.purpose === 'test' ? [] : RULES)
    progressed ??= rule(context, block.block, planned, movement, performances);
  const draft = settleDrops(planned, progressed ?? settle(planned, performances));
  const isStepped = !isPreparation && line.purpose === 'work';
  const stepped = isStepped ? stepBack(context, draft, movement, performances) : draft;
  const { groups, reasons } = stripHopes(stepped);
  const pain = describePain(performances.at(-1));
  const notes = [
    ...line.notes,
    ...[...reasons, ...(pain ? [pain] : [])].map((text) => ({ text, span: line.span })),
  ];
  const { week: _week, ...plain } = line;
  const cell = { sets: shareLoads(groups), modifiers: [], span: source.span };
  return { ...plain, cells: [cell], modifiers: line.modifiers.map(toRest), notes };
}

/** The usual caution where it hurt the last time. */
function describePain(last: Performance | undefined): string | undefined {
  if (!last?.pain) return undefined;
  return `${last.pain} on ${last.record.date}: leave out what brings it on, and ask a licensed practitioner before loading it again`;
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

/** Of drops only what they leave open: how they were done says nothing about the next time. */
function settleDrops({ sets }: ProjectedLine, { groups, reasons }: Draft): Draft {
  const open = [...reasons];
  const settled = groups.map((group, index): SetGroup => {
    const { dropLoads } = sets[Math.min(index, sets.length - 1)]!;
    let place = 0;
    const drops = group.drops.map((drop): Drop => {
      const projected = drop.load ? dropLoads[place++] : undefined;
      const amount = settleAmount(drop.amount, undefined, open);
      return { ...drop, amount, ...settleLoad(drop, projected, undefined, open) };
    });
    return { ...group, drops };
  });
  return { groups: settled, reasons: [...new Set(open)] };
}

function settleLoad(
  { load }: { readonly load?: Load },
  projected: ProjectedLoad | undefined,
  last: number | undefined,
  reasons: string[],
): { readonly load?: Load } {
  if (!load) return {};
  if (projected?.unknown) {
    reasons.push(`${printLoad(load)} in the plan, and ${projected.unknown}`);
    return { load: { kind: 'unrecorded' } };
  }
  if (projected?.note) reasons.push(projected.note);
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
  const lowerMass = (mass: Mass, round: (grams: number, way: Way) => Mass): Mass => {
    const share =
      gap.kind === 'layoff' ? LAYOFF_SHARE / 100 : (heaviest ?? 0) > 0 ? heaviest! / mass.grams : 1;
    if (share >= 1) return mass;
    const wanted = mass.grams * share;
    if (gap.kind !== 'layoff') return round(wanted, 'down');
    // Steps of the place may be so large that the nearest load is the plan's own: then it is the next lower one.
    const nearest = round(wanted, 'nearest');
    return isSameMass(nearest.grams, mass.grams) ? round(wanted, 'down') : nearest;
  };
  const lowerLifted = (mass: Mass): Mass =>
    lowerMass(mass, (grams, way) => roundToPlace(grams, mass.unit, movement, context.place, mass, way).mass);
  const lower = (load: Load | undefined): Load | undefined => {
    if (load?.kind === 'mass')
      return { ...load, mass: lowerLifted(load.mass), ...(load.other && { other: lowerLifted(load.other) }) };
    // What is added to the body; help stays.
    if (load?.kind === 'bodyweight' && load.sign === '+' && load.mass) {
      const { unit } = load.mass;
      const mass = lowerMass(
        load.mass,
        (grams, way) => roundAddedToPlace(grams, unit, context.place, way).mass,
      );
      return mass.grams > 0 ? { ...load, mass } : { kind: 'bodyweight' };
    }
    return load;
  };
  const lowerLoad = <T extends { readonly load?: Load }>(of: T): T => {
    const load = lower(of.load);
    return load ? { ...of, load } : of;
  };
  const groups = draft.groups.map(
    (group): SetGroup => ({ ...lowerLoad(group), drops: group.drops.map(lowerLoad) }),
  );
  return { ...draft, groups };
}

/** What was asked of an effort, or of the time for a distance, is no fact before it is felt and timed. */
function stripHopes({ groups, reasons }: Draft): Draft {
  const asked = groups.flatMap(({ ratings, amount, within }) => [
    ...(within && amount ? [`${printAmount(amount)} in ${printQuantity(within)} in the plan`] : []),
    ...ratings.map(
      ({ scale, value, high }) =>
        `${scale} ${printRange({ low: value, ...(high !== undefined && { high }) })}${scale === 'v' ? ' m/s' : ''} in the plan`,
    ),
  ]);
  return {
    groups: groups.map(({ within: _within, ...group }) => ({ ...group, ratings: [] })),
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
