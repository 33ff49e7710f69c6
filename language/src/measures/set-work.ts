import type { Block } from '../model/entry.ts';
import type { Amount, Load, Quantity, Rating } from '../model/quantity.ts';
import { implementOf, type Movement, workOf } from '../practice/movement.ts';
import { roundTo } from '../units/number.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import { findEquipment } from '../vocabulary/equipment.ts';
import { computePushUpShare, type WEIGHED_PUSH_UPS } from './body-share.ts';
import { readReserve } from './exertion.ts';
import { type ExpandedSet, lacksLoad } from './expand-sets.ts';
import type { Omission } from './result.ts';
import { addWork, NO_WORK, type Work } from './work.ts';

/** What the sums of a set rest on, beside the set itself. */
export interface SetContext {
  readonly movement: Movement | undefined;
  readonly blockKind: Block['kind'];
  /** Grams, as of the last weigh-in; absent without one. */
  readonly bodyMass: number | undefined;
  readonly sex?: 'female' | 'male';
}

/** A set at this many reps in reserve or fewer is a hard one (common research cut, from memory). */
export const HARD_SET_RIR = 4;

/** Reps left and right, or both together on `right: 0`. */
interface SidedQuantity {
  readonly quantity: Quantity;
  /** All of it, both sides. */
  readonly total: number;
  readonly left: number;
  readonly right: number;
}

/** The sums of one set, its drops included. */
export function computeSetWork(set: ExpandedSet, context: SetContext): Work {
  const { amount, group } = set;
  const name = set.line.name.text;
  if (!amount)
    return { ...NO_WORK, atLeast: true, omitted: [{ what: name, why: 'a set could not be read' }] };
  if (amount.kind === 'skipped') return NO_WORK;
  const counted = set.unfinished ? 0 : 1;
  const hard = counted === 1 && isHardSet(set, context) ? 1 : 0;
  if (lacksLoad(set.line, group))
    return {
      ...countReps(amount),
      sets: counted,
      hardSets: hard,
      atLeast: true,
      omitted: [{ what: name, why: 'a set without a load' }],
    };
  return addWork([
    { ...NO_WORK, sets: counted, hardSets: hard },
    computeAmountWork(name, amount, group.load, context),
    ...group.drops.map((drop) => computeAmountWork(name, drop.amount, drop.load, context)),
  ]);
}

/** A set whose load is forgotten counts its reps and no kilograms, not even those of the body. */
function countReps(amount: Amount): Work {
  const done = measureAmount(amount);
  return done?.quantity.measure === 'reps' ? { ...NO_WORK, reps: done.total } : NO_WORK;
}

/** Loaded or body-weight strength work near failure; other work only when it was rated. */
export function isHardSet(
  set: ExpandedSet,
  { movement, blockKind }: Pick<SetContext, 'movement' | 'blockKind'>,
): boolean {
  const reserve = readSetReserve(set.group.ratings);
  if (reserve !== undefined) return reserve <= HARD_SET_RIR;
  if (set.group.ratings.some(({ scale }) => scale === 'rpe' || scale === 'rir')) return false;
  return workOf(movement) === 'strength' && BLOCK_KINDS[blockKind].hardUnrated;
}

/** Reps in reserve that a set's rating says; a range says none. */
export function readSetReserve(ratings: readonly Rating[]): number | undefined {
  const find = (scale: 'rpe' | 'rir') =>
    ratings.find((rating) => rating.scale === scale && rating.high === undefined)?.value;
  return readReserve({ rpe: find('rpe'), rir: find('rir') });
}

/** How much an amount is, both sides together; undefined where that was not recorded or is for a plan. */
export function measureAmount(amount: Amount): SidedQuantity | undefined {
  switch (amount.kind) {
    case 'quantity':
      return sided(amount.quantity, amount.quantity.value, amount.perSide);
    case 'sides': {
      const [left, right] = [amount.left.value, amount.right.value];
      return { quantity: amount.left, total: left + right, left, right };
    }
    case 'attempt':
      return sided(
        { measure: 'reps', value: amount.made, written: amount.made, unit: 'rep' },
        amount.made,
        amount.perSide,
      );
    case 'cluster': {
      const sum = amount.parts.reduce((total, part) => total + part.value, 0);
      return amount.parts[0] && sided(amount.parts[0], sum, amount.perSide);
    }
    default:
      return undefined;
  }
}

function sided(quantity: Quantity, value: number, perSide: boolean): SidedQuantity {
  return perSide
    ? { quantity, total: value * 2, left: value, right: value }
    : { quantity, total: value, left: value / 2, right: value / 2 };
}

function computeAmountWork(name: string, amount: Amount, load: Load | undefined, context: SetContext): Work {
  const done = measureAmount(amount);
  if (!done) {
    const why =
      amount.kind === 'unrecorded'
        ? 'a set not recorded'
        : 'a range or open end counts once its number is written';
    return { ...NO_WORK, atLeast: true, omitted: [{ what: name, why }] };
  }
  const work = workOf(context.movement);
  switch (done.quantity.measure) {
    case 'seconds':
      return { ...NO_WORK, seconds: done.total };
    case 'calories':
      return { ...NO_WORK, calories: done.total };
    case 'metres':
      return computeCarry(name, done, load, context);
    case 'reps':
      if (work === 'jump' || context.movement?.entry.countsContacts)
        return { ...NO_WORK, contacts: done.total };
      return work === 'mobility' ? { ...NO_WORK, reps: done.total } : computeLift(name, done, load, context);
  }
}

function computeCarry(name: string, done: SidedQuantity, load: Load | undefined, context: SetContext): Work {
  const base = { ...NO_WORK, [findDistanceSum(context.movement)]: done.total };
  if (!load) return base;
  const moved = weighLoad(name, load, context);
  return {
    ...base,
    carried: moved.left * done.left + moved.right * done.right,
    omitted: moved.omitted,
    atLeast: moved.unknown,
  };
}

/** Metres of a carry, of a machine and of all else are never added. */
function findDistanceSum(movement: Movement | undefined): 'carriedMetres' | 'machineMetres' | 'metres' {
  if (workOf(movement) === 'carry') return 'carriedMetres';
  const isMetered = movement?.entry.needs.some(({ text }) => findEquipment(text)?.metered);
  return isMetered ? 'machineMetres' : 'metres';
}

function computeLift(name: string, done: SidedQuantity, load: Load | undefined, context: SetContext): Work {
  const share = findBodyShare(context);
  const needsLoad = implementOf(context.movement) !== 'none';
  const moved = load ? weighLoad(name, load, context) : NOTHING;
  const omitted: Omission[] = [...moved.omitted];
  let atLeast = moved.unknown;
  let body = 0;
  if (share !== undefined) {
    if (context.bodyMass === undefined)
      omitted.push({
        what: name,
        why: 'no weigh-in on or before the day, so its reps count without body mass',
      });
    else if (!moved.helped) body = Math.max(0, share * context.bodyMass - moved.help);
  } else if (!load && needsLoad && done.total > 0) {
    omitted.push({ what: name, why: 'no load written' });
    atLeast = true;
  } else if (load?.kind === 'bodyweight' && done.total > 0) {
    omitted.push({ what: name, why: 'no published share of body mass, so body mass is not counted' });
  }
  const external = moved.left * done.left + moved.right * done.right;
  const weighed = external > 0 || body > 0;
  return {
    ...NO_WORK,
    reps: done.total,
    weighedReps: weighed ? done.total : 0,
    external,
    body: body * done.total,
    omitted,
    atLeast,
  };
}

/** The share of body mass a rep moves; by sex where the movement's sources give one and the athlete states it. */
export function findBodyShare({ movement, sex }: Pick<SetContext, 'movement' | 'sex'>): number | undefined {
  const share = movement?.entry.bodyShare?.share;
  if (share === undefined || !movement?.builtIn || !sex) return share;
  const weighed = WEIGHED_MOVEMENTS[movement.key];
  return weighed ? roundTo(computePushUpShare(weighed, sex), 2) : share;
}

/** Built-in movements that were weighed for men and women apart. */
const WEIGHED_MOVEMENTS: Readonly<Record<string, keyof typeof WEIGHED_PUSH_UPS>> = {
  'push up': 'push-up',
  'knee push up': 'knee push-up',
};

/** Grams that one rep moves on each side; `help` is taken off the body's share. */
interface MovedLoad {
  readonly left: number;
  readonly right: number;
  readonly help: number;
  /** There is help of which no kilograms are known: what is left of the body cannot be told. */
  readonly helped: boolean;
  readonly unknown: boolean;
  readonly omitted: readonly Omission[];
}

const NOTHING: MovedLoad = { left: 0, right: 0, help: 0, helped: false, unknown: false, omitted: [] };

/** What of a load counts in kilograms, and what does not and why. */
export function weighLoad(name: string, load: Load, context: SetContext): MovedLoad {
  const even = (grams: number, omitted: readonly Omission[] = []): MovedLoad => ({
    ...NOTHING,
    left: grams,
    right: grams,
    omitted,
  });
  const uncounted = (why: string): MovedLoad => ({ ...NOTHING, omitted: [{ what: name, why }] });
  switch (load.kind) {
    case 'mass': {
      const omitted: Omission[] = [];
      if (load.chain) omitted.push({ what: name, why: `${load.chain.written} ${load.chain.unit} of chain` });
      if (load.band) omitted.push({ what: name, why: `${load.band} band: no kilograms` });
      if (load.high) return uncounted('a range of loads counts once its number is written');
      return even(gramsPerRep(load, context.movement), omitted);
    }
    case 'sides':
      return { ...NOTHING, left: load.left.grams, right: load.right.grams };
    case 'bodyweight': {
      const helped = load.sign === '-';
      if (load.pin !== undefined) return { ...uncounted(`pin ${load.pin}: no kilograms`), helped };
      if (load.band) return { ...uncounted(`${load.band} band: no kilograms`), helped };
      if (!load.mass) return NOTHING;
      return load.sign === '-' ? { ...NOTHING, help: load.mass.grams } : even(load.mass.grams);
    }
    case 'bodyweight-share':
      if (context.bodyMass === undefined)
        return { ...uncounted('no weigh-in on or before the day'), unknown: true };
      return even((context.bodyMass * load.percent) / 100);
    case 'pin':
      return load.plus
        ? even(load.plus.grams, [{ what: name, why: `pin ${load.pin}: no kilograms` }])
        : uncounted(`pin ${load.pin}: no kilograms`);
    case 'band':
      return uncounted(`${load.band} band: no kilograms`);
    case 'setting':
      return NOTHING;
    case 'percent':
    case 'offset':
    case 'target':
      return { ...uncounted('a percentage or target counts once its load is written'), unknown: true };
    case 'unrecorded':
      return { ...uncounted('a load not recorded'), unknown: true };
  }
}

/** Both implements ride on every rep, or each rep moves one of the two: the movement says which. */
function gramsPerRep(load: Extract<Load, { kind: 'mass' }>, movement: Movement | undefined): number {
  const both = load.mass.grams + (load.other?.grams ?? (load.implements === 2 ? load.mass.grams : 0));
  const held = load.other || load.implements === 2 ? 2 : 1;
  return movement?.entry.repMoves === 'one' ? both / held : both;
}
