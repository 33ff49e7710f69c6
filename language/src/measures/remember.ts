import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';

/**
 * Remembers what was made from all sessions of an athlete until one of them, or any definition, changes. The practice
 * gives a new list of sessions then, so the list itself is the key.
 */
export function rememberByHistory<T>(
  compute: (practice: Practice, athlete: string) => T,
): (practice: Practice, athlete: string) => T {
  const known = new WeakMap<readonly SessionRecord[], { readonly version: number; readonly value: T }>();
  return (practice, athlete) => {
    const records = practice.sessionsOf(athlete);
    const version = practice.definitionsVersion;
    const found = known.get(records);
    if (found?.version === version) return found.value;
    const value = compute(practice, athlete);
    known.set(records, { version, value });
    return value;
  };
}
