/** Sessions that hold much the same, and edits of single numbers and names in them: what typing in a log is. */
import fc, { type Arbitrary } from 'fast-check';
import { DEFINED } from './random-edits.ts';

/** What stands in a session where another word may: each list is what may be put there. */
const SLOTS: readonly (readonly string[])[] = [
  ['5', '3', '6'],
  ['80', '85', '90', '95'],
  ['8', '9'],
  ['100', '110', '120'],
  ['Push-up', 'Sack Heave', 'Plank'],
  ['8', '10', '12'],
  ['1:40', '1:45', '1:52'],
  ['Goblet Squat: 10 @ 20 kg', 'Goblet Squat: 8 @ 24 kg', 'Bar Press: 8 @ 60 kg'],
  ['', '', ', instead of Bar Press', ', instead of Back Squat'],
  ['', '', 'bodyweight 79 kg', 'effort 7'],
];

const HEADERS = ['', ', Slow Tide week 1 day 1', ', Slow Tide week 1 day 1', ', Slow Tide week 2 day 1'];

interface Written {
  readonly header: string;
  /** Which of each list. */
  readonly chosen: readonly number[];
}

const somewhere = fc.nat({ max: 100 });
const written: Arbitrary<Written> = fc.record({
  header: fc.constantFrom(...HEADERS),
  chosen: fc.tuple(...SLOTS.map(() => somewhere)),
});

/** `slot` of a session is given another choice. */
export interface Typed {
  readonly session: number;
  readonly slot: number;
  readonly choice: number;
}

export const typing: Arbitrary<readonly Typed[]> = fc.array(
  fc.record({ session: somewhere, slot: fc.nat({ max: SLOTS.length - 1 }), choice: somewhere }),
  { minLength: 8, maxLength: 12 },
);

export const log: Arbitrary<readonly Written[]> = fc.array(written, { minLength: 4, maxLength: 6 });

const PLANS = DEFINED.at(-1)!;
const FOLLOWING = PLANS.filter((plan) => plan.includes('% of '));

/** The definitions that log and plans rest on, with one plan or another; most with that whose loads follow the log. */
export const defined: Arbitrary<string> = fc
  .constantFrom(...PLANS, ...FOLLOWING, ...FOLLOWING, ...FOLLOWING)
  .map((plan) => [...DEFINED.slice(0, -1).map(([first]) => first), plan].join('\n'));

export function type(log: readonly Written[], { session, slot, choice }: Typed): readonly Written[] {
  const at = session % log.length;
  const { header, chosen } = log[at]!;
  return log.with(at, { header, chosen: chosen.with(slot, choice) });
}

/** A session every other day, so that there are several in a week. */
export function print(log: readonly Written[]): string {
  return log.map(({ header, chosen }, index) => printSession(header, chosen, index)).join('\n');
}

function printSession(header: string, chosen: readonly number[], index: number): string {
  const day = new Date(Date.UTC(2026, 1, 2 + 2 * index)).toISOString().slice(0, 10);
  const [reps, load, effort, squat, movement, count, time, more, instead, fact] = SLOTS.map(
    (choices, slot) => choices[chosen[slot]! % choices.length]!,
  );
  return `session ${day} Oswin Thatcheray${header}
  A straight
    Bar Press: ${reps}, 5 @ ${load} kg rpe ${effort}
    Back Squat: 3x3 @ ${squat} kg rpe 8
  B circuit, 3 rounds, rest 1:00
    ${movement}: ${count}
    Shelf Pull: 8
    time ${time}, 1:50, 1:50
  C straight
    ${more}${instead}
  ${fact}
`;
}
