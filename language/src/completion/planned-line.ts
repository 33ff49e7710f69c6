import { DEFAULT_FORMULA } from '../measures/one-rep-max.ts';
import type { Block, MovementLine } from '../model/entry.ts';
import type { Modifier, SetGroup } from '../model/quantity.ts';
import { openPlannedTurn, type PlannedTurn } from '../plans/line-context.ts';
import { writeLine } from '../plans/next-line.ts';
import { findCourse, findTurn } from '../plans/plan-calendar.ts';
import { takeWeek } from '../plans/take-week.ts';
import { printModifier } from '../printing/print-modifiers.ts';
import { printSetGroup } from '../printing/print-sets.ts';
import { findHistory, type History } from './history.ts';
import type { Spot, Trainee } from './spot.ts';

/** What the plan asks for on the day that the session names. */
export interface PlannedDay extends PlannedTurn {
  /** The day's blocks as they stand in that week, with the plan's own loads: one cell a line. */
  readonly blocks: readonly Block[];
}

export function findPlannedDay({ practice, placed }: Spot): PlannedDay | undefined {
  const asked = placed?.entry.kind === 'session' ? placed.entry.plan : undefined;
  const plan = asked && practice.findPlan(asked.name.text);
  const day = plan?.entry.days.find(({ number }) => number === asked?.day);
  if (!plan || !day) return undefined;
  const week = asked?.week ?? 1;
  const course = findCourse(practice, plan.entry);
  const turn = findTurn(plan.entry, week, day, course.start);
  return { plan, course, turn, blocks: takeWeek(day, week, (name) => practice.keyOf(name)) };
}

/** The planned line of a movement, a working one unless a preparation is asked. */
export function findPlannedLine(
  { practice }: Spot,
  planned: PlannedDay | undefined,
  key: string,
  preparing: boolean,
): MovementLine | undefined {
  return planned?.blocks
    .flatMap(({ lines }) => lines)
    .find((line) => (line.purpose === 'warmup') === preparing && practice.keyOf(line.name.text) === key);
}

export interface PlannedSets {
  readonly text: string;
  readonly week: number;
  readonly sets: readonly SetGroup[];
  /** Why they are not what the plan says, a sentence each. */
  readonly reasons: readonly string[];
}

/** By the plan's line: what was written of it, as long as what came before the session stays as it was. */
const written = new WeakMap<
  MovementLine,
  { readonly history: History; readonly key: string; readonly sets: PlannedSets | undefined }
>();

/**
 * The sets of a planned line in a session's words, as the next session would be written: `3x5 @ 75%` → `3x5 @ 105 kg`.
 * What only the day can tell (an amrap, a percentage without a max) is `?`.
 */
export function writePlanned(
  spot: Spot,
  trainee: Trainee,
  planned: PlannedDay,
  line: MovementLine,
): PlannedSets | undefined {
  const history = findHistory(spot.practice, trainee);
  const source = planned.turn.day.blocks
    .flatMap(({ lines }) => lines)
    .find(({ span }) => span.line === line.span.line);
  if (!source) return undefined;
  const key = [trainee.athlete, trainee.day, planned.turn.week, spot.options.formula].join('\n');
  const known = written.get(source);
  if (known?.history === history && known.key === key) return known.sets;
  const sets = projectLine(spot, trainee, planned, source);
  written.set(source, { history, key, sets });
  return sets;
}

function projectLine(
  { works, options }: Spot,
  { athlete, day }: Trainee,
  planned: PlannedDay,
  source: MovementLine,
): PlannedSets | undefined {
  const formula = options.formula ?? DEFAULT_FORMULA;
  const { context, projected } = openPlannedTurn(works, planned, { athlete, day, unit: 'kg', formula });
  const block = projected.blocks.find(({ lines }) => lines.some((line) => line.source === source));
  const found = block?.lines.find((line) => line.source === source);
  if (!block || !found) return undefined;
  const { cells, modifiers, notes } = writeLine(context, block, found);
  const [cell] = cells;
  if (!cell || cell.sets.length === 0) return undefined;
  const reasons = notes.slice(source.notes.length).map(({ text }) => text);
  const text = [...cell.sets.map(printSetGroup), ...modifiers.filter(isKept).map(printModifier)].join(', ');
  return { text, week: planned.turn.week, sets: cell.sets, reasons };
}

function isKept({ kind }: Modifier): boolean {
  return kind === 'tempo' || kind === 'setting' || kind === 'rest';
}
