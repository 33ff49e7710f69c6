/** Sessions of ordinary training as text, for properties of the sums: every form of set that moves something. */
import fc, { type Arbitrary } from 'fast-check';
import { NAME } from './read-works.ts';

export const DEFINITIONS = `
athlete ${NAME}
  bodyweight 80 kg on 2026-01-01
exercise Bar Press
  pattern vertical push
  muscles front deltoids, triceps 1/2
  needs barbell
exercise Bar Pull
  pattern horizontal pull
  muscles lats, biceps 1/2
  needs barbell
exercise Hand Press
  pattern vertical push
  muscles front deltoids
  each rep moves one
  needs dumbbell
exercise Band Row
  pattern horizontal pull
exercise Side Hop
  work jump
exercise Loft Carry
  work carry
exercise Long Hold
  work hold
`;

/** One line: a name and its sets, with loads in kilograms; `sets` is what stands between the name and the load. */
export interface LineParts {
  readonly name: string;
  readonly sets: readonly SetParts[];
}

export interface SetParts {
  readonly count: number;
  readonly amount: string;
  /** Kilograms, or none for what bears none. */
  readonly load?: { readonly implements: 1 | 2; readonly kilograms: number };
  readonly rating: string;
}

/** Kilograms in quarters, which are whole grams. */
const kilograms = fc.integer({ min: 4, max: 600 }).map((quarters) => quarters / 4);
const reps = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 1, max: 15 }).map(String) },
  fc.integer({ min: 1, max: 12 }).map((value) => `${value}/side`),
  fc
    .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }))
    .map(([a, b]) => `${a} left ${b} right`),
  fc.integer({ min: 1, max: 4 }).map((made) => `${made} of 5`),
  fc.constantFrom('(2+2+2 rest 20 s)', '?'),
);
const rating = fc.oneof(
  { weight: 2, arbitrary: fc.constant('') },
  fc.constantFrom(' rpe 8', ' rir 1', ' rir 6'),
);

const setOf = (
  amount: Arbitrary<string>,
  implementCount: 0 | 1 | 2,
  ratings: Arbitrary<string>,
): Arbitrary<SetParts> =>
  fc.record({
    count: fc.integer({ min: 1, max: 4 }),
    amount,
    load:
      implementCount === 0
        ? fc.constant(undefined)
        : fc.record({ implements: fc.constant(implementCount), kilograms }),
    rating: ratings,
  });

const lineOf = (name: string, set: Arbitrary<SetParts>): Arbitrary<LineParts> =>
  fc.record({ name: fc.constant(name), sets: fc.array(set, { minLength: 1, maxLength: 3 }) });

const none = fc.constant('');

export const line: Arbitrary<LineParts> = fc.oneof(
  lineOf('Bar Press', setOf(reps, 1, rating)),
  lineOf('Bar Pull', setOf(reps, 1, rating)),
  lineOf('Hand Press', setOf(reps, 2, rating)),
  lineOf('Sack Heave', setOf(reps, 1, rating)),
  lineOf('Push-up', setOf(reps, 0, rating)),
  lineOf('Band Row', setOf(reps, 0, rating)),
  lineOf('Side Hop', setOf(fc.constantFrom('6', '4/side'), 0, none)),
  lineOf('Loft Carry', setOf(fc.constantFrom('30 m', '20 m/side'), 1, none)),
  lineOf('Long Hold', setOf(fc.constantFrom('30 s', '20 s/side'), 0, none)),
);

/** A line of a block with rounds: one set, the same each round, or written out for each. */
const roundLine = (count: number) => line.map(({ name, sets }) => ({ name, sets: [{ ...sets[0]!, count }] }));

const rounds = (count: number, ...headers: readonly string[]) =>
  fc.record({
    header: fc.constantFrom(...headers),
    lines: fc.array(roundLine(count), { minLength: 1, maxLength: 3 }),
  });

export interface BlockParts {
  readonly header: string;
  readonly lines: readonly LineParts[];
}

export const block: Arbitrary<BlockParts> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      header: fc.constant('straight'),
      lines: fc.array(line, { minLength: 1, maxLength: 4 }),
    }),
  },
  rounds(
    1,
    'circuit, 3 rounds',
    'superset, 2 rounds',
    'circuit, 2 rounds x 2 passes',
    'warmup',
    'amrap 5:00',
  ),
  rounds(3, 'circuit, 3 rounds', 'giant set, 3 rounds'),
);

export const blocks: Arbitrary<readonly BlockParts[]> = fc.array(block, { minLength: 1, maxLength: 3 });

export function printSet({ count, amount, load, rating }: SetParts, unit: 'kg' | 'lb' = 'kg'): string {
  const mass = load && (unit === 'kg' ? load.kilograms : load.kilograms / 0.45359237);
  const implementText = load?.implements === 2 ? '2x' : '';
  const times = count > 1 ? `${count}x` : '';
  // Six decimals of a pound are finer than the whole grams that are kept.
  return `${times}${amount}${load ? ` @ ${implementText}${Number(mass!.toFixed(6))} ${unit}` : ''}${rating}`;
}

export function printLine({ name, sets }: LineParts, unit: 'kg' | 'lb' = 'kg'): string {
  return `    ${name}: ${sets.map((set) => printSet(set, unit)).join(', ')}\n`;
}

export function printSession(
  parts: readonly BlockParts[],
  unit: 'kg' | 'lb' = 'kg',
  date = '2026-02-02',
): string {
  const text = parts.map(
    ({ header, lines }) => `  ${header}\n${lines.map((each) => printLine(each, unit)).join('')}`,
  );
  return `session ${date} ${NAME}\n${text.join('')}`;
}

export const sessionText: Arbitrary<string> = blocks.map((parts) => printSession(parts));
