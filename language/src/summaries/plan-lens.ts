/** What stands over a plan: its course, the week and days at hand, and what its lines come to. */

import { fromDayNumber, type IsoDate, toDayNumber } from '../calendar/iso-date.ts';
import type { Result } from '../measures/result.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { PlacedEntry, PlanEntry } from '../model/entry.ts';
import { findCourse, findWeekOn, type PlanCourse, type PlanTurn } from '../plans/plan-calendar.ts';
import { type PlanTotals, sumDays } from '../plans/plan-totals.ts';
import { explainSets } from '../plans/print-projected.ts';
import { type ProjectionOptions, projectTurn } from '../plans/project-plan.ts';
import type { ProjectedDay, ProjectedLine } from '../plans/projected.ts';
import { foldName } from '../text/names.ts';
import { printMinutes } from '../units/duration.ts';
import type { MassUnit } from '../units/mass.ts';
import { fromGrams } from '../units/mass.ts';
import { printNumber, printRange } from '../units/number.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import type { Lens, LensOptions, LineHint } from './lens.ts';
import { unitFor } from './session-lens.ts';
import { count, joinFacts, printDay } from './words.ts';

const MUSCLES_SHOWN = 2;
/** A longer plan is told by its first, middle and last weeks in the hover alone. */
const MOST_WEEKS = 12;

/** A plan as one athlete does it, and the week at hand. */
export interface PlanView {
  readonly plan: PlanEntry;
  readonly course: PlanCourse;
  readonly week: number;
  readonly options: ProjectionOptions;
  readonly unit: MassUnit;
}

/** For the first athlete of a plan, or the one given; before the plan its first week, after it the last. */
export function viewPlan(
  works: SessionWorks,
  plan: PlanEntry,
  options: LensOptions,
  athlete = works.practice.resolveAthlete(foldName(plan.athletes[0]?.text ?? '')),
): PlanView {
  const course = findCourse(works.practice, plan);
  const today = toDayNumber(options.today);
  return {
    plan,
    course,
    week: findWeekOn(course, today),
    options: { athlete, today, unit: options.unit, formula: options.formula },
    unit: unitFor(works, athlete, options),
  };
}

/** All lenses of a plan; until the history is read its percentages and targets wait. */
export function describePlan(works: SessionWorks, placed: PlacedEntry, options: LensOptions): Lens[] {
  if (placed.entry.kind !== 'plan' || placed.entry.days.length === 0) return [];
  const plan = placed.entry;
  const at = (entryLine: number): number => placed.line + entryLine;
  if (!options.complete)
    return [{ kind: 'plan', line: at(plan.header.line), text: 'history loading…', results: [] }];
  const view = viewPlan(works, plan, options);
  const days = projectWeek(works, view, view.week);
  const lenses: Lens[] = [
    { kind: 'plan', line: at(plan.header.line), ...describeWeek(works, view, days, options.today) },
  ];
  const course = plan.weeks && describeCourse(works, view);
  if (course && plan.weeks) lenses.push({ kind: 'plan', line: at(plan.weeks.span.line), ...course });
  for (const day of onceEach(days)) {
    lenses.push({ kind: 'plan', line: at(day.turn.day.span.line), ...describeDay(works, view, day) });
    for (const { block, lines } of day.blocks) {
      if (BLOCK_KINDS[block.kind].endedByClock) continue;
      for (const line of lines.filter(saysMore)) {
        const results = line.sets.flatMap(({ load }) => load?.result ?? []);
        const text = describeLine(line, view.week);
        lenses.push({ kind: 'line', line: at(line.source.span.line), text, results: once(results) });
      }
    }
  }
  return lenses;
}

/** At the ends of lines that carry no lens, where the week at hand says more than the line. */
export function describePlanHints(
  works: SessionWorks,
  placed: PlacedEntry,
  options: LensOptions,
): LineHint[] {
  if (placed.entry.kind !== 'plan' || !options.complete) return [];
  const view = viewPlan(works, placed.entry, options);
  return onceEach(projectWeek(works, view, view.week)).flatMap(({ blocks }) =>
    blocks
      .filter(({ block }) => BLOCK_KINDS[block.kind].endedByClock)
      .flatMap(({ lines }) => lines.filter(saysMore))
      .map(
        (line): LineHint => ({
          line: placed.line + line.source.span.line,
          column: line.source.span.end,
          text: describeLine(line, view.week),
          tooltip: `${line.source.name.text} in week ${view.week} of ${view.course.weeks}`,
        }),
      ),
  );
}

export function projectWeek(works: SessionWorks, view: PlanView, week: number): ProjectedDay[] {
  const { course, plan, options } = view;
  return course.turns
    .filter((turn) => turn.week === week)
    .map((turn) => projectTurn(works, plan, turn, options));
}

/** `week 3 of 6 · 38 sets · about 15 800 kg incl. body · hard sets glutes 19, lats 9`. */
function describeWeek(
  works: SessionWorks,
  view: PlanView,
  days: readonly ProjectedDay[],
  today: IsoDate,
): Pick<Lens, 'text' | 'results'> {
  const totals = sumDays(works, days, view.options);
  const muscles = printMuscles(totals);
  const text = joinFacts([
    describePosition(view, today),
    count(totals.sets, 'set'),
    printVolume(totals, view.unit),
    muscles && `hard sets ${muscles}`,
  ]);
  return { text, results: listResults(totals) };
}

function describePosition({ course, week, options, plan }: PlanView, today: IsoDate): string {
  const { start, end, weeks } = course;
  const deload = plan.deloads.some((each) => each.week === week) ? ', deload' : '';
  const here = `week ${week} of ${weeks}${deload}`;
  if (start === undefined || end === undefined) return here;
  if (options.today < start) return `${here} from ${printDay(fromDayNumber(start), today)}`;
  return options.today > end ? `${here}, ended ${printDay(fromDayNumber(end), today)}` : here;
}

/** `sets by week 36, 36, 38, 38, 22, 31 · kg 15 855, 16 242, …`. */
function describeCourse(works: SessionWorks, view: PlanView): Pick<Lens, 'text' | 'results'> | undefined {
  const { weeks } = view.course;
  if (weeks < 2 || weeks > MOST_WEEKS) return undefined;
  const totals = Array.from({ length: weeks }, (_, index) =>
    sumDays(works, projectWeek(works, view, index + 1), view.options),
  );
  const volumes = totals.map(({ volume }) => volume?.value);
  const isKnown = volumes.every((value) => value !== undefined);
  const sets = totals.map((total) => printNumber(total.sets)).join(', ');
  const text = joinFacts([
    `sets by week ${sets}`,
    isKnown
      ? `${view.unit} ${volumes.map((value) => printNumber(fromGrams(value * 1000, view.unit))).join(', ')}`
      : undefined,
  ]);
  return { text, results: totals.flatMap(({ volume }) => volume ?? []) };
}

/** `week 3: 11 sets · about 4 310 kg · 77 % of max · about 22 min`. */
function describeDay(works: SessionWorks, view: PlanView, day: ProjectedDay): Pick<Lens, 'text' | 'results'> {
  const totals = sumDays(works, [day], view.options);
  const { intensity, time } = totals;
  const text = joinFacts([
    `week ${view.week}: ${count(totals.sets, 'set')}`,
    printVolume(totals, view.unit),
    intensity?.value !== undefined ? `${printNumber(intensity.value)} % of max` : undefined,
    time?.value !== undefined ? `about ${printMinutes(time.value, 0)}` : undefined,
  ]);
  return { text, results: listResults(totals) };
}

/** `week 3: 5x3 @ 85 kg (80 % of 105 = 84) · then 3x5 @ 72.5 kg`. */
export function describeLine(line: ProjectedLine, week: number): string {
  const [first, ...others] = explainSets(line);
  const shown = others.length > 3 ? [...others.slice(0, 2), `${others.length - 2} more`] : others;
  return joinFacts([`week ${week}: ${first ?? 'no sets'}`, ...shown.map((text) => `then ${text}`)]);
}

/** Whether a line comes to something else than it says: a load worked out, a step taken, one of several cells. */
export function saysMore({ source, line, sets }: ProjectedLine): boolean {
  if (source.cells.length > 1 || sets.some(({ load }) => load?.derivation || load?.unknown)) return true;
  const written = source.cells[0]?.sets ?? [];
  const shape = (groups: typeof written): string =>
    JSON.stringify(groups.map(({ amount, count: times }) => [amount, times]));
  return shape(written) !== shape(line.cells[0]?.sets ?? []);
}

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

function printVolume({ volume, hasBody }: PlanTotals, unit: MassUnit): string | undefined {
  if (volume?.value === undefined) return undefined;
  const shown = (kilograms: number): number => fromGrams(kilograms * 1000, unit);
  const { low, high } = volume.spread ?? { low: volume.value, high: volume.value };
  const lead = volume.bound === 'at least' ? 'at least ' : '';
  return `${lead}${printRange(shown(low), shown(high))} ${unit}${hasBody ? ' incl. body' : ''}`;
}

function printMuscles({ muscles }: PlanTotals, shown = MUSCLES_SHOWN): string | undefined {
  if (muscles.length === 0) return undefined;
  const named = muscles
    .slice(0, shown)
    .map(({ name, result }) => `${name} ${printNumber(result.value ?? 0, 1)}`);
  return named.join(', ');
}

function listResults({ volume, intensity, time, muscles }: PlanTotals): Result[] {
  return [volume, intensity, time, ...muscles.slice(0, MUSCLES_SHOWN).map(({ result }) => result)].filter(
    (result) => result !== undefined,
  );
}

/** A day that comes twice in a week (days in turn) is described once. */
function onceEach(days: readonly ProjectedDay[]): ProjectedDay[] {
  return days.filter((day, index) => days.findIndex(({ turn }) => turn.day === day.turn.day) === index);
}

/** Equal explanations are given once. */
function once(results: readonly Result[]): Result[] {
  const keys = results.map((result) => JSON.stringify(result));
  return results.filter((_, index) => keys.indexOf(keys[index]!) === index);
}
