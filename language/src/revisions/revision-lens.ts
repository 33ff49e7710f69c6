/** What stands over a plan that is no longer as it was. */
import type { Result } from '../measures/result.ts';
import type { Lens } from '../summaries/lens.ts';
import { count } from '../summaries/words.ts';
import { printEffect, printNoEffect } from './print-effect.ts';
import type { PlanRevision, Revision } from './revision.ts';

/** `since HEAD: +6 sets, +420 kg a week, +4 min a day`, over each plan that changed. */
export function describeRevisionLenses({ plans }: Revision, since: string): Omit<Lens, 'kind'>[] {
  return plans.flatMap((plan) => {
    if (plan.line === undefined) return [];
    return [
      { line: plan.line, text: `since ${since}: ${summarisePlan(plan)}`, explain: () => listResults(plan) },
    ];
  });
}

/** For the first athlete, as every lens of a plan is. */
export function summarisePlan({ change, effects, blocks, lines, texts, was }: PlanRevision): string {
  if (change === 'added') return 'new';
  const [first] = effects;
  const cost = first && printEffect(first);
  if (cost) return cost;
  const changes = blocks.length + lines.length + texts.length;
  if (changes === 0) return `renamed from ${was}`;
  const none = first ? printNoEffect(first) : 'the sums of each week are the same';
  return `${count(changes, 'change')}, ${none}`;
}

function listResults({ effects }: PlanRevision): Result[] {
  const [first] = effects;
  if (!first) return [];
  return [first.sets, first.volume, first.time, first.intensity].filter((result) => result !== undefined);
}
