import fc, { type Arbitrary } from 'fast-check';
import type { Block, Done, RestBetween } from '../../../../language/src/model/entry.ts';
import { restStep, roundStep } from './modifiers.ts';
import { movementLine } from './movement-lines.ts';
import { few, maybe, NOWHERE, notes } from './names.ts';
import { quantity, seconds, secondsRange, whole } from './quantities.ts';

const span = fc.constant(NOWHERE);
const letter = fc.constantFrom('A', 'B', 'C', 'Z');
const labelOf = (letter: string): Arbitrary<string> => whole(1, 12).map((number) => `${letter}${number}`);
/** In a block with a letter, a label of another letter would begin a block of its own. */
const labelWithin = (block: string | undefined): Arbitrary<string | undefined> =>
  fc.oneof(
    { weight: 3, arbitrary: fc.constant(undefined) },
    (block ? fc.constant(block) : letter).chain(labelOf),
  );

const roundTime = fc.oneof({ weight: 4, arbitrary: seconds }, fc.constant(undefined));

const done: Arbitrary<Done> = fc.oneof(
  seconds.map((seconds) => ({ seconds, plus: [], span: NOWHERE })),
  fc.record({ rounds: whole(0, 20), of: maybe(whole(20, 40)), plus: few(quantity), span }),
);

const recorded = {
  times: few(fc.array(roundTime, { minLength: 1, maxLength: 3 })),
  restsTaken: fc.oneof(
    { weight: 3, arbitrary: fc.constant([]) },
    fc.array(roundTime, { minLength: 2, maxLength: 4 }),
    fc.constant([undefined]),
  ),
  restSteps: few(restStep),
  done: maybe(done),
  notes,
};

/** Rests between lines stand at places that exist, in order. */
const restsBetween = (first: number, lines: number): Arbitrary<RestBetween[]> =>
  few(
    fc
      .tuple(whole(first, Math.max(first, lines - 1)), secondsRange)
      .map(([after, { low, high }]) => ({ after, seconds: low, high, span: NOWHERE })),
  ).map((rests) => rests.toSorted((one, other) => one.after - other.after));

type Header = Pick<Block, 'kind' | 'every' | 'window' | 'intervals' | 'rounds'>;

const intervals = fc.oneof(
  fc.record({ on: maybe(seconds), off: maybe(seconds) }),
  fc.record({ count: whole(1, 20), work: maybe(quantity), off: maybe(seconds) }),
);

const header: Arbitrary<Header> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      kind: fc.constantFrom('straight', 'circuit', 'superset', 'giant set', 'for time', 'warmup', 'cooldown'),
    } as const),
  },
  fc.record({
    kind: fc.constant('every' as const),
    every: maybe(fc.record({ interval: seconds, total: maybe(seconds) })),
  }),
  fc.record({ kind: fc.constant('amrap' as const), window: maybe(seconds) }),
  intervals.map((intervals) => ({
    kind: 'intervals' as const,
    intervals,
    ...('count' in intervals && { rounds: intervals.count }),
  })),
);

const options = fc.record({
  rounds: maybe(whole(1, 12)),
  passes: fc.constantFrom(1, 1, 1, 2, 3),
  roundStep: maybe(roundStep),
  rest: maybe(secondsRange),
  cap: maybe(seconds),
  alternating: fc.boolean(),
  off: fc.oneof({ weight: 9, arbitrary: fc.constant(undefined) }, seconds),
});

const headedBlock: Arbitrary<Block> = maybe(letter).chain((letter) =>
  fc
    .tuple(
      header,
      options,
      fc.array(movementLine(labelWithin(letter)), { maxLength: 3 }),
      fc.record(recorded),
    )
    .chain(([header, { rounds = header.rounds, off, roundStep, ...options }, lines, recorded]) =>
      restsBetween(-1, lines.length).map((restsBetween) => ({
        ...header,
        ...options,
        // Passes and a step are written behind rounds only.
        ...(rounds === undefined ? { passes: 1 } : { rounds, ...(roundStep && { roundStep }) }),
        // A stray `0:20 off` is kept by any block.
        ...(off !== undefined && { intervals: { ...header.intervals, off } }),
        ...(letter && { letter }),
        implicit: false,
        lines,
        restsBetween,
        ...recorded,
        span: NOWHERE,
        lastLine: 0,
      })),
    ),
);

/** A block without a header: plain lines, or lines labelled `A1`, `A2`. Only the first in its place may begin with a rest. */
const implicitBlock = (letter: string | undefined, first: boolean): Arbitrary<Block> =>
  fc
    .tuple(
      fc.array(movementLine(letter === undefined ? fc.constant(undefined) : labelOf(letter)), {
        minLength: 1,
        maxLength: 3,
      }),
      fc.record(recorded),
    )
    .chain(([lines, recorded]) =>
      restsBetween(first && letter === undefined ? -1 : 0, lines.length).map((restsBetween) => {
        const { times, restsTaken, restSteps, done } = recorded;
        const properties = [...restsBetween, ...times, ...restsTaken, ...restSteps, ...(done ? [done] : [])];
        return {
          kind: letter === undefined ? ('straight' as const) : ('superset' as const),
          implicit: true,
          ...(letter !== undefined && { letter }),
          passes: 1,
          alternating: false,
          lines,
          restsBetween,
          ...recorded,
          // A note below a movement is the movement's.
          notes: properties.length > 0 ? recorded.notes : [],
          span: NOWHERE,
          lastLine: 0,
        };
      }),
    );

type Draft = Block | { readonly letter: string | undefined };

/** Leaves out a block without a header where its lines would be more of the block before it. */
function keepSeparate(drafts: readonly Draft[]): Draft[] {
  const kept: Draft[] = [];
  for (const draft of drafts) if (isSeparate(draft, kept.at(-1))) kept.push(draft);
  return kept;
}

function isSeparate(draft: Draft, previous: Draft | undefined): boolean {
  if ('kind' in draft || !previous) return true;
  if (!('kind' in previous)) return draft.letter !== previous.letter;
  return draft.letter !== undefined && previous.letter !== undefined && draft.letter !== previous.letter;
}

const unheaded = fc.constantFrom({ letter: undefined }, { letter: 'A' }, { letter: 'B' });

/** Blocks with and without headers. */
export const blocks: Arbitrary<Block[]> = fc
  .array(fc.oneof<Arbitrary<Draft>[]>(headedBlock, unheaded), { maxLength: 5 })
  .map(keepSeparate)
  .chain((drafts) =>
    fc.tuple(
      ...drafts.map((draft, index) =>
        'kind' in draft ? fc.constant(draft) : implicitBlock(draft.letter, index === 0),
      ),
    ),
  );
