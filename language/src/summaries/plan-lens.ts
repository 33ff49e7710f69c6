/** What stands over a plan: its course, the week and days at hand, and what its lines come to. */
import { fromDayNumber, type IsoDate } from '../calendar/iso-date.ts';
import type { Result } from '../measures/result.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { computePlanWeekAdherence } from '../measures/week-adherence.ts';
import type { PlacedEntry } from '../model/entry.ts';
import type { Span } from '../model/source.ts';
import { compareSlot } from '../plans/done-work.ts';
import { sumDays } from '../plans/plan-totals.ts';
import { explainSets } from '../plans/print-projected.ts';
import { listLoads, type ProjectedDay, type ProjectedLine } from '../plans/projected.ts';
import { printMinutes } from '../units/duration.ts';
import { printNumber } from '../units/number.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import { computeDoneTotals, listDoneResults, printDoneTotals } from './done-totals.ts';
import type { Lens, LensOptions, LensPlace, LineHint } from './lens.ts';
import { type PlanView, projectWeek, viewPlan } from './plan-view.ts';
import { listResults, printMuscles, printVolume, printVolumes } from './print-plan-totals.ts';
import { count, joinFacts, printDay } from './words.ts';

/** A longer plan is told week by week in its hover alone. */
const MOST_WEEKS = 12;

/** What a lens says, and the numbers behind it. */
type Words = Pick<Lens, 'text' | 'explain'>;

/** A lens of a plan, whose words are worked out when somebody asks for them, once. */
export class PlanSpot implements LensPlace {
  readonly kind: Lens['kind'];
  readonly line: number;
  readonly nth: number;
  readonly #describe: () => Words;
  #told: Words | undefined;

  constructor({ kind, line, nth }: LensPlace, describe: () => Words) {
    this.kind = kind;
    this.line = line;
    this.nth = nth;
    this.#describe = describe;
  }

  /** Undefined as long as nobody asked. */
  get text(): string | undefined {
    return this.#told?.text;
  }

  tell(): Words {
    this.#told ??= this.#describe();
    return this.#told;
  }
}

/** Where the lenses of a plan stand; until the history is read its percentages and targets wait. */
export function listPlanSpots(works: SessionWorks, placed: PlacedEntry, options: LensOptions): PlanSpot[] {
  if (placed.entry.kind !== 'plan' || placed.entry.days.length === 0) return [];
  const plan = placed.entry;
  const spots: PlanSpot[] = [];
  const add = (kind: Lens['kind'], span: Span, describe: () => Words): void => {
    const line = placed.line + span.line;
    const nth = spots.filter((other) => other.kind === kind && other.line === line).length;
    spots.push(new PlanSpot({ kind, line, nth }, describe));
  };
  if (!options.complete) {
    add('plan', plan.header, () => ({ text: 'history loading…', explain: () => [] }));
    return spots;
  }
  const view = viewPlan(works, plan, options);
  const days = projectWeek(works, view, view.week);
  add('plan', plan.header, () => describeWeek(works, view, days, options.today));
  const { weeks } = view.course;
  if (plan.weeks && weeks > 1 && weeks <= MOST_WEEKS)
    add('plan', plan.weeks.span, () => describeCourse(works, view));
  for (const day of onceEach(days)) {
    add('plan', day.turn.day.span, () => describeDay(works, view, day));
    for (const { block, lines } of day.blocks) {
      if (BLOCK_KINDS[block.kind].endedByClock) continue;
      for (const line of lines.filter(saysMore))
        add('line', line.source.span, () => explainLine(line, view.week));
    }
  }
  return spots;
}

function explainLine(line: ProjectedLine, week: number): Words {
  return {
    text: describeLine(line, week),
    explain: () => once(line.sets.flatMap((set) => listLoads(set).flatMap(({ result }) => result ?? []))),
  };
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

/**
 * `week 3 of 6 · 38 sets · about 15 800 kg incl. body · hard sets glutes 19, lats 9`; once it has begun, `done 21 of 38 sets,
 * 190 of 340 reps` in place of the sets.
 */
function describeWeek(
  works: SessionWorks,
  view: PlanView,
  days: readonly ProjectedDay[],
  today: IsoDate,
): Words {
  const totals = sumDays(works, days, view.options);
  const muscles = printMuscles(totals);
  const done = describeDone(works, view);
  const text = joinFacts([
    describePosition(view, today),
    done?.text ?? count(totals.sets, 'set'),
    printVolume(totals, view.unit),
    muscles && `hard sets ${muscles}`,
  ]);
  return { text, explain: () => [...listResults(totals), ...(done?.explain() ?? [])] };
}

function describeDone(works: SessionWorks, view: PlanView): Words | undefined {
  const { athlete, today, formula } = view.options;
  const plan = view.plan.name && works.practice.findPlan(view.plan.name.text);
  if (!plan || plan.entry !== view.plan) return undefined;
  const week = computePlanWeekAdherence(works, athlete, plan, view.week);
  const [sets, planned] = week?.result.inputs ?? [];
  if (!week || !sets || !planned?.value) return undefined;
  const totals = computeDoneTotals(
    week.slots.flatMap((slot) => compareSlot(works, slot, { athlete, day: today, formula })),
  );
  const text = [
    `done ${printNumber(sets.value)} of ${count(planned.value, 'set')}`,
    ...(totals.reps ? printDoneTotals({ reps: totals.reps }, view.unit) : []),
  ].join(', ');
  return { text, explain: () => [week.result, ...listDoneResults(totals)] };
}

function describePosition({ course, week, options, plan }: PlanView, today: IsoDate): string {
  const { start, end, weeks } = course;
  const deload = plan.deloads.some((each) => each.week === week) ? ', deload' : '';
  const here = `week ${week} of ${weeks}${deload}`;
  if (start === undefined || end === undefined) return here;
  if (options.today < start) return `${here} from ${printDay(fromDayNumber(start), today)}`;
  return options.today > end ? `${here}, ended ${printDay(fromDayNumber(end), today)}` : here;
}

/** `sets by week 36, 36, 22 · about 15 855, 16 242, 9 107 kg incl. body`. */
function describeCourse(works: SessionWorks, view: PlanView): Words {
  const totals = Array.from({ length: view.course.weeks }, (_, index) =>
    sumDays(works, projectWeek(works, view, index + 1), view.options),
  );
  const sets = totals.map((total) => printNumber(total.sets)).join(', ');
  const text = joinFacts([`sets by week ${sets}`, printVolumes(totals, view.unit)]);
  return { text, explain: () => totals.flatMap(({ volume }) => volume ?? []) };
}

/** `week 3: 11 sets · about 4 310 kg · 77 % of max · about 22 min`. */
function describeDay(works: SessionWorks, view: PlanView, day: ProjectedDay): Words {
  const totals = sumDays(works, [day], view.options);
  const { intensity, time } = totals;
  const text = joinFacts([
    `week ${view.week}: ${count(totals.sets, 'set')}`,
    printVolume(totals, view.unit),
    intensity?.value !== undefined ? `${printNumber(intensity.value)} % of max` : undefined,
    time?.value !== undefined ? `about ${printMinutes(time.value, 0)}` : undefined,
  ]);
  return { text, explain: () => listResults(totals) };
}

/** `week 3: 5x3 @ 85 kg (80 % of 105 = 84) · then 3x5 @ 72.5 kg`. */
export function describeLine(line: ProjectedLine, week: number): string {
  const [first, ...others] = explainSets(line);
  const shown = others.length > 3 ? [...others.slice(0, 2), `${others.length - 2} more`] : others;
  return joinFacts([`week ${week}: ${first ?? 'no sets'}`, ...shown.map((text) => `then ${text}`)]);
}

/** Whether a line comes to something else than it says: a load worked out, a step taken, one of several cells. */
export function saysMore({ source, line, sets }: ProjectedLine): boolean {
  if (
    source.cells.length > 1 ||
    sets.some((set) => listLoads(set).some(({ derivation, unknown }) => derivation || unknown))
  )
    return true;
  const written = source.cells[0]?.sets ?? [];
  const shape = (groups: typeof written): string =>
    JSON.stringify(groups.map(({ amount, count: times }) => [amount, times]));
  return shape(written) !== shape(line.cells[0]?.sets ?? []);
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
