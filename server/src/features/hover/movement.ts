import { daysBetween, toDayNumber } from '@plimsoll/language/calendar/iso-date';
import type { Movement } from '@plimsoll/language/practice/movement';
import { describeMovementMax } from '@plimsoll/language/summaries/movement-max';
import { count } from '@plimsoll/language/summaries/words';
import { foldName } from '@plimsoll/language/text/names';
import { escapeMarkdown, joinLines, joinParagraphs } from '../../markdown.ts';
import { type FeatureContext, toLensOptions } from '../context.ts';
import type { LocatedAs } from '../hover.ts';
import { findMovementHistory } from './movement-history.ts';
import { describeMaxSeries } from './series.ts';
import { findWhoTrains } from './who-trains.ts';

const DAYS_SHOWN = 5;

/** What the movement is, what to say and to mind, and what this athlete did of it before. */
export function hoverMovement(
  context: FeatureContext,
  uri: string,
  located: LocatedAs<'movement'>,
): string | undefined {
  const movement = context.practice.findMovement(located.name);
  return joinParagraphs([
    `**${escapeMarkdown(movement?.name ?? located.name)}**${movement ? '' : ' · not defined here or built in'}`,
    movement && describeMovement(movement),
    describeHistory(context, uri, located),
  ]);
}

/** `avoid vertical push`: a pattern as such, or a movement. */
export function hoverAvoided(
  { practice }: FeatureContext,
  _uri: string,
  { name }: LocatedAs<'avoided'>,
): string | undefined {
  const movement = practice.findMovement(name);
  return movement
    ? joinParagraphs([`**${escapeMarkdown(movement.name)}**`, describeMovement(movement)])
    : `All movements of the pattern **${escapeMarkdown(name)}**`;
}

function describeMovement({ entry, builtIn }: Movement): string {
  const names = (list: readonly { readonly text: string }[]) =>
    list.map(({ text }) => escapeMarkdown(text)).join(', ');
  const fact = (word: string, text: string | undefined) => (text ? `${word}: ${text}` : undefined);
  const kinds = [entry.pattern, entry.work, entry.position].flatMap((written) =>
    written ? [escapeMarkdown(written.text)] : [],
  );
  const direct = entry.muscles.filter(({ fraction }) => !fraction).map(({ name }) => name);
  const indirect = entry.muscles.flatMap(({ name, fraction }) =>
    fraction ? [`${escapeMarkdown(name.text)} ${fraction.join('/')}`] : [],
  );
  const trunk = entry.trunk.map(({ demand, direction }) => `${demand} ${escapeMarkdown(direction.text)}`);
  const facts = joinLines([
    [...kinds, ...(builtIn ? ['built in'] : [])].join(' · '),
    fact('Trunk', trunk.join(', ')),
    fact('Muscles', names(direct)),
    fact('Indirectly', indirect.join(', ')),
    fact('Needs', names(entry.needs)),
    fact('Body mass that counts', entry.bodyShare && describeShare(entry.bodyShare)),
    fact('Also called', names(entry.also)),
    fact('Easier', names(entry.easier)),
    fact('Harder', names(entry.harder)),
  ]);
  const advice = joinLines([
    ...entry.setups.map(({ text }) => `Setup: ${escapeMarkdown(text)}`),
    ...entry.cues.map(({ text }) => `Cue: ${escapeMarkdown(text)}`),
    ...entry.cautions.map(({ text }) => `**Caution:** ${escapeMarkdown(text)}`),
  ]);
  return joinParagraphs([facts, advice]);
}

function describeShare({ percent, source }: NonNullable<Movement['entry']['bodyShare']>): string {
  return `${percent} %${source ? ` (${escapeMarkdown(source)})` : ''}`;
}

function describeHistory(
  context: FeatureContext,
  uri: string,
  located: LocatedAs<'movement'>,
): string | undefined {
  const { practice, workspace } = context;
  const who = findWhoTrains(practice, uri, located);
  if (!who) return undefined;
  if (!workspace.complete) return '*History loading…*';
  const { days, heaviest } = findMovementHistory(practice, located.name, who.athlete, who.record);
  const name = escapeMarkdown(practice.athleteName(who.athlete));
  const heading = name ? `Last times, ${name}` : 'Last times';
  if (days.length === 0) return `${heading}: ${who.record ? 'none before this session' : 'none yet'}`;
  const list = days.slice(0, DAYS_SHOWN).map(({ record, text }) => {
    const ago = who.record ? ` (${count(daysBetween(record.date, who.record.date), 'day')} before)` : '';
    return `- ${record.date}${ago}: ${escapeMarkdown(text)}`;
  });
  const best = heaviest && `Best: ${escapeMarkdown(heaviest.text)} on ${heaviest.record.date}`;
  const key = practice.findMovement(located.name)?.key ?? foldName(located.name);
  const series = describeMaxSeries(context, key, who);
  // As the loads of the session were chosen: what it proves itself counts from the next day on.
  const day = who.record ? who.record.day - 1 : toDayNumber(context.today);
  const options = toLensOptions(context);
  const max = describeMovementMax(context.works, who.athlete, located.name, day, options, who.place);
  return joinParagraphs([
    `${heading}:\n\n${list.join('\n')}`,
    best,
    joinLines(max.map(({ text }) => text)),
    series,
  ]);
}
