import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import type { SessionWorks } from './session-work.ts';

/** Made from all sessions of an athlete; `variant` tells apart what else it rests on, such as a formula. */
type FromHistory<S, T> = (source: S, athlete: string, variant?: string) => T;

/** Remembers what was made from an athlete's sessions until one of them, or any definition, changes. */
export function rememberByHistory<T>(compute: FromHistory<Practice, T>): FromHistory<Practice, T> {
  return remember((practice) => practice, compute);
}

/** The same for what is made from the sums of the sessions. */
export function rememberByWorks<T>(compute: FromHistory<SessionWorks, T>): FromHistory<SessionWorks, T> {
  return remember(({ practice }) => practice, compute);
}

/** The practice gives a new list of sessions when one of them changes, so the list itself is the key. */
function remember<S, T>(practiceOf: (source: S) => Practice, compute: FromHistory<S, T>): FromHistory<S, T> {
  const known = new WeakMap<readonly SessionRecord[], Map<string, { version: number; value: T }>>();
  return (source, athlete, variant = '') => {
    const practice = practiceOf(source);
    const records = practice.sessionsOf(athlete);
    const variants = known.get(records) ?? new Map<string, { version: number; value: T }>();
    known.set(records, variants);
    const version = practice.definitionsVersion;
    const found = variants.get(variant);
    if (found?.version === version) return found.value;
    const value = compute(source, athlete, variant);
    variants.set(variant, { version, value });
    return value;
  };
}
