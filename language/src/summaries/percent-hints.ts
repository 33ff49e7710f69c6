import type { SessionWorks } from '../measures/session-work.ts';
import type { PlacedEntry, PlanEntry } from '../model/entry.ts';
import type { Load } from '../model/quantity.ts';
import type { ProjectedLine } from '../plans/projected.ts';
import { printLoad } from '../printing/print-load.ts';
import type { LensOptions, LineHint } from './lens.ts';
import { type PlanView, projectWeek, viewPlan } from './plan-view.ts';

/** Loads that hang on another number. */
const DERIVED: ReadonlySet<Load['kind']> = new Set(['percent', 'offset', 'bodyweight-share']);

/**
 * `= 72.5 kg` behind each percentage of a plan, as the place of the plan loads it: in a cell of the week at hand, else of
 * the first week that the cell stands for. Nothing where it cannot be worked out, or until all files are read.
 */
export function describePercentHints(
  works: SessionWorks,
  placed: PlacedEntry,
  options: LensOptions,
): readonly LineHint[] {
  const { entry, line } = placed;
  if (entry.kind !== 'plan' || !options.complete || !hasDerived(entry)) return [];
  const basis = [works.practice.edition, line, options.today, options.formula, options.unit].join(' ');
  const before = known.get(entry);
  if (before?.basis === basis) return before.hints;
  const hints = listHints(works, line, entry, options);
  known.set(entry, { basis, hints });
  return hints;
}

/** A plan is worked out once until any file changes: an editor asks whenever its text scrolls. */
const known = new WeakMap<PlanEntry, { readonly basis: string; readonly hints: readonly LineHint[] }>();

function listHints(
  works: SessionWorks,
  entryLine: number,
  entry: PlanEntry,
  options: LensOptions,
): LineHint[] {
  const view = viewPlan(works, entry, options);
  const told = new Set<string>();
  return listWeeks(entry, view).flatMap((week) =>
    projectWeek(works, view, week).flatMap(({ blocks }) =>
      blocks.flatMap(({ lines }) =>
        lines
          .flatMap((line) => describeLine(line, week, entryLine))
          .filter(({ line, column }) => {
            const place = `${line}:${column}`;
            return !told.has(place) && told.add(place);
          }),
      ),
    ),
  );
}

/** The week at hand first, then as many others as a line has cells, and those with lines of their own. */
function listWeeks({ days }: PlanEntry, { week, course }: PlanView): number[] {
  const lines = days.flatMap(({ blocks }) => blocks.flatMap((block) => block.lines));
  const cells = Math.max(1, ...lines.map((line) => line.cells.length));
  const own = lines.flatMap((line) => line.week ?? []);
  const first = Array.from({ length: Math.min(cells, course.weeks) }, (_, index) => index + 1);
  return [...new Set([week, ...first, ...own.filter((each) => each >= 1 && each <= course.weeks)])];
}

function describeLine({ source, sets }: ProjectedLine, week: number, entryLine: number): LineHint[] {
  return sets.flatMap(({ group: { loadSpan, ownLoad, load: written }, load }) => {
    if (!ownLoad || !loadSpan || !load || load.unknown !== undefined || load.load.kind === 'percent')
      return [];
    if (written === undefined || !isDerivedIn(source, loadSpan)) return [];
    const place = { line: entryLine + loadSpan.line, column: loadSpan.end };
    const tooltip = `${source.name.text} in week ${week}${load.derivation ? `: ${load.derivation}` : ''}`;
    return [{ ...place, text: `= ${printLoad(load.load)}`, tooltip }];
  });
}

/** Whether the plan itself writes a percentage there. */
function isDerivedIn({ cells }: ProjectedLine['source'], { start }: { readonly start: number }): boolean {
  return cells.some(({ sets }) =>
    sets.some(({ load, loadSpan }) => load && loadSpan?.start === start && DERIVED.has(load.kind)),
  );
}

function hasDerived({ days }: PlanEntry): boolean {
  return days.some(({ blocks }) =>
    blocks.some(({ lines }) =>
      lines.some(({ cells }) =>
        cells.some(({ sets }) => sets.some(({ load }) => load && DERIVED.has(load.kind))),
      ),
    ),
  );
}
