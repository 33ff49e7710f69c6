import { GAP, type Groups, JOIN, joinByCommas, type LineSlip, of } from './slip.ts';

const TRAINING = ['session', 'plan', 'unknown'] as const;
const LETTER = String.raw`((?:[a-z]\s*[).:–—-]*\s+)?)`;
const KIND = '(?:straight|circuit|superset|giant set|for time|amrap|every|intervals|warmup|cooldown)';
const SPAN = String.raw`\d+(?::\d\d)+|\d+(?:\.\d+)?\s*(?:s|secs?|seconds?|min(?:ute)?s?|h)`;

/** What stands behind the kind of a block. */
const SETTING = `(?:\\d{1,2}\\s*(?:rounds?|rds?|sets|times|x)|x\\s*\\d{1,2}|(?:(?:rest|cap)\\s+)?(?:${SPAN})|alternating)`;

const NUMBER_WORDS = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** What says that a list of exercises is done several times. */
const ROUND_WORDS = '(?:rounds?|rds?|sets|times|x)';

/** Slips in the header of a block and in what is recorded of one. */
export const BLOCK_SLIPS: readonly LineSlip[] = [
  {
    within: TRAINING,
    pattern: of(`${LETTER}(warm|cool)[\\s-]+(?:up|down)(?:\\s*:)?`),
    writes: [([letter, word]: Groups) => `${bare(letter)}${/^w/i.test(word!) ? 'warmup' : 'cooldown'}`],
    why: 'one word',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}super[\\s-]*set(s?)\\b(.*)`),
    writes: [([letter, , rest]: Groups) => `${bare(letter)}superset${rest}`],
    why: 'one word',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}(?:tri|giant)[\\s-]*sets?\\b(.*)`),
    writes: [([letter, rest]: Groups) => `${bare(letter)}giant set${rest}`],
    why: 'three or more movements in turn are a giant set',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}straight\\s+sets?((?:\\s*[,;].*)?)`),
    writes: [([letter, rest]: Groups) => `${bare(letter)}straight${rest}`],
    why: 'the word straight says so alone',
  },
  {
    within: TRAINING,
    pattern: of(`block\\s+([a-z])\\s*[:.)–—-]?\\s*(${KIND}\\b.*)`),
    writes: [([letter, block]: Groups) => `${letter!.toUpperCase()} ${block}`],
    unnoticed: true,
    why: 'the letter stands alone before the kind of block',
  },
  {
    within: TRAINING,
    pattern: of(`(?:block\\s+)?([a-z])\\s*[:.)]?`),
    writes: [
      ([letter]: Groups) => `${letter!.toUpperCase()} straight`,
      ([letter]: Groups) => `${letter!.toUpperCase()} circuit`,
    ],
    why: 'a block says how it is done, and until then the lines below count to the block above',
    told: 'stray-line',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}(${KIND}\\b[^;]*?)\\s*;\\s*(.*)`),
    writes: [([letter, head, rest]: Groups) => `${bare(letter)}${head}, ${rest!.replace(/\s*;\s*/g, ', ')}`],
    why: 'a comma stands before each setting',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}(${KIND})\\s*\\(\\s*(${SETTING}(?:\\s*,\\s*${SETTING})*)\\s*\\)((?:\\s*,.*)?)`),
    writes: [
      ([letter, kind, settings, rest]: Groups) => `${bare(letter)}${openSettings(kind!)}${settings}${rest}`,
    ],
    why: 'settings stand behind a comma, not in brackets',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}(${KIND})\\s*[/–—-]\\s*(${SETTING}(?:\\s*[,/–—-]\\s*${SETTING})*)`),
    writes: [
      ([letter, kind, settings]: Groups) =>
        `${bare(letter)}${openSettings(kind!)}${settings!.replace(/\s*[,/–—-]\s*/g, ', ')}`,
    ],
    why: 'a comma stands before each setting',
  },
  {
    within: TRAINING,
    pattern: of(
      `${LETTER}(\\d{1,2})[\\s-]*(?:x\\s*)?rounds?\\s*(?:of\\s+|,\\s*)?(?:an?\\s+)?(circuit|superset|giant\\s+set|for\\s+time)((?:\\s*,.*)?)`,
    ),
    writes: [
      ([letter, rounds, kind, rest]: Groups) =>
        `${bare(letter)}${kind!.toLowerCase()}, ${rounds} ${rounds === '1' ? 'round' : 'rounds'}${rest}`,
    ],
    why: 'the kind of block comes before its settings',
  },
  {
    within: TRAINING,
    pattern: of(
      `(straight|circuit|superset|giant\\s+set|amrap|intervals)\\s+([a-z])(?:\\s*[:.)])?((?:\\s*,.*)?)`,
    ),
    writes: [([kind, letter, rest]: Groups) => `${letter!.toUpperCase()} ${kind!.toLowerCase()}${rest}`],
    why: 'the letter comes before the kind of block',
  },
  {
    within: TRAINING,
    pattern: of(
      `([a-z])\\s*[:]\\s*((?:straight|circuit|superset|giant\\s+set|amrap|intervals|for\\s+time|every|warmup|cooldown)\\b.*)`,
    ),
    writes: ['$1 $2'],
    why: 'no colon stands behind the letter of a block',
  },
  {
    within: TRAINING,
    pattern: of(
      `${LETTER}(circuit|superset|giant\\s+set|for\\s+time|straight)\\s*[,:]?\\s*(?:x\\s*(\\d{1,2})|(\\d{1,2})\\s*(?:x|sets|rds?|times))((?:\\s*,.*)?)`,
    ),
    writes: [
      ([letter, kind, a, b, rest]: Groups) =>
        `${bare(letter)}${kind!.toLowerCase()}, ${a || b} rounds${rest}`,
    ],
    why: 'a list is done in rounds',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}(${KIND}[^,]*?,?\\s*\\d+\\s*rounds?)\\s+(rest|cap)\\s+(.*)`),
    writes: [([letter, head, word, rest]: Groups) => `${bare(letter)}${head}, ${word} ${rest}`],
    why: 'a comma stands before each setting',
  },
  {
    within: TRAINING,
    pattern: of(
      `${LETTER}(${KIND}\\b.*?),?\\s+(${SPAN})\\s*(rest|cap)(?:\\s*between\\s*(?:rounds|sets))?((?:\\s*,.*)?)`,
    ),
    writes: [
      ([letter, head, span, word, rest]: Groups) =>
        `${bare(letter)}${head!.replace(/[\s,/–—-]+$/, '')}, ${word!.toLowerCase()} ${span}${rest}`,
    ],
    why: 'the word comes before its time',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}(${KIND}[^,]*,?\\s*\\d+\\s*rounds?)\\s*,\\s*(\\d+)\\s*passes((?:\\s*,.*)?)`),
    writes: [([letter, head, passes, rest]: Groups) => `${bare(letter)}${head} x ${passes} passes${rest}`],
    why: 'an x stands between rounds and passes',
  },
  {
    within: TRAINING,
    pattern: of(
      `${LETTER}(?:emom|every\\s+(?:1\\s+)?min(?:ute)?(?:\\s+on\\s+the\\s+min(?:ute)?)?)\\s*[,:]?\\s*(?:(?:for|x)\\s*)?(\\d{1,2})\\s*(?::00|['’′]|min(?:ute)?s?|x)?`,
    ),
    writes: [([letter, minutes]: Groups) => `${bare(letter)}every 1:00 for ${minutes}:00`],
    why: 'work at each full minute',
  },
  {
    within: TRAINING,
    pattern: of(
      `${LETTER}e\\s*([2-9])\\s*mom\\s*[,:]?\\s*(?:x\\s*(\\d{1,2})|(?:for\\s*)?(\\d{1,2})\\s*(?::00|['’′]|min(?:ute)?s?))`,
    ),
    writes: [
      ([letter, every, times, whole]: Groups) => {
        const minutes = whole === '' ? Number(times) * Number(every) : Number(whole);
        return minutes % Number(every) === 0
          ? `${bare(letter)}every ${every}:00 for ${minutes}:00`
          : undefined;
      },
    ],
    why: 'work at each full minute of so many',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}e\\s*([2-9])\\s*mom\\s*[,:]?\\s*(?:for\\s*)?(\\d{1,2})`),
    writes: [
      ([letter, every, whole]: Groups) =>
        Number(whole) % Number(every) === 0 ? `${bare(letter)}every ${every}:00 for ${whole}:00` : undefined,
      ([letter, every, times]: Groups) =>
        `${bare(letter)}every ${every}:00 for ${Number(times) * Number(every)}:00`,
    ],
    why: 'the number may be minutes or times',
    told: 'missing-unit',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}e(?:very\\s+)?(\\d+)\\s*(?:s|secs?|seconds?)\\s*[x×]\\s*(\\d{1,2})`),
    writes: [
      ([letter, seconds, times]: Groups) =>
        `${bare(letter)}every ${clockOf(`${seconds} s`)} for ${clockOf(`${Number(seconds) * Number(times)} s`)}`,
    ],
    why: 'the whole time stands behind for',
  },
  {
    within: TRAINING,
    pattern: of(
      `${LETTER}(?:amrap\\s*(?:in|of|for|-|–|:)?\\s*(\\d{1,2})\\s*(?:['’′]|min(?:ute)?s?)|(\\d{1,2})\\s*(?:['’′-]|min(?:ute)?s?)?[\\s-]*amrap)`,
    ),
    writes: [([letter, a, b]: Groups) => `${bare(letter)}amrap ${a || b}:00`],
    why: 'the time stands behind the word',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}(?:amrap\\s*(?:in|of|for|-|–)\\s*(\\d{1,2}:\\d\\d)|(\\d{1,2}:\\d\\d)[\\s-]*amrap)`),
    writes: [([letter, a, b]: Groups) => `${bare(letter)}amrap ${a || b}`],
    why: 'the time stands behind the word',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}amrap\\s*(\\d{1,2})`),
    writes: [([letter, minutes]: Groups) => `${bare(letter)}amrap ${minutes}:00`],
    why: 'a time has its unit',
    told: 'missing-unit',
  },
  {
    within: TRAINING,
    pattern: of(
      `${LETTER}intervals\\s+(${SPAN})\\s*(?:on)?\\s*[/,+]?\\s*(${SPAN})\\s*(?:off|rest)?(?:\\s*,?\\s*[x×]\\s*(\\d{1,2}))?`,
    ),
    writes: [
      ([letter, on, off, times]: Groups) => {
        const [work, rest] = [clockOf(on!), clockOf(off!)];
        if (times === '') return `${bare(letter)}intervals ${work} on, ${rest} off`;
        return `${bare(letter)}intervals ${work} on, ${rest} off, ${times} rounds`;
      },
    ],
    why: 'work and rest stand apart',
  },
  {
    within: TRAINING,
    pattern: of(
      `${LETTER}intervals\\s+(\\d{1,2})\\s*[x×]\\s*(${SPAN})\\s*(?:on)?\\s*[/,+]?\\s*(${SPAN})\\s*(?:off|rest)?`,
    ),
    writes: [
      ([letter, times, on, off]: Groups) =>
        `${bare(letter)}intervals ${clockOf(on!)} on, ${clockOf(off!)} off, ${times} rounds`,
    ],
    why: 'work and rest stand apart',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}(\\d{1,2})\\s*${ROUND_WORDS}(?:\\s+of)?\\s*:?`),
    writes: ['circuit', 'superset', 'for time'].map(
      (kind) =>
        ([letter, rounds]: Groups) =>
          `${bare(letter)}${kind}, ${rounds} rounds`,
    ),
    why: 'a block says how it is done',
    told: 'stray-line',
  },
  {
    within: TRAINING,
    pattern: of(`${LETTER}tabata`),
    writes: [([letter]: Groups) => `${bare(letter)}intervals 0:20 on, 0:10 off, 8 rounds`],
    why: 'the times and rounds are written',
    told: 'stray-line',
  },
  {
    within: TRAINING,
    pattern: of(
      `${LETTER}(${KIND}\\b.*?,?\\s+)(two|three|four|five|six|seven|eight|nine|ten)\\s+rounds\\b(.*)`,
    ),
    writes: [
      ([letter, head, word, rest]: Groups) =>
        `${bare(letter)}${head}${NUMBER_WORDS.indexOf(word!.toLowerCase()) + 2} rounds${rest}`,
    ],
    why: 'a number stands in digits',
  },
  {
    within: TRAINING,
    pattern: of(
      `(warm|cool)[\\s-]*(up|down)\\s*[:–—,-]\\s*(?!(?:\\d+\\s*rounds?|rest|cap|alternating)\\b)(\\S.*)`,
    ),
    writes: [([word, , what]: Groups) => `${/^w/i.test(word!) ? 'warmup' : 'cooldown'}\n> ${what}`],
    why: 'what was done stands on lines of its own, as a movement or as a note',
  },
  {
    within: TRAINING,
    pattern: of(
      `(main(?:\\s+(?:work|sets?|lifts?|part))?|strength|power|finisher|accessor(?:y|ies)|assistance|conditioning|core|mobility|cardio)\\s*:?`,
    ),
    writes: ['straight', '# $1'],
    why: 'a block says how it is done, and a heading of your own is a comment',
    told: 'stray-line',
  },
  {
    within: TRAINING,
    pattern: of(`done${GAP}(\\d+)\\s*(?:/|out\\s+of|of)\\s*(\\d+)(?:\\s*(?:rounds?|rds?))?`),
    writes: [
      // As it should be, this is no slip.
      ([done, all]: Groups) => `done ${done} of ${all} rounds`,
    ],
    why: 'done says how many of how many',
  },
  {
    within: TRAINING,
    pattern: of(`done${GAP}(\\d{1,2})(?:\\s*\\+\\s*(\\d+)(?:\\s*reps?)?)?`),
    writes: [
      ([done, more]: Groups) =>
        `done ${done} ${done === '1' ? 'round' : 'rounds'}${more === '' ? '' : ` + ${more}`}`,
    ],
    why: 'done says of what',
  },
  {
    within: TRAINING,
    pattern: of(`done${GAP}(\\d+:\\d\\d(?::\\d\\d)?)`),
    writes: ['done in $1'],
    why: 'the word in stands before a time',
  },
  {
    within: TRAINING,
    pattern: of(`done${GAP}\\d+\\s*reps?`),
    writes: [],
    why: 'Write whole rounds, and what was done of the next behind a plus, such as done 4 rounds + 7',
    told: 'missing-value',
  },
  {
    within: TRAINING,
    pattern: of(`(time|rest)${GAP}((?:\\d+:\\d\\d|\\?)(?:(?:\\s+|${JOIN})(?:\\d+:\\d\\d|\\?))+)`),
    writes: [([word, times]: Groups) => `${word} ${joinByCommas(times!, /[\s;/&+]+|and/i)}`],
    why: 'a comma stands between the rounds',
  },
  {
    within: TRAINING,
    pattern: of(`(time|rest)${GAP}(.*\\d\\s*(?:['’′]|["”″]).*)`),
    writes: [([word, times]: Groups) => `${word} ${writeMarks(times!)}`],
    why: 'minutes and seconds stand on both sides of a colon',
  },
  {
    within: TRAINING,
    pattern: of(`time${GAP}((?:[1-9][0-5]\\d|\\?)(?:\\s*,\\s*(?:[1-9][0-5]\\d|\\?))+)`),
    writes: [
      ([times]: Groups) => `time ${times!.replace(/\d+/g, '$& s')}`,
      ([times]: Groups) => `time ${times!.replace(/(\d)(\d\d)/g, '$1:$2')}`,
    ],
    why: 'these may be seconds, or minutes and seconds without their colon',
    told: 'missing-unit',
  },
  {
    within: TRAINING,
    pattern: of(`time${GAP}((?:\\d{1,3}|\\?)(?:\\s*,\\s*(?:\\d{1,3}|\\?))+)`),
    writes: [([times]: Groups) => `time ${times!.replace(/\d+/g, '$& s')}`],
    why: 'each time has its unit or its colon',
    told: 'missing-unit',
  },
  {
    within: TRAINING,
    pattern: of(`time${GAP}(\\d{1,2}[.]\\d\\d(?:\\s*,\\s*(?:\\d{1,2}[.]\\d\\d|\\?))*)`),
    writes: [
      ([times]: Groups) => (/\.[6-9]\d/.test(times!) ? undefined : `time ${times!.replaceAll('.', ':')}`),
    ],
    why: 'minutes and seconds stand on both sides of a colon',
    told: 'unclear-time',
  },
];

/** A time stands right behind these, and a comma behind the others. */
function openSettings(kind: string): string {
  return /^(?:amrap|every)$/i.test(kind) ? `${kind} ` : `${kind}, `;
}

/** The letter alone: `A) ` → `A `. */
function bare(letter = ''): string {
  const [found] = /[a-z]/i.exec(letter) ?? [];
  return found === undefined ? '' : `${found} `;
}

/** `20s` → `0:20`, `1 min` → `1:00`; a clock time stays. */
function clockOf(span: string): string {
  if (span.includes(':')) return span;
  const value = Number.parseFloat(span);
  const seconds = Math.round(/s/i.test(span) ? value : /h/i.test(span) ? value * 3600 : value * 60);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/** `2'20"` → `2:20`, `90"` → `90 s`, `2'` → `2 min`. */
function writeMarks(times: string): string {
  return times
    .replace(/(\d+)\s*['’′]\s*([0-5]\d)\s*(?:["”″]|'')?/g, '$1:$2')
    .replace(/(\d+)\s*(?:["”″]|'')/g, '$1 s')
    .replace(/(\d+)\s*['’′]/g, '$1 min');
}
