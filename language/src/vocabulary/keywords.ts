/** What the words at the beginning of a line open, and how the rest of such a line is read. Words are lower case. */

export const HEADER_WORDS = ['units', 'exercise', 'place', 'athlete', 'plan', 'session'] as const;
export type HeaderWord = (typeof HEADER_WORDS)[number];

/** Kinds of entry that a line can be in; `unknown` also stands for lines before the first header. */
export type LineContext = HeaderWord | 'unknown';

/**
 * How what follows a property's word is cut:
 * - `items`: numbers, units and words of the notation
 * - `item`: the same, where no comma separates, so that one within a number is a decimal comma
 * - `text`: free text to the end of the line, `#` included
 * - `name`, `names`: one name, or several between commas
 * - `shared names`: names between commas, each of which a share such as `1/2` may close
 * - `items, text`: items up to the first comma, free text after it
 * - `number text`: a number, then free text up to a comma
 * - `number name`: a number, then a name
 * - `word name`: one word, then a name
 * - `name number`: a name up to the first digit, then items
 * - `name: items`: a name up to its colon, then items
 * - `name: item`: a name up to its colon, then as `item`
 * - `name until`: a name up to `until` or a comma, then as `items, text`
 */
export type PropertyShape =
  | 'items'
  | 'item'
  | 'text'
  | 'name'
  | 'names'
  | 'shared names'
  | 'items, text'
  | 'number text'
  | 'number name'
  | 'word name'
  | 'name number'
  | 'name: items'
  | 'name: item'
  | 'name until';

type Properties = Readonly<Record<string, PropertyShape>>;

const BLOCK_PROPERTIES: Properties = { time: 'items', done: 'items', rest: 'items' };

const SESSION_PROPERTIES: Properties = {
  effort: 'item',
  lasted: 'item',
  bodyweight: 'item',
  sleep: 'item',
  readiness: 'item',
  pain: 'number text',
  missed: 'items, text',
  ...BLOCK_PROPERTIES,
};

const PLAN_PROPERTIES: Properties = {
  for: 'name',
  at: 'name',
  starts: 'items',
  follows: 'name',
  weeks: 'items',
  deload: 'items',
  days: 'items',
  day: 'number name',
  training: 'items',
  ...BLOCK_PROPERTIES,
};

export const PROPERTIES: Readonly<Record<LineContext, Properties>> = {
  units: {},
  exercise: {
    pattern: 'name',
    work: 'name',
    position: 'name',
    trunk: 'word name',
    muscles: 'shared names',
    needs: 'names',
    each: 'items',
    bodyweight: 'items, text',
    counts: 'items',
    also: 'names',
    easier: 'names',
    harder: 'names',
    setup: 'text',
    cue: 'text',
    caution: 'text',
  },
  place: {
    bars: 'items',
    plates: 'items',
    collars: 'item',
    dumbbells: 'items',
    kettlebells: 'items',
    stacks: 'name number',
    has: 'names',
  },
  athlete: {
    born: 'items',
    sex: 'items',
    units: 'items',
    bodyweight: 'item',
    max: 'name: item',
    goal: 'name: items',
    retest: 'name: items',
    avoid: 'name until',
    away: 'items, text',
    screened: 'items, text',
  },
  plan: PLAN_PROPERTIES,
  session: SESSION_PROPERTIES,
  unknown: { ...PLAN_PROPERTIES, ...SESSION_PROPERTIES },
};

/** Properties of training that a number or "?" follows: before a capital the word begins a movement (Bodyweight Squat). */
export const NUMBER_PROPERTIES: ReadonlySet<string> = new Set([
  'effort',
  'lasted',
  'bodyweight',
  'sleep',
  'readiness',
  'pain',
  'time',
  'rest',
  'weeks',
]);

/** Contexts whose lines are movements, blocks and properties of training. */
export const TRAINING_CONTEXTS: ReadonlySet<LineContext> = new Set(['session', 'plan', 'unknown']);

export const BLOCK_WORDS = [
  'straight',
  'circuit',
  'superset',
  'giant',
  'every',
  'amrap',
  'intervals',
  'warmup',
  'cooldown',
] as const;

/** Every word that may open a line somewhere: a line that begins with one is never taken for a mistyped header. */
export const LINE_WORDS: ReadonlySet<string> = new Set([
  ...HEADER_WORDS,
  ...BLOCK_WORDS,
  ...Object.values(PROPERTIES).flatMap((properties) => Object.keys(properties)),
  'week',
  'test',
]);

/** Words of the notation that no name may be by itself, beside those that open a line. */
const ITEM_WORDS = [
  'tempo',
  'setting',
  'instead',
  'drop',
  'skipped',
  'amrap',
  'bw',
  'pin',
  'band',
  'rpe',
  'rir',
  'rounds',
];

/** Words that are no name by themselves, lower case. */
export const RESERVED_NAMES: ReadonlySet<string> = new Set([...LINE_WORDS, ...ITEM_WORDS]);

/** Words that a name does not begin with: before a movement they say what its sets are for. */
export const NAME_PREFIXES: ReadonlySet<string> = new Set(['warmup', 'warm-up', 'test', 'week']);
