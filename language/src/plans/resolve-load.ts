/** From what a plan writes behind `@` to what is put on the bar that day. */
import type { Input } from '../measures/result.ts';
import type { Load, MassUnit } from '../model/quantity.ts';
import { printLoad } from '../printing/print-load.ts';
import { printPlain } from '../printing/print-quantity.ts';
import type { ProjectedLoad } from './projected.ts';
import { resolvePercent, resolveTarget } from './resolve-max-load.ts';
import { kindOf } from './step-kinds.ts';
import {
  type LoadContext,
  type LoadQuestion,
  move,
  movePoints,
  round,
  toAdded,
  toMassLoad,
} from './wanted-load.ts';

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
  const note =
    answer.explained.note ??
    (isUnchanged
      ? `${printLoad(load)} in the plan: the nearest that the place can load is written`
      : undefined);
  return { load: resolved, grams: wanted.grams, ...answer.explained, ...(note && { note }) };
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
  return { ...toAdded(context, moved, unit), grams: moved.grams };
}

/** The grams of the heaviest set that says a load by itself: what `-10%` is taken from. */
export function findTop(loads: readonly (ProjectedLoad | undefined)[]): number | undefined {
  const known = loads.flatMap((load) => load?.grams ?? []);
  return known.length > 0 ? Math.max(...known) : undefined;
}
