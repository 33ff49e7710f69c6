/**
 * Writes an athlete's next session as ordinary text: from the plan's next day and from what really happened, else as the
 * session was a week before. Whatever differs from the plan is said in a note.
 */
import { fromDayNumber, type IsoDate, toDayNumber } from '../calendar/iso-date.ts';
import { findAvoided } from '../checks/check-avoid.ts';
import { findCell } from '../measures/expand-sets.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { Block, MovementLine } from '../model/entry.ts';
import type { MassUnit, SetGroup } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { printBlocks } from '../printing/print-block.ts';
import { indent } from '../printing/print-lines.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { LAYOFF_SHARE, writeLine } from './next-line.ts';
import {
  findAway,
  findGap,
  findLastSession,
  findNextTurn,
  type Gap,
  listPlans,
  type NextTurn,
  nameAthlete,
} from './next-turn.ts';
import { findCourse } from './plan-calendar.ts';
import type { LineContext } from './progress-line.ts';
import { projectTurn } from './project-plan.ts';
import { findSessionPlace, type SessionPlace } from './session-file.ts';

export interface NextSessionOptions {
  /** Folded name. */
  readonly athlete: string;
  readonly today: IsoDate;
  readonly unit: MassUnit;
  readonly formula: OneRepMaxFormula;
  /** Where it goes if the athlete has neither a session nor a definition. */
  readonly fallback?: string;
}

export interface NextSession {
  readonly date: IsoDate;
  /** The session alone, without a last line end. */
  readonly text: string;
  readonly place: SessionPlace;
}

/** Why there is none, as a sentence for the coach. */
export interface NoNextSession {
  readonly refused: string;
}

export function writeNextSession(
  works: SessionWorks,
  options: NextSessionOptions,
): NextSession | NoNextSession {
  const { practice } = works;
  const { athlete } = options;
  const today = toDayNumber(options.today);
  const next = findNextTurn(practice, athlete, today);
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

interface Draft {
  readonly day: number;
  readonly at?: string;
  readonly slot?: string;
  readonly notes: readonly string[];
  readonly blocks: readonly Block[];
}

function draftFromPlan(works: SessionWorks, options: NextSessionOptions, next: NextTurn): Draft {
  const { practice } = works;
  const { plan, course, turn } = next;
  const { athlete, unit, formula } = options;
  const entry = practice.findAthlete(athlete)?.entry;
  const today = toDayNumber(options.today);
  const { day, away } = findDay(works, athlete, Math.max(today, turn.date ?? today));
  const gap = findGap(practice, athlete, day, course.start);
  const projected = projectTurn(works, plan.entry, turn, { athlete, today, unit, formula, on: day });
  const place = plan.entry.place && practice.findPlace(plan.entry.place.text);
  const context: LineContext = {
    works,
    athlete,
    day,
    place: place?.entry,
    of: { plan, course, day: turn.day },
    week: turn.week,
    deload: turn.deload !== undefined,
    share: turn.deload?.load,
    gap,
  };
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
    notes: [...(away ? [away] : []), ...describeDeload(next), ...describeGap(gap), ...leftOut],
    blocks: blocks.flatMap(dropIdle),
  };
}

/** The first day from one on that has no session yet and on which the athlete is not away. */
function findDay(works: SessionWorks, athlete: string, from: number): { day: number; away?: string } {
  const { practice } = works;
  const records = practice.sessionsOf(athlete);
  let day = Math.max(from, (records.at(-1)?.day ?? from - 1) + 1);
  const away = findAway(practice.findAthlete(athlete)?.entry, day);
  if (!away) return { day };
  day = toDayNumber(away.to!) + 1;
  return { day, away: `Away until ${away.to}${away.reason ? ` (${away.reason})` : ''}, so the day after` };
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

function findReasonToLeaveOut(
  works: SessionWorks,
  entry: Parameters<typeof findAvoided>[0] | undefined,
  line: MovementLine,
  day: number,
  gap: Gap | undefined,
): string | undefined {
  const { practice } = works;
  const name = line.name.text;
  const movement = practice.findMovement(name);
  const avoided = entry && movement && findAvoided(entry, movement, day, practice);
  if (avoided) {
    const until = avoided.until ? ` until ${avoided.until}` : '';
    const reason = avoided.reason ? ` (${avoided.reason})` : '';
    return `${name} left out: to avoid ${avoided.what.text}${until}${reason}`;
  }
  return line.purpose === 'test' && gap?.kind === 'layoff' ? `test ${name} left for later` : undefined;
}

/** A block in which only a warm-up is left is left out, and so is the warm-up of a movement that is. */
function dropIdle(block: Block): Block[] {
  if (block.kind === 'warmup' || block.kind === 'cooldown') return block.lines.length > 0 ? [block] : [];
  return block.lines.some(({ purpose }) => purpose !== 'warmup') ? [block] : [];
}

function withNote(line: MovementLine, text: string): MovementLine {
  return { ...line, notes: [...line.notes, { text, span: line.span }] };
}

/** A block as it is begun: nothing in it is recorded yet, and of a range of rests the shorter is taken. */
function toSessionBlock(block: Block, lines: readonly MovementLine[], notes: readonly string[]): Block {
  const { done: _done, timesSpan: _span, rest, ...plain } = block;
  const written = new Map(lines.map((line) => [line.span.line, lines.indexOf(line)]));
  return {
    ...plain,
    lines,
    ...(rest && { rest: { low: rest.low } }),
    times: [],
    restsTaken: [],
    restSteps: [],
    restsBetween: block.restsBetween.flatMap(({ high: _high, after, ...between }) => {
      const index = after < 0 ? -1 : written.get(block.lines[after]?.span.line ?? -1);
      return index === undefined ? [] : [{ ...between, after: index }];
    }),
    notes: [...block.notes, ...notes.map((text) => ({ text, span: block.span }))],
  };
}

/** Without a plan the week repeats itself: the session that is a week old by the next one. */
function draftFromLastWeek(works: SessionWorks, options: NextSessionOptions): Draft | NoNextSession {
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
