/**
 * Writes an athlete's next session as ordinary text: from the plan's next day and from what really happened, else as the
 * session was a week before. Whatever differs from the plan is said in a note.
 */
import { fromDayNumber, type IsoDate, toDayNumber } from '../calendar/iso-date.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { Block, MovementLine } from '../model/entry.ts';
import type { MassUnit } from '../model/quantity.ts';
import type { Practice } from '../practice/practice.ts';
import { printBlocks } from '../printing/print-block.ts';
import { indent } from '../printing/print-lines.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { openPlannedTurn } from './line-context.ts';
import { writeLine } from './next-line.ts';
import { findNextTurn, type Gap, LAYOFF_SHARE, type NextTurn, nameAthlete } from './next-turn.ts';
import { draftFromLastWeek } from './repeat-week.ts';
import {
  dropIdle,
  findDay,
  findReasonToLeaveOut,
  type NoNextSession,
  type SessionDraft,
  toSessionBlock,
  withNote,
} from './session-draft.ts';
import { findSessionPlace, type SessionPlace } from './session-file.ts';

export interface NextSessionOptions {
  /** Folded name. */
  readonly athlete: string;
  readonly today: IsoDate;
  readonly unit: MassUnit;
  readonly formula: OneRepMaxFormula;
  /** Folded name of the plan to go on with, if it has a day left. */
  readonly plan?: string;
  /** Where it goes if the athlete has neither a session nor a definition. */
  readonly fallback?: string;
}

export interface NextSession {
  readonly date: IsoDate;
  /** The session alone, without a last line end. */
  readonly text: string;
  readonly place: SessionPlace;
}

export function writeNextSession(
  works: SessionWorks,
  options: NextSessionOptions,
): NextSession | NoNextSession {
  const { practice } = works;
  const { athlete } = options;
  const today = toDayNumber(options.today);
  const next = findNextTurn(practice, athlete, today, options.plan);
  const draft = next ? draftFromPlan(works, options, next) : draftFromLastWeek(works, options);
  if ('refused' in draft) return draft;
  const date = fromDayNumber(draft.day);
  const place = findSessionPlace(practice, athlete, date, options.fallback);
  if (!place) return { refused: 'There is no log to write the session in' };
  const name = nameAthlete(practice, athlete);
  const header = ['session', date, ...(name ? [name] : []), ...(draft.at ? [`at ${draft.at}`] : [])].join(
    ' ',
  );
  const lines = [
    `${header}${draft.slot ? `, ${draft.slot}` : ''}`,
    ...indent(draft.notes.map((note) => `> ${note}`)),
    ...indent(printBlocks(draft.blocks)),
  ];
  return { date, text: lines.join('\n'), place };
}

/** What is put in at its place: behind what is there, with an empty line between. */
export function toInsertion({ text, place }: NextSession): string {
  return place.line === 0 && place.column === 0 ? `${text}\n` : `\n\n${text}`;
}

function draftFromPlan(works: SessionWorks, options: NextSessionOptions, next: NextTurn): SessionDraft {
  const { practice } = works;
  const { plan, turn } = next;
  const { athlete, unit, formula } = options;
  const entry = practice.findAthlete(athlete)?.entry;
  const today = toDayNumber(options.today);
  const { day, away } = findDay(works, athlete, Math.max(today, turn.date ?? today));
  const { context, projected } = openPlannedTurn(works, next, { athlete, day, unit, formula });
  const { gap } = context;
  const leftOut: string[] = [];
  const blocks = projected.blocks.map((block): Block => {
    const lines: MovementLine[] = [];
    const notes: string[] = [];
    for (const planned of block.lines) {
      const why = findReasonToLeaveOut(works, entry, planned.source, day, gap);
      if (!why) lines.push(writeLine(context, block, planned));
      else if (lines.length > 0) lines.push(withNote(lines.pop()!, why));
      else notes.push(why);
    }
    if (lines.length === 0) leftOut.push(...notes);
    return toSessionBlock(block.block, lines, notes);
  });
  return {
    day,
    ...(plan.entry.place && { at: plan.entry.place.text }),
    slot: `${plan.name} week ${turn.week} day ${turn.day.number}`,
    notes: [
      ...(away ? [away] : []),
      ...describeUnknownPlan(practice, athlete),
      ...describeDeload(next),
      ...describeGap(gap),
      ...leftOut,
    ],
    blocks: blocks.flatMap(dropIdle),
  };
}

/** A mistyped plan in the last session would begin the plan anew without a word. */
function describeUnknownPlan(practice: Practice, athlete: string): string[] {
  const last = practice.sessionsOf(athlete).findLast(({ entry }) => entry.plan !== undefined);
  const written = last?.entry.plan?.name.text;
  if (!last || written === undefined || practice.findPlan(written)) return [];
  return [`The session on ${last.date} names a plan that nothing defines, ${written}, so it counts for none`];
}

function describeDeload({ turn }: NextTurn): string[] {
  if (!turn.deload) return [];
  const { sets, load } = turn.deload;
  const shares = [
    ...(sets === undefined ? [] : [`sets ${printPlain(sets)} %`]),
    ...(load === undefined ? [] : [`load ${printPlain(load)} %`]),
  ];
  return [['Deload', ...shares].join(', ')];
}

function describeGap(gap: Gap | undefined): string[] {
  if (!gap) return [];
  return gap.kind === 'layoff'
    ? [
        `${gap.days} days since the last session: loads are ${LAYOFF_SHARE} % of the plan's, and no max is tested; after illness or injury ask a licensed practitioner`,
      ]
    : [`A week without a session (${gap.days} days): no load is above the last time`];
}
