import { type Groups, type LineSlip, of } from './slip.ts';

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const MONTH = String.raw`(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\.?`;
export const WEEKDAY = '(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?';
const ORDINAL = '(?:st|nd|rd|th)?';
const YEAR = String.raw`(?:19|20)\d\d`;
const DAY_FIRST = String.raw`(\d{1,2})${ORDINAL}[\s.-]*(${MONTH})(?:,?\s+|-)(${YEAR})`;
const MONTH_FIRST = String.raw`(${MONTH})\s*(\d{1,2})${ORDINAL},?\s+(${YEAR})`;
const WORD_DATE = new RegExp(String.raw`(?<![\d\p{L}–-])(?:${DAY_FIRST}|${MONTH_FIRST})(?![\d\p{L}])`, 'giu');
const DASH = String.raw`[-\u2010-\u2015\u2212]`;
/** A whole date in whichever form, without groups. */
export const ANY_DATE = [
  String.raw`\d{4}\s?(?:${DASH}|[./])\s?\d{1,2}\s?(?:${DASH}|[./])\s?\d{1,2}`,
  String.raw`\d{1,2}[./]\d{1,2}[./](?:\d{4}|\d\d)`,
  String.raw`\d{1,2}${DASH}\d{1,2}${DASH}\d{4}`,
  ...[DAY_FIRST, MONTH_FIRST].map((source) => source.replace(/\((?!\?)/g, '(?:')),
].join('|');
/** A day and a month, without a year. */
const NO_YEAR = String.raw`(?:\d{1,2}${ORDINAL}\s*${MONTH}|${MONTH}\s*\d{1,2}${ORDINAL})`;
/** What stands before a date. */
const BEFORE = String.raw`(?:session|starts?|away|screened|(?:bodyweight|max|goal|retest|avoid)\b.*?\b(?:on|by|until))`;

const DASHED_DATE =
  /(?<!\d)(\d{4})\s*[\u2010-\u2015\u2212]\s*(\d{1,2})\s*[\u2010-\u2015\u2212]\s*(\d{1,2})(?!\d)/g;

/** Minutes without their unit stand right behind the hour, or are two digits with nothing else behind: not `7 h 2 wakes`. */
const HOURS = String.raw`(\d{1,2})\s*(?:h|hrs?|hours?)(?:\s*(?:and\s+)?(\d{1,2})\s*(?:m|mins?|minutes?)|(\d{1,2})|\s+(\d\d)(?=\s*(?:$|[,|(–—-])))`;
/** `40m10` may be a distance and its seconds: only minutes that no track has are read. */
const MINUTES = String.raw`([1-9]|1[1-9])m([0-5]\d)(?:\s*s)?|(\d{1,2})\s*min(?:ute)?s?\s*(?:and\s+)?([0-5]?\d)\s*(?:s|secs?|seconds?)|(\d{1,2})min([0-5]\d)`;
const COMPOUND = new RegExp(String.raw`(?<![\d\p{L}.:])(?:${HOURS}|${MINUTES})(?![\d\p{L}:.])`, 'giu');
const TRAINING = ['session', 'plan', 'unknown'] as const;

/** Dates and times in words or in pieces, wherever they stand on a line. */
export const DATE_AND_TIME_SLIPS: readonly LineSlip[] = [
  {
    within: ['athlete'],
    pattern: of(
      `(away\\s+)(\\d{1,2})${ORDINAL}\\s*(?:[-–—]|to)\\s*(\\d{1,2})${ORDINAL}\\s+(${MONTH})\\s+(${YEAR})(.*)`,
    ),
    writes: [
      ([away, from, to, month, year, rest]: Groups) =>
        `${away}${isoOf(year!, month!, from!)} to ${isoOf(year!, month!, to!)}${rest}`,
    ],
    why: 'both days are written in full',
  },
  {
    within: ['session', 'plan', 'athlete'],
    pattern: of(`(${BEFORE}\\b.*${MONTH}.*)`),
    writes: [writeDates],
    why: 'a date is year-month-day',
  },
  {
    within: ['session', 'plan', 'athlete'],
    pattern: of(`(${BEFORE}\\b.*\\d\\s*[\\u2010-\\u2015\\u2212]\\s*\\d.*)`),
    writes: [
      ([line]: Groups) => line!.replace(DASHED_DATE, (_, year, month, day) => isoDate(year, month, day)),
    ],
    why: 'a date has plain dashes',
  },
  {
    within: ['session', 'plan', 'athlete'],
    pattern: of(
      `(${BEFORE}[\\s:]+)(?:on\\s+)?(?:${WEEKDAY}[.,]?\\s+)?(${NO_YEAR}|${MONTH}(?:\\s+${YEAR})?$)(?![\\d\\p{L}]).*`,
    ),
    writes: [],
    why: '$2 is not a whole date: write year-month-day, such as 2026-11-17',
    told: 'odd-date',
  },
  {
    within: TRAINING,
    pattern: of(`(.*\\d\\s*(?:h|hrs?|hours?|m|mins?|minutes?)\\s*(?:and\\s*)?\\d.*)`),
    writes: [writeTimes],
    why: 'hours and minutes, or minutes and seconds, stand on both sides of a colon',
  },
  {
    within: ['plan'],
    pattern: of(
      `(.*\\brest[\\s:]+)(\\d{1,3})\\s*(?:[-–—]|to)\\s*(\\d{1,3})\\s*(s|secs?|seconds?|mins?|minutes?)(?![\\p{L}\\d])(.*)`,
    ),
    writes: [
      ([before, low, high, unit, rest]: Groups) => {
        const each = /^s/i.test(unit!) ? 's' : 'min';
        return `${before}${low} ${each}-${high} ${each}${rest}`;
      },
    ],
    why: 'both ends of a rest have their unit',
  },
  {
    within: ['session', 'unknown'],
    pattern: of(
      `(.*\\brest[\\s:]+)(\\d{1,3})\\s*(?:[-–—]|to)\\s*(\\d{1,3})\\s*(s|secs?|seconds?|mins?|minutes?)(?![\\p{L}\\d])(.*)`,
    ),
    writes: ['$1$2 $4$5', '$1$3 $4$5'],
    why: 'a rest that was taken is one time',
    told: 'for-plans',
  },
];

/** `24 Nov 2026` → `2026-11-24`, wherever it stands on a line. */
export function writeDates([line]: Groups): string {
  return line!.replace(WORD_DATE, (_, day1, month1, year1, month2, day2, year2) => {
    return isoOf(year1 ?? year2, month1 ?? month2, day1 ?? day2);
  });
}

function isoOf(year: string, month: string, day: string): string {
  return isoDate(year, String(MONTHS.indexOf(month.slice(0, 3).toLowerCase()) + 1), day);
}

/** Of numbers with or without their zeros. */
export function isoDate(year: string, month: string, day: string): string {
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

/** `lasted 1h10` → `lasted 70 min`, `sleep 7h30` → `sleep 7:30`, `time 2min20` → `time 2:20`; names stay. */
function writeTimes([line]: Groups): string {
  const word = /^\p{L}+/u.exec(line!)?.[0].toLowerCase();
  // A session's header has a time of day.
  if (word === 'session') return line!;
  const colon = /:(?!\d)/.exec(line!)?.index ?? -1;
  const from = colon + 1;
  const written = line!.slice(from).replace(COMPOUND, (all, ...parts: (string | undefined)[]) => {
    const [hours, withUnit, adjacent, apart, ...shorter] = parts;
    const minutes = withUnit ?? adjacent ?? apart;
    if (hours !== undefined) {
      if (Number(minutes) > 59) return all;
      if (word === 'lasted') return `${Number(hours) * 60 + Number(minutes)} min`;
      return word === 'sleep' ? `${hours}:${pad(minutes)}` : `${hours}:${pad(minutes)}:00`;
    }
    const [whole, seconds] = shorter.slice(0, 6).filter((part) => part !== undefined);
    return `${whole}:${pad(seconds)}`;
  });
  return line!.slice(0, from) + written;
}

function pad(text: string | undefined): string {
  return (text ?? '').padStart(2, '0');
}
