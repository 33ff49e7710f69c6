import { daysBetween } from '@plimsoll/language/calendar/iso-date';
import { printSetGroup } from '@plimsoll/language/printing/print-sets';
import { count } from '@plimsoll/language/summaries/words';
import { foldName } from '@plimsoll/language/text/names';
import { printMass } from '@plimsoll/language/units/mass';
import { escapeMarkdown, joinLines, joinParagraphs } from '../../markdown.ts';
import type { FeatureContext } from '../context.ts';
import type { LocatedAs } from '../hover.ts';
import { toLoadText } from './load-text.ts';
import { describeAthleteSeries } from './series.ts';

/** An athlete in brief: what to avoid first, then body mass, maxes, goals and the last session. */
export function hoverAthlete(context: FeatureContext, _uri: string, { name }: LocatedAs<'athlete'>): string {
  const { practice, workspace, today } = context;
  const athlete = practice.findAthlete(name);
  const entry = athlete?.entry;
  const records = practice.sessionsOf(name).filter(({ entry: { missed } }) => !missed);
  const last = records.at(-1);
  const weighIn = entry?.weighIns.at(-1);
  const avoid =
    entry?.avoid.filter(({ until }) => until === undefined || daysBetween(today, until) >= 0) ?? [];
  return joinParagraphs([
    `**${escapeMarkdown(athlete?.name ?? name)}**${athlete ? '' : ' · no entry of their own'}`,
    joinLines(
      avoid.map(({ what, until, reason }) => {
        const details = [...(until ? [`until ${until}`] : []), ...(reason ? [escapeMarkdown(reason)] : [])];
        return `**Avoid** ${escapeMarkdown(what.text)}${details.length > 0 ? ` (${details.join(', ')})` : ''}`;
      }),
    ),
    joinLines([
      weighIn && `Body mass: ${printMass(weighIn.mass.grams, weighIn.mass.unit)} on ${weighIn.date}`,
      ...(entry?.maxes ?? []).map(({ movement, load, date }) => {
        const text = load && toLoadText(load);
        return text && `Max ${escapeMarkdown(movement.text)}: ${text}${date ? ` on ${date}` : ''}`;
      }),
      ...(entry?.retests ?? []).map(({ movement, masses, date }) => {
        const text = masses.map((mass) => printMass(mass.grams, mass.unit)).join(', ');
        return text && `Retest ${escapeMarkdown(movement.text)}: ${text}${date ? ` on ${date}` : ''}`;
      }),
      ...(entry?.goals ?? []).map(
        ({ movement, set, by }) =>
          `Goal: ${escapeMarkdown(movement.text)}${set ? ` ${escapeMarkdown(printSetGroup(set))}` : ''}${by ? ` by ${by}` : ''}`,
      ),
    ]),
    workspace.complete
      ? last && `${count(records.length, 'session')}, the last on ${last.date}`
      : '*History loading…*',
    joinLines(describeAthleteSeries(context, foldName(name))),
  ]);
}
