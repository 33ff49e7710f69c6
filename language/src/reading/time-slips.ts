import { AT, COUNT, type ItemGroups, type ItemSlip, N, of, RATING } from './item-slip.ts';

const CLOCK = String.raw`\d+:[0-5]\d`;
const TIME = String.raw`(?:${CLOCK}|${N}\s*(?:s|secs?|seconds?|mins?|minutes?))`;
const DISTANCE = String.raw`${COUNT}${N}\s*(?:m|km|k|yd|mi)`;
const MINUTES = '(?:min|mins|minutes)';
const MINUTE_MARK = "['’′]";
const SECOND_MARK = `(?:"|”|″|''|’’|′′)`;
/** What a rest behind the sets is without saying so. */
const BETWEEN = String.raw`(?:\s+between(?:\s+the)?(?:\s+sets)?)?`;
/** What stands before a time: a rest, or a distance that took it. */
const BEFORE_TIME = String.raw`(?:(?:.*\s)?rest\s*:?\s*|.*\d\s*(?:m|km|yd|mi)\s+in\s+)`;

/** Rests, paces, and times whose units are marks or stand twice. */
export const TIME_SLIPS: readonly ItemSlip[] = [
  {
    cell: true,
    pattern: of(
      `(${DISTANCE}|${TIME})(?:\\s*,\\s*|\\s+)(?:in\\s+|at\\s+|@\\s*)?(${CLOCK})\\s*${MINUTES}?\\s*/\\s*(\\d*)\\s*(m|km|mi)((?:\\s*,.*)?)`,
    ),
    code: 'syntax',
    message: 'Write $a: a pace stands behind @',
    writes: [
      ([distance, time, metres, unit, more]) =>
        `${distance!.replace(/\s*k$/i, ' km')} @ ${time}/${metres || (unit === 'm' ? '500' : '1')} ${unit}${more}`,
    ],
  },
  {
    pattern: of(`(.*@\\s*)(${CLOCK})\\s*${MINUTES}?\\s*/\\s*(km|mi)(${RATING})`),
    code: 'syntax',
    message: 'Write $a: a pace names its distance',
    writes: ['$1$2/1 $3$4'],
  },
  {
    pattern: of(`(${BEFORE_TIME})(\\d+)\\s*${MINUTE_MARK}\\s*([0-5]\\d)\\s*${SECOND_MARK}?`),
    code: 'syntax',
    message: 'Write $2:$3 for minutes and seconds',
    writes: [([before, minutes, seconds]) => `${openTime(before!)}${minutes}:${seconds}`],
  },
  {
    pattern: of(`(${BEFORE_TIME})(\\d+)\\s*${SECOND_MARK}`),
    code: 'syntax',
    message: 'Write $2 s for seconds',
    writes: [([before, seconds]) => `${openTime(before!)}${seconds} s`],
  },
  {
    pattern: of(`(${BEFORE_TIME})(\\d+)\\s*${MINUTE_MARK}`),
    code: 'syntax',
    message: 'Write $2 min for minutes',
    writes: [([before, minutes]) => `${openTime(before!)}${minutes} min`],
  },
  {
    pattern: of(`(${BEFORE_TIME}|${COUNT})(${CLOCK})\\s*(?:${MINUTES}|m)((?:${AT})?)`),
    code: 'syntax',
    message: 'Write $2 without a unit: minutes and seconds stand on both sides of the colon',
    writes: [([before, time, load]) => `${openTime(before!)}${time}${load}`],
  },
  {
    pattern: of(`rest\\s*[:=]\\s*(${TIME}(?:\\s*-\\s*${TIME})?|${N})`),
    code: 'syntax',
    message: 'Write rest $1, without a colon behind the word',
    writes: ['rest $1'],
  },
  {
    pattern: of(`(${TIME}(?:\\s*-\\s*${TIME})?)\\s*(?:of\\s+)?rest${BETWEEN}`),
    code: 'syntax',
    message: 'Write rest $1: the word comes first',
    writes: ['rest $1'],
  },
  {
    pattern: of(
      `(\\d+)\\s*(?:(${SECOND_MARK})|${MINUTE_MARK}\\s*([0-5]\\d)?\\s*${SECOND_MARK}?)\\s*(?:of\\s+)?rest${BETWEEN}`,
    ),
    code: 'syntax',
    message: 'Write $a: the word comes first',
    writes: [writeMarkedRest],
  },
  {
    pattern: of(`rest\\s*:?\\s*(?:~|≈|approx\\.?|about|around|ca\\.?|circa)\\s*(${TIME})`),
    code: 'syntax',
    message: 'Write rest $1: a rest is not said to be near',
    writes: ['rest $1'],
  },
  {
    pattern: of(`(${DISTANCE})\\s*[/(]\\s*(${CLOCK})\\s*\\)?`),
    code: 'syntax',
    message: 'Write in before the time that a distance took',
    writes: ['$1 in $2'],
  },
  {
    pattern: of(`r\\s*[:=]?\\s*(${TIME})`),
    code: 'syntax',
    message: 'Write rest $1: the word in full',
    writes: ['rest $1'],
  },
  {
    pattern: of(`(${COUNT}${N})\\s*k\\s+in\\s+(${TIME})((?:${AT})?)`),
    code: 'syntax',
    message: 'Write $1 km for kilometres',
    writes: ['$1 km in $2$3'],
  },
  {
    pattern: of(
      `(${COUNT})(\\d+)\\s*(s|secs?|min|m)?\\s*/\\s*(\\d+)\\s*(s|secs?|min|m)((?:\\s*/\\s*side)?)((?:${AT})?)`,
    ),
    code: 'side-slip',
    message: 'Write $a: a unit stands before the side',
    writes: [writeSides],
  },
];

/** Of property lines: all that stands behind the word, which is the first group. */
export const PROPERTY_SLIPS: readonly ItemSlip[] = [
  {
    pattern: of(
      `max\\s+([^:]+?)\\s*:\\s*(${COUNT}${N}\\s*(?:reps?|s|secs?|min|m|km|cal)(?![\\p{L}/]).*|\\d+\\s*@.*)`,
    ),
    code: 'syntax',
    message: 'A max is the load of one rep: what else was tested stands in a session, behind test $1:',
    writes: [],
  },
  {
    pattern: of(`(lasted)[\\s:]+(\\d{1,2}):([0-5]\\d)\\s*(?:h|hrs?|hours?)`),
    code: 'unclear-time',
    message: 'Write $a: hours and minutes',
    writes: [([word, hours, minutes]) => `${word} ${Number(hours) * 60 + Number(minutes)} min`],
  },
  {
    pattern: of(`(lasted)[\\s:]+(1?\\d|2[0-3]):([0-5]\\d)\\s*${MINUTES}`),
    code: 'unclear-time',
    message: 'Is $2:$3 hours and minutes, or minutes and seconds? Write $a or $b',
    writes: [([word, first, second]) => `${word} ${Number(first) * 60 + Number(second)} min`, writeClock],
  },
  {
    pattern: of(`(lasted)[\\s:]+(\\d{2,3}):([0-5]\\d)\\s*${MINUTES}`),
    code: 'unclear-time',
    message: 'Write $a: hours, minutes and seconds',
    writes: [writeClock],
  },
  {
    pattern: of(`(lasted)[\\s:]+(\\d{1,3})\\s*(?:[-–—]|to)\\s*(\\d{1,3})\\s*${MINUTES}`),
    code: 'unclear-time',
    message: 'How long was it? Write one time, such as $a or $b',
    writes: ['$1 $2 min', '$1 $3 min'],
  },
  {
    pattern: of(`((?:rest|time|done\\s+in)\\b.*?\\d:[0-5]\\d)\\s*${MINUTES}`),
    code: 'syntax',
    message: 'Write $1 without a unit: minutes and seconds stand on both sides of the colon',
    writes: ['$1'],
  },
];

/** `lasted 52:30` → `lasted 0:52:30`. */
function writeClock([word, minutes, seconds]: ItemGroups): string {
  const rest = String(Number(minutes) % 60).padStart(2, '0');
  return `${word} ${Math.floor(Number(minutes) / 60)}:${rest}:${seconds}`;
}

/** `rest: ` → `rest `, and a comma before it where a set stands there. */
function openTime(before: string): string {
  return before.replace(/(^|\S)\s*\brest\s*:?\s*$/i, (_, set: string) =>
    set === '' ? 'rest ' : `${set}, rest `,
  );
}

/** `2' rest`, `1'30 rest`, `90" rest` */
function writeMarkedRest([whole, isSeconds, seconds]: ItemGroups): string {
  if (isSeconds) return `rest ${whole} s`;
  return seconds ? `rest ${whole}:${seconds}` : `rest ${whole} min`;
}

/** `30/30 s` → `30 s/side`, `30/20 s` → `30 s left 20 s right`. */
function writeSides([count, left, ownUnit, right, unit, side, load]: ItemGroups): string | undefined {
  const same = left === right && (ownUnit === '' || ownUnit === unit);
  if (side && !same) return undefined;
  const written = same ? `${left} ${unit}/side` : `${left} ${ownUnit || unit} left ${right} ${unit} right`;
  return `${count}${written}${load}`;
}
