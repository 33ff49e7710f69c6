import { WEEKDAY } from './dates-and-times.ts';
import { DATE, type Groups, type LineSlip, of } from './slip.ts';

const SESSION = String.raw`session\s*[\s:]\s*`;
const QUOTE = String.raw`["\u201c\u201d\u201e\u00ab\u00bb]`;

/** Slips in the line that opens an entry. */
export const HEADER_SLIPS: readonly LineSlip[] = [
  {
    within: ['session'],
    pattern: of(`(${SESSION})(?:on\\s+)?${WEEKDAY}[.,]?\\s+(\\S.*)`),
    writes: ['$1$2'],
    why: 'a date needs no day of the week',
  },
  {
    within: ['session'],
    pattern: of(`(${SESSION}(?:on\\s+)?)(?:today|tonight|yesterday|tomorrow)\\b.*`),
    writes: [],
    why: 'Write the date itself, such as session 2026-11-17: another day, nobody knows which day this was',
    told: 'odd-date',
  },
  {
    within: ['session'],
    pattern: of(
      `(${SESSION}${DATE})\\s*(at\\s+|,\\s*)?(\\d{1,2})(?:([:.h])(\\d\\d))?\\s*(am|pm|a\\.m\\.|p\\.m\\.|h|hrs)?(?=[\\s,]|$)(.*)`,
    ),
    writes: [writeTimeOfDay],
    unnoticed: true,
    why: 'a time of day is written such as 07:10 or 18:30',
  },
  {
    within: ['session'],
    pattern: of(
      `(${SESSION}${DATE})\\s+(\\p{L}[^,@\\d]*?)\\s*[,@]?\\s+(?:at\\s+)?(\\d{1,2})(?:([:.h])(\\d\\d))?\\s*(am|pm|a\\.m\\.|p\\.m\\.|h|hrs)?((?:\\s+at\\s+\\p{L}.*|\\s*,\\s*\\p{L}.*)?)`,
    ),
    writes: [
      ([session, names, hour, sign, minute, half, rest]: Groups) =>
        writeTimeOfDay([session!, ' ', hour!, sign!, minute!, half!, ` ${names}${rest}`]),
    ],
    unnoticed: true,
    why: 'a time of day stands behind the date',
  },
  {
    within: ['session'],
    pattern: of(`(${SESSION}[^,|@]*\\d)\\s*(?:[–—;:-]+\\s*|,\\s*)(\\p{L}[^,|@]*\\sat\\s.*)`),
    writes: ['$1 $2'],
    unnoticed: true,
    why: 'nothing stands between the date and the athlete',
  },
  {
    within: ['session'],
    pattern: of(`(${SESSION}[^,|@\\p{L}]*\\d)(?:\\s+[–—-]+|\\s*[;:]+)\\s*(\\p{L}.*)`),
    writes: ['$1 $2'],
    unnoticed: true,
    why: 'nothing stands between the date and the athlete',
  },
  {
    within: ['session'],
    pattern: of(`(${SESSION}[^@]*?)\\s*@\\s*([^@]+)`),
    writes: ['$1 at $2'],
    unnoticed: true,
    why: 'the word at stands before the place',
  },
  {
    within: ['session'],
    pattern: of(
      `(${SESSION}[^,|@]*?\\d\\s+)(\\p{L}(?:(?!\\sat\\s)[^,|@\\d])*?)(?:\\s*[&+]\\s*|\\s+/\\s+|(?<=\\p{L}{2})/(?=\\p{L}{2})|\\s+and\\s+)(\\p{L}[^@]*)`,
    ),
    writes: ['$1$2 | $3'],
    unnoticed: true,
    why: 'a bar stands between the athletes of a group',
  },
  {
    within: ['session'],
    pattern: of(`(${SESSION}.*[^\\s:])\\s*:+`),
    writes: ['$1'],
    unnoticed: true,
    why: 'no colon stands behind a header',
  },
  {
    within: ['exercise', 'place', 'athlete', 'plan'],
    pattern: of(
      `((?:exercise|place|athlete|plan)\\s*[\\s:]\\s*)${QUOTE}\\s*([^"\u201c\u201d\u201e\u00ab\u00bb]+?)\\s*${QUOTE}`,
    ),
    writes: ['$1$2'],
    unnoticed: true,
    why: 'a name stands without quotation marks',
  },
  {
    within: ['units'],
    pattern: of(`units\\s*[\\s:]\\s*(?:metric|si)`),
    writes: ['units kg'],
    why: 'the unit itself is written, kg or lb',
    told: 'syntax',
  },
  {
    within: ['units'],
    pattern: of(`units\\s*[\\s:]\\s*(?:imperial|us|american)`),
    writes: ['units lb'],
    why: 'the unit itself is written, kg or lb',
    told: 'syntax',
  },
];

/** `7am`, `7.30 pm`, `18h30`, `at 18:30`; undefined for `18:30` as it should be, and for numbers that are no time. */
function writeTimeOfDay([session, before, hour, sign, minute, half, rest]: Groups): string | undefined {
  const isSlip = half !== '' || sign === '.' || sign === 'h' || (before !== '' && sign === ':');
  const hours = Number(hour);
  const isHalf = /^[ap]/i.test(half!);
  if (!isSlip || hours > 23 || Number(minute) > 59 || (isHalf && (hours === 0 || hours > 12)))
    return undefined;
  const late = !isHalf ? 0 : /^p/i.test(half!) ? (hours < 12 ? 12 : 0) : hours === 12 ? -12 : 0;
  return `${session} ${String(hours + late).padStart(2, '0')}:${minute || '00'}${rest}`;
}
