import { DATE, GAP, type Groups, JOIN, joinByCommas, type LineSlip, MASS, NUMBER, of } from './slip.ts';

const PLACE = ['place'] as const;
const EXERCISE = ['exercise'] as const;
const ATHLETE = ['athlete'] as const;
const UNIT = '(?:kgs?|lbs?)';
const DAY = String.raw`(?:${DATE}|\d{1,2}[./]\d{1,2}[./]\d{2,4})`;

/** As it should be. */
const RANGE = String.raw`dumbbells[\s:]+[\d.]+\s*(?:kg|lb)?-[\d.]+\s*(?:kg|lb)?\s+by\s+[\d.]+\s*(?:kg|lb)(?:\s+(?:pairs|singles))?`;

/** Slips in what a place, an exercise or an athlete is said to be. */
export const DEFINITION_SLIPS: readonly LineSlip[] = [
  {
    within: PLACE,
    pattern: of(
      `(?!${RANGE}$)(dumbbells)${GAP}(${NUMBER})\\s*(?:${UNIT})?\\s*(?:[-–—]|to)\\s*(${NUMBER})\\s*(${UNIT})?\\s*,?\\s*(?:by|in(?:\\s+steps\\s+of)?|step|steps\\s+of|/|every)\\s*(${NUMBER})s?\\s*(${UNIT})?\\s*(?:steps|jumps)?(\\s+pairs|\\s+singles)?`,
    ),
    writes: [writeRange],
    why: 'a range and its step',
  },
  {
    within: PLACE,
    pattern: of(
      `(dumbbells|kettlebells)${GAP}(${NUMBER}(?:\\s*(?:${UNIT})?\\s*[,;/\\s]\\s*${NUMBER})+)\\s*(${UNIT})(\\s+pairs|\\s+singles)?`,
    ),
    writes: [writeWeights],
    why: 'a step goes from the first to the last',
  },
  {
    within: PLACE,
    pattern: of(
      `kettlebells${GAP}(${NUMBER})\\s*(?:${UNIT})?\\s*(?:[-–—]|to)\\s*(${NUMBER})\\s*(?:${UNIT})?\\s*(?:by|in|/|every)\\s*(${NUMBER})s?\\s*(${UNIT})`,
    ),
    writes: [writeEach],
    why: 'kettlebells stand one by one',
  },
  {
    within: PLACE,
    pattern: of(
      `(bars|plates|kettlebells)${GAP}((?:\\d+\\s*[x×]\\s*)?${MASS}(?:(?:\\s+|${JOIN})(?:\\d+\\s*[x×]\\s*)?${MASS})+)`,
    ),
    writes: [
      ([word, list]: Groups) =>
        `${word} ${list!.replace(/([a-z])(?:\s+|\s*[;/&+]\s*|\s+and\s+)(?=\d)/gi, '$1, ')}`,
    ],
    why: 'a comma stands between the weights',
  },
  {
    within: PLACE,
    pattern: of(
      `plates${GAP}(${NUMBER}\\s*${UNIT}\\s*[x×]\\s*\\d+(?:\\s*,\\s*${NUMBER}\\s*${UNIT}\\s*[x×]\\s*\\d+)*)`,
    ),
    writes: [
      ([list]: Groups) =>
        `plates ${list!.replace(new RegExp(`(${NUMBER})\\s*(${UNIT})\\s*[x×]\\s*(\\d+)`, 'gi'), '$3x$1 $2')}`,
    ],
    why: 'the number of plates comes first',
  },
  {
    within: PLACE,
    pattern: of(`((?:plates|bars|kettlebells)${GAP}(?=.*,\\s).*\\d,\\d.*)`),
    // `15,10` and `2x15,2x10` are two weights.
    writes: [
      ([line]: Groups) => line!.replace(/(?<![\d.,])((?:\d+x)?[0127]),(25|5|75)(?!\d|\s*[x×])/gi, '$1.$2'),
    ],
    unnoticed: true,
    why: 'a point stands in a number, and a comma between weights',
  },
  {
    within: PLACE,
    pattern: of(`(plates|bars|kettlebells)${GAP}((?:\\d+\\s*[x×]\\s*)?[127]),(25|5|75)(\\s*${UNIT})?`),
    writes: ['$1 $2.$3$4', '$1 $2, $3$4'],
    unnoticed: true,
    told: 'decimal-comma',
    why: 'a comma may stand in a number or between two weights',
  },
  {
    within: PLACE,
    pattern: of(`(?:barbells?|olympic\\s+bars?)${GAP}(${NUMBER}.*)`),
    writes: ['bars $1'],
    why: 'empty bars are told by bars',
  },
  {
    within: PLACE,
    pattern: of(`(cables?|stack|lat\\s+pulldown)${GAP}(\\d.*)`),
    writes: ['stacks $1 $2'],
    why: 'what a machine can be set to is told by stacks',
  },
  {
    within: PLACE,
    pattern: of(`(?:equipment|gear|kit|also\\s+has)${GAP}(\\S.*)`),
    writes: ['has $1'],
    why: 'other equipment is told by has',
  },
  {
    within: PLACE,
    pattern: of(`collars${GAP}2\\s*[x×]\\s*(${NUMBER})\\s*(${UNIT})`),
    writes: [([mass, unit]: Groups) => `collars ${2 * Number(mass!.replace(',', '.'))} ${unit}`],
    why: 'both collars together',
  },
  {
    within: [...PLACE, ...EXERCISE],
    pattern: of(`(has|needs|muscles|also|easier|harder)${GAP}(.*?\\s*[;]\\s*.*)`),
    writes: [([word, list]: Groups) => `${word} ${joinByCommas(list!, /\s*[;,]\s*/)}`],
    unnoticed: true,
    why: 'a comma stands between them',
  },
  {
    within: [...PLACE, ...EXERCISE],
    pattern: of(`(has|needs|muscles)${GAP}([^()\\d]*?(?:\\s+and\\s+|\\s*[&+]\\s*)[^()\\d]*)`),
    writes: [
      ([word, list]: Groups) => `${word} ${joinByCommas(list!, /\s*(?:,\s*and\s|\sand\s|[&+,])\s*/i)}`,
    ],
    unnoticed: true,
    why: 'a comma stands between them',
  },
  {
    within: EXERCISE,
    pattern: of(`muscles${GAP}([\\p{L}\\s,]+?(?:\\s*/\\s*[\\p{L}\\s,]+)+)`),
    writes: [([list]: Groups) => `muscles ${joinByCommas(list!, /\s*[/,]\s*/)}`],
    unnoticed: true,
    why: 'a comma stands between them',
  },
  {
    within: EXERCISE,
    pattern: of(
      `muscles${GAP}(.*\\p{L}\\s*(?:0?\\.5|50\\s*%|\\(\\s*(?:half|1/2|½|0?\\.5|50\\s*%)\\s*\\)|½)(?:\\s*,.*)?)`,
    ),
    writes: [
      ([list]: Groups) =>
        `muscles ${list!.replace(/\s*(?:\(\s*(?:half|1\/2|½|0?\.5|50\s*%)\s*\)|½|50\s*%|0?\.5)(?=\s*(?:,|$))/gi, ' 1/2')}`,
    ],
    unnoticed: true,
    why: 'a share is a fraction',
  },
  {
    within: EXERCISE,
    // 1 may be all of it.
    pattern: of(`bodyweight${GAP}(?:0?[.,](\\d{1,2})|(\\d{2,3}))(,.*)?`),
    writes: [
      ([part, whole, rest]: Groups) => `bodyweight ${part ? Number(part.padEnd(2, '0')) : whole}%${rest}`,
    ],
    why: 'a share of body mass, in percent',
  },
  {
    within: EXERCISE,
    pattern: of(`each\\s+rep\\s+moves\\s+(?:(1)|2)`),
    writes: [([one]: Groups) => `each rep moves ${one ? 'one' : 'both'}`],
    why: 'in words',
  },
  {
    within: EXERCISE,
    pattern: of(`(?:alias(?:es)?|aka|a\\.k\\.a\\.|also\\s+(?:known\\s+as|called)|synonyms?)${GAP}(\\S.*)`),
    writes: ['also $1'],
    why: 'other spellings are told by also',
  },
  {
    within: EXERCISE,
    pattern: of(`(?:equipment|requires|gear)${GAP}(\\S.*)`),
    writes: ['needs $1'],
    why: 'equipment is told by needs',
  },
  {
    within: EXERCISE,
    pattern: of(`(?:regress(?:ion|es)?(?:\\s+to)?)${GAP}(\\S.*)`),
    writes: ['easier $1'],
    why: 'a movement to go back to is told by easier',
  },
  {
    within: EXERCISE,
    pattern: of(`(?:progress(?:ion|es)?(?:\\s+to)?)${GAP}(\\S.*)`),
    writes: ['harder $1'],
    why: 'a movement to go on to is told by harder',
  },
  {
    within: EXERCISE,
    pattern: of(`trunk${GAP}anti[\\s-]*(extension|flexion|rotation|side\\s+bend)`),
    writes: ['trunk resists $1'],
    why: 'what the trunk resists is said by its word',
  },
  {
    within: EXERCISE,
    pattern: of(`trunk${GAP}(resists|moves)\\s+([\\p{L}\\s]+?)(?:\\s+and\\s+|\\s*[&+/]\\s*)([\\p{L}\\s]+)`),
    writes: ['trunk $1 $2, $3'],
    unnoticed: true,
    why: 'a comma stands between them',
  },
  {
    within: ATHLETE,
    pattern: of(
      `(?:born|dob|birth(?:day|date)?|date\\s+of\\s+birth)${GAP}(?:in\\s+)?(?:.*[^\\d])?((?:19|20)\\d\\d)(?:-\\d{1,2}-\\d{1,2})?`,
    ),
    writes: [([year]: Groups) => `born ${year}`],
    why: 'the year is enough',
  },
  {
    within: ATHLETE,
    pattern: of(`born${GAP}['’](\\d\\d)`),
    writes: ['born 19$1', 'born 20$1'],
    why: 'all four digits of the year',
    told: 'out-of-range',
  },
  {
    within: ATHLETE,
    pattern: of(`(?:sex|gender)${GAP}(?:(f|w|female|woman|girl)|m|male|man|boy)`),
    writes: [([female]: Groups) => `sex ${female ? 'female' : 'male'}`],
    why: 'female or male',
  },
  {
    within: ATHLETE,
    pattern: of(
      `(?:body\\s*-?weight|body\\s+weight|weight|weigh[\\s-]*in|bw)${GAP}(${MASS})\\s*(?:,|\\(|@|on|-|–)?\\s*(${DAY})\\)?`,
    ),
    writes: ['bodyweight $1 on $2'],
    why: 'a weigh-in and its day',
  },
  {
    within: ATHLETE,
    pattern: of(
      `(?:body\\s*-?weight|body\\s+weight|weight|weigh[\\s-]*in|bw)${GAP}(${DAY})\\s*[:,]?\\s*(${MASS})`,
    ),
    writes: ['bodyweight $2 on $1'],
    why: 'a weigh-in and its day',
  },
  {
    within: ATHLETE,
    pattern: of(
      `(?:max|1\\s*rm|pr|pb)${GAP}(\\p{L}[^:=@+]*?)\\s*(?::|=|@|\\s|[–—-])\\s*((?:bw\\s*[+-]\\s*)?(?:${MASS}))\\s*(?:,|\\(|on|@|-|–)?\\s*(${DAY})\\)?`,
    ),
    writes: ['max $1: $2 on $3'],
    why: 'a colon behind the movement, then load and day',
  },
  {
    within: ATHLETE,
    pattern: of(`max${GAP}(\\p{L}[^:=@+]*?)\\s*:?\\s*\\+\\s*(${MASS})\\s+on\\s+(${DAY})`),
    writes: ['max $1: bw+$2 on $3'],
    why: 'weight added to the body begins with bw',
  },
  {
    within: ATHLETE,
    pattern: of(`goal${GAP}(\\p{L}[^:=@+]*?)\\s*:?\\s*(\\+\\s*)?(${MASS})((?:\\s+by\\s.*)?)`),
    writes: [
      ([name, added, mass, by]: Groups) => `goal ${name}: 1 @ ${added === '' ? '' : 'bw+'}${mass}${by}`,
    ],
    why: 'reps stand before the load',
  },
  {
    within: ATHLETE,
    pattern: of(`avoid${GAP}(\\p{L}[^,(]*?)\\s*(?:\\(\\s*([^()]+?)\\s*\\)|\\s[–—-]+\\s+([^,()]+))`),
    writes: [([what, a, b]: Groups) => `avoid ${what}, ${a || b}`],
    unnoticed: true,
    why: 'a comma stands before the reason',
  },
  {
    within: ATHLETE,
    pattern: of(`avoid${GAP}(\\p{L}[^,(]*?)\\s+(?:till|til|'til|to|up\\s+to|through)\\s+(${DAY})(.*)`),
    writes: ['avoid $1 until $2$3'],
    unnoticed: true,
    why: 'the last day stands behind until',
  },
  {
    within: ATHLETE,
    pattern: of(`away${GAP}(?:from\\s+)?(${DAY})\\s*(?:[-–—]|until|till|to|through)\\s*(${DAY})\\s*(.*)`),
    writes: [
      ([from, to, rest]: Groups) =>
        `away ${from} to ${to}${rest === '' ? '' : rest!.startsWith(',') ? rest : `, ${rest!.replace(/^\(|\)$/g, '')}`}`,
    ],
    why: 'the word to stands between two days',
  },
  {
    within: ATHLETE,
    pattern: of(`screened${GAP}on\\s+(${DAY}.*)`),
    writes: ['screened $1'],
    why: 'the date alone stands behind the word',
  },
  {
    within: ATHLETE,
    pattern: of(`(retest${GAP}.*\\d,\\d{1,2}(?!\\d).*)`),
    writes: [([line]: Groups) => line!.replace(/(\d{2}),(\d|25|75)(?!\d)/g, '$1.$2')],
    unnoticed: true,
    why: 'a point stands in a number, and a comma between weights',
  },
];

/** A number as it is read, a decimal comma as a point. */
function read(text: string): number {
  return Number(text.replace(',', '.'));
}

function writeRange([word, low, high, highUnit, step, stepUnit, sold]: Groups): string {
  const unit = stepUnit || highUnit || '';
  const numbers = [low, high, step].map((text) => text!.replace(',', '.'));
  return `${word} ${numbers[0]}-${numbers[1]} by ${numbers[2]}${unit === '' ? '' : ` ${unit}`}${sold}`;
}

/** `4,6,8` → `4-8 by 2`; kettlebells stand one by one; undefined where the steps are uneven. */
function writeWeights([word, list, unit, sold]: Groups): string | undefined {
  const texts = list!.split(/\s*(?:kgs?|lbs?)?\s*[,;/\s]\s*/i);
  const weights = texts.map(read);
  if (/^kettlebells$/i.test(word!)) {
    const written = `${word} ${weights.join(', ')} ${unit}`;
    return /^[\d.]+(?:\s*,\s*[\d.]+)+$/.test(list!) ? undefined : written;
  }
  const step = weights[1]! - weights[0]!;
  const isEven = weights.every((weight, at) => at === 0 || Math.abs(weight - weights[at - 1]! - step) < 1e-9);
  if (!isEven || step <= 0) return undefined;
  return `${word} ${weights[0]}-${weights.at(-1)} by ${step} ${unit}${sold}`;
}

function writeEach([low, high, step, unit]: Groups): string | undefined {
  const [from, to, by] = [read(low!), read(high!), read(step!)];
  const count = Math.round((to - from) / by) + 1;
  if (!(by > 0) || count < 2 || count > 30) return undefined;
  return `kettlebells ${Array.from({ length: count }, (_, at) => from + at * by).join(', ')} ${unit}`;
}
