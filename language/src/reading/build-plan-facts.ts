import type { PlanEntry } from '../model/entry.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { buildDate, buildName } from './build-values.ts';
import { type EntryReading, replaceBy, spanOf, textOf, toNumber } from './line-reading.ts';

export type PlanFacts = Pick<
  PlanEntry,
  'athletes' | 'place' | 'starts' | 'follows' | 'weeks' | 'deloads' | 'weekdays' | 'alternate' | 'trainingMax'
>;

type Facts = { -readonly [K in keyof PlanFacts]: PlanFacts[K] };

export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;

/** Takes one property of a plan into `facts`. */
export function buildPlanLine(reading: EntryReading, facts: Facts, line: ast.TrainingLine): void {
  const span = spanOf(line);
  const missing = (absent: boolean, message: string): void => {
    if (absent && !reading.broken.has(span.line)) reading.report('missing-value', span, message);
  };
  switch (line.$type) {
    case 'ForLine':
      missing(line.names.length === 0, "Expected an athlete's name after for");
      facts.athletes = line.names.filter((name) => name.$cstNode).map(buildName);
      break;
    case 'AtLine':
      missing(!line.place, "Expected a place's name after at");
      if (line.place?.$cstNode) facts.place = buildName(line.place);
      break;
    case 'StartsLine': {
      missing(!line.date, 'Expected a date after starts, such as 2026-11-09');
      const date = buildDate(reading, line.date);
      if (date) facts.starts = date;
      break;
    }
    case 'FollowsLine':
      missing(!line.plan, "Expected a plan's name after follows");
      if (line.plan?.$cstNode) facts.follows = buildName(line.plan);
      break;
    case 'WeeksLine':
      missing(line.weeks === undefined, 'Expected a number after weeks');
      if (line.weeks !== undefined && reading.accept('weeks', toNumber(line.weeks), span, textOf(line))) {
        facts.weeks = { count: toNumber(line.weeks), span };
      }
      break;
    case 'DeloadLine':
      buildDeload(reading, facts, line);
      break;
    case 'DaysLine':
      missing(!line.alternate && line.days.length === 0, 'Expected days such as Mon, Wed, Fri or alternate, 3 a week');
      if (line.alternate) facts.alternate = { perWeek: line.perWeek === undefined ? 1 : toNumber(line.perWeek) };
      else facts.weekdays = line.days.filter((day) => day.$cstNode).map((day) => readWeekday(reading, day));
      break;
    case 'TrainingMaxLine':
      missing(line.percent === undefined, 'Expected a share such as training max 90%');
      if (line.percent !== undefined && reading.accept('percent', toNumber(line.percent), span, textOf(line))) {
        facts.trainingMax = toNumber(line.percent);
      }
      break;
    default:
  }
}

function buildDeload(reading: EntryReading, facts: Facts, line: ast.DeloadLine): void {
  const span = spanOf(line);
  if (line.week === undefined) {
    if (!reading.broken.has(span.line)) reading.report('missing-value', span, 'Expected deload week 6, sets 50%, load 90%');
    return;
  }
  const share = (what: 'sets' | 'load'): number | undefined => {
    const found = line.shares.find((candidate) => candidate.$cstNode && candidate.what === what);
    return found?.percent === undefined ? undefined : toNumber(found.percent);
  };
  const [sets, load] = [share('sets'), share('load')];
  facts.deloads = [
    ...facts.deloads,
    { week: toNumber(line.week), ...(sets !== undefined && { sets }), ...(load !== undefined && { load }), span },
  ];
}

/** `monday` and `mon` are read as Mon. */
function readWeekday(reading: EntryReading, node: ast.Weekday) {
  const span = spanOf(node);
  const day = WEEKDAYS.find((name) => node.text.toLowerCase().startsWith(name.toLowerCase()));
  if (!day) reading.report('vocabulary', span, `${node.text} is no day: write ${WEEKDAYS.join(', ')}`);
  else if (node.text !== day) {
    const severe = node.text.toLowerCase() !== day.toLowerCase();
    if (severe) reading.report('spelling-of-word', span, `Write ${day} for ${node.text}`, [replaceBy(span, day)]);
  }
  return { text: day ?? node.text, span };
}
