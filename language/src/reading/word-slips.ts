import { AT, COUNT, type ItemGroups, type ItemSlip, MASS, N, of, RATING, STEP_UNIT } from './item-slip.ts';

const NUMBER_WORDS = [
  'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen',
  'sixteen seventeen eighteen nineteen twenty',
]
  .join(' ')
  .split(' ');

/** Forms of the usual characters that some keyboards write as wide as a sign of theirs. */
const WIDE = /[\uff01-\uff5e]/gu;

/** `5 @ 60/65/70 kg` */
const LOADS = `(\\d+(?:\\s*/\\s*side)?)\\s*@\\s*(${N}(?:\\s*/\\s*${N}){2,}|\\d+(?:-\\d+){2,})\\s*(kg|lb|%)s?(${RATING})`;

/** Numbers in words or in other characters, words that stand before or instead of what they should, and lists. */
export const WORD_SLIPS: readonly ItemSlip[] = [
  {
    cell: true,
    pattern: of(`(.*[\\u3001\\uff01-\\uff5e].*)`),
    code: 'syntax',
    message: 'Write $a in plain characters',
    writes: [
      ([text]) =>
        text!
          .replaceAll('\u3001', ', ')
          .replace(WIDE, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0)),
    ],
  },
  {
    // `10 @ 2x12 kg, drop 8 @ 2x8 kg`: a drop goes on at once, and no comma parts it from its set.
    cell: true,
    pattern: of(`(.*@.*?[\\s,]drop.*\\d\\s*@.*)`),
    code: 'syntax',
    message: 'Write $a: a drop stands behind its set without a comma',
    writes: [writeDrops],
  },
  {
    cell: true,
    pattern: of(String.raw`(.*@.*;\s*\d.*)`),
    code: 'sets-spelled-apart',
    message: 'Write a comma between sets, not a semicolon',
    writes: [([text]) => text!.replace(/\s*;\s*(?=[\d?(])/g, ', ')],
  },
  {
    pattern: of(`(?:~|≈|approx\\.?|about|around|ca\\.?|circa)\\s*((?!${MASS})\\d.*)`),
    code: 'syntax',
    message: 'Write $1: a number is not said to be near',
    writes: ['$1'],
  },
  {
    pattern: of(`(${COUNT})(?=[lo]*\\d)(\\d*[lo][lo\\d]*(?<!\\dl))((?:${AT})?)`),
    code: 'syntax',
    message: 'A letter stands in the number: write $a',
    writes: [([count, number, load]) => `${count}${number!.replace(/l/gi, '1').replace(/o/gi, '0')}${load}`],
  },
  {
    pattern: of(`(${COUNT})(${NUMBER_WORDS.join('|')})(?:\\s+reps?)?((?:\\s*@\\s*[\\d?b].*)?)`),
    code: 'syntax',
    message: 'Write $a: numbers in digits',
    writes: [([count, word, load]) => `${count}${NUMBER_WORDS.indexOf(word!.toLowerCase()) + 1}${load}`],
  },
  {
    pattern: of(`[x×✗✘](${AT})?`),
    code: 'syntax',
    message: 'Was it left out, or tried and failed? Write $a or $b, or ? if nobody noted it',
    writes: ['skipped$1', '0 of 1$1', '?$1'],
  },
  {
    pattern: of(`(?:(?:the\\s+)?same|ditto|idem|as\\s+(?:before|above|last)|see\\s+above|〃)(?:\\s.*)?`),
    code: 'syntax',
    message: 'Write out what was done: each line is read by itself',
    writes: [],
  },
  {
    within: 'plan',
    pattern: of(
      `(${COUNT}\\d+)\\s+to\\s+(\\d+)(?:\\s*reps?)?((?:\\s*(?:s|min|m|cal))?(?:\\s*/\\s*side)?(?:${AT})?)`,
    ),
    code: 'syntax',
    message: 'Write $1-$2 for a range',
    writes: ['$1-$2$3'],
  },
  {
    within: 'log',
    pattern: of(
      `(${COUNT})(\\d+)\\s+to\\s+(\\d+)(?:\\s*reps?)?((?:\\s*(?:s|min|m|cal))?(?:\\s*/\\s*side)?(?:${AT})?)`,
    ),
    code: 'for-plans',
    message: '$2 to $3 is for plans: write how many were done',
    writes: ['$1$2$4', '$1$3$4'],
  },
  {
    pattern: of(
      `(?:add\\s+|plus\\s+)?(${N}\\s*${STEP_UNIT})\\s*(?:(?:each|/|per|every|a)\\s*(round|session|week|cycle)|(week)ly)(.*)`,
    ),
    code: 'syntax',
    message: 'Write $a for a step',
    writes: [([step, each, week, more]) => `+${step} each ${each || week}${more}`],
  },
  {
    // The place may be written without its side; what follows the number belongs to no place.
    pattern: of(String.raw`(\p{L}[\p{L}\s]*?)\s+pain\s*[:=]?\s*(10|\d)(?:\s*/\s*10)?`),
    code: 'syntax',
    message: 'Write $a: the word comes first, then the number',
    writes: ['pain $2 $1'],
  },
  {
    pattern: of(String.raw`pain\s+(\p{L}[\p{L}\s]*?)\s*[:=]?\s*(10|\d)(?:\s*/\s*10)?`),
    code: 'syntax',
    message: 'Write $a: the number comes before the place',
    writes: ['pain $2 $1'],
  },
  {
    pattern: of(String.raw`(10|\d)(?:\s*/\s*10)?\s+pain((?:\s+\p{L}[\p{L}\s]*)?)`),
    code: 'syntax',
    message: 'Write $a: the word comes first, then the number',
    writes: ['pain $1$2'],
  },
  {
    pattern: of(String.raw`pain\s*[:=]\s*(10|\d)(?:\s*/\s*10)?((?:\s+\p{L}[^@]*)?)`),
    code: 'syntax',
    message: 'Write $a, without a colon behind the word',
    writes: ['pain $1$2'],
  },
  {
    pattern: of(String.raw`([\dx](?:-[\dx]){2,3})\s+tempo`),
    code: 'syntax',
    message: 'Write tempo $1: the word comes first',
    writes: ['tempo $1'],
  },
  {
    pattern: of(String.raw`tempo\s*[:=]\s*([\dx](?:-[\dx]){2,3})`),
    code: 'syntax',
    message: 'Write tempo $1, without a colon behind the word',
    writes: ['tempo $1'],
  },
  {
    within: 'plan',
    cell: true,
    pattern: of(LOADS),
    code: 'sets-spelled-apart',
    message: 'Are these sets, or the weeks? Write $a or $b',
    writes: [(groups) => writeLoads(groups, ', '), (groups) => writeLoads(groups, ' | ')],
  },
  {
    pattern: of(LOADS),
    code: 'sets-spelled-apart',
    message: 'A load stands behind its own set: write $a',
    writes: [(groups) => writeLoads(groups, ', ')],
  },
  {
    pattern: of(`(\\d+(?:\\s*/\\s*side)?)\\s*@\\s*(${N})\\s*/\\s*(${N})\\s*(kg|lb)s?(${RATING})`),
    code: 'sets-spelled-apart',
    message: 'Are these two sets, or the two hands? Write $a or $b',
    writes: ['$1 @ $2 $4$5, $1 @ $3 $4$5', '$1 @ $2&$3 $4$5'],
  },
];

function writeLoads([set, list, unit, rating]: ItemGroups, separator: string): string {
  const loads = list!.split(/\s*[/-]\s*/);
  const behind = unit === '%' ? '%' : ` ${unit}`;
  return loads.map((load) => `${set} @ ${load}${behind}`).join(separator) + rating;
}

function writeDrops([text]: ItemGroups): string | undefined {
  const written = text!.replace(
    /\s*[,+]?\s*(?:\bthen\s+)?\bdrop[\s-]*(?:sets?)?\s*(?:to\b)?\s*:?\s*(?=\d+\s*@)/giu,
    ' drop ',
  );
  return written === text ? undefined : written;
}
