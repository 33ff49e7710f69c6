import type { PlanEntry } from '../model/entry.ts';
import type { Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { findNearest } from '../text/edit-distance.ts';
import { shorten } from '../text/shorten.ts';
import { buildDate, buildName, buildNames } from './build-values.ts';
import {
  type EntryReading,
  type Holed,
  present,
  replaceBy,
  spanOf,
  textOf,
  toNumber,
} from './line-reading.ts';

export type PlanFacts = Pick<
  PlanEntry,
  'athletes' | 'place' | 'starts' | 'follows' | 'weeks' | 'deloads' | 'weekdays' | 'alternate' | 'trainingMax'
>;

type Facts = { -readonly [K in keyof PlanFacts]: PlanFacts[K] };

export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
const FULL_WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];

/** Takes one property of a plan into `facts`. A repeated one is reported. */
export function buildPlanLine(reading: EntryReading, facts: Facts, line: ast.TrainingLine): void {
  const span = spanOf(line);
  const missing = (message: string): undefined => reading.expect('missing-value', span, message);
  switch (line.$type) {
    case 'ForLine':
      if (!reading.once(facts.athletes.at(0), span, 'for')) break;
      if (line.names.length === 0) missing("Expected an athlete's name after for");
      else facts.athletes = buildNames(line.names);
      break;
    case 'AtLine':
      if (!reading.once(facts.place, span, 'at')) break;
      if (present(line.place)) facts.place = buildName(line.place!);
      else missing("Expected a place's name after at");
      break;
    case 'StartsLine': {
      if (!reading.once(facts.starts, span, 'starts')) break;
      if (!line.date) missing('Expected a date after starts, such as 2026-11-09');
      const date = buildDate(reading, line.date);
      if (date) facts.starts = date;
      break;
    }
    case 'FollowsLine':
      if (!reading.once(facts.follows, span, 'follows')) break;
      if (present(line.plan)) facts.follows = buildName(line.plan!);
      else missing("Expected a plan's name after follows");
      break;
    case 'WeeksLine': {
      if (!reading.once(facts.weeks, span, 'weeks')) break;
      if (line.weeks === undefined) {
        missing('Expected a number after weeks, such as weeks 6');
        break;
      }
      const count = toNumber(line.weeks);
      if (reading.acceptWhole('weeks', count, span, `${line.weeks} weeks`)) facts.weeks = { count, span };
      break;
    }
    case 'DeloadLine':
      buildDeload(reading, facts, line);
      break;
    case 'DaysLine':
      buildDays(reading, facts, line);
      break;
    case 'TrainingMaxLine': {
      if (!reading.once(facts.trainingMax, span, 'training max')) break;
      if (line.percent === undefined) {
        missing('Expected a share such as training max 90%');
        break;
      }
      const percent = toNumber(line.percent);
      if (reading.accept('percent', percent, span, `${line.percent}%`)) facts.trainingMax = percent;
    }
  }
}

function buildDays(reading: EntryReading, facts: Facts, line: ast.DaysLine): void {
  const span = spanOf(line);
  if (!reading.once(facts.alternate ?? facts.weekdays.at(0), span, 'days')) return;
  if (!line.alternate) {
    if (line.days.length === 0)
      reading.expect('missing-value', span, 'Expected days such as Mon, Wed, Fri, or alternate, 3 a week');
    else facts.weekdays = line.days.filter(present).map((day) => readWeekday(reading, day));
    return;
  }
  if (line.perWeek === undefined) {
    reading.expect('missing-value', span, 'Expected how many days a week, such as days alternate, 3 a week');
    return;
  }
  const perWeek = toNumber(line.perWeek);
  if (reading.acceptWhole('weekday', perWeek, span, `${line.perWeek} a week`)) facts.alternate = { perWeek };
}

function buildDeload(reading: EntryReading, facts: Facts, line: ast.DeloadLine): void {
  const span = spanOf(line);
  if (line.week === undefined) {
    reading.expect(
      'missing-value',
      span,
      'Expected a week and its shares, such as deload week 6, sets 50%, load 90%',
    );
    return;
  }
  const week = toNumber(line.week);
  if (!reading.acceptWhole('weeks', week, span, `week ${line.week}`)) return;
  const share = (what: 'sets' | 'load'): number | undefined => {
    const found = line.shares.findLast((candidate) => candidate.$cstNode && candidate.what === what);
    const percent = found?.percent === undefined ? undefined : toNumber(found.percent);
    const fits = percent !== undefined && reading.accept('percent', percent, spanOf(found!), textOf(found!));
    return fits ? percent : undefined;
  };
  const [sets, load] = [share('sets'), share('load')];
  if (line.shares.length === 0)
    reading.expect(
      'missing-value',
      span,
      `deload week ${week} makes nothing lighter: write its shares, such as deload week ${week}, sets 50%, load 90%`,
    );
  facts.deloads = [
    ...facts.deloads,
    { week, ...(sets !== undefined && { sets }), ...(load !== undefined && { load }), span },
  ];
}

/** `monday` and `mon` are read as Mon. */
function readWeekday(reading: EntryReading, node: Holed<ast.Weekday>): Written {
  const span = spanOf(node);
  const text = node.text ?? '';
  const word = text.toLowerCase();
  const index = FULL_WEEKDAYS.findIndex((day) => word.length > 1 && day.startsWith(word));
  if (index < 0) {
    const near = findNearest(word, [...FULL_WEEKDAYS, ...WEEKDAYS.map((day) => day.toLowerCase())], 1)[0];
    const day = WEEKDAYS.find((name) => near?.startsWith(name.toLowerCase()));
    const message = `${shorten(text)} is no day of the week: write ${day ?? WEEKDAYS.join(', ')}`;
    reading.report('vocabulary', span, message, day ? [replaceBy(span, day)] : []);
    return { text, span };
  }
  const day = WEEKDAYS[index]!;
  if (word !== day.toLowerCase())
    reading.report('spelling-of-word', span, `Write ${day} for ${text}`, [replaceBy(span, day)]);
  return { text: day, span };
}
