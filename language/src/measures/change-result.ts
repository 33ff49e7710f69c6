import { type Input, mergeOmissions, type Omission, type Result, toResult } from './result.ts';

/** A change in percent and what it is a change of: what is now first, what was before second. */
export interface ChangeParts {
  /** Absent where there was nothing before, or where bounds leave the direction open. */
  readonly percent: number | undefined;
  /** One of the two is a lower bound that does not leave the direction open. */
  readonly atLeast: boolean;
  readonly inputs: readonly [Input, Input];
  readonly omitted: readonly (readonly Omission[])[];
}

/** Named where the body's share is in both sums and was weighed anew between them. */
export const OTHER_WEIGH_IN: Omission = {
  what: 'body mass',
  why: 'another weigh-in than then is part of the change',
};

/** What rose by so much at least is a lower bound; what fell by so much at least is said in words, since less is more. */
export function toChangeResult({ percent, atLeast, inputs, omitted }: ChangeParts): Result {
  return toResult({
    value: percent,
    unit: '%',
    method: 'change',
    inputs,
    omitted: mergeOmissions(...omitted),
    ...(atLeast && describeBound(percent)),
    ...(percent === undefined && { remark: 'nothing before, or open since a total is a lower bound' }),
  });
}

function describeBound(percent = 0): Pick<Result, 'bound'> | Pick<Result, 'remark'> {
  if (percent > 0) return { bound: 'at least' };
  return { remark: percent < 0 ? 'or less' : 'a total is a lower bound' };
}
