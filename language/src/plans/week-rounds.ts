/** The rounds of a plan's block in one week. */
import { countRounds } from '../measures/expand-sets.ts';
import type { Block, PlanEntry } from '../model/entry.ts';
import type { SetGroup } from '../model/quantity.ts';
import { LIMITS } from '../vocabulary/limits.ts';
import { countSteps } from './line-steps.ts';
import { clamp } from './move-amount.ts';
import type { PlanTurn } from './plan-calendar.ts';

/** `3 rounds, +1 round each week to 5`: 3, 4, 5, 5. In a window of full intervals a round is one interval more. */
export function takeRoundSteps(plan: PlanEntry, block: Block, turn: PlanTurn): Block {
  const { roundStep, every, intervals } = block;
  const written = countRounds(block);
  if (!roundStep || written === undefined) return block;
  const times = countSteps(plan, roundStep, turn, undefined) ?? 0;
  const moved = Math.round(clamp(written, roundStep, times));
  const rounds = Math.min(LIMITS.rounds.high, Math.max(1, moved));
  if (rounds === written) return block;
  return {
    ...block,
    ...(block.rounds !== undefined && { rounds }),
    ...(every?.total !== undefined && { every: { ...every, total: every.interval * rounds } }),
    ...(intervals?.count !== undefined && { intervals: { ...intervals, count: rounds } }),
  };
}

/**
 * The sets of a line whose block has other rounds than are written: one set stands for every round, and where each round
 * is written the last stands for those to come.
 */
export function fitToRounds(groups: readonly SetGroup[], written: Block, block: Block): readonly SetGroup[] {
  const [was, is] = [countRounds(written), countRounds(block)];
  if (was === undefined || is === undefined || was === is) return groups;
  const sets = groups.flatMap((group) => Array.from({ length: group.count }, () => ({ ...group, count: 1 })));
  const perRound = [1, block.passes].find((passes) => sets.length === was * passes);
  const isFitting = sets.length === is || sets.length === is * block.passes;
  if (sets.length <= 1 || isFitting || perRound === undefined) return groups;
  const last = sets.slice(-perRound);
  const more = Array.from({ length: Math.max(0, is - was) }, () => last).flat();
  const fitted = [...sets, ...more].slice(0, is * perRound);
  return fitted.map((group) => ({ ...group, counted: false }));
}
