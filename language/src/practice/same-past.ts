import type { SessionRecord } from './athlete.ts';
import type { Practice } from './practice.ts';

/** Days from a session to the last one of its week, at most. */
const REST_OF_WEEK = 6;

/**
 * Whether the sessions up to the end of some records' weeks are all what they were at an edition of the practice: then
 * whatever rests on them and on definitions is the same too.
 */
export function isSamePast(practice: Practice, records: readonly SessionRecord[], edition: number): boolean {
  return !records.some(({ athlete, day }) => practice.hasChangedSince(edition, athlete, day + REST_OF_WEEK));
}
