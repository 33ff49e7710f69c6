/** A load before it is rounded, with how it came about, and what of it is put on the bar. */
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import { type Input, type Result, toResult } from '../measures/result.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { PlaceEntry } from '../model/entry.ts';
import type { Amount, Load, MassUnit } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { fromGrams } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import type { Maxes } from './latest-max.ts';
import { clamp } from './move-amount.ts';
import type { ProjectedLoad } from './projected.ts';
import { type Rounded, roundAddedToPlace, roundToPlace } from './round-to-place.ts';
import { kindOf, type TakenStep, toBase } from './step-kinds.ts';

/** For whom, when and where a load is worked out. */
export interface LoadContext {
  readonly works: SessionWorks;
  /** Folded name. */
  readonly athlete: string;
  /** Days since 1970-01-01: the max valid then counts. */
  readonly day: number;
  readonly place: PlaceEntry | undefined;
  /** Of the answer where neither the load nor the place says. */
  readonly unit: MassUnit;
  readonly maxes: Maxes;
  readonly formula: OneRepMaxFormula;
  /** Percent: `training max 90%`. */
  readonly trainingMax: number | undefined;
}

/** What a set asks for, with what steps and the deload make of it. */
export interface LoadQuestion {
  readonly name: string;
  readonly movement: Movement | undefined;
  readonly amount: Amount | undefined;
  readonly load: Load;
  readonly steps: readonly TakenStep[];
  /** Percent: a deload's share of the load. */
  readonly share: number | undefined;
  /** Unrounded grams of the line's top set, for `-10%`. */
  readonly top: number | undefined;
}

/** Grams before rounding, and how they came about. */
export interface Wanted {
  readonly grams: number;
  readonly inputs: readonly Input[];
  /** `80 % of 105`. */
  readonly words: readonly string[];
}

/** Steps of mass and of percent on a mass, in the order written, then the deload's share. */
export function move(
  grams: number,
  unit: MassUnit,
  { steps, share }: Pick<LoadQuestion, 'steps' | 'share'>,
): Wanted {
  let moved = grams;
  const words = [`${printNumber(fromGrams(grams, unit), 2)}`];
  const inputs: Input[] = [{ label: 'written', value: grams / 1000, unit: 'kg' }];
  for (const { step, times } of steps) {
    const kind = kindOf(step);
    if (times === 0 || (kind !== 'load' && kind !== 'percent')) continue;
    const before = moved;
    moved = kind === 'load' ? clamp(moved, step, times) : multiply(moved, step, times);
    if (moved === before) continue;
    const size = `${printPlain(step.amount)}${step.unit === '%' ? ' %' : ''}`;
    words.push(`${step.sign > 0 ? '+' : '-'} ${times === 1 ? size : `${times} x ${size}`}`);
    inputs.push({
      label: `${times} ${times === 1 ? 'step' : 'steps'} of ${step.sign > 0 ? '' : '-'}${size}`,
      value: (moved - before) / 1000,
      unit: 'kg',
    });
  }
  return applyShare({ grams: moved, inputs, words: [words.join(' ')] }, share);
}

function multiply(grams: number, step: TakenStep['step'], times: number): number {
  const moved = grams * (1 + (step.sign * step.amount) / 100) ** times;
  if (step.bound === undefined || (step.boundUnit !== 'kg' && step.boundUnit !== 'lb')) return moved;
  const bound = toBase(step.bound, step.boundUnit);
  return step.sign > 0 ? Math.max(grams, Math.min(moved, bound)) : Math.min(grams, Math.max(moved, bound));
}

export function movePoints(percent: number, steps: readonly TakenStep[]): number {
  return steps
    .filter(({ step }) => kindOf(step) === 'percent')
    .reduce((value, { step, times }) => Math.max(0, clamp(value, step, times)), percent);
}

function applyShare(wanted: Wanted, share: number | undefined): Wanted {
  if (share === undefined) return wanted;
  return {
    grams: (wanted.grams * share) / 100,
    inputs: [...wanted.inputs, { label: 'deload', value: share, unit: '%' }],
    words: [`${printPlain(share)} % of ${bracket(joinWords(wanted.words))}`],
  };
}

export function toAdded({ place }: LoadContext, wanted: Wanted, unit: MassUnit): ProjectedLoad {
  const size = { ...wanted, grams: Math.abs(wanted.grams) };
  // Help is no weight that hangs from a belt.
  const rounded =
    wanted.grams < 0
      ? roundToPlace(size.grams, unit, undefined, undefined)
      : roundAddedToPlace(size.grams, unit, place);
  const explained = explain(rounded, size);
  if (rounded.mass.grams === 0) return { load: { kind: 'bodyweight' }, ...explained, grams: wanted.grams };
  const sign = wanted.grams < 0 ? '-' : '+';
  return { load: { kind: 'bodyweight', sign, mass: rounded.mass }, ...explained, grams: wanted.grams };
}

/** A load made from a max or the body: what steps of mass add, the deload's share, and what the place can load. */
export function toMassLoad(
  context: LoadContext,
  question: LoadQuestion,
  low: Wanted,
  high: Wanted | undefined,
  perHand: boolean,
  added = false,
): ProjectedLoad {
  const unit = unitOf(context, question);
  const finish = (wanted: Wanted): Wanted => applyShare(addMasses(wanted, question.steps), question.share);
  const wanted = finish(low);
  if (added) return toAdded(context, wanted, unit);
  const first = round(context, question, { ...wanted, grams: Math.max(0, wanted.grams) }, unit);
  const last = high && round(context, question, finish(high), unit);
  const isRange = last !== undefined && last.rounded.mass.grams !== first.rounded.mass.grams;
  const load: Load = {
    kind: 'mass',
    mass: first.rounded.mass,
    ...(isRange && { high: last.rounded.mass }),
    implements: perHand ? 2 : 1,
  };
  const spread = isRange && {
    spread: { low: first.rounded.mass.grams / 1000, high: last.rounded.mass.grams / 1000 },
  };
  return {
    load,
    grams: wanted.grams,
    ...first.explained,
    result: { ...first.explained.result, ...spread },
    ...(isRange && { derivation: joinWords(wanted.words) }),
  };
}

function addMasses(wanted: Wanted, steps: readonly TakenStep[]): Wanted {
  const masses = steps.filter(({ step, times }) => kindOf(step) === 'load' && times > 0);
  return masses.reduce<Wanted>((sum, { step, times }) => {
    const grams = clamp(sum.grams, step, times);
    const size = `${times === 1 ? '' : `${times} x `}${printPlain(step.amount)} ${step.unit}`;
    const input: Input = {
      label: `${times} steps of ${printPlain(step.amount)} ${step.unit}`,
      value: (grams - sum.grams) / 1000,
      unit: 'kg',
    };
    return {
      grams,
      inputs: [...sum.inputs, input],
      words: [...sum.words, `${step.sign > 0 ? '+' : '-'} ${size}`],
    };
  }, wanted);
}

/** The unit that the plan or place thinks in: that of a step, of the place's plates, else the athlete's. */
export function unitOf({ unit, place }: LoadContext, { steps }: LoadQuestion): MassUnit {
  const stepped = steps.find(({ step }) => step.unit === 'kg' || step.unit === 'lb')?.step.unit;
  return (stepped as MassUnit | undefined) ?? place?.plates[0]?.mass.unit ?? unit;
}

export function round(
  { place }: LoadContext,
  { movement, load }: LoadQuestion,
  wanted: Wanted,
  unit: MassUnit,
): { rounded: Rounded; explained: Explained } {
  const written = load.kind === 'mass' ? load.mass : undefined;
  const rounded = roundToPlace(wanted.grams, unit, movement, place, written);
  return { rounded, explained: explain(rounded, wanted) };
}

interface Explained {
  readonly result: Result;
  readonly note?: string;
  readonly derivation: string;
}

function explain({ mass, limit, by }: Rounded, { grams, inputs, words }: Wanted): Explained {
  const exact = printNumber(fromGrams(grams, mass.unit), 2);
  const isRounded = exact !== printNumber(mass.written, 2);
  const remarks = [
    isRounded ? `rounded from ${exact} ${mass.unit}` : undefined,
    limit === 'lightest'
      ? 'the lightest there is'
      : limit === 'heaviest'
        ? 'the heaviest there is'
        : undefined,
    by === 'usual step' ? 'no inventory says what can be loaded' : undefined,
  ].filter((remark) => remark !== undefined);
  const result = toResult({
    value: mass.grams / 1000,
    unit: 'kg',
    method: 'planned-load',
    inputs: [...inputs, { label: 'before rounding', value: grams / 1000, unit: 'kg' }],
    ...(remarks.length > 0 && { remark: remarks.join(', ') }),
  });
  const text = joinWords(words);
  const isPlain = text === exact && !isRounded;
  const sum = text === exact ? text : `${text} = ${exact}`;
  const note =
    limit &&
    isRounded &&
    `${exact} ${mass.unit} by the plan, and ${printPlain(mass.written)} ${mass.unit} is the ${limit} that the place can load`;
  return { result, derivation: isPlain ? '' : sum, ...(note && { note }) };
}

/** `85 % of (95 + 5)`. */
function bracket(words: string): string {
  return / [+-] /.test(words) ? `(${words})` : words;
}

function joinWords(words: readonly string[]): string {
  return words.join(' ');
}
