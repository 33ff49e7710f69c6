import type { PlanDay, SessionEntry } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import { listModifiers } from '../plans/line-steps.ts';
import type { Plan } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import {
  type CheckContext,
  isPreparation,
  joinWords,
  listLines,
  NO_PROBLEMS,
  problem,
} from './check-context.ts';

/** More differences than this are another session altogether, and a list of them helps nobody. */
const MOST_NAMED = 4;

/** A session against the plan it names: the week and day must exist, and the movements are compared. */
export function checkPlanDay(entry: SessionEntry, { practice }: CheckContext): Iterable<Problem> {
  const plan = entry.plan && practice.findPlan(entry.plan.name.text);
  return plan ? compareWithPlan(entry, plan, practice) : NO_PROBLEMS;
}

function* compareWithPlan(entry: SessionEntry, plan: Plan, practice: Practice): Iterable<Problem> {
  const { name, week, day } = entry.plan!;
  const weeks = plan.entry.weeks?.count;
  if (week !== undefined && weeks !== undefined && (week < 1 || week > weeks)) {
    yield problem(
      'plan-day',
      name.span,
      `${plan.name} has ${weeks} ${weeks === 1 ? 'week' : 'weeks'}, and no week ${week}: correct the week`,
    );
  }
  const planned = plan.entry.days.find(({ number }) => number === day);
  if (day !== undefined && !planned && plan.entry.days.length > 0) {
    const days = joinWords(
      plan.entry.days.map(({ number }) => String(number)),
      'and',
    );
    yield problem(
      'plan-day',
      name.span,
      `${plan.name} has ${plan.entry.days.length === 1 ? 'day' : 'days'} ${days}, and no day ${day}: correct the day`,
    );
  }
  if (planned && !entry.missed) yield* compareMovements(entry, planned, week, practice);
}

function* compareMovements(
  entry: SessionEntry,
  day: PlanDay,
  week: number | undefined,
  practice: Practice,
): Iterable<Problem> {
  const toKey = (name: string): string => practice.keyOf(name);
  const planned = new Map(
    day.blocks
      .flatMap(({ lines }) => lines)
      .filter((line) => line.week === undefined || line.week === week)
      .map(({ name }) => [toKey(name.text), name.text] as const),
  );
  const done = new Map<string, string>();
  const replaced = new Set<string>();
  for (const { block, line } of listLines(entry)) {
    const instead = listModifiers(line).flatMap((modifier) =>
      modifier.kind === 'instead' ? [toKey(modifier.of.text)] : [],
    );
    for (const key of instead) replaced.add(key);
    const isExtra = isPreparation({ block, line });
    const key = toKey(line.name.text);
    if ((!isExtra && instead.length === 0) || planned.has(key)) done.set(key, line.name.text);
  }
  const missing = [...planned].flatMap(([key, name]) => (done.has(key) || replaced.has(key) ? [] : [name]));
  const added = [...done].flatMap(([key, name]) => (planned.has(key) ? [] : [name]));
  const said = [describe(missing, 'planned and not done'), describe(added, 'done and not planned')];
  if (missing.length + added.length > 0) {
    const message = said.filter((part) => part !== undefined).join('; ');
    yield problem('not-as-planned', entry.plan!.name.span, `Not as planned: ${message}`);
  }
}

function describe(names: readonly string[], what: string): string | undefined {
  if (names.length === 0) return undefined;
  if (names.length > MOST_NAMED) return `${names.length} movements ${what}`;
  return `${joinWords(names, 'and')} ${what}`;
}
