/** From what a plan writes behind `@` to what is put on the bar that day. */

import { readReps } from '../measures/day-max.ts';
import { toRir } from '../measures/exertion.ts';
import { findLoadForReps, ONE_REP_MAX_FORMULA_IDS, type OneRepMaxFormula } from '../measures/one-rep-max.ts';
import { type Input, type Result, toResult } from '../measures/result.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { findBodyShare } from '../measures/set-work.ts';
import type { PlaceEntry } from '../model/entry.ts';
import type { Amount, Load, MassUnit } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { fromGrams } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import { describeMax, findPercentMax, findTargetMax, type KnownMax } from './latest-max.ts';
import { clamp, kindOf, type TakenStep, toBase } from './line-steps.ts';
import type { ProjectedLoad } from './projected.ts';
import { type Rounded, roundToPlace } from './round-to-place.ts';

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
interface Wanted {
  readonly grams: number;
  readonly inputs: readonly Input[];
  /** `80 % of 105`. */
  readonly words: readonly string[];
}

export function resolveLoad(context: LoadContext, question: LoadQuestion): ProjectedLoad {
  const { load } = question;
  switch (load.kind) {
    case 'mass':
      return resolveMass(context, question, load);
    case 'sides': {
      const [left, right] = [load.left, load.right].map((mass) =>
        round(context, question, move(mass.grams, mass.unit, question), mass.unit),
      );
      const isSame =
        left!.rounded.mass.grams === load.left.grams && right!.rounded.mass.grams === load.right.grams;
      if (isSame) return { load };
      return {
        load: { kind: 'sides', left: left!.rounded.mass, right: right!.rounded.mass },
        ...left!.explained,
      };
    }
    case 'bodyweight':
      return resolveBodyweight(context, question, load);
    case 'bodyweight-share': {
      const body = context.works.bodyMassOn(context.athlete, context.day);
      if (!body) return { load, unknown: 'no weigh-in on or before the day' };
      const percent = movePoints(load.percent, question.steps);
      const inputs: Input[] = [
        { label: 'body mass', value: body.grams / 1000, unit: 'kg' },
        { label: 'share', value: percent, unit: '%' },
      ];
      const words = [`${printPlain(percent)} % of body mass`];
      return toMassLoad(
        context,
        question,
        { grams: (body.grams * percent) / 100, inputs, words },
        undefined,
        false,
      );
    }
    case 'percent':
      return resolvePercent(context, question, load);
    case 'target':
      return resolveTarget(context, question, load);
    case 'offset': {
      if (question.top === undefined) return { load, unknown: 'the line has no top set with a load' };
      const grams = load.mass
        ? question.top - load.mass.grams
        : question.top * (1 - (load.percent ?? 0) / 100);
      const inputs: Input[] = [{ label: 'top set, not rounded', value: question.top / 1000, unit: 'kg' }];
      const off = load.mass
        ? `${printPlain(load.mass.written)} ${load.mass.unit}`
        : `${printPlain(load.percent ?? 0)} %`;
      // A deload has lightened the top set already.
      const answer = { ...question, share: undefined, steps: [] };
      return toMassLoad(
        context,
        answer,
        { grams: Math.max(0, grams), inputs, words: [`${off} off the top set`] },
        undefined,
        false,
      );
    }
    default:
      return { load };
  }
}

function resolveMass(
  context: LoadContext,
  question: LoadQuestion,
  load: Extract<Load, { kind: 'mass' }>,
): ProjectedLoad {
  const { mass, high, other } = load;
  const wanted = move(mass.grams, mass.unit, question);
  const answer = round(context, question, wanted, mass.unit);
  const isUnchanged = wanted.grams === mass.grams;
  // What the coach wrote is changed only where the place cannot make it.
  if (isUnchanged && (answer.rounded.by === 'usual step' || answer.rounded.fits))
    return { load, grams: mass.grams };
  const second = [high, other].map(
    (each) => each && round(context, question, move(each.grams, each.unit, question), each.unit).rounded.mass,
  );
  const resolved: Load = {
    ...load,
    mass: answer.rounded.mass,
    ...(second[0] && { high: second[0] }),
    ...(second[1] && { other: second[1] }),
  };
  return { load: resolved, grams: wanted.grams, ...answer.explained };
}

/** The added mass moves; help is a mass below zero. The share of body mass is no part of it. */
function resolveBodyweight(
  context: LoadContext,
  question: LoadQuestion,
  load: Extract<Load, { kind: 'bodyweight' }>,
): ProjectedLoad {
  const hasStep = question.steps.some(({ step, times }) => kindOf(step) === 'load' && times > 0);
  if (load.pin !== undefined || load.band || (!load.mass && !hasStep)) return { load };
  const unit =
    load.mass?.unit ?? (question.steps.find(({ step }) => kindOf(step) === 'load')!.step.unit as MassUnit);
  const written = (load.sign === '-' ? -1 : 1) * (load.mass?.grams ?? 0);
  const moved = move(written, unit, { ...question, share: written > 0 ? question.share : undefined });
  if (moved.grams === written) return { load, grams: written };
  return { ...toAdded(context, question, moved, unit), grams: moved.grams };
}

function toAdded(
  context: LoadContext,
  question: LoadQuestion,
  wanted: Wanted,
  unit: MassUnit,
): ProjectedLoad {
  const size = { ...wanted, grams: Math.abs(wanted.grams) };
  const { rounded, explained } = round(context, question, size, unit);
  if (rounded.mass.grams === 0) return { load: { kind: 'bodyweight' }, ...explained, grams: wanted.grams };
  const sign = wanted.grams < 0 ? '-' : '+';
  return { load: { kind: 'bodyweight', sign, mass: rounded.mass }, ...explained, grams: wanted.grams };
}

function resolvePercent(
  context: LoadContext,
  question: LoadQuestion,
  load: Extract<Load, { kind: 'percent' }>,
): ProjectedLoad {
  const { works, athlete, day, formula } = context;
  const ofName = load.of?.text ?? question.name;
  const max = findPercentMax(works, athlete, ofName, day, formula);
  if (!max) return { load, unknown: `no max of ${ofName} is known on that day` };
  const wanted = (written: number): Wanted | undefined => {
    const percent = movePoints(written, question.steps);
    const base = weighMax(context, ofName, max);
    if (!base) return undefined;
    const share = (percent / 100) * ((context.trainingMax ?? 100) / 100);
    const training: Input[] =
      context.trainingMax === undefined
        ? []
        : [{ label: 'training max', value: context.trainingMax, unit: '%' }];
    const unit = unitOf(context, question);
    const shown = printNumber(fromGrams(base.total, unit), 1);
    const of = context.trainingMax === undefined ? shown : `${printPlain(context.trainingMax)} % of ${shown}`;
    return {
      grams: base.total * share - base.body,
      inputs: [
        { label: describeMax(ofName, max), value: max.kilograms, unit: 'kg' },
        ...(base.body > 0
          ? [{ label: 'share of body mass', value: base.body / 1000, unit: 'kg' } as const]
          : []),
        ...training,
        { label: 'percent', value: percent, unit: '%' },
      ],
      words: [`${printNumber(percent, 2)} % of ${of}${max.kind === 'estimated' ? ' e1RM' : ''}`],
    };
  };
  const [low, high] = [wanted(load.low), load.high === undefined ? undefined : wanted(load.high)];
  if (!low) return { load, unknown: 'no weigh-in on or before the day' };
  return toMassLoad(context, question, low, high, max.perHand, max.added);
}

/** Grams that a max moves in all, and what of them is the body. */
function weighMax(
  { works, athlete, day }: LoadContext,
  name: string,
  max: KnownMax,
): { total: number; body: number } | undefined {
  const external = max.kilograms * 1000;
  if (!max.added) return { total: external, body: 0 };
  const sex = works.practice.findAthlete(athlete)?.entry.sex;
  const share = findBodyShare({ movement: works.practice.findMovement(name), ...(sex && { sex }) });
  const mass = works.bodyMassOn(athlete, day);
  if (share === undefined || !mass) return undefined;
  return { total: external + share * mass.grams, body: share * mass.grams };
}

/** A target's load range: from the least that any formula gives at its hardest to the most at its easiest. */
function resolveTarget(
  context: LoadContext,
  question: LoadQuestion,
  load: Extract<Load, { kind: 'target' }>,
): ProjectedLoad {
  const { works, athlete, day, formula } = context;
  const max = findTargetMax(works, athlete, question.name, day, formula);
  const reps = listReps(question.amount);
  const scale = question.steps.filter(({ step }) => step.unit === load.scale);
  const ratings = [load.low, load.high ?? load.low].map((rating) =>
    scale.reduce((value, { step, times }) => clamp(value, step, times), rating),
  );
  const reserves = ratings.map((rating) =>
    load.scale === 'rir' ? Math.max(0, rating) : toRir(Math.min(10, rating)),
  );
  const stepped: Load = { ...load, low: ratings[0]!, ...(load.high !== undefined && { high: ratings[1]! }) };
  if (!reps || reserves.some((reserve) => reserve === undefined))
    return { load: stepped, unknown: 'a target needs a number of reps and at most 4 in reserve' };
  const base = max && weighMax(context, question.name, max);
  if (!max || !base)
    return { load: stepped, unknown: `no estimate of ${question.name} is known on that day` };
  const effective = reps.flatMap((count) => reserves.map((reserve) => count + reserve!));
  const least = Math.max(...effective);
  const most = Math.min(...effective);
  const loadAt = (count: number, by: OneRepMaxFormula): number | undefined => {
    const total = findLoadForReps(base.total, count, by);
    return total === undefined ? undefined : total - base.body;
  };
  const ends = ONE_REP_MAX_FORMULA_IDS.flatMap((id) => [loadAt(least, id), loadAt(most, id)]).filter(
    (grams) => grams !== undefined,
  );
  const leading = [loadAt(least, formula), loadAt(most, formula)].filter((grams) => grams !== undefined);
  if (ends.length === 0 || leading.length === 0)
    return { load: stepped, unknown: 'more reps than an estimate is good for' };
  const asked =
    ratings[0] === ratings[1]
      ? printPlain(ratings[0]!)
      : `${printPlain(ratings[0]!)}-${printPlain(ratings[1]!)}`;
  const unit = unitOf(context, question);
  const shown = printNumber(fromGrams(max.kilograms * 1000, unit), 1);
  const inputs: Input[] = [
    { label: describeMax(question.name, max), value: max.kilograms, unit: 'kg' },
    { label: 'reps', value: Math.max(...reps), unit: 'reps' },
    { label: load.scale, value: ratings[0]!, unit: load.scale === 'rpe' ? 'RPE' : 'RIR' },
  ];
  const words = [`${load.scale} ${asked} of ${max.kind === 'estimated' ? 'e1RM ' : ''}${shown}`];
  const at = (grams: number): Wanted => ({ grams, inputs, words });
  const others = { ...question, steps: question.steps.filter(({ step }) => kindOf(step) === 'load') };
  const middle = leading.reduce((sum, grams) => sum + grams, 0) / leading.length;
  const range = toMassLoad(
    context,
    others,
    at(Math.min(...ends)),
    at(Math.max(...ends)),
    max.perHand,
    max.added,
  );
  const centre = toMassLoad(context, others, at(middle), undefined, max.perHand, max.added);
  const chosen =
    centre.load.kind === 'mass'
      ? centre.load.mass
      : centre.load.kind === 'bodyweight'
        ? centre.load.mass
        : undefined;
  const result: Result | undefined = range.result &&
    centre.result && {
      ...centre.result,
      method: 'target-load',
      bound: 'prediction',
      spread: range.result.spread ?? { low: range.result.value!, high: range.result.value! },
    };
  return {
    ...range,
    ...(centre.grams !== undefined && { grams: centre.grams }),
    ...(chosen && { middle: chosen }),
    ...(result && { result }),
    derivation: words.join(''),
  };
}

/** Reps a side that a set asks for: one number, or the ends of a range. */
function listReps(amount: Amount | undefined): number[] | undefined {
  if (amount?.kind === 'range')
    return amount.low.measure === 'reps' ? [amount.low.value, amount.high.value] : undefined;
  if (amount?.kind === 'at-least')
    return amount.quantity.measure === 'reps' ? [amount.quantity.value] : undefined;
  const reps = readReps(amount)?.reps;
  return reps === undefined || reps < 1 ? undefined : [reps];
}

/** Steps of mass and of percent on a mass, in the order written, then the deload's share. */
function move(
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

function movePoints(percent: number, steps: readonly TakenStep[]): number {
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

/** A load made from a max or the body: what steps of mass add, the deload's share, and what the place can load. */
function toMassLoad(
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
  if (added) return toAdded(context, question, wanted, unit);
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
function unitOf({ unit, place }: LoadContext, { steps }: LoadQuestion): MassUnit {
  const stepped = steps.find(({ step }) => step.unit === 'kg' || step.unit === 'lb')?.step.unit;
  return (stepped as MassUnit | undefined) ?? place?.plates[0]?.mass.unit ?? unit;
}

function round(
  { place }: LoadContext,
  { movement }: LoadQuestion,
  { grams, inputs, words }: Wanted,
  unit: MassUnit,
): { rounded: Rounded; explained: { result: Result; derivation: string } } {
  const rounded = roundToPlace(grams, unit, movement, place);
  const { mass, limit, by } = rounded;
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
  return { rounded, explained: { result, derivation: isPlain ? '' : sum } };
}

/** `85 % of (95 + 5)`. */
function bracket(words: string): string {
  return / [+-] /.test(words) ? `(${words})` : words;
}

function joinWords(words: readonly string[]): string {
  return words.join(' ');
}

/** The grams of the heaviest set that says a load by itself: what `-10%` is taken from. */
export function findTop(loads: readonly (ProjectedLoad | undefined)[]): number | undefined {
  const known = loads.flatMap((load) => load?.grams ?? []);
  return known.length > 0 ? Math.max(...known) : undefined;
}
