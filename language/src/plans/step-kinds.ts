/** What a step moves, and how big it is. */
import type { Step, StepUnit } from '../model/quantity.ts';
import { METRES_PER } from '../units/distance.ts';
import { toGrams } from '../units/mass.ts';

/** A step and how often it has been taken. */
export interface TakenStep {
  readonly step: Step;
  readonly times: number;
}

export type StepKind =
  | 'reps'
  | 'seconds'
  | 'metres'
  | 'calories'
  | 'load'
  | 'percent'
  | 'rating'
  | 'sets'
  | 'rounds';

const KINDS: Readonly<Record<StepUnit, StepKind>> = {
  rep: 'reps',
  s: 'seconds',
  min: 'seconds',
  h: 'seconds',
  m: 'metres',
  km: 'metres',
  yd: 'metres',
  mi: 'metres',
  cal: 'calories',
  kg: 'load',
  lb: 'load',
  '%': 'percent',
  rpe: 'rating',
  rir: 'rating',
  set: 'sets',
  round: 'rounds',
};

export function kindOf(step: Pick<Step, 'unit'>): StepKind {
  return KINDS[step.unit];
}

const BASE_UNITS: Readonly<Partial<Record<StepKind, StepUnit>>> = { seconds: 's', metres: 'm' };

export function baseUnit(step: Step): StepUnit {
  return BASE_UNITS[kindOf(step)] ?? step.unit;
}

/** A step's size in what its kind is kept in: seconds, metres, grams, else as it is. */
export function toBase(amount: number, unit: StepUnit): number {
  switch (unit) {
    case 'min':
      return amount * 60;
    case 'h':
      return amount * 3600;
    case 'm':
    case 'km':
    case 'yd':
    case 'mi':
      return amount * METRES_PER[unit];
    case 'kg':
    case 'lb':
      return toGrams(amount, unit);
    default:
      return amount;
  }
}
