import { type IsoDate, toDayNumber } from '../calendar/iso-date.ts';
import { type IsoWeek, toIsoWeek } from '../calendar/iso-week.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { compareWeeks } from '../measures/week-work.ts';
import { locate } from '../practice/locate.ts';
import { findEntry } from '../practice/mentions.ts';
import type { Practice } from '../practice/practice.ts';
import type { LensOptions } from './lens.ts';
import { printSum, unitFor } from './session-lens.ts';
import { count, printChange } from './words.ts';

/** An athlete's week in a few words, and how it stands to the weeks before. */
export interface AthleteWeek {
  readonly text: string;
  /** Empty where there is nothing to compare with. */
  readonly detail: string;
}

/**
 * The week of the athlete at a place of a file: of the session there, or this week in the athlete's own definition.
 * `Odalys · week 47 so far: 3 sessions, 18 220 kg`. Nothing until all files are read.
 */
export function describeAthleteWeek(
  works: SessionWorks,
  uri: string,
  line: number,
  column: number,
  options: LensOptions,
): AthleteWeek | undefined {
  const { practice } = works;
  const who = options.complete ? findTrainee(practice, uri, line, column, options.today) : undefined;
  if (!who) return undefined;
  const { athlete, date } = who;
  const { week, changes } = compareWeeks(practice, works, athlete, toDayNumber(date), options.today);
  const done = week.sessions.filter(({ record }) => !record.entry.missed);
  const thisWeek = toIsoWeek(options.today);
  const isNow = thisWeek.week === week.week.week && thisWeek.year === week.week.year;
  const sum = printSum(week.total, unitFor(works, athlete, options));
  const name = shortenName(practice, athlete);
  const facts = [done.length === 0 ? 'no session' : count(done.length, 'session'), sum];
  return {
    text: `${name === '' ? '' : `${name} · `}${nameWeek(week.week, thisWeek)}${isNow ? ' so far' : ''}: ${facts.filter(Boolean).join(', ')}`,
    detail: changes
      .filter(({ percent }) => percent !== undefined)
      .map(({ percent, before, soFar, atLeast }) => {
        const marks = before.marks.length > 0 ? ` (${before.marks.join(', ')})` : '';
        const until = soFar ? ' to the same weekday' : '';
        return `${printChange(percent!, atLeast)} ${nameWeek(before.week, week.week)}${marks}${until}`;
      })
      .join(', '),
  };
}

/** Whose session or definition it is, and the day whose week counts; of a group, whoever the cursor's cell is for. */
function findTrainee(
  practice: Practice,
  uri: string,
  line: number,
  column: number,
  today: IsoDate,
): { readonly athlete: string; readonly date: IsoDate } | undefined {
  const file = practice.file(uri);
  const placed = file && findEntry(file.model, line);
  if (placed?.entry.kind === 'athlete' && placed.entry.name) {
    const athlete = practice.findAthlete(placed.entry.name.text);
    return athlete && { athlete: athlete.key, date: today };
  }
  if (placed?.entry.kind !== 'session') return undefined;
  const records = practice.recordsOf(uri, placed);
  const located = locate(file!.model, line, column);
  const named = placed.entry.athletes.findIndex(
    ({ span }) => placed.line + span.line === line && span.start <= column && column <= span.end,
  );
  return records[named >= 0 ? named : (located?.cell ?? 0)] ?? records[0];
}

/** The first word of a name, where no other athlete's begins with it. */
function shortenName(practice: Practice, athlete: string): string {
  const name = practice.athleteName(athlete);
  const [first = ''] = name.split(' ');
  const beginning = first.toLowerCase();
  const alike = practice.athleteKeys().filter((key) => key.split(' ')[0] === beginning);
  return alike.length > 1 ? name : first;
}

/** `week 47`, and `week 52 of 2025` beside a week of another year. */
function nameWeek({ week, year }: IsoWeek, beside: IsoWeek): string {
  return year === beside.year ? `week ${week}` : `week ${week} of ${year}`;
}
