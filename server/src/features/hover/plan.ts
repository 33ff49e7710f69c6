import { count } from '@plimsoll/language/summaries/words';
import { escapeMarkdown, joinLines, joinParagraphs } from '../../markdown.ts';
import type { FeatureContext } from '../context.ts';
import type { LocatedAs } from '../hover.ts';
import { describeDoneTable } from './done.ts';
import { describePlanWeeks } from './plan-weeks.ts';

/** A plan in brief: for whom, when, its days, and its weeks. */
export function hoverPlan(context: FeatureContext, uri: string, located: LocatedAs<'plan'>): string {
  const { name, placed } = located;
  const plan = context.practice.findPlan(name);
  const title = `**${escapeMarkdown(plan?.name ?? name)}**`;
  if (!plan) return `${title} · no such plan`;
  const { athletes, place, starts, follows, weeks, days, weekdays, deloads } = plan.entry;
  const names = athletes.map(({ text }) => escapeMarkdown(text)).join(', ');
  return joinParagraphs([
    title,
    joinLines([
      [names && `for ${names}`, place && `at ${escapeMarkdown(place.text)}`].filter(Boolean).join(' '),
      [
        weeks && count(weeks.count, 'week'),
        starts?.date && `from ${starts.date}`,
        follows && `after ${escapeMarkdown(follows.text)}`,
        weekdays.length > 0 && weekdays.map(({ text }) => text).join(', '),
        deloads.length > 0 && `deload week ${deloads.map(({ week }) => week).join(', ')}`,
      ]
        .filter(Boolean)
        .join(' · '),
      ...days.map(({ number, name: title }) => `Day ${number}${title ? `: ${escapeMarkdown(title)}` : ''}`),
    ]),
    describeDoneTable(context, uri, placed),
    describePlanWeeks(context, plan.entry),
  ]);
}
