import { countSetsByPattern } from './muscle-sets.ts';
import { divide } from './quotients.ts';
import { type Omission, type Result, toResult, type Unit } from './result.ts';
import type { SessionWork } from './session-work.ts';

/** One side against the other: `push : pull`. */
export interface Ratio {
  readonly name: string;
  /** The first over the second; no value where one of them is none. */
  readonly result: Result;
}

interface Sides {
  readonly name: string;
  readonly left: { readonly name: string; readonly patterns: readonly string[] };
  readonly right: { readonly name: string; readonly patterns: readonly string[] };
}

/** Pairs of patterns that coaches hold against each other (common practice). */
const PAIRS: readonly Sides[] = [
  {
    name: 'push : pull',
    left: { name: 'push', patterns: ['horizontal push', 'vertical push'] },
    right: { name: 'pull', patterns: ['horizontal pull', 'vertical pull'] },
  },
  {
    name: 'horizontal push : pull',
    left: { name: 'horizontal push', patterns: ['horizontal push'] },
    right: { name: 'horizontal pull', patterns: ['horizontal pull'] },
  },
  {
    name: 'vertical push : pull',
    left: { name: 'vertical push', patterns: ['vertical push'] },
    right: { name: 'vertical pull', patterns: ['vertical pull'] },
  },
  {
    name: 'squat : hinge',
    left: { name: 'squat', patterns: ['squat'] },
    right: { name: 'hinge', patterns: ['hinge'] },
  },
];

/** Working sets of one pattern to those of another; pairs of which nothing was done are left out. */
export function computePatternRatios(sessions: readonly SessionWork[]): Ratio[] {
  const { counts, omitted } = countSetsByPattern(sessions);
  const sets = (patterns: readonly string[]): number =>
    counts.filter(({ name }) => patterns.includes(name)).reduce((sum, { result }) => sum + result.value!, 0);
  return PAIRS.flatMap(({ name, left, right }): Ratio[] => {
    const [a, b] = [sets(left.patterns), sets(right.patterns)];
    if (a === 0 && b === 0) return [];
    return [{ name, result: toRatio('balance', [left.name, a], [right.name, b], 'sets', omitted) }];
  });
}

/** The first over the second, with both as inputs; no value, and which it is, where one of them is none. */
export function toRatio(
  method: 'balance' | 'left-right',
  [leftName, left]: readonly [string, number],
  [rightName, right]: readonly [string, number],
  unit: Unit,
  omitted: readonly Omission[] = [],
): Result {
  const none = left === 0 ? leftName : right === 0 ? rightName : undefined;
  return toResult({
    value: none === undefined ? divide(left, right) : undefined,
    unit: '',
    method,
    inputs: [
      { label: leftName, value: left, unit },
      { label: rightName, value: right, unit },
    ],
    omitted,
    ...(none !== undefined && { remark: `no ${none}` }),
  });
}
