import type { SessionRecord } from './athlete.ts';
import type { Movements } from './change-log.ts';
import type { Practice } from './practice.ts';

/** Days from a session to the last one of its week, at most. */
export const REST_OF_WEEK = 6;

/**
 * Whether the sessions up to some records' days, and so many days behind, are all what they were at an edition of the
 * practice, as far as some movements are concerned: then whatever rests on that and on definitions is the same too.
 */
export function isSamePast(
  practice: Practice,
  records: readonly SessionRecord[],
  edition: number,
  daysBehind = 0,
  movements?: Movements,
): boolean {
  for (const { athlete, day } of records)
    if (practice.hasChangedSince(edition, athlete, day + daysBehind, movements)) return false;
  return true;
}
