import fc, { type Arbitrary } from 'fast-check';

/** What stands in lines, in places where it may or may not belong. */
const TOKENS =
  `3 5 8 12 0 60 225 1001 2.5 7.5 1:30 12:00 1:75 0:05:00 3-5 21-15-9 22,5 5,5 @ , : | / + - & % ? ( ) x × > # . ' ’
  kg lb KG kgs lbs s sec min h m km yd mi cal cm W w reps rpe rir hr v RPE rpe8 /side side each left right of in bw pin
  band red chain drop amrap skipped tempo 3-1-X-0 31X0 rest setting pain instead warmup warm-up test week A1 a1 A B
  rounds round passes cap on off for every time done effort lasted alternating set giant straight circuit session plan
  at until cool-down knee Row Back Squat 2x18 3x5 4 of 5 75% bw+5 m/s km/h /500 1/2/2026 17.11.2026 2026-11-17 é 深蹲 é`.split(
    /\s+/,
  );
const ODD = [
  '\t',
  '\u00a0',
  '\u200b',
  '\u2013',
  '\u0301',
  '\ufeff',
  '\u0000',
  '\u2028',
  '🏋️',
  '\ud800',
  '  ',
  ' ',
  '',
];

const piece = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...TOKENS) },
  { weight: 2, arbitrary: fc.integer({ min: 0, max: 130 }).map(String) },
  fc.constantFrom(...ODD),
  fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 2 }),
);

type Change = (line: string) => string;

const cut = (line: string): string[] => line.match(/[A-Za-z]+|\d+(?:[.:]\d+)*|\s+|./gu) ?? [''];
const joint = fc.constantFrom('', '', ' ');

/** Words that may stand for one another, so that most of what comes of it is regular still. */
const KIN: readonly (readonly string[])[] = [
  ['s', 'min', 'h', 'm', 'km', 'yd', 'mi', 'cal', 'kg', 'lb', 'cm', 'W', 'rpe 8', 'rir 2'],
  ['rpe', 'rir', 'hr', 'v', 'pain', 'rest', 'tempo', 'drop'],
  ['straight', 'circuit', 'superset', 'amrap', 'every', 'intervals', 'for time', 'giant set'],
  ['rounds', 'round', 'passes', 'min', 'of', 'off'],
  ['rest', 'cap', 'for', 'alternating'],
  ['warmup', 'test', 'A1', 'B2', 'C', 'cooldown'],
  ['effort', 'lasted', 'sleep', 'readiness', 'pain', 'bodyweight', 'time', 'done', 'rest'],
  [',', '|', '+', '/', '&', '-', ':'],
];
const NUMBER = /^\d+(?:[.:]\d+)*$/;
const number = fc.oneof(
  fc.integer({ min: 0, max: 12 }).map(String),
  fc.integer({ min: 0, max: 400 }).map((tenths) => String(tenths / 4)),
  fc.tuple(fc.nat(70), fc.nat(62)).map(([first, second]) => `${first}:${String(second).padStart(2, '0')}`),
);

/** The `at`th of the tokens that fit, changed. */
const changeOne = (line: string, at: number, fits: (token: string) => boolean, to: string): string => {
  const tokens = cut(line);
  const places = tokens.flatMap((token, index) => (fits(token) ? [index] : []));
  return places.length === 0 ? line : tokens.with(places[at % places.length]!, to).join('');
};

const change: Arbitrary<Change> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.tuple(fc.nat(20), number).map(
      ([at, to]): Change =>
        (line) =>
          changeOne(line, at, (token) => NUMBER.test(token), to),
    ),
  },
  {
    weight: 4,
    arbitrary: fc
      .tuple(
        fc.nat(20),
        fc.constantFrom(...KIN).chain((kin) => fc.tuple(fc.constant(kin), fc.constantFrom(...kin))),
      )
      .map(
        ([at, [kin, to]]): Change =>
          (line) =>
            changeOne(line, at, (token) => kin.includes(token), to),
      ),
  },
  // One token for another.
  fc.tuple(fc.nat(40), piece).map(
    ([at, text]): Change =>
      (line) => {
        const tokens = cut(line);
        return tokens.with(at % tokens.length, text).join('');
      },
  ),
  // One more token.
  fc.tuple(fc.nat(40), piece, joint, joint).map(
    ([at, text, before, after]): Change =>
      (line) => {
        const tokens = cut(line);
        return tokens.toSpliced(at % (tokens.length + 1), 0, before + text + after).join('');
      },
  ),
  // One or two less.
  fc.tuple(fc.nat(40), fc.constantFrom(1, 1, 2)).map(
    ([at, count]): Change =>
      (line) => {
        const tokens = cut(line);
        return tokens.toSpliced(at % tokens.length, count).join('');
      },
  ),
  // Two that changed places.
  fc.nat(40).map(
    (at): Change =>
      (line) => {
        const tokens = cut(line);
        const first = at % tokens.length;
        const [one, other] = [tokens[first]!, tokens[(first + 2) % tokens.length]!];
        return tokens
          .with((first + 2) % tokens.length, one)
          .with(first, other)
          .join('');
      },
  ),
  fc.nat(80).map(
    (at): Change =>
      (line) =>
        line.slice(0, at % (line.length + 1)),
  ),
  fc.nat(80).map(
    (at): Change =>
      (line) =>
        line.slice(0, at) + line.slice(at).toUpperCase(),
  ),
  fc.constant((line: string) => `${line}, ${line.replace(/^[^:]*: */, '')}`),
);

/** One change of a line mostly, else two. */
export const damage: Arbitrary<Change> = fc.oneof(
  { weight: 3, arbitrary: change },
  fc.tuple(change, change).map(
    ([one, other]): Change =>
      (line) =>
        other(one(line)),
  ),
);
