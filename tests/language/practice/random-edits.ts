/** A small practice as text, and edits of it as people make them: for properties of whatever is kept between edits. */
import fc, { type Arbitrary } from 'fast-check';

/** Texts of files by URI. */
export type Texts = ReadonlyMap<string, string>;
export type Edit = (texts: Texts) => Texts;

export const DEFINITIONS = 'definitions.plim';
const URIS = ['autumn.plim', 'spring.plim', 'summer.plim', 'winter.plim'];

const OSWIN = 'Oswin Thatcheray';
const BRIALLEN = 'Briallen Quoyle';

/** One of each list stands in the file of definitions; an edit puts another in its place. */
export const DEFINED: readonly (readonly string[])[] = [
  [
    `athlete ${OSWIN}\n  sex male\n  bodyweight 80 kg on 2026-01-02\n  max Bar Press: 100 kg on 2026-01-20\n`,
    `athlete ${OSWIN}\n  sex male\n  bodyweight 80 kg on 2026-01-02\n  max Bar Press: 130 kg on 2026-01-20\n`,
    `athlete ${OSWIN}\n  sex female\n  bodyweight 80 kg on 2026-02-02\n`,
    `# nothing is known of him\n\nathlete ${OSWIN}\n  units lb\n  bodyweight 91 kg on 2026-01-02\n`,
    '',
  ],
  [
    `athlete ${BRIALLEN}\n  bodyweight 61 kg on 2026-01-01\n  away 2026-02-10 to 2026-02-14\n`,
    `athlete ${BRIALLEN}\n  bodyweight 64 kg on 2026-01-01\n  goal Bar Press: 3 @ 90 kg by 2026-04-01\n`,
    '',
  ],
  [
    'exercise Bar Press\n  pattern vertical push\n  muscles front deltoids, triceps 1/2\n  needs barbell\n  also Press\n',
    'exercise Bar Press\n  pattern vertical push\n  muscles front deltoids\n  needs barbell\n  bodyweight 20%, for this test\n',
    'exercise Press\n  needs cable stack\n  also Bar Press\n',
    '',
  ],
  [
    'exercise Shelf Pull\n  pattern vertical pull\n  muscles lats, biceps 1/2\n  bodyweight 95%, for this test\n',
    'exercise Shelf Pull\n  pattern vertical pull\n  muscles lats\n  bodyweight 60%, for this test\n  also Sack Heave\n',
    '',
  ],
  [
    'exercise Crate Row\n  needs kettlebell\n  bodyweight 30%, for this test\n  also Sack Heave\n',
    'exercise Sack Heave\n  needs kettlebell\n  also Crate Row, Press\n',
    'exercise Sack Heave\n  needs dumbbell\n  bodyweight 40%, for this test\n  also Shelf Pull\n',
    '',
  ],
  ['place Gantry Loft\n  bars 20 kg\n  plates 4x20, 2x10, 4x5, 4x2.5 kg\n', ''],
  [
    `plan Slow Tide\n  for ${OSWIN}\n  starts 2026-02-02\n  weeks 3\n  deload week 3, sets 50%\n  day 1\n    A straight\n      Bar Press: 3x5 @ 80%, +2.5 kg each week\n`,
    `plan Slow Tide\n  for ${OSWIN}\n  starts 2026-02-02\n  weeks 3\n  day 1\n    Bar Press: 3x5 @ 75%\n    Shelf Pull: 3x8\n`,
    `plan Slow Tide\n  for ${OSWIN}\n  starts 2026-01-12\n  weeks 4\n  day 1\n    B circuit, 3 rounds, rest 1:00\n      Push-up: 12\n      Shelf Pull: 8\n    Bar Press: 3x5 @ 60% of Back Squat\n`,
    '',
  ],
];

const LINES = [
  'Bar Press: 5, 5, 5 @ 80 kg rpe 8',
  'Bar Press: 3x5 @ 82.5 kg',
  'Press: 3 @ 90 kg rpe 9',
  'bar-press: 1 @ 100 kg, 0 of 1 @ 105 kg',
  'test Bar Press: 1 @ 97.5 kg',
  'warmup Bar Press: 5 @ 40 kg',
  'Bar Press: 5 @ 70 kg rpe 8, tempo 3-1-X-1',
  'Shelf Pull: 8, 7, 6',
  'Shelf Pull: 5 @ bw+10 kg rpe 9',
  'Shelf Pull: 6 @ bw-10 kg',
  'shelf pull: 3x6 rir 2',
  'Sack Heave: 3x8 @ 30 kg',
  'Sack-Heave: 8 @ 32 kg rpe 7',
  'Push-up: 12, 11, 10',
  'Push-up: 3x15 rpe 9',
  'Back Squat: 3x3 @ 120 kg rpe 8, pain 3 left knee',
  'Back Squat: 5 @ 110 kg | 5 @ 60 kg',
  'Goblet Squat: 10 @ 20 kg, instead of Back Squat',
  'Back Squat: 3x5 @ 100 kg, instead of Bar Press',
  'Dumbbell Curl: 10 @ 2x12 kg drop 8 @ 2x8 kg',
  'Leg Extension: 12 @ 45 kg rpe 9',
  'Plank: 45 s, 1:10',
  'Farmer Carry: 40 m @ 2x24 kg',
  'Bar Press: 5 @ ?',
  'Bar Press: skipped',
  'Bar Press 5 @ 80',
];
const BLOCKS = [
  'A straight',
  'B circuit, 3 rounds, rest 1:00',
  'C amrap 8:00',
  'B superset, 3 rounds',
  'D for time',
];
const FACTS = [
  'effort 7',
  'lasted 50 min',
  'bodyweight 79.5 kg',
  'bodyweight 80 kg',
  'bodyweight 62 kg',
  'missed, ferry did not sail',
  '  time 1:40, 1:45, 1:50',
  '  time 1:42, ?, 1:48',
  '  done 4 rounds + 5',
  '  done in 9:48',
  '# one thing to remember',
  '',
  '> The door stuck.',
];

const line = fc.constantFrom(...LINES.map((text) => `    ${text}`));
const block = fc
  .tuple(
    fc.constantFrom(...BLOCKS),
    fc.array(line, { minLength: 1, maxLength: 3 }),
    fc.constantFrom(...FACTS),
  )
  .map(([head, lines, fact]) => [`  ${head}`, ...lines, `  ${fact}`].join('\n'));

/** Few days, so that sessions share days and weeks, and movements come again. */
const date = fc
  .integer({ min: 0, max: 55 })
  .map((day) => new Date(Date.UTC(2026, 0, 12 + day)).toISOString().slice(0, 10));
const head = fc
  .tuple(
    date,
    fc.constantFrom('', '', ' 07:10', ' 18:00'),
    fc.constantFrom(` ${OSWIN}`, ` ${OSWIN}`, ` ${BRIALLEN}`, '', ` ${OSWIN} | ${BRIALLEN}`),
    fc.constantFrom('', '', ' at Gantry Loft'),
    fc.constantFrom('', '', ', Slow Tide week 1 day 1', ', Slow Tide week 3'),
  )
  .map(([day, clock, who, place, plan]) => `session ${day}${clock}${who}${place}${plan}`);

const session: Arbitrary<string> = fc
  .tuple(head, fc.array(line, { maxLength: 3 }), fc.array(block, { maxLength: 2 }), fc.constantFrom(...FACTS))
  .map(([first, lines, blocks, fact]) => `${[first, ...lines, ...blocks, `  ${fact}`].join('\n')}\n`);

const definitions = fc
  .tuple(...DEFINED.map((choices) => fc.constantFrom(...choices)))
  .map((chosen) => chosen.join('\n'));
const log = fc.array(session, { maxLength: 5 }).map((sessions) => sessions.join('\n'));

export const practice: Arbitrary<Texts> = fc
  .tuple(definitions, ...URIS.map(() => log))
  .map(
    ([defined, ...logs]) =>
      new Map([[DEFINITIONS, defined], ...logs.map((text, index) => [URIS[index]!, text] as const)]),
  );

/** Chosen among whatever is there when the edit is made. */
const somewhere = fc.nat({ max: 10_000 });
const anyUri = fc.constantFrom(DEFINITIONS, ...URIS, ...URIS);

function changeLines(change: (lines: string[], at: number) => void): Arbitrary<Edit> {
  return fc.tuple(anyUri, somewhere).map(([uri, where]) => (texts) => {
    const text = texts.get(uri);
    if (text === undefined) return texts;
    const lines = text.split('\n');
    change(lines, where % lines.length);
    return new Map([...texts, [uri, lines.join('\n')]]);
  });
}

const anyLine = fc.oneof(
  line,
  head,
  fc.constantFrom(...BLOCKS, ...FACTS).map((text) => `  ${text}`),
);

export const edit: Arbitrary<Edit> = fc.oneof(
  // A digit typed into a line, or one in place of another.
  fc.tuple(fc.nat({ max: 9 }), fc.boolean()).chain(([digit, more]) =>
    changeLines((lines, at) => {
      lines[at] = lines[at]!.replace(/\d/, (found) => (more ? `${found}${digit}` : `${digit}`));
    }),
  ),
  anyLine.chain((text) => changeLines((lines, at) => lines.splice(at, 0, text))),
  anyLine.chain((text) => changeLines((lines, at) => lines.splice(at, 1, text))),
  changeLines((lines, at) => lines.splice(at, 1)),
  changeLines((lines) => lines.unshift('')),
  changeLines((lines, at) => lines.splice(at, 0, lines[at]!)),
  // Another definition where one stood.
  fc.tuple(fc.nat({ max: DEFINED.length - 1 }), somewhere).map(([which, where]) => (texts: Texts) => {
    const choices = DEFINED[which]!;
    const text = texts.get(DEFINITIONS) ?? '';
    const stands = choices.find((choice) => choice !== '' && text.includes(choice));
    const next = choices[where % choices.length]!;
    const changed = stands === undefined ? `${text}\n${next}` : text.replace(stands, next);
    return new Map([...texts, [DEFINITIONS, changed]]);
  }),
  // A session moves from one file to another.
  fc
    .tuple(fc.constantFrom(...URIS), fc.constantFrom(...URIS), somewhere)
    .map(([from, to, where]) => (texts: Texts) => {
      const entries = (texts.get(from) ?? '').split(/^(?=session )/m);
      const [moved] = entries.splice(where % entries.length, 1);
      const left = new Map([...texts, [from, entries.join('')]]);
      return left.set(to, `${left.get(to) ?? ''}\n${moved}`);
    }),
  fc
    .constantFrom(DEFINITIONS, ...URIS)
    .map((uri) => (texts: Texts) => new Map([...texts].filter(([other]) => other !== uri))),
  fc.tuple(fc.constantFrom(...URIS), log).map(
    ([uri, text]) =>
      (texts: Texts) =>
        new Map([...texts, [uri, text]]),
  ),
);
