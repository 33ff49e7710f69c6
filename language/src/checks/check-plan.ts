import type { MovementLine, PlanEntry } from '../model/entry.ts';
import type { Problem, Span } from '../model/source.ts';
import { findCircle } from '../plans/plan-calendar.ts';
import { printStep } from '../printing/print-modifiers.ts';
import { type CheckContext, problem } from './check-context.ts';
import { checkLineSteps, checkRestStep, checkRoundStep, findOpposed } from './check-plan-steps.ts';

/** Whether a plan can be worked out: when it comes, and whether every step can be taken and gets where it is to go. */
export function* checkPlan(entry: PlanEntry, context: CheckContext): Iterable<Problem> {
  yield* checkOrder(entry, context);
  yield* checkDays(entry);
  for (const { number, blocks } of entry.days) {
    for (const block of blocks) {
      const restSteps = block.restSteps.filter((modifier) => modifier.kind === 'step');
      for (const step of restSteps)
        yield* checkRestStep(entry, { step, rest: block.rest, dayNumber: number });
      const opposed = findOpposed(restSteps);
      if (opposed) {
        const message = `${printStep(opposed)} goes against another step of this block: keep one of the two`;
        yield problem('plan-step', opposed.span, message);
      }
      if (block.roundStep) yield* checkRoundStep(entry, number, block, block.roundStep);
      for (const line of block.lines) {
        yield* checkLineSteps(entry, number, block, line);
        yield* checkLastBar(line);
      }
    }
  }
}

/** `4x6 | 4x5 |`: an empty last cell is a week without the movement, and more likely a bar too many. */
function* checkLastBar({ name, cells, modifiers }: MovementLine): Iterable<Problem> {
  const [before, last] = [cells.at(-2), cells.at(-1)!];
  if (!before || last.sets.length + last.modifiers.length + modifiers.length > 0) return;
  const span = { ...before.span, start: before.span.end, end: Math.max(last.span.end, before.span.end + 1) };
  const message = `The bar at the end leaves a week of every ${cells.length} without ${name.text}: take it out if it is one too many`;
  yield problem('cell-count', span, message, [{ title: 'Take the bar out', edits: [{ span, newText: '' }] }]);
}

function* checkOrder(entry: PlanEntry, { practice, uri, line }: CheckContext): Iterable<Problem> {
  const { follows, starts, name } = entry;
  if (!follows || !name) return;
  if (starts) {
    const message = `The plan starts on a date and follows ${follows.text}: the date counts, so take out one of the two`;
    yield problem('plan-order', follows.span, message);
    return;
  }
  const plan = practice.findPlan(name.text);
  if (!plan || plan.uri !== uri || plan.line !== line) return;
  const circle = findCircle(practice, plan);
  if (!circle) return;
  const message = `The plans follow one another in a circle (${circle.join(' → ')}): give one of them a date with starts`;
  yield problem('plan-order', follows.span, message);
}

function* checkDays(entry: PlanEntry): Iterable<Problem> {
  const { weekdays, days, deloads, weeks } = entry;
  const [first] = weekdays;
  const different = new Set(weekdays.map(({ text }) => text)).size;
  if (first && days.length > 0 && different !== days.length) {
    const span = { ...first.span, end: weekdays.at(-1)!.span.end };
    const advice =
      different > days.length
        ? `write days alternate, ${different} a week, or the other days`
        : `write ${days.length} weekdays`;
    const has = `${days.length} ${days.length === 1 ? 'day' : 'days'}`;
    yield problem('plan-days', span, `The plan has ${has} for ${different} weekdays: ${advice}`);
  }
  if (!weeks) return;
  const lines = days.flatMap(({ blocks }) => blocks.flatMap((block) => block.lines));
  const late: { week: number; span: Span }[] = [
    ...deloads,
    ...lines.flatMap(({ week, name }) => (week === undefined ? [] : [{ week, span: name.span }])),
  ].filter(({ week }) => week < 1 || week > weeks.count);
  for (const { week, span } of late) {
    const last = `${weeks.count} ${weeks.count === 1 ? 'week' : 'weeks'}`;
    yield problem('plan-days', span, `The plan has ${last}, so week ${week} never comes: correct the week`);
  }
}
