/** What a session that is written from a plan, and one that repeats a week, have in common. */
import { toDayNumber } from '../calendar/iso-date.ts';
import { findAvoided } from '../checks/check-avoid.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { AthleteEntry, Block, MovementLine } from '../model/entry.ts';
import { findAway, type Gap } from './next-turn.ts';

/** A session before it is printed. */
export interface SessionDraft {
  readonly day: number;
  readonly at?: string;
  readonly slot?: string;
  readonly notes: readonly string[];
  readonly blocks: readonly Block[];
}

/** Why there is none, as a sentence for the coach. */
export interface NoNextSession {
  readonly refused: string;
}

/** The first day from one on that has no session yet and on which the athlete is not away. */
export function findDay(works: SessionWorks, athlete: string, from: number): { day: number; away?: string } {
  const { practice } = works;
  const records = practice.sessionsOf(athlete);
  let day = Math.max(from, (records.at(-1)?.day ?? from - 1) + 1);
  const away = findAway(practice.findAthlete(athlete)?.entry, day);
  if (!away) return { day };
  day = toDayNumber(away.to!) + 1;
  return { day, away: `Away until ${away.to}${away.reason ? ` (${away.reason})` : ''}, so the day after` };
}

/** Why a line is no part of a session: it is to be avoided, or tests a max too soon. */
export function findReasonToLeaveOut(
  works: SessionWorks,
  entry: AthleteEntry | undefined,
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
export function dropIdle(block: Block): Block[] {
  if (block.kind === 'warmup' || block.kind === 'cooldown') return block.lines.length > 0 ? [block] : [];
  return block.lines.some(({ purpose }) => purpose !== 'warmup') ? [block] : [];
}

export function withNote(line: MovementLine, text: string): MovementLine {
  return { ...line, notes: [...line.notes, { text, span: line.span }] };
}

/** A block as it is begun: nothing in it is recorded yet, and of a range of rests the shorter is taken. */
export function toSessionBlock(
  block: Block,
  lines: readonly MovementLine[],
  notes: readonly string[],
): Block {
  const { done: _done, timesSpan: _span, roundStep: _step, rest, ...plain } = block;
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
