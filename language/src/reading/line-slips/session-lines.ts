import { GAP, type Groups, type LineSlip, MASS, NUMBER, of } from './slip.ts';

const SESSION = ['session', 'unknown'] as const;
const TRAINING = ['session', 'plan', 'unknown'] as const;
const ANY = ['session', 'plan', 'unknown', 'exercise', 'place', 'athlete'] as const;
const TIME = String.raw`\d[\d:.]*\s*(?:s|secs?|min(?:ute)?s?|h|hrs?|hours?)?`;
/** Words of a property's own value: what follows them is no remark. */
const VALUE_WORD = '(?:kgs?|kilos?|lbs?|pounds?|h|hrs?|hours?|min(?:ute)?s?|s|secs?|seconds?)';

/** What is missed of a session that did happen. */
const PART_MISSED =
  '(?=[^,|]*\\b(?:reps?|sets?|rounds?|lifts?|singles?|doubles?|attempts?|tr(?:y|ies)|first|second|third|last)\\b)';

/** Slips in what a session says of itself, and in lines that any entry may have. */
export const SESSION_SLIPS: readonly LineSlip[] = [
  {
    within: ANY,
    pattern: of(`(?:coach(?:'s)?\\s+)?(?:notes?|comments?|remarks?)\\s*[:=–—-]+\\s*(\\S.*)`),
    writes: ['> $1'],
    unnoticed: true,
    why: 'a note begins with >',
  },
  {
    within: TRAINING,
    pattern: of(`([a-z]\\d{1,2})\\s*:\\s*(\\p{L}[^\\d:,@|]*?)\\s*:\\s*(\\S.*)`),
    writes: ['$1 $2: $3'],
    unnoticed: true,
    why: 'the colon stands behind the name, not behind $1',
  },
  {
    within: TRAINING,
    pattern: of(`([a-z]\\d{1,2})\\s*:\\s*(\\p{L}[^\\d:,@|]*?)[\\s–—-]+(\\d.*)`),
    writes: ['$1 $2: $3'],
    unnoticed: true,
    why: 'the colon stands behind the name, not behind $1',
  },
  {
    within: TRAINING,
    pattern: of(`((?:[a-z]\\d{1,2}\\s+)?)w\\s*/?\\s*u[\\s:–—-]+(\\p{L}[^:,@|]*:.*)`),
    writes: ['$1warmup $2'],
    unnoticed: true,
    why: 'the word is written in full',
  },
  {
    within: TRAINING,
    pattern: of(`(?:(warm)[\\s-]*up|test)\\s*[:–—]\\s*(\\p{L}[^\\d:,@|]*:\\s*[\\d?(].*)`),
    writes: [([warm, movement]: Groups) => `${warm === '' ? 'test' : 'warmup'} ${movement}`],
    unnoticed: true,
    exact: true,
    why: 'nothing stands between the word and the name',
  },
  {
    within: TRAINING,
    pattern: of(`(?:[-*•·–—]|\\d{1,2}[.)])\\s+([^:,@|]*\\p{L}[^:,@|]*:.*)`),
    writes: ['$1'],
    unnoticed: true,
    why: 'nothing stands before the name',
  },
  {
    within: SESSION,
    pattern: of(`effort${GAP}(?:rpe\\s*)?(${NUMBER}|\\?)\\s*(?:/|out\\s+of|of)\\s*10`),
    writes: ['effort $1'],
    why: 'effort is a number from 0 to 10',
  },
  {
    within: SESSION,
    pattern: of(
      `(?:effort${GAP}rpe|s\\s*-?\\s*rpe|session[\\s-]+rpe|overall\\s+rpe)${GAP}(${NUMBER})(?:\\s*/\\s*10)?`,
    ),
    writes: ['effort $1'],
    why: 'how hard a whole session was is its effort',
  },
  {
    within: SESSION,
    pattern: of(`effort${GAP}(\\d+)\\s*(?:[-–—/]|to|or)\\s*(\\d+)`),
    writes: ['effort $1', 'effort $2'],
    why: 'effort is one number from 0 to 10',
    told: 'syntax',
  },
  {
    within: SESSION,
    pattern: of(`rpe\\s*[:=@]?\\s*(${NUMBER})(?:\\s*/\\s*10)?`),
    writes: ['effort $1'],
    unnoticed: true,
    why: "that is the whole session's; a set's rating stands behind its load, such as 5 @ 60 kg rpe $1",
    told: 'stray-line',
  },
  {
    within: TRAINING,
    pattern: of(
      `(rir|hr|heart\\s+rate|bpm|pulse|drop|instead(?=\\s+of\\s)|then)\\b\\s*(?:(?:avg|average|max|peak|of)\\b\\.?)?\\s*(?:[:=@+-]?\\s*\\d.*|(?<=\\sof\\s+)\\S.*)`,
    ),
    writes: [],
    why: '$1 stands behind the set that it belongs to, on the same line, such as 5 @ 60 kg rir 2 or 5:00 hr 132',
    told: 'stray-line',
  },
  {
    within: TRAINING,
    // "Tempo Squat 3x5" is a movement without its colon.
    pattern: of(`(tempo|setting)\\b\\s*[:=]?\\s*((?!.*\\d\\s*(?:[x×]\\s*\\d|@))\\S.*)`),
    writes: [],
    why: '$1 stands behind the sets of its movement, such as 3x5 @ 60 kg, $1 $2',
    told: 'stray-line',
  },
  {
    within: SESSION,
    pattern: of(`readiness${GAP}(${NUMBER})\\s*(?:/|out\\s+of|of)\\s*5`),
    writes: ['readiness $1'],
    why: 'readiness is a number from 1 to 5',
  },
  {
    within: SESSION,
    pattern: of(`readiness${GAP}(${NUMBER})\\s*(?:/|out\\s+of|of)\\s*(?:10|100)\\s*%?`),
    writes: [],
    why: 'Readiness goes from 1 to 5: write which of these it is',
    told: 'out-of-range',
  },
  {
    within: SESSION,
    pattern: of(`pain${GAP}(\\d+)\\s*(?:/|out\\s+of|of)\\s*10[\\s,]*(.*)`),
    writes: ['pain $1 $2'],
    unnoticed: true,
    why: 'pain is a number from 0 to 10, then where',
  },
  {
    within: SESSION,
    pattern: of(`pain${GAP}(\\d+)\\s*(?:/|out\\s+of|of)\\s*(?!10\\b)\\d.*`),
    writes: [],
    unnoticed: true,
    why: 'Pain goes from 0 to 10: write which of these it is, then where',
    told: 'out-of-range',
  },
  {
    within: SESSION,
    pattern: of(`pain${GAP}(?!free\\b)(\\p{L}[\\p{L}\\s]*?)[\\s,:]+(\\d{1,2})(?:\\s*/\\s*10)?`),
    writes: ['pain $2 $1'],
    unnoticed: true,
    why: 'the number from 0 to 10 comes before the place',
  },
  {
    within: SESSION,
    pattern: of(`pain${GAP}(\\d{1,2})\\s*[,:;–—-]+\\s*(\\p{L}.*)`),
    writes: ['pain $1 $2'],
    why: 'nothing stands between the number and the place',
  },
  {
    within: SESSION,
    pattern: of(`(?:no\\s+pain|zero\\s+pain|pain[\\s-]*free|pain${GAP}(?:none|no|nil|-))`),
    writes: ['pain 0'],
    why: 'pain is a number from 0 to 10',
  },
  {
    within: SESSION,
    pattern: of(
      `(?:lasted|took|duration|session\\s+time|total\\s+time|length)${GAP}(?:about|around|approx\\.?|ca\\.?|c\\.|~|≈)\\s*(\\d.*)`,
    ),
    writes: ['lasted $1'],
    why: 'a number is not said to be near',
  },
  {
    within: SESSION,
    pattern: of(`lasted${GAP}(\\d+)\\s*['’′]`),
    writes: ['lasted $1 min'],
    why: 'minutes are written min',
  },
  {
    within: SESSION,
    pattern: of(`(?:took|duration|session\\s+time|total\\s+time|length|lasts?)${GAP}(\\d{1,3})`),
    writes: ['lasted $1 min'],
    unnoticed: true,
    why: 'how long a session took is told by lasted, with its unit',
    told: 'stray-line',
  },
  {
    within: SESSION,
    // "took 5 min rest" says something else.
    pattern: of(
      `(?:took|duration|session\\s+time|total\\s+time|length)${GAP}(\\d[\\d:.,]*(?:\\s*${VALUE_WORD}(?:\\s*\\d+(?:\\s*${VALUE_WORD})?)?)?)`,
    ),
    writes: ['lasted $1'],
    why: 'how long a session took is told by lasted',
  },
  {
    within: SESSION,
    pattern: of(`sleep${GAP}(\\d{1,2}),(\\d|[6-9]\\d)\\s*(?:h|hrs?|hours?)?`),
    writes: ['sleep $1.$2 h'],
    why: 'hours are written with a point and h',
  },
  {
    within: SESSION,
    pattern: of(`sleep${GAP}(\\d{1,2}),([0-5]\\d)\\s*(?:h|hrs?|hours?)?`),
    writes: ['sleep $1:$2', 'sleep $1.$2 h'],
    why: 'hours and minutes have a colon, and a part of an hour a point',
    told: 'unclear-time',
  },
  {
    within: SESSION,
    pattern: of(`sleep${GAP}((?:1[6-9]|2[0-4]):[0-5]\\d)`),
    writes: [],
    unnoticed: true,
    why: '$1 is a time of day: sleep says how long, such as 7:30',
    told: 'unclear-time',
  },
  {
    within: SESSION,
    pattern: of(`(?:slept|sleep)${GAP}(${NUMBER})\\s*(?:[-–—]|to)\\s*(${NUMBER})\\s*(?:h|hrs?|hours?)?`),
    writes: ['sleep $1 h', 'sleep $2 h'],
    why: 'sleep is one number of hours',
    told: 'syntax',
  },
  {
    within: SESSION,
    pattern: of(`slept${GAP}(\\d.*)`),
    writes: ['sleep $1'],
    why: 'the night before is told by sleep',
  },
  {
    within: SESSION,
    pattern: of(
      `(?:body[\\s-]+weight|weighed|weigh(?:ed)?[\\s-]*in|bw|body\\s*mass)${GAP}(${MASS}|${NUMBER})`,
    ),
    writes: [([mass]: Groups) => `bodyweight ${mass!.replace(',', '.')}`],
    why: 'a weigh-in is told by bodyweight',
  },
  {
    // Below a movement it may be what was lifted.
    within: SESSION,
    pattern: of(`(?:weight|mass)${GAP}(${MASS}|${NUMBER})`),
    writes: [([mass]: Groups) => `bodyweight ${mass!.replace(',', '.')}`],
    why: 'a weigh-in is told by bodyweight; a load stands behind the sets, such as 5 @ 60 kg',
    told: 'stray-line',
  },
  {
    within: SESSION,
    pattern: of(
      `(effort|lasted|sleep|readiness|bodyweight)(${GAP})(${TIME}|${MASS}|${NUMBER})\\s*(?:[-–—,;(]|\\s)\\s*\\(?(?!${VALUE_WORD}\\b)(\\p{L}{2}[^|]*?)\\)?`,
    ),
    writes: [
      ([word, gap, value, remark]: Groups) =>
        /^(?:of|out|to|or|per|a|am|pm|rpe)\b/i.test(remark!)
          ? undefined
          : `${word}${gap}${value!.trim()}\n> ${remark}`,
    ],
    why: 'a remark is a note on a line of its own',
  },
  {
    within: SESSION,
    pattern: of(`(sleep|readiness|effort|lasted)${GAP}(\\p{L}[\\p{L}\\s]*)`),
    writes: ['> $1 $2'],
    why: '$1 is a number, and words are a note',
    told: 'syntax',
  },
  {
    within: SESSION,
    pattern: of(
      `missed\\s*(?:[-–—(:]\\s*|because\\s+of\\s+|due\\s+to\\s+|because\\s+)(?!\\d|${PART_MISSED})([\\p{L}\\d][^,|]*?)\\)?`,
    ),
    writes: ['missed, $1'],
    why: 'a comma stands before the reason',
  },
  {
    within: SESSION,
    pattern: of(`missed${GAP}(\\d.*|${PART_MISSED}.*)`),
    writes: ['> missed $1'],
    why: 'missed alone means that the whole session did not happen; of a set write 4 of 5',
  },
  {
    within: SESSION,
    pattern: of(`missed${GAP}([\\p{L}\\d][^,|]*)`),
    writes: ['missed, $1', '> missed $1'],
    why: 'a comma stands before the reason why a whole session did not happen',
    told: 'syntax',
  },
  {
    within: SESSION,
    pattern: of(`(?:skipped|cancell?ed|no[\\s-]+show|did\\s+not\\s+train)(?:\\s*[:,–—(-]\\s*([^)]*?)\\)?)?`),
    writes: [([reason]: Groups) => (reason === '' ? 'missed' : `missed, ${reason}`)],
    unnoticed: true,
    why: 'a planned day that did not happen is told by missed',
    told: 'stray-line',
  },
];
