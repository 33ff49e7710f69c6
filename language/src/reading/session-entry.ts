import type { SessionEntry } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import type { EntryFrame } from './build-entry.ts';
import type { Training } from './training-fold.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

export type SessionHeader = Pick<SessionEntry, 'date' | 'clock' | 'athletes' | 'place' | 'plan'>;

/**
 * A session of what its header and its lines say. What most sessions have stands in all of them, so that they are
 * objects of one form.
 */
export function makeSession(
  { lineCount, header: span, ignores }: EntryFrame,
  { date, clock, athletes, place, plan }: SessionHeader,
  { session, notes, strays }: Pick<Training, 'session' | 'notes' | 'strays'>,
  blocks: SessionEntry['blocks'],
  problems: readonly Problem[],
): SessionEntry {
  const entry: Mutable<SessionEntry> = {
    kind: 'session',
    lineCount,
    header: span,
    ignores,
    date,
    clock,
    athletes,
    place,
    plan,
    efforts: session.efforts,
    lasted: session.lasted,
    pains: session.pains,
    blocks,
    notes,
    strays,
    problems,
  };
  if (session.bodyweight) entry.bodyweight = session.bodyweight;
  if (session.sleep) entry.sleep = session.sleep;
  if (session.readiness) entry.readiness = session.readiness;
  if (session.missed) entry.missed = session.missed;
  return entry;
}
