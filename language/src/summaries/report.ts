import { fromDayNumber, type IsoDate, toDayNumber } from '../calendar/iso-date.ts';
import { type IsoWeek, printIsoWeek, startOfWeek } from '../calendar/iso-week.ts';
import { splitByExercise } from '../measures/exercise-work.ts';
import type { SessionWork, SessionWorks } from '../measures/session-work.ts';
import { compareWeeks, findFirst, startDayOf, type WeekMark } from '../measures/week-work.ts';
import { toWorkResults } from '../measures/work-results.ts';
import { foldName } from '../text/names.ts';
import { describeBlock } from './block-lens.ts';
import { describeBlockRounds } from './block-rounds.ts';
import { describeDone } from './done-against-planned.ts';
import { describeDoneBlocks } from './done-lines.ts';
import type { LensOptions } from './lens.ts';
import { describeMaxes } from './line-lens.ts';
import { describeBalance } from './report-balance.ts';
import { explainAll, type ReportFact } from './report-fact.ts';
import { describeLoad } from './report-load.ts';
import {
  describeSession,
  explainSession,
  printSum,
  printWeekChanges,
  toWeekResult,
  unitFor,
} from './session-lens.ts';
import { count, joinFacts } from './words.ts';

export interface ReportSession extends ReportFact {
  readonly date: IsoDate;
  readonly place?: string;
  readonly uri: string;
  /** Line of the session's header, from 1. */
  readonly line: number;
  readonly blocks: readonly ReportFact[];
  readonly maxes: readonly ReportFact[];
  /** What was done otherwise than the plan's day asks for, by its blocks. */
  readonly plan: readonly ReportFact[];
}

export interface ReportWeek extends ReportFact {
  readonly week: string;
  readonly marks: readonly WeekMark[];
  /** What the week was made of, one line each. */
  readonly balance: readonly ReportFact[];
  /** Load over time, trends and the plan, as of the week. */
  readonly load: readonly ReportFact[];
  readonly sessions: readonly ReportSession[];
}

export interface Report {
  readonly today: IsoDate;
  readonly athletes: readonly { readonly athlete: string; readonly weeks: readonly ReportWeek[] }[];
}

export interface ReportOptions extends LensOptions {
  readonly athlete?: string;
  /** Without one, each athlete's last trained week up to today. */
  readonly week?: IsoWeek;
}

/** Every number that the lenses show, for one week of one athlete or of all. */
export function makeReport(works: SessionWorks, options: ReportOptions): Report {
  const { practice } = works;
  const keys = practice
    .athleteKeys()
    .filter((key) => options.athlete === undefined || key === foldName(options.athlete));
  return {
    today: options.today,
    athletes: keys.map((key) => {
      const start = findStart(works, key, options);
      return {
        athlete: practice.athleteName(key),
        weeks: start === undefined ? [] : [reportWeek(works, key, start, options)],
      };
    }),
  };
}

function findStart(works: SessionWorks, athlete: string, options: ReportOptions): number | undefined {
  if (options.week) return toDayNumber(startOfWeek(options.week));
  const records = works.practice.sessionsOf(athlete);
  const last = records[findFirst(records, toDayNumber(options.today) + 1) - 1];
  return last && startDayOf(last.day);
}

function reportWeek(works: SessionWorks, athlete: string, start: number, options: ReportOptions): ReportWeek {
  const { week, changes } = compareWeeks(works.practice, works, athlete, start, options.today);
  const unit = unitFor(works, athlete, options);
  const name = printIsoWeek(week.week);
  return {
    of: name,
    week: name,
    marks: week.marks,
    text: joinFacts([
      count(week.sessions.length, 'session'),
      count(week.total.sets, 'working set'),
      printSum(week.total, unit),
      printWeekChanges(week, changes),
    ]),
    numbers: explainAll([
      ...toWorkResults(week.total, { exercises: splitByExercise(week.sessions) }),
      ...changes.map((made) => toWeekResult(week, made)),
    ]),
    balance: describeBalance(works, week, changes[0], unit, options),
    load: describeLoad(works, athlete, start, unit, options),
    sessions: week.sessions.map((work) => reportSession(works, work, options)),
  };
}

function reportSession(works: SessionWorks, work: SessionWork, options: ReportOptions): ReportSession {
  const { record } = work;
  const { entry } = record;
  const session = describeSession(works, [record], options);
  return {
    of: fromDayNumber(record.day),
    date: record.date,
    ...(entry.place && { place: entry.place.text }),
    uri: record.uri,
    line: record.line + 1,
    text: session.text,
    numbers: explainAll([
      ...explainSession(work),
      ...(describeDone(works, record, options.formula)?.results ?? []),
    ]),
    blocks: entry.blocks.flatMap((block): ReportFact[] => {
      const lens = describeBlock(works, work, block, options);
      const of = [block.letter, block.kind].filter((part) => part !== undefined).join(' ');
      return [
        ...(lens ? [{ of, text: lens.text, numbers: explainAll(lens.explain()) }] : []),
        ...describeBlockRounds(works, work, block, options).map((fact) => ({
          of: `${of} ${fact.of}`,
          text: fact.text,
          numbers: explainAll(fact.results),
        })),
      ];
    }),
    maxes: describeMaxes(works, work, options).map(({ text, explain, entryLine }) => ({
      of: entry.blocks.flatMap(({ lines }) => lines).find((line) => line.span.line === entryLine)!.name.text,
      text,
      numbers: explainAll(explain()),
    })),
    plan: describeDoneBlocks(works, record, unitFor(works, record.athlete, options), options.formula).map(
      ({ of, text, results }) => ({ of, text, numbers: explainAll(results) }),
    ),
  };
}

/** The report as a coach reads it in a terminal. */
export function printReport(report: Report): string {
  const lines: string[] = [];
  for (const { athlete, weeks } of report.athletes) {
    lines.push(athlete === '' ? 'Sessions without an athlete' : athlete);
    if (weeks.length === 0) lines.push('  no session yet');
    for (const week of weeks) {
      const marks = week.marks.length > 0 ? ` (${week.marks.join(', ')})` : '';
      lines.push(`  week ${week.week}${marks}  ${week.sessions.length > 0 ? week.text : 'no session'}`);
      lines.push(...printFacts([...week.balance, ...week.load], '    '));
      for (const session of week.sessions) {
        lines.push(`    ${session.date}${session.place ? ` at ${session.place}` : ''}  ${session.text}`);
        lines.push(...printFacts([...session.plan, ...session.blocks, ...session.maxes], '      '));
      }
    }
    lines.push('');
  }
  return lines.join('\n');
}

function printFacts(facts: readonly ReportFact[], indent: string): string[] {
  const width = Math.max(0, ...facts.map(({ of }) => of.length));
  return facts.map(({ of, text }) => `${indent}${of.padEnd(width)}  ${text}`);
}
