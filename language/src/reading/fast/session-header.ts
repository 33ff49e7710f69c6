import { parseIsoDate } from '../../calendar/iso-date.ts';
import type { SessionEntry } from '../../model/entry.ts';
import type { Written } from '../../model/source.ts';
import { LIMITS } from '../../vocabulary/limits.ts';
import type { SessionHeader } from '../session-entry.ts';
import { settle } from '../settle.ts';
import { giveUp } from './line-cursor.ts';

const WHEN = /^session (\d{4}-\d\d-\d\d)(?: ([01]\d|2[0-3]):([0-5]\d))?(?= |$)/;
/** Words of any script, none of them `at`, `and`, `week`, `day` or of a time, single spaces between them. */
const NAME = /^(?:(?!(?:at|and|week|day|am|pm|h|hrs)(?: |$))[\p{L}][\p{L}\p{M}'\u2019-]*(?: |$))+$/iu;
const PLAN = /^(.+?) week (\d{1,3}) day (\d{1,3})$/;

/** Where the date stands in every such header. */
const DATE_SPAN = { line: 0, start: 8, end: 18 } as const;

type Tail = Pick<SessionEntry, 'athletes' | 'place' | 'plan'>;

/** What stood behind the date before, by where it begins: most sessions of a log are somebody's at the same place. */
export class TailMemo {
  private readonly byStart: (Map<string, Tail> | undefined)[] = [];

  find(line: string, from: number): Tail {
    const text = line.slice(from);
    const tails = this.byStart[from];
    const known = tails?.get(text);
    if (known) return known;
    const tail = readTail(line, from);
    if (tails && tails.size < MOST_TAILS) tails.set(text, tail);
    else this.byStart[from] = new Map([[text, tail]]);
    return tail;
  }
}

const MOST_TAILS = 10_000;

/** `session 2026-11-17 07:10 Ivo | Tibor at Herne Loft, Wicker Base week 2 day 1` */
export function readSessionHeader(line: string, memo = new TailMemo()): SessionHeader {
  const when = WHEN.exec(line);
  const date = when ? parseIsoDate(when[1]!) : undefined;
  if (!when || date === undefined || line.endsWith(' ')) return giveUp();
  const clock = when[2] === undefined ? undefined : `${when[2]}:${when[3]}`;
  const { athletes, place, plan } = memo.find(line, when[0].length);
  return { date: { text: date, date, span: DATE_SPAN }, clock, athletes, place, plan };
}

/** Who, where and which day of a plan: all that stands behind the date and the time. */
function readTail(line: string, from: number): Tail {
  let end = line.length;
  const comma = line.indexOf(', ', from);
  const plan = comma < 0 ? undefined : readPlan(line, comma + 2);
  if (comma >= 0) end = comma;
  const at = line.slice(0, end).indexOf(' at ', from);
  const place = at < 0 ? undefined : readName(line, at + 4, end);
  if (at >= 0) end = at;
  return {
    athletes: settle(end > from ? readAthletes(line, from + 1, end) : []),
    ...(place && { place }),
    ...(plan && { plan }),
  };
}

function readAthletes(line: string, from: number, end: number): Written[] {
  const athletes: Written[] = [];
  for (let at = from; at <= end; ) {
    const bar = line.indexOf(' | ', at);
    const stop = bar < 0 || bar > end ? end : bar;
    athletes.push(readName(line, at, stop));
    at = stop + 3;
  }
  return athletes;
}

function readPlan(line: string, from: number): SessionEntry['plan'] {
  const [, name, week, day] = PLAN.exec(line.slice(from)) ?? giveUp();
  return {
    name: readName(line, from, from + name!.length),
    week: limitWeeks(Number(week)),
    day: limitWeeks(Number(day)),
  };
}

function limitWeeks(value: number): number {
  return value >= LIMITS.weeks.low && value <= LIMITS.weeks.high ? value : giveUp();
}

function readName(line: string, start: number, end: number): Written {
  const text = line.slice(start, end);
  if (!NAME.test(text) || text.endsWith(' ') || text !== text.normalize('NFC')) giveUp();
  return { text, span: { line: 0, start, end } };
}
