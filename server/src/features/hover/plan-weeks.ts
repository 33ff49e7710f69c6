import type { PlanEntry } from '@plimsoll/language/model/entry';
import type { Located } from '@plimsoll/language/practice/locate';
import { tabulateLine, tabulateWeeks } from '@plimsoll/language/summaries/plan-tables';
import { type PlanView, viewPlan } from '@plimsoll/language/summaries/plan-view';
import { foldName } from '@plimsoll/language/text/names';
import { escapeMarkdown, joinParagraphs } from '../../markdown.ts';
import { type FeatureContext, toLensOptions } from '../context.ts';

/** A plan for more athletes is told for the first of them alone. */
const MOST_ATHLETES = 3;

/** The whole course of a plan's line, week by week, for each of its athletes; nothing outside a plan. */
export function describeLineWeeks(context: FeatureContext, { placed, line }: Located): string | undefined {
  if (placed.entry.kind !== 'plan' || !line) return undefined;
  return describeEach(context, placed.entry, ['Week', line.name.text], (view) =>
    tabulateLine(context.works, view, line.span.line),
  );
}

/** The weeks of a plan: sets, volume and hard sets. */
export function describePlanWeeks(context: FeatureContext, plan: PlanEntry): string | undefined {
  if (plan.days.length === 0) return undefined;
  return describeEach(context, plan, ['Week', 'Sets', 'Volume', 'Hard sets'], (view) =>
    tabulateWeeks(context.works, view),
  );
}

function describeEach(
  context: FeatureContext,
  plan: PlanEntry,
  head: readonly string[],
  tabulate: (view: PlanView) => readonly (readonly string[])[],
): string | undefined {
  if (!context.workspace.complete) return '*History loading…*';
  const named = plan.athletes.map(({ text }) => text);
  const shown = named.length > MOST_ATHLETES ? named.slice(0, 1) : named;
  const athletes: (string | undefined)[] = shown.length > 0 ? shown : [undefined];
  return joinParagraphs(
    athletes.flatMap((name) => {
      const key = name === undefined ? undefined : foldName(name);
      const view = viewPlan(context.works, plan, toLensOptions(context), key);
      const heading = athletes.length > 1 && name !== undefined ? `**${escapeMarkdown(name)}**` : undefined;
      return [heading, toTable(head, tabulate(view))];
    }),
  );
}

export function toTable(head: readonly string[], rows: readonly (readonly string[])[]): string | undefined {
  if (rows.length === 0) return undefined;
  const print = (cells: readonly string[]): string => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
  return [print(head), `|${head.map(() => ' --- |').join('')}`, ...rows.map(print)].join('\n');
}
