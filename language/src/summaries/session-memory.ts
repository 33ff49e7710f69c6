import type { SessionEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Movements } from '../practice/change-log.ts';
import { listKeysNamed } from '../practice/mentions.ts';
import type { Practice } from '../practice/practice.ts';
import { isSamePast, REST_OF_WEEK } from '../practice/same-past.ts';
import type { LensOptions } from './lens.ts';

/** What an answer rests on beside the session, the options and all definitions but those of movements. */
export interface Rest {
  /** Up to which of the athletes' sessions: those of the session's day, or all of its week. */
  readonly reach: 'day' | 'week';
  /** What those say of the day and the athlete, and of these movements (keys); undefined for all. */
  readonly movements: Movements;
  /** The movements (keys) whose definitions it rests on; undefined for all. */
  readonly defined: Movements;
}

/** It rests on anything in its week and in the sessions before it. */
export const ON_WEEK: Rest = { reach: 'week', movements: undefined, defined: undefined };

/** Of other sessions it rests on weigh-ins at most. */
export function findRestOnItself(practice: Practice, entry: SessionEntry): Rest {
  return { reach: 'day', movements: new Set(), defined: listKeysNamed(practice, entry) };
}

interface Answer {
  readonly value: unknown;
  readonly rest: Rest;
  /** Of the practice, when it was last known to be right. */
  edition: number;
}

/** What was said of a session, by a name for each thing. */
export interface SessionMemory {
  readonly practice: Practice;
  readonly records: readonly SessionRecord[];
  readonly basis: string;
  readonly answers: Map<string, Answer>;
}

const DAYS_BEHIND: Readonly<Record<Rest['reach'], number>> = { day: 0, week: REST_OF_WEEK };
const memories = new WeakMap<SessionEntry, SessionMemory>();

/** What is remembered of a session under these options. */
export function rememberSession(
  practice: Practice,
  entry: SessionEntry,
  records: readonly SessionRecord[],
  { today, formula, unit, complete }: LensOptions,
): SessionMemory {
  const basis = [practice.settingsVersion, today, formula, unit, complete].join(' ');
  const known = memories.get(entry);
  if (known?.basis === basis && known.practice === practice) return known;
  const memory = { practice, records, basis, answers: new Map() };
  memories.set(entry, memory);
  return memory;
}

/**
 * What is remembered under a name for as long as all is the same that it rests on, else what is worked out now. What
 * rests on later sessions than those of its week has no place here.
 */
export function recall<T>(
  memory: SessionMemory,
  name: string,
  rest: Rest | (() => Rest),
  compute: () => T,
): T {
  const known = memory.answers.get(name);
  if (known && isStillRight(memory, known)) return known.value as T;
  const value = compute();
  const { edition } = memory.practice;
  memory.answers.set(name, { value, rest: typeof rest === 'function' ? rest() : rest, edition });
  return value;
}

/** What is remembered under a name; undefined where nothing is, or what it rests on is another. */
export function findRemembered(memory: SessionMemory, name: string): unknown {
  const known = memory.answers.get(name);
  return known && isStillRight(memory, known) ? known.value : undefined;
}

function isStillRight({ practice, records }: SessionMemory, answer: Answer): boolean {
  const { reach, movements, defined } = answer.rest;
  if (answer.edition === practice.edition) return true;
  if (practice.hasRedefined(answer.edition, defined)) return false;
  if (!isSamePast(practice, records, answer.edition, DAYS_BEHIND[reach], movements)) return false;
  answer.edition = practice.edition;
  return true;
}
