import { parseIsoDate } from '../../calendar/iso-date.ts';
import { findNearHeader } from '../../syntax/line-kind.ts';
import { ANY_DATE, isoDate, WEEKDAY, writeDates } from './dates-and-times.ts';
import { type Groups, type LineSlip, of, type Writing } from './slip.ts';

/** What lists, headings and bold type put before a line. */
const MARK = String.raw`[-*•·–—=_#\s]*(?:\d{1,2}[.)]\s+)?`;
const NAME = String.raw`(\p{L}[^\d:,@|]*?)`;
const PATTERN = of(
  `${MARK}(?:(\\p{L}+)[\\s:,#*_-]*)?(?:(?:for\\s+)?${NAME}[\\s,–—-]+)?(?:on\\s+)?(?:${WEEKDAY}[.,]?\\s+)?(${ANY_DATE})(?![\\p{L}\\d])\\s*[-–—:]*\\s*(.*?)[\\s*_#=:]*`,
);
const WEEKDAY_WORD = of(WEEKDAY);
/** Words that are taken for `session`, beside those that nearly are. */
const TRAINING_WORDS = /^(?:training|workout|date)$/i;
/** Time, names, place and plan, as a header has them behind its date. */
const TAIL =
  /^(?:(?:[01]?\d|2[0-3]):[0-5]\d(?:\s+|$))?(?:$|(?:at\s+|,\s*)?\p{Lu}[^\d@:]*(?:week \d+ day \d+)?$)/u;

/** Of one meaning, or of both that a date may have. */
const WRITES: readonly (readonly Writing[])[] = [
  [(groups) => only(readHeaders(groups))],
  [(groups) => readHeaders(groups)[0], (groups) => readHeaders(groups)[1]],
];

/**
 * A session's header that is none, in the midst of other lines: entries are cut at their headers before a line is looked
 * at any closer, so that it can only be told.
 */
export const MISTYPED_HEADER_SLIPS: readonly LineSlip[] = WRITES.flatMap((writes): LineSlip[] => [
  {
    within: ['session', 'plan', 'exercise', 'place', 'athlete', 'units'],
    pattern: PATTERN,
    writes,
    why: 'no session begins here, so the lines below count to the entry above until it is corrected',
    opens: true,
    told: 'stray-line',
  },
  {
    within: ['unknown'],
    pattern: PATTERN,
    writes,
    why: 'no session begins here, so the lines below count nowhere until it is corrected',
    opens: true,
    told: 'stray-line',
  },
]);

/**
 * `## session 2026-11-23 Mara Zog`: a heading of another notation, and here a comment; the content of the header that it
 * is, if lines that are none stand below it. What was commented out on purpose has comments below it too.
 */
export function readHeadingComment(lines: readonly string[], line: number): string | undefined {
  const heading = /^\s*#+\s*(session\b.*)$/i.exec(lines[line]!)?.[1];
  if (heading === undefined) return undefined;
  const groups = PATTERN.exec(heading)?.slice(1);
  if (!groups || !TAIL.test(groups[3]!)) return undefined;
  const below = lines.slice(line + 1).find((text) => text.trim() !== '');
  const isAbove = below !== undefined && !below.trimStart().startsWith('#');
  return isAbove ? only(readHeaders(groups.map((group) => group ?? ''))) : undefined;
}

function only(headers: readonly string[]): string | undefined {
  return headers.length === 1 ? headers[0] : undefined;
}

/** The headers that a line may be; none where it is rather something else. */
function readHeaders([word, name, date, rest]: Groups): string[] {
  const isSession = TRAINING_WORDS.test(word!) || (word !== '' && findNearHeader(word!) === 'session');
  const isAlone = (word === '' || WEEKDAY_WORD.test(word!)) && name === '' && TAIL.test(rest!);
  if (!(isSession || isAlone) || (name !== '' && !/^\p{Lu}/u.test(name!))) return [];
  const [, time, tail] = /^((?:[01]?\d|2[0-3]):[0-5]\d(?=\s|$))?\s*(.*)$/.exec(rest!)!;
  return readDates(date!).map((day) => {
    const parts = ['session', day, time, name, tail].filter((part) => part);
    return parts.join(' ').replace(' ,', ',');
  });
}

/** `23.11.2026` → 2026-11-23; `5/11/2026` → both days that it may be, the day before the month first. */
function readDates(written: string): string[] {
  const inWords = writeDates([written]);
  const parts = inWords.split(/[-./\u2010-\u2015\u2212]/).map((part) => part.trim());
  const [first, second, third] = parts as [string, string, string];
  const isYearFirst = first.length === 4;
  const year = isYearFirst ? first : third.length === 2 ? `20${third}` : third;
  const orders = isYearFirst
    ? [[second, third]]
    : [
        [second, first],
        [first, second],
      ];
  const dates = orders.map(([month, day]) => parseIsoDate(isoDate(year, month!, day!)));
  return [...new Set(dates.filter((date) => date !== undefined))];
}
