import type { BlockKind } from '../model/entry.ts';

interface BlockTraits {
  /** Done round by round: one written set of a line stands for every round. */
  readonly inRounds: boolean;
  /** Enters working sums, records and estimates. */
  readonly working: boolean;
  /** An unrated strength set in it is taken as a hard one. */
  readonly hardUnrated: boolean;
  /** Fatigue or the clock ends its sets, so that an estimated max from it is a lower bound. */
  readonly endedByClock: boolean;
}

const traits = (
  inRounds: boolean,
  working: boolean,
  hardUnrated: boolean,
  endedByClock: boolean,
): BlockTraits => ({
  inRounds,
  working,
  hardUnrated,
  endedByClock,
});

/** What the kinds of block mean for the sums, in one place. */
export const BLOCK_KINDS: Readonly<Record<BlockKind, BlockTraits>> = {
  //                   rounds working hard  clock
  straight: traits(false, true, true, false),
  superset: traits(true, true, true, false),
  'giant set': traits(true, true, true, false),
  circuit: traits(true, true, true, true),
  every: traits(true, true, false, false),
  amrap: traits(true, true, false, true),
  'for time': traits(true, true, false, true),
  intervals: traits(true, true, false, true),
  warmup: traits(false, false, false, false),
  cooldown: traits(false, false, false, false),
};
