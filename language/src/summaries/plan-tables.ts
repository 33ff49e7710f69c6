/** The whole course of a plan in rows, for its hover. */
import { fromDayNumber } from '../calendar/iso-date.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { PlanTurn } from '../plans/plan-calendar.ts';
import { sumDays } from '../plans/plan-totals.ts';
import { explainSets } from '../plans/print-projected.ts';
import { projectTurn } from '../plans/project-plan.ts';
import { printNumber } from '../units/number.ts';
import { type PlanView, projectWeek } from './plan-view.ts';
import { printMuscles, printVolume } from './print-plan-totals.ts';

/** The whole course of a line: `[week, sets]`, week by week, the same sets once for several weeks. */
export function tabulateLine(works: SessionWorks, view: PlanView, entryLine: number): string[][] {
  const rows: string[][] = [];
  for (const turn of view.course.turns) {
    const day = projectTurn(works, view.plan, turn, view.options);
    const line = day.blocks
      .flatMap(({ lines }) => lines)
      .find(({ source }) => source.span.line === entryLine);
    if (!line) continue;
    rows.push([nameTurn(turn), explainSets(line).join(', then ')]);
  }
  return rows;
}

/** Week by week: sets, volume, hard sets. */
export function tabulateWeeks(works: SessionWorks, view: PlanView): string[][] {
  return Array.from({ length: view.course.weeks }, (_, index): string[] => {
    const totals = sumDays(works, projectWeek(works, view, index + 1), view.options);
    const deload = view.plan.deloads.some(({ week }) => week === index + 1) ? ', deload' : '';
    return [
      `${index + 1}${deload}`,
      printNumber(totals.sets),
      printVolume(totals, view.unit) ?? '',
      printMuscles(totals, 4) ?? '',
    ];
  });
}

function nameTurn({ week, date, deload }: PlanTurn): string {
  const day = date === undefined ? '' : `, ${fromDayNumber(date)}`;
  return `${week}${day}${deload ? ', deload' : ''}`;
}
