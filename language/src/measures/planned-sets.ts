/** The sets that a plan's day asks for in one of its weeks. */
import type { MovementLine, PlanDay, PlanEntry } from '../model/entry.ts';
import { listSteps } from '../plans/line-steps.ts';
import { findTurn } from '../plans/plan-calendar.ts';
import { takeTurn } from '../plans/week-blocks.ts';
import { isWorking } from './block-work.ts';
import { countRounds, expandBlock } from './expand-sets.ts';
import type { Omission } from './result.ts';

export { takeWeek } from '../plans/take-week.ts';

/** One line of a plan in one week. */
export interface PlannedLine {
  readonly line: MovementLine;
  /** Working sets; of a line that the coach leaves open (an amrap) none can be counted. */
  readonly sets: number | undefined;
}

export interface PlannedSets {
  readonly lines: readonly PlannedLine[];
  readonly omitted: readonly Omission[];
}

/** Working sets line by line, with steps such as `+1 set each week` taken and the deload's share; what was not counted is named. */
export function listPlannedSets(
  plan: PlanEntry,
  day: PlanDay,
  week: number,
  toKey: (name: string) => string,
  nth = 0,
): PlannedSets {
  const omitted: Omission[] = [];
  const lines = takeTurn(plan, findTurn(plan, week, day, undefined, nth), toKey).flatMap(
    ({ block, lines: weekLines }) => {
      const expanded = expandBlock(block).filter((set) => isWorking(set, block));
      return weekLines.flatMap(({ line, source }): PlannedLine[] => {
        const sets = expanded.filter((set) => set.line === line).length;
        if (sets === 0) return [];
        if (block.kind === 'amrap') return [{ line, sets: undefined }];
        if (hasLooseSetStep(source, countRounds(block)))
          omitted.push({ what: line.name.text, why: 'its step of sets is not counted' });
        return [{ line, sets }];
      });
    },
  );
  return { lines, omitted };
}

/** Rounds decide the sets of their lines, and a step must say how often it is taken. */
function hasLooseSetStep(line: MovementLine, rounds: number | undefined): boolean {
  const steps = listSteps(line).filter(({ unit, onRest }) => unit === 'set' && !onRest);
  const isLoose = ({ each, whenFull }: (typeof steps)[number]): boolean =>
    rounds !== undefined || each === undefined || each === 'round' || whenFull;
  return steps.some(isLoose);
}
