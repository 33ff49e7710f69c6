import type { Block, ExerciseEntry, MovementLine } from '../model/entry.ts';
import type { Amount, SetGroup } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { implementOf, workOf } from '../practice/movement.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import type { WorkContext } from './block-work.ts';
import { HIGHEST_USEFUL_RIR } from './exertion.ts';
import { findCell, lacksLoad, numberOfSet } from './expand-sets.ts';
import { findBodyShare, readSetReserve } from './set-work.ts';

/** What tells one series of estimates from another: never compared across. */
export interface Series {
  readonly key: string;
  readonly movement: string;
  /** Per hand where two implements are held. */
  readonly perHand: boolean;
}

/** The key of the movement of a series, or its name in lower case where nothing defines it. */
export function toMovementKey(seriesKey: string): string {
  return seriesKey.split(' | ', 1)[0]!;
}

/** A set that says something about the max of its series. */
export interface Candidate {
  readonly line: MovementLine;
  readonly setNumber: number;
  readonly series: Series;
  /** Kilograms moved, body share included. */
  readonly total: number;
  /** Kilograms of body share in it. */
  readonly body: number;
  readonly reps: number;
  readonly reserve: number | undefined;
  /** Not lifted even once, though no clock and no other movement had tired the athlete out. */
  readonly missed: boolean;
  /** 4: rated too far from failure to estimate from; that it was lifted still counts. */
  readonly tier: 1 | 2 | 3 | 4;
  readonly atLeast: boolean;
}

/** What a line's sets rest on beside the line. */
interface Basis {
  readonly movement: ExerciseEntry | undefined;
  readonly lowerBound: boolean;
  readonly athleteIndex: number;
  readonly bodyMass: number | undefined;
  readonly sex: WorkContext['sex'];
  readonly place: string | undefined;
}

const known = new WeakMap<MovementLine, Basis & { readonly candidates: readonly Candidate[] }>();

/** Those of one line, in order; the same list as long as all that they rest on is the same. */
export function findCandidates(
  block: Block,
  line: MovementLine,
  athleteIndex: number,
  context: WorkContext,
  place: string | undefined,
): readonly Candidate[] {
  const lowerBound = BLOCK_KINDS[block.kind].endedByClock || block.alternating;
  const { bodyMass, sex } = context;
  const movement = context.findMovement(line.name.text);
  const found = known.get(line);
  if (
    found?.movement === movement?.entry &&
    found?.lowerBound === lowerBound &&
    found.athleteIndex === athleteIndex &&
    found.bodyMass === bodyMass &&
    found.sex === sex &&
    found.place === place
  )
    return found.candidates;
  const candidates = readLine({ line, movement, lowerBound }, athleteIndex, context, place);
  known.set(line, { movement: movement?.entry, lowerBound, athleteIndex, bodyMass, sex, place, candidates });
  return candidates;
}

function readLine(
  { line, movement, lowerBound }: { line: MovementLine; movement: Movement | undefined; lowerBound: boolean },
  athleteIndex: number,
  context: WorkContext,
  place: string | undefined,
): Candidate[] {
  const cell = findCell(line, athleteIndex);
  if (!cell || workOf(movement) !== 'strength') return [];
  return cell.sets.flatMap((group, index): Candidate[] => {
    const written = readReps(group.amount);
    const turns = takesTurns(group, movement);
    // Ten in turns are five of each side.
    const done = written && turns ? { ...written, reps: Math.floor(written.reps / 2) } : written;
    const load = done && !lacksLoad(line, group) ? weighForMax(group, movement, context) : undefined;
    if (!done || !load) return [];
    const { reserve, tier } = readReserveOf(group, done.failed, line.purpose === 'test');
    return [
      {
        line,
        setNumber: numberOfSet(cell.sets, index),
        series: toSeries(line, cell.modifiers, group, movement, place),
        ...load,
        reps: done.reps,
        reserve,
        missed: done.failed && done.reps === 0 && !lowerBound,
        tier,
        atLeast: lowerBound || turns || done.partial || group.drops.length > 0 || reserve === undefined,
      },
    ];
  });
}

/** Two implements are held and each rep moves one: the sides take turns, unless the reps of each are written. */
function takesTurns({ amount, load }: SetGroup, movement: Movement | undefined): boolean {
  const perSide = amount?.kind === 'sides' || (amount !== undefined && 'perSide' in amount && amount.perSide);
  return !perSide && movement?.entry.repMoves === 'one' && load?.kind === 'mass' && load.implements === 2;
}

/** Reps per side of a set's first part; a failed attempt counts those made. */
export function readReps(
  amount: Amount | undefined,
): { reps: number; failed: boolean; partial: boolean } | undefined {
  switch (amount?.kind) {
    case 'quantity':
      return amount.quantity.measure === 'reps'
        ? { reps: amount.quantity.value, failed: false, partial: false }
        : undefined;
    case 'sides': {
      if (amount.left.measure !== 'reps') return undefined;
      return { reps: Math.min(amount.left.value, amount.right.value), failed: false, partial: false };
    }
    case 'attempt':
      return { reps: amount.made, failed: amount.made < amount.tried, partial: false };
    case 'cluster': {
      const first = amount.parts[0];
      return first?.measure === 'reps'
        ? { reps: first.value, failed: false, partial: amount.parts.length > 1 }
        : undefined;
    }
    default:
      return undefined;
  }
}

/**
 * A failed set has none in reserve, and neither has an unrated test, which is taken as far as it goes. Of a rating too
 * far from failure to estimate from none is known.
 */
function readReserveOf(
  group: SetGroup,
  failed: boolean,
  isTest: boolean,
): { reserve: number | undefined; tier: Candidate['tier'] } {
  const rated = group.ratings.some(({ scale }) => scale === 'rpe' || scale === 'rir');
  if (failed || (isTest && !rated)) return { reserve: 0, tier: 1 };
  const reserve = readSetReserve(group.ratings);
  if (!rated) return { reserve: undefined, tier: 3 };
  if (reserve === undefined || reserve > HIGHEST_USEFUL_RIR) return { reserve, tier: 4 };
  return { reserve, tier: reserve <= 2 ? 1 : 2 };
}

/** Kilograms of one rep: of one hand where two implements are held, with the body's share where it has one. */
function weighForMax(
  group: SetGroup,
  movement: Movement | undefined,
  context: WorkContext,
): { total: number; body: number } | undefined {
  const { load } = group;
  const share = findBodyShare({ movement, ...(context.sex && { sex: context.sex }) });
  const body =
    share === undefined || context.bodyMass === undefined ? undefined : (share * context.bodyMass) / 1000;
  if (share !== undefined && body === undefined) return undefined;
  if (load?.kind === 'mass' && !load.other && !load.high) {
    return { total: load.mass.grams / 1000 + (body ?? 0), body: body ?? 0 };
  }
  const alone = load === undefined || load.kind === 'bodyweight';
  if (!alone || body === undefined) return undefined;
  if (load && (load.pin !== undefined || load.band)) return undefined;
  const added = load?.mass ? ((load.sign === '-' ? -1 : 1) * load.mass.grams) / 1000 : 0;
  return body + added > 0 ? { total: body + added, body } : undefined;
}

/** The series a set belongs to. */
export function toSeries(
  line: MovementLine,
  cellModifiers: MovementLine['modifiers'],
  group: SetGroup,
  movement: Movement | undefined,
  place: string | undefined,
): Series {
  const name = movement?.name ?? line.name.text;
  const { load } = group;
  const marks = [...cellModifiers, ...line.modifiers].flatMap((modifier) => {
    if (modifier.kind === 'setting') return [modifier.text.toLowerCase()];
    return modifier.kind === 'tempo' ? [`tempo ${modifier.phases.join('-')}`] : [];
  });
  if (load?.kind === 'mass' && load.chain) marks.push(`${load.chain.grams} g of chain`);
  if (load?.kind === 'mass' && load.band) marks.push(`${load.band} band`);
  const perHand = load?.kind === 'mass' && load.implements === 2;
  if (perHand) marks.push('two implements');
  // Kilograms marked on a machine or stack mean something on that machine alone.
  if (implementOf(movement) === 'stack') marks.push(`at ${place ?? ''}`);
  return {
    key: [movement?.key ?? line.name.text.toLowerCase(), ...marks.sort()].join(' | '),
    movement: name,
    perHand,
  };
}
