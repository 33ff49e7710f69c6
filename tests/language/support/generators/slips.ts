import fc, { type Arbitrary } from 'fast-check';

/**
 * Lines that the printer never writes: shorter forms, words whose value is still to come, other spellings, and slips
 * of a coach's hand that the grammar understands well enough to say what was meant. `N` stands for a number.
 */
const split = (lines: string): string[] => lines.trim().split(/ · |\n\s*/);

const EXERCISE = split(`
  pattern · work · position · trunk · trunk resists · muscles · needs · bodyweight · counts · also
  easier · harder · setup · cue · caution · each rep moves both · muscles calves,
  muscles calves, , glutes N/12 · also Marsh Pull, · needs mat, , bench · bodyweight N%, · pattern: hinge
  PATTERN squat # a comment · muscles calves 12/N
`);

const PLACE = split(`
  bars · plates · collars · dumbbells · kettlebells · stacks · has · stacks Cable · stacks N-20 by 5 kg · stacks 10-20 by 5 kg
  bars 20 kg, , 15 · plates 2x20, , N kg · plates N · dumbbells 4-20 by N kg, · dumbbells 4-20 kg
  dumbbells 4-20 by 2 kg, , 22-30 kg pairs · kettlebells N lbs · collars N kilos · collars N · has mat,
`);

const ATHLETE = split(`
  born · sex · units · units lbs · bodyweight · bodyweight 7N kg · bodyweight 7N kg on · max · goal
  max Marsh Pull · max Marsh Pull: N0 kg · max Marsh Pull: N0 kg on · max Marsh Pull:
  max: N0 kg on 2026-09-30 · goal Marsh Pull: · retest · goal Marsh Pull: N @ bw
  goal Marsh Pull: N @ bw by · goal: N · retest Marsh Pull: N0 kg on · retest: N0 kg on 2026-09-30
  retest Marsh Pull: on 2026-09-30 · retest Marsh Pull: N0 kg, , 90 · avoid · avoid Marsh Pull until
  avoid until 2026-12-01 · avoid Marsh Pull, · away · away 2026-12-01 · away 2026-12-01 to
  away 2026-12-01 to 2026-12-09, · away, at sea · screened · screened 2026-10-0N, · screened, by the nurse
  bodyweight 7N kg on 17.11.2026 · max Marsh Pull: N0 kg on 2026-9-3
`);

const SETS = split(`
  Marsh Pull: · Marsh Pull: N @ · Marsh Pull: N, · Marsh Pull: N, , N @ 60 kg · Marsh Pull: N | · : N
  Marsh Pull: | N · Marsh Pull: N | N, · Marsh Pull: N | , , rest N0 s · Marsh Pull: N | N | |
  Marsh Pull: N reps @ 60 kg · Marsh Pull: 1 rep · Marsh Pull: N/N · Marsh Pull: N each
  Marsh Pull: N/leg · Marsh Pull: 100 kg x N · Marsh Pull: 100 kg · Marsh Pull: 21-15-9
  Marsh Pull: 5 @ 225 lbs · 225x5: 5 · Marsh Pull: 225x5 · Marsh Pull: 5 @ 8 · Marsh Pull: 5 @ 60
  Marsh Pull: 5 @ 22,5 kg · Marsh Pull: 10/8 · Marsh Pull: 5 @ pin N · Marsh Pull: 5 @ 60 kg rpe
  Marsh Pull: 5 hr · Marsh Pull: 5 v · Marsh Pull: N in · Marsh Pull: N @ 60 kg drop
  Marsh Pull: N @ 60 kg drop N · Marsh Pull: N @ 60 kg drop @ 50 kg · Marsh Pull: N @ 60 kg drop N @
  Marsh Pull: (N/side+N) · Marsh Pull: (2xN s/side rest 5 s) · Marsh Pull: 400 m in 58.3 s
  Marsh Pull: N @ 60 + very thick black band · Marsh Pull: N @ bw-very thick band
  Marsh Pull: N @ very thick black band · Marsh Pull: N @ 2x10 left 12 kg right · Marsh Pull: N @ 3x10 kg
  Marsh Pull: N @ 8 mi/h · Marsh Pull: N @ 3 m/s · Marsh Pull: N @ 80% + 10 kg chain
  Marsh Pull: N @ 50-60% of bw · Marsh Pull: N, tempo · Marsh Pull: N, rest · Marsh Pull: N, setting
  Marsh Pull: N, pain · Marsh Pull: N, pain 3 · Marsh Pull: N, instead of
  Marsh Pull: N, after 1 miss -10% · Marsh Pull: N, after 2 misses -10 · Marsh Pull: N, +2
  Marsh Pull: N, then +1 rep from 8 reps · Marsh Pull: N, +2 reps from 1 rep · Marsh Pull: N, +N sets
  Marsh Pull: N; N · Marsh Pull: N, quite heavy · Marsh Pull: N, heavy · Marsh Pull: N, ~
  Marsh Pull: N, rest N · Marsh Pull: N, rest N m · Marsh Pull: N, rest 90 secs
  Marsh Pull: N s, +0:05 each week to 1:15 · Marsh Pull: N, rest -0:05 each week to 1:15
  Marsh Pull: N, rest 1.1 h · warm-up Marsh Pull: N · test warmup Marsh Pull: N · a1. Marsh Pull: N
  A1 A2 Marsh Pull: N · week 2 week 3 Marsh Pull: N · Marsh Pull: 3x skipped · Marsh Pull: 3xskipped
  Marsh Pull: 3 x amrap · Marsh Pull: N left 8 right · Marsh Pull: 30 left 25 s right
  Marsh Pull: 0:30 left 8 right · Marsh Pull:5@60kg · Marsh Pull: N @ 75% of Marsh Pull rpe 8
  Marsh Pull: N @ 75% of Marsh Pull drop (2+2) @ 50 kg · Marsh Pull: 5 @ 60 kg, tempo 3-0-1-0, 5 @ 70 kg
  Marsh Pull: 12-8 · Marsh Pull: 30 s-0:45 · Marsh Pull · > well
`);

const BLOCKS = split(`
  B circuit, 3 rounds, rest 1:30, rest -0:15 each week to 1:00
  circuit N rounds · giant set N rounds · for time N rounds · A straight · B circuit,
  C circuit, , 3 rounds · every · every 1:00 · every 1:00 for · every N min for 1.1 h · amrap
  amrap N min · intervals · intervals N · intervals N x · intervals N x 500 m on
  intervals N0 s on, 20 s off · intervals N0 sec on · intervals 1:00:00 on · intervals 0:75 on
  circuit, rest · circuit, cap · circuit, rest N · circuit, rest 1:00-1:30 · circuit, very hard
  circuit, 1 round x 1 pass · circuit, 3 rounds x 2 passes · D circuit: 4 rounds · warm-up
  cool-down, N rounds · time · time 1:0N, · time 1:0N, , ? · time ? | 1:0N | 2:00 · done · done in 9:4N
  done 1 round · done N rounds + 5 + 12 cal · rest · rest ? · rest 1:00, · rest 1:00, , ? · rest 1:00-1:30
  rest -10 · rest -10 s each week · rest 90
`);

const SESSION = split(`
  effort · effort: N · effort N | ? · lasted · lasted 1:05 · lasted 1.1 h · lasted 52 m · bodyweight
  sleep · sleep 7:30 · sleep 6:50:00 · readiness · pain · pain 3 · missed · missed, · missed, ill
  something else
`);

const PLAN = split(`
  for · at · starts · starts 11/17 · follows · weeks · deload · deload week · deload week N
  deload week N, · deload week N, , load 90% · days · days alternate · days Mon, · days Mon, , friday
  day · day Pulling · training max · day 2 Pulling · day 3: Pulling
`);

const HEADERS: readonly (readonly [headers: readonly string[], lines: readonly string[]])[] = [
  [
    ['units', 'units lbs', 'units: kg'],
    ['> noted', 'something else'],
  ],
  [['exercise Marsh Pull', 'exercise', 'exercise: Marsh Pull'], EXERCISE],
  [['place Marsh Hall #2', 'place'], PLACE],
  [['athlete Nessa Quill', 'athlete'], ATHLETE],
  [
    ['plan Slow Tide', 'plan'],
    [...PLAN, ...SETS, ...BLOCKS],
  ],
  [
    [
      ...[
        'session',
        'session 2026-11-17',
        'session 2026-11-17 7:1N Nessa Quill at',
        'session 2026-11-17 Nessa | Bo,',
      ],
      ...[
        'session 17.11.2026 Nessa',
        'session 2026-11-17 Nessa, Slow Tide',
        'session 2026-11-17, Slow Tide week N',
      ],
      ...['session 2026-11-17 at Hall, Slow Tide day N', 'session 2026-2-31'],
    ],
    [...SESSION, ...SETS, ...BLOCKS],
  ],
  [
    ['sesion 2026-11-17', ''],
    [...SESSION, ...PLAN, ...SETS, ...BLOCKS],
  ],
];

const fill = (line: string): Arbitrary<string> =>
  fc.integer({ min: 1, max: 12 }).map((number) => line.replace(/(?<!\p{L})N(?!\p{L})/gu, String(number)));

const PAIRS = HEADERS.flatMap(([headers, lines]) => lines.map((line) => ({ headers, lines, line })));

const join = ([header, ...body]: readonly string[]): string =>
  [...(header ? [header] : []), ...body.map((line) => `  ${line}`)].join('\n');

/** A header, one of its lines, and some more of them; or a header alone. */
export const slip: Arbitrary<string> = fc.constantFrom(...PAIRS).chain(({ headers, lines, line }) => {
  const header = fc.constantFrom(...headers).chain(fill);
  const more = fc.array(fc.constantFrom(...lines).chain(fill), { maxLength: 2 });
  return fc.oneof(
    {
      weight: 15,
      arbitrary: fc
        .tuple(header, fill(line), more)
        .map(([header, line, more]) => join([header, line, ...more])),
    },
    header,
  );
});
