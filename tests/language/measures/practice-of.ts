import { addDays, type IsoDate, toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { createPractice } from '../../../language/src/create-practice.ts';
import { printResult } from '../../../language/src/measures/explain.ts';
import type { Result } from '../../../language/src/measures/result.ts';
import { type SessionWork, SessionWorks } from '../../../language/src/measures/session-work.ts';
import type { Practice } from '../../../language/src/practice/practice.ts';

/** Everything that some text says, as one file of a workspace. */
export function practiceOf(text: string): { practice: Practice; works: SessionWorks } {
  const practice = createPractice();
  practice.setFile('log.plim', text);
  return { practice, works: new SessionWorks(practice) };
}

/** The work of an athlete's last session. */
export function lastWork(works: SessionWorks, athlete: string): SessionWork {
  return works.of(works.practice.sessionsOf(athlete).at(-1)!);
}

export const dayOf = (date: IsoDate): number => toDayNumber(date);

/** One session a day from a date on: `lines` of the first day, then of the next; undefined is a day off. */
export function writeDays(from: IsoDate, athlete: string, lines: readonly (string | undefined)[]): string {
  return lines
    .map((line, index) => (line === undefined ? '' : `session ${addDays(from, index)} ${athlete}\n${line}\n`))
    .join('');
}

/** What a coach reads of a result, and what was left out: `at least 420 AU [2026-11-04: no effort]`. */
export function printWithOmissions(result: Result | undefined): string {
  if (!result) return 'nothing';
  const omitted = result.omitted.map(({ what, why }) => `[${what}: ${why}]`);
  return [printResult(result), ...omitted].join(' ');
}
