/** Without a plan the week repeats itself: the session that is a week old by the next one, to be changed. */
import { fromDayNumber, toDayNumber } from '../calendar/iso-date.ts';
import { findCell } from '../measures/expand-sets.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { MovementLine } from '../model/entry.ts';
import type { SetGroup } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { NextSessionOptions } from './next-session.ts';
import { findGap, findLastSession, listPlans, nameAthlete } from './next-turn.ts';
import { findCourse } from './plan-calendar.ts';
import {
  dropIdle,
  findDay,
  findReasonToLeaveOut,
  type NoNextSession,
  type SessionDraft,
  toSessionBlock,
} from './session-draft.ts';

export function draftFromLastWeek(
  works: SessionWorks,
  options: NextSessionOptions,
): SessionDraft | NoNextSession {
  const { practice } = works;
  const { athlete } = options;
  const today = toDayNumber(options.today);
  const newest = findLastSession(practice, athlete, Number.POSITIVE_INFINITY);
  const name = nameAthlete(practice, athlete);
  if (!newest) return { refused: `${name || 'The athlete'} has neither a plan nor a session to go on from` };
  const source =
    practice
      .sessionsOf(athlete)
      .find(({ day, entry, groupSize }) => day > newest.day - 7 && !entry.missed && groupSize === 1) ??
    newest;
  const { day, away } = findDay(works, athlete, Math.max(today, source.day + 7));
  const gap = findGap(practice, athlete, day, undefined);
  const leftOut: string[] = [];
  const blocks = source.entry.blocks.map((block) => {
    const lines = block.lines.flatMap((line) => {
      const why =
        findReasonToLeaveOut(works, practice.findAthlete(athlete)?.entry, line, day, gap) ??
        (line.purpose === 'test'
          ? `test ${line.name.text} left out: a max is not tested every week`
          : undefined);
      if (why) leftOut.push(why);
      const copied = why ? undefined : copyLine(line, source);
      return copied ? [copied] : [];
    });
    return toSessionBlock(block, lines, []);
  });
  const ended = describeEnd(works, athlete, today);
  const layoff =
    gap?.kind === 'layoff'
      ? [`${gap.days} days since the last session: begin with less load and fewer sets`]
      : [];
  const from = `As on ${source.date}, to be changed: ${ended ?? 'no plan says what comes next'}`;
  return {
    day,
    ...(source.entry.place && { at: source.entry.place.text }),
    notes: [...(away ? [away] : []), from, ...layoff, ...leftOut],
    blocks: blocks.flatMap(dropIdle),
  };
}

function describeEnd({ practice }: SessionWorks, athlete: string, today: number): string | undefined {
  const ended = listPlans(practice, athlete)
    .map((plan) => ({ plan, end: findCourse(practice, plan.entry).end }))
    .filter(({ end }) => end !== undefined && end < today)
    .sort((a, b) => a.end! - b.end!)
    .at(-1);
  return ended && `${ended.plan.name} ended on ${fromDayNumber(ended.end!)}`;
}

/** A line as it was done, without how it felt; a set that was skipped is not copied. */
function copyLine(line: MovementLine, { index }: SessionRecord): MovementLine | undefined {
  const cell = findCell(line, index);
  const sets = (cell?.sets ?? []).filter(({ amount }) => amount?.kind !== 'skipped').map(copyGroup);
  if (!cell || sets.length === 0) return undefined;
  const modifiers = [...cell.modifiers, ...line.modifiers].filter(
    ({ kind }) => kind === 'tempo' || kind === 'rest' || kind === 'setting',
  );
  return { ...line, cells: [{ ...cell, sets, modifiers: [] }], modifiers, notes: [] };
}

/** `4 of 5` → 4; of a missed single the one that was tried. */
function copyGroup(group: SetGroup): SetGroup {
  const { amount } = group;
  const plain = { ...group, ratings: [] };
  if (amount?.kind !== 'attempt') return plain;
  const value = amount.made > 0 ? amount.made : amount.tried;
  const quantity = { measure: 'reps', value, written: value, unit: 'rep' } as const;
  return { ...plain, amount: { kind: 'quantity', quantity, perSide: amount.perSide } };
}
