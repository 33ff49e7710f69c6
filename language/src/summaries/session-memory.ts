import type { SessionEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { isSamePast, REST_OF_WEEK } from '../practice/same-past.ts';
import type { LensOptions } from './lens.ts';

interface Memory {
  readonly basis: string;
  readonly edition: number;
  readonly answers: Map<string, unknown>;
}

/** Up to which sessions something rests on them: those of the session's day, or all of its week. */
export type Reach = 'day' | 'week';

const DAYS_BEHIND: Readonly<Record<Reach, number>> = { day: 0, week: REST_OF_WEEK };
const memories: Readonly<Record<Reach, WeakMap<SessionEntry, Memory>>> = {
  day: new WeakMap(),
  week: new WeakMap(),
};

/**
 * What was said of a session, by a name for each thing, as long as all is the same that it may rest on: the options,
 * definitions, and the athletes' sessions as far as it reaches. What rests on later ones has no place here.
 */
export function rememberSession(
  practice: Practice,
  entry: SessionEntry,
  records: readonly SessionRecord[],
  { today, formula, unit, complete }: LensOptions,
  reach: Reach,
): Map<string, unknown> {
  const basis = [practice.definitionsVersion, today, formula, unit, complete].join(' ');
  const known = memories[reach].get(entry);
  const isSame = known?.basis === basis && isSamePast(practice, records, known.edition, DAYS_BEHIND[reach]);
  if (isSame) return known.answers;
  const answers = new Map<string, unknown>();
  memories[reach].set(entry, { basis, edition: practice.edition, answers });
  return answers;
}

/** What is remembered under a name, else what is worked out now. */
export function recall<T>(answers: Map<string, unknown>, name: string, compute: () => T): T {
  if (answers.has(name)) return answers.get(name) as T;
  const answer = compute();
  answers.set(name, answer);
  return answer;
}
