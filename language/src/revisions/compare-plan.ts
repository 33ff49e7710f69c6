import { toDayNumber } from '../calendar/iso-date.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { PlanDay, PlanEntry } from '../model/entry.ts';
import { printPlan } from '../printing/print-plan.ts';
import type { LensOptions } from '../summaries/lens.ts';
import { unitFor } from '../summaries/session-lens.ts';
import { foldName } from '../text/names.ts';
import { compareTraining, type NameKeys } from './compare-training.ts';
import { diffTexts } from './diff-texts.ts';
import type { Renames } from './match-entries.ts';
import type { Day } from './match-lines.ts';
import { computePlanEffect } from './plan-effect.ts';
import { renamePlan } from './rename-plan.ts';
import type { PlanEffect, PlanRevision } from './revision.ts';

export interface RevisionContext {
  /** The later version: both are worked out with its definitions, maxes and places. */
  readonly works: SessionWorks;
  readonly renames: Renames;
  readonly keys: NameKeys;
  readonly options: LensOptions;
}

type PlanFacts = Pick<PlanRevision, 'texts' | 'blocks' | 'lines' | 'effects'>;

/** What changed in a plan and what it costs; of a plan that came or went the one side is missing. */
export function comparePlan(
  context: RevisionContext,
  before: PlanEntry | undefined,
  after: PlanEntry | undefined,
): PlanFacts {
  const texts = before && after ? compareSettings(renamePlan(before, context.renames), after) : [];
  const { blocks, lines } =
    before && after
      ? compareTraining(toDays(before), toDays(after), context.keys)
      : { blocks: [], lines: [] };
  return { texts, blocks, lines, effects: listEffects(context, before, after) };
}

function toDays({ days }: PlanEntry): Day[] {
  return days.map((day) => ({
    number: day.number,
    label: nameDay(day),
    blocks: day.blocks,
    cellNames: 'weeks',
  }));
}

function nameDay({ number, name }: PlanDay): string {
  return name ? `day ${number} ${name}` : `day ${number}`;
}

/** Settings, notes and days; a new name of the plan is told beside it. */
function compareSettings(before: PlanEntry, after: PlanEntry): PlanFacts['texts'] {
  const print = (plan: PlanEntry): string[] => {
    const days = plan.days.map((day) => ({ ...day, blocks: [] }));
    const lines = printPlan({ ...plan, days }).slice(1);
    return lines.map((line) => line.trim());
  };
  return diffTexts(print(before), print(after));
}

function listEffects(
  { works, renames, options }: RevisionContext,
  before: PlanEntry | undefined,
  after: PlanEntry | undefined,
): PlanEffect[] {
  const earlier = before && renamePlan(before, renames);
  const named = (after ?? earlier)!.athletes.map(({ text }) => text);
  const athletes = named.length > 0 ? named : [''];
  return athletes.map((athlete): PlanEffect => {
    const key = works.practice.resolveAthlete(foldName(athlete));
    const projection = {
      athlete: key,
      today: toDayNumber(options.today),
      unit: options.unit,
      formula: options.formula,
    };
    const effect = computePlanEffect(works, earlier, after, projection);
    return { athlete, unit: unitFor(works, key, options), ...effect };
  });
}
