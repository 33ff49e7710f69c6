/** Loads made from a max: `75%` and `rpe 8`. */

import { toRir } from '../measures/exertion.ts';
import { readReps } from '../measures/max-candidates.ts';
import { findLoadForReps, ONE_REP_MAX_FORMULA_IDS, type OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { Input, Result } from '../measures/result.ts';
import { findBodyShare } from '../measures/set-work.ts';
import type { Amount, Load } from '../model/quantity.ts';
import { printLoad } from '../printing/print-load.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { fromGrams } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import { describeMax, type KnownMax } from './latest-max.ts';
import { clamp } from './move-amount.ts';
import type { ProjectedLoad } from './projected.ts';
import { kindOf } from './step-kinds.ts';
import {
  type LoadContext,
  type LoadQuestion,
  movePoints,
  toMassLoad,
  unitOf,
  type Wanted,
} from './wanted-load.ts';

export function resolvePercent(
  context: LoadContext,
  question: LoadQuestion,
  load: Extract<Load, { kind: 'percent' }>,
): ProjectedLoad {
  const ofName = load.of?.text ?? question.name;
  const max = context.maxes.percent(ofName);
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
  const resolved = toMassLoad(context, question, low, high, max.perHand, max.added);
  if (max.bound !== 'at least') return resolved;
  const shown = `${printNumber(fromGrams(max.kilograms * 1000, unitOf(context, question)), 1)} ${unitOf(context, question)}`;
  const doubt = `${printLoad(load)} in the plan, of a max that is only known to be at least ${shown}`;
  return { ...resolved, note: [doubt, resolved.note].filter((part) => part !== undefined).join('; ') };
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
export function resolveTarget(
  context: LoadContext,
  question: LoadQuestion,
  load: Extract<Load, { kind: 'target' }>,
): ProjectedLoad {
  const { formula } = context;
  const max = context.maxes.target(question.name);
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
