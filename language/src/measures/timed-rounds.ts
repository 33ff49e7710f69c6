/** Rounds whose time an athlete wrote down, and what each asked for. */
import type { Block, MovementLine } from '../model/entry.ts';
import type { Amount } from '../model/quantity.ts';
import { workOf } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { findTimes } from './density.ts';
import { type ExpandedSet, expandBlock, findCell } from './expand-sets.ts';
import { rememberByHistory } from './remember.ts';
import { identifyBlock } from './same-block.ts';
import { measureAmount } from './set-work.ts';
import { computeSecondsPerRep } from './tempo.ts';

/** What a stretch of work asks for, as far as its time goes. */
export interface Demand {
  /** Reps, both sides, at the athlete's own pace. */
  readonly reps: number;
  /** Seconds that are written: holds, times for a distance, reps at a tempo, rests between movements. */
  readonly seconds: number;
  /** Walked or pushed, and on a machine. */
  readonly metres: number;
  readonly machineMetres: number;
  readonly calories: number;
  /** Sets, between which the athlete changes over. */
  readonly sets: number;
  /** Something in it has no number. */
  readonly isOpen: boolean;
}

export const NO_DEMAND: Demand = {
  reps: 0,
  seconds: 0,
  metres: 0,
  machineMetres: 0,
  calories: 0,
  sets: 0,
  isOpen: false,
};

export interface TimedRound {
  readonly day: number;
  /** Which block it was a round of. */
  readonly block: string;
  readonly seconds: number;
  readonly demand: Demand;
}

/** Every timed round of an athlete, in order of days. */
export const listTimedRounds = rememberByHistory((practice, athlete): readonly TimedRound[] =>
  practice
    .sessionsOf(athlete)
    .flatMap((record) => record.entry.blocks.flatMap((block) => readRounds(practice, block, record))),
);

function readRounds(
  practice: Practice,
  block: Block,
  record: { readonly index: number; readonly day: number },
): TimedRound[] {
  const times = findTimes(block, record);
  if (times.every((time) => !time)) return [];
  const { key } = identifyBlock(practice, block);
  const rounds = splitByRound(expandBlock(block, record.index));
  return times.flatMap((seconds, round): TimedRound[] => {
    const sets = rounds[round];
    if (!seconds || !sets) return [];
    const demand = addInnerRests(block, sumDemand(practice, sets, record.index));
    return [{ day: record.day, block: key, seconds, demand }];
  });
}

export function splitByRound(sets: readonly ExpandedSet[]): ExpandedSet[][] {
  const rounds: ExpandedSet[][] = [];
  for (const set of sets) {
    const round = set.round ?? 0;
    rounds[round] ??= [];
    rounds[round].push(set);
  }
  return Array.from(rounds, (round) => round ?? []);
}

/** Rests between the movements of a round are part of its time, once for each pass; one behind the last is not. */
export function addInnerRests(block: Block, demand: Demand): Demand {
  const inner = block.restsBetween.filter(({ after }) => after >= 0 && after < block.lines.length - 1);
  const seconds = inner.reduce((total, rest) => total + rest.seconds, 0) * block.passes;
  return { ...demand, seconds: demand.seconds + seconds };
}

/** Which end of a planned range is taken; a log has no ranges. */
export type RangeEnd = 'low' | 'high';

export function sumDemand(
  practice: Practice,
  sets: readonly ExpandedSet[],
  cellIndex: number,
  end: RangeEnd = 'low',
): Demand {
  return sets
    .map((set) => toDemand(practice, set, cellIndex, end))
    .reduce(
      (total, part) => ({
        reps: total.reps + part.reps,
        seconds: total.seconds + part.seconds,
        metres: total.metres + part.metres,
        machineMetres: total.machineMetres + part.machineMetres,
        calories: total.calories + part.calories,
        sets: total.sets + part.sets,
        isOpen: total.isOpen || part.isOpen,
      }),
      NO_DEMAND,
    );
}

function toDemand(
  practice: Practice,
  { line, group, amount }: ExpandedSet,
  cellIndex: number,
  end: RangeEnd,
): Demand {
  if (amount?.kind === 'skipped') return NO_DEMAND;
  const open = { ...NO_DEMAND, sets: 1, isOpen: true };
  if (group.within) return { ...NO_DEMAND, sets: 1, seconds: group.within.value };
  const done = amount && measureAmount(takeEnd(amount, end));
  if (!done) return open;
  const pauses = amount.kind === 'cluster' && amount.rest ? amount.rest.value * (amount.parts.length - 1) : 0;
  const base = { ...NO_DEMAND, sets: 1, seconds: pauses };
  switch (done.quantity.measure) {
    case 'reps': {
      const tempo = findTempo(line, cellIndex);
      return tempo === undefined
        ? { ...base, reps: done.total }
        : { ...base, seconds: base.seconds + tempo * done.total };
    }
    case 'seconds':
      return { ...base, seconds: base.seconds + done.total };
    case 'metres':
      return workOf(practice.findMovement(line.name.text)) === 'conditioning'
        ? { ...base, machineMetres: done.total }
        : { ...base, metres: done.total };
    case 'calories':
      return { ...base, calories: done.total };
  }
}

/** A range or an open end as one number; an attempt takes the time of all its tries. */
function takeEnd(amount: Amount, end: RangeEnd): Amount {
  switch (amount.kind) {
    case 'range':
      return { kind: 'quantity', quantity: amount[end], perSide: amount.perSide };
    case 'at-least':
      return { kind: 'quantity', quantity: amount.quantity, perSide: amount.perSide };
    case 'attempt':
      return { ...amount, made: amount.tried };
    default:
      return amount;
  }
}

/** Seconds a rep at the tempo written for a line. */
function findTempo(line: MovementLine, cellIndex: number): number | undefined {
  const modifiers = [...(findCell(line, cellIndex)?.modifiers ?? []), ...line.modifiers];
  const tempo = modifiers.find((modifier) => modifier.kind === 'tempo');
  return tempo && computeSecondsPerRep(tempo.phases);
}
