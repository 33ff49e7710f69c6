import type { SessionWork } from '../measures/session-work.ts';
import { findBodyShare } from '../measures/set-work.ts';
import type { Block } from '../model/entry.ts';
import type { LensOptions } from './lens.ts';

/** Stands for what rests on files that are not read yet: a number that could be wrong is not shown. */
export const LOADING = 'history loading…';

/**
 * Whether the sums of some of a session's blocks will be the same once all files are read. Until then a movement may
 * still be defined, and where body mass counts, another weigh-in may stand between the last known one and the session.
 */
export function areSumsKnown(
  { record: { entry, groupSize }, context }: SessionWork,
  blocks: readonly Block[],
  { complete }: Pick<LensOptions, 'complete'>,
): boolean {
  if (complete) return true;
  const isWeighed = entry.bodyweight !== undefined && groupSize === 1;
  return blocks.every(({ lines }) =>
    lines.every(({ name }) => {
      const movement = context.findMovement(name.text);
      return movement !== undefined && (isWeighed || findBodyShare({ movement }) === undefined);
    }),
  );
}
