import { toDayNumber } from '../calendar/iso-date.ts';
import type { FileModel, SessionEntry } from '../model/entry.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';
import { type CheckContext, NO_PROBLEMS, problem, textAt } from './check-context.ts';
import { describePlace } from './check-definitions.ts';
import { findJoinedNames } from './joined-names.ts';
import { findSessionBefore } from './training-history.ts';

/** More athletes than this are not offered one by one. */
const MOST_OFFERED = 5;

/** `session 2026-11-17` where several athletes are defined. */
export function checkWhose(entry: SessionEntry, context: CheckContext): readonly Problem[] {
  if (entry.athletes.length > 0 || !entry.date) return NO_PROBLEMS;
  const athletes = context.practice.allAthletes();
  // Somebody may be named where a place or a plan would stand.
  if (athletes.length < 2 || findJoinedNames(entry, context)) return NO_PROBLEMS;
  const names = athletes.map(({ name }) => name).sort();
  const { date } = entry;
  const after = textAt(context, { ...date.span, start: date.span.end, end: entry.header.end });
  const end = date.span.end + /^(?:\s+\d{1,2}:\d{2})?/.exec(after)![0].length;
  const behind: Span = { ...date.span, start: end, end };
  const fixes: Fix[] =
    names.length > MOST_OFFERED
      ? []
      : names.map((name) => ({ title: `Write ${name}`, edits: [{ span: behind, newText: ` ${name}` }] }));
  const message = 'Whose session is it? Several athletes are defined, so write the name behind the date';
  return [problem('which-athlete', date.span, message, fixes)];
}

/** A session after today. */
export function checkFuture({ date: written }: SessionEntry, { today }: CheckContext): readonly Problem[] {
  if (!written?.date || toDayNumber(written.date) <= toDayNumber(today)) return NO_PROBLEMS;
  return [problem('future-session', written.span, `${written.date} is still to come: is the date right?`)];
}

/** A session that is logged already, of that day and time. */
export function checkTwice(
  entry: SessionEntry,
  { practice, uri, records: own }: CheckContext,
): readonly Problem[] {
  if (!entry.date?.date) return NO_PROBLEMS;
  const { date, span } = entry.date;
  for (const record of own) {
    const before = findSessionBefore(practice, record);
    if (!before || before.date !== date || before.entry.clock !== entry.clock) continue;
    const who = practice.athleteName(record.athlete);
    const session = who === '' ? 'A session' : `A session of ${who}`;
    const advice = entry.clock
      ? 'correct a date or a time'
      : 'write the time of day behind each date, or take one out';
    const message = `${session} on ${date} stands ${describePlace(before.uri, before.line, uri)} already: ${advice}`;
    return [problem('session-twice', span, message)];
  }
  return NO_PROBLEMS;
}

/** A problem and the line of its entry's header. */
export interface FileProblem {
  readonly entryLine: number;
  readonly problem: Problem;
}

/** Sessions of one athlete within a file that go back in time. A file kept newest first throughout is in order too. */
export function checkOrder(practice: Practice, { uri, entries }: FileModel): FileProblem[] {
  const found = new Map<string, { athlete: string; day: number; ascents: number; back: FileProblem[] }>();
  for (const placed of entries) {
    if (placed.entry.kind !== 'session') continue;
    for (const { athlete, day, date, entry } of practice.recordsOf(uri, placed)) {
      const last = found.get(athlete);
      if (!last) {
        found.set(athlete, { athlete, day, ascents: 0, back: [] });
        continue;
      }
      if (day > last.day) last.ascents++;
      if (day < last.day) {
        const who = practice.athleteName(athlete);
        const message = `${date} stands below a later session${who === '' ? '' : ` of ${who}`}: put sessions in order of date, or correct it`;
        last.back.push({
          entryLine: placed.line,
          problem: problem('session-order', entry.date!.span, message),
        });
      }
      last.day = day;
    }
  }
  const disordered = [...found.values()].flatMap(({ ascents, back }) =>
    back.length > 1 && ascents === 0 ? [] : back,
  );
  // A group's session is one thing to move, whoever it is of.
  return disordered.filter(
    ({ entryLine }, index) => disordered.findIndex((other) => other.entryLine === entryLine) === index,
  );
}

/** A session while its athlete is away. */
export function checkAway(entry: SessionEntry, { practice, records }: CheckContext): readonly Problem[] {
  if (!entry.date || entry.missed) return NO_PROBLEMS;
  const problems: Problem[] = [];
  for (const { athlete, day } of records) {
    const defined = practice.findAthlete(athlete);
    const absence = defined?.entry.away.find(
      ({ from, to }) => from && to && toDayNumber(from) <= day && day <= toDayNumber(to),
    );
    if (!absence) continue;
    const reason = absence.reason ? `, ${absence.reason}` : '';
    const message = `${defined!.name} is away from ${absence.from} to ${absence.to}${reason}: is the date right?`;
    problems.push(problem('while-away', entry.date.span, message));
  }
  return problems;
}
