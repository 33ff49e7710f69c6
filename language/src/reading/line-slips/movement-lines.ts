import { LIMITS } from '../../vocabulary/limits.ts';
import { type Groups, type LineSlip, of } from './slip.ts';

const TRAINING = ['session', 'plan', 'unknown'] as const;
const NAME = String.raw`([^:@|]*?\p{L}[^:@|]*:\s*)`;
const SETS = String.raw`((?:\d+\s*[x×]\s*)?\d+(?:\s*/\s*side)?(?:\s*,\s*\d+(?:\s*/\s*side)?)*)`;
/** Modifiers that close the line. */
const TAIL = String.raw`(\s*(?:,\s*(?:tempo|rest|setting|pain|instead|then|after)\b.*)?)`;
const VALUE = String.raw`\d+(?:\.\d+)?`;

const AMOUNT = String.raw`(?:\d+\s*[x×]\s*)?\d+(?:\.\d+)?(?:\s*(?:m|km|yd|s|secs?|min|cal)\b)?(?:\s*/\s*side)?`;

const LOAD_LIST = of(
  `${NAME}${SETS}\\s*@\\s*((?:${VALUE}\\s*(?:%|kgs?|lbs?)?\\s*[,/;]\\s*)+${VALUE})\\s*(%|kgs?|lbs?)?${TAIL}`,
);

/** What a line must hold to be one of these; the rest is not looked at any closer. */
export const LISTED =
  /@\s*[\d.]+\s*(?:%|kgs?|lbs?)?\s*[,/;]\s*\d|@\s*[\d.]+\s*(?:rir|rpe|s)\b|(?:rpe|rir)\s*[\d.]+\s*\/\s*\d|\d{2,3}\s*(?:kgs?|lbs?)?\s*[x×]\s*\d{1,2}\s*,\s*\d{2,3}\s*(?:kgs?|lbs?)?\s*[x×]|\d\s+[\d.]+\s*\/\s*[\d.]+\s*\/|\brest\s+\d+\s*(?:[-–—]|to)\s*\d/i;

const COUNT = String.raw`(?:\d+\s*[x×]\s*)?`;
const LOAD = String.raw`((?:\s*@[^,|]*)?)`;

const METRES = String.raw`${COUNT}\d+(?:\.\d+)?\s*m`;
/** Three decimals of a metre are none that a coach measures. */
const THOUSANDS = String.raw`(?<![\d.])[1-9]\d{0,2}\.\d\d0\s*m\b`;

/** Writes such metres by their number's text. */
const writeMetres =
  (write: (number: string) => string) =>
  ([name, metres, load, tail]: Groups): string => {
    const written = metres!.replace(
      new RegExp(THOUSANDS, 'gi'),
      (found) => `${write(found.replace(/\s*m$/i, ''))} m`,
    );
    return `${name}${written}${load}${tail}`;
  };

/** Lists of loads or ratings behind the sets that they belong to, and a rating where the load stands. */
export const MOVEMENT_SLIPS: readonly LineSlip[] = [
  {
    within: TRAINING,
    // Such a line is no movement's, for no name holds an @.
    pattern: of(
      `([^:@|\\d][^:@|]*?)\\s*@\\s*((?:bw\\s*[+-]\\s*|2\\s*[x×]\\s*)?${VALUE}\\s*(?:kgs?|lbs?|%)?|bw)\\s*[:–—]\\s*(${AMOUNT}(?:\\s*,\\s*${AMOUNT})*)${TAIL}`,
    ),
    writes: ['$1: $3 @ $2$4'],
    why: 'a load stands behind the sets',
  },
  {
    within: TRAINING,
    pattern: of(`${NAME}(${COUNT}[1-9]\\d{0,2}),(\\d{3})\\s*m${LOAD}${TAIL}`),
    writes: ['$1$2$3 m$4$5'],
    unnoticed: true,
    why: 'a comma begins something new',
  },
  {
    within: TRAINING,
    pattern: of(`${NAME}(?=[^@]*${THOUSANDS})(${METRES}(?:\\s*,\\s*${METRES})*)${LOAD}${TAIL}`),
    writes: [
      writeMetres((number) => number.replace('.', '')),
      writeMetres((number) => String(Number(number))),
    ],
    unnoticed: true,
    why: 'a point may stand before decimals or between thousands',
    told: 'decimal-comma',
  },
  {
    within: TRAINING,
    pattern: of(`${NAME}(${COUNT})(\\d{1,3}),(\\d{1,2})\\s*(km|mi)${LOAD}${TAIL}`),
    writes: ['$1$2$3.$4 $5$6$7', '$1$2$3 $5, $2$4 $5$6$7'],
    unnoticed: true,
    why: 'a comma may stand in a number or between two distances',
    told: 'decimal-comma',
  },
  {
    within: TRAINING,
    pattern: of(
      `${NAME}((?:${COUNT}\\d+\\s*,\\s*)+)(${COUNT}\\d+)\\s*(km|m|yd|mi|cal)((?:\\s*/\\s*side)?)${LOAD}${TAIL}`,
    ),
    writes: [writeUnits],
    unnoticed: true,
    why: 'a number without a unit counts reps',
    told: 'missing-unit',
  },
  {
    within: TRAINING,
    pattern: of(
      `${NAME}((?:\\d{2,3}\\s*(?:kgs?|lbs?)?\\s*[x×]\\s*\\d{1,2}\\s*,\\s*)+\\d{2,3}\\s*(?:kgs?|lbs?)?\\s*[x×]\\s*\\d{1,2})(\\s*(?:kgs?|lbs?))?`,
    ),
    writes: [writeTurned],
    why: 'reps come before the load',
  },
  {
    within: TRAINING,
    pattern: of(`${NAME}${SETS}\\s+((?:${VALUE}\\s*/\\s*)+${VALUE})\\s*(kgs?|lbs?)?${TAIL}`),
    writes: [writeLoads],
    why: 'each set writes its own load',
  },
  {
    within: ['session', 'unknown'],
    pattern: of(
      `${NAME}(2\\s*[x×]\\s*\\d+|\\d+\\s*,\\s*\\d+)(/side)?\\s*@\\s*(${VALUE})\\s*/\\s*(${VALUE})\\s*(kg|lb)s?${TAIL}`,
    ),
    writes: [writePair, writeHands],
    why: 'the two sets may have a load each, or the two hands or sides',
    told: 'sets-spelled-apart',
  },
  {
    within: ['session', 'unknown'],
    pattern: of(`${NAME}(2\\s*[x×]\\s*\\d+)(/side)?\\s*@\\s*(\\d+),(00|25|50|75)\\s*(kg|lb)s?${TAIL}`),
    writes: ['$1$2$3 @ $4.$5 $6$7', writeClosePair],
    why: 'a comma may stand in a number or between the loads of two sets',
    told: 'decimal-comma',
  },
  {
    within: ['session', 'unknown'],
    pattern: LOAD_LIST,
    writes: [writeLoads],
    why: 'each set writes its own load',
  },
  {
    within: ['plan'],
    pattern: LOAD_LIST,
    writes: [writeLoads, writeWeeks],
    why: 'a comma stands between sets with their own loads, a bar between weeks',
    told: 'sets-spelled-apart',
  },
  {
    within: ['plan'],
    pattern: LOAD_LIST,
    writes: [writeWeeks],
    why: 'a bar stands between the weeks',
    told: 'sets-spelled-apart',
  },
  {
    within: ['plan'],
    pattern: LOAD_LIST,
    writes: [writeOwnLoads],
    why: 'each set writes its own load',
  },
  {
    within: ['session', 'unknown'],
    pattern: of(`${NAME}${SETS}\\s*@\\s*(10|\\d(?:\\.5)?)\\s*(rir|rpe)${TAIL}`),
    writes: [
      ([name, sets, value, scale, tail]: Groups) => `${name}${sets} ${scale!.toLowerCase()} ${value}${tail}`,
    ],
    why: 'the word comes before its number, and @ before a load',
  },
  {
    within: ['plan'],
    pattern: of(`${NAME}${SETS}\\s*@\\s*(10|\\d(?:\\.5)?)\\s*(rir|rpe)${TAIL}`),
    writes: [
      ([name, sets, value, scale, tail]: Groups) =>
        `${name}${sets} @ ${scale!.toLowerCase()} ${value}${tail}`,
    ],
    why: 'the word comes before its number',
  },
  {
    within: TRAINING,
    pattern: of(
      `${NAME}${SETS}\\s*@\\s*([^@,|]*?)\\s*(rpe|rir)\\s*((?:\\d(?:\\.5)?|10)(?:\\s*[/]\\s*(?:\\d(?:\\.5)?|10))+)${TAIL}`,
    ),
    writes: [writeRatings],
    why: 'each set writes its own rating',
  },
  {
    within: TRAINING,
    pattern: of(
      `${NAME}${SETS}\\s*@\\s*([^@,|]*?)\\s*(rpe|rir)\\s*(\\d(?:\\.5)?|10)\\s*/\\s*(\\d(?:\\.5)?|10)${TAIL}`,
    ),
    writes: [writeTwoRatings, writeOneRating],
    why: 'the two sets may have a rating each, or both the same',
    told: 'rating-list',
  },
  {
    within: TRAINING,
    pattern: of(`${NAME}(\\d{1,2})\\s*@\\s*(\\d{1,3})\\s*s${TAIL}`),
    writes: ['$1$2x$3 s$4', '$1$2 @ 2x$3 kg$4'],
    why: 's is a time, and a load stands behind @',
    told: 'syntax',
  },
  {
    within: TRAINING,
    pattern: of(`${NAME}(\\d{1,2}\\s*[x×]\\s*\\d+)\\s*@\\s*(\\d{1,3})\\s*s${TAIL}`),
    writes: ['$1$2 @ 2x$3 kg$4', '$1$2 @ 2x$3 lb$4'],
    why: 's is a time, and a load stands behind @',
    told: 'syntax',
  },
];

/** `500, 500 m` → `500 m, 500 m`. */
function writeUnits([name, list, last, unit, side, load, tail]: Groups): string {
  const amounts = [...list!.split(',').map((part) => part.trim()), last].filter((part) => part !== '');
  return `${name}${amounts.map((amount) => `${amount} ${unit}${side}`).join(', ')}${load}${tail}`;
}

/** Each number with the unit behind it, as it is written: `60`, `60 kg`. */
function splitList(text: string): string[] {
  return text.split(/\s*[,/;]\s*/).map((part) => part.trim());
}

/** `7,5` may be one number: a comma without a space among others that have one, or alone before a single digit. */
function mayBeDecimal(list: string): boolean {
  const commas = list.match(/,\s*/g) ?? [];
  const isMixed = commas.some((comma) => comma === ',') && commas.some((comma) => comma !== ',');
  return isMixed || /^\d+,\d$/.test(list.trim());
}

/** `60x5, 65x5` → `5 @ 60, 5 @ 65`: that many sets nobody does; undefined where all may be sets of reps. */
function writeTurned([name, list, unit]: Groups): string | undefined {
  const parts = [...list!.matchAll(/(\d+)\s*(kgs?|lbs?)?\s*[x×]\s*(\d+)/gi)];
  const isLoad = parts.some(([, load, own]) => own !== undefined || Number(load) > LIMITS.sets.high);
  if (!isLoad) return undefined;
  return `${name}${parts.map(([, load, own, reps]) => `${reps} @ ${load}${own ? ` ${own}` : ''}`).join(', ')}${unit}`;
}

/** `3x5` → 5, 5, 5; `5, 4, 3` → its own; one number is that of every load. */
function repsFor(sets: string, count: number): readonly string[] | undefined {
  const parts = sets.split(/\s*,\s*/);
  const reps = parts.flatMap((part) => {
    const [, times, each] = /^(?:(\d+)\s*[x×]\s*)?(.+)$/.exec(part)!;
    return Array.from({ length: Math.min(50, Number(times ?? 1)) }, () => each!.replace(/\s/g, ''));
  });
  return reps.length === count ? reps : undefined;
}

/** `5,5,5 @ 50,55,60 kg` → each set with its load; undefined where one of the numbers may be reps. */
function writeLoads([name, sets, list, unit, tail]: Groups): string | undefined {
  const loads = splitList(list!);
  const reps = repsFor(sets!, loads.length);
  if (!reps || mayBeDecimal(list!)) return undefined;
  const values = loads.map((load) => Number.parseFloat(load));
  const most = Math.max(...reps.map((each) => Number.parseInt(each, 10)));
  const hasUnit = unit !== '' || /[a-z%]/i.test(list!);
  const least = hasUnit ? most : Math.max(most, MOST_REPS);
  if (Math.max(...values) > 2.5 * Math.min(...values) || Math.min(...values) <= least) return undefined;
  return `${name}${reps.map((each, at) => `${each} @ ${withUnit(loads[at]!, unit!)}`).join(', ')}${tail}`;
}

/** `5,3,1 @ 75,85,95%`: sets that are written one by one have a load each; `3x5` may be those of each week. */
function writeOwnLoads(groups: Groups): string | undefined {
  return /[x×]/i.test(groups[1]!) ? undefined : writeLoads(groups);
}

/** More of them than a set of a list has: such a number without a unit is a load. */
const MOST_REPS = 30;

/** A load keeps the unit that it was written with; without one it takes that behind the list. */
function withUnit(load: string, unit: string): string {
  if (unit === '' || /[a-z%]$/i.test(load)) return load;
  return unit === '%' ? `${load}%` : `${load} ${unit}`;
}

/** `2x8 @ 20/22 kg` → each set with its load. */
function writePair([name, sets, side, first, second, unit, tail]: Groups): string | undefined {
  const reps = repsFor(sets!, 2);
  return reps && `${name}${reps[0]}${side} @ ${first} ${unit}, ${reps[1]}${side} @ ${second} ${unit}${tail}`;
}

/** `2x5 @ 61,25 kg` → each set with its load; undefined where nobody does one behind the other. */
function writeClosePair(groups: Groups): string | undefined {
  const [, sets, , first, second] = groups;
  const reps = Number(/\d+$/.exec(sets!)?.[0]);
  return Number(first) > 2.5 * Number(second) || Number(second) <= reps ? undefined : writePair(groups);
}

/** `2x8 @ 20/22 kg` → one in each hand; `2x8/side @ 20/22 kg` → another on each side. */
function writeHands([name, sets, side, first, second, unit, tail]: Groups): string {
  const load = side === '' ? `${first}&${second} ${unit}` : `${first} ${unit} left ${second} ${unit} right`;
  return `${name}${sets}${side} @ ${load}${tail}`;
}

/** `3x5 @ 70%, 75%, 80%` → the same sets in each week; a lone load without a unit may be reps. */
function writeWeeks([name, sets, list, unit, tail]: Groups): string | undefined {
  const isList = unit !== '' && /(?:%|kgs?|lbs?)\s*[,/;]/i.test(list!);
  if (!isList) return undefined;
  return `${name}${splitList(list!)
    .map((load) => `${sets} @ ${withUnit(load, unit!)}`)
    .join(' | ')}${tail}`;
}

function writeRatings(groups: Groups): string | undefined {
  const [first, second, ...more] = groups[4]!.split('/').map(Number);
  // `rpe 8/10` may be out of ten, and `rpe 8/9` between both.
  const isClear = more.length > 0 || (second !== 10 && Math.abs(first! - second!) > 1);
  return isClear ? writeEachRating(groups) : undefined;
}

/** `2x5 @ 60 kg rpe 8/9` → each set with its rating. */
function writeTwoRatings([name, sets, load, scale, first, second, tail]: Groups): string | undefined {
  return writeEachRating([name!, sets!, load!, scale!, `${first}/${second}`, tail!]);
}

/** `2x5 @ 60 kg rpe 8/9` → 8.5 for both, `rpe 8/10` → 8 out of ten. */
function writeOneRating([name, sets, load, scale, first, second, tail]: Groups): string {
  const middle = (Number(first) + Number(second)) / 2;
  const rating = second !== '10' && /rpe/i.test(scale!) && Number.isInteger(middle * 2) ? middle : first;
  return `${name}${sets} @ ${load === '' ? '' : `${load} `}${scale} ${rating}${tail}`;
}

function writeEachRating([name, sets, load, scale, list, tail]: Groups): string | undefined {
  const ratings = list!.split(/\s*\/\s*/);
  const reps = repsFor(sets!, ratings.length);
  if (!reps) return undefined;
  const written = reps.map((each, at) => `${each} @ ${load === '' ? '' : `${load} `}${scale} ${ratings[at]}`);
  return `${name}${written.join(', ')}${tail}`;
}
