import { LIMITS } from '../../vocabulary/limits.ts';
import { type Groups, type LineSlip, of } from './slip.ts';

const TRAINING = ['session', 'plan', 'unknown'] as const;
const NAME = String.raw`([^:@|]*?\p{L}[^:@|]*:\s*)`;
const SETS = String.raw`((?:\d+\s*[x×]\s*)?\d+(?:\s*/\s*side)?(?:\s*,\s*\d+(?:\s*/\s*side)?)*)`;
/** Modifiers that close the line. */
const TAIL = String.raw`(\s*(?:,\s*(?:tempo|rest|setting|pain|instead|then|after)\b.*)?)`;
const VALUE = String.raw`\d+(?:\.\d+)?`;

const LOAD_LIST = of(
  `${NAME}${SETS}\\s*@\\s*((?:${VALUE}\\s*(?:%|kgs?|lbs?)?\\s*[,/;]\\s*)+${VALUE})\\s*(%|kgs?|lbs?)?${TAIL}`,
);

/** What a line must hold to be one of these; the rest is not looked at any closer. */
export const LISTED =
  /@\s*[\d.]+\s*(?:%|kgs?|lbs?)?\s*[,/;]\s*\d|@\s*[\d.]+\s*(?:rir|rpe|s)\b|(?:rpe|rir)\s*[\d.]+\s*\/\s*\d|\d{2,3}\s*(?:kgs?|lbs?)?\s*[x×]\s*\d{1,2}\s*,\s*\d{2,3}\s*(?:kgs?|lbs?)?\s*[x×]|\d\s+[\d.]+\s*\/\s*[\d.]+\s*\/|\brest\s+\d+\s*(?:[-–—]|to)\s*\d/i;

/** Lists of loads or ratings behind the sets that they belong to, and a rating where the load stands. */
export const MOVEMENT_SLIPS: readonly LineSlip[] = [
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

function splitList(text: string): string[] {
  return text.split(/\s*(?:%|kgs?|lbs?)?\s*[,/;]\s*/i);
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
  if (!reps) return undefined;
  const values = loads.map(Number);
  const most = Math.max(...reps.map((each) => Number.parseInt(each, 10)));
  if (Math.max(...values) > 2.5 * Math.min(...values) || Math.min(...values) <= most) return undefined;
  const behind = unit === '%' ? '%' : unit === '' ? '' : ` ${unit}`;
  return `${name}${reps.map((each, at) => `${each} @ ${loads[at]}${behind}`).join(', ')}${tail}`;
}

/** `3x5 @ 70%, 75%, 80%` → the same sets in each week; a lone load without a unit may be reps. */
function writeWeeks([name, sets, list, unit, tail]: Groups): string | undefined {
  const behind = unit === '%' ? '%' : ` ${unit}`;
  const isList = unit !== '' && /(?:%|kgs?|lbs?)\s*[,/;]/i.test(list!);
  if (!isList) return undefined;
  return `${name}${splitList(list!)
    .map((load) => `${sets} @ ${load}${behind}`)
    .join(' | ')}${tail}`;
}

function writeRatings([name, sets, load, scale, list, tail]: Groups): string | undefined {
  const ratings = list!.split(/\s*\/\s*/);
  const reps = repsFor(sets!, ratings.length);
  if (!reps) return undefined;
  const written = reps.map((each, at) => `${each} @ ${load === '' ? '' : `${load} `}${scale} ${ratings[at]}`);
  return `${name}${written.join(', ')}${tail}`;
}
